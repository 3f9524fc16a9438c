#pragma once
// What a file says of a post on a member's side, in words for a table: one function a part.
#include "catalog/resolve.h"
#include "format/phrase.h"
#include "paper/report/described.h"

#include <utility>
#include <vector>

namespace toehold::paper::report {

/// A part and its words, in the order of the load path from the post on.
using Described = std::vector<std::pair<format::Phrase, format::Phrase>>;
[[nodiscard]] Described side_described(const catalog::Resolved& resolved);

/// `outside face of rim R1`
[[nodiscard]] format::Phrase face_words(const model::BaseDetail& detail);
/// Width, height, thickness and metal of a bracket's plate, which the detail has.
[[nodiscard]] format::Phrase bracket_words(const catalog::Resolved& resolved);
/// What carries, in one sentence. `anchors`: in words.
[[nodiscard]] format::Phrase side_carries(const catalog::Resolved& resolved, const format::Phrase& post,
                                          const format::Phrase& anchors);

}  // namespace toehold::paper::report
