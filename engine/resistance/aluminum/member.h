#pragma once
// Bending strength of plates, tubes and bars in aluminum: Aluminum Design Manual 2020 Part I, chapters B and F. Every
// clause and constant here is from memory, to be confirmed. Nominal moments, lb in; in, psi.
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

/// Any section: yielding Z Fy, no more than 1.5 S Fy; rupture Z Fu (kt = 1): F.2.
[[nodiscard]] Moment section_moment(double section_in3, double plastic_in3, const Strengths& strengths);

/// Axial force of a column fixed at its foot and free at its top: the curve of AISC 360-16 E3 on the welded yield, with
/// the 0.85 of E.2 for out-of-straightness. Its safety is `yield_safety`.
[[nodiscard]] double flagpole_axial_lb(const steel::TubeSection& section, double height_in, double welded_yield_psi,
                                       double modulus_psi);

}  // namespace toehold::resistance::aluminum
