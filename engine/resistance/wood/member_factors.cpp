#include "resistance/wood/member_factors.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <stdexcept>

namespace toehold::resistance {
namespace {

constexpr double thickest_two_or_three_in = 3.0;  // nominal thickness 2 and 3 in, dressed or rough

struct SizeRow {
    double nominal_width_in;
    double two_or_three_thick;
    double four_thick;
};

// NDS Supplement 2018 Table 4A, CF for Fb; the last row is `14 in and wider`.
constexpr std::array<SizeRow, 7> size_rows{{{4.0, 1.5, 1.5},
                                            {5.0, 1.4, 1.4},
                                            {6.0, 1.3, 1.3},
                                            {8.0, 1.2, 1.3},
                                            {10.0, 1.1, 1.2},
                                            {12.0, 1.0, 1.1},
                                            {14.0, 0.9, 1.0}}};

struct FlatRow {
    double dressed_width_in;
    double two_or_three_thick;
    double four_thick;
};

// NDS Supplement 2018 Table 4A, Cfu; from this dressed width on.
constexpr std::array<FlatRow, 6> flat_rows{
    {{0.0, 1.0, 1.0}, {3.5, 1.1, 1.0}, {4.5, 1.1, 1.05}, {5.5, 1.15, 1.05}, {7.25, 1.15, 1.05}, {9.25, 1.2, 1.1}}};

bool is_modulus(MemberProperty property) {
    return property == MemberProperty::modulus || property == MemberProperty::modulus_min;
}

bool depends_on_time(MemberProperty property) {
    return property != MemberProperty::compression_perp && !is_modulus(property);
}

double wet_dimension_lumber(MemberProperty property, double reference_with_size_psi) {
    constexpr double bending_exempt_psi = 1150.0;
    constexpr double compression_exempt_psi = 750.0;
    switch (property) {
        case MemberProperty::bending:
            return reference_with_size_psi <= bending_exempt_psi ? 1.0 : 0.85;
        case MemberProperty::tension:
            return 1.0;
        case MemberProperty::shear:
            return 0.97;
        case MemberProperty::compression_perp:
            return 0.67;
        case MemberProperty::compression:
            return reference_with_size_psi <= compression_exempt_psi ? 1.0 : 0.8;
        case MemberProperty::modulus:
        case MemberProperty::modulus_min:
            return 0.9;
    }
    throw std::invalid_argument("no such property");
}

double wet_timber(MemberProperty property) {
    if (property == MemberProperty::compression_perp) return 0.67;
    return property == MemberProperty::compression ? 0.91 : 1.0;
}

double wet_glulam(MemberProperty property) {
    switch (property) {
        case MemberProperty::bending:
        case MemberProperty::tension:
            return 0.8;
        case MemberProperty::shear:
            return 0.875;
        case MemberProperty::compression_perp:
            return 0.53;
        case MemberProperty::compression:
            return 0.73;
        case MemberProperty::modulus:
        case MemberProperty::modulus_min:
            return 0.833;
    }
    throw std::invalid_argument("no such property");
}

void need_thickness(double smallest_in) {
    if (!(smallest_in > 0.0)) throw std::invalid_argument("a member needs a thickness above 0");
}

}  // namespace

double member_load_duration(MemberProperty property, double load_duration) {
    if (!(load_duration >= 0.0)) throw std::invalid_argument("load duration factor below 0");
    return depends_on_time(property) ? load_duration : 1.0;
}

double member_wet_service(MemberProperty property, MemberMoisture moisture, double reference_with_size_psi,
                          WetTable table) {
    if (moisture == MemberMoisture::dry || table == WetTable::none) return 1.0;
    if (table == WetTable::timber) return wet_timber(property);
    if (table == WetTable::glulam) return wet_glulam(property);
    return wet_dimension_lumber(property, reference_with_size_psi);
}

double member_temperature(MemberProperty property, MemberTemperature temperature, MemberMoisture moisture) {
    const bool wet = moisture == MemberMoisture::wet;
    const bool insensitive = property == MemberProperty::tension || is_modulus(property);
    switch (temperature) {
        case MemberTemperature::to_100F:
            return 1.0;
        case MemberTemperature::to_125F:
            return insensitive ? 0.9 : (wet ? 0.7 : 0.8);
        case MemberTemperature::to_150F:
            return insensitive ? 0.9 : (wet ? 0.5 : 0.7);
    }
    throw std::invalid_argument("temperature out of the table");
}

double member_incising(MemberProperty property, bool incised) {
    if (!incised || property == MemberProperty::compression_perp) return 1.0;
    return is_modulus(property) ? 0.95 : 0.8;
}

double size_factor_bending(double thickness_in, double width_in) {
    const double narrow_in = std::min(thickness_in, width_in);
    const double wide_in = std::max(thickness_in, width_in);
    need_thickness(narrow_in);
    const auto row = std::find_if(size_rows.begin(), size_rows.end() - 1,
                                  [&](const SizeRow& candidate) { return wide_in <= candidate.nominal_width_in; });
    return narrow_in <= thickest_two_or_three_in ? row->two_or_three_thick : row->four_thick;
}

double stud_size_factor_bending(double width_in) {
    constexpr double narrow_stud_in = 4.0;
    need_thickness(width_in);
    return width_in <= narrow_stud_in ? 1.1 : 1.0;
}

double included_size_factor(double thickness_in, double width_in) {
    constexpr double next_below_eight_in = 6.0;
    constexpr double widest_included_in = 12.0;
    const double narrow_in = std::min(thickness_in, width_in);
    const double wide_in = std::max(thickness_in, width_in);
    need_thickness(narrow_in);
    const double thick = narrow_in > thickest_two_or_three_in && wide_in > next_below_eight_in ? 1.1 : 1.0;
    return wide_in > widest_included_in ? 0.9 * thick : thick;
}

double timber_size_factor(double depth_in) {
    need_thickness(depth_in);
    return std::min(1.0, std::pow(12.0 / depth_in, 1.0 / 9.0));
}

double glulam_volume_factor(double breadth_in, double depth_in, double length_in, double exponent) {
    need_thickness(std::min(breadth_in, depth_in));
    if (!(exponent > 0.0)) throw std::invalid_argument("a volume factor needs an exponent above 0");
    constexpr double reference_length_in = 21.0 * 12.0;
    const double length = length_in > 0.0 ? reference_length_in / length_in : 1.0;
    return std::min(1.0, std::pow(length * (12.0 / depth_in) * (5.125 / breadth_in), 1.0 / exponent));
}

double depth_factor(double depth_in, double exponent) {
    need_thickness(depth_in);
    return std::min(1.0, std::pow(12.0 / depth_in, exponent));
}

double flat_use(double thickness_in, double width_in) {
    constexpr double dressing_tolerance_in = 1.0 / 32.0;
    const double narrow_in = std::min(thickness_in, width_in);
    const double wide_in = std::max(thickness_in, width_in);
    need_thickness(narrow_in);
    double factor = 1.0;
    for (const FlatRow& row : flat_rows) {
        if (wide_in < row.dressed_width_in - dressing_tolerance_in) break;
        factor = narrow_in <= thickest_two_or_three_in ? row.two_or_three_thick : row.four_thick;
    }
    return factor;
}

double bearing_area_factor(double length_in, double end_distance_in) {
    if (!(length_in > 0.0)) throw std::invalid_argument("a bearing needs a length above 0");
    if (length_in >= 6.0 || end_distance_in < 3.0) return 1.0;
    return (length_in + 0.375) / length_in;
}

double effective_length_in(double unsupported_length_in, double depth_in) {
    if (!(depth_in > 0.0)) throw std::invalid_argument("a member needs a depth above 0");
    const double ratio = unsupported_length_in / depth_in;
    if (ratio < 7.0) return 2.06 * unsupported_length_in;
    if (ratio <= 14.3) return 1.63 * unsupported_length_in + 3.0 * depth_in;
    return 1.84 * unsupported_length_in;
}

double beam_slenderness(double effective_length_in, double depth_in, double breadth_in) {
    if (!(breadth_in > 0.0)) throw std::invalid_argument("a member needs a breadth above 0");
    return std::sqrt(effective_length_in * depth_in) / breadth_in;
}

double critical_buckling_psi(double adjusted_modulus_min_psi, double slenderness) {
    if (!(slenderness > 0.0)) throw std::invalid_argument("slenderness must be above 0");
    return 1.20 * adjusted_modulus_min_psi / (slenderness * slenderness);
}

double beam_stability(double critical_psi, double bending_psi) {
    if (!(critical_psi > 0.0 && bending_psi > 0.0)) throw std::invalid_argument("stresses must be above 0");
    const double ratio = critical_psi / bending_psi;
    const double mean = (1.0 + ratio) / 1.9;
    return mean - std::sqrt(mean * mean - ratio / 0.95);
}

double member_format_conversion(MemberProperty property) {
    switch (property) {
        case MemberProperty::bending:
            return 2.54;
        case MemberProperty::tension:
            return 2.70;
        case MemberProperty::shear:
            return 2.88;
        case MemberProperty::compression_perp:
            return 1.67;
        case MemberProperty::compression:
            return 2.40;
        case MemberProperty::modulus:
            return 1.0;
        case MemberProperty::modulus_min:
            return 1.76;
    }
    throw std::invalid_argument("no such property");
}

double member_resistance_factor(MemberProperty property) {
    switch (property) {
        case MemberProperty::bending:
        case MemberProperty::modulus_min:
            return 0.85;
        case MemberProperty::tension:
            return 0.80;
        case MemberProperty::shear:
            return 0.75;
        case MemberProperty::compression_perp:
        case MemberProperty::compression:
            return 0.90;
        case MemberProperty::modulus:
            return 1.0;
    }
    throw std::invalid_argument("no such property");
}

double member_time_effect(MemberProperty property, double time_effect) {
    if (!(time_effect >= 0.0)) throw std::invalid_argument("time effect factor below 0");
    return depends_on_time(property) ? time_effect : 1.0;
}

}  // namespace toehold::resistance
