#pragma once
// What can be ticked and typed for each key of a search's ranges, filled with ranges that stand already.
#include "editing/sizes/ranges_form.h"

namespace toehold::editing {

/// In the order of the command line's keys.
[[nodiscard]] std::vector<RangeRow> range_rows(const catalog::Catalog& catalog, const search::Ranges& start,
                                               units::System system);

/// Inches as the command line reads them, without a unit: the fewest digits.
[[nodiscard]] std::string plain(double value);

}  // namespace toehold::editing
