#include "editing/fields/reading.h"

#include "catalog/closest_ids.h"
#include "editing/fields.h"
#include "units/scan.h"
#include "units/unit_table.h"
#include "xml/document/characters.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace toehold::editing {
namespace {

std::string lowered(std::string text) {
    for (char& letter : text) {
        if (letter >= 'A' && letter <= 'Z') letter = static_cast<char>(letter - 'A' + 'a');
    }
    return text;
}

std::string_view unit_of(units::Kind kind, units::System system) {
    const bool us = system == units::System::us;
    switch (kind) {
        case units::Kind::length:
            return us ? "in" : "mm";
        case units::Kind::force:
            return us ? "lb" : "N";
        case units::Kind::stress:
            return us ? "psi" : "MPa";
        case units::Kind::moment:
            return us ? "lb-in" : "N-m";
        case units::Kind::force_per_length:
            return us ? "lb/in" : "N/mm";
        case units::Kind::bed_stiffness:
            return us ? "psi/in" : "MPa/mm";
        case units::Kind::angle:
            return "deg";
        case units::Kind::pressure:
            return us ? "psf" : "kPa";
        case units::Kind::area:
            return us ? "ft2" : "m2";
    }
    return {};
}

/// The reader's unit in words, as a number alone counts.
std::string_view spoken_unit(units::Kind kind, units::System system) {
    const bool us = system == units::System::us;
    if (kind == units::Kind::length) return us ? "inches" : "millimeters";
    if (kind == units::Kind::force) return us ? "pounds" : "newtons";
    if (kind == units::Kind::angle) return "degrees";
    return unit_of(kind, system);
}

std::optional<Phrase> outside(const Phrase& label, double value, Range range) {
    if (range == Range::positive && !(value > 0.0)) return phrase("{} must be more than zero.", label);
    if (range == Range::not_negative && !(value >= 0.0)) return phrase("{} must not be negative.", label);
    return std::nullopt;
}

/// Nearer to a fraction or a half millimeter than this is that: what arithmetic leaves, not what a person measured.
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

units::Parsed parse_typed(const std::string& text, units::Kind kind, units::System system) {
    units::Parsed with_unit = units::parse(text, kind);
    // Whatever is wrong with a text beyond its lack of a unit shows when it has one.
    if (with_unit.value || with_unit.accepted != units::accepted(kind)) return with_unit;
    return units::parse(fmt::format("{} {}", text, unit_of(kind, system)), kind);
}

std::string trimmed(const std::string& text) { return std::string(xml::trimmed(text)); }

Phrase must_be_given(const Phrase& label) { return phrase("{} must be given.", label); }

Reading<double> read_quantity(const Phrase& label, const std::string& text, units::Kind kind, units::System system,
                              Range range) {
    const units::Parsed parsed = parse_typed(text, kind, system);
    if (!parsed.value) {
        return {std::nullopt,
                phrase("{} takes {}; a number alone counts as {}.", label, parsed.accepted, spoken_unit(kind, system))};
    }
    if (const std::optional<Phrase> refusal = outside(label, *parsed.value, range)) return {std::nullopt, *refusal};
    return {parsed.value, {}};
}

Reading<double> read_factor(const Phrase& label, const std::string& text) {
    const std::optional<double> value = units::parse_number(text);
    if (!value) return {std::nullopt, phrase("{} takes a plain number such as 1.6.", label)};
    if (const std::optional<Phrase> refusal = outside(label, *value, Range::positive)) {
        return {std::nullopt, *refusal};
    }
    return {value, {}};
}

Reading<int> read_count(const Phrase& label, const std::string& text, int least, int most) {
    const std::string word = trimmed(text);
    std::string_view rest = word;
    const std::optional<int> value = units::take_whole(rest);
    if (value && rest.empty() && *value >= least && *value <= most) return {value, {}};
    return {std::nullopt, phrase("{} takes a whole number from {} to {}.", label, least, most)};
}

Reading<std::string> read_choice(const Phrase& label, const std::string& text, const std::vector<Choice>& choices) {
    const std::string wanted = lowered(trimmed(text));
    std::vector<std::string> known;
    for (const Choice& choice : choices) {
        if (wanted == lowered(choice.value) || wanted == lowered(format::english(choice.label)))
            return {choice.value, {}};
        known.push_back(choice.value);
    }
    constexpr std::size_t most_told = 5;
    const bool few = known.size() <= most_told;
    const std::vector<std::string> near = few ? known : catalog::closest_ids(wanted, known, most_told);
    const std::string listed = fmt::format("{}", fmt::join(near, ", "));
    return {std::nullopt,
            few ? phrase("{} takes {}.", label, listed) : phrase("{} takes {} or another listed.", label, listed)};
}

Reading<std::string> read_words(const Phrase& label, const std::string& text) {
    if (xml::first_bad_byte(text)) return {std::nullopt, phrase("{} takes text without control characters.", label)};
    return {trimmed(text), {}};
}

Reading<std::string> read_id(const Phrase& label, const std::string& text, const std::vector<std::string>& taken) {
    Reading<std::string> words = read_words(label, text);
    if (!words.value) return words;
    const std::string& id = *words.value;
    if (id.empty() || id.find_first_of(" \t\r\n\"'[]") != std::string::npos) {
        return {std::nullopt,
                phrase("{} takes a short name such as A or B1, without blanks, quotes or square brackets.", label)};
    }
    if (std::find(taken.begin(), taken.end(), id) != taken.end()) {
        return {std::nullopt, phrase("{} {} is taken: it must differ from every other.", label, id)};
    }
    return {id, {}};
}

std::string shown(double value, units::Kind kind, units::System system) {
    if (kind == units::Kind::length && std::abs(value) < largest_in) {
        const std::optional<std::string> fraction = as_fraction(value);
        const std::optional<std::string> millimeters = as_millimetres(value);
        const bool us = system == units::System::us;
        if (const std::optional<std::string>& own = us ? fraction : millimeters) return *own;
        if (const std::optional<std::string>& other = us ? millimeters : fraction) return *other;
    }
    return decimals(value, kind, system);
}

std::optional<double> typed(const std::string& text, units::Kind kind, units::System system) {
    return parse_typed(text, kind, system).value;
}

}  // namespace toehold::editing
