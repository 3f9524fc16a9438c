#include "output/path_steps.h"
#include "output/text/columns.h"
#include "output/text/sections.h"
#include "output/text/table.h"

namespace toehold::output {
namespace {

using review::PathLink;

const std::vector<Column> columns_of_path = {
    {"from"},  {"to"}, {"by"}, {"demand", Align::right}, {"capacity", Align::right}, {"unit"}, {"D/C", Align::right},
    {"status"}};

/// Every link, or those alike as one.
std::vector<PathStep> steps(const std::vector<PathLink>& path, bool all_rows) {
    if (!all_rows) return path_steps(path, Alike::things_and_means);
    std::vector<PathStep> each;
    each.reserve(path.size());
    for (const PathLink& link : path) each.push_back({link});
    return each;
}

}  // namespace

std::string path_section(const review::Review& review, const TextOptions& options) {
    if (review.load_path.empty()) return {};
    std::vector<Row> rows;
    for (const PathStep& step : steps(review.load_path, options.all_rows)) {
        const PathLink& link = step.worst;
        Row row{{link.link.from, link.link.to, link.link.by + worst_of(step.count)}, {}};
        for (std::string& cell :
             result_cells(link.demand, link.capacity, link.unit, link.ratio, link.status, options.system)) {
            row.cells.push_back(std::move(cell));
        }
        rows.push_back(std::move(row));
    }
    return "LOAD PATH, from the guard down\n" + table(columns_of_path, rows);
}

}  // namespace toehold::output
