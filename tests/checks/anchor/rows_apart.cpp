// NDS 2018 12.5.1.3: 5 in between the outermost rows that one piece of steel holds apart across the grain. No published
// worked example was found; the distances are read off the plan.
#include "checks/connection/end_example.h"
#include "checks/run_check.h"
#include "support/compare.h"
#include "support/example.h"

using namespace toehold;
using checks::Status;

namespace {

constexpr const char* id = "fastener-rows-apart";

/// Blocks so wide that all four anchors stand in the first.
catalog::Resolved in_one_block() {
    catalog::Resolved resolved = test::example_resolved();
    resolved.detail.framing.blocks[0].across_in = 0.0;
    resolved.detail.framing.blocks[0].width_in = 7.25;
    for (catalog::Anchor& anchor : resolved.anchors) anchor.seat = model::Seat{0, 1.125, 5.25};
    return resolved;
}

std::vector<checks::CheckResult> of(const catalog::Resolved& resolved) {
    return test::run_check(id, resolved, test::example_demand(resolved, {100.0, 0.0, 0.0}, {}));
}

}  // namespace

TEST_CASE("rows of anchors exactly 5 in apart across the grain hold, farther ones fail", "[unit][A7]") {
    catalog::Resolved resolved = in_one_block();
    // A and B at y = -2.5, C and D at 2.5, grain along x
    const auto held = of(resolved);
    REQUIRE(held.size() == 1);
    CHECK(test::about(held[0]) == "block B1");
    CHECK(held[0].demand == 5.0);
    CHECK(held[0].status == Status::holds);
    resolved.anchors[2].at.y_in = 2.625;
    const auto failed = of(resolved);
    CHECK_CLOSE(failed.at(0).demand, 5.125, 1e-12, 0.0);
    CHECK(failed.at(0).status == Status::fails);
    CHECK(test::says(failed.at(0).note, "shrinkage-detailed"));
}

TEST_CASE("along the grain, in one row, or under 1/4 in there is no limit", "[unit]") {
    catalog::Resolved resolved = test::example_resolved();
    // A and B stand 4 in apart along one block: one row
    CHECK(of(resolved).empty());
    resolved = in_one_block();
    resolved.anchors[2].at.y_in = 3.0;
    for (catalog::Anchor& anchor : resolved.anchors) anchor.diameter_in = 0.242;
    CHECK(of(resolved).empty());
}

TEST_CASE("steel detailed for shrinkage is let off where the file says so", "[unit]") {
    catalog::Resolved resolved = in_one_block();
    resolved.anchors[2].at.y_in = 3.0;
    resolved.detail.basis.shrinkage_detailed = true;
    CHECK(of(resolved).empty());
}

TEST_CASE("an angle's upright line keeps the limit", "[unit]") {
    catalog::Resolved resolved = test::example_resolved();
    for (catalog::Anchor& anchor : resolved.anchors) anchor.seat.reset();
    model::SideAngles angles{2, 0.25, "steel-a36", model::SideAngles::Kind::bolt, 0.375, 0.0, 3, 2.75, 1.5};
    const auto failed = test::run_held(id, resolved, test::block_support(angles), {100.0, 0.0, 0.0, 0.0, 0.0});
    REQUIRE(failed.size() == 1);
    CHECK_CLOSE(failed[0].demand, 5.5, 1e-12, 0.0);
    CHECK(failed[0].status == Status::fails);
    angles.spacing_in = 2.5;
    CHECK(test::run_held(id, resolved, test::block_support(angles), {100.0, 0.0, 0.0, 0.0, 0.0}).at(0).status ==
          Status::holds);
}
