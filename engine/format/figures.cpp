#include "format/figures.h"

#include "units/unit_table.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <numbers>

namespace toehold::format {
namespace {

using units::mm_per_in;
using units::newton_per_lb;

struct Counterpart {
    std::string_view unit, si_unit;
    double factor;
};

constexpr Counterpart counterparts[] = {
    {"in", "mm", mm_per_in},
    {"in2", "mm2", mm_per_in* mm_per_in},
    {"in3", "mm3", mm_per_in* mm_per_in* mm_per_in},
    {"in4", "mm4", mm_per_in* mm_per_in* mm_per_in* mm_per_in},
    {"ft", "m", 12.0 * mm_per_in / 1000.0},
    {"lb", "N", newton_per_lb},
    {"lbf", "N", newton_per_lb},
    {"kip", "kN", newton_per_lb},
    {"psi", "MPa", units::mpa_per_psi},
    {"ksi", "MPa", 1000.0 * units::mpa_per_psi},
    {"lb-in", "N-m", units::newton_metre_per_lb_in},
    {"lb in", "N-m", units::newton_metre_per_lb_in},
    {"in-lb", "N-m", units::newton_metre_per_lb_in},
    {"in lb", "N-m", units::newton_metre_per_lb_in},
    {"lb-ft", "N-m", 12.0 * units::newton_metre_per_lb_in},
    {"lb-in/rad", "N-m/rad", units::newton_metre_per_lb_in},
    {"lb-in/in", "N-mm/mm", newton_per_lb},
    {"lb/in", "N/mm", units::newton_per_mm_per_lb_per_in},
    {"lb/ft", "N/mm", units::newton_per_mm_per_lb_per_in / 12.0},
    {"plf", "N/mm", units::newton_per_mm_per_lb_per_in / 12.0},
    {"psf", "kPa", units::kpa_per_psf},
    {"ft2", "m2", units::m2_per_ft2},
    {"psi/in", "MPa/mm", units::mpa_per_mm_per_psi_per_in},
    {"lb/in3", "MPa/mm", units::mpa_per_mm_per_psi_per_in},
};

std::string without_trailing_zeros(std::string text) {
    if (text.find('.') == std::string::npos) return text;
    text.erase(text.find_last_not_of('0') + 1);
    if (text.back() == '.') text.pop_back();
    return text == "-0" ? "0" : text;
}

}  // namespace

Figure in_system(double value, std::string_view unit, units::System system) {
    if (system == units::System::si) {
        for (const Counterpart& row : counterparts) {
            if (row.unit == unit) return {value * row.factor, std::string(row.si_unit)};
        }
    }
    return {value, std::string(unit)};
}

std::string number_text(double value) {
    constexpr double smallest = 1e-4;
    constexpr double largest = 1e7;
    if (!std::isfinite(value)) return "-";
    const double size = std::abs(value);
    if (size == 0.0) return "0";
    if (size < smallest || size >= largest) return fmt::format("{:.2e}", value);
    const int digits_before_point = static_cast<int>(std::floor(std::log10(size))) + 1;
    const int decimals = std::max(0, 4 - digits_before_point);
    return without_trailing_zeros(fmt::format("{:.{}f}", value, decimals));
}

std::string number_text(double value, std::string_view unit, units::System system) {
    return number_text(in_system(value, unit, system).value);
}

std::string figure_text(double value, std::string_view unit, units::System system) {
    const Figure figure = in_system(value, unit, system);
    const std::string number = number_text(figure.value);
    return figure.unit.empty() ? number : number + " " + figure.unit;
}

std::string ratio_text(double ratio) {
    if (!std::isfinite(ratio)) return "-";
    if (std::abs(ratio) >= 1000.0) return number_text(ratio);
    constexpr int most_decimals = 5;
    for (int decimals = 2; decimals <= most_decimals; ++decimals) {
        std::string text = fmt::format("{:.{}f}", ratio, decimals);
        if (ratio == 1.0 || without_trailing_zeros(text) != "1") return text;
    }
    return ratio > 1.0 ? ">1" : "<1";
}

std::string degrees_text(double degrees) {
    if (!std::isfinite(degrees)) return "-";
    double turned = std::fmod(degrees, 360.0);
    if (turned < 0.0) turned += 360.0;
    std::string text = without_trailing_zeros(fmt::format("{:.1f}", turned));
    return text == "360" ? "0" : text;
}

double degrees(double radians) {
    // Nine decimals, so that a twelfth of a turn is 30 and not 29.999999999999996.
    constexpr double places = 1e9;
    return std::round(radians * 180.0 / std::numbers::pi * places) / places;
}

}  // namespace toehold::format
