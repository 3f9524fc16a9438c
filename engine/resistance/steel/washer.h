#pragma once
// A round plate washer under a nut, pressed by the wood and bent up around it.
namespace toehold::resistance::steel {

struct RoundWasher {
    double outside_in = 0.0;    ///< diameter
    double hole_in = 0.0;       ///< diameter; of the larger hole, the washer's or the wood's
    double nut_in = 0.0;        ///< diameter of the ring on which the nut holds it: its width across flats
    double thickness_in = 0.0;  ///< > 0
};

/// Limit pressure of the ring outside its hole, psi: the washer folds up around the nut like a cone. Cut along a
/// diameter, half of the pressure and half of the nut's ring force turn it about the cut, and the plastic moment m = F
/// t^2/4 resists along what is left of the diameter:
///     2 (b - h) m = p ((2/3)(b^3 - h^3) - (b^2 - h^2) a)
/// with the radii b outside, h of the hole and a of the nut. For Tresca's condition this is exact: with m around
/// everywhere, equilibrium gives a radial moment that is zero at both free edges and less than m between (Save and
/// Massonnet's circular plates use the same field; derived here). AISC 360-16 F11.1 puts the plastic moment of a plate
/// at Fy Z. `available_psi`: yield stress over its safety factor, or times phi. Infinite where nothing overhangs the
/// nut.
[[nodiscard]] double washer_limit_psi(const RoundWasher& washer, double available_psi);

/// Outside diameter of the part that can be loaded to this pressure, up to all of it: the rest may stay unloaded, since
/// the wood's pressure comes in toward the nut where the washer gives. psi > 0.
[[nodiscard]] double washer_reach_in(const RoundWasher& washer, double available_psi, double pressure_psi);

}  // namespace toehold::resistance::steel
