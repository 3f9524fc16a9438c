#include "cli/resolve_project.h"

#include "catalog/catalog.h"
#include "cli/review_file.h"
#include "xml/detail/project_file.h"
#include "xml/document/file.h"

#include <algorithm>

namespace toehold::cli {
namespace {

/// What is wrong with a mount is told once, however many posts stand on it.
void add_new(model::Problems& all, const model::Problems& more) {
    for (const model::Problem& problem : more) {
        if (std::find(all.begin(), all.end(), problem) == all.end()) all.push_back(problem);
    }
}

/// Of the guard lines that have one.
void resolve_rails(ResolvedProject& result, const std::string& file, const xml::ProjectRead& read,
                   const catalog::Catalog& catalog) {
    for (const model::GuardLine& line : result.project->guard_lines) {
        if (!line.rail) continue;
        catalog::RailResolution resolution = catalog::resolve_rail(*line.rail, result.project->framing, catalog,
                                                                   "guard-lines/guard-line[" + line.id + "]/rail");
        xml::locate(resolution.problems, file, read.lines);
        add_new(result.problems, resolution.problems);
        if (resolution.rail) result.lines.push_back({line.id, std::move(*resolution.rail)});
    }
}

}  // namespace

bool is_project(const std::string& file) {
    return file != standard_input && xml::document_kind(file) == xml::DocumentKind::project;
}

ResolvedProject resolve_project(const std::string& file, const catalog::Catalog& catalog) {
    xml::ProjectRead read = xml::read_project(file);
    ResolvedProject result{std::move(read.project), {}, {}, read.sha256, std::move(read.problems)};
    if (!result.project) return result;
    for (const model::PlacedPost& post : result.project->posts) {
        catalog::Resolution resolution = catalog::resolve(model::detail_of(*result.project, post), catalog);
        xml::locate(resolution.problems, file, read.lines);
        add_new(result.problems, resolution.problems);
        if (resolution.resolved) result.posts.push_back({post, std::move(*resolution.resolved)});
    }
    resolve_rails(result, file, read, catalog);
    if (!result.problems.empty()) result.project.reset();
    return result;
}

}  // namespace toehold::cli
