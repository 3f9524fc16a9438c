#include "checks/run_check.h"

#include "support/compare.h"
#include "support/example.h"

using namespace toehold;
using checks::Status;

namespace {

/// 2000 lb on B2 over 5 in2 of peak pressure: 400 psi.
demand::Demand pressing(const catalog::Resolved& resolved) {
    return test::example_demand(resolved, {500.0, 0.0, 50.0}, {0.0, 2000.0});
}

}  // namespace

TEST_CASE("wood decking bears to its reference value across the grain, wet", "[unit]") {
    const catalog::Resolved resolved = test::example_resolved();
    const auto results = test::run_check("bearing-decking", resolved, pressing(resolved));
    REQUIRE(results.size() == 1);
    // Southern pine Fc,perp 565 psi (NDS Supplement Table 4B) x 0.67 = 378.55 psi against 400
    CHECK_CLOSE(results[0].demand, 400.0, 1e-12, 0.0);
    CHECK_CLOSE(results[0].capacity, 378.55, 1e-12, 0.0);
    CHECK(results[0].status == Status::fails);
    REQUIRE(results[0].link);
    CHECK(results[0].link->from == model::PartId{model::PartKind::plate});
    CHECK(results[0].link->to == model::PartId{model::PartKind::decking});
    CHECK(format::english(results[0].link->by) == "bearing");
    CHECK(results[0].direction_deg == Approx(90.0));
}

TEST_CASE("dry decking bears its whole reference value, whatever the load's duration", "[unit]") {
    catalog::Resolved resolved = test::example_resolved();
    resolved.detail.basis.moisture = model::Moisture::dry;
    resolved.detail.basis.load_duration = 1.6;
    const auto results = test::run_check("bearing-decking", resolved, pressing(resolved));
    CHECK_CLOSE(results.at(0).capacity, 565.0, 1e-12, 0.0);
    CHECK(results.at(0).status == Status::holds);
}

TEST_CASE("composite decking without a value may not bear, which is evidence missing, and says what would do",
          "[unit]") {
    catalog::Resolved resolved = test::example_resolved();
    on_deck(resolved).decking->kind = catalog::DeckingKind::plastic_composite;
    on_deck(resolved).decking->may_bear = false;
    const auto results = test::run_check("bearing-decking", resolved, pressing(resolved));
    CHECK(results.at(0).status == Status::missing_evidence);
    CHECK(test::says(results.at(0).note, "set packing through the boards"));
}

TEST_CASE("composite decking without a bearing value is missing evidence, not a guess", "[unit]") {
    catalog::Resolved resolved = test::example_resolved();
    on_deck(resolved).decking->kind = catalog::DeckingKind::plastic_composite;
    on_deck(resolved).decking->bearing_psi = 0.0;
    const auto results = test::run_check("bearing-decking", resolved, pressing(resolved));
    CHECK(results.at(0).status == Status::missing_evidence);
    CHECK(results.at(0).capacity == 0.0);
}

TEST_CASE("a composite's reported value takes no wood factor", "[unit][B5]") {
    catalog::Resolved resolved = test::example_resolved();
    on_deck(resolved).decking->kind = catalog::DeckingKind::plastic_composite;
    on_deck(resolved).decking->bearing_psi = 500.0;
    CHECK_CLOSE(test::run_check("bearing-decking", resolved, pressing(resolved)).at(0).capacity, 500.0, 1e-12, 0.0);
    resolved.detail.basis.method = model::Method::lrfd;
    CHECK_CLOSE(test::run_check("bearing-decking", resolved, pressing(resolved)).at(0).capacity, 800.0, 1e-12, 0.0);
}

TEST_CASE("a bearing value of the boards' report is used as it stands, of wood too", "[unit]") {
    catalog::Resolved resolved = test::example_resolved();
    on_deck(resolved.detail).layers.decking->bearing_psi = 410.0;
    on_deck(resolved.detail).layers.decking->report = "test report, table 3";
    on_deck(resolved).decking->bearing_psi = 410.0;  // as `resolve` puts it there
    CHECK_CLOSE(test::run_check("bearing-decking", resolved, pressing(resolved)).at(0).capacity, 410.0, 1e-12, 0.0);
    on_deck(resolved).decking->kind = catalog::DeckingKind::plastic_composite;
    CHECK(test::says(test::run_check("bearing-decking", resolved, pressing(resolved)).at(0).note, "soften in the sun"));
    CHECK(test::run_finding("missing-evidence", resolved).empty());
    on_deck(resolved.detail).layers.decking->report.clear();
    REQUIRE(test::run_finding("missing-evidence", resolved).size() == 1);
    CHECK(test::run_finding("missing-evidence", resolved)[0].severity == checks::Severity::missing);
}

TEST_CASE("every shim is checked as the decking is", "[unit]") {
    catalog::Resolved resolved = test::example_resolved();
    on_deck(resolved).shims = {*on_deck(resolved).decking, *on_deck(resolved).decking};
    on_deck(resolved).shims[1].bearing_psi = 0.0;
    const auto results = test::run_check("bearing-decking", resolved, pressing(resolved));
    REQUIRE(results.size() == 3);
    CHECK(results[1].part == model::PartId{model::PartKind::shim, "1"});
    CHECK(results[2].status == Status::missing_evidence);
}

TEST_CASE("a plate on the framing itself has no decking to check", "[unit]") {
    catalog::Resolved resolved = test::example_resolved();
    on_deck(resolved).decking.reset();
    on_deck(resolved.detail).layers.decking.reset();
    CHECK(test::run_check("bearing-decking", resolved, pressing(resolved)).empty());
}
