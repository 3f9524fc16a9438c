#include "xml/detail/project_file.h"

#include "xml/detail/parts.h"
#include "xml/document/file.h"
#include "xml/document/strict_document.h"
#include "xml/line/guard_line.h"

#include <tinyxml2.h>

#include <array>
#include <utility>

namespace toehold::xml {
namespace {

constexpr std::string_view project_namespace = "urn:toehold:project:2";
constexpr int project_version = 2;

model::Guard read_project_guard(ElementReader& reader) {
    model::BaseDetail detail;
    read_guard(reader, detail);
    if (reader.has("plate-below-surface")) {
        reader.report(format::phrase("in a project this belongs to a mount"), "plate-below-surface",
                      format::phrase("plate-below-surface of a plate-on-deck"));
    }
    return detail.guard;
}

Element project_guard_element(const model::Guard& guard) {
    model::BaseDetail detail;
    detail.guard = guard;
    return guard_element(detail);
}

constexpr std::array<std::string_view, 2> project_mounts{"plate-on-deck", "side-fastened"};

model::PlateOnDeck read_deck_mount(ElementReader& part, const std::filesystem::path& folder) {
    model::PlateOnDeck mount;
    mount.plate_below_surface_in =
        part.optional_quantity("plate-below-surface", units::Kind::length, Sign::not_negative).value_or(0.0);
    read_plate_on_deck(part, part.one_of(plate_names), mount, folder);
    return mount;
}

std::vector<model::NamedMount> read_mounts(ElementReader& reader, const std::filesystem::path& folder) {
    std::vector<model::NamedMount> mounts;
    for (ElementReader& part : reader.children(project_mounts)) {
        model::NamedMount mount;
        mount.id = part.id();
        if (part.name() == "side-fastened") {
            mount.mount = read_side_fastened(part);
        } else {
            mount.mount = read_deck_mount(part, folder);
        }
        if (auto post = part.child("post")) mount.post = read_post(*post, kind(mount.mount));
        mounts.push_back(std::move(mount));
    }
    return mounts;
}

model::Project read_parts(ElementReader& root, const std::filesystem::path& folder) {
    model::Project project;
    project.name = root.optional_text("name");
    project.note = root.optional_text("note");
    if (auto part = root.child("guard")) project.guard = read_project_guard(*part);
    if (auto part = root.optional_child("framing")) project.framing = read_framing(*part);
    if (auto part = root.child("mounts")) project.mounts = read_mounts(*part, folder);
    if (auto part = root.child("posts")) project.posts = read_posts(*part);
    if (auto part = root.optional_child("guard-lines")) project.guard_lines = read_guard_lines(*part);
    if (auto part = root.optional_child("loads")) project.loads = read_loads(*part);
    if (auto part = root.optional_child("basis")) project.basis = read_basis(*part);
    if (auto part = root.optional_child("remarks")) project.remarks = read_remarks(*part);
    return project;
}

Element mount_element(const model::NamedMount& mount) {
    Element element(word(kind(mount.mount)));
    element.text("id", mount.id);
    if (const auto* const side = std::get_if<model::SideFastened>(&mount.mount)) {
        add_side_fastened(element, *side);
        element.children.insert(element.children.begin(), post_element(mount.post));
        return element;
    }
    const auto& on_deck = std::get<model::PlateOnDeck>(mount.mount);
    element.given_quantity("plate-below-surface", on_deck.plate_below_surface_in, units::Kind::length);
    element.child(post_element(mount.post));
    add_plate_on_deck(element, on_deck);
    return element;
}

Element project_element(const model::Project& project) {
    Element root("project"), mounts("mounts"), posts("posts"), lines("guard-lines");
    root.text("xmlns", project_namespace).optional_text("name", project.name).optional_text("note", project.note);
    for (const model::NamedMount& mount : project.mounts) mounts.child(mount_element(mount));
    for (const model::PlacedPost& post : project.posts) posts.child(post_at_element(post));
    for (const model::GuardLine& line : project.guard_lines) lines.child(guard_line_element(line));
    root.child(project_guard_element(project.guard)).child(framing_element(project.framing));
    root.child(std::move(mounts)).child(std::move(posts));
    if (!project.guard_lines.empty()) root.child(std::move(lines));
    root.child(loads_element(project.loads)).child(basis_element(project.basis));
    if (!project.remarks.empty()) root.child(remarks_element(project.remarks));
    return root;
}

void read_document(const tinyxml2::XMLElement& element, Reading& reading, const std::filesystem::path& folder,
                   ProjectRead& result) {
    if (std::optional<ElementReader> root = open_root(element, "project", reading, project_version)) {
        result.project = read_parts(*root, folder);
    }
    // What nobody asked for is told when `root` is gone.
    if (reading.problems.empty()) reading.problems = model::validate(*result.project);
}

ProjectRead as_project(DetailRead read) {
    ProjectRead result;
    if (read.detail) result.project = model::project_of(*read.detail);
    result.lines = std::move(read.lines);
    result.problems = std::move(read.problems);
    result.sha256 = std::move(read.sha256);
    return result;
}

}  // namespace

ProjectRead read_project_text(std::string_view text, const std::filesystem::path& file) {
    const StrictDocument document = parse_strictly(text);
    if (document.root != nullptr && std::string_view(document.root->Name()) != "project") {
        return as_project(read_detail_text(text, file));
    }
    ProjectRead result;
    result.sha256 = sha256(text);
    Reading reading{document.problems, {}};
    if (document.root != nullptr) read_document(*document.root, reading, file.parent_path(), result);
    if (!reading.problems.empty()) result.project.reset();
    finish_reading(reading, file);
    result.problems = std::move(reading.problems);
    result.lines = std::move(reading.lines);
    return result;
}

ProjectRead read_project(const std::filesystem::path& file) {
    const TextRead read = read_text(file);
    if (read.text) return read_project_text(*read.text, file);
    ProjectRead result;
    result.problems = read.problems;
    return result;
}

std::string write_project(const model::Project& project) {
    if (!model::is_lone_detail(project)) return document_text(project_element(project));
    model::BaseDetail detail = model::detail_of(project, project.posts.front());
    detail.remarks = project.remarks;
    return write_detail(detail);
}

}  // namespace toehold::xml
