// The schedule of a project's posts: which are alike, and what is said of them together. Reviews are invented.
#include "review/schedule/post_schedule.h"

#include <catch2/catch.hpp>

using namespace toehold;
using review::PostReview;
using review::ScheduleRow;
using review::Verdict;

namespace {

PostReview post(const std::string& id, const std::string& mount, Verdict verdict, double ratio, double tension_lb) {
    PostReview one;
    one.post.id = id;
    one.post.mount = mount;
    one.review.verdict = verdict;
    review::Governing governing;
    governing.check = "anchor-withdrawal";
    governing.title = format::phrase("Anchor withdrawal");
    governing.part = model::anchor_part("A");
    governing.ratio = ratio;
    governing.status = ratio > 1.0 ? checks::Status::fails : checks::Status::holds;
    one.review.governing = governing;
    if (verdict == Verdict::inadequate) {
        review::FirstCause cause;
        static_cast<review::CheckFact&>(cause) = governing;
        one.review.facts.first_cause = cause;
    }
    one.review.facts.largest_tension =
        review::LargestTension{model::anchor_part("A"), tension_lb, 0.0, 200.0, 42.0, 0.0};
    return one;
}

review::ProjectReview project(std::vector<PostReview> posts) {
    review::ProjectReview made;
    made.posts = std::move(posts);
    return made;
}

}  // namespace

TEST_CASE("posts on one mount with one verdict are one row with their count and the worst of them", "[unit]") {
    const auto rows = review::post_schedule(project(
        {post("P1", "line", Verdict::adequate, 0.6, 900.0), post("P2", "end", Verdict::adequate, 0.9, 1200.0),
         post("P3", "line", Verdict::adequate, 0.8, 1100.0), post("P4", "line", Verdict::adequate, 0.7, 1150.0)}));
    REQUIRE(rows.size() == 2);
    CHECK(rows[0].marks == std::vector<std::string>{"P1", "P3", "P4"});
    CHECK(rows[0].posts == std::vector<std::size_t>{0, 2, 3});
    CHECK(rows[0].worst == 2);
    CHECK(rows[0].cause.ratio == 0.8);
    REQUIRE(rows[0].tension);
    CHECK(rows[0].tension->tension_lb == 1150.0);
    CHECK(rows[0].tension_post == "P4");
    CHECK(rows[1].marks == std::vector<std::string>{"P2"});
}

TEST_CASE("another facing, another verdict or another first cause is another row", "[unit]") {
    std::vector<PostReview> posts{
        post("P1", "line", Verdict::adequate, 0.6, 1.0), post("P2", "line", Verdict::adequate, 0.6, 1.0),
        post("P3", "line", Verdict::inadequate, 1.6, 1.0), post("P4", "line", Verdict::inadequate, 1.7, 1.0)};
    posts[1].post.facing = model::PostFacing::minus_x;
    posts[3].review.facts.first_cause->check = "plate-bending";
    const auto rows = review::post_schedule(project(std::move(posts)));
    REQUIRE(rows.size() == 4);
    CHECK(model::word(rows[1].facing) == "-x");
    CHECK(rows[3].cause.id == "plate-bending");
}

TEST_CASE("a finding that comes first is the cause, without a ratio", "[unit]") {
    PostReview one = post("P1", "line", Verdict::inadequate, 2.5, 1.0);
    one.review.facts.first_finding = review::FindingFact{"hole-fit", format::phrase("Hole"), {}, {}};
    const review::Cause cause = review::cause_of(one.review);
    CHECK(cause.id == "hole-fit");
    CHECK_FALSE(cause.ratio);
}

TEST_CASE("of an incomplete detail the cause is what is not specified, or the finding that asks", "[unit]") {
    review::Review lacks;
    CHECK(review::cause_of(lacks).id.empty());
    lacks.findings.push_back({});
    lacks.findings.front().id = "no-rail-length";
    CHECK(review::cause_of(lacks).id == "no-rail-length");
    review::CheckFact fact;
    fact.check = "shoe-moment";
    fact.status = checks::Status::missing_evidence;
    fact.ratio = 3.0;
    lacks.facts.not_specified = fact;
    CHECK(review::cause_of(lacks).id == "shoe-moment");
    CHECK_FALSE(review::cause_of(lacks).ratio);
}

TEST_CASE("a project without posts has an empty schedule", "[unit]") { CHECK(review::post_schedule({}).empty()); }
