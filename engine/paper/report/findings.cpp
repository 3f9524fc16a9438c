// What the rules about the detail itself found, and what changes of it were run.
#include "format/figures.h"
#include "paper/report/sections.h"
#include "wording/status.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace toehold::paper::report {
namespace {

std::string outcome(const review::Remedy& remedy) {
    const std::string ratio = std::isfinite(remedy.governing.ratio)
                                  ? "D/C " + format::ratio_text(remedy.governing.ratio)
                                  : std::string("nothing there to resist it");
    const std::string governs = remedy.governing.title + ", " + remedy.governing.subject + ": " + ratio + ".";
    const std::size_t left = remedy.failing_results + remedy.failing_findings;
    switch (remedy.verdict) {
        case review::Verdict::adequate:
            return "It holds. Nearest to its limit: " + governs;
        case review::Verdict::incomplete:
            return "Nothing fails, though something is missing. Governs: " + governs;
        case review::Verdict::inadequate:
            break;
    }
    return counted(left, "result", "results") + " still would not hold. Governs: " + governs;
}

}  // namespace

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
        blocks.emplace_back(paragraph(review.verdict == review::Verdict::adequate
                                          ? "The detail holds as it is: none was looked for."
                                          : "None of the usual changes lets more of the results hold."));
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
        table.rows.push_back({words_cell(remedy.text), words_cell(outcome(remedy)), verdict_cell(remedy.verdict)});
    }
    blocks.emplace_back(std::move(table));
}

}  // namespace toehold::paper::report
