#pragma once
// The lines of guard of a project, each as a drawing of its own.
#include "paper/issue.h"
#include "paper/paper_file.h"
#include "review/project_review.h"

#include <string>
#include <string_view>
#include <vector>

namespace toehold::paper {

struct LinePaper {
    std::string name;  ///< the line's id, fit for a file's name
    std::string bytes;
};

/// The plan with every post's share, or the unrolled elevation, on a lying sheet as large as fits: `svg`, `pdf`, `png`.
/// `lines` in the project's order. Throws std::invalid_argument for another kind or ending.
[[nodiscard]] std::vector<LinePaper> line_papers(Kind kind, std::string_view ending, const model::Project& project,
                                                 const std::vector<review::LineReview>& lines, const Issue& issue);

}  // namespace toehold::paper
