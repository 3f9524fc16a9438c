// The reviewer's remarks with the results they are about, and room for an answer to each.
#include "paper/letter/remark_blocks.h"
#include "paper/papers.h"
#include "paper/report/blocks.h"
#include "review/review.h"
#include "wording/status.h"
#include "wording/verdict.h"

namespace toehold::paper {
namespace letter {
namespace {

using format::Phrase;
using format::phrase;
using model::Remark;
using report::Blocks;
using report::Source;

Facts facts(const Source& source) {
    const std::string project = project_of(source.issue, source.review.resolved.detail);
    Facts facts;
    const auto add = [&](const Phrase& label, std::string words) {
        facts.facts.push_back({source.text(label), std::move(words)});
    };
    if (!project.empty()) add(phrase("PROJECT"), project);
    add(phrase("DETAIL"), source.review.detail);
    add(phrase("FILE"), source.issue.file);
    facts.facts.push_back(reviewers(source.review.resolved.detail.remarks, source.locale()));
    add(phrase("DATE"), source.issue.date);
    add(phrase("PROGRAM"), source.issue.program);
    if (facts.facts.size() % 2 == 1) add(phrase("ANSWER BY"), "");
    add(phrase("SHA-256 OF THE FILE"), source.review.input_sha256);
    return facts;
}

void add_head(Blocks& blocks, const Source& source) {
    blocks.emplace_back(report::title(source.text(phrase("Comments on a guard post base")), drawing::TextSize::title));
    blocks.emplace_back(facts(source));
    const review::Review& review = source.review;
    blocks.emplace_back(Verdict{source.text(wording::word(review.verdict)),
                                {source.text(wording::verdict_reason(review))},
                                report::frame_of(review.verdict)});
}

void add_open(Blocks& blocks, const Source& source, const std::vector<Remark>& open) {
    blocks.emplace_back(Heading{1, source.text(phrase("Open comments")), "open"});
    if (open.empty()) blocks.emplace_back(report::paragraph(source.text(phrase("None: every comment is settled."))));
    std::size_t number = 0;
    for (const Remark& remark : open) {
        add_remark(blocks, source, remark, ++number);
        blocks.emplace_back(room_for_answer(source.locale()));
    }
}

void add_settled(Blocks& blocks, const Source& source, const std::vector<Remark>& settled, std::size_t after) {
    if (settled.empty()) return;
    blocks.emplace_back(Heading{1, source.text(phrase("Settled comments")), "settled"});
    for (const Remark& remark : settled) add_remark(blocks, source, remark, ++after);
}

}  // namespace
}  // namespace letter

Document comment_letter(const review::Review& review, const Issue& issue) {
    using format::phrase;
    const report::Source source{review, issue};
    Document document = report::titled(issue, phrase("Comments on a guard post base"), review.detail);
    letter::add_head(document.blocks, source);
    const std::vector<model::Remark>& remarks = review.resolved.detail.remarks;
    if (remarks.empty()) {
        document.blocks.emplace_back(report::paragraph(source.text(phrase("The file has no comments of a reviewer."))));
        return document;
    }
    const std::vector<model::Remark> open = letter::in_state(remarks, model::Remark::State::open);
    const std::vector<model::Remark> settled = letter::in_state(remarks, model::Remark::State::settled);
    document.blocks.emplace_back(
        report::paragraph(source.text(phrase("Comments: {} open, {} settled.", open.size(), settled.size()))));
    letter::add_open(document.blocks, source, open);
    letter::add_settled(document.blocks, source, settled, open.size());
    return document;
}

}  // namespace toehold::paper
