#include "output/text/columns.h"
#include "output/text/sections.h"
#include "output/text/table.h"

#include <algorithm>

namespace toehold::output {
namespace {

using review::PathLink;

const std::vector<Column> columns_of_path = {
    {"from"},  {"to"}, {"by"}, {"demand", Align::right}, {"capacity", Align::right}, {"unit"}, {"D/C", Align::right},
    {"status"}};

/// `anchor` of `anchor A`.
std::string_view kind(std::string_view name) { return name.substr(0, name.find(' ')); }

bool alike(const PathLink& a, const PathLink& b) {
    return kind(a.link.from) == kind(b.link.from) && kind(a.link.to) == kind(b.link.to) && a.link.by == b.link.by;
}

int gravity(checks::Status status) {
    switch (status) {
        case checks::Status::no_path:
            return 3;
        case checks::Status::fails:
            return 2;
        case checks::Status::missing_evidence:
            return 1;
        case checks::Status::holds:
            return 0;
    }
    return 0;
}

bool worse(const PathLink& a, const PathLink& b) {
    if (a.status != b.status) return gravity(a.status) > gravity(b.status);
    return a.ratio > b.ratio;
}

struct Step {
    PathLink worst;
    std::size_t count = 1;
};

/// Links between the same kinds of things by the same means, as one; the order down the path is kept.
std::vector<Step> steps(const std::vector<PathLink>& path, bool all_rows) {
    std::vector<Step> steps;
    for (const PathLink& link : path) {
        const auto same =
            std::find_if(steps.begin(), steps.end(), [&link](const Step& step) { return alike(step.worst, link); });
        if (all_rows || same == steps.end()) {
            steps.push_back({link});
            continue;
        }
        ++same->count;
        if (worse(link, same->worst)) same->worst = link;
    }
    return steps;
}

}  // namespace

std::string path_section(const review::Review& review, const TextOptions& options) {
    if (review.load_path.empty()) return {};
    std::vector<Row> rows;
    for (const Step& step : steps(review.load_path, options.all_rows)) {
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
