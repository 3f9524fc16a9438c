#include "checks/member/member_stresses.h"

#include "checks/member/plies.h"
#include "resistance/wood/member_strength.h"

#include <algorithm>
#include <cmath>

namespace toehold::checks {

MemberStresses member_stresses(const demand::MemberActions& actions, const model::Member& member) {
    const demand::MemberActions each = share(actions, member);
    const double b = model::ply_width_in(member);
    const double d = member.depth_in;
    return {std::hypot(resistance::shear_stress_psi(each.vertical_shear_lb, b, d),
                       resistance::shear_stress_psi(each.horizontal_shear_lb, d, b)),
            resistance::torsion_stress_psi(each.torque_lb_in, b, d)};
}

std::vector<Step> shear_demand_steps(const CheckInput& input, const demand::MemberActions& actions,
                                     const model::Member& member) {
    return {{"V_v", "largest vertical shear", vertical_statics(input), actions.vertical_shear_lb, "lb", "demand"},
            {"V_h", "largest horizontal shear", sideways_statics, actions.horizontal_shear_lb, "lb", "demand"},
            {"A", "section, all pieces", "b d", member.width_in * member.depth_in, "in2", "input"},
            {"f_v", "shear stress, both together", "1.5 sqrt(V_v^2 + V_h^2)/A",
             member_stresses(actions, member).shear_psi, "psi", "NDS 2018 Eq. 3.4-2"}};
}

std::vector<Step> torsion_demand_steps(const CheckInput& input, const demand::MemberActions& actions,
                                       const model::Member& member) {
    const double b = model::ply_width_in(member);
    const double longer_in = std::max(b, member.depth_in);
    const double shorter_in = std::min(b, member.depth_in);
    return {{"T", "largest torque: forces times their distance from the axis, horizontal forces at the top",
             vertical_statics(input), actions.torque_lb_in, "lb in", "demand"},
            {"k", "torsion coefficient of one piece", "by a/b, a the longer side",
             resistance::torsion_coefficient(longer_in / shorter_in), "", "Saint-Venant"},
            {"tau", "torsional stress", "share of T, over k a b^2", member_stresses(actions, member).torsion_psi, "psi",
             "Saint-Venant"}};
}

Step allowable_torsion_step(double allowable_shear_psi) {
    return {"F_t'",     "allowable torsional stress",
            "2/3 F_v'", resistance::torsion_over_shear() * allowable_shear_psi,
            "psi",      "common practice; Wood Handbook 2010 ch. 5 (from memory)"};
}

}  // namespace toehold::checks
