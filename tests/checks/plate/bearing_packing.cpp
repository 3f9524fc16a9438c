// Packing through the boards: what bears, and what it bears on.
#include "checks/run_check.h"

#include "demand/plate_on_deck/bed.h"
#include "demand/plate_on_deck/packing.h"
#include "mechanics/plane/area_moments.h"
#include "support/compare.h"
#include "support/example.h"

using namespace toehold;
using checks::Status;
using test::step_value;

namespace {

/// 1.5 in square about every anchor of the example.
catalog::Resolved packed(catalog::DeckingKind kind = catalog::DeckingKind::metal) {
    catalog::Resolved resolved = test::example_resolved();
    on_deck(resolved.detail).layers.packing =
        model::Packing{model::PackingShape::rectangle, 1.5, 1.5, "packing", 0.0, {}};
    on_deck(resolved).packing = catalog::DeckingMaterial{"packing", "packing", kind, 29e6, true, 32400.0, "", {}};
    return resolved;
}

/// One piece on B2 that carries this.
demand::Demand pressed(const catalog::Resolved& resolved, double force_lb) {
    demand::Demand demand = test::example_demand(resolved, {500.0, 0.0, 50.0}, {});
    demand.supports = demand::find_bed(resolved).supports;
    for (std::size_t index = 0; index < demand.supports.size(); ++index)
        demand.states[0].supports.push_back({index == 3 ? force_lb : 0.0, {}, 0.0, {}, 0.0});
    return demand;
}

}  // namespace

TEST_CASE("The plate bears on packing alone, piece by piece", "[closed-form][B5]") {
    const catalog::Resolved resolved = packed();
    const demand::Bed bed = demand::find_bed(resolved);
    REQUIRE(bed.patches.size() == 4);
    // 1 in of steel on 5.5 in of pine at E/20 = 70,000 psi: 12,727 psi/in. A hole of 7/16 takes 0.1503 of 2.25 in2.
    const double solid = 1.0 - 0.150330 / 2.25;
    for (std::size_t index = 0; index < 4; ++index) {
        CHECK(bed.supports[index].packing);
        CHECK_CLOSE(mechanics::moments(bed.patches[index].outline).area, 2.25, 1e-9, 0.0);
        CHECK_CLOSE(bed.patches[index].stiffness_psi_per_in, solid / (1.0 / 29e6 + 5.5 / 70000.0), 1e-6, 0.0);
    }
    // Without packing the plate lies on both blocks whole.
    CHECK(demand::find_bed(test::example_resolved()).patches.size() == 2);
}

TEST_CASE("A round piece counts as the square of its area", "[closed-form]") {
    catalog::Resolved resolved = packed();
    on_deck(resolved.detail).layers.packing =
        model::Packing{model::PackingShape::round, 1.5, 0.0, "packing", 0.5, {{0.0, 2.5}}};
    const auto pieces = demand::packing_pieces(resolved);
    REQUIRE(pieces.size() == 1);
    // pi 1.5^2/4 = 1.7671 in2, side 1.3293; no anchor stands there, so no hole.
    CHECK_CLOSE(pieces[0].covers.x_max_in - pieces[0].covers.x_min_in, 1.32934, 1e-5, 0.0);
    CHECK(pieces[0].solid == 1.0);
}

TEST_CASE("Packing presses evenly on the wood below it, with Cb of its length", "[closed-form]") {
    const catalog::Resolved resolved = packed();
    const auto results = test::run_check("packing-seat", resolved, pressed(resolved, 1000.0));
    REQUIRE(results.size() == 2);  // B1 and B2
    const auto& result = results[1];
    CHECK(test::about(result) == "block B2");
    // 2.25 - 0.1503 = 2.0997 in2: 476.3 psi. 1.5 in along the grain, 4.5 in from the end: Cb = 1.25; 378.55 x 1.25.
    CHECK_CLOSE(result.demand, 476.3, 1e-3, 0.0);
    CHECK_CLOSE(step_value(result, "C_b"), 1.25, 1e-12, 0.0);
    CHECK_CLOSE(result.capacity, 473.19, 1e-4, 0.0);
    CHECK(result.status == Status::fails);
    CHECK(test::link_words(result) == "packing > block B2: bearing");
    CHECK(test::run_check("bearing-framing", resolved, pressed(resolved, 1000.0)).empty());
}

TEST_CASE("A piece's hole is found wherever the piece lies", "[property]") {
    // The packing of the case before, plate and blocks 10 in farther out.
    catalog::Resolved resolved = packed();
    on_deck(resolved.detail).plate.outline = model::RectangleOutline{5.5, 7.0, 0.0, {0.0, 10.0}};
    for (model::Block& block : resolved.detail.framing.blocks) block.across_in += 10.0;
    for (std::size_t index = 0; index < resolved.anchors.size(); ++index) {
        resolved.anchors[index].at.y_in += 10.0;
        on_deck(resolved.detail).plate.holes[index].center.y_in += 10.0;
    }
    const auto results = test::run_check("packing-seat", resolved, pressed(resolved, 1000.0));
    REQUIRE(results.size() == 2);
    CHECK_CLOSE(results[1].demand, 476.3, 1e-3, 0.0);
}

TEST_CASE("Packing half an inch long has the first row's Cb", "[published]") {
    // NDS 2018 Table 3.10.4: 1.75 for 1/2 in, (0.5 + 0.375)/0.5.
    catalog::Resolved resolved = packed();
    on_deck(resolved.detail).layers.packing =
        model::Packing{model::PackingShape::rectangle, 0.5, 1.0, "packing", 0.0, {{0.0, 2.5}}};
    demand::Demand demand = test::example_demand(resolved, {500.0, 0.0, 50.0}, {});
    demand.supports = demand::find_bed(resolved).supports;
    demand.states[0].supports.assign(demand.supports.size(), {100.0, {}, 0.0, {}, 0.0});
    const auto results = test::run_check("packing-seat", resolved, demand);
    REQUIRE(results.size() == 1);
    CHECK_CLOSE(step_value(results[0], "C_b"), 1.75, 1e-9, 0.0);
}

TEST_CASE("The piece that presses most counts for the packing itself", "[unit]") {
    const catalog::Resolved resolved = packed();
    demand::Demand demand = pressed(resolved, 200.0);  // on the last piece
    demand.states[0].supports[1].force_lb = 1000.0;
    CHECK_CLOSE(test::run_check("bearing-packing", resolved, demand).at(0).demand, 476.3, 1e-3, 0.0);
}

TEST_CASE("Metal packing takes what its catalog says, wood packing what wood does", "[unit]") {
    const catalog::Resolved metal = packed();
    const auto strong = test::run_check("bearing-packing", metal, pressed(metal, 1000.0)).at(0);
    CHECK_CLOSE(strong.capacity, 32400.0, 1e-12, 0.0);
    CHECK(strong.status == Status::holds);
    catalog::Resolved wood = packed(catalog::DeckingKind::wood);
    on_deck(wood).packing->bearing_psi = 565.0;
    CHECK_CLOSE(test::run_check("bearing-packing", wood, pressed(wood, 1000.0)).at(0).capacity, 378.55, 1e-9, 0.0);
}

TEST_CASE("Boards under packing are not pressed and need no bearing value", "[unit][B5]") {
    catalog::Resolved resolved = packed();
    on_deck(resolved).decking->kind = catalog::DeckingKind::plastic_composite;
    on_deck(resolved).decking->may_bear = false;
    on_deck(resolved).decking->bearing_psi = 0.0;
    CHECK(test::run_check("bearing-decking", resolved, pressed(resolved, 1000.0)).empty());
    CHECK(test::run_finding("composite-evidence", resolved).empty());
}
