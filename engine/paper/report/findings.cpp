// What the rules about the detail itself found, and what changes of it were run.
#include "paper/report/sections.h"
#include "wording/outcomes.h"

#include <algorithm>

namespace toehold::paper::report {
void add_findings(Blocks& blocks, const Source& source) {
    blocks.emplace_back(Heading{1, "7  Findings", "findings"});
    if (source.review.findings.empty()) {
        blocks.emplace_back(paragraph("None."));
        return;
    }
    Table table;
    table.columns = {{"", 0.1}, {"about", 0.12}, {"finding", 0.53}, {"clause", 0.25}};
    for (const checks::Finding& finding : source.review.findings) {
        table.rows.push_back({severity_cell(finding.severity), words_cell(finding.subject), words_cell(finding.message),
                              words_cell(finding.clause)});
    }
    blocks.emplace_back(std::move(table));
}

void add_remedies(Blocks& blocks, const Source& source) {
    blocks.emplace_back(Heading{1, "8  Remedies", "remedies"});
    const review::Review& review = source.review;
    if (review.remedies.empty()) {
        blocks.emplace_back(paragraph(wording::no_remedies(review)));
        return;
    }
    constexpr std::size_t most_rows = 5;
    const std::size_t left = review.remedies.size() - std::min(most_rows, review.remedies.size());
    const std::string rest = left == 0 ? "" : " The best are given; " + counted(left, "other", "others") + " did less.";
    blocks.emplace_back(paragraph("Each of these changes was run through every check of this report." + rest));
    Table table;
    table.columns = {{"change", 0.5}, {"then", 0.375}, {"verdict", 0.125}};
    for (const review::Remedy& remedy : review.remedies) {
        if (table.rows.size() == most_rows) break;
        table.rows.push_back(
            {words_cell(remedy.text), words_cell(wording::remedy_outcome(remedy)), verdict_cell(remedy.verdict)});
    }
    blocks.emplace_back(std::move(table));
}

}  // namespace toehold::paper::report
