#pragma once
// Every link of a guard post's base that a load test may break: what its mean strength is the mean of, where that and
// its scatter come from, and how it moves with the wood's density. Where nothing was found in print the meaning is
// `none`: such a link has no mean, and a prediction must say that it leaves the link out.
#include "resistance/ultimate/seen.h"

#include <span>
#include <string_view>

namespace toehold::resistance::ultimate {

enum class Link {
    lag_withdrawal,
    wood_screw_withdrawal,
    nail_withdrawal,
    lag_tension,
    bolt_tension,
    fastener_lateral,
    bearing_across_grain,
    member_bending,
    member_shear,
    member_torsion,
    steel_plate_bending,
    steel_post_bending,
    aluminum_bending,
    fillet_weld,
    wood_post_bending,
    head_pull_through,
    tension_across_grain,
    shear_at_fasteners,
    toe_nails,
    aluminum_weld,
    reported_hardware,
};

enum class Meaning {
    ultimate,     ///< the largest load it carries
    yield,        ///< where it bends or gives way for good; it carries more, but how much was not found
    deformation,  ///< a stated movement; it does not break
    none,         ///< no published mean was found
};

struct LinkBasis {
    Link link = Link::lag_withdrawal;
    Meaning meaning = Meaning::none;
    Seen mean_seen = Seen::assumed;
    std::string_view mean_source = {};
    double variation = 0.0;  ///< of the link alone, the density's part apart where it has a power; 0 without a mean
    Seen variation_seen = Seen::assumed;
    std::string_view variation_source = {};
    double density_power = 0.0;  ///< of the wood's density, scattering by `density_variation`; 0: within `variation`
};

/// One row a link, in the order above.
[[nodiscard]] std::span<const LinkBasis> link_bases();
[[nodiscard]] const LinkBasis& basis_of(Link link);

/// Whether a prediction can break it: an ultimate or, on the careful side, a yield strength.
[[nodiscard]] constexpr bool can_break(const LinkBasis& basis) {
    return basis.meaning == Meaning::ultimate || basis.meaning == Meaning::yield;
}

}  // namespace toehold::resistance::ultimate
