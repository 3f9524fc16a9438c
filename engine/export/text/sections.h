#pragma once
// The parts of a review's text, in the order they are read. Each ends with a newline, or is empty.
#include "export/text/review_text.h"

#include <vector>

namespace toehold::exporting {

[[nodiscard]] std::string detail_section(const review::Review& review, const format::Locale& locale);
[[nodiscard]] std::string anchors_section(const review::Review& review, const format::Locale& locale);
[[nodiscard]] std::string checks_section(const review::Review& review, const TextOptions& options);
[[nodiscard]] std::string path_section(const review::Review& review, const TextOptions& options);
[[nodiscard]] std::string loads_section(const review::Review& review, const format::Locale& locale);

/// A paragraph behind its label.
[[nodiscard]] std::string labelled(const format::Phrase& label, const std::string& words, const format::Locale& locale);
/// Demand, capacity, unit, demand over capacity and status word: the cells every table of results ends with.
/// A capacity nobody knows is not printed.
[[nodiscard]] std::vector<std::string> result_cells(double demand, double capacity, std::string_view unit, double ratio,
                                                    checks::Status status, const format::Locale& locale);

}  // namespace toehold::exporting
