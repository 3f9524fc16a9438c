// A project on the session: its reviews are invented here, one post after the other.
#include "session/project_session.h"

#include "review/project_review.h"
#include "session/project_words.h"
#include "support/compare.h"
#include "support/three_posts.h"

#include <utility>

using namespace toehold;
using session::ProjectSession;
using State = ProjectSession::State;

namespace {

solving::PostOutcome outcome(const std::string& post, review::Verdict verdict, const std::string& cause, double ratio) {
    solving::PostOutcome made;
    made.post = post;
    made.verdict = verdict;
    made.cause = {cause, format::verbatim(cause), {}, ratio};
    return made;
}

/// A session whose reviews are asked for and never run.
struct Workplace {
    std::vector<model::Project> asked;
    int stopped = 0;
    std::vector<ProjectSession::Change> changes;
    ProjectSession session;

    explicit Workplace(model::Project project = test::three_posts())
        : session(test::shipped_catalog(), std::move(project),
                  {[this](model::Project one) {
                       asked.push_back(std::move(one));
                       return static_cast<std::uint64_t>(asked.size());
                   },
                   [this] { ++stopped; }},
                  [this](ProjectSession::Change change) { changes.push_back(change); }) {}

    [[nodiscard]] solving::ProjectNews news(std::size_t forces, std::size_t checks) const {
        solving::ProjectNews told;
        told.number = asked.size();
        told.posts = session.project().posts.size();
        told.forces = forces;
        told.checks = checks;
        return told;
    }
    void reviewed(std::size_t checks, solving::PostOutcome of) {
        solving::ProjectNews told = news(3, checks);
        told.reviewed = std::move(of);
        session.receive(told);
    }
    void done() {
        auto review = std::make_shared<review::ProjectReview>();
        review->verdict = review::Verdict::inadequate;
        for (const model::PlacedPost& post : session.project().posts) {
            review::PostReview one;
            one.post = post;
            review->posts.push_back(std::move(one));
        }
        solving::ProjectNews told = news(3, 3);
        told.review = std::move(review);
        session.receive(told);
    }
    [[nodiscard]] std::vector<std::string> marks() const {
        std::vector<std::string> all;
        for (const session::ScheduleEntry& entry : session.schedule()) all.push_back(entry.post);
        return all;
    }
    void move_post() {
        model::Project moved = session.project();
        moved.posts[1].at.x_in += 1.0;
        session.change(format::verbatim("Move post P2"), std::move(moved));
    }
};

}  // namespace

TEST_CASE("a project is reviewed at once, and its schedule fills post by post", "[unit]") {
    Workplace place;
    REQUIRE(place.asked.size() == 1);
    CHECK(place.asked.front() == place.session.project());
    CHECK(place.session.state() == State::running);
    CHECK(place.session.schedule().size() == 3);
    CHECK(place.session.schedule().front().outcome == nullptr);
    place.session.receive(place.news(2, 0));
    CHECK(format::english(session::progress_words(place.session)) == "Forces: 2 of 3 posts");
    place.reviewed(1, outcome("P1", review::Verdict::adequate, "a", 0.5));
    CHECK(format::english(session::progress_words(place.session)) == "Checks: 1 of 3 posts");
    const auto entries = place.session.schedule();
    REQUIRE(entries[0].outcome != nullptr);
    CHECK_FALSE(entries[0].stale);
    CHECK(entries[1].outcome == nullptr);
    place.done();
    CHECK(place.session.state() == State::done);
    CHECK(place.session.review_is_current());
    CHECK(session::progress_share(place.session) == 1.0);
}

TEST_CASE("after an edit what was found before is stale until the new review has come to it", "[unit]") {
    Workplace place;
    place.done();
    place.move_post();
    REQUIRE(place.asked.size() == 2);
    CHECK(place.session.history().can_undo());
    CHECK_FALSE(place.session.review_is_current());
    CHECK(session::project_verdict(place.session).stale);
    CHECK(place.session.schedule()[0].stale);
    place.reviewed(1, outcome("P1", review::Verdict::adequate, "a", 0.5));
    CHECK_FALSE(place.session.schedule()[0].stale);
    CHECK(place.session.schedule()[1].stale);
    // News of the review before is nobody's any more.
    solving::ProjectNews late = place.news(3, 2);
    late.number = 1;
    late.reviewed = outcome("P2", review::Verdict::adequate, "late", 0.1);
    place.session.receive(late);
    CHECK(place.session.schedule()[1].stale);
    place.session.undo();
    CHECK(place.asked.size() == 3);
    CHECK_FALSE(place.session.history().changed());
}

TEST_CASE("a stopped review keeps what it found, and says how far it came", "[unit]") {
    Workplace place;
    place.reviewed(1, outcome("P1", review::Verdict::adequate, "a", 0.5));
    place.session.stop();
    CHECK(place.stopped == 1);
    CHECK(place.session.state() == State::stopped);
    CHECK(format::english(session::progress_words(place.session)) == "Stopped: 1 of 3 posts reviewed");
    place.reviewed(2, outcome("P2", review::Verdict::adequate, "a", 0.5));  // on its way when it was stopped
    CHECK(place.session.schedule()[0].outcome != nullptr);
    CHECK(place.session.schedule()[1].outcome == nullptr);
    CHECK_FALSE(place.session.review_is_current());
    place.session.begin();
    CHECK(place.session.state() == State::running);
    CHECK(place.session.schedule()[0].stale);
}

TEST_CASE("by first cause the posts that fail come first, the cause of most of them at their head", "[unit]") {
    Workplace place;
    place.reviewed(1, outcome("P1", review::Verdict::adequate, "bending", 0.5));
    CHECK(place.marks() == std::vector<std::string>{"P1", "P2", "P3"});
    place.session.order_by(session::ScheduleOrder::first_cause);
    CHECK(place.marks() == std::vector<std::string>{"P2", "P3", "P1"});
    CHECK(format::english(place.session.schedule()[0].heading) == "Not reviewed yet: 2 posts");
    CHECK(place.session.schedule()[1].heading.empty());
    CHECK(format::english(place.session.schedule()[2].heading) == "All checks pass: 1 post");
    place.reviewed(2, outcome("P2", review::Verdict::incomplete, "connection", 0.0));
    place.reviewed(3, outcome("P3", review::Verdict::inadequate, "withdrawal", 1.5));
    CHECK(place.marks() == std::vector<std::string>{"P3", "P2", "P1"});
    CHECK(format::english(place.session.schedule()[0].heading) == "withdrawal: 1 post");
}

TEST_CASE("a post is selected with its line, and a post that goes is selected no more", "[unit]") {
    Workplace place;
    REQUIRE(place.session.line() != nullptr);
    CHECK(place.session.line()->id == "L1");
    place.session.select("P9");
    CHECK(place.session.selected().empty());
    place.session.select("P2");
    CHECK(place.session.selected() == "P2");
    model::Project renamed = place.session.project();
    renamed.posts[1].id = renamed.guard_lines[0].posts[1] = "Q2";
    place.session.change(format::verbatim("Rename"), std::move(renamed));
    CHECK(place.session.selected().empty());
}

TEST_CASE("a project that cannot be reviewed says why", "[bad-input]") {
    Workplace place;
    solving::ProjectNews told = place.news(0, 0);
    told.failure = format::verbatim("A fault.");
    place.session.receive(told);
    CHECK(place.session.state() == State::failed);
    CHECK(format::english(session::project_verdict(place.session).reason) == "A fault.");
    CHECK_FALSE(session::project_verdict(place.session).verdict);
}
