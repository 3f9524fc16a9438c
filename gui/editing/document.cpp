#include "editing/document.h"

#include "editing/document_form.h"
#include "editing/edits.h"
#include "xml/detail_file.h"
#include "xml/digest.h"
#include "xml/text_file.h"

#include <stdexcept>

namespace toehold::editing {
namespace {

Opened open_plates(const std::filesystem::path& file, const catalog::Catalog& catalog) {
    xml::PlatesRead read = xml::read_plates(file);
    if (!read.problems.empty()) return {std::nullopt, std::move(read.problems), {}};
    if (read.plates.empty()) return {std::nullopt, {xml::file_problem(file, "holds no plate")}, {}};
    return {starting_detail(read.plates.front(), catalog), {}, {}, true};
}

}  // namespace

Opened open_detail(const std::filesystem::path& file, const catalog::Catalog& catalog) {
    if (xml::document_kind(file) == xml::DocumentKind::plates) return open_plates(file, catalog);
    const xml::TextRead bytes = xml::read_text(file);
    if (!bytes.text) return {std::nullopt, bytes.problems, {}};
    xml::DetailRead read = xml::read_detail_text(*bytes.text, file);
    Opened opened{std::move(read.detail), std::move(read.problems), {read.sha256}};
    if (opened.detail) return opened;
    // Without a doubt what the file says, though nobody could build it: it is opened for mending.
    FormRead form = read_form(*bytes.text, file);
    if (form.sound) opened.detail = std::move(form.detail);
    return opened;
}

model::BaseDetail as_saved(const std::filesystem::path& file, const model::BaseDetail& detail) {
    model::BaseDetail saved = detail;
    if (!on_deck(saved).plate_reference) return saved;
    const std::optional<model::Plate> plate = referred_plate(*on_deck(saved).plate_reference, file);
    if (!plate || !(*plate == on_deck(saved).plate)) on_deck(saved).plate_reference.reset();
    return saved;
}

Saved save_detail(const std::filesystem::path& file, const model::BaseDetail& detail) {
    std::string text;
    try {
        text = xml::write_detail(as_saved(file, detail));
    } catch (const std::invalid_argument& error) {
        return {std::nullopt, model::sentence(xml::file_problem(file, error.what()))};
    }
    if (const std::optional<model::Problem> problem = xml::save_atomically(file, text)) {
        return {std::nullopt, model::sentence(*problem)};
    }
    return {FileStamp{xml::sha256(text)}, {}};
}

bool changed_outside(const std::filesystem::path& file, const FileStamp& stamp) {
    const xml::TextRead bytes = xml::read_text(file);
    if (bytes.text) return xml::sha256(*bytes.text) != stamp.sha256;
    std::error_code ignored;
    const bool there = std::filesystem::exists(std::filesystem::symlink_status(file, ignored));
    return there || !stamp.sha256.empty();
}

}  // namespace toehold::editing
