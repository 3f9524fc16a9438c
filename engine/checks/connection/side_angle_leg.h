#pragma once
// One leg of a steel angle on wood: what each of its fasteners carries across its axis and along it. Values of the
// standards for fasteners in wood-to-metal joints; the angle's own steel is not computed.
//
// On the low side of NDS 2018 Appendix L for every size: thread roots 0.69 D (lag screws), 0.78 D
// (wood screws) and 0.75 D (bolts), tips 2/3 D (lag screws) and 2 D (wood screws), wood screws threaded over 2/3 of
// their length; of bolts and lag screws whose threads the file states to be out of the bearing, D (NDS 2018 12.3.7.2).
// Dowel bearing is taken across the grain, the weaker direction. The end distance asks what the force's direction asks:
// 4 D for its part across the grain, 7 D for its part along it, each part over its own share (NDS 2018 Table 12.5.1A).
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
    /// How much harder a force along the grain is on a fastener near the wood's end than one across it, >= 1; infinite
    /// where the end is too near for any force towards it.
    double towards_end = 1.0;
};

/// `metal` of the angle. The value is for a force across the grain.
[[nodiscard]] LegValue leg_lateral(const model::SideAngles& angles, const catalog::Metal& metal, const AngleLeg& leg,
                                   const model::Basis& basis);
/// Pull along a fastener's axis. None for bolts, whose heads and washers are not described.
[[nodiscard]] LegValue leg_withdrawal(const model::SideAngles& angles, const AngleLeg& leg, const model::Basis& basis);

}  // namespace toehold::checks
