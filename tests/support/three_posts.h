#pragma once
// The shipped project of three posts on one mount, with its catalog rows, and changed.
#include "catalog/resolve.h"
#include "review/project_review.h"
#include "support/shipped.h"
#include "xml/detail/project_file.h"

#include <stdexcept>
#include <vector>

namespace toehold::test {

struct ResolvedPosts {
    model::Project project;
    std::vector<review::ResolvedPost> posts;
};

inline ResolvedPosts resolved_posts(const model::Project& project) {
    ResolvedPosts all{project, {}};
    for (const model::PlacedPost& post : project.posts)
        all.posts.push_back(
            {post, catalog::resolve(model::detail_of(project, post), shipped_catalog()).resolved.value()});
    return all;
}

inline model::Project three_posts() {
    const xml::ProjectRead read =
        xml::read_project(std::string(TOEHOLD_DATA_FOLDER) + "/projects/heron-landing-three-posts.xml");
    if (!read.project) throw std::runtime_error("the shipped project cannot be read");
    return *read.project;
}

}  // namespace toehold::test
