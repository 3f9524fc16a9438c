// The shipped situations: which hold and which must not, for the reasons an engineer would give beforehand.
#include "review/shipped_reviews.h"
#include "xml/detail/detail_file.h"

#include <catch2/catch.hpp>

#include <algorithm>
#include <filesystem>

using namespace toehold;
using checks::Severity;
using checks::Status;
using review::Verdict;

namespace {

bool fails(const review::Review& review, const std::string& check) {
    return std::any_of(review.checks.begin(), review.checks.end(), [&](const checks::CheckResult& result) {
        return result.id == check && (result.status == Status::fails || result.status == Status::no_path);
    });
}

bool forbids(const review::Review& review, const std::string& rule) {
    return std::any_of(review.findings.begin(), review.findings.end(), [&](const checks::Finding& finding) {
        return finding.id == rule && finding.severity == Severity::fails;
    });
}

/// Whether something of this kind hands the load on to something of that kind.
bool hands_on(const review::Review& review, const std::string& from, const std::string& to) {
    return std::any_of(review.load_path.begin(), review.load_path.end(), [&](const review::PathLink& link) {
        return model::kind_word(link.link.from.kind) == from && model::kind_word(link.link.to.kind) == to;
    });
}

void check_holds(const std::string& name) {
    INFO(name);
    const review::Review review = test::shipped_review(name);
    CHECK(review.verdict == Verdict::adequate);
    CHECK(hands_on(review, "post", "plate"));
    CHECK(hands_on(review, "plate", "anchor"));
    CHECK(hands_on(review, "anchor", "block"));
    CHECK(hands_on(review, "block", "joist"));
    CHECK(hands_on(review, "joist", "ledger"));
    CHECK(hands_on(review, "joist", "beam"));
}

}  // namespace

TEST_CASE("bases between joists on good blocks hold, down to ledger and beam", "[unit]") {
    check_holds("heron-landing-lags-in-deep-blocks");
    check_holds("heron-landing-through-bolts");
    check_holds("heron-landing-two-flat-blocks");
}

TEST_CASE("a public walk's base holds under the code's 50 plf", "[unit]") {
    check_holds("heron-landing-public-boardwalk");
    // 50 plf over 6 ft of rail is more than the 200 lb at one point.
    const review::Review review = test::shipped_review("heron-landing-public-boardwalk");
    CHECK(std::any_of(review.demand->cases.begin(), review.demand->cases.end(),
                      [](const demand::LoadCase& load) { return load.push_lb == 50.0 * 6.0 && !load.covered_by; }));
}

TEST_CASE("every whole detail of version 1 gets a verdict, whatever it is", "[property]") {
    const std::filesystem::path folder = std::filesystem::path(TOEHOLD_TEST_FOLDER) / "files/version_1";
    int reviewed = 0;
    for (const std::filesystem::directory_entry& entry : std::filesystem::directory_iterator(folder)) {
        if (entry.path().extension() != ".xml") continue;
        const xml::DetailRead read = xml::read_detail(entry.path());
        if (!read.detail || !read.problems.empty()) continue;                   // a library of plates
        if (entry.path().stem() == "rectangular-tube-through-bolts") continue;  // names rows that no catalog has
        INFO(entry.path().filename().string());
        CHECK_NOTHROW(review::evaluate(test::resolved_by_shipped(*read.detail), ""));
        ++reviewed;
    }
    CHECK(reviewed >= 25);
}

TEST_CASE("bases over a joist and beside the rim hold, down to ledger and beam", "[unit]") {
    check_holds("heron-landing-over-a-joist");
    check_holds("heron-landing-beside-the-rim");
}

TEST_CASE("bases at a corner and on a cantilever hold, down to ledger and beam", "[unit]") {
    check_holds("heron-landing-corner");
    check_holds("heron-landing-cantilever");
}

TEST_CASE("blocks on nails in end grain alone do not hold, and the rule of end grain says why", "[unit]") {
    // IRC 2021 R507.10.1.1: no connection may rely on fasteners in end-grain withdrawal alone.
    const review::Review review = test::shipped_review("heron-landing-end-nailed-blocks");
    CHECK(review.verdict == Verdict::inadequate);
    CHECK(fails(review, "member-end-connection"));
    CHECK(forbids(review, "end-grain-withdrawal"));
}

TEST_CASE("anchors in boards only, or over no block, reach nothing", "[unit]") {
    for (const char* name : {"heron-landing-decking-only", "heron-landing-heel-block-only"}) {
        INFO(name);
        const review::Review review = test::shipped_review(name);
        CHECK(review.verdict == Verdict::inadequate);
        CHECK(fails(review, "anchor-seat"));
    }
}

TEST_CASE("anchors near the edge of a doubled rim's piece, and small bolts by the standards alone, do not hold",
          "[unit]") {
    // 4 D of 7/16 in is 1 3/4 in to a loaded edge, and a 1 1/2 in piece has 3/4 in (NDS 2018 Table 12.5.1C).
    const review::Review rim = test::shipped_review("heron-landing-doubled-rim");
    CHECK(rim.verdict == Verdict::inadequate);
    CHECK(fails(rim, "anchor-spacing"));
    const review::Review angles = test::shipped_review("heron-landing-bolted-angles");
    CHECK(angles.verdict == Verdict::inadequate);
    CHECK(fails(angles, "member-end-connection"));
}
