#pragma once
// Side member, gap and member as one dowel joint around one anchor: what it carries laterally, in the direction a state
// pushes. NDS 2018 12.3 with the general dowel equations of AWC TR12 for the gap. The side member is a plate, the wall
// of a tube next to the member, or a wood post, whose grain stands upright: Fe of both woods follows the force, and Rd
// the larger of its angles to both grains (Table 12.3.1B).
//
// Readings taken, each the lower of what practice does:
//   - the threads lie in the shear plane, so the root diameter counts, unless `threads.h` knows better (12.3.7);
//   - decking and shims under the plate are a gap; where the basis lets decking bear, that holds only for wood of the
//     member's own species, which is then taken across its grain;
//   - an aluminum plate bears with its strength beside a weld.
#include "checks/anchor/anchors_in_member.h"
#include "checks/anchor/threads.h"
#include "checks/basis/wood_basis.h"
#include "checks/registry.h"
#include "model/framing.h"
#include "resistance/wood/yield_limit.h"

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

namespace toehold::catalog {
struct Anchor;
}
namespace toehold::demand {
struct State;
}

namespace toehold::checks {

/// What does not turn with the push.
struct LateralJoint {
    std::size_t anchor = 0;
    resistance::DowelConnection dowel;  ///< main_bearing_psi, and a wood post's, are for `lateral_value` to set
    double nominal_diameter_in = 0.0;
    double specific_gravity = 0.0;
    model::PlanAxis grain = model::PlanAxis::x;  ///< of the member
    bool decking_bears = false;
    format::Phrase gap_note;  ///< why decking does not bear although the basis lets it; empty: nothing to say
    ThreadPlace threads;
    bool penetrates = true;  ///< reaches the least penetration of NDS 2018 12.1
    double group_factor = 1.0;
    bool single_row = true;
    double fixed_factor = 1.0;  ///< every factor but CDelta, which alone turns with the push
    MatesPlacement placement;
    double grain_slope_rad = 0.0;                          ///< of the member's grain against x: a stringer's
    std::optional<double> side_specific_gravity;           ///< of a wood post; absent: a side member of metal
    std::optional<MatesPlacement> in_post = std::nullopt;  ///< in the wood post
};

/// Lag screw, wood screw or through-bolt that lands, D at most 1 in (`covered`). A reported fastener has no such joint.
[[nodiscard]] LateralJoint lateral_joint(const catalog::Resolved& resolved, std::size_t anchor);
/// Whether the standard's lateral equations cover the anchor's size: D <= 1 in.
[[nodiscard]] bool covered(const catalog::Anchor& anchor);

/// Z times every factor, with one line for each.
[[nodiscard]] Adjusted adjusted_lateral(const catalog::Resolved& resolved, const LateralJoint& joint,
                                        double reference_lb, double geometry_factor);

/// In one state.
struct LateralValue {
    double angle_rad = 0.0;           ///< from the grain to the force, 0 to pi/2
    double main_bearing_psi = 0.0;    ///< Fem
    double side_bearing_psi = 0.0;    ///< Fes
    double reduction = 0.0;           ///< Rd of the mode that governs
    resistance::ModeValue reference;  ///< Z; 0 where the anchor does not reach the least penetration
    double geometry_factor = 1.0;     ///< CDelta, the lesser of member and wood post
    double adjusted_lb = 0.0;         ///< Z'
};
[[nodiscard]] LateralValue lateral_value(const LateralJoint& joint, const demand::State& state);

/// Z' in every state, lb.
[[nodiscard]] std::vector<double> adjusted_lateral_lb(const CheckInput& input, const LateralJoint& joint);

/// From the joint's dimensions to Z', as worked lines.
[[nodiscard]] std::vector<Step> lateral_steps(const catalog::Resolved& resolved, const LateralJoint& joint,
                                              const LateralValue& value);
/// The sentences a reader of the number needs; may be empty.
[[nodiscard]] format::Phrase lateral_note(const LateralJoint& joint, const LateralValue& value);

}  // namespace toehold::checks
