// Posts that are not adequate, by their first cause. Reviews are invented.
#include "review/schedule/posts_by_cause.h"

#include <catch2/catch.hpp>

using namespace toehold;
using review::Verdict;

namespace {

review::PostReview failing(const std::string& id, const std::string& check, double ratio) {
    review::PostReview one;
    one.post.id = id;
    one.review.verdict = Verdict::inadequate;
    review::FirstCause cause;
    cause.check = check;
    cause.title = format::verbatim(check);
    cause.status = checks::Status::fails;
    cause.ratio = ratio;
    one.review.facts.first_cause = cause;
    return one;
}

}  // namespace

TEST_CASE("posts of one first cause are one comment, the cause of most posts first", "[unit]") {
    review::ProjectReview project;
    project.posts = {failing("P1", "weld", 1.2),
                     failing("P2", "lag", 1.1),
                     failing("P3", "lag", 1.6),
                     {},
                     failing("P5", "lag", 1.4)};
    project.posts[3].review.verdict = Verdict::adequate;
    const std::vector<review::PostsOfCause> causes = review::posts_by_cause(project);
    REQUIRE(causes.size() == 2);
    CHECK(causes[0].cause.id == "lag");
    CHECK(causes[0].marks == std::vector<std::string>{"P2", "P3", "P5"});
    CHECK(causes[0].worst == 2);
    CHECK(causes[0].cause.ratio == 1.6);
    CHECK(causes[1].posts == std::vector<std::size_t>{0});
}

TEST_CASE("what lacks evidence comes after what fails, however many posts it is", "[unit]") {
    review::ProjectReview project;
    review::PostReview open;
    open.post.id = "P1";
    open.review.verdict = Verdict::incomplete;
    project.posts = {open, open, failing("P3", "lag", 1.6)};
    const std::vector<review::PostsOfCause> causes = review::posts_by_cause(project);
    REQUIRE(causes.size() == 2);
    CHECK(causes[0].verdict == Verdict::inadequate);
    CHECK(causes[1].posts.size() == 2);
    CHECK(review::posts_by_cause({}).empty());
}
