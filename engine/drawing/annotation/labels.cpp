#include "drawing/annotation/labels.h"

#include "format/figures.h"

#include <fmt/format.h>
#include <cmath>
#include <string_view>

namespace toehold::drawing {
namespace {

constexpr double mm_per_in = 25.4;

std::string millimetres(double length_in) {
    // Halves of a tenth, as 3/4 in has, go up whatever their last bit says.
    constexpr double last_bits = 1e-7;
    const double tenths = std::round(length_in * mm_per_in * 10.0 + std::copysign(last_bits, length_in));
    if (!std::isfinite(tenths)) return "-";
    if (std::fmod(tenths, 10.0) == 0.0) return fmt::format("{:.0f}", tenths / 10.0 + 0.0);
    return fmt::format("{:.1f}", tenths / 10.0);
}

std::string without_unit(std::string words) {
    constexpr std::string_view unit = " in";
    if (words.size() > unit.size() && words.compare(words.size() - unit.size(), unit.size(), unit) == 0)
        words.resize(words.size() - unit.size());
    return words;
}

}  // namespace

std::string length_figure(double length_in, units::System system) {
    if (system == units::System::si) return millimetres(length_in);
    return std::isfinite(length_in) ? without_unit(units::fraction_in(length_in)) : "-";
}

std::string length_words(double length_in, units::System system) {
    return length_figure(length_in, system) + (system == units::System::si ? " mm" : " in");
}

std::string unit_note(units::System system) {
    return system == units::System::si ? "Dimensions in mm" : "Dimensions in inches";
}

std::string force_words(double force_lb, units::System system, bool stale) {
    constexpr double nothing_lb = 0.5;
    const double shown_lb = std::abs(force_lb) < nothing_lb ? 0.0 : force_lb;
    const std::string words = format::figure_text(shown_lb, "lb", system);
    return stale ? "(" + words + ")" : words;
}

std::string push_words(const PushShown& push, const Overlay& overlay) {
    std::string words = format::figure_text(push.push_lb, "lb", overlay.system);
    if (push.down_lb != 0.0)
        words += (push.down_lb > 0.0 ? " and " : " and up ") +
                 format::figure_text(std::abs(push.down_lb), "lb", overlay.system) +
                 (push.down_lb > 0.0 ? " down" : "");
    words += " at " + format::figure_text(push.height_in, "in", overlay.system);
    return overlay.stale ? "(" + words + ")" : words;
}

std::string direction_words(const PushShown& push) {
    const double degrees = std::round(format::degrees(push.direction_rad));
    return "towards " + format::degrees_text(std::isfinite(degrees) ? degrees : 0.0) + "\u00b0";
}

}  // namespace toehold::drawing
