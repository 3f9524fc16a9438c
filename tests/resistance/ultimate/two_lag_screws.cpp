// Means, scatter and drawing together: a post held by two lag screws in one member, drawn, against the integral over
// the member's density (scipy 1.10.1 quad, run once by hand).
#include "mechanics/sampling/breaking_loads.h"
#include "resistance/ultimate/links.h"
#include "resistance/ultimate/withdrawal.h"
#include "resistance/ultimate/wood.h"
#include "support/compare.h"

#include <array>

using namespace toehold::mechanics;
using namespace toehold::resistance::ultimate;

namespace {

// Two 3/8 in screws with 3 in of thread in G 0.55; a push at 38 in, 5 in from the screws to where the plate bears.
Chain two_lag_screws(bool in_one_member) {
    const LinkBasis& basis = basis_of(Link::lag_withdrawal);
    ChainLink screw;
    screw.mean_strength = 3.0 * lag_mean_lb_per_in(0.55, 0.375);
    screw.variation = basis.variation;
    screw.demand_per_load = 38.0 / 5.0 / 2.0;
    Chain chain{{{density_variation}, {density_variation}}, {screw, screw}};
    chain.links[0].shared = {{0, basis.density_power}};
    chain.links[1].shared = {{in_one_member ? std::size_t{0} : std::size_t{1}, basis.density_power}};
    return chain;
}

struct Known {
    double push_lb, one_member, two_members;
};
constexpr std::array<Known, 3> integrated{{{700.0, 0.979456011499789, 0.9780891561821294},
                                           {800.0, 0.9144269881148345, 0.9050114286420301},
                                           {900.0, 0.778888301506209, 0.7471944123023264}}};

}  // namespace

TEST_CASE("Two lag screws carry a push as often as the integral over density says", "[closed-form]") {
    constexpr double five_standard_errors = 0.9999994;
    const BreakingLoads one = draw(two_lag_screws(true), {20000, 1}), two = draw(two_lag_screws(false), {20000, 1});
    for (const Known& known : integrated) {
        INFO(known.push_lb << " lb");
        const ConfidenceInterval in_one = carrying(one, known.push_lb, five_standard_errors).interval;
        CHECK(in_one.low <= known.one_member);
        CHECK(in_one.high >= known.one_member);
        const ConfidenceInterval in_two = carrying(two, known.push_lb, five_standard_errors).interval;
        CHECK(in_two.low <= known.two_members);
        CHECK(in_two.high >= known.two_members);
    }
}

TEST_CASE("Screws that share a member's density have fewer chances to be weak", "[property]") {
    for (const Known& known : integrated) CHECK(known.one_member > known.two_members);
    CHECK(draw(two_lag_screws(true), {20000, 1}).mean_load > draw(two_lag_screws(false), {20000, 1}).mean_load);
}
