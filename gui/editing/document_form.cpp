#include "editing/document_form.h"

#include "xml/anchor_form.h"
#include "xml/basis_form.h"
#include "xml/detail_file.h"
#include "xml/framing_form.h"
#include "xml/layers_form.h"
#include "xml/loads_form.h"
#include "xml/plate_form.h"
#include "xml/post_form.h"
#include "xml/strict_document.h"

#include <array>

namespace toehold::editing {
namespace {

constexpr std::array<std::string_view, 2> plate_names{"plate", "plate-from"};

/// Whether there is a plate.
bool read_plate_part(xml::ElementReader& root, model::BaseDetail& detail, const std::filesystem::path& file) {
    std::optional<xml::ElementReader> part = root.one_of(plate_names);
    if (!part) return false;
    if (part->name() == "plate") {
        on_deck(detail).plate = xml::read_plate(*part, false);
        return true;
    }
    on_deck(detail).plate_reference = xml::read_plate_reference(*part);
    const std::optional<model::Plate> plate = referred_plate(*on_deck(detail).plate_reference, file);
    if (!plate) return false;
    on_deck(detail).plate = *plate;
    on_deck(detail).plate_reference->found_sha256 = xml::plate_sha256(*plate);
    return true;
}

/// As xml/detail_file.cpp reads them; a test holds the two to each other.
bool read_parts(xml::ElementReader& root, model::BaseDetail& detail, const std::filesystem::path& file) {
    detail.name = root.optional_text("name");
    detail.note = root.optional_text("note");
    if (auto part = root.child("guard")) xml::read_guard(*part, detail);
    if (auto part = root.child("post")) detail.post = xml::read_post(*part);
    const bool has_plate = read_plate_part(root, detail, file);
    if (auto part = root.optional_child("weld")) on_deck(detail).weld = xml::read_weld(*part);
    for (xml::ElementReader& part : root.children("anchors"))
        on_deck(detail).anchors.push_back(xml::read_anchor_group(part));
    if (auto part = root.child("layers")) on_deck(detail).layers = xml::read_layers(*part);
    if (auto part = root.optional_child("framing")) detail.framing = xml::read_framing(*part);
    if (auto part = root.optional_child("loads")) detail.loads = xml::read_loads(*part);
    if (auto part = root.optional_child("basis")) detail.basis = xml::read_basis(*part);
    return has_plate;
}

}  // namespace

std::optional<model::Plate> referred_plate(const model::PlateReference& reference, const std::filesystem::path& file) {
    if (reference.file.empty() || std::filesystem::path(reference.file).is_absolute()) return std::nullopt;
    const xml::PlatesRead library = xml::read_plates(file.parent_path() / reference.file);
    for (const model::Plate& plate : library.plates) {
        if (plate.id == reference.id) return plate;
    }
    return std::nullopt;
}

FormRead read_form(std::string_view text, const std::filesystem::path& file) {
    const xml::StrictDocument document = xml::parse_strictly(text);
    if (document.root == nullptr) return {};
    xml::Reading reading;
    model::BaseDetail detail;
    bool has_plate = false;
    if (std::optional<xml::ElementReader> root = xml::open_root(*document.root, "base-detail", reading)) {
        has_plate = read_parts(*root, detail, file);
    } else {
        return {};
    }
    return {std::move(detail), has_plate && reading.problems.empty()};
}

}  // namespace toehold::editing
