#pragma once
// How an edit ends: done, under its step's name, or refused with a sentence.
#include "editing/edits.h"

#include <string>
#include <utility>
#include <vector>

namespace toehold::editing {

[[nodiscard]] inline Edit done(model::BaseDetail detail, std::string step, std::vector<std::string> selected) {
    return {std::move(detail), std::move(step), std::move(selected), {}};
}

[[nodiscard]] inline Edit refused(const model::BaseDetail& detail, std::string sentence) {
    return {detail, {}, {}, std::move(sentence)};
}

/// `Move hole A`, `Move 3 holes`, `Move block B1`, `Move 4 parts`. `verb` in the imperative.
[[nodiscard]] std::string step_name(const std::string& verb, const std::vector<std::string>& holes,
                                    const std::vector<std::string>& other_parts);

}  // namespace toehold::editing
