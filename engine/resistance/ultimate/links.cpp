#include "resistance/ultimate/links.h"

#include "resistance/ultimate/metal.h"
#include "resistance/ultimate/withdrawal.h"
#include "resistance/ultimate/wood.h"

#include <array>
#include <cstddef>

namespace toehold::resistance::ultimate {
namespace {

constexpr std::string_view handbook = "Wood Handbook 2010 ch. 8", clear_wood = "ASTM D2555-06 Table 1",
                           lumber = "ASTM D245, D1990", model_code = "JCSS Probabilistic Model Code, part 3",
                           expected_yield = "AISC 341 Ry";

// Scatter of the fastener, its hole and its setting, density apart. Assumed: no test series of lag or wood screws with
// their scatter was found. With the density's part a lag screw's withdrawal scatters by 0.21; five posts on lag screws
// that failed by it in 2005 scattered by 0.16 (`guard_tests.h`).
constexpr double screw_alone = 0.15, nail_alone = 0.25, lateral_alone = 0.20;
// Bearing strength grows with the density itself where the wood is crushed, with its root where the dowel bends.
constexpr double lateral_density_power = 1.0;

/// A mean, and where it was found.
struct Mean {
    Meaning meaning;
    Seen seen;
    std::string_view source;
};

/// A scatter, and where it was found; `source` is empty where it is assumed.
struct Scatter {
    double variation;
    Seen seen;
    std::string_view source;
    double density_power = 0.0;
};

constexpr Scatter assumed(double variation, double density_power) {
    return {variation, Seen::assumed, {}, density_power};
}

constexpr LinkBasis row(Link link, const Mean& mean, const Scatter& scatter) {
    return {link,           mean.meaning,         mean.seen, mean.source, scatter.variation, scatter.seen,
            scatter.source, scatter.density_power};
}

constexpr LinkBasis unknown(Link link) { return {.link = link}; }

constexpr Mean from_handbook{Meaning::ultimate, Seen::in_text, handbook};
constexpr Mean from_nails{Meaning::ultimate, Seen::in_text, "Research Note FPL-093, 1965"};
constexpr Mean from_lumber{Meaning::ultimate, Seen::memory, lumber};
constexpr Mean from_yield_modes{Meaning::yield, Seen::memory, "NDS 2018 Table 12.3.1A with Rd = 1; AWC TR12"};
constexpr Mean from_expected_yield{Meaning::yield, Seen::in_text, expected_yield};
constexpr Mean from_model_code{Meaning::ultimate, Seen::recomputed, model_code};
constexpr Mean from_aluminum{Meaning::yield, Seen::memory, "NBS Special Publication 577"};

constexpr Scatter of_lumber_bending{lumber_bending_variation, Seen::in_text, model_code};
constexpr Scatter of_lumber_shear{lumber_shear_variation, Seen::in_text, model_code};
constexpr Scatter of_bolts{bolt_tension.variation, Seen::in_text, model_code};

constexpr std::array<LinkBasis, 21> bases{{
    row(Link::lag_withdrawal, from_handbook, assumed(screw_alone, lag_density_power)),
    row(Link::wood_screw_withdrawal, from_handbook, assumed(screw_alone, wood_screw_density_power)),
    row(Link::nail_withdrawal, from_nails, assumed(nail_alone, nail_density_power)),
    row(Link::lag_tension, from_handbook, of_bolts),
    row(Link::bolt_tension, from_model_code, of_bolts),
    row(Link::fastener_lateral, from_yield_modes, assumed(lateral_alone, lateral_density_power)),
    row(Link::bearing_across_grain, {Meaning::deformation, Seen::memory, "ASTM D245"},
        {clear_bearing_variation, Seen::recomputed, clear_wood}),
    row(Link::member_bending, from_lumber, of_lumber_bending),
    row(Link::member_shear, from_lumber, of_lumber_shear),
    row(Link::member_torsion, from_lumber, of_lumber_shear),
    row(Link::steel_plate_bending, from_expected_yield, {steel_plate_yield.variation, Seen::recomputed, model_code}),
    row(Link::steel_post_bending, from_expected_yield, {steel_tube_yield.variation, Seen::recomputed, model_code}),
    row(Link::aluminum_bending, from_aluminum, {aluminum_yield.variation, Seen::memory, "NBS Special Publication 577"}),
    row(Link::fillet_weld, from_model_code, {fillet_weld_shear.variation, Seen::in_text, model_code}),
    row(Link::wood_post_bending, from_lumber, of_lumber_bending),
    unknown(Link::head_pull_through),
    unknown(Link::tension_across_grain),
    unknown(Link::shear_at_fasteners),
    unknown(Link::toe_nails),
    unknown(Link::aluminum_weld),
    unknown(Link::reported_hardware),
}};

constexpr bool in_order() {
    for (std::size_t row = 0; row < bases.size(); ++row) {
        if (static_cast<std::size_t>(bases[row].link) != row) return false;
    }
    return static_cast<std::size_t>(Link::reported_hardware) + 1 == bases.size();
}
static_assert(in_order());

}  // namespace

std::span<const LinkBasis> link_bases() { return bases; }

const LinkBasis& basis_of(Link link) { return bases.at(static_cast<std::size_t>(link)); }

}  // namespace toehold::resistance::ultimate
