#pragma once
// Stresses in a rectangular wood member, and what it may take where they act together. Sizes in, forces lb, moments
// lb in, stresses psi; forces and moments count by their size, not their sign. Breadth is across the load, depth along
// it, both > 0.

namespace toehold::resistance {

/// b d^2/6.
[[nodiscard]] double section_modulus_in3(double breadth_in, double depth_in);
/// fb, NDS 2018 Eq. 3.3-2: M/S.
[[nodiscard]] double bending_stress_psi(double moment_lb_in, double breadth_in, double depth_in);

/// Vr', lb, of a member held or loaded by fasteners less than five depths from its end, NDS 2018 Eq. 3.4-6 (form
/// read in a public copy): 2/3 Fv' b de (de/d)^2. `reached_in` is de: from the edge the fasteners pull on to the
/// farthest of them, 0 to d. Beyond it nothing but tension across the grain holds the wood.
[[nodiscard]] double shear_at_fasteners_lb(double shear_psi, double breadth_in, double depth_in, double reached_in);
/// The same five depths from the end or more, Eq. 3.4-7 (from memory, to be confirmed): 2/3 Fv' b de. That a shorter
/// distance and a longer one have two strengths was read in the manual of a design program for the standard.
[[nodiscard]] double shear_at_inner_fasteners_lb(double shear_psi, double breadth_in, double depth_in,
                                                 double reached_in);
/// From where on fasteners are no longer near the member's end: five depths. in.
[[nodiscard]] constexpr double near_end_in(double depth_in) { return 5.0 * depth_in; }
/// The depth the fasteners must take hold of for a shear, Eq. 3.4-6 solved for de; more than the depth where the whole
/// section would not do. in.
[[nodiscard]] double needed_reach_in(double shear_lb, double shear_psi, double breadth_in, double depth_in);

/// k in tau = T/(k a b^2), the largest stress of a rectangular bar in torsion, a the longer side and b the shorter; at
/// the middle of the longer side. Saint-Venant's series (Timoshenko and Goodier, Theory of Elasticity, art. 109):
/// 0.208 for a square, 1/3 for a thin strip. `sides` = a/b >= 1.
[[nodiscard]] double torsion_coefficient(double sides);
/// J of a rectangular bar in torsion, in4, sides in either order: a b^3 (1/3 - 0.21 b/a (1 - b^4/(12 a^4))), a the
/// longer side; within 0.3 % of Saint-Venant's series (Roark's Formulas for Stress and Strain, torsion table, from
/// memory, to be confirmed).
[[nodiscard]] double torsion_constant_in4(double side_in, double other_side_in);
/// k a b^2, sides in either order: what a torque is divided by.
[[nodiscard]] double torsion_modulus_in3(double side_in, double other_side_in);

// Torsion. The NDS has no clause for sawn lumber. What is published of it:
//   - the Wood Handbook (FPL-GTR-190, chapter 5, from memory, to be confirmed) gives the torsional strength of solid
//     wood as its shear strength along the grain, and two thirds of that as the torsional stress at the proportional
//     limit;
//   - tests of full-size lumber in torsion fail in a shear crack along the grain at the middle of the longer side
//     (a thesis of Oregon State University of 1997, abstract read): torsion breaks what shear breaks;
//   - EN 1995-1-1 6.1.8 (from memory, to be confirmed) allows k_shape fv with k_shape at least 1.15 for a rectangle,
//     and its German annex holds tau/(k_shape fv) + (fv/Fv)^2 <= 1 for both at one place.
// Fv' is a strength over its safety, no proportional limit, so torsion may have as much with the same safety: the
// first form, with k_shape left at 1, which is on the safe side. Two thirds on a strength, and a linear sum, count two
// reserves that shear alone does not have; that form remains for who asks for it.

/// tau/Fv' + (fv/Fv')^2; <= 1 holds. psi, >= 0. Throws std::invalid_argument unless the allowable shear is > 0.
[[nodiscard]] double shear_torsion_ratio(double shear_psi, double torsion_psi, double allowable_shear_psi);
/// The same as a share that grows in proportion to both stresses: the number by which they must be divided for the
/// ratio to be 1. Of shear alone fv/Fv'.
[[nodiscard]] double shear_torsion_share(double shear_psi, double torsion_psi, double allowable_shear_psi);
/// Torsional stress allowed over that of shear in the harshest form.
[[nodiscard]] constexpr double two_thirds() { return 2.0 / 3.0; }
/// tau/(2/3 Fv') + fv/Fv', the harshest form; otherwise as above.
[[nodiscard]] double shear_torsion_ratio_linear(double shear_psi, double torsion_psi, double allowable_shear_psi);

/// How far down from a member's top, in, what pulls the member up by its top must take hold of it: to its middle. NDS
/// 2018 3.8.2 wants tension across the grain avoided, and Table 12.5.1C, footnote 2, allows no heavy or medium
/// concentrated load to hang below the neutral axis of a single sawn member (both from memory, to be confirmed); read
/// here upside down. `depth_in` > 0.
[[nodiscard]] double lifting_reach_in(double depth_in);
/// What is a light load under that rule: less than 100 lb, more than 24 in from the next (NDS Commentary, from memory,
/// to be confirmed). lb, allowable stress design.
[[nodiscard]] constexpr double light_load_lb() { return 100.0; }

/// Bending about both axes, NDS 2018 Eq. 3.9-3 without axial force: fb1/Fb1' + fb2/(Fb2' (1 - (fb1/FbE)^2)); <= 1
/// holds.
struct BiaxialBending {
    double edgewise_psi = 0.0;  ///< fb1: load on the narrow face
    double edgewise_allowable_psi = 0.0;
    double flatwise_psi = 0.0;  ///< fb2: load on the wide face
    double flatwise_allowable_psi = 0.0;
    double critical_psi = 0.0;  ///< FbE; 0: held against buckling, no amplification
};
/// Infinity where fb1 reaches FbE. Throws std::invalid_argument unless both allowable stresses are > 0.
[[nodiscard]] double biaxial_bending_ratio(const BiaxialBending& bending);

}  // namespace toehold::resistance
