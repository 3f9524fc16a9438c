// Link by link from the guard down to the joists' supports.
#include "paper/report/results.h"
#include "paper/report/sections.h"
#include "review/path_steps.h"

namespace toehold::paper::report {
namespace {

Table path_table(const Source& source) {
    Table table;
    table.columns = with_measure({{"from", 0.095}, {"to", 0.145}, {"by", 0.37}});
    for (const review::PathStep& one : review::path_steps(source.review.load_path, review::Alike::things)) {
        const review::PathLink& link = one.worst;
        std::vector<Cell> row = {words_cell(link.link.from),
                                 words_cell(link.link.to),
                                 {link.link.by + worst_of(one.count), false, link_to_check(source.review, link.check)}};
        const Measure measure{link.demand, link.capacity, link.unit, link.ratio, link.status};
        table.rows.push_back(with_measure(std::move(row), measure, source.issue.system));
    }
    return table;
}

}  // namespace

void add_load_path(Blocks& blocks, const Source& source) {
    blocks.emplace_back(Heading{1, "5  Load path", "load-path"});
    if (source.review.load_path.empty()) {
        blocks.emplace_back(paragraph("No link of the load path could be followed."));
        return;
    }
    blocks.emplace_back(
        paragraph("From the guard down to what holds the joists. Of links between things of the same kinds the one "
                  "nearest to its limit is given; it leads to the worked steps of its check."));
    blocks.emplace_back(path_table(source));
}

}  // namespace toehold::paper::report
