#include "xml/detail_file.h"

#include "model/validate.h"
#include "xml/anchor_form.h"
#include "xml/basis_form.h"
#include "xml/detail_form.h"
#include "xml/digest.h"
#include "xml/element.h"
#include "xml/framing_form.h"
#include "xml/layers_form.h"
#include "xml/loads_form.h"
#include "xml/plate_form.h"
#include "xml/post_form.h"
#include "xml/remarks_form.h"
#include "xml/strict_document.h"
#include "xml/text_file.h"

#include <fmt/format.h>

#include <array>

namespace toehold::xml {
namespace {

constexpr std::string_view detail_namespace = "urn:toehold:base-detail:1";
constexpr std::array<std::string_view, 2> plate_names{"plate", "plate-from"};

/// The plate the detail refers to, from its document beside the detail.
model::Plate fetch_plate(ElementReader& reader, model::PlateReference& reference, Reading& reading,
                         const std::filesystem::path& folder) {
    if (std::filesystem::path(reference.file).is_absolute()) {
        reader.report("a plate document is named from the detail's own folder", "file", "a relative path");
        return {};
    }
    const PlatesRead library = read_plates(folder / reference.file);
    std::vector<std::string> known;
    for (const model::Plate& plate : library.plates) {
        if (plate.id == reference.id) {
            reference.found_sha256 = plate_sha256(plate);
            return plate;
        }
        known.push_back(plate.id);
    }
    if (library.problems.empty()) {
        reader.report(fmt::format("{} holds no plate of this id", reference.file), "id",
                      fmt::format("{}", fmt::join(known, ", ")));
    } else {
        reader.report("the plate document cannot be used", "file");
        reading.problems.insert(reading.problems.end(), library.problems.begin(), library.problems.end());
    }
    return {};
}

void read_plate_part(ElementReader& root, model::BaseDetail& detail, Reading& reading,
                     const std::filesystem::path& folder) {
    std::optional<ElementReader> part = root.one_of(plate_names);
    if (!part) return;
    if (part->name() == "plate") {
        on_deck(detail).plate = read_plate(*part, false);
        return;
    }
    // Problems of the plate in this detail are told of its `plate`; here that is the line of the reference.
    reading.lines.emplace("plate", part->line());
    on_deck(detail).plate_reference = read_plate_reference(*part);
    if (!on_deck(detail).plate_reference->file.empty()) {
        on_deck(detail).plate = fetch_plate(*part, *on_deck(detail).plate_reference, reading, folder);
    }
}

model::BaseDetail read_parts(ElementReader& root, Reading& reading, const std::filesystem::path& folder) {
    model::BaseDetail detail;
    detail.name = root.optional_text("name");
    detail.note = root.optional_text("note");
    detail.project = root.optional_text("project");
    if (std::optional<ElementReader> part = root.child("guard")) read_guard(*part, detail);
    if (std::optional<ElementReader> part = root.child("post")) detail.post = read_post(*part);
    read_plate_part(root, detail, reading, folder);
    if (std::optional<ElementReader> part = root.optional_child("weld")) on_deck(detail).weld = read_weld(*part);
    for (ElementReader& part : root.children("anchors")) on_deck(detail).anchors.push_back(read_anchor_group(part));
    if (std::optional<ElementReader> part = root.child("layers")) on_deck(detail).layers = read_layers(*part);
    if (std::optional<ElementReader> part = root.optional_child("framing")) detail.framing = read_framing(*part);
    if (std::optional<ElementReader> part = root.optional_child("loads")) detail.loads = read_loads(*part);
    if (std::optional<ElementReader> part = root.optional_child("basis")) detail.basis = read_basis(*part);
    if (std::optional<ElementReader> part = root.optional_child("remarks")) detail.remarks = read_remarks(*part);
    return detail;
}

/// Form first, then what the detail says: numbers that could not be read would only bring follow-up problems.
void read_document(const tinyxml2::XMLElement& element, Reading& reading, const std::filesystem::path& folder,
                   DetailRead& result) {
    if (std::optional<ElementReader> root = open_root(element, "base-detail", reading)) {
        result.detail = read_parts(*root, reading, folder);
    }
    // What nobody asked for is told when `root` is gone.
    result.is_whole = reading.problems.empty();
    if (result.is_whole) reading.problems = model::validate(*result.detail);
}

}  // namespace

DetailRead read_detail_text(std::string_view text, const std::filesystem::path& file, Mode mode) {
    DetailRead result;
    result.sha256 = sha256(text);
    const StrictDocument document = parse_strictly(text);
    Reading reading{document.problems, {}};
    if (document.root != nullptr) read_document(*document.root, reading, file.parent_path(), result);
    if (mode == Mode::strict && !reading.problems.empty()) result.detail.reset();
    finish_reading(reading, file);
    result.problems = std::move(reading.problems);
    result.lines = std::move(reading.lines);
    return result;
}

DetailRead read_detail(const std::filesystem::path& file, Mode mode) {
    const TextRead read = read_text(file);
    if (read.text) return read_detail_text(*read.text, file, mode);
    DetailRead result;
    result.problems = read.problems;
    return result;
}

Element detail_element(const model::BaseDetail& detail) {
    Element root("base-detail");
    root.text("xmlns", detail_namespace).optional_text("name", detail.name).optional_text("note", detail.note);
    root.optional_text("project", detail.project);
    root.child(guard_element(detail)).child(post_element(detail.post));
    root.child(on_deck(detail).plate_reference ? plate_reference_element(*on_deck(detail).plate_reference)
                                               : plate_element(on_deck(detail).plate));
    if (on_deck(detail).weld) root.child(weld_element(*on_deck(detail).weld));
    for (const model::AnchorGroup& group : on_deck(detail).anchors) root.child(anchor_group_element(group));
    root.child(layers_element(on_deck(detail).layers)).child(framing_element(detail.framing));
    root.child(loads_element(detail.loads)).child(basis_element(detail.basis));
    if (!detail.remarks.empty()) root.child(remarks_element(detail.remarks));
    return root;
}

std::string write_detail(const model::BaseDetail& detail) { return document_text(detail_element(detail)); }

}  // namespace toehold::xml
