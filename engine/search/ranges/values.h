#pragma once
// The values of one `KEY=VALUES`, apart from which key they belong to.
#include "format/phrase.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace toehold::search {

/// No range has more values than this; what is not a slip of the pen fits.
inline constexpr std::size_t most_values = 400;

/// Between commas, without blanks at their ends; an empty one where nothing stands.
[[nodiscard]] std::vector<std::string> between_commas(std::string_view text);
/// A length over 0, in inches unless it says its unit.
[[nodiscard]] std::optional<double> inches(std::string_view text);

/// Two lengths with an x between them.
struct Sides {
    double first_in = 0.0, second_in = 0.0;
};
[[nodiscard]] std::optional<Sides> sides(std::string_view text);

/// `FROM..TO/STEP`, taken apart; FROM and TO are as `is_end` accepts them.
struct Steps {
    std::string from, to;
    double step_in = 0.0;
};
[[nodiscard]] bool is_steps(std::string_view text);
/// Absent where it is none. A fraction's slash is no step's: of all slashes the first counts that leaves an end before
/// it and a length after it.
[[nodiscard]] std::optional<Steps> steps(std::string_view text, bool (*is_end)(std::string_view));
/// From one to the other, both among them where the step meets the end. Empty where it steps over the whole range or
/// down.
[[nodiscard]] std::vector<double> stepped(double from_in, double to_in, double step_in);

}  // namespace toehold::search
