#pragma once
// What the weld at the post's foot and the metal on both sides of it carry, per inch of weld.
#include "checks/basis/metal_basis.h"
#include "checks/post/foot.h"
#include "resistance/steel/weld_line.h"

#include <limits>

namespace toehold::checks {

/// What the weld joins.
struct WeldParts {
    const catalog::Metal& post;
    double post_wall_in = 0.0;  ///< as drawn
    bool solid = false;         ///< a bar, whose thickness no mill tolerance of tube lessens
    const catalog::Metal& plate;
    double plate_in = 0.0;
};

/// Usable, lb/in.
struct WeldStrength {
    double metal = std::numeric_limits<double>::infinity();  ///< of the weld itself, whatever the force's direction
    double plate = 0.0;                                      ///< beside it, in shear through its thickness
    double wall_normal = 0.0;                                ///< of the post, along it
    double wall_shear = 0.0;                                 ///< of the post, across it
    double peak = 1.0;            ///< on the bending that is asked of the weld itself: 1, or that of a groove
    std::string clause_of_metal;  ///< where the weld itself governs
    std::vector<Step> steps;
    format::Phrase missing;  ///< empty where there are values
};

/// Steel: AISC 360-16 J2.4 for the weld, J4.1 and J4.2 for the metal beside it, by the force's direction; stainless
/// steel's weld with the larger factors of AISC Design Guide 27 (from memory). Aluminum: Aluminum Design Manual 2020
/// J.2.2 (from memory), whose smaller value in shear is taken for every direction. Fillets on both faces of the plate
/// count together. `missing` where filler and metals do not belong together.
[[nodiscard]] WeldStrength weld_strength(const model::Weld& weld, const catalog::Filler& filler, const WeldParts& parts,
                                         const model::Basis& basis);

enum class WeldGoverns { metal, wall, plate };
/// Shares of the strength that a force uses; 1 is all of it.
struct WeldUse {
    double metal = 0.0, wall = 0.0, plate = 0.0;
    [[nodiscard]] double most() const;
    [[nodiscard]] WeldGoverns governs() const;
};
/// Along and across the post's wall the shares are combined by their squares.
[[nodiscard]] WeldUse weld_use(const WeldStrength& strength, const resistance::steel::WeldIntensity& force);

}  // namespace toehold::checks
