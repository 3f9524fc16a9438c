#pragma once
// What a metal post, stub, bar or sleeve carries in bending at one section, in any direction, beside axial force.
#include "catalog/rows.h"
#include "checks/basis/metal_basis.h"
#include "model/basis.h"
#include "resistance/steel/plastic_section.h"

#include <optional>
#include <string>
#include <vector>

namespace toehold::checks {

/// A section with its metal and its length above, which nothing holds sideways: a flagpole column (K = 2.1).
struct MetalSection {
    resistance::steel::TubeShape shape;  ///< of one piece, as drawn; of a bar the wall is half its lesser side
    bool solid = false;
    int pieces = 1;  ///< alike, each bent alone; their strengths add
    const catalog::Metal& metal;
    Welding welding;
    double free_in = 0.0;
};

/// Of one piece: steel with its design wall and rounded corners, the lesser section; aluminum and bars as drawn.
[[nodiscard]] resistance::steel::TubeSection section_to_design(const resistance::steel::TubeShape& shape, bool solid,
                                                               const catalog::Metal& metal);

struct MetalStrength {
    bool round = false;
    double about_x_lb_in = 0.0, about_y_lb_in = 0.0;  ///< usable moments
    double axial_lb = 0.0;                            ///< usable
    /// Usable moments between the axes; absent: those about the axes count in a linear sum.
    struct Between {
        resistance::steel::PlasticSection section;
        double psi = 0.0;  ///< usable moment over plastic modulus, of all pieces
        /// No more than these over elastic moduli about x and y, F11.1; 0: no such limit.
        double most_x_lb_in = 0.0, most_y_lb_in = 0.0;
    };
    std::optional<Between> between;
    std::string clause;
    std::vector<Step> steps;
    format::Phrase missing;  ///< empty when there are values
};

/// Carbon steel: AISC 360-16 F7, F8, F11, E3, E7, with the design wall of B4.2 and corners of twice that wall.
/// Stainless steel: compact walls by AISC 370 (from memory). Aluminum: Aluminum Design Manual 2020 (from memory) with
/// welded strengths and the full wall, corners square as extruded.
[[nodiscard]] MetalStrength metal_strength(const MetalSection& section, const model::Basis& basis);

/// For a moment with these parts about x and y, both >= 0, lb in; without axial force.
[[nodiscard]] double moment_capacity_lb_in(const MetalStrength& strength, double about_x, double about_y);

}  // namespace toehold::checks
