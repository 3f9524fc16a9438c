// Every check: first a table of them all, worst first, then the worked steps of each.
#include "paper/report/results.h"
#include "paper/report/sections.h"

namespace toehold::paper::report {
namespace {

Table checks_table(const Source& source) {
    Table table;
    table.columns = {{"check", 0.35}, {"worst subject", 0.26}};
    for (Column& column : measure_columns()) table.columns.push_back(std::move(column));
    for (const CheckResults& check : results_by_check(source.review)) {
        const checks::CheckResult& worst = check.worst();
        std::vector<Cell> row = {{worst.title, false, check_name(check.id)},
                                 words_cell(worst.subject + worst_of(check.results.size()))};
        for (Cell& cell : measure_cells(measure(worst), source.issue.system)) row.push_back(std::move(cell));
        table.rows.push_back(std::move(row));
    }
    return table;
}

}  // namespace

void add_checks(Blocks& blocks, const Source& source) {
    blocks.emplace_back(Heading{1, "6  Checks", "checks"});
    if (source.review.checks.empty()) {
        blocks.emplace_back(paragraph("No check could be made."));
        return;
    }
    blocks.emplace_back(paragraph(
        "Every check that applies, worst first. D/C is demand over capacity: above 1 the check fails. A status "
        "in a frame does not hold. Of each check the worst subject is worked out below, with the clause in "
        "brackets; a numbered source is given in full in section 10."));
    blocks.emplace_back(checks_table(source));
    add_check_steps(blocks, source);
}

}  // namespace toehold::paper::report
