#include "demand/in_proportion.h"

#include "demand/envelope.h"
#include "demand/framing/find_framing.h"
#include "demand/framing/together.h"

#include <utility>

namespace toehold::demand {

State grown(State state, double moment_times, double push_times) {
    for (AnchorForce& anchor : state.anchors) {
        anchor.tension_lb *= moment_times;
        anchor.shear_x_lb *= push_times;
        anchor.shear_y_lb *= push_times;
    }
    for (SupportForce& support : state.supports) {
        support.force_lb *= moment_times;
        support.peak_psi *= moment_times;
    }
    for (double& tension : state.rigid_tension_lb) tension *= moment_times;
    for (double& tie : state.ties_lb) tie *= moment_times;
    // A post on a side grows in proportion as a whole, so that both factors are one.
    for (PostCut& cut : state.cuts) {
        for (double* part : {&cut.bending_out_lb_in, &cut.bending_along_lb_in, &cut.twist_lb_in, &cut.shear_out_lb,
                             &cut.shear_along_lb, &cut.down_lb})
            *part *= moment_times;
    }
    state.rotation_rad *= moment_times;
    state.rigid_rotation_rad *= moment_times;
    return state;
}

void grow(FramingState& state, double times) {
    for (MemberActions& member : state.members) {
        for (const auto action : actions_of_a_member) member.*action *= times;
    }
    for (SupportReaction& reaction : state.reactions) {
        for (const auto force : forces_of_a_reaction) reaction.*force *= times;
    }
    state.top_in *= times;
}

Demand under_push(const catalog::Resolved& resolved, Demand demand, std::size_t load_case, double times) {
    demand.cases[load_case].push_lb *= times;
    for (State& state : demand.states) state = grown(std::move(state), times);
    find_envelopes_again(demand);
    if (!demand.framing || times == 1.0) return demand;
    if (demand.framing->deck) {
        demand.framing = find_framing(resolved, demand);
    } else {
        for (FramingState& state : demand.framing->states) grow(state, times);
    }
    return demand;
}

}  // namespace toehold::demand
