// Shear along the grain of a member, its torsion, and both at one place.
//   - Loads near a member's ends are counted in full: block ends hang on fasteners, and a joist's loads may stand
//     anywhere, so the relief NDS 2018 3.4.3.1 gives near a bearing is not taken.
//   - Forces beside the axis, the push at the top and what blocks hang on a joist's face twist a member.
//   - Torsional stress is largest at the middle of a piece's longer side, where beam shear acts too. Shear across the
//     other side is counted there as well, which is on the safe side. How the two act together is a choice of the
//     basis, argued in resistance/wood/member_strength.h.
#include "catalog/resolve.h"
#include "checks/basis/wood_basis.h"
#include "checks/member/actions.h"
#include "resistance/wood/member_strength.h"

#include <algorithm>
#include <cmath>

namespace toehold::checks {
namespace {

using format::phrase;

/// Of one piece of the member.
struct MemberStresses {
    double shear_psi = 0.0;    ///< vertical and horizontal shear together, each at its largest
    double torsion_psi = 0.0;  ///< at the middle of the longer side
};

/// What the actions on one piece of a member are divided by.
struct StressedSection {
    double area_in2 = 0.0;
    double torsion_in3 = 0.0;  ///< k a b^2
    double share = 1.0;        ///< of the member's actions, on one piece
};

StressedSection stressed_section(const model::Member& member) {
    const double b = model::ply_width_in(member), d = model::piece_depth_in(member);
    return {b * d, resistance::torsion_modulus_in3(b, d), 1.0 / sharing_pieces(member)};
}

MemberStresses member_stresses(const demand::MemberActions& actions, const StressedSection& section) {
    const double vertical_psi = 1.5 * std::abs(section.share * actions.vertical_shear_lb) / section.area_in2;
    const double horizontal_psi = 1.5 * std::abs(section.share * actions.horizontal_shear_lb) / section.area_in2;
    return {std::sqrt(vertical_psi * vertical_psi + horizontal_psi * horizontal_psi),
            std::abs(section.share * actions.torque_lb_in) / section.torsion_in3};
}

MemberStresses member_stresses(const demand::MemberActions& actions, const model::Member& member) {
    return member_stresses(actions, stressed_section(member));
}

std::vector<Step> shear_demand_steps(const CheckInput& input, const demand::MemberActions& actions,
                                     const model::Member& member) {
    return {{"V_v", phrase("largest vertical shear"), vertical_statics(input), actions.vertical_shear_lb, "lb",
             "demand", Origin::demanded},
            {"V_h", phrase("largest horizontal shear"), lateral_statics, actions.horizontal_shear_lb, "lb", "demand",
             Origin::demanded},
            {"A", phrase("section area, all pieces that share"), "n b d",
             sharing_pieces(member) * model::ply_width_in(member) * model::piece_depth_in(member), "in2", "input"},
            {"f_v", phrase("shear stress, combined"), "1.5 sqrt(V_v^2 + V_h^2)/A",
             member_stresses(actions, member).shear_psi, "psi", "NDS 2018 Eq. 3.4-2"}};
}

std::vector<Step> torsion_demand_steps(const CheckInput& input, const demand::MemberActions& actions,
                                       const model::Member& member) {
    const double b = model::ply_width_in(member);
    const double longer_in = std::max(b, model::piece_depth_in(member));
    const double shorter_in = std::min(b, model::piece_depth_in(member));
    const bool beside = kind(input.resolved.detail.mount) == model::MountKind::side_fastened;
    return {{"T",
             beside ? phrase("largest torque, forces off its axis")
                    : phrase("largest torque, horizontal forces at the top"),
             vertical_statics(input), actions.torque_lb_in, "lb in", "demand", Origin::demanded},
            {"k", phrase("torsion coefficient of one piece"), "by a/b, a the longer side",
             resistance::torsion_coefficient(longer_in / shorter_in), "", "Saint-Venant"},
            {"tau", phrase("torsional stress"), "share of T, over k a b^2",
             member_stresses(actions, member).torsion_psi, "psi", "Saint-Venant"}};
}

bool is_linear(const CheckInput& input) {
    return model::torsion_with_shear(input.resolved.detail.basis) == model::TorsionWithShear::linear_two_thirds;
}

Step allowable_torsion_step(const CheckInput& input, double allowable_shear_psi) {
    constexpr const char* source = "Wood Handbook 2010 ch. 5 (from memory)";
    const format::Phrase meaning = phrase("allowable torsional stress");
    if (is_linear(input))
        return {"F_t'", meaning, "2/3 F_v', as the file asks", resistance::two_thirds() * allowable_shear_psi,
                "psi",  source};
    return {"F_t'", meaning, "F_v'", allowable_shear_psi, "psi", source};
}

double combined_ratio(const CheckInput& input, const MemberStresses& stresses, double allowable_shear_psi) {
    const auto ratio = is_linear(input) ? resistance::shear_torsion_ratio_linear : resistance::shear_torsion_ratio;
    return ratio(stresses.shear_psi, stresses.torsion_psi, allowable_shear_psi);
}

Step combined_step(const CheckInput& input, double ratio) {
    if (is_linear(input))
        return {"R", phrase("combined"), "f_v/F_v' + tau/F_t', as the file asks", ratio, "", "common practice"};
    return {"R",
            phrase("combined"),
            "tau/F_t' + (f_v/F_v')^2",
            ratio,
            "",
            "DIN EN 1995-1-1/NA NCI to 6.1.9 with k_shape 1 (from memory)"};
}

CheckResult shear_of(const CheckInput& input, std::size_t index) {
    const model::Member member = model::member(input.resolved.detail.framing, index);
    const catalog::LumberGrade& grade = catalog::wood(input.resolved, index).grade;
    const Adjusted adjusted = adjust_shear(grade, input.resolved.detail.basis);
    const StressedSection section = stressed_section(member);
    const demand::GoverningState worst = worst_actions(input, index, [&](const demand::MemberActions& actions) {
        return member_stresses(actions, section).shear_psi;
    });
    CheckResult result = member_result(input, member, worst.state, phrase("shear"));
    result.demand = worst.value;
    result.capacity = adjusted.value;
    result.unit = "psi";
    result.steps = plies_steps(member);
    append(result.steps, shear_demand_steps(input, actions_of(input, worst.state, index), member));
    append(result.steps, allowable_shear_steps(grade, adjusted));
    result.note = plies_note(member);
    conclude(result);
    return result;
}

std::vector<CheckResult> member_shear(const CheckInput& input) {
    std::vector<CheckResult> results;
    for (const std::size_t index : loaded_members(input)) results.push_back(shear_of(input, index));
    return results;
}

CheckResult torsion_of(const CheckInput& input, std::size_t index) {
    const model::Member member = model::member(input.resolved.detail.framing, index);
    const catalog::LumberGrade& grade = catalog::wood(input.resolved, index).grade;
    const Adjusted adjusted = adjust_shear(grade, input.resolved.detail.basis);
    const StressedSection section = stressed_section(member);
    const demand::GoverningState worst = worst_actions(input, index, [&](const demand::MemberActions& actions) {
        return member_stresses(actions, section).torsion_psi;
    });
    const Step allowable = allowable_torsion_step(input, adjusted.value);
    CheckResult result = member_result(input, member, worst.state, phrase("torsion"));
    result.demand = worst.value;
    result.capacity = allowable.value;
    result.unit = "psi";
    result.steps = plies_steps(member);
    append(result.steps, torsion_demand_steps(input, actions_of(input, worst.state, index), member));
    append(result.steps, allowable_shear_steps(grade, adjusted));
    result.steps.push_back(allowable);
    result.note = plies_note(member);
    conclude(result);
    return result;
}

std::vector<CheckResult> member_torsion(const CheckInput& input) {
    std::vector<CheckResult> results;
    for (const std::size_t index : loaded_members(input)) results.push_back(torsion_of(input, index));
    return results;
}

CheckResult together_of(const CheckInput& input, std::size_t index) {
    const model::Member member = model::member(input.resolved.detail.framing, index);
    const catalog::LumberGrade& grade = catalog::wood(input.resolved, index).grade;
    const Adjusted adjusted = adjust_shear(grade, input.resolved.detail.basis);
    const StressedSection section = stressed_section(member);
    const demand::GoverningState worst = worst_actions(input, index, [&](const demand::MemberActions& actions) {
        return combined_ratio(input, member_stresses(actions, section), adjusted.value);
    });
    const demand::MemberActions& actions = actions_of(input, worst.state, index);
    CheckResult result = member_result(input, member, worst.state, phrase("shear and torsion"));
    result.demand = worst.value;
    result.capacity = 1.0;
    result.steps = plies_steps(member);
    append(result.steps, shear_demand_steps(input, actions, member));
    append(result.steps, torsion_demand_steps(input, actions, member));
    append(result.steps, allowable_shear_steps(grade, adjusted));
    result.steps.push_back(allowable_torsion_step(input, adjusted.value));
    result.steps.push_back(combined_step(input, worst.value));
    result.note = plies_note(member);
    conclude(result);
    return result;
}

std::vector<CheckResult> member_shear_torsion(const CheckInput& input) {
    std::vector<CheckResult> results;
    for (const std::size_t index : loaded_members(input)) results.push_back(together_of(input, index));
    return results;
}

const RegisterCheck shear_check{{"member-shear",
                                 phrase("Framing shear"),
                                 "NDS 2018 3.4.2",
                                 phrase("Shear along the grain of each loaded block, joist and rim."),
                                 member_shear,
                                 {"member-shear-torsion"}}};
const RegisterCheck torsion_check{{"member-torsion",
                                   phrase("Framing torsion"),
                                   "common practice",
                                   phrase("Torsion of each loaded block, joist and rim from forces off its axis."),
                                   member_torsion,
                                   {"member-shear-torsion"}}};
const RegisterCheck combined_check{
    {"member-shear-torsion", phrase("Framing, combined shear and torsion"), "common practice",
     phrase("Beam shear and torsion of each loaded block, joist and rim at the same place."), member_shear_torsion}};

}  // namespace
}  // namespace toehold::checks
