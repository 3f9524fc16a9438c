// Findings about what is under the plate: blocks, their ends, decking.
#include "checks/run_check.h"

#include "support/example.h"

#include <catch2/catch.hpp>

using namespace toehold;
using checks::Severity;

namespace {

std::size_t count(const std::vector<checks::Finding>& findings, Severity severity) {
    return static_cast<std::size_t>(
        std::count_if(findings.begin(), findings.end(),
                      [&](const checks::Finding& finding) { return finding.severity == severity; }));
}

const model::EndGrainFasteners four_nails{model::EndGrainFasteners::Kind::nail, 0.162, 3.5, 4, 4.0};

/// Every block end of the example held by nails in end grain alone.
catalog::Resolved nailed() {
    catalog::Resolved resolved = test::example_resolved();
    for (model::Block& block : resolved.detail.framing.blocks) block.from_end.connection = four_nails;
    return resolved;
}

}  // namespace

TEST_CASE("anchors in blocks raise no finding about decking", "[unit]") {
    CHECK(test::run_finding("decking-only", test::example_resolved()).empty());
}

TEST_CASE("a base that reaches no block is fastened to decking only and fails", "[unit]") {
    catalog::Resolved resolved = test::example_resolved();
    for (catalog::Anchor& anchor : resolved.anchors) anchor.seat.reset();
    const auto findings = test::run_finding("decking-only", resolved);
    REQUIRE(findings.size() == 1);
    CHECK(findings[0].severity == Severity::fails);
    CHECK(findings[0].clause.ends_with("practice of IRC 2021 R507.10.1.2"));
    CHECK(test::says(findings[0].message, "blocking"));
}

TEST_CASE("each anchor that misses or falls short of its block is named", "[unit]") {
    catalog::Resolved resolved = test::example_resolved();
    resolved.anchors[1].seat.reset();
    resolved.anchors[2].embedment_in = 0.0;
    const auto findings = test::run_finding("decking-only", resolved);
    REQUIRE(findings.size() == 2);
    CHECK(test::about(findings[0]) == "anchor B");
    CHECK(test::says(findings[0].message, "misses the framing: no block"));
    CHECK(test::says(findings[1].message, "too short"));
}

TEST_CASE("nails in end grain at one end are a caution where hardware holds the other", "[unit]") {
    const auto findings = test::run_finding("end-grain-withdrawal", test::example_resolved());
    CHECK(count(findings, Severity::fails) == 0);
    CHECK(count(findings, Severity::caution) == 2);
}

TEST_CASE("nails in end grain at every end fail where a push runs along the blocks", "[unit]") {
    const auto findings = test::run_finding("end-grain-withdrawal", nailed());
    REQUIRE(count(findings, Severity::fails) == 1);
    CHECK(test::says(findings[0].message, "along the rail"));
}

TEST_CASE("nails in end grain at every end are a caution where no push runs along the blocks", "[unit]") {
    catalog::Resolved resolved = nailed();
    test::push_outward_alone(resolved.detail);
    CHECK(count(test::run_finding("end-grain-withdrawal", resolved), Severity::fails) == 0);
    for (model::Block& block : resolved.detail.framing.blocks) block.along = model::PlanAxis::y;
    CHECK(count(test::run_finding("end-grain-withdrawal", resolved), Severity::fails) == 1);
}

TEST_CASE("hardware at every end leaves nothing to say about end grain", "[unit]") {
    catalog::Resolved resolved = test::example_resolved();
    for (model::Block& block : resolved.detail.framing.blocks) block.to_end.connection = block.from_end.connection;
    CHECK(test::run_finding("end-grain-withdrawal", resolved).empty());
}

TEST_CASE("a block end without joist or connection breaks the path", "[unit]") {
    catalog::Resolved resolved = test::example_resolved();
    CHECK(test::run_finding("no-path-to-joists", resolved).empty());
    resolved.detail.framing.blocks[0].from_end.joist.clear();
    resolved.detail.framing.blocks[1].to_end.connection = std::monostate{};
    const auto findings = test::run_finding("no-path-to-joists", resolved);
    REQUIRE(findings.size() == 2);
    CHECK(count(findings, Severity::fails) == 2);
    CHECK(test::about(findings[0]) == "block B1, lower end");
    CHECK(test::says(findings[1].message, "joist J2"));
}

TEST_CASE("a ledger with nothing that joins the joists to it breaks the path, a beam does not", "[unit]") {
    catalog::Resolved resolved = test::example_resolved();
    resolved.detail.framing.supports = {{"S1", model::JoistSupport::Kind::ledger, -90.0, 0.0, {}},
                                        {"S2", model::JoistSupport::Kind::beam, 20.0, 3.0, {}}};
    const auto findings = test::run_finding("no-path-to-joists", resolved);
    REQUIRE(findings.size() == 1);
    CHECK(test::about(findings[0]) == "ledger S1");
}

TEST_CASE("a rim that carries a block must be tied to the joists by more than nails in their ends", "[unit]") {
    catalog::Resolved resolved = test::example_resolved();
    resolved.detail.framing.rims = {{"R1", 10.0, -20.0, 20.0, 1.5, 9.25, "southern-pine", "no-2", 1, {}}};
    CHECK(test::run_finding("no-path-to-joists", resolved).empty());
    resolved.detail.framing.blocks[0].to_end.joist = "R1";
    REQUIRE(test::run_finding("no-path-to-joists", resolved).size() == 1);
    CHECK(test::about(test::run_finding("no-path-to-joists", resolved)[0]) == "rim R1");
    resolved.detail.framing.rims[0].connection = four_nails;
    CHECK(test::run_finding("no-path-to-joists", resolved).empty());
    const auto findings = test::run_finding("end-grain-withdrawal", resolved);
    REQUIRE(count(findings, Severity::fails) == 1);
    CHECK(test::about(findings.back()) == "rim R1");
    resolved.detail.framing.rims[0].connection = resolved.detail.framing.blocks[0].from_end.connection;
    CHECK(count(test::run_finding("end-grain-withdrawal", resolved), Severity::fails) == 0);
}

TEST_CASE("an anchor in a rim loads it too", "[unit]") {
    catalog::Resolved resolved = test::example_resolved();
    resolved.detail.framing.rims = {{"R1", 10.0, -20.0, 20.0, 1.5, 9.25, "southern-pine", "no-2", 1, {}}};
    resolved.detail.framing.rims[0].connection = four_nails;
    resolved.anchors[0].seat = model::Seat{4, 0.75, 10.0};
    CHECK(count(test::run_finding("end-grain-withdrawal", resolved), Severity::fails) == 1);
}

TEST_CASE("joists without ends or supports leave the review incomplete, and it says what to add", "[unit]") {
    catalog::Resolved resolved = test::example_resolved();
    auto findings = test::run_finding("joists-not-described", resolved);
    REQUIRE(findings.size() == 1);
    CHECK(findings[0].severity == Severity::missing);
    CHECK(test::says(findings[0].message, "`from` and `to`"));
    CHECK(test::says(findings[0].message, "ledger or beam"));
    resolved.detail.framing.joists->from_in = -90.0;
    resolved.detail.framing.joists->to_in = 20.0;
    findings = test::run_finding("joists-not-described", resolved);
    REQUIRE(findings.size() == 1);
    CHECK_FALSE(test::says(findings[0].message, "`from` and `to`"));
    resolved.detail.framing.supports = {{"S1", model::JoistSupport::Kind::beam, -80.0, 3.0, {}},
                                        {"S2", model::JoistSupport::Kind::beam, 10.0, 3.0, {}}};
    CHECK(test::run_finding("joists-not-described", resolved).empty());
    resolved.detail.framing.joists.reset();
    CHECK(test::run_finding("joists-not-described", resolved).size() == 1);
}

TEST_CASE("reported values at supports, rims and boards must say where they come from", "[unit]") {
    catalog::Resolved resolved = test::example_resolved();
    CHECK(test::run_finding("missing-evidence", resolved).empty());
    model::ReportedConnector nameless;
    nameless.uplift_lb = 500.0;
    resolved.detail.framing.supports = {{"S1", model::JoistSupport::Kind::ledger, -90.0, 0.0, nameless}};
    on_deck(resolved.detail).layers.decking->fastening = model::DeckingFastening{0.164, 2.5, 2, 5.5, 120.0, {}};
    const auto findings = test::run_finding("missing-evidence", resolved);
    REQUIRE(findings.size() == 2);
    CHECK(test::about(findings[0]) == "joists at ledger S1");
    CHECK(test::about(findings[1]) == "boards");
}

TEST_CASE("composite decking must name its evidence, wood need not", "[unit]") {
    catalog::Resolved resolved = test::example_resolved();
    CHECK(test::run_finding("composite-evidence", resolved).empty());
    on_deck(resolved).decking->kind = catalog::DeckingKind::plastic_composite;
    const auto findings = test::run_finding("composite-evidence", resolved);
    REQUIRE(findings.size() == 1);
    CHECK(findings[0].severity == Severity::missing);
    on_deck(resolved.detail).layers.decking->evidence = "ASTM D7032 label, installed to the maker's instructions";
    CHECK(test::run_finding("composite-evidence", resolved).empty());
}
