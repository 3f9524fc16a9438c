#include "run_check.h"

#include "support/compare.h"
#include "support/example.h"

using namespace toehold;

TEST_CASE("a square block's torsion is T/(0.208 a^3), with beam shear added", "[closed-form]") {
    catalog::Resolved resolved = test::example_resolved();
    model::Block& block = resolved.detail.framing.blocks[0];
    block.depth_in = 3.5;
    block.across_in = -3.25;
    const auto results =
        test::run_check("block-torsion", resolved, test::example_demand(resolved, {1000.0, 0.0, 0.0}, {}));
    // two pulls of 1000 lb, 0.75 in beside the axis: 750 lb in to each end; 750/(0.208 x 42.875) = 84.1 psi
    // beam shear 1.5 x 1000/12.25 = 122.4 psi; together 84.1 + 2/3 x 122.4 = 165.7 psi
    // allowed 2/3 x 175 x 0.97 x 0.8 = 90.53 psi
    CHECK_CLOSE(test::step_value(results.at(0), "tau"), 84.1, 0.0, 0.1);
    CHECK_CLOSE(results.at(0).demand, 165.7, 0.0, 0.1);
    CHECK_CLOSE(results.at(0).capacity, 90.53, 0.0, 0.01);
    CHECK(results.at(0).status == checks::Status::fails);
}

TEST_CASE("an outward push at the block's top twists it by half its depth", "[closed-form]") {
    const catalog::Resolved resolved = test::example_resolved();
    const auto results =
        test::run_check("block-torsion", resolved, test::example_demand(resolved, {0.0, 0.0, 50.0}, {}));
    CHECK_CLOSE(test::step_value(results.at(0), "T"), 50.0 * 2.75, 1e-12, 0.0);
    // a/b = 1.571: coefficient between the table's 0.231 (1.5) and 0.246 (2.0); 137.5/(0.2335 x 5.5 x 12.25) = 8.74
    CHECK_CLOSE(test::step_value(results.at(0), "tau"), 8.74, 0.01, 0.0);
}

TEST_CASE("in a flat block the sideways shear is what joins the twist", "[unit]") {
    catalog::Resolved resolved = test::example_resolved();
    resolved.detail.framing.blocks[0].width_in = 5.5;
    resolved.detail.framing.blocks[0].depth_in = 3.5;
    const auto results =
        test::run_check("block-torsion", resolved, test::example_demand(resolved, {1000.0, 0.0, 50.0}, {}));
    CHECK_CLOSE(test::step_value(results.at(0), "f_v"), 1.5 * 50.0 / 19.25, 1e-12, 0.0);
}

TEST_CASE("pulls on the axis twist nothing", "[unit]") {
    const catalog::Resolved resolved = test::example_resolved();
    const auto results =
        test::run_check("block-torsion", resolved, test::example_demand(resolved, {1000.0, 0.0, 0.0}, {}));
    CHECK_CLOSE(test::step_value(results.at(0), "tau"), 0.0, 0.0, 1e-9);
}
