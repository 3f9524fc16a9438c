// The reviewer's remarks with the results they are about, and room for an answer to each.
#include "paper/letter/remark_target.h"
#include "paper/papers.h"
#include "paper/report/blocks.h"
#include "review/review.h"
#include "wording/status.h"
#include "wording/verdict.h"

#include <algorithm>

namespace toehold::paper {
namespace letter {
namespace {

using format::Phrase;
using format::phrase;
using model::Remark;
using report::Blocks;
using report::Source;

std::vector<std::string> authors(const std::vector<Remark>& remarks) {
    std::vector<std::string> names;
    for (const Remark& remark : remarks) {
        const bool known = std::find(names.begin(), names.end(), remark.by) != names.end();
        if (!remark.by.empty() && !known) names.push_back(remark.by);
    }
    return names;
}

Facts facts(const Source& source) {
    const std::string project = project_of(source.issue, source.review.resolved.detail);
    const std::vector<std::string> by = authors(source.review.resolved.detail.remarks);
    Facts facts;
    const auto add = [&](const Phrase& label, std::string words) {
        facts.facts.push_back({source.text(label), std::move(words)});
    };
    if (!project.empty()) add(phrase("PROJECT"), project);
    add(phrase("DETAIL"), source.review.detail);
    add(phrase("FILE"), source.issue.file);
    add(by.size() == 1 ? phrase("REVIEWER") : phrase("REVIEWERS"),
        source.text(by.empty() ? phrase("not named") : phrase("{}", listed(by))));
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

/// Of every title among the results the worst, since a check may hold several distances against each other.
Table results_table(const RemarkTarget& target, const Source& source) {
    Table table;
    table.columns = report::with_measure({{source.text(phrase("result")), 0.27},
                                          {source.text(phrase("part")), 0.17},
                                          {source.text(phrase("clause")), 0.17}},
                                         source.locale());
    std::vector<Phrase> titles;
    for (const checks::CheckResult* result : target.results) {
        if (std::find(titles.begin(), titles.end(), result->title) != titles.end()) continue;
        titles.push_back(result->title);
        const auto alike = static_cast<std::size_t>(
            std::count_if(target.results.begin(), target.results.end(),
                          [result](const checks::CheckResult* other) { return other->title == result->title; }));
        std::vector<Cell> row = {
            report::words_cell(source.text(result->title)),
            report::words_cell(source.text(wording::worst_of(model::part_name(result->part), alike))),
            report::words_cell(format::text(result->clause, source.locale()))};
        table.rows.push_back(report::with_measure(std::move(row), report::measure(*result), source.locale()));
    }
    return table;
}

Table findings_table(const RemarkTarget& target, const Source& source) {
    Table table;
    table.columns = {{"", 0.1},
                     {source.text(phrase("about")), 0.15},
                     {source.text(phrase("finding")), 0.5},
                     {source.text(phrase("clause")), 0.25}};
    for (const checks::Finding* finding : target.findings)
        table.rows.push_back(report::finding_cells(*finding, source.locale()));
    return table;
}

std::string signature(const Remark& remark) {
    if (remark.by.empty()) return remark.date;
    return remark.date.empty() ? remark.by : remark.by + ", " + remark.date;
}

void add_remark(Blocks& blocks, const Source& source, const Remark& remark, std::size_t number) {
    const RemarkTarget target = target_of(remark, source.review);
    const std::string mark = "C" + std::to_string(number);
    blocks.emplace_back(Heading{2, mark + "  " + source.text(target.title), "remark-" + std::to_string(number)});
    if (!target.results.empty()) blocks.emplace_back(results_table(target, source));
    if (!target.findings.empty()) blocks.emplace_back(findings_table(target, source));
    if (!target.gone.empty()) blocks.emplace_back(report::fine_print(source.text(target.gone)));
    Paragraph words = report::paragraph(remark.words);
    words.size = drawing::TextSize::normal;
    blocks.emplace_back(std::move(words));
    const std::string by = signature(remark);
    if (!by.empty()) blocks.emplace_back(report::fine_print(by));
}

void add_open(Blocks& blocks, const Source& source, const std::vector<Remark>& open) {
    blocks.emplace_back(Heading{1, source.text(phrase("Open comments")), "open"});
    if (open.empty()) blocks.emplace_back(report::paragraph(source.text(phrase("None: every comment is settled."))));
    std::size_t number = 0;
    for (const Remark& remark : open) {
        add_remark(blocks, source, remark, ++number);
        blocks.emplace_back(Facts{{{source.text(phrase("ANSWER")), "\n\n"}}, 1});
    }
}

void add_settled(Blocks& blocks, const Source& source, const std::vector<Remark>& settled, std::size_t after) {
    if (settled.empty()) return;
    blocks.emplace_back(Heading{1, source.text(phrase("Settled comments")), "settled"});
    for (const Remark& remark : settled) add_remark(blocks, source, remark, ++after);
}

std::vector<Remark> in_state(const std::vector<Remark>& remarks, Remark::State state) {
    std::vector<Remark> found;
    std::copy_if(remarks.begin(), remarks.end(), std::back_inserter(found),
                 [state](const Remark& remark) { return remark.state == state; });
    return found;
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
