#pragma once
// Entries of an array of reviews for what has no review: a file that cannot be used, and files left out.
#include "model/problem.h"

#include <string>
#include <vector>

namespace toehold::exporting {

/// Schema `toehold.unusable/1`: the file, and its problems with line, element, sentence.
[[nodiscard]] std::string unusable_json(const std::string& file, const model::Problems& problems);

/// Schema `toehold.stopped/1`: how many files of the run were reviewed or refused, and which were not begun.
[[nodiscard]] std::string stopped_json(std::size_t done, const std::vector<std::string>& left);

}  // namespace toehold::exporting
