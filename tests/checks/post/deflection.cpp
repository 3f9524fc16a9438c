// Deflection at the top of the guard, part by part, by hand: 200 lb at 42 in.
#include "checks/member/framing_example.h"
#include "checks/run_check.h"
#include "checks/steel_examples.h"
#include "support/compare.h"

#include <cmath>
#include <numbers>

using namespace toehold;
using checks::Status;
using test::run_check;
using test::step_value;

namespace {

constexpr const char* id = "guard-deflection";

/// The example of a specification that invokes the limit.
catalog::Resolved limited(catalog::Resolved resolved) {
    resolved.detail.basis.movement_limit = model::MovementLimit::astm_e985;
    return resolved;
}

/// One state, pushed outward, with this rotation of the base and this give of described framing.
demand::Demand moving(const catalog::Resolved& resolved, double rotation_rad, double framing_in) {
    demand::Demand demand = test::with_actions(resolved, 0, {test::actions(1.0, 0, 0, 0, 0)});
    demand.states[0].rotation_rad = rotation_rad;
    demand.framing->states[0].top_in = framing_in;
    return demand;
}

checks::CheckResult only(const catalog::Resolved& resolved, const demand::Demand& demand) {
    const auto results = run_check(id, resolved, demand);
    REQUIRE(results.size() == 1);
    return results[0];
}

}  // namespace

TEST_CASE("post, base and framing add up to the movement of the top, against h/12", "[closed-form]") {
    // HSS2x2x1/8 has I 0.486 in4 in the published table (from memory; its wall of 0.116 in is 0.2 % less than 0.93/8):
    // 200 x 42^3/(3 x 29e6 x 0.486) = 0.3504 in; 0.01 rad x 42 = 0.42 in; framing 0.5 in; together 1.270 in.
    // ASTM E985: 42/12 = 3.5 in (as quoted in a code forum).
    const auto resolved = test::example_resolved();
    const auto result = only(resolved, moving(resolved, 0.01, 0.5));
    CHECK_CLOSE(step_value(result, "u_p"), 0.3504, 0.005, 0.0);
    CHECK_CLOSE(step_value(result, "u_b"), 0.42, 1e-12, 0.0);
    CHECK_CLOSE(step_value(result, "u_f"), 0.5, 1e-12, 0.0);
    CHECK_CLOSE(result.demand, 1.270, 0.0, 0.002);
    CHECK_CLOSE(result.capacity, 3.5, 1e-12, 0.0);
    CHECK(result.unit == "in");
    CHECK(result.status == Status::holds);
    CHECK(result.clause.find("ASTM E985") != std::string::npos);
    CHECK(format::english(result.note).find("IBC and IRC set no limit") != std::string::npos);
    CHECK_FALSE(result.link);
}

TEST_CASE("a top that moves more than h/12 fails where a specification invokes the limit", "[unit]") {
    const auto resolved = limited(test::example_resolved());
    CHECK(only(resolved, moving(resolved, 0.01, 2.8)).status == Status::fails);
    CHECK(only(resolved, moving(resolved, 0.08, 0.0)).status == Status::fails);
    CHECK(test::run_finding("guard-movement", resolved, moving(resolved, 0.08, 0.0)).empty());
}

// 0.5.0 failed this, though neither code limits the movement.
TEST_CASE("a top that moves more than h/12 is a caution where nothing invokes a limit", "[unit][B13]") {
    const auto resolved = test::example_resolved();
    const demand::Demand far = moving(resolved, 0.08, 0.0);
    CHECK(run_check(id, resolved, far).empty());
    const auto findings = test::run_finding("guard-movement", resolved, far);
    REQUIRE(findings.size() == 1);
    CHECK(findings[0].severity == checks::Severity::caution);
    CHECK(test::about(findings[0]) == "guard");
    // 0.3504 of the post and 0.08 x 42 = 3.36 of the base, against 42/12 = 3.5.
    CHECK(test::says(findings[0].message, "3.7"));
    CHECK(test::says(findings[0].message, "3.5 in"));
    CHECK(test::run_finding("guard-movement", resolved, moving(resolved, 0.01, 0.5)).empty());
    CHECK(test::run_finding("guard-movement", resolved).empty());
}

TEST_CASE("a wood post bends with its adjusted modulus", "[closed-form]") {
    // 3.5 x 3.5: I = 12.505 in4; E' = 1.4e6 x C_M 0.9 x C_i 0.95 = 1.197e6: 200 x 42^3/(3 x 1.197e6 x 12.505) = 0.3300
    const auto resolved = test::wood_post_example();
    const auto result = only(resolved, moving(resolved, 0.0, 0.0));
    CHECK_CLOSE(step_value(result, "u_p"), 0.3300, 0.0, 1e-4);
    CHECK(format::english(result.note).find("shoe") != std::string::npos);
    auto unknown = limited(resolved);
    unknown.post_grade.reset();
    CHECK(only(unknown, moving(unknown, 0.0, 0.0)).status == Status::missing_evidence);
}

TEST_CASE("an oblong post bends by the parts of the push along its two axes", "[closed-form]") {
    auto resolved = test::wood_post_example();
    std::get<model::WoodPost>(resolved.detail.post).depth_in = 7.0;  // I_x = 100.04, I_y = 25.01: 4 to 1
    demand::Demand demand = moving(resolved, 0.0, 0.0);
    const auto along = [&](double direction_rad) {
        demand.states[0].direction_rad = direction_rad;
        return step_value(only(resolved, demand), "u_p");
    };
    const double outward = along(std::numbers::pi / 2.0);
    CHECK_CLOSE(along(0.0), 4.0 * outward, 1e-12, 0.0);
    CHECK_CLOSE(along(std::numbers::pi / 4.0), 2.5 * outward, 1e-12, 0.0);
}

TEST_CASE("a push below the guard's top leaves the post straight above it", "[closed-form]") {
    // P a^2 (3 h - a)/(6 E I) at a = h/2 is 5/16 of P h^3/(3 E I)
    const auto resolved = test::example_resolved();
    demand::Demand demand = moving(resolved, 0.0, 0.0);
    const double at_top = step_value(only(resolved, demand), "u_p");
    demand.cases[0].height_in = 21.0;
    CHECK_CLOSE(step_value(only(resolved, demand), "u_p"), 5.0 / 16.0 * at_top, 1e-12, 0.0);
}

TEST_CASE("the load factor is taken out again", "[property]") {
    const auto resolved = test::example_resolved();
    demand::Demand demand = moving(resolved, 0.01, 0.5);
    const double plain = only(resolved, demand).demand;
    demand.cases[0].push_lb *= 1.6;
    demand.cases[0].load_factor = 1.6;
    demand.states[0].rotation_rad *= 1.6;
    demand.framing->states[0].top_in *= 1.6;
    CHECK_CLOSE(only(resolved, demand).demand, plain, 1e-12, 0.0);
}

TEST_CASE("the softest state governs; one whose framing gives, or with a vertical force, does not count", "[unit]") {
    const auto resolved = test::example_resolved();
    demand::Demand demand = test::with_actions(resolved, 0,
                                               {test::actions(1, 0, 0, 0, 0), test::actions(1, 0, 0, 0, 0),
                                                test::actions(1, 0, 0, 0, 0), test::actions(1, 0, 0, 0, 0)});
    demand.scenarios.push_back({0.5, 0.5, false});
    demand.scenarios.push_back({1.0, 1.0, true});
    demand.cases.push_back(demand.cases[0]);
    demand.cases[1].down_lb = 200.0;
    demand.states[0].rotation_rad = 0.01;
    demand.states[1].rotation_rad = 0.02;
    demand.states[1].scenario = 1;
    demand.states[2].rotation_rad = 0.05;
    demand.states[2].scenario = 2;
    demand.states[3].rotation_rad = 0.05;
    demand.states[3].load_case = 1;
    CHECK(step_value(only(resolved, demand), "phi") == 0.02);
    demand.states.erase(demand.states.begin(), demand.states.begin() + 2);
    demand.framing->states.resize(2);
    CHECK(run_check(id, resolved, demand).empty());
}

TEST_CASE("without the joists the movement is not whole, and cannot be said to hold", "[bad-input]") {
    const auto resolved = limited(test::example_resolved());
    demand::Demand demand = moving(resolved, 0.01, 0.0);
    demand.framing->joists_described = false;
    CHECK(run_check(id, test::example_resolved(), demand).empty());
    CHECK(only(resolved, demand).status == Status::missing_evidence);
    demand.states[0].rotation_rad = 0.1;  // too much without them already
    CHECK(only(resolved, demand).status == Status::fails);
    demand.states[0].rotation_rad = 0.01;
    demand.framing.reset();
    CHECK(only(resolved, demand).status == Status::missing_evidence);
    demand.framing.emplace().unstable = format::phrase("a joist can roll");
    CHECK(format::english(only(resolved, demand).note).find("not stable") != std::string::npos);
}

// A solid stub 1 9/16 in square, 6 in high, in a 2 x 2 x 3/16 tube: the cantilever of the tube, and below 6 in the
// difference of both: P (1/(E I_s) - 1/(E I)) (h^2 z - h z^2 + z^3/3) at z = 6, h = 42. The tube stands on a 3/16 in
// weld on the 3/8 in plate: L = 5.4375; play 1.625 - 1.5625 = 0.0625: 0.0625/5.4375 x 42 = 0.4828 in.
TEST_CASE("a post over a stub bends with both and has the play between them", "[closed-form]") {
    auto resolved = test::post_over_stub_example();
    const auto result = only(resolved, moving(resolved, 0.0, 0.0));
    const double stiff = 29e6 * step_value(result, "I_x");
    const double stub = 29e6 * 1.5625 * 1.5625 * 1.5625 * 1.5625 / 12.0;
    CHECK_CLOSE(29e6 * step_value(result, "I_sx"), stub, 1e-9, 0.0);
    const double whole = 200.0 * 42.0 * 42.0 * 42.0 / (3.0 * stiff);
    const double below = 42.0 * 42.0 * 6.0 - 42.0 * 36.0 + 72.0;
    CHECK_CLOSE(step_value(result, "u_p"), whole + 200.0 * below * (1.0 / stub - 1.0 / stiff), 1e-9, 0.0);
    CHECK_CLOSE(step_value(result, "u_c"), 0.48276, 1e-4, 0.0);
    // Square, so the same along x.
    demand::Demand along_x = moving(resolved, 0.0, 0.0);
    along_x.states[0].direction_rad = 0.0;
    CHECK_CLOSE(step_value(only(resolved, along_x), "u_p"), step_value(result, "u_p"), 1e-9, 0.0);
    // Twin bars: the stiffness of both.
    resolved.stub_metal.reset();
    resolved.detail.post = model::TwinBars{0.5, 2.5, 1.0, model::PlanAxis::x, "steel"};
    CHECK_CLOSE(step_value(only(resolved, moving(resolved, 0.0, 0.0)), "I_x"), 2.0 * 0.5 * 15.625 / 12.0, 1e-9, 0.0);
    CHECK_CLOSE(step_value(only(resolved, moving(resolved, 0.0, 0.0)), "I_y"), 2.0 * 2.5 * 0.125 / 12.0, 1e-9, 0.0);
}

// The shoe, 6 in high on a 3/8 in plate, holds its post over L = 5.625 in; the play is inside less outside.
TEST_CASE("a post turns in its closed shoe by the larger play of both ways", "[closed-form]") {
    auto resolved = test::wood_post_example();
    auto& shoe = std::get<model::WoodPost>(resolved.detail.post).shoe;
    shoe.form = model::ShoeForm::closed;
    shoe.width_in = 4.1;  // 4.1 - 2/4 - 3.5 = 0.1: 0.1/5.625 x 42 = 0.74667 in
    CHECK_CLOSE(step_value(only(resolved, moving(resolved, 0.0, 0.0)), "u_c"), 0.74667, 1e-4, 0.0);
    shoe.depth_in = 4.2;
    CHECK_CLOSE(step_value(only(resolved, moving(resolved, 0.0, 0.0)), "u_c"), 2.0 * 0.74667, 1e-4, 0.0);
}

// In the 2 x 2 x 3/16 in tube, 1.625 in inside, over L = 5.4375 in.
TEST_CASE("a post turns on its stub by the larger play of both ways", "[closed-form]") {
    auto resolved = test::post_over_stub_example();
    auto& stub = *std::get<model::RectangularTube>(resolved.detail.post).stub;
    stub.depth_in = 1.5;  // 0.125/5.4375 x 42 = 0.96552 in
    CHECK_CLOSE(step_value(only(resolved, moving(resolved, 0.0, 0.0)), "u_c"), 0.96552, 1e-4, 0.0);
    stub.depth_in = 1.5625;
    stub.width_in = 1.5;
    CHECK_CLOSE(step_value(only(resolved, moving(resolved, 0.0, 0.0)), "u_c"), 0.96552, 1e-4, 0.0);
}
