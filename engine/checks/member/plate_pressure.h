#pragma once
// What the pressure of a plate on one patch of its bed, or of a post on a member's side, is held to across the grain.
//
// NDS 2018 3.10.2 speaks of the load over the bearing area, and F_c,perp is the stress at 0.04 in of deformation, so
// the elastic peak at the plate's edge is no measure of it: wood that yields there passes the load on. The whole
// contact's mean would be, but under a plate that tilts its resultant would not stand where the load does. Taken is a
// uniform stress over the part of the patch that is symmetric about the resultant: in balance with the load in force
// and place, and so a lower bound of what the patch carries where wood yields at F_c,perp'. It is the effective area of
// a footing under an eccentric load (Meyerhof 1953) and the stress block of a base plate (EN 1993-1-8 6.2.5, from
// memory, to be confirmed). The area counts no more than what touches, and the stress no more than the elastic peak,
// which is in balance too. The peak stands beside it as a fact, or is held itself where the file asks for that.
#include "checks/registry.h"
#include "demand/demand.h"
#include "mechanics/plane/geometry.h"
#include "model/basis.h"
#include "model/framing.h"

#include <cstddef>
#include <vector>

namespace toehold::checks {

/// One patch of the bed, for every state.
struct PressedPatch {
    mechanics::Polygon outline;  ///< empty where no block may be formed: the peak is held
    model::PlanAxis grain = model::PlanAxis::x;
};

/// `support` among the demand's. A patch that is not convex, as under a notched plate, has its peak held.
[[nodiscard]] PressedPatch pressed_patch(const CheckInput& input, std::size_t support, model::PlanAxis grain);
/// Whether it presses level, on a post, not up under a plate.
[[nodiscard]] bool presses_level(const demand::Support& support);

/// On the patch in one state; psi, in.
struct PlatePressure {
    double stress_psi = 0.0;  ///< what is held to F_c,perp'
    double peak_psi = 0.0, mean_psi = 0.0;
    bool block = false;                 ///< the stress is that of the block, not the elastic peak
    double area_in2 = 0.0;              ///< of the block
    double from_in = 0.0, to_in = 0.0;  ///< of the block, along the grain
    [[nodiscard]] double length_in() const { return to_in - from_in; }
};
[[nodiscard]] PlatePressure plate_pressure(const PressedPatch& patch, const demand::SupportForce& force);

/// The state that presses most on each place that a check looks at, kept beside a demand: `Check` tells whose places.
template <class Check>
struct PressedStates {
    std::vector<std::size_t> all;
    /// Where all forces grow alike the same state presses most.
    [[nodiscard]] PressedStates grown(double) const { return *this; }
};

/// `find()` -> the states, asked where they are not known yet for the basis's measure.
template <class Check, class Find>
[[nodiscard]] std::vector<std::size_t> pressed_states(const CheckInput& input, model::BearingStress stress,
                                                      Find&& find) {
    using Known = PressedStates<Check>;
    return input.once<Known>([&] { return Known{find()}; }, static_cast<int>(stress))->all;
}

/// From the force to the stress held, as worked lines. `level`: between a post and a member's side.
[[nodiscard]] std::vector<Step> pressure_steps(const PlatePressure& pressure, const demand::SupportForce& force,
                                               bool level = false);
/// The sentence a reader of the stress needs.
[[nodiscard]] format::Phrase pressure_note(const PlatePressure& pressure, bool level = false);

}  // namespace toehold::checks
