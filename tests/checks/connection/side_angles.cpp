// Steel angles on both sides of a block: three No. 10 wood screws (0.190 x 1.5 in) a leg, 1.5 in apart, 1.25 in from
// the corner, 1/8 in of steel with Fu 58,000 psi; G 0.55, wet, C_D 1.0.
#include "checks/connection/end_example.h"

#include "support/compare.h"

#include <cmath>

using namespace toehold;
using checks::CheckResult;
using checks::Status;
using test::block_support;
using test::step_value;

namespace {

using Kind = model::SideAngles::Kind;

model::SideAngles screws() { return {2, 0.125, "steel-a36", Kind::wood_screw, 0.190, 1.5, 3, 1.5, 1.25}; }

catalog::Resolved resolved_with(const model::SideAngles& angles) {
    catalog::Resolved resolved = test::example_resolved();
    resolved.angle_metals[angles.metal] = on_deck(resolved).plate_metal;
    return resolved;
}

CheckResult angles(const model::SideAngles& given, const demand::SupportReaction& forces) {
    return test::end_result(resolved_with(given), block_support(given), forces);
}

// p = 1.375, lm = 1.375 - 0.19 = 1.185, Dr = 0.78 x 0.19 = 0.1482, Fyb 80,000, Fem 5550, Fes 1.375 x 58,000 = 79,750,
// K_D 2.2. Mode IIIs governs, by an independent script of the same equations: 150.42 lb. Z' = Z 0.7.
constexpr double lateral_lb = 150.42 * 0.7;
// Thread 2/3 of 1.5 = 1.0 in less a tip of 0.38: 0.62 in. 2850 x 0.55^2 x 0.19 x 0.62 x 0.7 = 71.09
constexpr double withdrawal_lb = 71.09;

}  // namespace

TEST_CASE("each angle takes half the force and, in each leg, its eccentricity", "[closed-form]") {
    // V = 600/2 + 105/3.5 = 330 an angle: 110 a screw. 330 x 1.25 = 412.5 lb in on sum r^2 = 2 x 1.5^2 = 4.5:
    // 412.5 x 1.5/4.5 = 137.5 on the outermost. sqrt(110^2 + 137.5^2) = 176.08
    const CheckResult result = angles(screws(), {600.0, 0.0, 0.0, 105.0, 0.0});
    CHECK_CLOSE(step_value(result, "P_m"), 176.08, 0.0, 0.01);
    CHECK_CLOSE(step_value(result, "P_h"), 176.08, 0.0, 0.01);
    CHECK_CLOSE(step_value(result, "Z_m'"), lateral_lb, 1e-3, 0.0);
    CHECK_CLOSE(step_value(result, "Z_h'"), lateral_lb, 1e-3, 0.0);
    CHECK_CLOSE(result.ratio, 176.08 / lateral_lb, 2e-3, 0.0);
    CHECK(test::says(result.note, "not computed"));
}

TEST_CASE("a force across the block loads one angle's screws in the joist", "[closed-form]") {
    // 137.5 + 30/3 = 147.5: sqrt(110^2 + 147.5^2) = 184.00
    const CheckResult result = angles(screws(), {600.0, 30.0, 0.0, 105.0, 0.0});
    CHECK_CLOSE(step_value(result, "P_h"), 184.0, 0.0, 0.01);
    CHECK_CLOSE(step_value(result, "P_m"), 176.08, 0.0, 0.01);
}

TEST_CASE("drawn away, the joist's screws are pulled with twice the force", "[closed-form]") {
    // 60/(2 x 3) = 10 a screw, sheared in the block and 20 pulled in the joist.
    const CheckResult drawn = angles(screws(), {0.0, 0.0, 60.0, 0.0, 0.0});
    CHECK_CLOSE(step_value(drawn, "P_m"), 10.0, 1e-12, 0.0);
    CHECK_CLOSE(step_value(drawn, "N_h"), 20.0, 1e-12, 0.0);
    CHECK_CLOSE(step_value(drawn, "N_h'"), withdrawal_lb, 1e-3, 0.0);
    CHECK_CLOSE(drawn.ratio, 10.0 / lateral_lb + 20.0 / withdrawal_lb, 2e-3, 0.0);
}

TEST_CASE("a moment in the upright plane pulls the outermost screws over half the depth", "[closed-form]") {
    // 82.5/2 = 41.25 an angle, over 2.75 in: 15, doubled. On the block's line 41.25 x 1.5/4.5 = 13.75
    const CheckResult turned = angles(screws(), {0.0, 0.0, 0.0, 0.0, 82.5});
    CHECK_CLOSE(step_value(turned, "N_h"), 30.0, 1e-12, 0.0);
    CHECK_CLOSE(step_value(turned, "P_m"), 13.75, 1e-12, 0.0);
}

TEST_CASE("one angle resists no torque and is drawn off the block's side", "[unit]") {
    model::SideAngles one = screws();
    one.sides = 1;
    CHECK(angles(one, {50.0, 0.0, 0.0, 20.0, 0.0}).status == Status::no_path);
    const CheckResult across = angles(one, {0.0, 30.0, 0.0, 0.0, 0.0});
    CHECK_CLOSE(step_value(across, "N_m"), 20.0, 1e-12, 0.0);
    CHECK_CLOSE(across.ratio, 10.0 / lateral_lb + 20.0 / withdrawal_lb, 2e-3, 0.0);
}

TEST_CASE("one fastener a leg cannot take its own eccentricity", "[unit]") {
    model::SideAngles single = screws();
    single.per_leg = 1;
    const CheckResult result = angles(single, {50.0, 0.0, 0.0, 0.0, 0.0});
    CHECK(result.status == Status::no_path);
    CHECK(test::says(result.note, "two or more"));
}

TEST_CASE("lag screws of 1/4 in keep their spacing and distances", "[published][B11]") {
    // Tables 12.5.1A to C: spacing 3 D = 0.75, full 4 D; end 3.5 D = 0.875, full 7 D = 1.75; edge 4 D
    // = 1.
    model::SideAngles lags{2, 0.25, "steel-a36", Kind::lag_screw, 0.25, 1.5, 2, 1.0, 1.75};
    const demand::SupportReaction lifted{100.0, 0.0, 0.0, 0.0, 0.0};
    const CheckResult full = angles(lags, lifted);
    CHECK_CLOSE(step_value(full, "C_Delta"), 1.0, 1e-12, 0.0);
    // 50 lb an angle: 25 upright a screw, 50 x 1.75/1 = 87.5 along the grain.
    CHECK_CLOSE(step_value(full, "P_m"), std::hypot(25.0, 87.5), 1e-12, 0.0);
    // Full for the upright part from 4 D = 1 in on; the part along the grain, 50 x 1.4 = 70, counts 7 D over the
    // distance, 1.75/1.4 = 1.25 times. 0.5.0 took 0.8 off both.
    lags.gauge_in = 1.4;
    const CheckResult nearer = angles(lags, lifted);
    CHECK_CLOSE(step_value(nearer, "C_Delta"), 1.0, 1e-12, 0.0);
    CHECK_CLOSE(step_value(nearer, "e_m"), 1.25, 1e-12, 0.0);
    CHECK_CLOSE(step_value(nearer, "P_m"), std::hypot(25.0, 1.25 * 70.0), 1e-12, 0.0);
    lags.gauge_in = 0.8;
    CHECK(angles(lags, lifted).status == Status::no_path);
    lags.gauge_in = 1.75;
    lags.spacing_in = 0.7;
    CHECK(angles(lags, lifted).status == Status::no_path);
    lags.spacing_in = 4.0;  // 0.75 in from the edge
    CHECK(angles(lags, lifted).status == Status::no_path);
}

TEST_CASE("lag screws need 4 D of penetration beyond their tip", "[published]") {
    // 4 x 0.25 + 0.167 = 1.167; 1.375 - 0.25 = 1.125
    const model::SideAngles shorter{2, 0.25, "steel-a36", Kind::lag_screw, 0.25, 1.375, 2, 1.0, 1.75};
    CHECK(angles(shorter, {100.0, 0.0, 0.0, 0.0, 0.0}).status == Status::no_path);
}

TEST_CASE("bolts whose threads stay out of the bearing count with their full diameter", "[published]") {
    // NDS 2018 12.3.7.2. Root 0.75 D: 0.28125 in; the values of the leg rise with the diameter, by 1.3 to 1.8.
    model::SideAngles bolts{2, 0.25, "steel-a36", Kind::bolt, 0.375, 0.0, 2, 1.5, 3.0};
    const double root_lb = step_value(angles(bolts, {100.0, 0.0, 0.0, 0.0, 0.0}), "Z_m");
    bolts.threads = model::Threads::excluded;
    const double full_lb = step_value(angles(bolts, {100.0, 0.0, 0.0, 0.0, 0.0}), "Z_m");
    CHECK(full_lb / root_lb > 1.3);
    CHECK(full_lb / root_lb < 1.8);
}

TEST_CASE("bolts of the angles are sheared but not pulled", "[unit]") {
    const model::SideAngles bolts{2, 0.25, "steel-a36", Kind::bolt, 0.375, 0.0, 2, 1.5, 3.0};
    CHECK(angles(bolts, {100.0, 0.0, 0.0, 0.0, 0.0}).status == Status::holds);
    const CheckResult drawn = angles(bolts, {0.0, 0.0, 60.0, 0.0, 0.0});
    CHECK(drawn.status == Status::no_path);
    CHECK(test::says(drawn.note, "washers"));
}

TEST_CASE("thin angles, angles to a beam and unknown metal lack evidence", "[bad-input]") {
    model::SideAngles given = screws();
    given.thickness_in = 0.1;
    CHECK(angles(given, {100.0, 0.0, 0.0, 0.0, 0.0}).status == Status::missing_evidence);
    given = screws();
    CHECK(test::end_result(test::example_resolved(), block_support(given), {100.0, 0.0, 0.0, 0.0, 0.0}).status ==
          Status::missing_evidence);
    catalog::Resolved resolved = resolved_with(given);
    const demand::MemberSupport on_beam = test::joist_support(resolved, model::JoistSupport::Kind::beam, given);
    CHECK(test::end_result(resolved, on_beam, {100.0, 0.0, 0.0, 0.0, 0.0}).status == Status::missing_evidence);
}
