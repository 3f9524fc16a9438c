#include "review/verdict.h"
#include "wording/verdict.h"

#include <catch2/catch.hpp>

#include <limits>

namespace {

using namespace toehold;
using checks::Severity;
using checks::Status;

checks::CheckResult result(const std::string& id, double demand, double capacity) {
    checks::CheckResult made;
    made.id = id;
    made.title = format::verbatim("title of " + id);
    made.part = model::anchor_part("A");
    made.demand = demand;
    made.capacity = capacity;
    checks::conclude(made);
    return made;
}

checks::CheckResult without_evidence(const std::string& id) {
    checks::CheckResult made = result(id, 0.0, 0.0);
    made.status = Status::missing_evidence;
    return made;
}

review::Review concluded(std::vector<checks::CheckResult> results, std::vector<checks::Finding> findings) {
    review::Review made;
    made.checks = std::move(results);
    made.findings = std::move(findings);
    review::sort_worst_first(made.checks);
    review::sort_gravest_first(made.findings);
    review::conclude(made);
    return made;
}

checks::Finding finding(Severity severity) {
    return {"rule", severity, "common practice", format::verbatim("a sentence"), {model::PartKind::base}};
}

}  // namespace

TEST_CASE("all checks hold: adequate, and the nearest to its limit governs", "[unit]") {
    const review::Review made = concluded({result("a", 50, 100), result("b", 90, 100)}, {finding(Severity::caution)});
    CHECK(made.verdict == review::Verdict::adequate);
    CHECK(made.governing.check == "b");
    CHECK(made.governing.ratio == Approx(0.9));
}

TEST_CASE("one failure makes it inadequate, and no path outranks any ratio", "[unit]") {
    const review::Review made = concluded({result("a", 500, 100), result("b", 1, 0), result("c", 1, 2)}, {});
    CHECK(made.verdict == review::Verdict::inadequate);
    CHECK(made.governing.check == "b");
    CHECK(made.checks[0].status == Status::no_path);
    CHECK(format::english(wording::verdict_reason(made)).find("no load path") != std::string::npos);
}

TEST_CASE("missing evidence makes it incomplete, never adequate", "[unit]") {
    CHECK(concluded({result("a", 1, 2), without_evidence("b")}, {}).verdict == review::Verdict::incomplete);
    CHECK(concluded({result("a", 1, 2)}, {finding(Severity::missing)}).verdict == review::Verdict::incomplete);
    CHECK(concluded({}, {}).verdict == review::Verdict::incomplete);
}

TEST_CASE("a failure outranks missing evidence, and a finding alone can fail the detail", "[unit]") {
    CHECK(concluded({result("a", 2, 1), without_evidence("b")}, {}).verdict == review::Verdict::inadequate);
    CHECK(concluded({result("a", 1, 2)}, {finding(Severity::fails)}).verdict == review::Verdict::inadequate);
}

TEST_CASE("the verdict names first what cannot be put together, and then the checks that fail", "[unit]") {
    checks::Finding zinc = finding(Severity::fails), washer = zinc;
    zinc.id = "a-rule-of-protection";
    zinc.message = format::verbatim("Zinc does not do.");
    washer.cause = checks::Cause::geometry;
    washer.message = format::verbatim("The washer lies on the weld.");
    const review::Review made = concluded({result("a", 3, 1), result("b", 2, 1)}, {zinc, washer});
    REQUIRE(made.facts.first_finding);
    CHECK(made.facts.first_finding->rule == "rule");
    CHECK(made.governing.check == "a");
    CHECK(format::english(wording::verdict_reason(made)) ==
          "The first cause: The washer lies on the weld. Also: 2 checks fail, first title of a, anchor A: "
          "demand/capacity 3.00.");
    CHECK(format::english(wording::cause(made)) == "The washer lies on the weld. Also: title of a, anchor A");
    const review::Review only = concluded({result("a", 1, 2)}, {zinc});
    CHECK(only.facts.first_finding->rule == "a-rule-of-protection");
    CHECK(format::english(wording::verdict_reason(only)) == "Zinc does not do.");
    CHECK_FALSE(concluded({result("a", 3, 1)}, {zinc}).facts.first_finding);
}

TEST_CASE("a ratio of exactly one holds; no demand on no capacity holds", "[unit]") {
    CHECK(result("a", 100, 100).status == Status::holds);
    CHECK(result("a", 100.00005, 100).status == Status::holds);  // the digits a change of unit costs
    CHECK(result("a", 100.0005, 100).status == Status::fails);
    CHECK(result("a", 0, 0).status == Status::holds);
    CHECK(result("a", 1, 0).ratio == std::numeric_limits<double>::infinity());
}
