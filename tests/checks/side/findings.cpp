// Findings on a post on a member's side: what must not be built so, named plainly.
#include "checks/run_check.h"
#include "checks/side/side_example.h"
#include "support/compare.h"

using namespace toehold;
using checks::Finding;
using checks::Severity;
using test::run_finding;
using test::side_example;

namespace {

Finding only(const std::string& id, const catalog::Resolved& resolved) {
    const auto findings = run_finding(id, resolved);
    REQUIRE(findings.size() == 1);
    return findings.front();
}

/// The rim nailed to the joists' ends.
catalog::Resolved nailed_rim() {
    catalog::Resolved resolved = side_example();
    resolved.detail.framing.rims.front().connection =
        model::EndGrainFasteners{model::EndGrainFasteners::Kind::nail, 0.162, 3.5, 4, 6.0};
    return resolved;
}

model::TensionTie tie_to(const std::string& joist) {
    model::TensionTie tie;
    tie.id = "T1";
    tie.name = "tie";
    tie.report = "test value";
    tie.below_top_in = 2.0;
    tie.tension_lb = 1800.0;
    tie.deflection_in = 0.125;
    tie.into = joist;
    return tie;
}

/// The post on a joist along the rail, no block behind it.
catalog::Resolved on_a_joist() {
    catalog::Resolved resolved = side_example();
    model::Joists joists{model::PlanAxis::x, 1.5, 9.25, "southern-pine", "no-2", {{"J1", -2.5}, {"J2", -18.5}}};
    joists.from_in = -100.0;
    joists.to_in = 100.0;
    resolved.detail.framing.joists = joists;
    resolved.detail.framing.rims.clear();
    resolved.rims.clear();
    on_side(resolved.detail).member = "J1";
    return resolved;
}

}  // namespace

TEST_CASE("a rim held by nails in end grain alone fails, and is named", "[unit]") {
    CHECK(run_finding("side-end-grain", side_example()).empty());
    catalog::Resolved resolved = nailed_rim();
    const Finding alone = only("side-end-grain", resolved);
    CHECK(alone.severity == Severity::fails);
    CHECK(test::about(alone) == "rim R1");
    CHECK(alone.clause.find("R507.10") != std::string::npos);
    // The rule of plates does not say it a second time.
    CHECK(run_finding("end-grain-withdrawal", resolved).empty());
    on_side(resolved.detail).ties = {tie_to("J1")};
    CHECK(only("side-end-grain", resolved).severity == Severity::caution);
}

TEST_CASE("screws with a reported withdrawal from end grain are said, and do not fail", "[unit]") {
    catalog::Resolved resolved = nailed_rim();
    model::EndGrainFasteners screws{model::EndGrainFasteners::Kind::structural_screw, 0.25, 6.0, 4, 6.0};
    screws.reported.withdrawal_lb = 150.0;
    resolved.detail.framing.rims.front().connection = screws;
    CHECK(only("side-end-grain", resolved).severity == Severity::caution);
}

TEST_CASE("a joist that carries the post alone fails until a block or a tie goes past it", "[unit]") {
    catalog::Resolved resolved = on_a_joist();
    const Finding alone = only("side-one-member", resolved);
    CHECK(alone.severity == Severity::fails);
    CHECK(test::about(alone) == "joist J1");
    CHECK(run_finding("side-one-member", side_example()).empty());
    model::Block block;
    block.id = "B1";
    block.along = model::PlanAxis::y;
    block.from_in = -17.75;
    block.to_in = -3.25;
    block.width_in = 1.5;
    block.depth_in = 9.25;
    const model::ReportedConnector angle{"angle", "test value", 800.0, 1500.0, 600.0, 1.5};
    block.from_end = {"J2", angle};
    block.to_end = {"J1", angle};
    resolved.detail.framing.blocks = {block};
    CHECK(run_finding("side-one-member", resolved).empty());
    CHECK(run_finding("side-end-grain", resolved).empty());
    resolved.detail.framing.blocks.front().to_end.connection =
        model::EndGrainFasteners{model::EndGrainFasteners::Kind::nail, 0.162, 3.5, 4, 6.0};
    CHECK(test::says(only("side-end-grain", resolved).message, "blocks fastened in end grain alone"));
}

TEST_CASE("a post without anything below its highest fastener has no lower end to its couple", "[unit]") {
    catalog::Resolved resolved = side_example();
    CHECK(run_finding("side-no-bottom", resolved).empty());
    on_side(resolved.detail).layers = {{"siding", 0.75, {}, 3.5}};  // a lower bolt does not press
    CHECK(only("side-no-bottom", resolved).severity == Severity::fails);
    on_side(resolved.detail).layers.clear();
    resolved.anchors.pop_back();
    CHECK(only("side-no-bottom", resolved).severity == Severity::caution);
    on_side(resolved.detail).post_bottom_below_top_in = 3.5;
    CHECK(only("side-no-bottom", resolved).severity == Severity::fails);
    on_side(resolved.detail).post_bottom_below_top_in = 9.0;
    on_side(resolved.detail).layers = {{"siding", 0.75, {}, 3.0}};
    CHECK(only("side-no-bottom", resolved).severity == Severity::fails);
}

TEST_CASE("a notched 4 x 4 fails, a notched 6 x 6 is said", "[unit]") {
    catalog::Resolved resolved = side_example();
    CHECK(run_finding("side-notched-post", resolved).empty());
    on_side(resolved.detail).notch = model::PostNotch{1.0, 0.0};
    const Finding notched = only("side-notched-post", resolved);
    CHECK(notched.severity == Severity::fails);
    CHECK(notched.clause.find("R507.10") != std::string::npos);
    auto& post = std::get<model::WoodPost>(resolved.detail.post);
    post.width_in = post.depth_in = 5.5;
    CHECK(only("side-notched-post", resolved).severity == Severity::caution);
}

TEST_CASE("heads on the post's wood: bolts fail, lag screws are said, washers and plates are quiet", "[unit]") {
    catalog::Resolved resolved = side_example();
    CHECK(run_finding("side-heads-on-wood", resolved).empty());
    resolved.anchors[0].washer.reset();
    CHECK(only("side-heads-on-wood", resolved).severity == Severity::fails);
    resolved.anchors[0].kind = catalog::FastenerKind::lag_screw;
    CHECK(only("side-heads-on-wood", resolved).severity == Severity::caution);
}

TEST_CASE("a stringer that nothing is said to brace leaves the verdict open", "[unit]") {
    catalog::Resolved resolved = side_example();
    CHECK(run_finding("side-stringer-bracing", resolved).empty());
    on_side(resolved.detail).stringer = model::StringerSlope{37.0, 5.0};
    CHECK(only("side-stringer-bracing", resolved).severity == Severity::missing);
    on_side(resolved.detail).stringer->braced_by = "a block to the next stringer";
    CHECK(only("side-stringer-bracing", resolved).severity == Severity::caution);
}

TEST_CASE("washers of bolts too near each other overlap at head or nut", "[unit]") {
    catalog::Resolved resolved = side_example();
    CHECK(run_finding("washers-overlap", resolved).empty());
    resolved.anchors[1].at.z_in = -3.5;  // 1-1/2 in apart, washers of 2 in
    CHECK(test::about(only("washers-overlap", resolved)) == "anchor L");
    for (catalog::Anchor& anchor : resolved.anchors) anchor.washer->outside_diameter_in = 1.375;
    CHECK(run_finding("washers-overlap", resolved).size() == 1);
    for (catalog::Anchor& anchor : resolved.anchors) anchor.washer_below->outside_diameter_in = 1.375;
    CHECK(run_finding("washers-overlap", resolved).empty());
}

TEST_CASE("a nut right behind which a joist ends does not go on", "[unit]") {
    catalog::Resolved resolved = side_example();
    CHECK(run_finding("side-nut-in-the-way", resolved).empty());
    resolved.detail.framing.joists->members.push_back({"J3", 0.5});
    // The rim's number moves on by one.
    for (catalog::Anchor& anchor : resolved.anchors) anchor.seat->member = 3;
    const auto findings = run_finding("side-nut-in-the-way", resolved);
    REQUIRE(findings.size() == 2);
    CHECK(test::says(findings.front().message, "J3 stands behind it"));
}

TEST_CASE("aluminum on treated wood and beside bare bolts is said", "[unit]") {
    catalog::Resolved resolved = test::bracket_example();
    CHECK(run_finding("side-aluminum-on-wood", resolved).empty());
    std::get<catalog::SideFastened>(resolved.mount).bracket_metal->kind = catalog::MetalKind::aluminum;
    CHECK(run_finding("side-aluminum-on-wood", resolved).size() == 1);
    CHECK(run_finding("side-dissimilar-metals", resolved).empty());
    on_side(resolved.detail).anchors.front().corrosion_protection.clear();
    CHECK(run_finding("side-dissimilar-metals", resolved).size() == 1);
}

TEST_CASE("a wood post on a side is asked for no shoe, and its tie for a report", "[unit]") {
    catalog::Resolved resolved = side_example();
    CHECK(run_finding("missing-evidence", resolved).empty());
    on_side(resolved.detail).ties = {tie_to("J1")};
    on_side(resolved.detail).ties.front().report.clear();
    CHECK(test::about(run_finding("missing-evidence", resolved).at(0)) == "tie T1");
}
