// Quantities as fields show them, and text as people type it.
#include "editing/fields.h"
#include "editing/fields/reading.h"
#include "units/unit_table.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace toehold::editing {
namespace {

/// Nearer to a fraction or a half millimetre than this is that: what arithmetic leaves, not what a person measured.
constexpr double same_in = 1e-9;
/// Beyond any detail, and beyond what 32nds of it could be counted in.
constexpr double largest_in = 1e6;

std::optional<double> whole_multiple(double value, double step, double slack) {
    const double multiple = std::round(value / step);
    if (std::abs(value - multiple * step) > slack) return std::nullopt;
    return multiple;
}

std::optional<std::string> as_fraction(double length_in) {
    constexpr int parts = 32;
    const std::optional<double> counted = whole_multiple(length_in, 1.0 / parts, same_in);
    if (!counted) return std::nullopt;
    const auto all = static_cast<long long>(std::abs(*counted));
    const char* const sign = *counted < 0.0 ? "-" : "";
    const long long whole = all / parts;
    long long numerator = all % parts;
    long long denominator = parts;
    if (numerator == 0) return fmt::format("{}{} in", sign, whole);
    for (; numerator % 2 == 0; numerator /= 2) denominator /= 2;
    if (whole == 0) return fmt::format("{}{}/{} in", sign, numerator, denominator);
    return fmt::format("{}{} {}/{} in", sign, whole, numerator, denominator);
}

std::optional<std::string> as_millimetres(double length_in) {
    const std::optional<double> halves = whole_multiple(length_in * units::mm_per_in, 0.5, same_in * units::mm_per_in);
    if (!halves) return std::nullopt;
    const double mm = 0.5 * *halves + 0.0;
    return fmt::format("{} mm", mm == 0.0 ? 0.0 : mm);
}

/// At least four decimals and at least six digits, none of them an idle zero.
std::string decimals(double value, units::Kind kind, units::System system) {
    constexpr int least = 4;
    constexpr int digits = 6;
    const double size = std::abs(value / parse_typed("1", kind, system).value.value_or(1.0));
    const int leading = size > 0.0 ? static_cast<int>(std::floor(std::log10(size))) : 0;
    constexpr int most = 30;
    const int places = std::clamp(digits - leading, least, most);
    std::string text = units::display(value, kind, system, places);
    const std::size_t point = text.find('.');
    const std::size_t blank = text.find(' ');
    if (point == std::string::npos || blank == std::string::npos) return text;
    std::size_t end = text.find_last_not_of('0', blank - 1) + 1;
    if (end == point + 1) end = point;
    return text.substr(0, end) + text.substr(blank);
}

}  // namespace

std::string shown(double value, units::Kind kind, units::System system) {
    if (kind == units::Kind::length && std::abs(value) < largest_in) {
        const std::optional<std::string> fraction = as_fraction(value);
        const std::optional<std::string> millimetres = as_millimetres(value);
        const bool us = system == units::System::us;
        if (const std::optional<std::string>& own = us ? fraction : millimetres) return *own;
        if (const std::optional<std::string>& other = us ? millimetres : fraction) return *other;
    }
    return decimals(value, kind, system);
}

std::optional<double> typed(const std::string& text, units::Kind kind, units::System system) {
    return parse_typed(text, kind, system).value;
}

}  // namespace toehold::editing
