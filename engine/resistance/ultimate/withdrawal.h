#pragma once
// Mean loads at which threaded fasteners and nails come out of side grain, lb per inch of thread (nails: of
// penetration) in seasoned wood. Averages of tests, no design values: no safety, no load duration, no wet service.
//
// The Wood Handbook (FPL-GTR-190, 2010, chapter 8) has them by G at 12 percent moisture (weight ovendry, volume at 12
// percent); the NDS assigns G by ovendry volume, which is larger. `gravity_at_12_percent` leads from one to the other:
// left out, the means would be 8 and 11 percent too high.

namespace toehold::resistance::ultimate {

/// G by volume at 12 percent moisture from the NDS's assigned G: 0.95 times it. From the laboratory's two equations for
/// one and the same nail, 6900 G^(5/2) D by ovendry volume (Research Note FPL-093, 1965, read) and 7850 G^(5/2) D by
/// volume at 12 percent (the handbook, read): the 2/5th power of their ratio.
[[nodiscard]] double gravity_at_12_percent(double assigned_gravity);

// `assigned_gravity` is that of NDS 2018 Table 12.3.3A, `diameter_in` the nominal one; both > 0.

/// p = 8100 G^(3/2) D^(3/4), lag screws (the equation with both its units read on a public page that quotes the
/// handbook). 4.17 times the NDS value.
[[nodiscard]] double lag_mean_lb_per_in(double assigned_gravity, double diameter_in);
/// p = 15700 G^2 D, wood screws in lead holes (read on a public page, with an example).
/// 4.97 times the NDS value. A screw may break before: no more than its tension.
[[nodiscard]] double wood_screw_mean_lb_per_in(double assigned_gravity, double diameter_in);
/// p = 6900 G^(5/2) D by ovendry volume, plain-shank nails pulled at once (Research Note FPL-093). 5 times the NDS
/// value, as public notes say it is. Loses much of it as wet wood dries.
[[nodiscard]] double nail_mean_lb_per_in(double assigned_gravity, double diameter_in);

/// Powers of the wood's density in the above.
inline constexpr double lag_density_power = 1.5, wood_screw_density_power = 2.0, nail_density_power = 2.5;

/// Mean tensile strength of lag screws, psi on the root area: the one that the handbook's equations go with (read).
inline constexpr double lag_tensile_psi = 77000.0;

}  // namespace toehold::resistance::ultimate
