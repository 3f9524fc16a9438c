#include "xml/detail/detail_file.h"

#include "model/validate.h"
#include "xml/detail/parts.h"
#include "xml/document/file.h"
#include "xml/document/strict_document.h"

#include <array>
#include <utility>

namespace toehold::xml {
namespace {

constexpr std::string_view detail_namespace = "urn:toehold:base-detail:1";

constexpr std::array<std::string_view, 3> detail_mounts{plate_names[0], plate_names[1], "side-fastened"};
/// Beside `<side-fastened>` these belong into it, or to a plate.
constexpr std::array<std::string_view, 3> parts_of_plate{"weld", "anchors", "layers"};

void refuse_parts_of_plate(ElementReader& root) {
    for (ElementReader& part : root.children(parts_of_plate)) {
        part.report(format::phrase("<{}> belongs to a post on a plate; this one is fastened by its side", part.name()),
                    {}, format::phrase("what fastens the post, inside <side-fastened>"));
        part.ignore_rest();
    }
}

/// The mount's kind is known before the guard and the post are read, since both have attributes or parts of one kind.
void read_mount(ElementReader& root, std::optional<ElementReader> mount, model::BaseDetail& detail,
                const std::filesystem::path& folder) {
    if (kind(detail.mount) == model::MountKind::plate_on_deck) {
        read_plate_on_deck(root, std::move(mount), on_deck(detail), folder);
        return;
    }
    on_side(detail) = read_side_fastened(*mount);
    refuse_parts_of_plate(root);
}

model::BaseDetail read_parts(ElementReader& root, const std::filesystem::path& folder) {
    model::BaseDetail detail;
    std::optional<ElementReader> mount = root.one_of(detail_mounts);
    if (mount && mount->name() == "side-fastened") detail.mount = model::SideFastened{};
    detail.name = root.optional_text("name");
    detail.note = root.optional_text("note");
    detail.project = root.optional_text("project");
    if (std::optional<ElementReader> part = root.child("guard")) read_guard(*part, detail);
    if (std::optional<ElementReader> part = root.child("post")) detail.post = read_post(*part, kind(detail.mount));
    read_mount(root, std::move(mount), detail, folder);
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
        result.detail = read_parts(*root, folder);
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
    if (const auto* const side = std::get_if<model::SideFastened>(&detail.mount)) {
        Element mount("side-fastened");
        add_side_fastened(mount, *side);
        root.child(std::move(mount));
    } else {
        add_plate_on_deck(root, on_deck(detail));
    }
    root.child(framing_element(detail.framing));
    root.child(loads_element(detail.loads)).child(basis_element(detail.basis));
    if (!detail.remarks.empty()) root.child(remarks_element(detail.remarks));
    return root;
}

std::string write_detail(const model::BaseDetail& detail) { return document_text(detail_element(detail)); }

}  // namespace toehold::xml
