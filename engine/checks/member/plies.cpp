#include "checks/member/plies.h"

#include <fmt/format.h>

namespace toehold::checks {

demand::MemberActions share(const demand::MemberActions& actions, const model::Member& member) {
    const double part = 1.0 / member.plies;
    return {part * actions.vertical_moment_lb_in, part * actions.horizontal_moment_lb_in,
            part * actions.vertical_shear_lb, part * actions.horizontal_shear_lb, part * actions.torque_lb_in};
}

std::vector<Step> plies_steps(const model::Member& member) {
    if (member.plies == 1) return {};
    return {{"n", "pieces side by side, each with an equal share of the member's actions", "given",
             static_cast<double>(member.plies), "", "assumption"}};
}

std::string plies_note(const model::Member& member) {
    if (member.plies == 1) return {};
    return fmt::format(
        "The {} pieces are taken to share the load equally, which their nailing to each other must see "
        "to; that nailing is not checked.",
        member.plies);
}

}  // namespace toehold::checks
