#include "units/length.h"

#include "units/scan.h"
#include "units/unit_table.h"

#include <cmath>
#include <string>

namespace toehold::units {
namespace {

// `5/4` is the trade name of a deck board about 1 in thick, so a fraction above one is never taken as a length.
constexpr std::string_view proper_fraction =
    "a whole number and a proper fraction, such as 1 1/4 in; a board sold as 5/4 is written as it measures";

struct Number {
    double value = 0.0;
    bool has_fraction = false;
    bool whole = false;  ///< digits only
};

struct NumberRead {
    std::optional<Number> number;
    bool improper = false;
};

/// `a/b`; improper is left to the caller to refuse.
std::optional<Number> take_fraction(std::string_view& text) {
    std::string_view rest = text;
    const auto numerator = take_whole(rest);
    if (!numerator || !take(rest, '/')) return std::nullopt;
    const auto denominator = take_whole(rest);
    if (!denominator || *denominator == 0) return std::nullopt;
    text = rest;
    return Number{static_cast<double>(*numerator) / static_cast<double>(*denominator), true, false};
}

/// The fraction after a whole number, behind blanks or one hyphen.
std::optional<Number> take_following_fraction(std::string_view& text) {
    std::string_view rest = text;
    if (!take_blanks(rest) && !take(rest, '-')) return std::nullopt;
    const auto fraction = take_fraction(rest);
    if (fraction) text = rest;
    return fraction;
}

NumberRead take_number(std::string_view& text) {
    if (const auto fraction = take_fraction(text)) return {fraction, fraction->value >= 1.0};
    std::string_view rest = text;
    if (const auto whole = take_whole(rest)) {
        if (const auto fraction = take_following_fraction(rest)) {
            text = rest;
            return {Number{static_cast<double>(*whole) + fraction->value, true, false}, fraction->value >= 1.0};
        }
    }
    const auto decimal = take_decimal(text);
    if (!decimal) return {};
    return {Number{*decimal, false, std::floor(*decimal) == *decimal}, false};
}

/// Letters, or one mark of feet or inches.
std::string_view take_unit_name(std::string_view& text) {
    const auto is_letter = [](char c) { return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z'); };
    std::size_t size = 0;
    while (size < text.size() && is_letter(text[size])) ++size;
    if (size == 0 && !text.empty()) size = 1;
    const std::string_view name = text.substr(0, size);
    text.remove_prefix(size);
    return name;
}

struct Measure {
    Number number;
    Unit unit;
    [[nodiscard]] bool feet() const { return unit.multiply == 12.0; }
    [[nodiscard]] bool inches() const { return unit.multiply == 1.0 && unit.divide == 1.0; }
    [[nodiscard]] double value_in() const { return unit.to_engine(number.value); }
};

struct MeasureRead {
    std::optional<Measure> measure;
    bool improper = false;
};

MeasureRead take_measure(std::string_view& text) {
    const NumberRead read = take_number(text);
    if (!read.number) return {};
    take_blanks(text);
    const auto unit = find_unit(take_unit_name(text), Kind::length);
    if (!unit) return {};
    const Measure measure{*read.number, *unit};
    if (read.improper) return {std::nullopt, true};
    if (measure.number.has_fraction && !measure.feet() && !measure.inches()) return {};
    return {measure, false};
}

/// The inches after whole feet, behind blanks or a hyphen. Three digits in a row are refused: `1'000 in` is somebody's
/// thousand, not one foot.
MeasureRead take_inches_after_feet(std::string_view& text) {
    take_blanks(text);
    if (take(text, '-')) take_blanks(text);
    std::string_view digits = text;
    constexpr std::size_t most_digits = 2;
    if (take_whole(digits) && text.size() - digits.size() > most_digits) return {};
    MeasureRead read = take_measure(text);
    if (read.measure && (!read.measure->inches() || read.measure->number.value >= 12.0)) return {};
    return read;
}

Parsed refused(bool improper) {
    return {std::nullopt, std::string(improper ? proper_fraction : accepted(Kind::length))};
}

}  // namespace

Parsed parse_length(std::string_view text) {
    const double sign = take_sign(text);
    const MeasureRead first = take_measure(text);
    if (!first.measure) return refused(first.improper);
    double length_in = first.measure->value_in();
    if (!text.empty()) {
        if (!first.measure->feet() || !first.measure->number.whole) return refused(false);
        const MeasureRead inches = take_inches_after_feet(text);
        if (!inches.measure || !text.empty()) return refused(inches.improper);
        length_in += inches.measure->value_in();
    }
    if (!std::isfinite(length_in)) return refused(false);
    return {sign * length_in, {}};
}

}  // namespace toehold::units
