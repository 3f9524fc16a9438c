#include "demand/framing/deck.h"

#include "demand/framing/member_supports.h"

#include <algorithm>
#include <cmath>
#include <iterator>

namespace toehold::demand {
namespace {

using mechanics::GridSolution;
using mechanics::MemberLoad;

/// The area load of a joist as forces no farther apart than this: their moment is never less than the spread load's,
/// and at its middle more by w s^2/8, some 30 lb in.
constexpr double step_in = 8.0;

void add_joist_loads(std::vector<std::vector<MemberLoad>>& all, const Frame& frame, std::size_t member,
                     double lb_per_in) {
    const std::vector<double>& stations = frame.stations_in[member];
    for (std::size_t piece = 0; piece < frame.beams[member].size(); ++piece) {
        const double length_in = stations[piece + 1] - stations[piece];
        const int steps = std::max(1, static_cast<int>(std::ceil(length_in / step_in)));
        const int beam = frame.beams[member][piece];
        for (int step = 0; step < steps; ++step) {
            all[static_cast<std::size_t>(beam)].push_back(
                {beam, (step + 0.5) * length_in / steps, -lb_per_in * length_in / steps, 0.0, 0.0});
        }
    }
}

std::size_t beam_count(const Frame& frame) {
    std::size_t count = 0;
    for (const std::vector<int>& beams : frame.beams) count += beams.size();
    return count;
}

/// What passes at a beam's beginning, and the loads along it: the state's, and the deck's times `psf`.
struct LoadedBeam {
    mechanics::GridSection at_from;
    std::vector<MemberLoad> loads;
};

LoadedBeam on_beam(const GridSolution& state, const std::vector<MemberLoad>& loads, const DeckOnJoists& deck, int beam,
                   double psf) {
    const auto index = static_cast<std::size_t>(beam);
    LoadedBeam both{state.members[index].at_from, deck.loads[index]};
    const mechanics::GridSection& more = deck.under_1_psf.members[index].at_from;
    both.at_from.shear_lb += psf * more.shear_lb;
    both.at_from.moment_lb_in += psf * more.moment_lb_in;
    both.at_from.torque_lb_in += psf * more.torque_lb_in;
    for (MemberLoad& load : both.loads) load.up_lb *= psf;
    std::copy_if(loads.begin(), loads.end(), std::back_inserter(both.loads),
                 [beam](const MemberLoad& load) { return load.member == beam; });
    return both;
}

void keep_larger(MemberActions& actions, const mechanics::GridExtremes& extremes) {
    actions.vertical_moment_lb_in = std::max(actions.vertical_moment_lb_in, extremes.moment_lb_in);
    actions.vertical_shear_lb = std::max(actions.vertical_shear_lb, extremes.shear_lb);
    actions.torque_lb_in = std::max(actions.torque_lb_in, extremes.torque_lb_in);
}

bool is_loaded_joist(const Frame& frame, std::size_t member) {
    return frame.members[member].kind == model::MemberKind::joist && frame.holds_member(member);
}

}  // namespace

MemberActions upright_actions(const Frame& frame, const GridSolution& solution, const std::vector<MemberLoad>& loads,
                              std::size_t member) {
    MemberActions actions;
    for (const int beam : frame.beams[member]) keep_larger(actions, frame.grillage->extremes(solution, beam, loads));
    return actions;
}

std::optional<DeckOnJoists> deck_on_joists(const catalog::Resolved& resolved, const Frame& frame) {
    if (!joists_described(resolved.detail.framing) || !frame.grillage->stable()) return std::nullopt;
    DeckOnJoists deck;
    deck.load = deck_load(resolved.detail);
    deck.loads.resize(beam_count(frame));
    std::size_t joist = 0;
    std::vector<MemberLoad> all;
    constexpr double in2_per_ft2 = 144.0;
    for (std::size_t member = 0; member < frame.members.size(); ++member) {
        if (frame.members[member].kind != model::MemberKind::joist) continue;
        const double width_in = tributary_width_in(resolved.detail.framing, joist++);
        if (is_loaded_joist(frame, member)) add_joist_loads(deck.loads, frame, member, width_in / in2_per_ft2);
    }
    for (const std::vector<MemberLoad>& loads : deck.loads) all.insert(all.end(), loads.begin(), loads.end());
    deck.under_1_psf = frame.grillage->solve({}, all);
    return deck;
}

std::vector<MemberActions> with_deck(const Frame& frame, const DeckOnJoists& deck, const DeckFactors& factors,
                                     const GridSolution& solution, const std::vector<MemberLoad>& loads,
                                     const std::vector<MemberActions>& guard) {
    std::vector<MemberActions> result = guard;
    for (std::size_t member = 0; member < frame.members.size(); ++member) {
        if (is_loaded_joist(frame, member)) {
            result[member].vertical_moment_lb_in = 0.0;
            result[member].vertical_shear_lb = 0.0;
            result[member].torque_lb_in = 0.0;
        }
    }
    const double all_psf = factors.dead * deck.load.dead_psf + factors.live * deck.load.live_psf;
    for (const double psf : {all_psf, factors.least_dead * deck.load.dead_psf}) {
        for (std::size_t member = 0; member < frame.members.size(); ++member) {
            if (!is_loaded_joist(frame, member)) continue;
            for (const int beam : frame.beams[member]) {
                const LoadedBeam both = on_beam(solution, loads, deck, beam, psf);
                keep_larger(result[member], frame.grillage->extremes(both.at_from, beam, both.loads));
            }
        }
    }
    return result;
}

DeckActions actions_of_deck(const Frame& frame, const DeckOnJoists& deck, const DeckFactors& factors) {
    DeckActions actions;
    actions.dead_psf = deck.load.dead_psf;
    actions.live_psf = deck.load.live_psf;
    const std::vector<MemberActions> none(frame.members.size());
    GridSolution nothing = deck.under_1_psf;
    for (mechanics::MemberForces& forces : nothing.members) forces = {};
    actions.members = with_deck(frame, deck, factors, nothing, {}, none);
    for (std::size_t index = 0; index < frame.supports.size(); ++index) {
        const auto joint = frame.grid_joint_of[index], support = frame.grid_support_of[index];
        const mechanics::GridLoad& on_member =
            joint ? deck.under_1_psf.joints[static_cast<std::size_t>(*joint)]
                  : deck.under_1_psf.supports[static_cast<std::size_t>(support.value())];
        const double all_psf = factors.dead * deck.load.dead_psf + factors.live * deck.load.live_psf;
        actions.holds_down_lb.push_back(std::max(0.0, factors.least_dead * deck.load.dead_psf * on_member.up_lb));
        actions.most_down_lb.push_back(std::max(0.0, all_psf * on_member.up_lb));
    }
    return actions;
}

}  // namespace toehold::demand
