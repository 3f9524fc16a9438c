// One mount: its governing post's base as an ordinary report has it.
#include "paper/project/project_sections.h"
#include "paper/project/renamed.h"
#include "paper/report/sections.h"
#include "review/schedule/cause.h"
#include "wording/marks.h"
#include "wording/status.h"
#include "wording/verdict.h"

#include <tuple>

namespace toehold::paper::project {
namespace {

using format::Phrase;
using format::phrase;
using review::PostReview;

std::vector<std::string> marks_on(const review::ProjectReview& review, const std::string& mount) {
    std::vector<std::string> marks;
    for (const PostReview& one : review.posts) {
        if (one.post.mount == mount) marks.push_back(one.post.id);
    }
    return marks;
}

/// The review with the detail as it is built at the post: without the blocks of others.
review::Review as_built_at(const ProjectSubject& subject, std::size_t post) {
    review::Review review = subject.review.posts[post].review;
    if (post < subject.built.size() && subject.built[post]) review.resolved = *subject.built[post];
    return review;
}

void add_no_remedies(Blocks& blocks, const report::Source& source) {
    blocks.emplace_back(report::section(8, phrase("Remedies"), "remedies", source.locale()));
    blocks.emplace_back(report::paragraph(source.text(
        source.review.verdict == review::Verdict::adequate
            ? phrase("None needed: all checks pass.")
            : phrase(
                  "Not searched for a post of a project. The report of its base as a detail of its own has them."))));
}

void add_head(Blocks& blocks, const ProjectSource& source, const PostReview& governing,
              const std::vector<std::string>& marks) {
    blocks.emplace_back(report::paragraph(source.text(
        phrase("Posts on this mount: {}, quantity {}. Worked out below for post {}, which governs: no other "
               "has a graver verdict or a larger demand over capacity of its first cause.",
               wording::marks(marks), marks.size(), governing.post.id))));
    if (!governing.shares_with.empty())
        blocks.emplace_back(report::paragraph(
            source.text(phrase("It loads framing together with posts {}.", wording::marks(governing.shares_with)))));
    const review::Review& review = governing.review;
    blocks.emplace_back(Verdict{source.text(wording::word(review.verdict)),
                                {source.text(wording::verdict_reason(review))},
                                report::frame_of(review.verdict)});
}

}  // namespace

std::size_t governing_post(const review::ProjectReview& review, const std::string& mount) {
    std::size_t governing = review.posts.size();
    std::tuple<int, double> most{-1, 0.0};
    for (std::size_t index = 0; index < review.posts.size(); ++index) {
        const PostReview& one = review.posts[index];
        if (one.post.mount != mount) continue;
        const std::tuple<int, double> own{review::gravity(one.review.verdict),
                                          review::cause_of(one.review).ratio.value_or(0.0)};
        if (own > most) most = own, governing = index;
    }
    return governing;
}

void add_mount(Blocks& blocks, const ProjectSource& source, const std::string& mount, std::size_t number) {
    const review::ProjectReview& all = source.subject.review;
    const std::size_t post = governing_post(all, mount);
    if (post == all.posts.size()) return;  // no post stands on it
    const std::string prefix = "mount-" + std::to_string(number);
    blocks.emplace_back(Room{});
    blocks.emplace_back(Heading{1, source.text(phrase("Mount {}", mount)), prefix});
    add_head(blocks, source, all.posts[post], marks_on(all, mount));
    const review::Review built = as_built_at(source.subject, post);
    const report::Source as_built{built, source.issue}, reviewed{all.posts[post].review, source.issue};
    Blocks own;
    report::add_summary(own, as_built);
    report::add_detail(own, as_built);
    report::add_loads(own, reviewed);
    report::add_demand(own, reviewed);
    report::add_load_path(own, reviewed);
    report::add_checks(own, reviewed);
    report::add_findings(own, reviewed);
    add_no_remedies(own, reviewed);
    report::add_assumptions(own, reviewed);
    report::add_sources(own, reviewed, report::section(10, phrase("Sources"), "cautions", source.locale()));
    append_renamed(blocks, std::move(own), prefix + "-");
}

}  // namespace toehold::paper::project
