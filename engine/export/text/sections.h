#pragma once
// The parts of a review's text, in the order they are read. Each ends with a newline, or is empty.
#include "export/text/review_text.h"

namespace toehold::exporting {

[[nodiscard]] std::string verdict_section(const review::Review& review);
[[nodiscard]] std::string detail_section(const review::Review& review, units::System system);
[[nodiscard]] std::string anchors_section(const review::Review& review, units::System system);
[[nodiscard]] std::string checks_section(const review::Review& review, const TextOptions& options);
[[nodiscard]] std::string path_section(const review::Review& review, const TextOptions& options);
[[nodiscard]] std::string findings_section(const review::Review& review);
[[nodiscard]] std::string remedies_section(const review::Review& review);
[[nodiscard]] std::string loads_section(const review::Review& review, units::System system);
[[nodiscard]] std::string assumptions_section(const review::Review& review);
[[nodiscard]] std::string cautions_section(const review::Review& review);

/// Demand, capacity, unit, demand over capacity and status word: the cells every table of results ends with.
/// A capacity nobody knows is not printed.
[[nodiscard]] std::vector<std::string> result_cells(double demand, double capacity, std::string_view unit, double ratio,
                                                    checks::Status status, units::System system);
/// ` (worst of 4)`; nothing for one.
[[nodiscard]] std::string worst_of(std::size_t count);

}  // namespace toehold::exporting
