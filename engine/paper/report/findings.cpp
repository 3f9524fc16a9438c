// What the rules about the detail itself found, and what changes of it were run.
#include "paper/report/sections.h"
#include "review/review.h"
#include "wording/outcomes.h"

#include <algorithm>

namespace toehold::paper::report {

using format::Phrase;
using format::phrase;

void add_findings(Blocks& blocks, const Source& source) {
    blocks.emplace_back(section(7, phrase("Findings"), "findings", source.locale()));
    if (source.review.findings.empty()) {
        blocks.emplace_back(paragraph(source.text(phrase("None."))));
        return;
    }
    Table table;
    table.columns = {{"", 0.1},
                     {source.text(phrase("about")), 0.12},
                     {source.text(phrase("finding")), 0.53},
                     {source.text(phrase("clause")), 0.25}};
    for (const checks::Finding& finding : source.review.findings)
        table.rows.push_back(finding_cells(finding, source.locale()));
    blocks.emplace_back(std::move(table));
}

void add_remedies(Blocks& blocks, const Source& source) {
    blocks.emplace_back(section(8, phrase("Remedies"), "remedies", source.locale()));
    const review::Review& review = source.review;
    if (review.remedies.empty()) {
        blocks.emplace_back(paragraph(source.text(wording::no_remedies(review))));
        return;
    }
    constexpr std::size_t most_rows = 5;
    const std::size_t left = review.remedies.size() - std::min(most_rows, review.remedies.size());
    Phrase rest;
    if (left == 1) rest = phrase("The best are given; 1 other did less.");
    if (left > 1) rest = phrase("The best are given; {} others did less.", left);
    blocks.emplace_back(paragraph(
        sentences({phrase("Each of these changes was run through every check of this report."), std::move(rest)},
                  source.locale())));
    Table table;
    table.columns = {{source.text(phrase("change")), 0.5},
                     {source.text(phrase("then")), 0.375},
                     {source.text(phrase("verdict")), 0.125}};
    for (const review::Remedy& remedy : review.remedies) {
        if (table.rows.size() == most_rows) break;
        table.rows.push_back({words_cell(source.text(remedy.text)),
                              words_cell(source.text(wording::remedy_outcome(remedy))),
                              verdict_cell(remedy.verdict, source.locale())});
    }
    blocks.emplace_back(std::move(table));
}

}  // namespace toehold::paper::report
