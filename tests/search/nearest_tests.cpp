// The nearest miss against every candidate reviewed whole.
#include "search/nearest/nearest.h"

#include "review/review.h"
#include "search/nearest/bears_on.h"
#include "search/ranges/ranges.h"

#include "support/contains.h"
#include "support/shipped.h"

#include <catch2/catch.hpp>

#include <algorithm>

using namespace toehold;

namespace {

search::Space space_of(const std::string& demo, const std::vector<std::string>& texts) {
    search::Ranges ranges;
    for (const std::string& text : texts) REQUIRE(search::parse_range(text, test::shipped_catalog(), ranges).empty());
    return search::make_space(test::shipped_detail(demo), ranges, test::shipped_catalog());
}

std::vector<search::Judgement> judged(const search::Space& space) {
    std::vector<search::Judgement> all;
    for (search::Candidate candidate = 0; candidate < search::size(space); ++candidate)
        all.push_back(search::judge(space, test::shipped_catalog(), candidate));
    return all;
}

double worst_ratio(const search::Space& space, search::Candidate candidate) {
    const review::Review review = review::evaluate(test::resolved_by_shipped(*search::detail_of(space, candidate)), "");
    double worst = 0.0;
    for (const checks::CheckResult& result : review.checks) {
        if (result.status == checks::Status::fails || result.status == checks::Status::no_path)
            worst = std::max(worst, result.ratio);
    }
    return worst;
}

}  // namespace

TEST_CASE("screws too short in every length tried: the longest comes nearest", "[unit]") {
    const search::Space space = space_of("heron-landing-lags-in-deep-blocks", {"length=4,6,5"});
    const std::vector<search::Judgement> all = judged(space);
    const auto nearest = search::nearest_miss(space, test::shipped_catalog(), all);
    REQUIRE(nearest.has_value());
    CHECK(nearest->candidate == 1);  // 6 in
    CHECK(nearest->ratio == worst_ratio(space, 1));
    CHECK(nearest->ratio < worst_ratio(space, 0));
    CHECK(nearest->ratio < worst_ratio(space, 2));
    CHECK(nearest->ratio > 1.0);
    CHECK(nearest->failing > 0);
    CHECK_FALSE(nearest->title.empty());
    CHECK(nearest->would_change == search::would_change(space, 1, nearest->limit, nearest->ratio));
}

TEST_CASE("where one holds nothing misses, and where no choice goes together nothing is near", "[unit]") {
    const search::Space space = space_of("heron-landing-lags-in-deep-blocks", {"length=6"});
    search::Judgement one;
    one.holds = true;
    CHECK_FALSE(search::nearest_miss(space, test::shipped_catalog(), {one}).has_value());
    one.holds = false;
    one.stage = search::Stage::choice;
    CHECK_FALSE(search::nearest_miss(space, test::shipped_catalog(), {one}).has_value());
}

TEST_CASE("a reader is told whether the last of a range is used, and what was not varied", "[unit]") {
    const search::Space space = space_of("heron-landing-lags-in-deep-blocks", {"length=4,6", "plate=9x9"});
    const std::string withdrawal = format::english(search::would_change(space, 1, "anchor-withdrawal", 1.25));
    CHECK(
        withdrawal ==
        "The limit is exceeded: demand/capacity 1.25. Widen the range of one of these: Screw length (6 in, the last in "
        "its range) and Plate (9x9, the last in its range). Not varied so far: anchor and pattern.");
    const std::string post = format::english(search::would_change(space, 0, "post-bending", 1.1));
    CHECK(test::contains(post, "No range bears on it"));
    CHECK(search::axes_on("plate-bending").front() == "thickness");
    CHECK(search::axes_on("guard-height").empty());
}
