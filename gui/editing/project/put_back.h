#pragma once
// A post's base that was changed by itself, put back into its project: the post and its mount go with it, the framing,
// loads and basis are the project's and stay.
#include "format/phrase.h"
#include "model/project.h"

#include <optional>
#include <string>
#include <vector>

namespace toehold::editing {

struct PutBack {
    std::optional<model::Project> project;  ///< absent: `refusal` says why
    format::Phrase step = {};               ///< `Change mount run`
    format::Phrase refusal = {};
    std::vector<std::string> posts = {};  ///< marks of all posts on that mount: each changes
    /// What was changed in the base and does not go with it, one sentence; empty: nothing.
    format::Phrase left_behind = {};
};

/// `before`: the base as it was taken from the project. Nothing to change is a refusal too.
[[nodiscard]] PutBack put_back(const model::Project& project, const std::string& post, const model::BaseDetail& before,
                               const model::BaseDetail& base);

/// What is wrong with the project after and was not before, as one sentence; empty: nothing.
[[nodiscard]] format::Phrase new_problem(const model::Project& before, const model::Project& after);

}  // namespace toehold::editing
