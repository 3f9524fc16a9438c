#include "xml/detail/plates_file.h"

#include "model/validate.h"
#include "xml/detail/parts.h"
#include "xml/document/file.h"
#include "xml/document/strict_document.h"

namespace toehold::xml {
namespace {

using format::phrase;

constexpr std::string_view plates_namespace = "urn:toehold:plates:1";

/// What is wrong with the plate's geometry, named as an element of its library.
void validate_plate(const model::Plate& plate, const std::string& path, Reading& reading) {
    constexpr std::string_view alone = "plate";
    for (model::Problem problem : model::validate(plate)) {
        if (problem.element.starts_with(alone)) problem.element.replace(0, alone.size(), path);
        reading.problems.push_back(std::move(problem));
    }
}

std::vector<model::Plate> read_library(ElementReader& root, Reading& reading) {
    std::vector<model::Plate> plates;
    for (ElementReader& item : root.children("plate")) {
        const std::size_t before = reading.problems.size();
        plates.push_back(read_plate(item, true));
        if (reading.problems.size() == before) validate_plate(plates.back(), item.path(), reading);
    }
    if (plates.empty()) root.report(phrase("<plates> holds no plate"), {}, phrase("one <plate> or more"));
    return plates;
}

}  // namespace

PlatesRead read_plates_text(std::string_view text, const std::filesystem::path& file) {
    const StrictDocument document = parse_strictly(text);
    Reading reading{document.problems, {}};
    PlatesRead result;
    if (document.root != nullptr) {
        if (std::optional<ElementReader> root = open_root(*document.root, "plates", reading)) {
            result.plates = read_library(*root, reading);
        }
    }
    finish_reading(reading, file);
    if (!reading.problems.empty()) result.plates.clear();
    result.problems = std::move(reading.problems);
    result.lines = std::move(reading.lines);
    return result;
}

PlatesRead read_plates(const std::filesystem::path& file) {
    const TextRead read = read_text(file);
    if (!read.text) return {{}, {}, read.problems};
    return read_plates_text(*read.text, file);
}

std::string write_plates(const std::vector<model::Plate>& plates) {
    Element root("plates");
    root.text("xmlns", plates_namespace);
    for (const model::Plate& plate : plates) root.child(plate_element(plate));
    return document_text(root);
}

std::optional<model::Plate> referred_plate(const model::PlateReference& reference,
                                           const std::filesystem::path& detail_file) {
    if (reference.file.empty() || std::filesystem::path(reference.file).is_absolute()) return std::nullopt;
    for (const model::Plate& plate : read_plates(detail_file.parent_path() / reference.file).plates) {
        if (plate.id == reference.id) return plate;
    }
    return std::nullopt;
}

std::string plate_sha256(const model::Plate& plate) { return sha256(write_plates({plate})); }

}  // namespace toehold::xml
