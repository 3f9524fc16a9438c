#include "resistance/wood/yield_limit.h"

#include "resistance/wood/dowel_properties.h"
#include "units/limit.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <stdexcept>

namespace toehold::resistance {
namespace {

double diameter_term(double diameter_in) {
    constexpr double thin_in = 0.17;
    return diameter_in <= thin_in ? 2.2 : 10.0 * diameter_in + 0.5;
}

double k1(double strength_ratio, double length_ratio) {
    const double re = strength_ratio;
    const double rt = length_ratio;
    return (std::sqrt(re + 2.0 * re * re * (1.0 + rt + rt * rt) + rt * rt * re * re * re) - re * (1.0 + rt)) /
           (1.0 + re);
}

/// Two thirds of Fyb D^2 over Fem l^2: how slender the dowel is in a member.
double bending_term(const DowelConnection& c, double length_in) {
    return 2.0 * c.bending_yield_psi * c.diameter_in * c.diameter_in /
           (3.0 * c.main_bearing_psi * length_in * length_in);
}

double k2(const DowelConnection& c, double re) {
    return -1.0 + std::sqrt(2.0 * (1.0 + re) + bending_term(c, c.main_bearing_in) * (1.0 + 2.0 * re));
}

double k3(const DowelConnection& c, double re) {
    return -1.0 + std::sqrt(2.0 * (1.0 + re) / re + bending_term(c, c.side_bearing_in) * (2.0 + re));
}

/// The yield load of one shear plane before reduction, NDS 2018 Table 12.3.1A.
double yield_load_lb(YieldMode mode, const DowelConnection& c) {
    const double re = c.main_bearing_psi / c.side_bearing_psi;
    const double main_lb = c.diameter_in * c.main_bearing_in * c.main_bearing_psi;
    const double side_lb = c.diameter_in * c.side_bearing_in * c.side_bearing_psi;
    switch (mode) {
        case YieldMode::Im:
            return main_lb;
        case YieldMode::Is:
            return side_lb;
        case YieldMode::II:
            return k1(re, c.main_bearing_in / c.side_bearing_in) * side_lb;
        case YieldMode::IIIm:
            return k2(c, re) * main_lb / (1.0 + 2.0 * re);
        case YieldMode::IIIs:
            return k3(c, re) * c.diameter_in * c.side_bearing_in * c.main_bearing_psi / (2.0 + re);
        case YieldMode::IV:
            break;
    }
    return c.diameter_in * c.diameter_in *
           std::sqrt(2.0 * c.main_bearing_psi * c.bending_yield_psi / (3.0 * (1.0 + re)));
}

void require_no_gap(const DowelConnection& connection) {
    require_sound(connection);
    if (connection.gap_in != 0.0) throw std::invalid_argument("these equations know no gap");
}

struct Quadratic {
    double a = 0.0, b = 0.0, c = 0.0;
};

/// The root that is not negative; a > 0, c <= 0. Written so that nothing cancels where b is large (a wide gap).
double positive_root(const Quadratic& q) { return -2.0 * q.c / (q.b + std::sqrt(q.b * q.b - 4.0 * q.a * q.c)); }

}  // namespace

const char* name(YieldMode mode) {
    switch (mode) {
        case YieldMode::Im:
            return "I_m";
        case YieldMode::Is:
            return "I_s";
        case YieldMode::II:
            return "II";
        case YieldMode::IIIm:
            return "III_m";
        case YieldMode::IIIs:
            return "III_s";
        case YieldMode::IV:
            break;
    }
    return "IV";
}

double ReductionTerms::of(YieldMode mode) const {
    switch (mode) {
        case YieldMode::Im:
        case YieldMode::Is:
            return mode_I;
        case YieldMode::II:
            return mode_II;
        default:
            return mode_III_IV;
    }
}

ReductionTerms reduction_terms(double nominal_in, double used_in, double angle_rad) {
    const double angle_term = 1.0 + 0.25 * std::abs(angle_rad) / (0.5 * std::numbers::pi);
    if (units::at_least(used_in, thick_dowel_in)) return {4.0 * angle_term, 3.6 * angle_term, 3.2 * angle_term};
    const double reduction = diameter_term(used_in) * (units::at_least(nominal_in, thick_dowel_in) ? angle_term : 1.0);
    return {reduction, reduction, reduction};
}

std::vector<ModeValue> single_shear(const DowelConnection& connection, const ReductionTerms& reduction) {
    require_no_gap(connection);
    std::vector<ModeValue> modes;
    for (const YieldMode mode :
         {YieldMode::Im, YieldMode::Is, YieldMode::II, YieldMode::IIIm, YieldMode::IIIs, YieldMode::IV}) {
        modes.push_back({mode, yield_load_lb(mode, connection) / reduction.of(mode)});
    }
    return modes;
}

std::vector<ModeValue> double_shear(const DowelConnection& connection, const ReductionTerms& reduction) {
    require_no_gap(connection);
    std::vector<ModeValue> modes{{YieldMode::Im, yield_load_lb(YieldMode::Im, connection) / reduction.mode_I}};
    for (const YieldMode mode : {YieldMode::Is, YieldMode::IIIs, YieldMode::IV}) {
        modes.push_back({mode, 2.0 * yield_load_lb(mode, connection) / reduction.of(mode)});
    }
    return modes;
}

ModeValue governing(std::span<const ModeValue> modes) {
    if (modes.empty()) throw std::invalid_argument("no yield modes");
    return *std::min_element(modes.begin(), modes.end(),
                             [](const ModeValue& a, const ModeValue& b) { return a.value_lb < b.value_lb; });
}

void require_sound(const DowelConnection& c) {
    const bool sound = c.diameter_in > 0.0 && c.bending_yield_psi > 0.0 && c.main_bearing_in > 0.0 &&
                       c.side_bearing_in > 0.0 && c.main_bearing_psi > 0.0 && c.side_bearing_psi > 0.0 &&
                       c.gap_in >= 0.0;
    if (!sound) throw std::invalid_argument("dowel connection without a size or strength above 0");
}

std::array<ModeValue, 6> single_shear_with_gap(const DowelConnection& connection, const ReductionTerms& reduction) {
    require_sound(connection);
    const DowelConnection& c = connection;
    const double main = c.main_bearing_psi * c.diameter_in;
    const double side = c.side_bearing_psi * c.diameter_in;
    const double moment = c.bending_yield_psi * c.diameter_in * c.diameter_in * c.diameter_in / 6.0;
    const double lm = c.main_bearing_in;
    const double ls = c.side_bearing_in;
    // A member in which the dowel turns stiff gives 1/(4q), l/2 and q l^2/4; one in which it yields 1/(2q), 0 and M.
    const Quadratic two{0.25 / side + 0.25 / main, 0.5 * ls + c.gap_in + 0.5 * lm,
                        -0.25 * side * ls * ls - 0.25 * main * lm * lm};
    const Quadratic three_main{0.5 / side + 0.25 / main, c.gap_in + 0.5 * lm, -moment - 0.25 * main * lm * lm};
    const Quadratic three_side{0.25 / side + 0.5 / main, 0.5 * ls + c.gap_in, -0.25 * side * ls * ls - moment};
    const Quadratic four{0.5 / side + 0.5 / main, c.gap_in, -2.0 * moment};
    return {{{YieldMode::Im, main * lm / reduction.mode_I},
             {YieldMode::Is, side * ls / reduction.mode_I},
             {YieldMode::II, positive_root(two) / reduction.mode_II},
             {YieldMode::IIIm, positive_root(three_main) / reduction.mode_III_IV},
             {YieldMode::IIIs, positive_root(three_side) / reduction.mode_III_IV},
             {YieldMode::IV, positive_root(four) / reduction.mode_III_IV}}};
}

}  // namespace toehold::resistance
