#pragma once
// Reviews made up for tests of output: round numbers, and names as long and strange as a file may hold.
#include "review/review.h"

#include <string>

namespace toehold::test {

/// Four anchors with different pulls, one check of each status, two findings, a load path of three links.
[[nodiscard]] review::Review fake_review();
/// The same with no demand.
[[nodiscard]] review::Review fake_review_without_demand();
/// The same with every name, sentence and id replaced by `text`.
[[nodiscard]] review::Review fake_review_saying(const std::string& text);

}  // namespace toehold::test
