// A plate that stands on packing instead of the boards.
#include "demand/demand.h"
#include "demand/demand_of.h"
#include "demand/uniform_bed.h"
#include "support/compare.h"
#include "support/example.h"

#include <cmath>
#include <numbers>

using namespace toehold;
using test::demand_of;

namespace {

catalog::Resolved packed(double width_in, double depth_in, std::vector<model::Position> places = {}) {
    catalog::Resolved resolved = test::example_resolved();
    on_deck(resolved.detail).layers.packing =
        model::Packing{model::PackingShape::rectangle, width_in, depth_in, "packing", 0.0, std::move(places)};
    on_deck(resolved).packing =
        catalog::DeckingMaterial{"packing", "packing", catalog::DeckingKind::metal, 29e6, true, 32400.0, "", {}};
    return resolved;
}

}  // namespace

TEST_CASE("the lever arm runs to the packing, not to the plate's edge", "[closed-form]") {
    // Strips 0.02 in deep between the toe row's anchors at y = 2.5, the heel row at -2.5: 8400 lb in over 5.00 to 5.01
    // in by two anchors, 838.3 to 840 lb each. On the boards the arm reaches out to the plate's edge.
    catalog::Resolved resolved = packed(1.0, 0.02, {{-1.0, 2.5}, {1.0, 2.5}});
    test::push_outward_alone(resolved.detail);
    resolved.detail.basis.plate = model::PlateBehaviour::rigid;
    resolved.detail.basis.stiffness = model::FixedStiffness{1e8, 50000.0, "test"};
    const demand::Demand demand = demand_of(resolved);
    CHECK_CLOSE(demand.anchors[0].tension_lb, 839.2, 0.0, 0.9);
    CHECK_CLOSE(demand.anchors[1].tension_lb, 839.2, 0.0, 0.9);
}

TEST_CASE("a flexible plate on packing balances, on framing that gives too", "[property]") {
    const catalog::Resolved resolved = packed(1.5, 1.5);
    const demand::Demand demand = demand_of(resolved);
    REQUIRE(demand.supports.size() == 4);
    CHECK(demand.bending);
    CHECK(demand.scenarios.back().flexible_framing);
    for (const demand::State& state : demand.states) {
        double up = 0.0, about_x = 0.0;
        for (std::size_t i = 0; i < state.anchors.size(); ++i) {
            up -= state.anchors[i].tension_lb;
            about_x -= state.anchors[i].tension_lb * resolved.anchors[i].at.y_in;
        }
        for (std::size_t i = 0; i < state.supports.size(); ++i) {
            const demand::SupportForce& support = state.supports[i];
            up += support.force_lb;
            about_x += support.force_lb * support.at.y_in;
            if (support.force_lb < 1e-9) continue;
            REQUIRE(std::abs(std::abs(support.at.y_in) - 2.5) <= 0.75 + 1e-9);  // on its piece
        }
        REQUIRE(std::abs(up) < 1e-6);
        REQUIRE(std::abs(about_x - 8400.0 * std::sin(state.direction_rad)) < 1e-5);
    }
}

TEST_CASE("two pieces at one station of a block are two supports", "[property]") {
    // A flat block under a whole row: pieces side by side across it at the same place along it.
    catalog::Resolved resolved = packed(1.0, 1.0, {{-2.0, -2.9}, {-2.0, -1.7}, {2.0, -2.5}, {-2.0, 2.5}, {2.0, 2.5}});
    const demand::Demand demand = demand_of(resolved);
    CHECK(demand.supports.size() == 5);
    CHECK(std::isfinite(demand.bending.value().framing_change.value()));
}
