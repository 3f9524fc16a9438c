// Checks and the load path as tables.
#include "export/text/columns.h"
#include "export/text/sections.h"
#include "export/text/table.h"
#include "format/figures.h"
#include "review/path_steps.h"
#include "wording/status.h"

#include <algorithm>
#include <set>

namespace toehold::exporting {
namespace {

using review::Alike;
using review::PathLink;
using review::PathStep;

const std::vector<Column> columns_of_checks = {
    {"check"}, {"subject"}, {"demand", Align::right}, {"capacity", Align::right}, {"unit"}, {"D/C", Align::right},
    {"status"}};

Row row(const checks::CheckResult& result, std::size_t alike, units::System system) {
    Row row;
    row.cells = {result.title, result.subject + worst_of(alike)};
    for (std::string& cell :
         result_cells(result.demand, result.capacity, result.unit, result.ratio, result.status, system)) {
        row.cells.push_back(std::move(cell));
    }
    row.below.push_back("[" + result.id + "] " + result.note);
    return row;
}

std::size_t results_of(const std::vector<checks::CheckResult>& results, const std::string& id) {
    return static_cast<std::size_t>(
        std::count_if(results.begin(), results.end(), [&id](const auto& result) { return result.id == id; }));
}

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

std::vector<std::string> result_cells(double demand, double capacity, std::string_view unit, double ratio,
                                      checks::Status status, units::System system) {
    const bool known = status != checks::Status::missing_evidence;
    return {format::number_text(demand, unit, system), known ? format::number_text(capacity, unit, system) : "-",
            format::in_system(demand, unit, system).unit, known ? format::ratio_text(ratio) : "-",
            std::string(wording::word(status))};
}

std::string worst_of(std::size_t count) { return count > 1 ? " (worst of " + std::to_string(count) + ")" : ""; }

std::string checks_section(const review::Review& review, const TextOptions& options) {
    if (review.checks.empty()) return "No check could be made.\n";
    std::vector<Row> rows;
    std::set<std::string> shown;
    for (const checks::CheckResult& result : review.checks) {
        if (!options.all_rows && !shown.insert(result.id).second) continue;
        const std::size_t alike = options.all_rows ? 1 : results_of(review.checks, result.id);
        rows.push_back(row(result, alike, options.system));
    }
    return "CHECKS, worst first (D/C: demand over capacity; worked steps: --explain with the name in brackets)\n" +
           table(columns_of_checks, rows);
}

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

}  // namespace toehold::exporting
