#include "demand/framing/compliance.h"

#include "demand/demand.h"
#include "support/compare.h"
#include "support/example.h"

#include <cmath>

using namespace toehold;

TEST_CASE("a block gives at its middle as a simple beam does, and twists as a bar held at both ends", "[closed-form]") {
    catalog::Resolved resolved = test::example_resolved();
    for (model::Block& block : resolved.detail.framing.blocks) {
        model::ReportedConnector still{"still", "test value", 1000.0, 1000.0, 400.0, 3.5};
        still.stiffness_lb_per_in = 1e10;
        block.from_end.connection = still;
        block.to_end.connection = still;
    }
    const auto framing = demand::framing_compliance(resolved, demand::find_bed(resolved));
    REQUIRE(framing);
    REQUIRE(framing->places.size() == 2);
    // 3.5 x 5.5 in, 14.5 in long, E 1.4e6 psi, G = E/16. w = L^3/48EI + L/(4 (5/6) G A); twist = L/(4 G J); turn in its
    // length = L/12EI (couple at the middle of a simple beam) and no shear part, for it bends both halves alike.
    const double length = 14.5, b = 3.5, d = 5.5, modulus = 1.4e6, shear = modulus / 16.0;
    const double inertia = b * d * d * d / 12.0;
    const double torsion = d * b * b * b * (1.0 / 3.0 - 0.21 * b / d * (1.0 - std::pow(b / d, 4) / 12.0));
    const double give = std::pow(length, 3) / (48.0 * modulus * inertia) + length / (4.0 * (5.0 / 6.0) * shear * b * d);
    CHECK_CLOSE(1.0 / framing->stiffness[0], give, 1e-3, 0.0);
    CHECK_CLOSE(1.0 / framing->stiffness[7], length / (4.0 * shear * torsion), 1e-3, 0.0);
    const double shear_turn = 1.0 / (length * (5.0 / 6.0) * shear * b * d);
    CHECK_CLOSE(1.0 / framing->stiffness[14], length / (12.0 * modulus * inertia) + shear_turn, 2e-3, 0.0);
}

TEST_CASE("one block under the whole plate may give as it likes: the plate goes with it", "[property]") {
    catalog::Resolved resolved = test::example_resolved();
    resolved.detail.framing.blocks.resize(1);
    resolved.detail.framing.blocks[0].across_in = 0.0;
    resolved.detail.framing.blocks[0].width_in = 20.0;
    resolved.blocks.resize(1);
    for (catalog::Anchor& anchor : resolved.anchors) anchor.seat = model::Seat{0, 5.0, 5.0};
    const demand::Outcome outcome = demand::find_demand(resolved);
    REQUIRE(outcome.demand);
    CHECK_CLOSE(outcome.demand->bending->framing_change.value(), 0.0, 0.0, 1e-6);
}

TEST_CASE("blocks that give make states of stiffness of their own, unless the user fixes it", "[unit]") {
    catalog::Resolved resolved = test::example_resolved();
    demand::Outcome outcome = demand::find_demand(resolved);
    REQUIRE(outcome.demand);
    // On rigid framing the center and two corners, on framing that gives the same and the stiffest of both.
    CHECK(outcome.demand->scenarios.size() == 7);
    CHECK(outcome.demand->scenarios.back().flexible_framing);
    CHECK(outcome.demand->bending->framing_change);
    resolved.detail.basis.stiffness = model::FixedStiffness{30000.0, 50000.0, "test"};
    outcome = demand::find_demand(resolved);
    REQUIRE(outcome.demand);
    CHECK(outcome.demand->scenarios.size() == 1);
}
