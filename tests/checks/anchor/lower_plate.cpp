// One plate, angle or channel below several bolts, by hand.
#include "checks/anchor/bolt_example.h"
#include "checks/anchor/lower_plate_section.h"
#include "checks/anchor/lower_plate_strip.h"
#include "checks/run_check.h"
#include "checks/steel_examples.h"
#include "support/compare.h"
#include "support/contains.h"

using namespace toehold;
using checks::best_strip;
using checks::Status;
using checks::StripBolt;
using test::step_value;

namespace {

/// Anchors A and B in block B1 (y = -2.5, x = -2 and 2) on one plate; C and D likewise on another under B2.
catalog::Resolved with_lower(model::LowerPlate plate) {
    auto resolved = test::bolted_example();
    on_deck(resolved.detail).anchors = {
        {{"A", "B"}, model::ThroughBolt{"bolt-1/2", "a307", plate}, {}, "hot-dip galvanized, ASTM A153"},
        {{"C", "D"}, model::ThroughBolt{"bolt-1/2", "a307", {}}, {}, "hot-dip galvanized, ASTM A153"}};
    for (auto& anchor : resolved.anchors) {
        anchor.group = anchor.id < "C" ? 0 : 1;
        if (anchor.group == 1) continue;
        anchor.lower = plate;
        anchor.backing_metal = on_deck(resolved).plate_metal;
    }
    return resolved;
}

model::LowerPlate flat(double width_in, double thickness_in) {
    return {model::LowerShape::plate, {0.0, -2.5}, width_in, 3.0, thickness_in, 0.0, "steel-a36"};
}

checks::CheckResult run(const std::string& id, const catalog::Resolved& resolved) {
    const auto all = test::run_check(id, resolved, test::example_demand(resolved, {1000.0, 0.0, 50.0}, {}));
    REQUIRE(all.size() == 1);
    return all[0];
}

}  // namespace

TEST_CASE("A strip under two equal bolts lies as a beam on an even pressure", "[closed-form]") {
    const std::vector<StripBolt> bolts{{-2.0, 1000.0}, {2.0, 1000.0}};
    // Ends 2 in beyond: 250 lb/in; at the bolts 250 x 2^2/2 = 500, in the middle 250 x 4^2/2 - 1000 x 2 = 0.
    CHECK_CLOSE(checks::strip_moment_lb_in(bolts, {{-4.0, 4.0, 250.0}}), 500.0, 1e-9, 0.0);
    // Ends 1 in beyond: 333 lb/in; at the bolts 166.7, in the middle 333 x 3^2/2 - 2000 = -500.
    CHECK_CLOSE(checks::strip_moment_lb_in(bolts, {{-3.0, 3.0, 2000.0 / 6.0}}), 500.0, 1e-9, 0.0);
}

TEST_CASE("Between unequal bolts the strip is bent most where its shear turns", "[closed-form]") {
    // 1500 lb over 8.4 in, 178.57 lb/in: at the first bolt 178.57 x 2.2^2/2 = 432; the shear turns 5.6 in from the end,
    // 3.4 in past that bolt: 178.57 x 5.6^2/2 - 3400 = -600.
    const std::vector<StripBolt> bolts{{-2.0, 1000.0}, {4.0, 500.0}};
    CHECK_CLOSE(checks::strip_moment_lb_in(bolts, {{-4.2, 4.2, 1500.0 / 8.4}}), 600.0, 1e-9, 0.0);
}

TEST_CASE("A strip is bent alike wherever it lies along its member", "[property]") {
    const std::vector<StripBolt> far{{98.0, 1000.0}, {102.0, 1000.0}};
    CHECK_CLOSE(checks::strip_moment_lb_in(far, {{97.0, 103.0, 2000.0 / 6.0}}), 500.0, 1e-9, 0.0);
}

TEST_CASE("The strip finds the pressure that is easiest on wood and metal together", "[closed-form]") {
    const std::vector<StripBolt> bolts{{-2.0, 1000.0}, {2.0, 1000.0}};
    // Under each bolt a length l: 1000/l on 1000 lb/in, 1000 l/8 on 250 lb in. Equal where l = sqrt(2): 0.7071.
    const checks::StripUse use = best_strip(bolts, -4.0, 4.0, {1000.0, 250.0});
    CHECK_CLOSE(use.ratio, 0.7071, 0.01, 0.0);
    REQUIRE(use.pressures.size() == 2);
    // A strip that does not reach past the resultant on one side finds nothing.
    CHECK(best_strip({{3.0, 1000.0}}, -4.0, 3.0, {1000.0, 250.0}).pressures.empty());
    // Unequal pulls: 3000 and 1000 meet at x = -1; one pressure about it reaches 3 in to each side at most.
    const checks::StripUse uneven = best_strip({{-2.0, 3000.0}, {2.0, 1000.0}}, -4.0, 4.0, {1000.0, 1e9});
    CHECK_CLOSE(uneven.lb_per_in, 4000.0 / 6.0, 1e-9, 0.0);
    // Bolts 1 in apart have no more than that each: all 8 in together are the easier way.
    CHECK_CLOSE(best_strip({{-0.5, 1000.0}, {0.5, 1000.0}}, -4.0, 4.0, {1000.0, 1e9}).lb_per_in, 250.0, 1e-9, 0.0);
    // One bolt an inch from the strip's end has 2 in of it, whatever the metal.
    CHECK_CLOSE(best_strip({{3.0, 1000.0}}, -4.0, 4.0, {1000.0, 1e9}).lb_per_in, 500.0, 1e-9, 0.0);
}

TEST_CASE("An angle's section modulus meets the section tables", "[published]") {
    // L3x3x1/4 without fillets: S 0.577 in3 (Machine Elements in Mechanical Design, 4th ed., Table A16-1, seen in a
    // public copy).
    CHECK_CLOSE(checks::legged_section_in3(3.0, 3.0, 0.25, 1, 0.0), 0.577, 0.0, 0.0005);
    // L4x3x1/4 with the 3 in leg as its face: S 1.00.
    CHECK_CLOSE(checks::legged_section_in3(3.0, 4.0, 0.25, 1, 0.0), 1.00, 0.0, 0.005);
    // Two legs as one twice as thick.
    CHECK_CLOSE(checks::legged_section_in3(4.0, 2.0, 0.25, 2, 0.0),
                0.5 * checks::legged_section_in3(8.0, 2.0, 0.25, 4, 0.0), 1e-9, 0.0);
}

TEST_CASE("A common plate under two bolts presses on the block's underside", "[closed-form]") {
    const auto resolved = with_lower(flat(8.0, 0.375));
    const auto bearing = run("lower-plate-bearing", resolved);
    // F' = 565 x 0.67 = 378.55. c = 0.375 sqrt(21557/(3 x 378.55)) = 1.634: 3 in wide counts whole (0.75 + 3.27), on
    // the 3.5 in block. Two holes 9/16 take 0.497 in2 of 24: b_e = 3 - 0.497/8 = 2.938. Moment: Z = (3 - 0.5625)
    // 0.375^2/4 = 0.0857, 36000 Z/1.67 = 1847 lb in. The whole 8 in at 250 lb/in: 85.1 psi, 500 lb in at the bolts:
    // 0.27. L in the middle alone: 680.8/L psi, (2000/L)(L/2 - 2)^2/2 lb in at the bolts; L = 7.64: 89.1 psi and 433.6
    // lb in, 0.235 both.
    CHECK_CLOSE(step_value(bearing, "b_e"), 2.938, 0.0, 0.001);
    CHECK_CLOSE(step_value(bearing, "l_e"), 7.64, 0.0, 0.05);
    CHECK_CLOSE(bearing.capacity, 378.55, 1e-9, 0.0);
    CHECK_CLOSE(bearing.ratio, 0.235, 0.01, 0.0);
    CHECK(test::about(bearing) == "lower plate A B at block B1");
    CHECK(test::link_words(bearing) == "anchor A > block B1: lower plate");
    const auto bending = run("lower-plate-bending", resolved);
    CHECK_CLOSE(bending.capacity, 1847.0, 1e-3, 0.0);
    CHECK_CLOSE(bending.ratio, 0.235, 0.01, 0.0);
    CHECK(bending.status == Status::holds);
}

TEST_CASE("A lower plate off the line of its bolts presses as wide as it lies evenly about them", "[closed-form]") {
    // 3 in wide, moved by 0.2 in: 1.3 in to one side of the bolts, so 2.6 in count, less the holes' 0.497/8 = 0.062.
    for (const double center_in : {-2.3, -2.7}) {
        model::LowerPlate plate = flat(8.0, 0.375);
        plate.center.y_in = center_in;
        CHECK_CLOSE(step_value(run("lower-plate-bearing", with_lower(plate)), "b_e"), 2.538, 0.0, 0.001);
    }
}

// Z = (3 - 0.5625) 0.375^2/4 = 0.085693 in3: 35,000 Z/1.65 = 1817.7, 38,000 Z/1.95 = 1669.9 lb in (values and safety
// factors of aluminum from memory).
TEST_CASE("A lower plate of aluminum yields or breaks on its net plastic modulus", "[memory][closed-form]") {
    auto resolved = with_lower(flat(8.0, 0.375));
    for (auto& anchor : resolved.anchors) {
        if (anchor.lower) anchor.backing_metal = test::example_aluminum();
    }
    const auto bending = run("lower-plate-bending", resolved);
    CHECK_CLOSE(bending.capacity, 1669.9, 1e-4, 0.0);
    CHECK_CLOSE(step_value(bending, "Z"), 0.085693, 1e-4, 0.0);
    // Soft metal yields before it breaks: 20,000 Z/1.65.
    for (auto& anchor : resolved.anchors) {
        if (anchor.lower) anchor.backing_metal->yield_psi = 20000.0;
    }
    CHECK_CLOSE(run("lower-plate-bending", resolved).capacity, 1038.7, 1e-4, 0.0);
}

// A 3 in face less a 9/16 in hole, two 2 in legs, 1/4 in: 0.6094 in2 at 0.125 in and 0.875 in2 at 1.125 in from its
// outside: axis 0.7145, I = 0.6094 (0.0052 + 0.3475) + 0.875 (0.2552 + 0.1685) = 0.5857 in4, to the legs' tips 1.2855:
// S = 0.4556 in3, 36,000 S/1.67 = 9821 lb in.
TEST_CASE("A channel below the wood has two legs", "[closed-form]") {
    model::LowerPlate channel = flat(8.0, 0.25);
    channel.shape = model::LowerShape::channel;
    channel.leg_in = 2.0;
    CHECK_CLOSE(run("lower-plate-bending", with_lower(channel)).capacity, 9821.0, 1e-3, 0.0);
}

TEST_CASE("A thin common plate bends where a thick one does not", "[property]") {
    CHECK(run("lower-plate-bending", with_lower(flat(8.0, 0.0625))).ratio >
          run("lower-plate-bending", with_lower(flat(8.0, 0.25))).ratio);
    // Longer metal is never worse: the wood need not press on all of it.
    CHECK(run("lower-plate-bending", with_lower(flat(12.0, 0.25))).ratio <=
          run("lower-plate-bending", with_lower(flat(8.0, 0.25))).ratio + 0.01);
}

TEST_CASE("Angles of aluminum and slender legs are not covered below the wood", "[unit]") {
    model::LowerPlate angle = flat(8.0, 0.125);
    angle.shape = model::LowerShape::angle;
    angle.leg_in = 3.5;  // 28 > 0.91 sqrt(29e6/36000) = 25.8
    CHECK(run("lower-plate-bending", with_lower(angle)).status == Status::missing_evidence);
    angle.leg_in = 2.0;
    CHECK(run("lower-plate-bending", with_lower(angle)).status == Status::holds);
}

TEST_CASE("Nuts on a common plate are not on wood or washers", "[unit]") {
    const auto resolved = with_lower(flat(8.0, 0.25));
    const auto demand = test::example_demand(resolved, {1000.0, 0.0, 50.0}, {});
    CHECK(test::run_check("washer-bearing", resolved, demand).empty());
    CHECK(test::run_check("head-pull-through", resolved, demand).size() == 2);  // C and D
}

TEST_CASE("A lower plate covers its nuts, lies flat and clears deeper members", "[unit]") {
    CHECK(test::run_finding("lower-plate-fit", with_lower(flat(8.0, 0.25))).empty());
    // 4.5 in long: 0.25 in beyond the bolts, and half a nut across its corners is 0.433.
    const auto small = test::run_finding("lower-plate-fit", with_lower(flat(4.5, 0.25)));
    REQUIRE(small.size() == 2);
    CHECK(small[0].severity == checks::Severity::fails);
    // 16 in long: under joists J1 and J2, which are 9.25 in deep beside the block's 5.5.
    const auto large = test::run_finding("lower-plate-fit", with_lower(flat(16.0, 0.25)));
    REQUIRE(large.size() == 2);
    CHECK(test::says(large[0].message, "runs into joist J1"));
    auto uneven = with_lower(flat(8.0, 0.25));
    uneven.anchors[1].seat->member = 2;  // a joist
    CHECK_FALSE(test::run_finding("lower-plate-fit", uneven).empty());
}
