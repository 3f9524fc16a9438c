// Findings about the rest of the detail: guard, post, anchors, plate, and where values come from.
#include "checks/run_check.h"

#include "support/example.h"

#include <catch2/catch.hpp>

using namespace toehold;
using checks::Severity;

namespace {

model::WoodPost wood_post(double size_in, bool notched) {
    model::WoodPost post;
    post.width_in = size_in;
    post.depth_in = size_in;
    post.notched = notched;
    post.shoe.allowable_moment_lb_in = 9000.0;
    post.shoe.moment_source = "test report";
    return post;
}

}  // namespace

TEST_CASE("a notched 4 x 4 fails, a larger notched post lacks its section, a whole one is fine", "[unit]") {
    catalog::Resolved resolved = test::example_resolved();
    CHECK(test::run_finding("notched-post", resolved).empty());
    resolved.detail.post = wood_post(3.5, true);
    CHECK(test::run_finding("notched-post", resolved).at(0).severity == Severity::fails);
    CHECK(test::run_finding("notched-post", resolved).at(0).clause.ends_with("practice of IRC 2021 R507.10.2"));
    resolved.detail.basis.code = model::BuildingCode::irc_2021;
    CHECK(test::run_finding("notched-post", resolved).at(0).clause == "IRC 2021 R507.10.2");
    resolved.detail.post = wood_post(5.5, true);
    CHECK(test::run_finding("notched-post", resolved).at(0).severity == Severity::missing);
    resolved.detail.post = wood_post(3.5, false);
    CHECK(test::run_finding("notched-post", resolved).empty());
}

TEST_CASE("anchors in treated lumber must state their protection", "[unit]") {
    catalog::Resolved resolved = test::example_resolved();
    CHECK(test::run_finding("corrosion-not-stated", resolved).empty());
    on_deck(resolved.detail).anchors[0].corrosion_protection.clear();
    const auto findings = test::run_finding("corrosion-not-stated", resolved);
    REQUIRE(findings.size() == 1);
    CHECK(findings[0].severity == Severity::missing);
    CHECK(test::about(findings[0]) == "anchors");
    CHECK(test::says(findings[0].message, "anchors A, B, C and D"));
    CHECK(findings[0].clause.find("IBC 2021 2304.10.6") != std::string::npos);
    resolved.detail.basis.code = model::BuildingCode::irc_2021;
    CHECK(test::run_finding("corrosion-not-stated", resolved).at(0).clause.find("R317.3") != std::string::npos);
}

TEST_CASE("stainless screws and untreated lumber need no statement", "[unit]") {
    catalog::Resolved resolved = test::example_resolved();
    on_deck(resolved.detail).anchors[0].corrosion_protection.clear();
    catalog::Resolved stainless = resolved;
    for (catalog::Anchor& anchor : stainless.anchors) anchor.metal.kind = catalog::MetalKind::stainless_steel;
    CHECK(test::run_finding("corrosion-not-stated", stainless).empty());
    resolved.detail.framing.preservative_treated = false;
    CHECK(test::run_finding("corrosion-not-stated", resolved).empty());
}

TEST_CASE("a guard must be 42 in high, 36 in at one- and two-family dwellings", "[published]") {
    // IRC R312 36 in (published-values: 36 in seen), IBC 1015.3 42 in (42 in seen)
    const struct {
        double height_in;
        model::Occupancy occupancy;
        model::BuildingCode code;
        int findings;
        Severity severity;
    } cases[] = {
        {42.0, model::Occupancy::other, model::BuildingCode::ibc_2021, 0, Severity::fails},
        {41.9, model::Occupancy::other, model::BuildingCode::ibc_2021, 1, Severity::fails},
        {36.0, model::Occupancy::other, model::BuildingCode::irc_2021, 1, Severity::fails},
        {36.0, model::Occupancy::one_and_two_family, model::BuildingCode::irc_2021, 0, Severity::fails},
        {35.5, model::Occupancy::one_and_two_family, model::BuildingCode::irc_2021, 1, Severity::fails},
        {35.5, model::Occupancy::one_and_two_family, model::BuildingCode::ibc_2021, 1, Severity::fails},
        {36.0, model::Occupancy::one_and_two_family, model::BuildingCode::ibc_2021, 1, Severity::caution},
        {42.0, model::Occupancy::one_and_two_family, model::BuildingCode::ibc_2021, 0, Severity::caution},
    };
    for (const auto& row : cases) {
        INFO(row.height_in);
        catalog::Resolved resolved = test::example_resolved();
        resolved.detail.guard.height_in = row.height_in;
        resolved.detail.guard.occupancy = row.occupancy;
        resolved.detail.basis.code = row.code;
        const auto findings = test::run_finding("guard-height", resolved);
        REQUIRE(static_cast<int>(findings.size()) == row.findings);
        if (!findings.empty()) CHECK(findings[0].severity == row.severity);
    }
}

TEST_CASE("values of a reported fastener or connector must say where they come from", "[unit]") {
    catalog::Resolved resolved = test::example_resolved();
    CHECK(test::run_finding("missing-evidence", resolved).empty());
    model::ReportedFastener fastener;
    fastener.name = "structural screw";
    on_deck(resolved.detail).anchors[0].fastener = fastener;
    std::get<model::ReportedConnector>(resolved.detail.framing.blocks[1].from_end.connection).report.clear();
    const auto findings = test::run_finding("missing-evidence", resolved);
    REQUIRE(findings.size() == 2);
    CHECK(findings[0].severity == Severity::missing);
    CHECK(test::about(findings[0]) == "fastener structural screw");
    CHECK(test::about(findings[1]) == "block B2 at joist J1");
    fastener.report = "report, table 3";
    on_deck(resolved.detail).anchors[0].fastener = fastener;
    CHECK(test::run_finding("missing-evidence", resolved).size() == 1);
}

TEST_CASE("hardware not chosen yet needs no report, and is called to mind wherever it is", "[unit]") {
    catalog::Resolved resolved = test::example_resolved();
    CHECK(test::run_finding("hardware-not-chosen", resolved).empty());
    auto& end = std::get<model::ReportedConnector>(resolved.detail.framing.blocks[1].from_end.connection);
    end.report.clear();
    end.chosen = false;
    CHECK(test::run_finding("missing-evidence", resolved).empty());
    const auto findings = test::run_finding("hardware-not-chosen", resolved);
    REQUIRE(findings.size() == 1);
    CHECK(findings[0].severity == Severity::caution);
    CHECK(test::about(findings[0]) == "block B2");
    CHECK(test::says(findings[0].message, "The hardware at block B2 is not chosen yet"));
}

TEST_CASE("a wood post's shoe needs its moment and the moment its source", "[unit]") {
    catalog::Resolved resolved = test::example_resolved();
    model::WoodPost post = wood_post(3.5, false);
    resolved.detail.post = post;
    CHECK(test::run_finding("missing-evidence", resolved).empty());
    post.shoe.moment_source.clear();
    resolved.detail.post = post;
    CHECK(test::run_finding("missing-evidence", resolved).size() == 1);
    post.shoe.allowable_moment_lb_in.reset();
    resolved.detail.post = post;
    CHECK(test::run_finding("missing-evidence", resolved).size() == 1);
}

TEST_CASE("a fixed stiffness needs its reason", "[unit]") {
    catalog::Resolved resolved = test::example_resolved();
    resolved.detail.basis.stiffness = model::FixedStiffness{25000.0, 40000.0, "measured"};
    CHECK(test::run_finding("missing-evidence", resolved).empty());
    resolved.detail.basis.stiffness->reason.clear();
    CHECK(test::run_finding("missing-evidence", resolved).size() == 1);
}

TEST_CASE("a plate from another file is pinned, or a caution; changed, or missing evidence", "[unit]") {
    catalog::Resolved resolved = test::example_resolved();
    CHECK(test::run_finding("plate-changed", resolved).empty());
    on_deck(resolved.detail).plate_reference = model::PlateReference{"plates.xml", "P1", "", "ab12"};
    CHECK(test::run_finding("plate-changed", resolved).at(0).severity == Severity::caution);
    on_deck(resolved.detail).plate_reference->sha256 = "ab12";
    CHECK(test::run_finding("plate-changed", resolved).empty());
    on_deck(resolved.detail).plate_reference->sha256 = "cd34";
    CHECK(test::run_finding("plate-changed", resolved).at(0).severity == Severity::missing);
}

TEST_CASE("an anchor in a seam, a face or an end of a member is named, and told to move", "[unit]") {
    catalog::Resolved resolved = test::example_resolved();
    resolved.anchors[1].seat->edge_in = 0.1;
    const auto findings = test::run_finding("decking-only", resolved);
    REQUIRE(findings.size() == 1);
    CHECK(findings[0].severity == Severity::fails);
    CHECK(test::about(findings[0]) == "anchor B");
    CHECK(test::says(findings[0].message, "a seam, a face or an end of block B1"));
}
