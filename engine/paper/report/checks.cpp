// Every check: first a table of them all, worst first, then the worked steps of each.
#include "paper/report/results.h"
#include "paper/report/sections.h"

namespace toehold::paper::report {
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
    blocks.emplace_back(results_table("worst subject", results_by_check(source.review), source.issue.system));
    add_check_steps(blocks, source);
}

}  // namespace toehold::paper::report
