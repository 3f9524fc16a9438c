// The stiffness against turning that a line of guard asks of a post on a member's side: a stiff post about the lower
// end of its contact in closed form, and ends that hold the demand's own states between them.
#include "demand/line/base_stiffness.h"

#include "demand/demand_of.h"
#include "model/mount.h"
#include "support/compare.h"
#include "support/shipped.h"
#include "support/side_detail.h"

#include <cmath>

using namespace toehold;

namespace {

demand::BaseStiffnessRange side_range(const catalog::Resolved& resolved) {
    const demand::BaseStiffnessOutcome outcome = demand::find_base_stiffness(resolved);
    INFO(format::english(outcome.failure));
    REQUIRE(outcome.range);
    return *outcome.range;
}

}  // namespace

TEST_CASE("a stiff post turns about the lower end of its contact", "[closed-form]") {
    constexpr double anchor_lb_per_in = 2000.0;
    model::BaseDetail detail = test::side_detail();
    detail.post = model::SolidBar{3.5, 3.5, false, "steel-a36"};
    on_side(detail).anchors.front().head_plate.reset();
    detail.basis.stiffness = model::FixedStiffness{1e7, anchor_lb_per_in, "round numbers for a test"};
    const catalog::Resolved resolved = test::resolved_by_shipped(detail);
    const demand::BaseStiffnessRange range = side_range(resolved);
    // Bolts 2 and 7 in below the rim's top, the post's end 9 in: a push H at h turns it by H (h + 9) / (k (7^2 + 2^2)),
    // and its top moves by h + 9 times that; the moment about the rim's top is H h.
    const double h = model::lever_height_in(detail), below = 9.0;
    const double stiffness = h * h * anchor_lb_per_in * (7.0 * 7.0 + 2.0 * 2.0) / ((h + below) * (h + below));
    CHECK_CLOSE(range.stiff.outward, stiffness, 0.01, 0.0);
    // Inward about the upper end, at the rim's top: arms of 2 and 7 in, and the lever is h itself.
    CHECK_CLOSE(range.stiff.inward, anchor_lb_per_in * (7.0 * 7.0 + 2.0 * 2.0), 0.01, 0.0);
    CHECK(range.soft.outward < range.stiff.outward);  // the rim rolls
}

TEST_CASE("every state of a side's demand lies between the soft and the stiff end", "[property]") {
    const catalog::Resolved resolved = test::resolved_by_shipped(test::side_detail());
    const demand::BaseStiffnessRange range = side_range(resolved);
    CHECK(range.soft.outward < range.central.outward);
    CHECK(range.central.outward < range.stiff.outward);
    CHECK_CLOSE(range.stiff.right, range.stiff.left, 1e-6, 0.0);
    const demand::Outcome outcome = demand::find_demand(resolved, demand::Sampling::probe());
    REQUIRE(outcome.demand);
    int seen = 0;
    for (const demand::State& state : outcome.demand->states) {
        const demand::ActingLoad load = demand::acting_load(*outcome.demand, state);
        const demand::StiffnessScenario& at = outcome.demand->scenarios[state.scenario];
        if (load.down_lb != 0.0 || at.flexible_framing || std::abs(std::cos(state.direction_rad)) > 1e-9) continue;
        if (std::sin(state.direction_rad) < 0.0) continue;
        const double stiffness = load.push_lb * load.height_in / state.rotation_rad;
        CHECK(stiffness >= 0.999 * range.soft.outward);
        CHECK(stiffness <= 1.001 * range.stiff.outward);
        ++seen;
    }
    CHECK(seen > 0);
}
