// The reviewer's remarks with the results they speak of, and room for an answer to each.
#include "paper/letter/matter.h"
#include "paper/papers.h"
#include "paper/report/blocks.h"
#include "paper/report/results.h"
#include "wording/status.h"
#include "wording/verdict.h"

#include <algorithm>

namespace toehold::paper {
namespace letter {
namespace {

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

void add_head(Blocks& blocks, const Source& source) {
    Paragraph title = report::paragraph("Comments on the base of a guard post");
    title.size = drawing::TextSize::title;
    title.bold = true;
    blocks.emplace_back(title);
    const std::string project = project_of(source.issue, source.review.resolved.detail);
    const std::vector<std::string> by = authors(source.review.resolved.detail.remarks);
    Facts facts;
    if (!project.empty()) facts.facts.push_back({"PROJECT", project});
    facts.facts.push_back({"DETAIL", source.review.detail});
    facts.facts.push_back({"FILE", source.issue.file});
    facts.facts.push_back({by.size() == 1 ? "REVIEWER" : "REVIEWERS", by.empty() ? "not named" : listed(by)});
    facts.facts.push_back({"DATE", source.issue.date});
    facts.facts.push_back({"PROGRAM", source.issue.program});
    if (facts.facts.size() % 2 == 1) facts.facts.push_back({"ANSWER BY", ""});
    facts.facts.push_back({"SHA-256 OF THE FILE", source.review.input_sha256});
    blocks.emplace_back(std::move(facts));
    const review::Review& review = source.review;
    blocks.emplace_back(Verdict{std::string(wording::word(review.verdict)),
                                {format::english(wording::verdict_reason(review))},
                                report::frame_of(review.verdict)});
}

/// Of every title among the results the worst, since a check may hold several distances against each other.
Table results_table(const Matter& matter, units::System system) {
    Table table;
    table.columns = report::with_measure({{"result", 0.27}, {"subject", 0.17}, {"clause", 0.17}});
    std::vector<format::Phrase> titles;
    for (const checks::CheckResult* result : matter.results) {
        if (std::find(titles.begin(), titles.end(), result->title) != titles.end()) continue;
        titles.push_back(result->title);
        const auto alike = static_cast<std::size_t>(
            std::count_if(matter.results.begin(), matter.results.end(),
                          [result](const checks::CheckResult* other) { return other->title == result->title; }));
        std::vector<Cell> row = {report::words_cell(result->title),
                                 report::words_cell(result->subject + report::worst_of(alike)),
                                 report::words_cell(result->clause)};
        table.rows.push_back(report::with_measure(std::move(row), report::measure(*result), system));
    }
    return table;
}

Table findings_table(const Matter& matter) {
    Table table;
    table.columns = {{"", 0.1}, {"about", 0.15}, {"finding", 0.5}, {"clause", 0.25}};
    for (const checks::Finding* finding : matter.findings) {
        table.rows.push_back({report::severity_cell(finding->severity), report::words_cell(finding->subject),
                              report::words_cell(finding->message), report::words_cell(finding->clause)});
    }
    return table;
}

std::string signature(const Remark& remark) {
    if (remark.by.empty()) return remark.date;
    return remark.date.empty() ? remark.by : remark.by + ", " + remark.date;
}

void add_remark(Blocks& blocks, const Source& source, const Remark& remark, std::size_t number) {
    const Matter matter = matter_of(remark, source.review);
    const std::string mark = "C" + std::to_string(number);
    const std::string subject = remark.subject.empty() ? "" : ", " + remark.subject;
    blocks.emplace_back(Heading{2, mark + "  " + matter.title + subject, "remark-" + std::to_string(number)});
    if (!matter.results.empty()) blocks.emplace_back(results_table(matter, source.issue.system));
    if (!matter.findings.empty()) blocks.emplace_back(findings_table(matter));
    if (!matter.gone.empty()) blocks.emplace_back(report::fine_print(matter.gone));
    Paragraph words = report::paragraph(remark.words);
    words.size = drawing::TextSize::normal;
    blocks.emplace_back(std::move(words));
    const std::string by = signature(remark);
    if (!by.empty()) blocks.emplace_back(report::fine_print(by));
}

void add_open(Blocks& blocks, const Source& source, const std::vector<Remark>& open) {
    blocks.emplace_back(Heading{1, "Open comments", "open"});
    if (open.empty()) blocks.emplace_back(report::paragraph("None: every comment is settled."));
    std::size_t number = 0;
    for (const Remark& remark : open) {
        add_remark(blocks, source, remark, ++number);
        blocks.emplace_back(Facts{{{"ANSWER", "\n\n"}}, 1});
    }
}

void add_settled(Blocks& blocks, const Source& source, const std::vector<Remark>& settled, std::size_t after) {
    if (settled.empty()) return;
    blocks.emplace_back(Heading{1, "Settled comments", "settled"});
    for (const Remark& remark : settled) add_remark(blocks, source, remark, ++after);
}

std::string counts(std::size_t open, std::size_t settled) {
    return "Of " + report::counted(open + settled, "comment", "comments") + " " +
           report::counted(open, "is open", "are open") + " and " +
           report::counted(settled, "is settled", "are settled") + ".";
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
    const report::Source source{review, issue};
    Document document = report::titled(issue, "Comments on a guard post's base", review.detail);
    letter::add_head(document.blocks, source);
    const std::vector<model::Remark>& remarks = review.resolved.detail.remarks;
    if (remarks.empty()) {
        document.blocks.emplace_back(report::paragraph("The file keeps no comment of a reviewer."));
        return document;
    }
    const std::vector<model::Remark> open = letter::in_state(remarks, model::Remark::State::open);
    const std::vector<model::Remark> settled = letter::in_state(remarks, model::Remark::State::settled);
    document.blocks.emplace_back(report::paragraph(letter::counts(open.size(), settled.size())));
    letter::add_open(document.blocks, source, open);
    letter::add_settled(document.blocks, source, settled, open.size());
    return document;
}

}  // namespace toehold::paper
