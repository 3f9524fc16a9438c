// Values as text: exactly for files, rounded for people.
#include "units/quantity.h"
#include "units/unit_table.h"

#include <fmt/format.h>
#include <cmath>
#include <stdexcept>

namespace toehold::units {
namespace {

struct Printed {
    std::string_view unit;
    double per_engine_unit = 1.0;
};

Printed printed(Kind kind, System system) {
    const bool us = system == System::us;
    switch (kind) {
        case Kind::length:
            return us ? Printed{"in"} : Printed{"mm", mm_per_in};
        case Kind::force:
            return us ? Printed{"lb"} : Printed{"N", newton_per_lb};
        case Kind::stress:
            return us ? Printed{"psi"} : Printed{"MPa", mpa_per_psi};
        case Kind::moment:
            return us ? Printed{"lb-in"} : Printed{"N-m", newton_metre_per_lb_in};
        case Kind::force_per_length:
            return us ? Printed{"lb/in"} : Printed{"N/mm", newton_per_mm_per_lb_per_in};
        case Kind::bed_stiffness:
            return us ? Printed{"psi/in"} : Printed{"MPa/mm", mpa_per_mm_per_psi_per_in};
        case Kind::angle:
            return {"deg"};
        case Kind::pressure:
            return us ? Printed{"psf"} : Printed{"kPa", kpa_per_psf};
        case Kind::area:
            return us ? Printed{"ft2"} : Printed{"m2", m2_per_ft2};
    }
    return {};
}

std::string without_trailing_zeros(std::string decimal) {
    if (decimal.find('.') == std::string::npos) return decimal;
    decimal.erase(decimal.find_last_not_of('0') + 1);
    if (decimal.back() == '.') decimal.pop_back();
    return decimal;
}

/// Never `-0`: a rounded value has no sign when nothing is left of it.
std::string rounded(double value, int decimals) {
    std::string text = fmt::format("{:.{}f}", value, decimals);
    if (text.front() == '-' && text.find_first_of("123456789") == std::string::npos) text.erase(0, 1);
    return text;
}

}  // namespace

std::string exact(double value, Kind kind) {
    if (!std::isfinite(value)) throw std::invalid_argument("a quantity that is not finite cannot be written");
    const std::string_view unit = kind == Kind::force ? "lbf" : printed(kind, System::us).unit;
    return fmt::format("{} {}", value, unit);
}

std::string display(double value, Kind kind, System system, int decimals) {
    if (std::isnan(value)) return "not known";
    if (std::isinf(value)) return "no limit";
    const Printed print = printed(kind, system);
    return fmt::format("{} {}", rounded(value * print.per_engine_unit, decimals), print.unit);
}

std::string fraction_in(double length_in) {
    constexpr double exact_to_in = 0.001;
    constexpr double largest_in = 1e6;
    constexpr int finest = 32;
    const double parts = std::round(length_in * finest);
    if (!(std::abs(length_in) < largest_in)) return display(length_in, Kind::length, System::us, 0);
    if (std::abs(length_in - parts / finest) > exact_to_in) {
        return without_trailing_zeros(rounded(length_in, 3)) + " in";
    }
    int numerator = static_cast<int>(std::abs(parts)) % finest;
    const int whole = static_cast<int>(std::abs(parts)) / finest;
    const std::string_view sign = parts < 0.0 ? "-" : "";
    if (numerator == 0) return fmt::format("{}{} in", sign, whole);
    int denominator = finest;
    for (; numerator % 2 == 0; numerator /= 2) denominator /= 2;
    if (whole == 0) return fmt::format("{}{}/{} in", sign, numerator, denominator);
    return fmt::format("{}{} {}/{} in", sign, whole, numerator, denominator);
}

std::string bare_fraction(double length_in) {
    std::string text = fraction_in(length_in);
    constexpr std::string_view unit = " in";
    if (text.ends_with(unit)) text.resize(text.size() - unit.size());
    return text;
}

}  // namespace toehold::units
