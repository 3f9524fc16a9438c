// Comparisons against pairs of reviews made by hand.
#include "review/comparison.h"

#include "review/shipped_reviews.h"
#include "review/verdict.h"
#include "support/compare.h"
#include "wording/outcomes.h"

#include <algorithm>

using namespace toehold;
using checks::Severity;
using checks::Status;
using review::CheckDifference;
using review::Comparison;
using review::Verdict;

namespace {

/// By its own words: which part it is does not matter here.
model::PartId about(const std::string& words) { return {model::PartKind::plug_in, words}; }

checks::CheckResult result(const std::string& id, const std::string& part, double demand, double capacity) {
    checks::CheckResult made;
    made.id = id;
    made.title = format::verbatim("title of " + id);
    made.part = about(part);
    made.unit = "lb";
    made.demand = demand;
    made.capacity = capacity;
    checks::conclude(made);
    return made;
}

checks::CheckResult without_evidence(const std::string& id, const std::string& part, double demand) {
    checks::CheckResult made = result(id, part, demand, 0.0);
    made.status = Status::missing_evidence;
    return made;
}

review::Review made_review(std::vector<checks::CheckResult> results, std::vector<checks::Finding> findings = {}) {
    review::Review made;
    made.checks = std::move(results);
    made.findings = std::move(findings);
    made.no_demand = format::verbatim("made by hand");
    review::sort_worst_first(made.checks);
    review::sort_gravest_first(made.findings);
    review::conclude(made);
    return made;
}

/// A demand of these pulls, on anchors A, B ...
void put_pulls(review::Review& review, const std::vector<double>& pulls_lb) {
    review.demand.emplace();
    for (std::size_t index = 0; index < pulls_lb.size(); ++index) {
        catalog::Anchor anchor;
        anchor.id = std::string(1, static_cast<char>('A' + static_cast<int>(index)));
        review.resolved.anchors.push_back(anchor);
        demand::AnchorEnvelope envelope;
        envelope.tension_lb = pulls_lb[index];
        envelope.direction_rad = 0.5;
        review.demand->anchors.push_back(envelope);
    }
}

Comparison compared(const review::Review& first, const review::Review& second) {
    return review::compare(first, "first.xml", second, "second.xml");
}

std::string names(const std::vector<CheckDifference>& checks) {
    std::string text;
    for (const CheckDifference& one : checks) text += (text.empty() ? "" : ", ") + one.id + " " + model::key(one.part);
    return text;
}

checks::Finding finding(const std::string& id, const std::string& part, const std::string& message,
                        Severity severity = Severity::caution) {
    checks::Finding made;
    made.id = id;
    made.severity = severity;
    made.part = about(part);
    made.clause = "common practice";
    made.message = format::verbatim(message);
    return made;
}

}  // namespace

TEST_CASE("checks are matched by id and part, those that turn first, then by the change of ratio", "[unit]") {
    const review::Review first = made_review({result("bend", "post", 50, 100), result("pull", "anchor A", 150, 100),
                                              result("pull", "anchor B", 90, 100), result("weld", "foot", 20, 100),
                                              result("same", "plate", 10, 100)});
    const review::Review second = made_review({result("bend", "post", 80, 100), result("pull", "anchor A", 60, 100),
                                               result("pull", "anchor B", 120, 100), result("weld", "foot", 90, 100),
                                               result("same", "plate", 10, 100)});
    const Comparison comparison = compared(first, second);
    // Ratios: A 1.5 to 0.6, B 0.9 to 1.2 turn; weld +0.7, bend +0.3 do not; same 0.
    CHECK(names(comparison.checks) == "pull anchor A, pull anchor B, weld foot, bend post, same plate");
    CHECK(comparison.checks[0].status_turns());
    CHECK(comparison.checks[1].status_turns());
    CHECK_FALSE(comparison.checks[2].status_turns());
    CHECK_FALSE(comparison.checks[3].same());
    CHECK(comparison.checks[4].same());
    CHECK(comparison.checks[0].first->demand == 150.0);
    CHECK(comparison.checks[0].second->demand == 60.0);
    CHECK_FALSE(comparison.verdict_turns());
}

TEST_CASE("the verdict turns with what a side does not hold", "[unit]") {
    const review::Review holds = made_review({result("pull", "anchor A", 90, 100)});
    const review::Review fails = made_review({result("pull", "anchor A", 110, 100)});
    CHECK(compared(holds, fails).verdict_turns());
    CHECK_FALSE(compared(fails, fails).verdict_turns());
    const Comparison comparison = compared(fails, holds);
    CHECK(comparison.first.verdict == Verdict::inadequate);
    CHECK(comparison.second.verdict == Verdict::adequate);
    CHECK(comparison.first.label == "first.xml");
    CHECK(comparison.first.governing.ratio == 1.1);
}

TEST_CASE("what stands on one side alone turns; no path and fails do not turn into each other", "[unit]") {
    const review::Review first = made_review({result("pull", "anchor A", 110, 100), result("end", "block B1", 5, 0)});
    const review::Review second = made_review({result("pull", "anchor A", 110, 0), result("end", "block B2", 5, 0)});
    const Comparison comparison = compared(first, second);
    CHECK(names(comparison.checks) == "end block B1, end block B2, pull anchor A");
    CHECK_FALSE(comparison.checks[0].second);
    CHECK_FALSE(comparison.checks[1].first);
    CHECK(format::english(comparison.checks[1].title) == "title of end");
    CHECK_FALSE(comparison.checks[2].status_turns());
    CHECK_FALSE(comparison.checks[2].same());
}

TEST_CASE("two infinite ratios are no change, and missing evidence has no ratio", "[unit]") {
    const review::Review first = made_review({result("a", "x", 5, 0), without_evidence("b", "x", 5)});
    const review::Review second = made_review({result("a", "x", 6, 0), without_evidence("b", "x", 5)});
    const Comparison comparison = compared(first, second);
    CHECK(names(comparison.checks) == "a x, b x");
    CHECK_FALSE(comparison.checks[0].same());
    CHECK(comparison.checks[1].same());
    const Comparison found = compared(first, made_review({result("a", "x", 5, 0), result("b", "x", 5, 10)}));
    REQUIRE(found.checks[0].id == "b");
    CHECK(found.checks[0].status_turns());
}

TEST_CASE("a check that says two things of one part is matched by their aspects", "[unit]") {
    const auto distance = [](const std::string& title, double demand_in) {
        checks::CheckResult made = result("spacing", "anchor A", demand_in, 10.0);
        made.aspect = title;
        return made;
    };
    const review::Review first = made_review({distance("edge", 5.0), distance("row", 9.0)});
    const review::Review second = made_review({distance("edge", 8.0), distance("row", 4.0)});
    for (const CheckDifference& one : compared(first, second).checks) {
        CHECK(one.first->aspect == one.second->aspect);
    }
}

TEST_CASE("several results of one check on one part are matched worst with worst", "[unit]") {
    const review::Review first = made_review({result("pull", "A", 90, 100), result("pull", "A", 40, 100)});
    const review::Review second = made_review({result("pull", "A", 45, 100), result("pull", "A", 95, 100)});
    const Comparison comparison = compared(first, second);
    REQUIRE(comparison.checks.size() == 2);
    for (const CheckDifference& one : comparison.checks) CHECK(one.second->demand - one.first->demand == 5.0);
}

TEST_CASE("the last digits of a solve are no difference", "[unit]") {
    const review::Review first = made_review({result("pull", "A", 90.0, 100)});
    CHECK(compared(first, made_review({result("pull", "A", 90.0 * (1 + 1e-12), 100)})).checks[0].same());
    CHECK_FALSE(compared(first, made_review({result("pull", "A", 90.0 * (1 + 1e-6), 100)})).checks[0].same());
}

TEST_CASE("findings that both sides say alike are left out, others stand beside their partner", "[unit]") {
    const review::Review first =
        made_review({}, {finding("rust", "A", "say how"), finding("rust", "B", "say how"), finding("notch", "", "cut"),
                         finding("grain", "B1", "two nails"), finding("grain", "B1", "end split")});
    const review::Review second =
        made_review({}, {finding("rust", "A", "say how"), finding("rust", "B", "say how", Severity::missing),
                         finding("grain", "B1", "end split"), finding("grain", "B1", "three nails")});
    const Comparison comparison = compared(first, second);
    REQUIRE(comparison.findings.size() == 3);
    for (const review::FindingDifference& one : comparison.findings) {
        const checks::Finding& named = one.first ? *one.first : *one.second;
        INFO(named.id << ": " << format::english(named.message));
        if (named.id == "rust") CHECK(one.second->severity == Severity::missing);
        if (named.id == "grain")
            CHECK(format::english(one.first->message) + format::english(one.second->message) == "two nailsthree nails");
        if (named.id == "notch") CHECK_FALSE(one.second);
    }
    CHECK(compared(second, first).findings.size() == 3);
}

TEST_CASE("the sentences name the largest pull of each side, in both systems", "[unit]") {
    review::Review first = made_review({});
    review::Review second = made_review({});
    put_pulls(first, {100.0, 2000.0, 50.0});
    put_pulls(second, {1500.0, 1000.0});
    second.resolved.detail.basis.method = model::Method::lrfd;
    review::conclude(first);
    review::conclude(second);
    const Comparison comparison = compared(first, second);
    const std::vector<format::Phrase> sentences = wording::anchor_changes(comparison);
    REQUIRE(sentences.size() == 3);
    // 1 lbf = 4.448 222 N (NIST SP 811, 2008, B.8): 2000 lb 8896 N, 1500 lb 6672 N; a quarter less.
    CHECK(format::english(sentences[0]) ==
          "Largest tension: 2000 lb on anchor B in the first, 1500 lb on anchor A in the second: 25% less.");
    CHECK(format::text(sentences[0], {units::System::si, nullptr}) ==
          "Largest tension: 8896 N on anchor B in the first, 6672 N on anchor A in the second: 25% less.");
    CHECK(format::english(sentences[1]) == "The first has 3 anchors, the second 2.");
    CHECK(format::english(sentences[2]).find("LRFD") != std::string::npos);
    REQUIRE(comparison.first.facts.largest_tension);
    CHECK(comparison.first.facts.largest_tension->part == model::anchor_part("B"));
    CHECK(comparison.first.facts.largest_tension->direction_rad == 0.5);
    const Comparison none = compared(made_review({}), first);
    CHECK_FALSE(none.first.facts.largest_tension);
    CHECK(format::english(wording::anchor_changes(none).at(0)) == "No demand was found in the first: made by hand.");
}

TEST_CASE("a shipped detail against itself, and against itself on another basis", "[unit]") {
    const catalog::Resolved resolved = test::shipped_detail("heron-landing-lags-in-deep-blocks");
    const review::Review first = review::evaluate(resolved, "");
    const Comparison same = compared(first, first);
    CHECK(same.input.empty());
    CHECK(same.findings.empty());
    CHECK(std::all_of(same.checks.begin(), same.checks.end(), [](const CheckDifference& one) { return one.same(); }));
    CHECK(same.checks.size() == first.checks.size());

    model::BaseDetail other = resolved.detail;
    other.basis.load_duration = 1.6;
    const review::Review second = review::evaluate(*catalog::resolve(other, test::shipped_catalog()).resolved, "");
    const Comparison duration = compared(first, second);
    REQUIRE(duration.input.size() == 1);
    CHECK(duration.input[0].place == "basis / load-duration");
    CHECK(duration.input[0].first.empty());
    CHECK(duration.input[0].second == "1.6");
    // Withdrawal takes C_D in full (NDS 2018 Table 11.3.1); the same pull then has 1.6 of the capacity.
    for (const CheckDifference& one : duration.checks) {
        if (one.id != "anchor-withdrawal") continue;
        CHECK_CLOSE(one.second->capacity, 1.6 * one.first->capacity, 1e-12, 0.0);
        CHECK_CLOSE(one.second->demand, one.first->demand, 1e-12, 0.0);
    }
}

TEST_CASE("every result of both sides is in the comparison, once", "[property]") {
    const review::Review first = review::evaluate(test::shipped_detail("heron-landing-two-flat-blocks"), "");
    const review::Review second = review::evaluate(test::shipped_detail("heron-landing-bolted-angles"), "");
    const Comparison comparison = compared(first, second);
    std::size_t firsts = 0;
    std::size_t seconds = 0;
    bool turning = true;
    for (const CheckDifference& one : comparison.checks) {
        firsts += one.first ? 1U : 0U;
        seconds += one.second ? 1U : 0U;
        CHECK((turning || !one.status_turns()));
        turning = one.status_turns();
        if (one.first && one.second) CHECK(one.first->part == one.second->part);
    }
    CHECK(firsts == first.checks.size());
    CHECK(seconds == second.checks.size());
}
