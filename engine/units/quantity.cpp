#include "units/quantity.h"

#include "units/length.h"
#include "units/scan.h"
#include "units/unit_table.h"

#include <cmath>

namespace toehold::units {

std::string_view accepted(Kind kind) {
    switch (kind) {
        case Kind::length:
            return "a length with its unit, such as 3 3/8 in, 3'-0\" or 86 mm";
        case Kind::force:
            return "a force with its unit, such as 200 lbf or 890 N";
        case Kind::stress:
            return "a stress with its unit, such as 900 psi or 6.2 MPa";
        case Kind::moment:
            return "a moment with its unit, such as 8400 lb-in, 700 lb-ft or 950 N-m";
        case Kind::force_per_length:
            return "a force per length with its unit, such as 50 plf, 246 lb/in or 0.73 kN/m";
        case Kind::bed_stiffness:
            return "a bed stiffness with its unit, such as 25000 psi/in or 6.8 MPa/mm";
        case Kind::angle:
            return "an angle with its unit, such as 45 deg or 0.785 rad";
        case Kind::pressure:
            return "a load per area with its unit, such as 20 psf or 0.96 kPa";
        case Kind::area:
            return "an area with its unit, such as 20 ft2 or 1.9 m2";
    }
    return {};
}

Parsed parse(std::string_view text, Kind kind) {
    std::string_view rest = trimmed(text);
    if (kind == Kind::length) return parse_length(rest);
    Parsed refused{std::nullopt, std::string(accepted(kind))};
    const double sign = take_sign(rest);
    const auto number = take_decimal(rest);
    if (!number) return refused;
    take_blanks(rest);
    const auto unit = find_unit(rest, kind);
    if (!unit) return refused;
    const double value = sign * unit->to_engine(*number);
    if (!std::isfinite(value)) return refused;
    return {value, {}};
}

std::optional<double> parse_number(std::string_view text) {
    std::string_view rest = trimmed(text);
    const double sign = take_sign(rest);
    const auto number = take_decimal(rest);
    if (!number || !rest.empty()) return std::nullopt;
    return sign * *number;
}

}  // namespace toehold::units
