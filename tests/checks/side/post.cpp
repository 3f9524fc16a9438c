// The post of a mount on a member's side, by hand: net of its holes, beside a notch, pressed across its grain.
#include "checks/run_check.h"
#include "checks/side/side_example.h"
#include "support/compare.h"

#include <algorithm>
#include <cmath>

using namespace toehold;
using checks::CheckResult;
using checks::Status;
using test::run_check;
using test::side_example;
using test::step_value;
using test::with_cut;

namespace {

CheckResult first_of(const std::string& id, const catalog::Resolved& resolved, const demand::Demand& demand) {
    const auto results = run_check(id, resolved, demand);
    REQUIRE_FALSE(results.empty());
    return results.front();
}

constexpr demand::PostCut at_the_upper_bolt{-2.0, 8800.0, 0.0, 0.0, 200.0, 0.0, 0.0};

}  // namespace

TEST_CASE("a wood post is bent most at its upper bolt, net of the hole", "[closed-form]") {
    // (3.5 - 0.5625) 3.5^2/6 = 5.99740 in3; 8800/5.99740 = 1467.3 psi against 1000 psi.
    const catalog::Resolved resolved = side_example();
    const CheckResult result = first_of("side-post-bending", resolved, with_cut(resolved, at_the_upper_bolt));
    CHECK_CLOSE(step_value(result, "S_x"), 5.99740, 1e-5, 0.0);
    CHECK_CLOSE(step_value(result, "f_bx"), 1467.30, 1e-5, 0.0);
    CHECK_CLOSE(result.ratio, 1.46730, 1e-5, 0.0);
    CHECK(result.status == Status::fails);
    CHECK(test::link_words(result) == "guard > post: post bending");
    // Between the bolts nothing is drilled: 7.14583 in3.
    demand::PostCut between = at_the_upper_bolt;
    between.z_in = -4.5;
    CHECK_CLOSE(step_value(first_of("side-post-bending", resolved, with_cut(resolved, between)), "S_x"), 7.14583, 1e-5,
                0.0);
}

TEST_CASE("along the rail a bolt's hole in the middle takes little of the modulus", "[closed-form]") {
    // 3.5 (3.5^3/12 - 0.5625^3/12)/1.75 = 7.11617 in3.
    const catalog::Resolved resolved = side_example();
    demand::PostCut cut = at_the_upper_bolt;
    std::swap(cut.bending_out_lb_in, cut.bending_along_lb_in);
    CHECK_CLOSE(step_value(first_of("side-post-bending", resolved, with_cut(resolved, cut)), "S_y"), 7.11617, 1e-5,
                0.0);
}

TEST_CASE("below a notch's shoulder the post is as deep as the notch leaves it", "[closed-form]") {
    catalog::Resolved resolved = side_example();
    on_side(resolved.detail).notch = model::PostNotch{1.0, 0.0};
    // (3.5 - 0.5625) 2.5^2/6 = 3.05990 in3.
    CHECK_CLOSE(step_value(first_of("side-post-bending", resolved, with_cut(resolved, at_the_upper_bolt)), "S_x"),
                3.05990, 1e-5, 0.0);
}

TEST_CASE("the couple between the bolts shears the post", "[closed-form]") {
    // 1.5 x 1760/12.25 = 215.5 psi against 175 psi; with a twist of 1000 lb in, tau = 1000/(0.208 x 3.5^3) = 112.1 psi,
    // (112.1 + sqrt(112.1^2 + 4 x 215.5^2))/350.
    const catalog::Resolved resolved = side_example();
    const CheckResult result =
        first_of("side-post-shear", resolved, with_cut(resolved, {-4.0, 4000.0, 0.0, 0.0, -1760.0, 0.0, 0.0}));
    CHECK_CLOSE(step_value(result, "f_v"), 215.510, 1e-5, 0.0);
    CHECK_CLOSE(result.ratio, 215.510 / 175.0, 1e-5, 0.0);
    const CheckResult twisted =
        first_of("side-post-shear", resolved, with_cut(resolved, {-4.0, 4000.0, 0.0, 1000.0, -1760.0, 0.0, 0.0}));
    CHECK_CLOSE(twisted.ratio, (112.1 + std::sqrt(112.1 * 112.1 + 4.0 * 215.510 * 215.510)) / 350.0, 1e-3, 0.0);
}

TEST_CASE("along the rail the bolts take hold of half the post near its end", "[closed-form]") {
    // NDS 2018 Eq. 3.4-6: 2/3 x 175 x 3.5 x 1.75 x (1.75/3.5)^2 = 178.65 lb.
    const catalog::Resolved resolved = side_example();
    const auto results =
        run_check("side-post-shear", resolved, with_cut(resolved, {-4.0, 0.0, 0.0, 0.0, 0.0, 500.0, 0.0}));
    REQUIRE(results.size() == 2);
    CHECK(results[1].aspect == "along the rail");
    CHECK_CLOSE(results[1].capacity, 178.646, 1e-5, 0.0);
}

TEST_CASE("a steel tube bolted through its walls is bent net of the holes", "[closed-form]") {
    // 2 x 2 x 3/16 A500 B, design wall 0.174375; hole 9/16 in both walls: lost 0.5625 x 0.174375 x 1.825625 = 0.17907
    // in3.
    catalog::Resolved resolved = test::bracket_example();
    on_side(resolved.detail).bracket.reset();
    resolved.mount = catalog::SideFastened{};
    resolved.anchors = {test::bolt_at("U", 0.0, 2.0), test::bolt_at("L", 0.0, 7.0)};
    const CheckResult drilled = first_of("side-post-bending", resolved, with_cut(resolved, at_the_upper_bolt));
    const CheckResult whole =
        first_of("side-post-bending", resolved, with_cut(resolved, {-4.0, 8800.0, 0.0, 0.0, 200.0, 0.0, 0.0}));
    const double plastic_in3 = step_value(whole, "Z_x");
    CHECK(step_value(drilled, "k_x") <= 1.0 - 0.17907 / plastic_in3 + 1e-4);
    CHECK_CLOSE(drilled.capacity, step_value(drilled, "k_x") * whole.capacity, 1e-6, 0.0);
    // A 2 in washer counts as 1.7 in on the 2 in wall: the square of its area is 1.50658, b = 0.75329: F_y t^2 =
    // 1398.72, 1398.72/0.24671 (1.50658 + 4 x 0.49670) = 19806; over 1.50.
    const CheckResult wall = first_of("side-tube-wall", resolved, test::side_demand(resolved, {{1000.0, 0.0, 0.0}}));
    CHECK_CLOSE(wall.capacity, 19806.0 / 1.5, 1e-3, 0.0);
    // 1.2 x (1 - 9/32) x 3/16 x 58000 = 9379 lb of tear-out over 2; 1.8 x 46000 x 1/2 x 3/16 = 7762.5 lb over 2.
    const CheckResult hole = first_of("side-hole-bearing", resolved, test::side_demand(resolved, {{0.0, 0.0, -500.0}}));
    CHECK_CLOSE(hole.capacity, 0.5 * 7762.5, 1e-9, 0.0);
    CHECK(run_check("side-tube-wall", test::bracket_example(), test::side_demand(test::bracket_example(), {})).empty());
    // 0.60 x 46000 x 2 (2 - 3 x 0.174375) 0.174375/1.67 = 8512 lb.
    const CheckResult sheared =
        first_of("side-post-shear", resolved, with_cut(resolved, {-4.0, 0.0, 0.0, 0.0, 1760.0, 0.0, 0.0}));
    CHECK_CLOSE(sheared.ratio, 1760.0 / 8512.37, 1e-4, 0.0);
}

TEST_CASE("post and rim are pressed on each other across the grain of both", "[closed-form]") {
    // 1,500 lb spread evenly over 3.5 in of post and 3 in of height: 142.86 psi.
    const catalog::Resolved resolved = side_example();
    demand::Demand demand = test::side_demand(resolved, {});
    demand::Support face{
        demand::SupportKind::member, 2, {model::PartKind::rim, "R1"}, 30000.0, format::verbatim("test")};
    face.outline = {{-1.75, -9.0}, {1.75, -9.0}, {1.75, 0.0}, {-1.75, 0.0}};
    face.presses = {0.0, 1.0, 0.0};
    face.face_y_in = -1.75;
    demand.supports = {face};
    demand.states.front().supports = {{1500.0, {0.0, -7.5}, 300.0, {0.0, -9.0}, 10.5}};
    const CheckResult post = first_of("side-post-bearing", resolved, demand);
    CHECK_CLOSE(post.demand, 1500.0 / 10.5, 1e-6, 0.0);
    CHECK(post.capacity == 565.0);  // the block ends at the post's end: C_b 1
    CHECK(test::link_words(post) == "post > rim R1: bearing");
    const CheckResult rim = first_of("bearing-framing", resolved, demand);
    CHECK_CLOSE(rim.demand, 1500.0 / 10.5, 1e-6, 0.0);
    CHECK_CLOSE(rim.capacity, 565.0 * 3.875 / 3.5, 1e-9, 0.0);
    CHECK(test::link_words(rim) == "post > rim R1: bearing");
    CHECK(test::says(rim.title, "Bearing of the post"));
}

TEST_CASE("what is about a plate's foot says nothing of a post on a side", "[unit]") {
    const catalog::Resolved resolved = side_example();
    const demand::Demand demand = with_cut(resolved, at_the_upper_bolt);
    for (const char* id : {"post-bending", "post-shoe", "post-overlap", "weld", "plate-bending", "bearing-decking"})
        CHECK(run_check(id, resolved, demand).empty());
}
