// Pieces of a block one on another, and many side by side: how they share, and what takes hold of them.
#include "checks/anchor/bolt_example.h"
#include "checks/anchor/lateral_joint.h"
#include "checks/member/actions.h"
#include "checks/member/framing_example.h"
#include "checks/run_check.h"
#include "support/compare.h"

using namespace toehold;
using checks::Status;

namespace {

/// Block B1 as two flat 2x6 one on another in place of a 4x6: 5.5 x 1.5 in each.
catalog::Resolved stacked(catalog::Resolved resolved, bool fastened) {
    model::Block& block = resolved.detail.framing.blocks[0];
    block.width_in = 5.5;
    block.depth_in = 1.5;
    block.stack = 2;
    block.stack_fastened = fastened;
    return resolved;
}

checks::CheckResult bending(const catalog::Resolved& resolved) {
    const demand::Demand demand = test::with_actions(resolved, 0, {test::actions(1200.0, 0.0, 300.0, 0.0, 0.0)});
    return test::run_check("member-bending", resolved, demand).at(0);
}

}  // namespace

TEST_CASE("a stack bends as so many pieces, not as one deep one", "[closed-form]") {
    // M = 1200 lb in on two pieces of S = 5.5 x 1.5^2/6 = 2.0625 in3: 600/2.0625 = 290.9 psi. One solid 5.5 x 3 in
    // piece would have 1200/8.25 = 145.5 psi.
    const auto result = bending(stacked(test::example_resolved(), false));
    CHECK_CLOSE(test::step_value(result, "f_bv"), 290.909, 1e-5, 0.0);
    CHECK(test::step_value(result, "n") == 2.0);
    CHECK(test::says(result.note, "does not count as one deep piece"));
    // Nailed to each other or not.
    CHECK_CLOSE(bending(stacked(test::example_resolved(), true)).ratio, result.ratio, 1e-12, 0.0);
}

TEST_CASE("a stack shears over all its pieces", "[closed-form]") {
    // 1.5 x 300/(2 x 5.5 x 1.5) = 27.27 psi
    const catalog::Resolved resolved = stacked(test::example_resolved(), false);
    const demand::Demand demand = test::with_actions(resolved, 0, {test::actions(1200.0, 0.0, 300.0, 0.0, 0.0)});
    CHECK_CLOSE(test::step_value(test::run_check("member-shear", resolved, demand).at(0), "f_v"), 27.2727, 1e-5, 0.0);
    CHECK(test::step_value(test::run_check("member-shear", resolved, demand).at(0), "A") == 16.5);
}

TEST_CASE("of many pieces side by side four share", "[unit]") {
    model::Member infill;
    infill.plies = 8;
    CHECK(checks::sharing_pieces(infill) == 4);
    infill.plies = 3;
    infill.stack = 2;
    CHECK(checks::sharing_pieces(infill) == 6);
    infill.plies = 8;
    infill.stack = 1;
    CHECK(test::says(checks::plies_note(infill), "Of the 8 pieces 4"));
    CHECK(checks::plies_note(model::Member{}).empty());
}

TEST_CASE("an anchor must take hold of the lowest piece of a loose stack", "[closed-form]") {
    // Two pieces 1.5 in: to the middle of the lower, 1.5 + 0.75 = 2.25 in; fastened to each other 0.75 in.
    catalog::Resolved loose = stacked(test::example_resolved(), false);
    loose.anchors[0].embedment_in = 2.0;  // stops in the lower piece's upper half
    const auto pulled = [](const catalog::Resolved& resolved) {
        return test::run_check("member-tension-perp", resolved, test::example_demand(resolved, {900.0, 0.0, 0.0}, {}))
            .at(0);
    };
    const auto short_of_it = pulled(loose);
    CHECK(short_of_it.demand == 2.25);
    CHECK(short_of_it.status == Status::fails);
    CHECK(test::says(short_of_it.note, "lowest piece of the stack"));
    catalog::Resolved fastened = stacked(loose, true);
    CHECK(pulled(fastened).demand == 0.75);
    CHECK(pulled(fastened).status == Status::holds);
    // A bolt holds from below.
    CHECK(pulled(stacked(test::bolted_example(), false)).status == Status::holds);
}

TEST_CASE("loose pieces slip on each other, so an anchor bears sideways in the top one alone", "[unit]") {
    catalog::Resolved solid = test::example_resolved();
    catalog::Resolved loose = stacked(solid, false);
    catalog::Resolved fastened = stacked(solid, true);
    for (catalog::Resolved* resolved : {&loose, &fastened}) resolved->anchors[0].embedment_in = 3.0;
    CHECK(checks::lateral_joint(loose, 0).dowel.main_bearing_in <= 1.5);
    CHECK(checks::lateral_joint(fastened, 0).dowel.main_bearing_in > 1.5);
}

TEST_CASE("a loose stack is lifted at its anchors by the lowest piece alone", "[closed-form]") {
    // 2.5 in deep less the tip of 7/32, less the upper piece's 1.5 in: 0.78125 in; of fastened ones a whole piece.
    catalog::Resolved loose = stacked(test::example_resolved(), false);
    for (catalog::Anchor& anchor : loose.anchors) {
        anchor.embedment_in = 2.5;
        anchor.length_in = 3.875;
    }
    const auto lifted = [](const catalog::Resolved& resolved) {
        return test::run_check("member-shear-at-anchors", resolved,
                               test::example_demand(resolved, {900.0, 0.0, 0.0}, {}))
            .at(0);
    };
    CHECK_CLOSE(test::step_value(lifted(loose), "d_e"), 0.78125, 1e-12, 0.0);
    CHECK(test::step_value(lifted(stacked(loose, true)), "d_e") == 1.5);
}
