#include "search/ranges/values.h"

#include "units/quantity.h"
#include "units/scan.h"

#include <cmath>

namespace toehold::search {
namespace {

constexpr std::string_view to_sign = "..";

}  // namespace

std::vector<std::string> between_commas(std::string_view text) {
    std::vector<std::string> values;
    while (true) {
        const std::size_t comma = text.find(',');
        values.emplace_back(units::trimmed(text.substr(0, comma)));
        if (comma == std::string_view::npos) return values;
        text.remove_prefix(comma + 1);
    }
}

std::optional<double> inches(std::string_view text) {
    const std::string plain(units::trimmed(text));
    std::optional<double> length_in = units::parse(plain, units::Kind::length).value;
    if (!length_in) length_in = units::parse(plain + " in", units::Kind::length).value;
    if (!length_in || !(*length_in > 0.0)) return std::nullopt;
    constexpr double per_in = 1e9;  // the same length in whichever unit is one value
    return std::round(*length_in * per_in) / per_in;
}

std::optional<Sides> sides(std::string_view text) {
    const std::size_t sign = text.find_first_of("xX");
    if (sign == std::string_view::npos) return std::nullopt;
    const std::optional<double> first = inches(text.substr(0, sign)), second = inches(text.substr(sign + 1));
    if (!first || !second) return std::nullopt;
    return Sides{*first, *second};
}

bool is_steps(std::string_view text) { return text.find(to_sign) != std::string_view::npos; }

std::optional<Steps> steps(std::string_view text, bool (*is_end)(std::string_view)) {
    const std::size_t sign = text.find(to_sign);
    if (sign == std::string_view::npos) return std::nullopt;
    const std::string_view from = text.substr(0, sign), rest = text.substr(sign + to_sign.size());
    if (!is_end(from)) return std::nullopt;
    for (std::size_t slash = rest.find('/'); slash != std::string_view::npos; slash = rest.find('/', slash + 1)) {
        const std::optional<double> step_in = inches(rest.substr(slash + 1));
        if (step_in && is_end(rest.substr(0, slash)))
            return Steps{std::string(from), std::string(rest.substr(0, slash)), *step_in};
    }
    return std::nullopt;
}

std::vector<double> stepped(double from_in, double to_in, double step_in) {
    constexpr double reading_in = 1e-6;
    std::vector<double> all;
    if (to_in < from_in || (to_in > from_in && step_in > to_in - from_in + reading_in)) return all;
    const double count = std::floor((to_in - from_in + reading_in) / step_in) + 1.0;
    for (std::size_t index = 0; index < most_values + 1 && static_cast<double>(index) < count; ++index)
        all.push_back(from_in + static_cast<double>(index) * step_in);
    return all;
}

}  // namespace toehold::search
