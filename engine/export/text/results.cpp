// Checks and the load path as tables.
#include "export/text/columns.h"
#include "export/text/sections.h"
#include "export/text/table.h"
#include "format/figures.h"
#include "review/groups.h"
#include "review/load_path.h"
#include "wording/status.h"

#include <algorithm>
#include <set>

namespace toehold::exporting {
namespace {

using format::Locale;
using format::phrase;
using review::PathLink;
using review::PathStep;

/// Headings of `result_cells`, behind others.
std::vector<Column> with_result(std::vector<Column> first, const Locale& locale) {
    const auto heading = [&locale](const format::Phrase& words) { return format::text(words, locale); };
    first.push_back({heading(phrase("demand")), Align::right});
    first.push_back({heading(phrase("capacity")), Align::right});
    first.push_back({heading(phrase("unit"))});
    first.push_back({heading(phrase("D/C")), Align::right});
    first.push_back({heading(phrase("status"))});
    return first;
}

Row row_of(std::vector<std::string> first, std::vector<std::string> result) {
    for (std::string& cell : result) first.push_back(std::move(cell));
    return {std::move(first), {}};
}

/// Of how many results a row shows the worst, and how many of them come to the same as it.
struct Shown {
    std::size_t results = 1, alike = 1;
};

Row check_row(const checks::CheckResult& result, const Shown& shown, const Locale& locale) {
    const format::Phrase part = wording::worst_of(model::part_name(result.part), shown.results, shown.alike);
    Row row = row_of({format::text(result.title, locale), format::text(part, locale)},
                     result_cells(result.demand, result.capacity, result.unit, result.ratio, result.status, locale));
    std::string below = "[" + result.id + "] ";
    if (!result.under.empty()) below += "(" + format::text(result.under, locale) + ") ";
    row.below.push_back(below + format::text(result.note, locale));
    return row;
}

/// The first of a check stands for all of it.
Shown standing_for(const std::vector<checks::CheckResult>& results, const checks::CheckResult& first) {
    Shown shown{0, 0};
    for (const checks::CheckResult& result : results) {
        if (result.id != first.id) continue;
        ++shown.results;
        if (review::alike(first, result)) ++shown.alike;
    }
    return shown;
}

/// Every link, or those alike as one.
std::vector<PathStep> steps(const std::vector<PathLink>& path, bool all_rows) {
    if (!all_rows) return review::path_steps(path, review::Alike::things_and_means);
    std::vector<PathStep> each;
    each.reserve(path.size());
    for (const PathLink& link : path) each.push_back({link});
    return each;
}

Row path_row(const PathStep& step, const Locale& locale) {
    const PathLink& link = step.worst;
    return row_of(
        {format::text(model::part_name(link.link.from), locale), format::text(model::part_name(link.link.to), locale),
         format::text(wording::worst_of(link.link.by, step.count), locale)},
        result_cells(link.demand, link.capacity, link.unit, link.ratio, link.status, locale));
}

}  // namespace

std::vector<std::string> result_cells(double demand, double capacity, std::string_view unit, double ratio,
                                      checks::Status status, const Locale& locale) {
    const bool known = status != checks::Status::missing_evidence;
    return {format::number_text(demand, unit, locale.system),
            known ? format::number_text(capacity, unit, locale.system) : "-",
            format::in_system(demand, unit, locale.system).unit, known ? format::ratio_text(ratio) : "-",
            format::text(wording::word(status), locale)};
}

std::string checks_section(const review::Review& review, const TextOptions& options) {
    const Locale& locale = options.locale;
    if (review.checks.empty()) return format::text(phrase("No check could be made."), locale) + "\n";
    std::vector<Row> rows;
    std::set<std::string> shown;
    for (const checks::CheckResult& result : review.checks) {
        if (!options.all_rows && !shown.insert(result.id).second) continue;
        rows.push_back(check_row(result, options.all_rows ? Shown{} : standing_for(review.checks, result), locale));
    }
    const std::vector<Column> columns =
        with_result({{format::text(phrase("check"), locale)}, {format::text(phrase("part"), locale)}}, locale);
    return paragraph(
               format::text(phrase("CHECKS, worst first (D/C: demand over capacity; for worked steps use --explain "
                                   "with the name in brackets)"),
                            locale)) +
           table(columns, rows);
}

std::string path_section(const review::Review& review, const TextOptions& options) {
    if (review.load_path.empty()) return {};
    const Locale& locale = options.locale;
    std::vector<Row> rows;
    for (const PathStep& step : steps(review.load_path, options.all_rows)) rows.push_back(path_row(step, locale));
    const std::vector<Column> columns = with_result({{format::text(phrase("from"), locale)},
                                                     {format::text(phrase("to"), locale)},
                                                     {format::text(phrase("by"), locale)}},
                                                    locale);
    return format::text(phrase("LOAD PATH, from the guard down"), locale) + "\n" + table(columns, rows);
}

}  // namespace toehold::exporting
