#pragma once
// A review, or one check's worked steps, as plain text of at most 100 columns.
#include "review/review.h"
#include "units/quantity.h"

#include <string>
#include <string_view>

namespace toehold::exporting {

struct TextOptions {
    units::System system = units::System::us;
    bool all_rows = false;  ///< every result of every check, not only the worst subject of each
};

[[nodiscard]] std::string review_text(const review::Review& review, const TextOptions& options);
[[nodiscard]] std::string review_text(const review::Review& review, units::System system);
/// Worked steps of every result of one check. `check` is an id; an unknown id gives an empty string.
[[nodiscard]] std::string explain_text(const review::Review& review, std::string_view check, units::System system);

}  // namespace toehold::exporting
