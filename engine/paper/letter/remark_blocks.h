#pragma once
// A reviewer's remark as blocks of a letter: the results it speaks of, its words, who said it, room for an answer.
#include "model/remark.h"
#include "paper/report/blocks.h"

#include <string>
#include <vector>

namespace toehold::paper::letter {

/// Who made the remarks, each once, in their order, as a fact at the letter's head.
[[nodiscard]] Facts::Fact reviewers(const std::vector<model::Remark>& remarks, const format::Locale& locale);
[[nodiscard]] std::vector<model::Remark> in_state(const std::vector<model::Remark>& remarks,
                                                  model::Remark::State state);

/// `number`: of the comment in the letter, from 1.
void add_remark(report::Blocks& blocks, const report::Source& source, const model::Remark& remark, std::size_t number);

/// A frame to write in.
[[nodiscard]] Facts room_for_answer(const format::Locale& locale);

}  // namespace toehold::paper::letter
