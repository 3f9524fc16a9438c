#include "editing/document/project_document.h"

#include "editing/document/origin.h"
#include "editing/mounts/mount.h"
#include "xml/detail/project_file.h"
#include "xml/document/file.h"

#include <fmt/format.h>

#include <stdexcept>
#include <utility>

namespace toehold::editing {
namespace {

/// Each mount changed as a part of a detail, which is what a mount's own functions know.
template <class Change>
void change_mounts(model::Project& project, const Change& change) {
    for (std::size_t number = 0; number < project.mounts.size(); ++number) {
        model::BaseDetail detail;
        detail.mount = std::move(project.mounts[number].mount);
        change(detail, fmt::format("mount{}.", number));
        project.mounts[number].mount = std::move(detail.mount);
    }
}

Origin take_all_references(model::Project& project) {
    Origin all;
    change_mounts(project, [&all](model::BaseDetail& detail, const std::string& prefix) {
        for (auto& [name, value] : take_references(detail)) all[prefix + name] = value;
    });
    return all;
}

void give_all_references(model::Project& project, const Origin& origin) {
    change_mounts(project, [&origin](model::BaseDetail& detail, const std::string& prefix) {
        References own;
        for (const auto& [name, value] : origin) {
            if (name.starts_with(prefix)) own[name.substr(prefix.size())] = value;
        }
        give_references(detail, own);
    });
}

}  // namespace

OpenedProject open_project(const std::filesystem::path& file) {
    xml::ProjectRead read = xml::read_project(file);
    return {std::move(read.project), std::move(read.problems), {read.sha256}};
}

model::Project as_saved(const std::filesystem::path& file, const model::Project& project) {
    model::Project saved = project;
    change_mounts(saved, [&file](model::BaseDetail& detail, const std::string& /*prefix*/) {
        drop_stale_references(detail, file);
    });
    return saved;
}

Saved save_project(const std::filesystem::path& file, const model::Project& project) {
    std::string text;
    try {
        text = xml::write_project(as_saved(file, project));
    } catch (const std::invalid_argument& error) {
        return {std::nullopt, model::sentence(xml::file_problem(file, format::verbatim(error.what())))};
    }
    if (const std::optional<model::Problem> problem = xml::save_atomically(file, text))
        return {std::nullopt, model::sentence(*problem)};
    return {FileStamp{xml::sha256(text)}, {}};
}

std::string copy_text(const std::filesystem::path& of, const model::Project& project) {
    model::Project whole = project;
    const Origin origin = origin_of(of, take_all_references(whole));
    return xml::write_project(whole) + comment(origin);
}

OpenedProject open_project_copy(const RecoveryCopy& copy) {
    const xml::TextRead bytes = xml::read_text(copy.copy);
    if (!bytes.text) return {std::nullopt, bytes.problems, {}};
    xml::ProjectRead read = xml::read_project_text(*bytes.text, copy.copy);
    OpenedProject opened{std::move(read.project), std::move(read.problems), {}};
    if (opened.project) {
        give_all_references(*opened.project, read_comment(*bytes.text));
        opened.project = as_saved(copy.of, *opened.project);
    }
    if (!copy.of.empty()) opened.stamp = stamp_of(copy.of);
    return opened;
}

}  // namespace toehold::editing
