// Bending of blocks, joists and rims.
#include "checks/member/framing_example.h"
#include "checks/run_check.h"
#include "support/compare.h"

#include <cmath>

using namespace toehold;
using checks::Status;
using test::actions;
using test::run_check;
using test::step_value;
using test::with_actions;

TEST_CASE("the block's bending is worked by hand", "[closed-form]") {
    const catalog::Resolved resolved = test::example_resolved();
    const auto results = run_check("member-bending", resolved, test::example_demand(resolved, {1000.0, 0.0, 50.0}, {}));
    REQUIRE(results.size() == 2);
    // B1, 3.5 x 5.5, 14.5 in between ends that turn freely, two anchors 5.25 in from them:
    //   M_v = 1000 x 5.25 = 5250, S_v = 17.6458, f = 297.52;  M_h = 50 x 5.25 = 262.5, S_h = 11.2292, f = 23.377
    //   F_b1' = 1000 x 0.8 x C_L 0.9989 = 799.1 (wet, 1000 <= 1150: C_M 1.0); F_b2' = 800 x C_fu 1.05 = 840
    //   297.52/799.1 + 23.377/840 = 0.3723 + 0.0278 = 0.4002
    CHECK_CLOSE(step_value(results[0], "M_v"), 5250.0, 1e-6, 0.0);
    CHECK_CLOSE(step_value(results[0], "f_bv"), 297.52, 0.0, 0.01);
    CHECK_CLOSE(step_value(results[0], "f_bh"), 23.377, 0.0, 0.001);
    CHECK_CLOSE(results[0].ratio, 0.4002, 0.0, 2e-4);
    CHECK(results[0].status == Status::holds);
    CHECK(test::about(results[0]) == "block B1");
    CHECK(test::link_words(results[0]) == "block B1 > ends of block B1: bending");
}

TEST_CASE("a plank laid flat is bent about its weak axis", "[closed-form]") {
    catalog::Resolved resolved = test::example_resolved();
    resolved.detail.framing.blocks[0].width_in = 5.5;
    resolved.detail.framing.blocks[0].depth_in = 1.5;
    const auto results =
        run_check("member-bending", resolved, with_actions(resolved, 0, {actions(5250.0, 0, 0, 0, 0)}));
    // S = 5.5 x 1.5^2/6 = 2.0625, f = 5250/2.0625 = 2545.5; F_b2' = 800 x C_fu 1.15 = 920; ratio 2.767
    CHECK_CLOSE(results.at(0).ratio, 2.767, 0.0, 1e-3);
    CHECK(results.at(0).status == Status::fails);
}

TEST_CASE("the ratio is linear in the anchors' pull when nothing bends it sideways", "[property]") {
    const catalog::Resolved resolved = test::example_resolved();
    const auto ratio = [&](double pull_lb) {
        return run_check("member-bending", resolved, test::example_demand(resolved, {pull_lb, 0.0, 0.0}, {}))
            .at(0)
            .ratio;
    };
    CHECK_CLOSE(ratio(1200.0), 3.0 * ratio(400.0), 1e-9, 0.0);
}

TEST_CASE("under the deck's load the boards hold a joist's top, but over an overhang", "[closed-form]") {
    catalog::Resolved resolved = test::framed_example();
    demand::Demand demand = with_actions(resolved, 2, {actions(100.0, 0, 0, 0, 0)});
    demand.framing->states[0].with_deck = demand.framing->states[0].members;
    demand.framing->states[0].with_deck[2].vertical_moment_lb_in = 8000.0;
    // S = 1.5 x 9.25^2/6 = 21.391 in3: 373.99 psi. 12 in beyond the beam: l_e = 2.06 x 12 = 24.72, R_B^2 = 24.72 x
    // 9.25/2.25 = 101.63, F_bE = 1.2 x 436,050/101.63 = 5148.8; F = 6.436; C_L = 3.9137 - sqrt(15.317 - 6.7747) =
    // 0.9910; F_b1' = 800 x 0.9910 = 792.8; 373.99/792.8 = 0.4717
    const auto held = run_check("member-bending", resolved, demand);
    CHECK_CLOSE(held.at(0).ratio, 0.4717, 0.0, 3e-4);
    CHECK(test::says(held[0].note, "boards holding"));
    // Without boards free from ledger to beam, F_b1' = 521.1: 0.7177
    on_deck(resolved.detail).layers.decking.reset();
    CHECK_CLOSE(run_check("member-bending", resolved, demand).at(0).ratio, 0.7177, 0.0, 5e-4);
}

TEST_CASE("a joist counts as free from support to support, whatever lies on it", "[closed-form]") {
    const catalog::Resolved resolved = test::framed_example();
    const auto results =
        run_check("member-bending", resolved, with_actions(resolved, 2, {actions(2000.0, 0, 0, 0, 0)}));
    // 1.5 x 9.25, 120 in from ledger to beam: l_u/d = 12.97: l_e = 1.63 x 120 + 3 x 9.25 = 223.35 (NDS Table 3.3.3);
    // R_B^2 = 223.35 x 9.25/2.25 = 918.2; E_min' = 510e3 x C_M 0.9 x C_i 0.95 = 436,050; F_bE = 1.2 x 436,050/918.2
    // = 569.9; F_b* = 1000 x 0.8 = 800 (wet: F_b C_F <= 1150, C_M 1.0); F = 0.7123; (1 + F)/1.9 = 0.90123;
    // C_L = 0.90123 - sqrt(0.81222 - 0.74983) = 0.6514; F_b1' = 521.1
    // f = 2000 x 6/(1.5 x 85.5625) = 93.50; 93.50/521.1 = 0.1794
    REQUIRE(results.size() == 1);
    CHECK(test::about(results[0]) == "joist J1");
    CHECK_CLOSE(step_value(results[0], "l_u"), 120.0, 1e-12, 0.0);
    CHECK_CLOSE(step_value(results[0], "F_bE"), 569.9, 0.0, 0.2);
    CHECK_CLOSE(results[0].ratio, 0.1794, 0.0, 2e-4);
    CHECK(test::link_words(results[0]) == "joist J1 > supports of joist J1: bending");
}

TEST_CASE("an overhang longer than every span is what a joist counts", "[unit]") {
    catalog::Resolved resolved = test::framed_example();
    resolved.detail.framing.supports[1].at_in = -90.0;  // 30 in of span, 102 in of overhang
    const auto results =
        run_check("member-bending", resolved, with_actions(resolved, 2, {actions(2000.0, 0, 0, 0, 0)}));
    CHECK_CLOSE(step_value(results.at(0), "l_u"), 102.0, 1e-12, 0.0);
    resolved.detail.framing.supports.pop_back();
    CHECK_CLOSE(
        step_value(
            run_check("member-bending", resolved, with_actions(resolved, 2, {actions(2000.0, 0, 0, 0, 0)})).at(0),
            "l_u"),
        132.0, 1e-12, 0.0);
}

TEST_CASE("a rim counts as free from joist to joist and beyond the last", "[unit]") {
    const catalog::Resolved resolved = test::framed_example();  // joists at -8 and 8, rim from -20 to 20
    const auto results =
        run_check("member-bending", resolved, with_actions(resolved, 4, {actions(2000.0, 0, 0, 0, 0)}));
    CHECK(test::about(results.at(0)) == "rim R1");
    CHECK_CLOSE(step_value(results.at(0), "l_u"), 16.0, 1e-12, 0.0);
}

TEST_CASE("a doubled joist bends sideways as two pieces, upright as one of both widths", "[closed-form]") {
    catalog::Resolved resolved = test::framed_example();
    resolved.detail.framing.joists->members[0].plies = 2;
    const auto results =
        run_check("member-bending", resolved, with_actions(resolved, 2, {actions(2000.0, 300.0, 0, 0, 0)}));
    // half of 2000 over 21.39 in3: 46.75 psi; half of 300 over 9.25 x 2.25/6 = 3.469 in3: 43.24 psi
    CHECK_CLOSE(step_value(results.at(0), "f_bv"), 46.75, 0.0, 0.01);
    CHECK_CLOSE(step_value(results.at(0), "f_bh"), 43.24, 0.0, 0.01);
    CHECK_FALSE(results.at(0).note.empty());
}

TEST_CASE("a joist of unknown length that carries load lacks evidence", "[bad-input]") {
    const catalog::Resolved resolved = test::example_resolved();
    const auto results = run_check("member-bending", resolved, with_actions(resolved, 2, {actions(10.0, 0, 0, 0, 0)}));
    CHECK(results.at(0).status == Status::missing_evidence);
}

TEST_CASE("a blade of a block fails outright", "[unit]") {
    catalog::Resolved resolved = test::example_resolved();
    resolved.detail.framing.blocks[0].width_in = 0.25;
    resolved.detail.framing.blocks[0].depth_in = 11.25;
    const auto results = run_check("member-bending", resolved, with_actions(resolved, 0, {actions(50.0, 0, 0, 0, 0)}));
    CHECK(results.at(0).status == Status::fails);
    CHECK(std::isinf(results.at(0).ratio));
    CHECK(test::says(results.at(0).note, "R_B exceeds 50"));
    // 1/2 x 11 1/4 in: le = 2.06 x 14.5 = 29.87, RB = sqrt(29.87 x 11.25/0.25) = 36.7, F_bE = 1.2 x 436,050/1344.2 =
    // 389 psi; on 10.55 in3 4500 lb in are 427 psi.
    resolved.detail.framing.blocks[0].width_in = 0.5;
    const auto buckled =
        run_check("member-bending", resolved, with_actions(resolved, 0, {actions(4500.0, 0, 0, 0, 0)}));
    CHECK(std::isinf(buckled.at(0).ratio));
    CHECK(test::says(buckled.at(0).note, "Buckles sideways"));
}

TEST_CASE("no demand, no framing or no load on a member: no result", "[unit]") {
    const catalog::Resolved resolved = test::example_resolved();
    CHECK(run_check("member-bending", resolved, demand::Demand{}).empty());
    demand::Demand unstable = test::example_demand(resolved, {1000.0, 0.0, 0.0}, {});
    unstable.framing.emplace().unstable = format::phrase("a joist can roll");
    CHECK(run_check("member-bending", resolved, unstable).empty());
    CHECK(run_check("member-bending", resolved, with_actions(resolved, 0, {actions(0, 0, 0, 0, 1e-9)})).empty());
}

TEST_CASE("an engineered member shows its reference value for each face", "[unit]") {
    catalog::Resolved resolved = test::example_resolved();
    catalog::LumberGrade& grade = resolved.blocks[0].grade;
    grade.use = catalog::WoodUse::engineered;
    grade.engineered =
        catalog::EngineeredFactors{2250.0, model::OwnWood::Volume::none, 0.0, model::OwnWood::WetService::dry_only};
    resolved.detail.basis.moisture = model::Moisture::dry;
    const auto demand = test::with_actions(resolved, 0, {test::actions(1200.0, 0.0, 300.0, 0.0, 0.0)});
    std::vector<double> shown;
    const checks::CheckResult bending = test::run_check("member-bending", resolved, demand).at(0);
    for (const checks::Step& step : bending.steps) {
        if (step.symbol == "F_b") shown.push_back(step.value);
    }
    CHECK(shown == std::vector<double>{1000.0, 2250.0});  // narrow face, wide face
}
