#pragma once
// The shop's papers of a project: one drawing for every kind of base, one cutting file for every plate.
#include "paper/issue.h"
#include "review/project_review.h"

#include <algorithm>
#include <string>
#include <string_view>
#include <vector>

namespace toehold::paper {

struct PlatePaper {
    std::string name;                ///< mount's or plate's id, fit for a file's name, unlike any other's here
    std::vector<std::string> marks;  ///< of the posts it is for, in the project's order
    std::string bytes;
};

/// `pdf`, `svg`, `png`: shop drawings, one for the posts whose mount and anchors come out the same; `dxf`: cutting
/// files, one for the posts with the same plate; nothing for posts without a plate to cut. Each says marks, quantity,
/// weight and the issue's revision. Throws std::invalid_argument for another ending.
[[nodiscard]] std::vector<PlatePaper> plate_papers(std::string_view ending,
                                                   const std::vector<review::ResolvedPost>& posts,
                                                   const std::string& input_sha256, const Issue& issue);

/// Letters, digits, `.`, `-` and `_` as they are; a hyphen for anything else.
[[nodiscard]] std::string fit_for_file_name(const std::string& words);

/// Two plates may have one id, two drawings one mount or line: the second is numbered.
template <class Paper>
[[nodiscard]] std::string unlike(const std::string& name, const std::vector<Paper>& others) {
    std::string tried = name;
    const auto taken = [&] {
        return std::any_of(others.begin(), others.end(), [&](const Paper& one) { return one.name == tried; });
    };
    for (int number = 2; taken(); ++number) tried = name + "-" + std::to_string(number);
    return tried;
}

}  // namespace toehold::paper
