#pragma once
// The part of `validate` that concerns a reviewer's remarks. What a remark is about is not looked up: a check of a
// plug-in that is not loaded may be meant.
#include "model/problem_list.h"
#include "model/remark.h"

#include <string_view>
#include <vector>

namespace toehold::model {

/// Of one remark's words, in characters.
inline constexpr std::size_t longest_remark = 4000;
inline constexpr std::size_t most_remarks = 500;

/// A day of the calendar as ISO 8601 writes it in full: `2026-11-25`. Years 1 to 9999.
[[nodiscard]] bool is_iso_day(std::string_view text);

void check_remarks(ProblemList& problems, const std::vector<Remark>& remarks);

}  // namespace toehold::model
