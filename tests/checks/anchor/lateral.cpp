#include "checks/anchor/lateral_joint.h"
#include "checks/basis/shears.h"
#include "checks/run_check.h"
#include "support/compare.h"
#include "support/example.h"

#include <cmath>
#include <numbers>

using namespace toehold;
using namespace toehold::checks;

namespace {

std::vector<CheckResult> lateral(const catalog::Resolved& resolved, const demand::Demand& demand) {
    return test::run_check("anchor-lateral", resolved, demand);
}

CheckResult first(const catalog::Resolved& resolved, double x_lb, double y_lb) {
    const auto results = lateral(resolved, test::example_demand(resolved, {0.0, x_lb, y_lb}, {0.0, 0.0}));
    REQUIRE_FALSE(results.empty());
    return results.front();
}

// 3/8 in lag, G .55, 1 in of decking as the gap, mode IV, which knows neither lm nor the plate's thickness. Computed by
// an independent routine from the general dowel equations of AWC TR12 with Fe not rounded; rounding moves it 0.3 %.
constexpr double across_lb = 62.4;
constexpr double along_lb = 80.4;
constexpr double across_no_gap_lb = 192.2;
constexpr double wet = 0.7;           // NDS 2018 Table 11.3.3
constexpr double row_of_two = 0.997;  // member_anchors.cpp
constexpr double rounding = 4e-3;

}  // namespace

TEST_CASE("A lag screw across the grain carries the gap's reduced value, wet", "[closed-form]") {
    const CheckResult result = first(test::example_resolved(), 0.0, 40.0);
    CHECK_CLOSE(result.capacity, across_lb * wet * row_of_two, rounding, 0.0);
    CHECK_CLOSE(result.ratio, 40.0 / (across_lb * wet * row_of_two), rounding, 0.0);
    CHECK(result.status == Status::holds);
    CHECK(test::about(result) == "anchor A");
    CHECK_CLOSE(result.direction_deg.value(), 90.0, 1e-12, 0.0);
    CHECK(test::link_words(result) == "anchor A > block B1: bearing of the shank");
    CHECK(test::step_value(result, "g") == 1.0);
    CHECK_CLOSE(test::step_value(result, "theta"), 90.0, 1e-9, 0.0);
    // 6 - 3/8 - 1 = 4.625 in the block, less half of 7/32
    CHECK_CLOSE(test::step_value(result, "l_m"), 4.515625, 1e-12, 0.0);
}

TEST_CASE("Along the grain the same screw carries more", "[closed-form]") {
    CHECK_CLOSE(first(test::example_resolved(), 40.0, 0.0).capacity, along_lb * wet * row_of_two, rounding, 0.0);
}

TEST_CASE("The worst state is found by ratio, not by force", "[unit]") {
    const catalog::Resolved resolved = test::example_resolved();
    demand::Demand demand = test::example_demand(resolved, {0.0, 45.0, 0.0}, {0.0, 0.0});
    demand.states.front().direction_rad = 0.0;
    demand::State across = demand.states.front();
    across.direction_rad = 0.5 * std::numbers::pi;
    for (demand::AnchorForce& force : across.anchors) force = {0.0, 0.0, 40.0};
    demand.states.push_back(across);
    // 45 / 80.4 = 0.56 along, 40 / 62.4 = 0.64 across
    const CheckResult result = lateral(resolved, demand).front();
    CHECK(result.demand == 40.0);
    CHECK_CLOSE(result.direction_deg.value(), 90.0, 1e-12, 0.0);
}

TEST_CASE("Decking counts as wood around the shank only where the basis says so and it is the block's wood",
          "[closed-form]") {
    catalog::Resolved resolved = test::example_resolved();
    resolved.detail.basis.decking_in_shear = model::DeckingInShear::bearing;
    CHECK_CLOSE(first(resolved, 0.0, 40.0).capacity, across_no_gap_lb * wet * row_of_two, rounding, 0.0);
    // Along the block's grain the boards may still be crossed: taken across.
    CHECK_CLOSE(first(resolved, 40.0, 0.0).capacity, across_no_gap_lb * wet * row_of_two, rounding, 0.0);
    on_deck(resolved).decking->species = "cedar";
    CHECK_CLOSE(first(resolved, 0.0, 40.0).capacity, across_lb * wet * row_of_two, rounding, 0.0);
    CHECK_FALSE(first(resolved, 0.0, 40.0).note.empty());
    on_deck(resolved).decking->species = "southern-pine";
    on_deck(resolved).decking->kind = catalog::DeckingKind::plastic_composite;
    CHECK_CLOSE(first(resolved, 0.0, 40.0).capacity, across_lb * wet * row_of_two, rounding, 0.0);
}

TEST_CASE("Strength design replaces CD", "[closed-form]") {
    catalog::Resolved resolved = test::example_resolved();
    resolved.detail.basis.method = model::Method::lrfd;
    CHECK_CLOSE(first(resolved, 0.0, 40.0).capacity, across_lb * wet * row_of_two * 3.32 * 0.65 * 0.8, rounding, 0.0);
}

TEST_CASE("A reported fastener stands on its own lateral value or lacks evidence", "[unit]") {
    catalog::Resolved resolved = test::example_resolved();
    catalog::Anchor& anchor = resolved.anchors.front();
    anchor.kind = catalog::FastenerKind::reported;
    anchor.reported = model::ReportedFastener{};
    anchor.reported->report = "test report, table 1";
    CHECK(first(resolved, 0.0, 40.0).status == Status::missing_evidence);
    anchor.reported->lateral_lb = 50.0;
    CHECK_CLOSE(first(resolved, 30.0, 40.0).ratio, 1.0, 1e-12, 0.0);
    CHECK(first(resolved, 30.0, 40.0).clause == "report: test report, table 1");
    resolved.detail.basis.method = model::Method::lrfd;
    CHECK_CLOSE(first(resolved, 30.0, 40.0).capacity, 80.0, 1e-12, 0.0);
}

TEST_CASE("An anchor that lands nowhere is not spoken of", "[unit]") {
    catalog::Resolved resolved = test::example_resolved();
    resolved.anchors.front().seat.reset();
    CHECK(test::about(first(resolved, 0.0, 40.0)) == "anchor B");
}

TEST_CASE("Below the least penetration there is no lateral value", "[published]") {
    // NDS 2018 12.1.4.6: 4 D = 1.5 in without the tip; here 1.5 - 7/32.
    catalog::Resolved resolved = test::example_resolved();
    catalog::Anchor& anchor = resolved.anchors.front();
    anchor.length_in = 0.375 + 1.0 + 1.5;
    anchor.embedment_in = 1.5;
    const CheckResult result = first(resolved, 0.0, 40.0);
    CHECK(result.capacity == 0.0);
    CHECK(std::isinf(result.ratio));
    CHECK(result.status == Status::no_path);
    CHECK_FALSE(result.note.empty());
}

TEST_CASE("A reduced end distance reduces the value", "[published]") {
    // NDS 2018 Table 12.5.1A: across the grain 4 D = 1.5 in is full; the block ends 1 in from anchor A.
    catalog::Resolved resolved = test::example_resolved();
    resolved.detail.framing.blocks[0].from_in = -3.0;
    CHECK_CLOSE(first(resolved, 0.0, 40.0).capacity, across_lb * wet * row_of_two / 1.5, rounding, 0.0);
}

TEST_CASE("A through-bolt is taken with its thread in the shear plane", "[unit]") {
    catalog::Resolved resolved = test::example_resolved();
    for (catalog::Anchor& anchor : resolved.anchors) {
        anchor.kind = catalog::FastenerKind::through_bolt;
        anchor.length_in = 0.0;
        anchor.thread_length_in = 0.0;
        anchor.tip_length_in = 0.0;
        anchor.thread_in_block_in = 0.0;
        anchor.embedment_in = 5.5;
    }
    const CheckResult result = first(resolved, 0.0, 40.0);
    CHECK_CLOSE(result.capacity, across_lb * wet * row_of_two, rounding, 0.0);  // mode IV: as the lag of that root
    CHECK(test::step_value(result, "l_m") == 5.5);
}

TEST_CASE("An aluminum plate bears with its welded strength", "[unit]") {
    catalog::Resolved resolved = test::example_resolved();
    on_deck(resolved).plate_metal.kind = catalog::MetalKind::aluminum;
    on_deck(resolved).plate_metal.ultimate_psi = 38000.0;
    on_deck(resolved).plate_metal.welded_ultimate_psi = 24000.0;
    CHECK_CLOSE(test::step_value(first(resolved, 0.0, 40.0), "F_es"), 30000.0, 1e-12, 0.0);  // 1.25 x 24000
}

TEST_CASE("A wood screw under 1/4 in feels neither the grain nor its row", "[closed-form]") {
    // No. 14: D .242, root .196, Fyb 70,000; Fe 5550 (G .55); gap 1 in; mode IV of the general dowel equations:
    //   q_m = 5550 x .196 = 1087.8, q_s = 87000 x .196 = 17052 lb/in; M = 70000 x .196^3 / 6 = 87.845 lb in
    //   A = .5/17052 + .5/1087.8 = 4.88964e-4, B = 1, C = -175.689; P = (-1 + sqrt(1 + 4 A x 175.689)) / (2 A) = 162.74
    //   Rd = 10 x .196 + .5 = 2.46: Z = 66.15; wet 0.7: 46.31 lb
    catalog::Resolved resolved = test::example_resolved();
    for (catalog::Anchor& anchor : resolved.anchors) {
        anchor.kind = catalog::FastenerKind::wood_screw;
        anchor.diameter_in = 0.242;
        anchor.root_diameter_in = 0.196;
        anchor.bending_yield_psi = 70000.0;
    }
    CHECK_CLOSE(first(resolved, 0.0, 40.0).capacity, 46.31, 5e-4, 0.0);
    CHECK_CLOSE(first(resolved, 40.0, 0.0).capacity, 46.31, 5e-4, 0.0);
}

TEST_CASE("A fastener thicker than 1 in has no lateral equations", "[bad-input]") {
    catalog::Resolved resolved = test::example_resolved();
    resolved.anchors.front().diameter_in = 1.25;
    CHECK(first(resolved, 0.0, 40.0).status == Status::missing_evidence);
}

TEST_CASE("states with the same shear have the value of the first of them", "[second-method]") {
    const catalog::Resolved resolved = test::example_resolved();
    demand::Demand demand = test::example_demand(resolved, {100.0, 30.0, 20.0}, {0.0, 0.0});
    for (int number = 1; number < 6; ++number) {
        demand::State state = demand.states.front();
        for (demand::AnchorForce& anchor : state.anchors) {
            anchor.tension_lb += number;
            if (number % 2 == 1) anchor.shear_x_lb = -10.0 * number;
        }
        demand.states.push_back(state);
    }
    const CheckInput input{resolved, demand};
    CHECK(same_shears(input)->first == std::vector<std::size_t>{0, 1, 0, 3, 0, 5});
    const LateralJoint joint = lateral_joint(resolved, 0);
    const std::vector<double> values = adjusted_lateral_lb(input, joint);
    REQUIRE(values.size() == demand.states.size());
    for (std::size_t state = 0; state < values.size(); ++state)
        CHECK(values[state] == lateral_value(joint, demand.states[state]).adjusted_lb);
}

TEST_CASE("A lag screw too near another says why it has no value", "[unit]") {
    // NDS 2018 Table 12.5.1B: less than 3 D = 1.125 in apart.
    catalog::Resolved resolved = test::example_resolved();
    CHECK_FALSE(test::says(first(resolved, 0.0, 40.0).note, "No lateral value"));
    resolved.anchors[1].at.x_in = resolved.anchors[0].at.x_in + 1.1;
    const CheckResult result = first(resolved, 0.0, 40.0);
    CHECK(result.capacity == 0.0);
    CHECK(test::says(result.note, "a spacing is below the minimum"));
}

TEST_CASE("Over an inch in diameter the standard has no lateral equation", "[published]") {
    // NDS 2018 12.3.1 covers 1/4 to 1 in.
    catalog::Resolved resolved = test::example_resolved();
    resolved.anchors[0].diameter_in = 1.125;
    const CheckResult result = first(resolved, 0.0, 40.0);
    CHECK(result.status == Status::missing_evidence);
    CHECK(test::says(result.note, "diameters over 1 in."));
}
