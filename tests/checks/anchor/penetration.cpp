// Least penetration into the block.
#include "checks/run_check.h"
#include "support/compare.h"
#include "support/example.h"

using namespace toehold;
using catalog::FastenerKind;
using checks::Status;
using test::run_check;

namespace {

checks::CheckResult first(const catalog::Resolved& resolved) {
    const auto results =
        run_check("anchor-penetration", resolved, test::example_demand(resolved, {800.0, 0.0, 50.0}, {}));
    REQUIRE_FALSE(results.empty());
    return results[0];
}

}  // namespace

TEST_CASE("A 3/8 in lag screw needs 1-1/2 in without its tip", "[published]") {
    // NDS 2018 12.1.4.6: 4 x 0.375 = 1.5. In the block: 6 - 3/8 - 1 - 7/32 = 4.40625.
    const auto result = first(test::example_resolved());
    CHECK(result.demand == 1.5);
    CHECK(result.capacity == 4.40625);
    CHECK(result.unit == "in");
    CHECK(result.status == Status::holds);
}

TEST_CASE("A lag screw that barely enters fails although it holds a little", "[unit]") {
    auto resolved = test::example_resolved();
    resolved.anchors[0].length_in = 2.5;  // 2.5 - 1.375 = 1.125, less 7/32
    resolved.anchors[0].embedment_in = 1.125;
    const auto result = first(resolved);
    CHECK(result.capacity == 0.90625);
    CHECK(result.status == Status::fails);
    CHECK(test::says(result.note, "19/32 in too short"));  // 1.5 - 0.90625
}

TEST_CASE("A tip that has come out below the block is not deducted", "[unit]") {
    auto resolved = test::example_resolved();
    resolved.detail.framing.blocks[0].depth_in = 1.5;
    resolved.anchors[0].embedment_in = 1.5;
    CHECK(first(resolved).capacity == 1.5);
}

TEST_CASE("A No. 14 wood screw needs six diameters with its tip", "[published][A19]") {
    auto resolved = test::example_resolved();
    catalog::Anchor& anchor = resolved.anchors[0];
    anchor.kind = FastenerKind::wood_screw;
    anchor.diameter_in = 0.242;
    anchor.length_in = 3.0;
    anchor.embedment_in = 1.625;
    const auto result = first(resolved);
    CHECK(result.clause == "NDS 2018 12.1.5.6");  // 0.5.0 named 12.1.5.5
    CHECK_CLOSE(result.demand, 1.452, 1e-12, 0.0);
    CHECK(result.capacity == 1.625);
    CHECK(result.status == Status::holds);
}

TEST_CASE("A reported fastener reaches as deep as its report says, or the evidence is missing", "[bad-input]") {
    auto resolved = test::example_resolved();
    catalog::Anchor& anchor = resolved.anchors[0];
    anchor.kind = FastenerKind::reported;
    anchor.reported = model::ReportedFastener{};
    CHECK(first(resolved).status == Status::missing_evidence);
    anchor.reported->minimum_penetration_in = 5.0;
    const auto result = first(resolved);
    CHECK(result.demand == 5.0);
    CHECK(result.status == Status::fails);
}

TEST_CASE("A through-bolt has no penetration to check", "[unit]") {
    auto resolved = test::example_resolved();
    for (auto& anchor : resolved.anchors) anchor.kind = FastenerKind::through_bolt;
    CHECK(run_check("anchor-penetration", resolved, test::example_demand(resolved, {800.0, 0.0, 0.0}, {})).empty());
}
