#include "paper/page/sections.h"
#include "paper/page/site_page.h"
#include "paper/papers.h"
#include "paper/project/near_post.h"
#include "wording/line.h"

#include <algorithm>

namespace toehold::paper {
namespace {

bool same_outcome(const review::Review& one, const review::Review& other) {
    if (one.verdict != other.verdict) return false;
    return one.verdict == review::Verdict::adequate || review::cause_of(one).id == review::cause_of(other).id;
}

}  // namespace

std::vector<AlikePosts> alike_posts(const std::vector<SitePost>& posts) {
    std::vector<model::BaseDetail> built;
    built.reserve(posts.size());
    for (const SitePost& post : posts) built.push_back(as_built(post.review.resolved.detail));
    std::vector<AlikePosts> all;
    for (std::size_t index = 0; index < posts.size(); ++index) {
        const auto alike = std::find_if(all.begin(), all.end(), [&](const AlikePosts& one) {
            const std::size_t first = one.posts.front();
            return same_outcome(posts[first].review, posts[index].review) && built[first] == built[index];
        });
        if (alike == all.end()) {
            all.push_back({{index}});
        } else {
            alike->posts.push_back(index);
        }
    }
    return all;
}

SiteSubject site_subject(const review::Review& review, const Issue& issue) {
    return {review.detail,
            review.resolved.detail.note,
            review.verdict,
            review.input_sha256,
            {{format::text(format::phrase("Post"), issue.locale), review}}};
}

review::Review under_rail(review::Review review, const review::LineReview& line) {
    using review::Verdict;
    if (review.verdict != Verdict::adequate || line.verdict == Verdict::adequate) return review;
    review.verdict = line.verdict;
    review.facts.finding = wording::line_reason(line);
    const bool fails = line.verdict == Verdict::inadequate;
    (fails ? review.facts.counts.findings_fail : review.facts.counts.findings_missing) += 1;
    review.facts.first_finding =
        review::FindingFact{"guard-line " + line.id, format::phrase("Guard line"), {}, review.facts.finding};
    return review;
}

std::string site_book(const SiteSubject& subject, const Issue& issue) {
    Book book;
    book.properties = {format::text(format::phrase("{}: site sheets", subject.name), issue.locale), "", issue.program,
                       issue.date};
    for (const AlikePosts& alike : alike_posts(subject.posts)) {
        const page::Section section{subject, alike, 0, issue};
        review::Review review = section.drawn().review;
        review.detail = format::text(format::phrase("{}: {}", subject.name, section.marks()), issue.locale);
        book.sheets.push_back(site_sheet(review, issue));
    }
    return pdf(book);
}

}  // namespace toehold::paper
