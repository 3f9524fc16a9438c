#pragma once
// How an edit ends: done, under its step's name, or refused with a sentence.
#include "editing/edits.h"

#include <string>
#include <utility>
#include <vector>

namespace toehold::editing {

using format::Phrase;
using format::phrase;

[[nodiscard]] inline Edit done(model::BaseDetail detail, Phrase step, std::vector<model::PartId> selected) {
    return {std::move(detail), std::move(step), std::move(selected), {}};
}

[[nodiscard]] inline Edit refused(const model::BaseDetail& detail, Phrase sentence) {
    return {detail, {}, {}, std::move(sentence)};
}

/// The refusal of coordinates that are no numbers.
[[nodiscard]] inline Phrase not_a_place() { return phrase("That is not a place."); }

/// What a step is about: `hole A`, `3 holes`, `block B1`, `4 parts`; of a post's side `fastener A`, `3 fasteners`.
[[nodiscard]] Phrase things(const model::BaseDetail& detail, const std::vector<std::string>& anchors,
                            const std::vector<model::PartId>& other_parts);

}  // namespace toehold::editing
