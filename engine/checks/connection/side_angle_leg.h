#pragma once
// One leg of a steel angle on wood: what each of its fasteners carries across its axis and along it. Values of the
// standards for fasteners in wood-to-metal joints; the angle's own steel is not computed.
//
// Taken from memory of NDS 2018 Appendix L and on the low side for every size: thread roots 0.69 D (lag screws), 0.78 D
// (wood screws) and 0.75 D (bolts), tips 2/3 D (lag screws) and 2 D (wood screws), wood screws threaded over 2/3 of
// their length. Force is taken across the grain, the weaker direction.
#include "catalog/resolve.h"
#include "checks/result.h"

#include <string>
#include <vector>

namespace toehold::checks {

struct AngleLeg {
    format::Phrase name;            ///< `member leg`, `support leg`
    std::string mark;               ///< of its symbols: `m`, `h`
    double specific_gravity = 0.0;  ///< of the wood
    double modulus_psi = 0.0;       ///< of the wood
    double reach_in = 0.0;          ///< how far a fastener may reach into it, beyond the angle
    double edge_in = 0.0;           ///< from the outermost fastener to the wood's nearer edge, upright
    double end_in = 0.0;            ///< from the line to the wood's end, along the grain; 0: no end is near
};

struct LegValue {
    double value_lb = 0.0;  ///< adjusted, one fastener; 0: none may be used
    format::Phrase why;     ///< where it is 0
    std::vector<Step> steps;
};

/// `metal` of the angle.
[[nodiscard]] LegValue leg_lateral(const model::SideAngles& angles, const catalog::Metal& metal, const AngleLeg& leg,
                                   const model::Basis& basis);
/// Pull along a fastener's axis. None for bolts, whose heads and washers are not described.
[[nodiscard]] LegValue leg_withdrawal(const model::SideAngles& angles, const AngleLeg& leg, const model::Basis& basis);

}  // namespace toehold::checks
