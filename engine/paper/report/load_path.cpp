// Link by link from the guard down to the supports of the joists.
#include "review/load_path.h"
#include "paper/report/results.h"
#include "paper/report/sections.h"
#include "wording/status.h"

namespace toehold::paper::report {
namespace {

using format::phrase;

Table path_table(const Source& source) {
    Table table;
    table.columns = with_measure(
        {{source.text(phrase("from")), 0.095}, {source.text(phrase("to")), 0.145}, {source.text(phrase("by")), 0.37}},
        source.locale());
    for (const review::PathStep& one : review::path_steps(source.review.load_path, review::Alike::things)) {
        const review::PathLink& link = one.worst;
        std::vector<Cell> row = {
            words_cell(source.text(model::part_name(link.link.from))),
            words_cell(source.text(model::part_name(link.link.to))),
            {source.text(wording::worst_of(link.link.by, one.count)), false, link_to_check(source.review, link.check)}};
        const Measure measure{link.demand, link.capacity, link.unit, link.ratio, link.status};
        table.rows.push_back(with_measure(std::move(row), measure, source.locale()));
    }
    return table;
}

}  // namespace

void add_load_path(Blocks& blocks, const Source& source) {
    blocks.emplace_back(section(5, phrase("Load path"), "load-path", source.locale()));
    if (source.review.load_path.empty()) {
        blocks.emplace_back(paragraph(source.text(phrase("No link of the load path could be followed."))));
        return;
    }
    blocks.emplace_back(paragraph(source.text(
        phrase("From the guard down to the supports of the joists. Of links between parts of the same kinds the one "
               "nearest its limit is given; it leads to the worked steps of its check."))));
    blocks.emplace_back(path_table(source));
}

}  // namespace toehold::paper::report
