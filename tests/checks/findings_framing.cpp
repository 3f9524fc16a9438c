// Findings about what is under the plate: blocks, their ends, decking.
#include "run_check.h"

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
    CHECK(findings[0].clause == "IRC 2021 R507.10.1.2");
    CHECK(findings[0].message.find("blocking") != std::string::npos);
}

TEST_CASE("each anchor that misses or falls short of its block is named", "[unit]") {
    catalog::Resolved resolved = test::example_resolved();
    resolved.anchors[1].seat.reset();
    resolved.anchors[2].embedment_in = 0.0;
    const auto findings = test::run_finding("decking-only", resolved);
    REQUIRE(findings.size() == 2);
    CHECK(findings[0].subject == "anchor B");
    CHECK(findings[0].message.find("no block") != std::string::npos);
    CHECK(findings[1].message.find("too short") != std::string::npos);
}

TEST_CASE("nails in end grain at one end are a caution where hardware holds the other", "[unit]") {
    const auto findings = test::run_finding("end-grain-withdrawal", test::example_resolved());
    CHECK(count(findings, Severity::fails) == 0);
    CHECK(count(findings, Severity::caution) == 2);
}

TEST_CASE("nails in end grain at every end fail where a push runs along the blocks", "[unit]") {
    const auto findings = test::run_finding("end-grain-withdrawal", nailed());
    REQUIRE(count(findings, Severity::fails) == 1);
    CHECK(findings[0].message.find("along the rail") != std::string::npos);
}

TEST_CASE("nails in end grain at every end are a caution where no push runs along the blocks", "[unit]") {
    catalog::Resolved resolved = nailed();
    resolved.detail.loads.directions = model::Directions::outward;
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
    CHECK(findings[0].subject == "block B1, lower end");
    CHECK(findings[1].message.find("joist J2") != std::string::npos);
}

TEST_CASE("composite decking must name its evidence, wood need not", "[unit]") {
    catalog::Resolved resolved = test::example_resolved();
    CHECK(test::run_finding("composite-evidence", resolved).empty());
    resolved.decking->kind = catalog::DeckingKind::plastic_composite;
    const auto findings = test::run_finding("composite-evidence", resolved);
    REQUIRE(findings.size() == 1);
    CHECK(findings[0].severity == Severity::missing);
    resolved.detail.layers.decking->evidence = "ASTM D7032 label, installed to the maker's instructions";
    CHECK(test::run_finding("composite-evidence", resolved).empty());
}
