// Every check: first a table of them all, worst first, then the worked steps of each.
#include "paper/report/results.h"
#include "paper/report/sections.h"
#include "review/review.h"

namespace toehold::paper::report {
void add_checks(Blocks& blocks, const Source& source) {
    using format::phrase;
    blocks.emplace_back(section(6, phrase("Checks"), "checks", source.locale()));
    if (source.review.checks.empty()) {
        blocks.emplace_back(paragraph(source.text(phrase("No check could be made."))));
        return;
    }
    blocks.emplace_back(paragraph(source.text(
        phrase("Every check that applies, worst first. D/C is demand over capacity: above 1 the check fails. A "
               "status in a frame is not a pass. Of each check the worst part is worked out below, with the clause in "
               "brackets; a numbered source is given in full in section 10."))));
    blocks.emplace_back(
        results_table(source.text(phrase("worst part")), results_by_check(source.review), source.locale()));
    add_check_steps(blocks, source);
}

}  // namespace toehold::paper::report
