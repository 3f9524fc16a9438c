#include "output/comparison_values.h"

#include "output/figures.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>

namespace toehold::output {
namespace {

// What the file's canonical form writes after a number.
constexpr std::array<std::string_view, 7> written_units{"in", "lbf", "lb-in", "lb/in", "psi/in", "plf", "ft"};

std::string quantity(double value, std::string_view unit, units::System system) {
    if (unit == "in" && system == units::System::us) return units::fraction_in(value);
    const Figure figure = in_system(value, unit, system);
    return fmt::format("{:.6g} {}", figure.value, figure.unit);
}

/// Quantities of a text, each a number, a blank and a unit, in the reader's system.
std::string shown(const std::string& text, units::System system) {
    std::string result;
    std::string_view rest = text;
    while (!rest.empty()) {
        const std::string_view word = rest.substr(0, std::min(rest.find(' ') + 1, rest.size()));
        const std::string_view after = rest.substr(word.size());
        const std::string_view unit = after.substr(0, after.find_first_of(" ,()"));
        const auto number = units::parse_number(word);
        const bool known = std::find(written_units.begin(), written_units.end(), unit) != written_units.end();
        if (word.ends_with(' ') && number && known) {
            result += quantity(*number, unit, system);
            rest = after.substr(unit.size());
        } else {
            result += word.empty() ? rest : word;
            rest = word.empty() ? std::string_view() : after;
        }
    }
    return result;
}

std::string or_dash(std::string text) { return text.empty() ? std::string("-") : std::move(text); }

}  // namespace

std::pair<std::string, std::string> shown_values(const std::string& first, const std::string& second,
                                                 units::System system) {
    std::string one = shown(first, system);
    std::string other = shown(second, system);
    if (one == other && first != second) return {or_dash(first), or_dash(second)};
    return {or_dash(std::move(one)), or_dash(std::move(other))};
}

}  // namespace toehold::output
