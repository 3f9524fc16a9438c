#include "drawing/annotation/labels.h"

#include "drawing/annotation/overlay.h"
#include "format/figures.h"

#include <fmt/format.h>
#include <cmath>

namespace toehold::drawing {
namespace {

using format::phrase;

constexpr double mm_per_in = 25.4;

std::string millimetres(double length_in) {
    // Halves of a tenth, as 3/4 in has, go up whatever their last bit says.
    constexpr double last_bits = 1e-7;
    const double tenths = std::round(length_in * mm_per_in * 10.0 + std::copysign(last_bits, length_in));
    if (!std::isfinite(tenths)) return "-";
    if (std::fmod(tenths, 10.0) == 0.0) return fmt::format("{:.0f}", tenths / 10.0 + 0.0);
    return fmt::format("{:.1f}", tenths / 10.0);
}

}  // namespace

std::string length_figure(double length_in, units::System system) {
    if (system == units::System::si) return millimetres(length_in);
    return std::isfinite(length_in) ? units::bare_fraction(length_in) : "-";
}

std::string length_words(double length_in, units::System system) {
    return length_figure(length_in, system) + (system == units::System::si ? " mm" : " in");
}

std::string unit_note(const format::Locale& locale) {
    const bool si = locale.system == units::System::si;
    return format::text(si ? phrase("Dimensions in mm") : phrase("Dimensions in inches"), locale);
}

std::string words_of_today(const std::string& words, bool stale) { return stale ? "(" + words + ")" : words; }

std::string force_words(double force_lb, units::System system, bool stale) {
    constexpr double nothing_lb = 0.5;
    const double shown_lb = std::abs(force_lb) < nothing_lb ? 0.0 : force_lb;
    return words_of_today(format::figure_text(shown_lb, "lb", system), stale);
}

std::string push_words(const PushShown& push, const Overlay& overlay) {
    const format::Quantity force{push.push_lb, "lb"}, upright{std::abs(push.down_lb), "lb"},
        height{push.height_in, "in"};
    // Numbered fields, here and for other distances: a place where one part meets another is `{} at {}`, another word
    // in other languages.
    format::Phrase words = phrase("{0} at {1}", force, height);
    if (push.down_lb > 0.0) words = phrase("{} and {} down at {}", force, upright, height);
    if (push.down_lb < 0.0) words = phrase("{} and {} up at {}", force, upright, height);
    return words_of_today(format::text(words, overlay.locale), overlay.stale);
}

std::string direction_words(const PushShown& push, const format::Locale& locale) {
    const double degrees = std::round(format::degrees(push.direction_rad));
    const std::string figure = format::degrees_text(std::isfinite(degrees) ? degrees : 0.0) + "\u00b0";
    return format::text(phrase("toward {}", figure), locale);
}

}  // namespace toehold::drawing
