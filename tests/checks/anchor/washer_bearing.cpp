// Washers and backing plates under the block, by hand.
#include "checks/anchor/bolt_example.h"
#include "checks/run_check.h"
#include "support/compare.h"

using namespace toehold;
using checks::Status;
using test::bolted_example;
using test::run_check;
using test::step_value;

namespace {

checks::CheckResult first(const catalog::Resolved& resolved) {
    const auto all = run_check("washer-bearing", resolved, test::example_demand(resolved, {1000.0, 0.0, 50.0}, {}));
    REQUIRE_FALSE(all.empty());
    return all[0];
}

catalog::Resolved with_washer(double outside_in) {
    auto resolved = bolted_example();
    for (auto& anchor : resolved.anchors)
        anchor.washer_below = catalog::WasherSize{"w", "washer", outside_in, 0.53125, 0.1875, {}};
    return resolved;
}

catalog::Resolved with_plate(double width_in, double depth_in, double thickness_in) {
    auto resolved = bolted_example();
    for (auto& anchor : resolved.anchors) {
        anchor.backing = model::BackingPlate{width_in, depth_in, thickness_in, "steel-a36"};
        anchor.backing_metal = on_deck(resolved).plate_metal;
    }
    return resolved;
}

}  // namespace

TEST_CASE("A 2 in washer bears on its ring with the wet southern pine's strength", "[closed-form]") {
    // F' = 565 x 0.67 = 378.55 psi. Ring (wood's hole 9/16 is the larger): pi/4 (4 - 0.31640625) = 2.89309 in2.
    // 5.25 - 1 = 4.25 in from the end: Cb = 2.375/2 = 1.1875. 378.55 x 1.1875 x 2.89309 = 1300.5 lb.
    const auto result = first(with_washer(2.0));
    CHECK_CLOSE(step_value(result, "F_c,perp'"), 378.55, 0.0, 0.005);
    CHECK(step_value(result, "C_b") == 1.1875);
    CHECK_CLOSE(result.capacity, 1300.5, 0.0, 0.1);
    CHECK(result.status == Status::holds);
    CHECK(format::english(result.link->by) == "washer below");
}

TEST_CASE("Near the block's end the washer gets no bearing area factor", "[closed-form]") {
    auto resolved = with_washer(2.0);
    resolved.anchors[0].seat->end_in = 3.5;  // 2.5 in from washer to end
    const auto result = first(resolved);
    CHECK(step_value(result, "C_b") == 1.0);
    CHECK_CLOSE(result.capacity, 378.55 * 2.89309, 1e-5, 0.0);
}

TEST_CASE("The load duration does not raise bearing across the grain", "[unit]") {
    auto resolved = with_washer(2.0);
    const double before_lb = first(resolved).capacity;
    resolved.detail.basis.load_duration = 1.6;
    CHECK(first(resolved).capacity == before_lb);
}

TEST_CASE("A washer that overhangs the block counts only evenly about the bolt", "[closed-form]") {
    // 0.75 in to the edge of a 3 in washer: ring of 1.5 in, 1.51864 in2, Cb = 1.875/1.5 = 1.25.
    auto resolved = with_washer(3.0);
    resolved.anchors[0].seat->edge_in = 0.75;
    CHECK_CLOSE(first(resolved).capacity, 378.55 * 1.25 * 1.51864, 1e-5, 0.0);
}

TEST_CASE("A stout backing plate bears whole, cut to the block's width", "[closed-form]") {
    // 1/2 in A36: c = 0.5 sqrt((36000/1.67)/(3 x 378.55)) = 2.178 in, so nut + 2 c = 5.1 in reaches everywhere.
    // 4 along the grain x 3.5 of its 5 in across on the block, less the hole 0.248505: 13.7515 in2 x 378.55 = 5205.6.
    const auto result = first(with_plate(4.0, 5.0, 0.5));
    CHECK_CLOSE(step_value(result, "c"), 2.1784, 0.0, 1e-4);
    CHECK_CLOSE(result.capacity, 5205.6, 0.0, 0.1);
    CHECK(step_value(result, "C_b") == 1.0);
}

TEST_CASE("A thin backing plate counts only as far as it can bend the load out", "[closed-form]") {
    // 1/8 in: c = 0.125 sqrt(21556.9/1135.65) = 0.54460; 0.75 + 2 x 0.54460 = 1.83920 square, less 0.248505:
    // 3.13415 in2 x 378.55 = 1186.4 lb, not the 5205.6 of the stout one.
    CHECK_CLOSE(first(with_plate(4.0, 5.0, 0.125)).capacity, 1186.4, 0.0, 0.1);
}

TEST_CASE("A backing plate turns with the block's grain", "[property]") {
    auto resolved = with_plate(4.0, 3.0, 0.5);
    const auto along_x = first(resolved);
    CHECK(step_value(along_x, "l_b") == 4.0);
    resolved.detail.framing.blocks[0].along = model::PlanAxis::y;
    const auto along_y = first(resolved);
    CHECK(step_value(along_y, "l_b") == 3.0);
    CHECK(step_value(along_y, "b_b") == 3.5);
}

TEST_CASE("An unknown backing plate metal leaves the evidence missing", "[bad-input]") {
    auto resolved = with_plate(4.0, 4.0, 0.5);
    resolved.anchors[0].backing_metal.reset();
    CHECK(first(resolved).status == Status::missing_evidence);
}

TEST_CASE("LRFD bearing takes KF and phi without the time effect", "[unit]") {
    auto resolved = with_washer(2.0);
    const double asd_lb = first(resolved).capacity;
    resolved.detail.basis.method = model::Method::lrfd;
    // NDS 2018 Tables N1 and N2, from memory: 1.67 x 0.90.
    CHECK_CLOSE(first(resolved).capacity, asd_lb * 1.503, 1e-12, 0.0);
    // The washer's own bending has 0.90 F_y in place of F_y/1.67: 577.7 psi of the 3 x 1/4 in one below.
    resolved = with_washer(3.0);
    resolved.anchors[0].washer_below->thickness_in = 0.25;
    resolved.detail.basis.method = model::Method::lrfd;
    CHECK_CLOSE(step_value(first(resolved), "p_L"), 577.7 * 1.503, 0.0, 0.2);
}

TEST_CASE("Screws and bare nuts have no washer to check", "[unit]") {
    const auto bare = bolted_example();
    CHECK(run_check("washer-bearing", bare, test::example_demand(bare, {1000.0, 0.0, 0.0}, {})).empty());
    const auto screws = test::example_resolved();
    CHECK(run_check("washer-bearing", screws, test::example_demand(screws, {1000.0, 0.0, 0.0}, {})).empty());
}

TEST_CASE("Of a washer too thin for its width only what its bending can load counts", "[closed-form]") {
    // 3 in outside, 1/8 in thick, nut 3/4 in, hole 9/16; 378.55 x Cb (3.375/3 = 1.125) = 425.9 psi. m = 36000/1.67 x
    // 0.125^2/4 = 84.21 lb. At 2.06 in outside (b = 1.03): 2 (1.03 - 0.28125) 84.21/((2/3)(1.0927 - 0.0222) - (1.0609 -
    // 0.0791) 0.375) = 126.1/(0.7137 - 0.3682) = 365; at 1.94 (b = 0.97): 116.0/(0.5936 - 0.3232) = 429.
    auto resolved = with_washer(3.0);
    resolved.anchors[0].washer_below->thickness_in = 0.125;
    const auto thin = first(resolved);
    CHECK_CLOSE(step_value(thin, "d_e"), 1.945, 0.0, 0.01);
    resolved.anchors[0].washer_below->thickness_in = 0.25;
    const auto thick = first(resolved);
    CHECK(step_value(thick, "d_e") == 3.0);
    CHECK(thin.capacity < thick.capacity);
    CHECK_CLOSE(step_value(thick, "p_L"), 577.7, 0.0, 0.1);
}
