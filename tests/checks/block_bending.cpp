#include "run_check.h"

#include "support/compare.h"
#include "support/example.h"

#include <cmath>

using namespace toehold;
using checks::Status;

TEST_CASE("the block's bending is worked by hand", "[closed-form]") {
    const catalog::Resolved resolved = test::example_resolved();
    const auto results =
        test::run_check("block-bending", resolved, test::example_demand(resolved, {1000.0, 0.0, 50.0}, {}));
    REQUIRE(results.size() == 2);
    // B1, 3.5 x 5.5, 14.5 in, two anchors 5.25 in from its ends:
    //   M_v = 1000 x 5.25 = 5250, S_v = 17.6458, f = 297.52;  M_h = 50 x 5.25 = 262.5, S_h = 11.2292, f = 23.377
    //   F_b1' = 1000 x 0.8 x C_L 0.9989 = 799.1 (wet, 1000 <= 1150: C_M 1.0); F_b2' = 800 x C_fu 1.05 = 840
    //   297.52/799.1 + 23.377/840 = 0.3723 + 0.0278 = 0.4002
    CHECK_CLOSE(test::step_value(results[0], "M_v"), 5250.0, 1e-12, 0.0);
    CHECK_CLOSE(test::step_value(results[0], "f_bv"), 297.52, 0.0, 0.01);
    CHECK_CLOSE(test::step_value(results[0], "f_bh"), 23.377, 0.0, 0.001);
    CHECK_CLOSE(results[0].ratio, 0.4002, 0.0, 2e-4);
    CHECK(results[0].status == Status::holds);
    CHECK(results[0].subject == "block B1");
}

TEST_CASE("a plank laid flat is bent about its weak axis", "[closed-form]") {
    catalog::Resolved resolved = test::example_resolved();
    resolved.detail.framing.blocks[0].width_in = 5.5;
    resolved.detail.framing.blocks[0].depth_in = 1.5;
    const auto results =
        test::run_check("block-bending", resolved, test::example_demand(resolved, {1000.0, 0.0, 0.0}, {}));
    // S = 5.5 x 1.5^2/6 = 2.0625, f = 5250/2.0625 = 2545.5; F_b2' = 800 x C_fu 1.15 = 920; ratio 2.767
    CHECK_CLOSE(results.at(0).ratio, 2.767, 0.0, 1e-3);
    CHECK(results.at(0).status == Status::fails);
}

TEST_CASE("the ratio is linear in the anchors' pull when nothing bends it sideways", "[property]") {
    const catalog::Resolved resolved = test::example_resolved();
    const double one =
        test::run_check("block-bending", resolved, test::example_demand(resolved, {400.0, 0.0, 0.0}, {})).at(0).ratio;
    const double three =
        test::run_check("block-bending", resolved, test::example_demand(resolved, {1200.0, 0.0, 0.0}, {})).at(0).ratio;
    CHECK_CLOSE(three, 3.0 * one, 1e-12, 0.0);
}

TEST_CASE("a blade of a block fails outright", "[unit]") {
    catalog::Resolved resolved = test::example_resolved();
    resolved.detail.framing.blocks[0].width_in = 0.25;
    resolved.detail.framing.blocks[0].depth_in = 11.25;
    const auto results =
        test::run_check("block-bending", resolved, test::example_demand(resolved, {10.0, 0.0, 0.0}, {}));
    CHECK(results.at(0).status == Status::fails);
    CHECK(std::isinf(results.at(0).ratio));
}

TEST_CASE("no demand, no result", "[unit]") {
    const catalog::Resolved resolved = test::example_resolved();
    CHECK(test::run_check("block-bending", resolved, demand::Demand{}).empty());
}
