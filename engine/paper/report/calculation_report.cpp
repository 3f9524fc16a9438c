#include "paper/papers.h"
#include "paper/report/sections.h"
#include "review/review.h"

namespace toehold::paper {

Document calculation_report(const review::Review& review, const Issue& issue) {
    const report::Source source{review, issue};
    Document document = report::titled(issue, format::phrase("Calculation of a guard post base"), review.detail);
    report::Blocks& blocks = document.blocks;
    report::add_title_block(blocks, source);
    report::add_summary(blocks, source);
    report::add_detail(blocks, source);
    report::add_loads(blocks, source);
    report::add_demand(blocks, source);
    report::add_load_path(blocks, source);
    report::add_checks(blocks, source);
    report::add_findings(blocks, source);
    report::add_remedies(blocks, source);
    report::add_assumptions(blocks, source);
    report::add_cautions(blocks, source);
    return document;
}

}  // namespace toehold::paper
