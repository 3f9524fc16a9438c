// Factors of members of sawn lumber and of a file's own material.
#include "checks/basis/factor.h"
#include "checks/basis/incising.h"
#include "checks/basis/wood_basis.h"

#include <algorithm>
#include <string>
#include <utility>

namespace toehold::checks {
namespace {

using format::phrase;
using format::Quantity;
using resistance::MemberProperty;

void apply_duration(Adjusted& adjusted, MemberProperty property, const model::Basis& basis) {
    if (basis.method != model::Method::asd || property == MemberProperty::compression_perp) return;
    apply(adjusted,
          by_basis("C_D", phrase("load duration factor"), basis.load_duration.has_value(),
                   resistance::member_load_duration(property, model::load_duration(basis)), "NDS 2018 2.3.2"));
}

/// What the grade's table of values says of moisture.
struct WetRule {
    resistance::WetTable table = resistance::WetTable::dimension_lumber;
    const char* clause = "NDS Supplement 2018 Table 4A";
};

WetRule wet_rule(const catalog::LumberGrade& grade) {
    using resistance::WetTable;
    if (grade.wet_included) return {WetTable::none, "NDS Supplement 2018 Table 4D: in the values"};
    if (!grade.engineered) {
        return grade.use == catalog::WoodUse::dimension_lumber
                   ? WetRule{}
                   : WetRule{WetTable::timber, "NDS Supplement 2018 Table 4D"};
    }
    switch (grade.engineered->wet_service) {
        case model::OwnWood::WetService::sawn:
            return {};
        case model::OwnWood::WetService::glulam:
            return {WetTable::glulam, "NDS Supplement 2018 Table 5A"};
        case model::OwnWood::WetService::included:
            return {WetTable::none, "in the values entered"};
        case model::OwnWood::WetService::dry_only:
            break;
    }
    return {WetTable::none, "values for dry service alone"};
}

void apply_wet_service(Adjusted& adjusted, MemberProperty property, double with_size_psi, const WetRule& rule,
                       const model::Basis& basis) {
    apply(adjusted,
          by_basis("C_M", phrase("wet service factor"), basis.moisture.has_value(),
                   resistance::member_wet_service(property, member_moisture(basis), with_size_psi, rule.table),
                   rule.clause));
}

void apply_temperature(Adjusted& adjusted, MemberProperty property, const model::Basis& basis) {
    apply(adjusted,
          by_basis("C_t", phrase("temperature factor"), basis.temperature.has_value(),
                   resistance::member_temperature(property, member_temperature(basis), member_moisture(basis)),
                   "NDS 2018 Table 2.3.3"));
}

void apply_incising(Adjusted& adjusted, MemberProperty property, const catalog::LumberGrade& grade,
                    const model::Basis& basis) {
    if (property == MemberProperty::compression_perp || grade.engineered) return;
    apply(adjusted, incising_step(property, grade, basis));
}

void apply_lrfd(Adjusted& adjusted, MemberProperty property, const model::Basis& basis) {
    if (basis.method != model::Method::lrfd) return;
    apply(adjusted, {"K_F", phrase("format conversion factor"), "given by the property",
                     resistance::member_format_conversion(property), "", "NDS 2018 Table N1", Origin::given});
    apply(adjusted, {"phi", phrase("resistance factor"), "given by the property",
                     resistance::member_resistance_factor(property), "", "NDS 2018 Table N2", Origin::given});
    if (property == MemberProperty::compression_perp || property == MemberProperty::modulus_min) return;
    apply(adjusted, by_basis("lambda", phrase("time effect factor"), basis.time_effect.has_value(),
                             resistance::member_time_effect(property, model::time_effect(basis)), "NDS 2018 Table N3"));
}

Adjusted adjust_plainly(double reference_psi, MemberProperty property, const catalog::LumberGrade& grade,
                        const model::Basis& basis) {
    Adjusted adjusted{reference_psi, {}};
    apply_duration(adjusted, property, basis);
    apply_wet_service(adjusted, property, reference_psi, wet_rule(grade), basis);
    apply_temperature(adjusted, property, basis);
    apply_incising(adjusted, property, grade, basis);
    if (property != MemberProperty::modulus) apply_lrfd(adjusted, property, basis);
    return adjusted;
}

/// `star_psi` is Fb*: everything but Cfu, CV and CL, 3.3.3.8.
Step stability(double star_psi, const catalog::LumberGrade& grade, const BentSection& section,
               const model::Basis& basis) {
    Step none{"C_L",        phrase("beam stability factor"), "held, or no deeper than broad", 1.0, "", "NDS 2018 3.3.3",
              Origin::given};
    if (section.unsupported_length_in <= 0.0 || section.depth_in <= section.breadth_in) return none;
    constexpr double largest_slenderness = 50.0;
    const double length_in = resistance::effective_length_in(section.unsupported_length_in, section.depth_in);
    const double slenderness = resistance::beam_slenderness(length_in, section.depth_in, section.breadth_in);
    if (slenderness > largest_slenderness) {
        return {"C_L", phrase("beam stability factor"), "R_B above 50 is not permitted", 0.0, "", "NDS 2018 3.3.3.7"};
    }
    const double modulus_psi = adjust_modulus_min(grade, basis).value;
    const double critical_psi = resistance::critical_buckling_psi(modulus_psi, slenderness);
    return {"C_L",
            phrase("beam stability factor, with F_bE = {} and F_b* = {}", Quantity{critical_psi, "psi"},
                   Quantity{star_psi, "psi"}),
            "(1 + F)/1.9 - sqrt(((1 + F)/1.9)^2 - F/0.95), F = F_bE/F_b*",
            resistance::beam_stability(critical_psi, star_psi),
            "",
            "NDS 2018 Eq. 3.3-6"};
}

bool on_wide_face(const BentSection& section) { return section.depth_in < section.breadth_in; }

Step size_step(const catalog::LumberGrade& grade, const BentSection& section) {
    const double thickness_in = std::min(section.breadth_in, section.depth_in);
    const double width_in = std::max(section.breadth_in, section.depth_in);
    Step step{"C_F", phrase("size factor"), "by actual size", 1.0, "", "NDS Supplement 2018 Table 4A", Origin::given};
    if (grade.use != catalog::WoodUse::dimension_lumber) {
        step.value = resistance::timber_size_factor(section.depth_in);
        step.clause = "NDS Supplement 2018 Table 4D";
        return step;
    }
    switch (grade.size_factor) {
        case catalog::SizeFactor::table_4a:
            step.value = resistance::size_factor_bending(thickness_in, width_in);
            return step;
        case catalog::SizeFactor::included:
            step.value = resistance::included_size_factor(thickness_in, width_in);
            step.formula = "in the reference value, but for 4x8 and larger and over 12 in wide";
            step.clause = "NDS Supplement 2018 Table 4B";
            return step;
        case catalog::SizeFactor::stud:
            step.value = resistance::stud_size_factor_bending(width_in);
            return step;
        case catalog::SizeFactor::none:
            break;
    }
    step.formula = "1.0 for this grade";
    return step;
}

Step flat_use_step(const catalog::LumberGrade& grade, const BentSection& section) {
    const bool flat = on_wide_face(section);
    Step step{"C_fu",
              phrase("flat use factor"),
              flat ? "loaded on the wide face" : "loaded on the narrow face",
              1.0,
              "",
              "NDS 2018 4.3.7",
              Origin::given};
    if (!flat) return step;
    step.value = grade.use == catalog::WoodUse::dimension_lumber
                     ? resistance::flat_use(section.breadth_in, section.depth_in)
                     : grade.timber_flat_use;
    return step;
}

Adjusted sawn_bending(const catalog::LumberGrade& grade, const BentSection& section, const model::Basis& basis) {
    const Step size = size_step(grade, section);
    Adjusted adjusted{grade.bending_psi, {}};
    apply_duration(adjusted, MemberProperty::bending, basis);
    apply_wet_service(adjusted, MemberProperty::bending, grade.bending_psi * size.value, wet_rule(grade), basis);
    apply_temperature(adjusted, MemberProperty::bending, basis);
    apply(adjusted, size);
    apply_incising(adjusted, MemberProperty::bending, grade, basis);
    apply_lrfd(adjusted, MemberProperty::bending, basis);
    apply(adjusted, stability(adjusted.value, grade, section, basis));
    apply(adjusted, flat_use_step(grade, section));
    return adjusted;
}

/// Loads on the wide face take no volume factor: the value for that face is entered.
Step volume_step(const catalog::EngineeredFactors& factors, const BentSection& section, double length_in) {
    Step step{"C_V", phrase("volume factor"), "none stated", 1.0, "", "the report's", Origin::given};
    if (on_wide_face(section)) {
        step.formula = "loaded on the wide face, whose value is entered";
        return step;
    }
    switch (factors.volume) {
        case model::OwnWood::Volume::none:
            return step;
        case model::OwnWood::Volume::depth:
            step.value = resistance::depth_factor(section.depth_in, factors.volume_exponent);
            step.formula = "(12 in/d)^exponent, not over 1";
            return step;
        case model::OwnWood::Volume::glulam:
        case model::OwnWood::Volume::glulam_southern_pine:
            break;
    }
    const double exponent = factors.volume == model::OwnWood::Volume::glulam ? 10.0 : 20.0;
    step.value = resistance::glulam_volume_factor(section.breadth_in, section.depth_in, length_in, exponent);
    step.formula = "((21 ft/L)(12 in/d)(5.125 in/b))^(1/x), not over 1";
    step.clause = "NDS 2018 Eq. 5.3-1";
    return step;
}

/// CV and CL are not taken together: the smaller applies (NDS 2018 5.3.6 and 8.3.6).
Adjusted engineered_bending(const catalog::LumberGrade& grade, const BentSection& section, const model::Basis& basis) {
    const double reference_psi = reference_bending_psi(grade, section);
    Adjusted adjusted{reference_psi, {}};
    apply_duration(adjusted, MemberProperty::bending, basis);
    apply_wet_service(adjusted, MemberProperty::bending, reference_psi, wet_rule(grade), basis);
    apply_temperature(adjusted, MemberProperty::bending, basis);
    apply_lrfd(adjusted, MemberProperty::bending, basis);
    const Step volume = volume_step(*grade.engineered, section, section.unsupported_length_in);
    const Step lateral = stability(adjusted.value, grade, section, basis);
    apply(adjusted, lateral.value < volume.value ? lateral : volume);
    return adjusted;
}

}  // namespace

resistance::MemberMoisture member_moisture(const model::Basis& basis) {
    return model::moisture(basis) == model::Moisture::wet ? resistance::MemberMoisture::wet
                                                          : resistance::MemberMoisture::dry;
}

resistance::MemberTemperature member_temperature(const model::Basis& basis) {
    using resistance::MemberTemperature;
    switch (model::temperature(basis)) {
        case model::Temperature::to_100F:
            return MemberTemperature::to_100F;
        case model::Temperature::to_125F:
            return MemberTemperature::to_125F;
        case model::Temperature::to_150F:
            break;
    }
    return MemberTemperature::to_150F;
}

double reference_bending_psi(const catalog::LumberGrade& grade, const BentSection& section) {
    if (!grade.engineered) return grade.bending_psi;
    if (on_wide_face(section)) return grade.engineered->bending_flat_psi;
    // Of a square piece nobody knows which way its layers stand.
    const bool square = section.depth_in == section.breadth_in;
    return square ? std::min(grade.bending_psi, grade.engineered->bending_flat_psi) : grade.bending_psi;
}

Adjusted adjust_bending(const catalog::LumberGrade& grade, const BentSection& section, const model::Basis& basis) {
    return grade.engineered ? engineered_bending(grade, section, basis) : sawn_bending(grade, section, basis);
}

Adjusted adjust_shear(const catalog::LumberGrade& grade, const model::Basis& basis) {
    return adjust_plainly(grade.shear_psi, MemberProperty::shear, grade, basis);
}

std::vector<Step> allowable_shear_steps(const catalog::LumberGrade& grade, const Adjusted& adjusted) {
    std::vector<Step> steps = {
        given("F_v", phrase("reference shear value"), grade.shear_psi, "psi", grade.source.text)};
    append(steps, adjusted.steps);
    steps.push_back(
        {"F_v'", phrase("allowable shear"), "F_v times every factor", adjusted.value, "psi", "NDS 2018 Table 4.3.1"});
    return steps;
}

Adjusted adjust_compression_perp(const catalog::LumberGrade& grade, const model::Basis& basis) {
    return adjust_plainly(grade.compression_perp_psi, MemberProperty::compression_perp, grade, basis);
}

Adjusted adjust_compression_perp(double compression_perp_psi, const model::Basis& basis) {
    return adjust_plainly(compression_perp_psi, MemberProperty::compression_perp, {}, basis);
}

Adjusted adjust_modulus_min(const catalog::LumberGrade& grade, const model::Basis& basis) {
    return adjust_plainly(grade.modulus_min_psi, MemberProperty::modulus_min, grade, basis);
}

Adjusted adjust_modulus(const catalog::LumberGrade& grade, const model::Basis& basis) {
    return adjust_plainly(grade.modulus_psi, MemberProperty::modulus, grade, basis);
}

}  // namespace toehold::checks
