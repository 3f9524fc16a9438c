#pragma once
// `size` as one of many: numbers in, lines out; and the lines of all of them together.
#include "cli/exit_status.h"
#include "cli/size/input.h"
#include "search/run/judged.h"

namespace toehold::cli {

/// The number of every candidate on a line of its own.
[[nodiscard]] ExitStatus list_candidates(const SizeInput& input);

/// One line for each number on standard input, in its order, as soon as it is known. Unusable: a line that is no number
/// of a candidate; what stood before it is judged.
[[nodiscard]] ExitStatus judge_candidates(const SizeInput& input, const format::Locale& locale);

/// What the lines on standard input say. Throws search::JournalError.
[[nodiscard]] search::Judged gathered(const SizeInput& input);

}  // namespace toehold::cli
