// The report and the letter of a project, as documents: parts, their order, what stands once. One base reviewed once.
#include "paper/project/project_documents.h"

#include "paper/read_back.h"
#include "paper/report/report_sample.h"

#include <catch2/catch.hpp>

#include <algorithm>

using namespace toehold;
using test::contains;

namespace {

/// Three posts on the base of a demo detail, one line without a rail; a second mount that no post stands on.
struct Sample {
    model::Project project;
    review::ProjectReview review;
};

Sample sample() {
    const review::Review& base = test::reported("lags-in-deep-blocks");
    Sample made;
    made.project = model::project_of(base.resolved.detail);
    made.project.name = "Heron Landing, invented guard";
    made.project.mounts.push_back(made.project.mounts.front());
    made.project.mounts.back().id = "spare";
    made.review.project = made.project.name;
    made.review.verdict = base.verdict;
    made.review.roles = {{model::PostRole::line, 1}, {model::PostRole::end, 2}};
    const std::string mount = made.project.mounts.front().id;
    made.project.posts.clear();
    model::GuardLine line;
    line.id = "L1";
    review::LineReview of_line;
    of_line.id = line.id;
    for (int index = 0; index < 3; ++index) {
        model::PlacedPost post;
        post.id = "P" + std::to_string(index + 1);
        post.at = {48.0 * index, 0.0};
        post.mount = mount;
        made.project.posts.push_back(post);
        made.review.posts.push_back({post, base, {}});
        line.posts.push_back(post.id);
        review::PostShare share;
        share.post = post.id;
        share.role = index == 1 ? model::PostRole::line : model::PostRole::end;
        of_line.posts.push_back(share);
    }
    made.project.guard_lines = {line};
    made.review.lines = {of_line};
    return made;
}

checks::CheckResult failing_rail() {
    checks::CheckResult bending;
    bending.id = "rail-bending";
    bending.title = format::phrase("Rail bending");
    bending.part = model::rail_part("P1", "P2");
    bending.clause = "AISC 360-16 F7";
    bending.demand = 3600.0;
    bending.capacity = 3000.0;
    bending.unit = "lb in";
    checks::conclude(bending);
    return bending;
}

std::size_t count(const std::string& text, const std::string& words) {
    std::size_t found = 0;
    for (std::size_t at = text.find(words); at != std::string::npos; at = text.find(words, at + 1)) ++found;
    return found;
}

}  // namespace

TEST_CASE("a project's report has its schedule, its lines and each mount once", "[unit]") {
    const Sample made = sample();
    const paper::Document report = paper::project_report({made.project, made.review}, test::report_issue("guard"));
    const std::vector<paper::Heading> headings = test::headings_of(report);
    const auto has = [&headings](const std::string& name) {
        return std::count_if(headings.begin(), headings.end(), [&](const auto& one) { return one.name == name; });
    };
    for (const char* name : {"schedule", "line-1", "mount-1", "mount-1-summary", "mount-1-checks", "cautions"}) {
        INFO(name);
        CHECK(has(name) == 1);
    }
    CHECK(has("mount-2") == 0);
    const std::string words = test::words_of(report);
    CHECK(contains(words, "P1 to P3"));
    CHECK(contains(words, "In all: 1 line post, 2 ends."));
    CHECK(contains(words, "which governs"));
    CHECK(count(words, "Toehold is a design aid. Guards are life safety") == 1);
    // Every link has somewhere to lead.
    CHECK_FALSE(paper::lay_out(report).sheets.empty());
}

TEST_CASE("a rail's steps stand in its line, under names of their own", "[unit]") {
    Sample made = sample();
    made.review.lines[0].rail = true;
    made.review.lines[0].verdict = review::Verdict::inadequate;
    made.review.lines[0].checks = {failing_rail()};
    made.review.lines[0].cause = review::fact_of(made.review.lines[0].checks.front());
    const paper::Document report = paper::project_report({made.project, made.review}, test::report_issue("guard"));
    CHECK(contains(test::words_under(report, "line-1-check-rail-bending"), "rail P1-P2"));
    CHECK(contains(test::words_of(report), "L1.1  Rail bending"));
    CHECK_FALSE(paper::lay_out(report).sheets.empty());
}

TEST_CASE("a project's letter has one comment a first cause, then the rail's, then the reviewer's", "[unit]") {
    Sample made = sample();
    for (review::PostReview& post : made.review.posts) {
        post.review.verdict = review::Verdict::inadequate;
        review::FirstCause cause;
        cause.check = "anchor-withdrawal";
        cause.title = format::phrase("Anchor withdrawal");
        cause.part = model::anchor_part("A");
        cause.status = checks::Status::fails;
        cause.ratio = 1.37;
        post.review.facts.first_cause = cause;
    }
    made.review.lines[0].rail = true;
    made.review.lines[0].verdict = review::Verdict::inadequate;
    made.review.lines[0].checks = {failing_rail()};
    made.review.lines[0].cause = review::fact_of(made.review.lines[0].checks.front());
    model::Remark remark;
    remark.words = "Show the stair's top post.";
    remark.by = "R. Example";
    made.review.remarks = {remark};
    const paper::Document letter = paper::project_letter({made.project, made.review}, test::report_issue("guard"));
    const std::string words = test::words_of(letter);
    CHECK(contains(words, "C1  Anchor withdrawal: 3 posts, P1 to P3"));
    CHECK(contains(words, "C2  Rail bending: guard line L1"));
    CHECK(contains(words, "C3  The detail as a whole"));
    CHECK(contains(words, "Show the stair's top post."));
    CHECK(count(words, "ANSWER") == 3);
    CHECK_FALSE(paper::lay_out(letter).sheets.empty());
}

TEST_CASE("a project that is adequate has a letter that says so", "[unit]") {
    Sample made = sample();
    for (review::PostReview& post : made.review.posts) post.review.verdict = review::Verdict::adequate;
    made.review.verdict = review::Verdict::adequate;
    const paper::Document letter = paper::project_letter({made.project, made.review}, test::report_issue("guard"));
    CHECK(contains(test::words_of(letter), "Nothing: all posts and rails are adequate."));
}
