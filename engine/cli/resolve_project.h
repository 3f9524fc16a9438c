#pragma once
// From a project's file to what its review needs, with what is wrong as problems. Nothing is printed here.
#include "catalog/resolve.h"
#include "review/project_review.h"

#include <optional>
#include <string>
#include <vector>

namespace toehold::cli {

/// Whether it is a project's document; standard input never is.
[[nodiscard]] bool is_project(const std::string& file);

struct ResolvedProject {
    std::optional<model::Project> project;  ///< absent when there are problems
    std::vector<review::ResolvedPost> posts;
    std::vector<review::ResolvedLine> lines;  ///< those with a rail
    std::string sha256;
    model::Problems problems;
};
[[nodiscard]] ResolvedProject resolve_project(const std::string& file, const catalog::Catalog& catalog);

}  // namespace toehold::cli
