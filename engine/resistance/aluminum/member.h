#pragma once
// Bending strength of plates and tubes in aluminum: Aluminum Design Manual 2020 Part I, chapters B and F. Every clause
// and constant here is from memory, to be confirmed. Nominal moments, lb in; in, psi.
//
// A post or plate welded at its base is bent where the weld has softened it: pass the welded yield and ultimate
// strengths, which hold within 1 in of a weld.
#include "resistance/safety.h"
#include "resistance/steel/tube.h"

namespace toehold::resistance::aluminum {

inline constexpr Safety yield_safety{1.65, 0.90};
inline constexpr Safety rupture_safety{1.95, 0.75};

/// Two limit states with different safety; whichever is less when made usable governs.
struct Moment {
    double yield_lb_in = 0.0;
    double rupture_lb_in = 0.0;
};

struct Strengths {
    double yield_psi = 0.0;
    double ultimate_psi = 0.0;
};

/// A plate bent over its face: yielding Z Fy no more than 1.5 S Fy, rupture Z Fu (kt = 1): F.2. Z = b t^2/4, S = b
/// t^2/6.
[[nodiscard]] Moment plate_moment(double width_in, double thickness_in, const Strengths& strengths);

/// A tube: yielding on the elastic modulus S, so that a wall in uniform compression at Fy is within B.5.4; rupture on
/// Z.
[[nodiscard]] Moment tube_moment(double section_in3, double plastic_in3, const Strengths& strengths);

/// Largest b/t of a flat wall supported along both edges that reaches yield in uniform compression, B.5.4.2 with the
/// buckling constants of artificially aged tempers (T5 to T9), Table B.4.2. Taken for the walls along the load too,
/// which are less compressed. `yield_psi` and `modulus_psi` of the metal away from the weld.
[[nodiscard]] double flat_wall_limit(double yield_psi, double modulus_psi);

/// The like for a round wall, radius to its middle over thickness: B.5.4.5.
[[nodiscard]] double round_wall_limit(double yield_psi, double modulus_psi);

/// Whether every wall of the tube is within its limit.
[[nodiscard]] bool walls_reach_yield(const steel::TubeShape& tube, double yield_psi, double modulus_psi);

/// Axial force of a column fixed at its foot and free at its top: the curve of AISC 360-16 E3 on the welded yield, with
/// the 0.85 of E.2 for out-of-straightness. Its safety is `yield_safety`.
[[nodiscard]] double flagpole_axial_lb(const steel::TubeSection& section, double height_in, double welded_yield_psi,
                                       double modulus_psi);

}  // namespace toehold::resistance::aluminum
