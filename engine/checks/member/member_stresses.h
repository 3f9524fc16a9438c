#pragma once
// Shear and torsional stress of one piece of a member: what the checks of shear, of torsion and of both share.
#include "checks/member/member_actions.h"

namespace toehold::checks {

struct MemberStresses {
    double shear_psi = 0.0;    ///< vertical and horizontal shear together, each at its largest
    double torsion_psi = 0.0;  ///< at the middle of the longer side
};
[[nodiscard]] MemberStresses member_stresses(const demand::MemberActions& actions, const model::Member& member);

/// From the actions to each stress, as worked lines.
[[nodiscard]] std::vector<Step> shear_demand_steps(const CheckInput& input, const demand::MemberActions& actions,
                                                   const model::Member& member);
[[nodiscard]] std::vector<Step> torsion_demand_steps(const CheckInput& input, const demand::MemberActions& actions,
                                                     const model::Member& member);

/// F_t' = 2/3 F_v', psi, with its line.
[[nodiscard]] Step allowable_torsion_step(double allowable_shear_psi);

}  // namespace toehold::checks
