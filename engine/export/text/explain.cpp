// One check's worked steps, so that a reviewer can follow the arithmetic by hand.
#include "checks/registry.h"
#include "export/text/columns.h"
#include "export/text/sections.h"
#include "export/text/table.h"
#include "format/figures.h"
#include "wording/status.h"

#include <algorithm>

namespace toehold::exporting {
namespace {

using format::Locale;
using format::Phrase;
using format::phrase;
using format::Quantity;

std::string heading(const checks::CheckResult& result, const Locale& locale) {
    std::string text = paragraph(format::text(result.title, locale) + " [" + result.id + "]");
    text += labelled(phrase("clause"), format::text(std::string_view(result.clause), locale), locale);
    if (!result.under.empty()) text += labelled(phrase("under"), format::text(result.under, locale), locale);
    const auto& all = checks::registered_checks();
    const auto check =
        std::find_if(all.begin(), all.end(), [&result](const auto& known) { return known.id == result.id; });
    if (check != all.end() && !check->covers.empty())
        text += labelled(phrase("covers"), format::text(check->covers, locale), locale);
    return text;
}

/// Values stay in the units the formulas are written in; the reader's own stand beside them.
Row row(const checks::Step& step, const Locale& locale) {
    const format::Figure other = format::in_system(step.value, step.unit, locale.system);
    std::string meaning = format::text(step.meaning, locale);
    if (other.unit != step.unit) meaning += " (" + format::number_text(other.value) + " " + other.unit + ")";
    return {{step.symbol, step.formula.empty() ? "" : "= " + format::text(std::string_view(step.formula), locale),
             "= " + format::number_text(step.value), step.unit,
             step.clause.empty() ? "" : "[" + format::text(std::string_view(step.clause), locale) + "]", meaning},
            {}};
}

std::string steps(const checks::CheckResult& result, const Locale& locale) {
    std::vector<Row> rows;
    rows.reserve(result.steps.size());
    for (const checks::Step& step : result.steps) rows.push_back(row(step, locale));
    std::vector<Column> columns;
    for (const Phrase& words :
         {phrase("symbol"), phrase("formula"), phrase("value"), phrase("unit"), phrase("clause"), phrase("meaning")}) {
        columns.push_back({format::text(words, locale)});
    }
    return table(columns, rows);
}

Phrase numbers(const checks::CheckResult& result) {
    const Quantity demand{result.demand, result.unit}, capacity{result.capacity, result.unit};
    if (result.status == checks::Status::missing_evidence)
        return phrase("demand {}, capacity not specified: {}", demand, wording::word(result.status));
    if (result.capacity <= 0.0)
        return phrase("demand {}, capacity {}: {}", demand, capacity, wording::word(result.status));
    return phrase("demand {}, capacity {}, demand/capacity {}: {}", demand, capacity, format::ratio_text(result.ratio),
                  wording::word(result.status));
}

std::string conclusion(const checks::CheckResult& result, const Locale& locale) {
    Phrase line = numbers(result);
    if (result.direction_deg)
        line = phrase("{} (push toward {} deg)", line, format::degrees_text(*result.direction_deg));
    std::string text = labelled(phrase("result:"), format::text(line, locale), locale);
    if (!result.note.empty()) text += labelled(phrase("note:"), format::text(result.note, locale), locale);
    return text;
}

}  // namespace

std::string explain_text(const std::vector<checks::CheckResult>& results, std::string_view check,
                         const Locale& locale) {
    std::string text;
    for (const checks::CheckResult& result : results) {
        if (result.id != check) continue;
        if (text.empty()) text = heading(result, locale);
        text += "\n" + paragraph(format::text(model::part_name(result.part), locale));
        if (!result.steps.empty()) text += steps(result, locale);
        text += conclusion(result, locale);
    }
    return text;
}

}  // namespace toehold::exporting
