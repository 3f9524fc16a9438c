// A project's review on its own thread: told post by post, and given up when nobody waits for it.
#include "solving/projects.h"

#include "review/project_review.h"
#include "support/compare.h"
#include "support/three_posts.h"

#include <algorithm>
#include <chrono>
#include <condition_variable>
#include <mutex>

using namespace toehold;
using test::shipped_catalog;

namespace {

class Heard {
  public:
    void operator()(solving::ProjectNews news) {
        const std::lock_guard lock(mutex_);
        all_.push_back(std::move(news));
        changed_.notify_all();
    }
    [[nodiscard]] bool wait_for_last(std::uint64_t number) {
        std::unique_lock lock(mutex_);
        return changed_.wait_for(lock, std::chrono::minutes(3), [&] {
            return std::any_of(all_.begin(), all_.end(),
                               [&](const auto& one) { return one.number == number && one.last(); });
        });
    }
    [[nodiscard]] std::vector<solving::ProjectNews> all() const {
        const std::lock_guard lock(mutex_);
        return all_;
    }

  private:
    mutable std::mutex mutex_;
    std::condition_variable changed_;
    std::vector<solving::ProjectNews> all_;
};

}  // namespace

TEST_CASE("each post is told of once, in order, and the end is the engine's own review", "[property]") {
    const model::Project project = test::three_posts();
    std::vector<solving::ProjectNews> all;
    solving::review_project(
        project, shipped_catalog(), [] { return false; },
        [&all](solving::ProjectNews news) { all.push_back(std::move(news)); });
    REQUIRE(all.size() == 7);  // forces and checks of three posts, and the end
    std::vector<std::string> told;
    for (std::size_t at = 0; at < all.size(); ++at) {
        CHECK(all[at].posts == 3);
        CHECK(all[at].last() == (at + 1 == all.size()));
        if (all[at].reviewed) told.push_back(all[at].reviewed->post);
    }
    CHECK(told == std::vector<std::string>{"P1", "P2", "P3"});
    CHECK(all[2].forces == 3);
    CHECK(all[5].checks == 3);
    REQUIRE(all.back().review != nullptr);
    const review::ProjectReview& review = *all.back().review;
    REQUIRE(review.posts.size() == 3);
    for (std::size_t post = 0; post < 3; ++post) {
        const solving::PostOutcome& outcome = *all[3 + post].reviewed;
        CHECK(outcome.verdict == review.posts[post].review.verdict);
        CHECK(outcome.cause.id == review::cause_of(review.posts[post].review).id);
        CHECK_FALSE(outcome.reason.empty());
    }
}

TEST_CASE("what stands against a project is told in place of a review", "[bad-input]") {
    model::Project project = test::three_posts();
    project.posts[1].at = project.posts[0].at;
    std::vector<solving::ProjectNews> all;
    const auto hear = [&all](solving::ProjectNews news) { all.push_back(std::move(news)); };
    solving::review_project(
        project, shipped_catalog(), [] { return false; }, hear);
    REQUIRE(all.size() == 1);
    CHECK_FALSE(all.front().problems.empty());
    CHECK(all.front().review == nullptr);
    solving::review_project(
        project, shipped_catalog(), [] { return true; }, hear);
    CHECK(all.size() == 1);  // nobody waits for it
}

TEST_CASE("a newer review takes the place of one that runs", "[unit]") {
    Heard heard;
    model::Project refused = test::three_posts();
    refused.posts[1].mount = "nowhere";
    {
        solving::Projects projects(shipped_catalog(), [&heard](solving::ProjectNews news) { heard(std::move(news)); });
        const std::uint64_t first = projects.begin(test::three_posts());
        const std::uint64_t second = projects.begin(refused);
        CHECK(second == first + 1);
        REQUIRE(heard.wait_for_last(second));
        projects.stop();
    }
    for (const solving::ProjectNews& news : heard.all()) CHECK((news.number == 2 || !news.last()));
}
