#include "checks/basis/wood_bending.h"

#include "resistance/wood/member_factors.h"
#include "resistance/wood/member_strength.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <utility>

namespace toehold::checks {
namespace {

using format::phrase;

double narrow_in(const WoodBending& wood) { return std::min(wood.width_in, wood.depth_in); }
double wide_in(const WoodBending& wood) { return std::max(wood.width_in, wood.depth_in); }

void add_allowable(std::vector<Step>& steps, const Adjusted& adjusted, const char* symbol, format::Phrase meaning) {
    append(steps, adjusted.steps);
    steps.push_back(
        {symbol, std::move(meaning), "F_b times every factor", adjusted.value, "psi", "NDS 2018 Table 4.3.1"});
}

}  // namespace

WoodBending wood_bending(const catalog::LumberGrade& grade, double width_in, double depth_in, double free_in,
                         const model::Basis& basis) {
    WoodBending wood{width_in, depth_in, {}, {}, 0.0};
    const double narrow = narrow_in(wood), wide = wide_in(wood);
    wood.edgewise = adjust_bending(grade, {narrow, wide, wide > narrow ? free_in : 0.0}, basis);
    wood.flatwise = adjust_bending(grade, {wide, narrow, 0.0}, basis);
    if (wide > narrow && free_in > 0.0) {
        const double slenderness =
            resistance::beam_slenderness(resistance::effective_length_in(free_in, wide), wide, narrow);
        wood.critical_psi = resistance::critical_buckling_psi(adjust_modulus_min(grade, basis).value, slenderness);
    }
    return wood;
}

WoodBendingUse bending_use(const WoodBending& wood, double about_x_lb_in, double about_y_lb_in) {
    return bending_use(wood,
                       {resistance::section_modulus_in3(wood.width_in, wood.depth_in),
                        resistance::section_modulus_in3(wood.depth_in, wood.width_in)},
                       about_x_lb_in, about_y_lb_in);
}

WoodBendingUse bending_use(const WoodBending& wood, const BendingModuli& moduli, double about_x_lb_in,
                           double about_y_lb_in) {
    WoodBendingUse use;
    use.about_x_psi = ratio(std::abs(about_x_lb_in), moduli.about_x_in3);
    use.about_y_psi = ratio(std::abs(about_y_lb_in), moduli.about_y_in3);
    const bool deep_along_y = wood.depth_in >= wood.width_in;
    if (!(wood.edgewise.value > 0.0)) {  // R_B over 50
        use.ratio = std::numeric_limits<double>::infinity();
        return use;
    }
    use.ratio = resistance::biaxial_bending_ratio(
        {deep_along_y ? use.about_x_psi : use.about_y_psi, wood.edgewise.value,
         deep_along_y ? use.about_y_psi : use.about_x_psi, wood.flatwise.value, wood.critical_psi});
    return use;
}

std::vector<Step> stress_steps(const WoodBending& wood, const WoodBendingUse& use) {
    return {{"S_x", phrase("section modulus about x"), "b d^2/6",
             resistance::section_modulus_in3(wood.width_in, wood.depth_in), "in3", ""},
            {"S_y", phrase("section modulus about y"), "d b^2/6",
             resistance::section_modulus_in3(wood.depth_in, wood.width_in), "in3", ""},
            {"f_bx", phrase("bending stress about x"), "M_x/S_x", use.about_x_psi, "psi", "NDS 2018 3.3.2"},
            {"f_by", phrase("bending stress about y"), "M_y/S_y", use.about_y_psi, "psi", "NDS 2018 3.3.2"}};
}

std::vector<Step> allowable_steps(const WoodBending& wood, const catalog::LumberGrade& grade) {
    const double narrow = narrow_in(wood), wide = wide_in(wood);
    std::vector<Step> steps{given("F_b", phrase("reference bending design value"),
                                  reference_bending_psi(grade, {narrow, wide, 0.0}), "psi", grade.source.text)};
    if (grade.engineered && wide > narrow) {
        steps.push_back(given("F_b2", phrase("reference bending design value, load on the wide face"),
                              reference_bending_psi(grade, {wide, narrow, 0.0}), "psi", grade.source.text));
    }
    add_allowable(steps, wood.edgewise, "F_b1'", phrase("adjusted bending design value, load on the narrow face"));
    add_allowable(steps, wood.flatwise, "F_b2'", phrase("adjusted bending design value, load on the wide face"));
    return steps;
}

Step use_step(const WoodBendingUse& use) {
    return {"R", phrase("combined ratio"), "f_b1/F_b1' + f_b2/(F_b2' (1 - (f_b1/F_bE)^2))", use.ratio,
            "",  "NDS 2018 Eq. 3.9-3"};
}

}  // namespace toehold::checks
