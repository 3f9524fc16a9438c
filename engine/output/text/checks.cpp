#include "output/figures.h"
#include "output/text/columns.h"
#include "output/text/sections.h"
#include "output/text/table.h"
#include "output/words.h"

#include <algorithm>
#include <set>

namespace toehold::output {
namespace {

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

}  // namespace

std::vector<std::string> result_cells(double demand, double capacity, std::string_view unit, double ratio,
                                      checks::Status status, units::System system) {
    const bool known = status != checks::Status::missing_evidence;
    return {number_text(demand, unit, system), known ? number_text(capacity, unit, system) : "-",
            in_system(demand, unit, system).unit, known ? ratio_text(ratio) : "-", std::string(word(status))};
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

}  // namespace toehold::output
