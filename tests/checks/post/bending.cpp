// The post under the push: the example's 2 x 2 x 1/8 in tube, and a 4x4 in a shoe, by hand.
#include "checks/run_check.h"
#include "checks/steel_examples.h"
#include "support/compare.h"

#include <numbers>

using namespace toehold;
using checks::Status;
using test::run_check;
using test::step_value;

namespace {

std::vector<checks::CheckResult> bending(const catalog::Resolved& resolved, const std::vector<double>& directions_deg) {
    return run_check("post-bending", resolved, test::pushes(resolved, directions_deg));
}

}  // namespace

TEST_CASE("A compact steel tube has its plastic moment over 1.67", "[unit]") {
    // HSS2x2x1/8 has Z 0.584 in the published table (from memory; wall 0.116 there, 0.93 x 0.125 = 0.11625 here, 0.2 %
    // more): 46,000 x 0.584 / 1.67 = 16,086 lb in.
    const auto results = bending(test::example_resolved(), {90.0});
    REQUIRE(results.size() == 1);
    CHECK_CLOSE(results[0].capacity, 16086.0, 0.004, 0.0);
    CHECK_CLOSE(results[0].demand, 8400.0, 1e-12, 0.0);
    CHECK(results[0].status == Status::holds);
    REQUIRE(results[0].link);
    CHECK(results[0].link->from == model::PartId{model::PartKind::guard});
    CHECK(results[0].link->to == model::PartId{model::PartKind::post});
    CHECK(format::english(results[0].link->by) == "post bending");
    CHECK_CLOSE(results[0].capacity, 46000.0 * step_value(results[0], "Z_x") / 1.67, 1e-7, 0.0);
}

// 2 x 2 x 3/16, Fy 46 ksi: Z 0.79868 about its sides and 0.76785 about its diagonals (added up by another program, see
// tests/resistance/steel/plastic_section.cpp): 21,999 and 21,150 lb in. 0.5.0 had 15,574 on the diagonal.
TEST_CASE("A compact tube has its plastic moment on the diagonal too", "[closed-form][B9]") {
    auto resolved = test::example_resolved();
    std::get<model::RectangularTube>(resolved.detail.post).wall_in = 0.1875;
    const auto straight = bending(resolved, {90.0}).at(0);
    const auto diagonal = bending(resolved, {45.0}).at(0);
    CHECK_CLOSE(straight.capacity, 21999.0, 5e-4, 0.0);
    CHECK_CLOSE(diagonal.capacity, 21150.0, 5e-4, 0.0);
    CHECK_CLOSE(step_value(straight, "M_c45"), diagonal.capacity, 1e-9, 0.0);
    // The worst of all directions is the diagonal.
    CHECK(bending(resolved, {90.0, 60.0, 45.0, 0.0}).at(0).direction_deg == Approx(45.0));
    // By choice the shares of both axes add: root 2 less.
    resolved.detail.basis.tube_diagonal = model::TubeDiagonal::linear;
    CHECK_CLOSE(bending(resolved, {45.0}).at(0).capacity, straight.capacity / std::numbers::sqrt2, 1e-7, 0.0);
}

// 4 x 4 x 1/8, Fy 46 ksi: b/t = 4/0.11625 - 3 = 31.4 is over 28.1: not compact.
TEST_CASE("Walls that are not compact keep the linear sum", "[closed-form]") {
    auto resolved = test::example_resolved();
    resolved.detail.post = model::RectangularTube{4.0, 4.0, 0.125, "steel"};
    const auto straight = bending(resolved, {90.0}).at(0);
    CHECK_CLOSE(bending(resolved, {45.0}).at(0).capacity, straight.capacity / std::numbers::sqrt2, 1e-7, 0.0);
}

TEST_CASE("A round tube is as strong every way", "[closed-form]") {
    auto resolved = test::example_resolved();
    resolved.detail.post = model::RoundTube{2.0, 0.125, "steel"};
    // Design wall 0.11625: Z = (8 - 1.7675^3)/6 = 0.41305; 46,000 x 0.41305 / 1.67 = 11,377 lb in.
    CHECK_CLOSE(bending(resolved, {45.0}).at(0).capacity, 11377.0, 0.0, 2.0);
    CHECK_CLOSE(bending(resolved, {45.0}).at(0).ratio, bending(resolved, {0.0}).at(0).ratio, 1e-12, 0.0);
}

TEST_CASE("A vertical force takes a little of the post's moment", "[unit]") {
    const auto resolved = test::example_resolved();
    auto demand = test::pushes(resolved, {90.0});
    const double alone = run_check("post-bending", resolved, demand).at(0).capacity;
    demand.cases[0].down_lb = 500.0;
    const auto result = run_check("post-bending", resolved, demand).at(0);
    CHECK_CLOSE(result.capacity, alone * (1.0 - 500.0 / (2.0 * step_value(result, "P_c"))), 1e-12, 0.0);
    // K L/r = 2.1 x 42/0.761 = 115.9; Fe = 286.2e6/13,433 = 21.31 ksi; 0.658^(46/21.31) x 46 = 18.64 ksi; x 0.840/1.67
    // = 9.38 k.
    CHECK_CLOSE(step_value(result, "P_c"), 9380.0, 0.005, 0.0);
}

TEST_CASE("A large vertical force follows the steeper line of the interaction", "[closed-form]") {
    const auto resolved = test::example_resolved();
    auto demand = test::pushes(resolved, {90.0});
    const double alone = run_check("post-bending", resolved, demand).at(0).capacity;
    const auto with = [&](double down_lb) {
        demand.cases[0].down_lb = down_lb;
        return run_check("post-bending", resolved, demand).at(0);
    };
    const double axial_lb = step_value(with(1.0), "P_c");
    // Both lines meet at 0.9; at half the axial strength 8/9 M/Mc = 0.5 leaves 0.5625.
    CHECK_CLOSE(with(0.1999999 * axial_lb).capacity, 0.9 * alone, 1e-6, 0.0);
    CHECK_CLOSE(with(0.2000001 * axial_lb).capacity, 0.9 * alone, 1e-6, 0.0);
    CHECK_CLOSE(with(-0.5 * axial_lb).capacity, 0.5625 * alone, 1e-9, 0.0);
    CHECK(with(1.5 * axial_lb).status == Status::no_path);
}

TEST_CASE("An aluminum tube has its welded strength at the plate", "[unit][B10]") {
    auto resolved = test::example_resolved();
    test::make_aluminum(resolved);
    // Square corners, wall 1/8: Z = (8 - 1.75^3)/4 = 0.66016; 15,000 x 0.66016 / 1.65 = 6001.4 lb in, under 8400. 0.5.0
    // had S, 5016.
    const auto result = bending(resolved, {90.0}).at(0);
    CHECK_CLOSE(result.capacity, 6001.4, 0.0, 1.0);
    CHECK(result.status == Status::fails);
}

// 0.5.0 gave 15 ksi whatever the filler.
TEST_CASE("Filler 4043 leaves a thick aluminum tube softer", "[unit][A5]") {
    auto resolved = test::example_resolved();
    test::make_aluminum(resolved);
    resolved.detail.post = model::RectangularTube{2.0, 2.0, 0.5, "aluminum"};
    resolved.post_metal.softer_weld = catalog::SofterWeld{"er4043", 0.375, 11000.0};
    // Square corners, wall 1/2: S = (16 - 1)/12 = 1.25, Z = (8 - 1)/4 = 1.75 in3. The walls: 15,000 (1.25 - 1/12)/0.75
    // + 22,500 (1/12)/0.5 = 27,083 lb in is above 15,000 x 1.75 = 26,250: over 1.65 15,909; with 11,000 11,667.
    CHECK_CLOSE(bending(resolved, {90.0}).at(0).capacity, 15909.1, 0.0, 0.1);
    on_deck(resolved).filler->id = "er4043";
    CHECK_CLOSE(bending(resolved, {90.0}).at(0).capacity, 11666.7, 0.0, 0.1);
}

// 0.5.0 had no number for either. 3 x 3 x 1/8 of 6061-T6: Z 1.55078, 15,000 Z/1.65 = 14,098 lb in; its walls, b/t 22,
// buckle at 53,684 lb in of the tempered metal and 23,272 of the softened
// (tests/resistance/aluminum/local_buckling.cpp). 2 1/2 x 0.100, 13 ksi: Z 0.8645: 6,811.
TEST_CASE("Slender aluminum walls have a number", "[unit][B10]") {
    auto resolved = test::example_resolved();
    test::make_aluminum(resolved);
    resolved.detail.post = model::RectangularTube{3.0, 3.0, 0.125, "aluminum"};
    const auto everyday = bending(resolved, {90.0}).at(0);
    CHECK_CLOSE(everyday.capacity, 14098.0, 0.0, 1.0);
    CHECK(everyday.status == Status::holds);
    resolved.post_metal.welded_yield_psi = 13000.0;
    resolved.detail.post = model::RectangularTube{2.5, 2.5, 0.1, "aluminum"};
    CHECK_CLOSE(bending(resolved, {90.0}).at(0).capacity, 6811.2, 0.0, 1.0);
    // Thinner still, the walls govern: less than the plastic moment.
    resolved.detail.post = model::RectangularTube{4.0, 4.0, 0.06, "aluminum"};
    const auto thin = bending(resolved, {90.0}).at(0);
    CHECK(thin.capacity < 0.999 * 13000.0 * step_value(thin, "Z_x") / 1.65);
    CHECK(thin.capacity > 0.0);
}

// 0.5.0 had no number. 36,642 lb in by hand (tests/resistance/steel/tube.cpp), over 1.67.
TEST_CASE("A slender steel tube bends on its effective section", "[published]") {
    auto resolved = test::example_resolved();
    resolved.detail.post = model::RectangularTube{4.0, 4.0, 0.06, "steel"};
    const auto result = bending(resolved, {90.0}).at(0);
    CHECK_CLOSE(result.capacity, 36641.7 / 1.67, 1e-5, 0.0);
    CHECK_CLOSE(step_value(result, "b_e"), 2.31634, 1e-5, 0.0);
    // The widest wall counts: 4 - 3 x 0.93 x 0.06.
    resolved.detail.post = model::RectangularTube{3.0, 4.0, 0.06, "steel"};
    CHECK_CLOSE(step_value(bending(resolved, {90.0}).at(0), "b"), 3.8326, 1e-9, 0.0);
    resolved.detail.post = model::RectangularTube{4.0, 4.0, 0.06, "steel"};
    // On the diagonal the shares about both axes add.
    CHECK_CLOSE(bending(resolved, {45.0}).at(0).capacity, 36641.7 / 1.67 / std::numbers::sqrt2, 1e-5, 0.0);
}

TEST_CASE("A wall too slender for the rules gives no number", "[bad-input]") {
    auto resolved = test::example_resolved();
    resolved.detail.post = model::RectangularTube{4.0, 4.0, 0.025, "steel"};
    CHECK(bending(resolved, {90.0}).at(0).status == Status::missing_evidence);
    test::make_aluminum(resolved);
    resolved.detail.post = model::RectangularTube{2.0, 2.0, 0.125, "aluminum"};
    resolved.post_metal.welded_yield_psi.reset();
    CHECK(bending(resolved, {90.0}).at(0).status == Status::missing_evidence);
}

// 304, 30 ksi, 2 x 2 x 3/16: Z 0.79868: 14,347 lb in; S by choice. 0.5.0 had S always.
TEST_CASE("A compact stainless tube has its plastic moment, or by choice first yield", "[unit][B10]") {
    auto resolved = test::example_resolved();
    std::get<model::RectangularTube>(resolved.detail.post).wall_in = 0.1875;
    resolved.post_metal.kind = catalog::MetalKind::stainless_steel;
    resolved.post_metal.yield_psi = 30000.0;
    resolved.post_metal.modulus_psi = 28e6;
    const auto plastic = bending(resolved, {90.0}).at(0);
    CHECK_CLOSE(plastic.capacity, 14347.0, 5e-4, 0.0);
    // Between the axes the shares add.
    CHECK_CLOSE(bending(resolved, {45.0}).at(0).capacity, plastic.capacity / std::numbers::sqrt2, 1e-9, 0.0);
    resolved.detail.basis.stainless_bending = model::StainlessBending::first_yield;
    const auto elastic = bending(resolved, {90.0}).at(0);
    CHECK_CLOSE(elastic.capacity, 30000.0 * step_value(elastic, "S_x") / 1.67, 1e-9, 0.0);
    // b/t = 36: past 1.12 root(E/Fy) = 34.2 and within 1.24 = 37.9: first yield whatever the choice.
    resolved.detail.basis.stainless_bending.reset();
    resolved.detail.post = model::RectangularTube{2.0, 2.0, 2.0 / 39.0 / 0.93, "steel"};
    const auto thinner = bending(resolved, {90.0}).at(0);
    CHECK_CLOSE(thinner.capacity, 30000.0 * step_value(thinner, "S_x") / 1.67, 1e-9, 0.0);
}

// 1 1/2 in square, 36 ksi: Z = 0.84375, 18,189 lb in; on the diagonal Z = 3.375 root(2)/6 = 0.79550 but 1.6 S = 1.6 x
// 0.5625/root(2) = 0.63640: 13,719.
TEST_CASE("A square bar is bent on its plastic modulus, no more than 1.6 times first yield", "[closed-form]") {
    auto resolved = test::example_resolved();
    resolved.detail.post = model::SolidBar{1.5, 1.5, false, "steel"};
    resolved.post_metal.yield_psi = 36000.0;
    CHECK_CLOSE(bending(resolved, {90.0}).at(0).capacity, 18188.6, 1e-5, 0.0);
    CHECK_CLOSE(bending(resolved, {45.0}).at(0).capacity, 13718.9, 1e-4, 0.0);
    // A round one: 1.6 S = 1.6 pi/32 3.375 = 0.53014: 11,428 lb in, every way.
    resolved.detail.post = model::SolidBar{1.5, 1.5, true, "steel"};
    CHECK_CLOSE(bending(resolved, {30.0}).at(0).capacity, 11428.3, 1e-4, 0.0);
}

// Bars 1/2 x 2 1/2 in, 36 ksi, 42 in high: strong way 42 x 2.5/0.25 = 420: (1.52 - 0.274 x 420 x 36/29,000) 18,750 =
// 25,821 lb in; weak way 36,000 x 0.15625 = 5625. Over 1.67: 15,462 and 3368.
TEST_CASE("A flat bar has a strong and a weak way, twin bars have twice that", "[unit]") {
    auto resolved = test::example_resolved();
    resolved.post_metal.yield_psi = 36000.0;
    resolved.detail.post = model::SolidBar{0.5, 2.5, false, "steel"};
    CHECK_CLOSE(bending(resolved, {90.0}).at(0).capacity, 15461.6, 1e-4, 0.0);
    CHECK_CLOSE(bending(resolved, {0.0}).at(0).capacity, 3368.3, 1e-4, 0.0);
    resolved.detail.post = model::TwinBars{0.5, 2.5, 1.0, model::PlanAxis::x, "steel"};
    CHECK_CLOSE(bending(resolved, {90.0}).at(0).capacity, 2.0 * 15461.6, 1e-4, 0.0);
    CHECK_CLOSE(bending(resolved, {0.0}).at(0).capacity, 2.0 * 3368.3, 1e-4, 0.0);
    // The gap does not help: no composite action is counted.
    std::get<model::TwinBars>(resolved.detail.post).gap_in = 4.0;
    CHECK_CLOSE(bending(resolved, {0.0}).at(0).capacity, 2.0 * 3368.3, 1e-4, 0.0);
}

// A solid stub 1 9/16 in square, 6 in high, in a 2 x 2 x 3/16 tube: at the plate 36,000 x 1.5625^3/4 / 1.67 = 20,558 lb
// in for 8400; the tube at the stub's top for 200 x 36 = 7200, not softened by a weld.
TEST_CASE("A post over a stub is bent at the stub's top, the stub at the plate", "[unit]") {
    auto resolved = test::example_resolved();
    auto& tube = std::get<model::RectangularTube>(resolved.detail.post);
    tube.wall_in = 0.1875;
    tube.stub = model::Stub{1.5625, 1.5625, 0.0, 6.0, "steel", model::StubFixing::set_screws};
    resolved.stub_metal = resolved.post_metal;
    resolved.stub_metal->yield_psi = 36000.0;
    const auto results = bending(resolved, {90.0});
    REQUIRE(results.size() == 2);
    CHECK(results[0].aspect == "over-stub");
    CHECK(step_value(results[0], "h_s") == 6.0);
    // Free for 36 in: HSS2x2x3/16 has A 1.19, r 0.733 (published table, from memory): K L/r = 103.1, Fe = 26.9 ksi;
    // 0.658^(46/26.9) x 46 x 1.19/1.67 = 16.02 k.
    auto pressed = test::pushes(resolved, {90.0});
    pressed.cases[0].down_lb = 100.0;
    CHECK_CLOSE(step_value(run_check("post-bending", resolved, pressed).at(0), "P_c"), 16020.0, 0.01, 0.0);
    CHECK_THROWS(step_value(results[1], "h_s"));
    CHECK_CLOSE(results[0].demand, 7200.0, 1e-12, 0.0);
    CHECK_CLOSE(results[0].capacity, 21999.0, 5e-4, 0.0);
    CHECK(results[1].aspect == "stub");
    CHECK_CLOSE(results[1].demand, 8400.0, 1e-12, 0.0);
    CHECK_CLOSE(results[1].capacity, 20558.0, 1e-4, 0.0);
}

TEST_CASE("A metal without guaranteed strength needs its certificate", "[bad-input]") {
    auto resolved = test::example_resolved();
    resolved.post_metal.by_certificate = true;
    resolved.post_metal.yield_psi = resolved.post_metal.ultimate_psi = 0.0;
    const auto result = bending(resolved, {90.0}).at(0);
    CHECK(result.status == Status::missing_evidence);
    CHECK(format::english(result.note).find("certificate") != std::string::npos);
}

TEST_CASE("A wood post bends above its shoe", "[unit]") {
    // 200 x (42 - 6) = 7200 lb in on 3.5^3/6 = 7.1458 in3: 1007.6 psi. No. 2 southern pine 1000 psi, wet (no reduction
    // at 1150 psi and less), incised 0.8: 800 psi. Ratio 1.2595.
    const auto results = bending(test::wood_post_example(), {90.0});
    REQUIRE(results.size() == 2);
    CHECK_CLOSE(results[0].ratio, 1.2595, 0.0, 1e-4);
    CHECK(results[0].status == Status::fails);
    CHECK(results[1].part == model::PartId{model::PartKind::shoe});
    CHECK(results[1].demand == Approx(8400.0));
    CHECK_FALSE(results[1].note.empty());
}

// 1 1/2 x 5 1/2 in, 36 in free above its shoe: le = 2.06 x 36 = 74.16 (NDS 2018 Table 3.3.3), RB = sqrt(74.16 x
// 5.5/2.25) = 13.464, Emin' = 510,000 x 0.9 x 0.95 = 436,050, FbE = 1.2 Emin'/RB^2 = 2886.5; Fb* = 1000 x 0.8 = 800:
// FbE/Fb* = 3.608, CL = 4.608/1.9 - sqrt((4.608/1.9)^2 - 3.608/0.95) = 0.9817.
TEST_CASE("A narrow wood post is held back by its free height above the shoe", "[closed-form]") {
    auto resolved = test::wood_post_example();
    auto& post = std::get<model::WoodPost>(resolved.detail.post);
    post.width_in = 1.5;
    post.depth_in = 5.5;
    CHECK_CLOSE(step_value(bending(resolved, {90.0}).at(0), "F_b1'"), 785.3, 3e-4, 0.0);
    post.width_in = 0.25;  // RB = 50 at 0.404 in
    CHECK(bending(resolved, {90.0}).at(0).status == Status::fails);
    post.width_in = 1.5;
    CHECK_THROWS(step_value(bending(resolved, {90.0}).at(0), "F_b2"));  // sawn lumber has one value for both faces
    resolved.post_grade->use = catalog::WoodUse::engineered;
    resolved.post_grade->engineered =
        catalog::EngineeredFactors{2250.0, model::OwnWood::Volume::none, 0.0, model::OwnWood::WetService::dry_only};
    resolved.detail.basis.moisture = model::Moisture::dry;
    CHECK(step_value(bending(resolved, {90.0}).at(0), "F_b2") == 2250.0);
}

// 1 1/2 in square, 30 ksi: F_y S = 16,875, F_y Z = 25,313 lb in.
TEST_CASE("The choice of first yield holds for stainless bars too", "[closed-form]") {
    auto resolved = test::example_resolved();
    resolved.detail.post = model::SolidBar{1.5, 1.5, false, "stainless"};
    resolved.post_metal.kind = catalog::MetalKind::stainless_steel;
    resolved.post_metal.yield_psi = 30000.0;
    CHECK_CLOSE(bending(resolved, {90.0}).at(0).capacity, 25312.5 / 1.67, 1e-6, 0.0);
    resolved.detail.basis.stainless_bending = model::StainlessBending::first_yield;
    CHECK_CLOSE(bending(resolved, {90.0}).at(0).capacity, 16875.0 / 1.67, 1e-6, 0.0);
}
