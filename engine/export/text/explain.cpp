// One check's worked steps, so that a reviewer can follow the arithmetic by hand.
#include "checks/registry.h"
#include "export/text/columns.h"
#include "export/text/review_text.h"
#include "export/text/table.h"
#include "format/figures.h"
#include "wording/status.h"

#include <algorithm>

namespace toehold::exporting {
namespace {

using units::System;

std::string heading(const checks::CheckResult& result) {
    std::string text = paragraph(result.title + " [" + result.id + "]");
    text += paragraph(result.clause, "  clause   ");
    const auto& all = checks::registered_checks();
    const auto check =
        std::find_if(all.begin(), all.end(), [&result](const auto& known) { return known.id == result.id; });
    if (check != all.end() && !check->covers.empty()) text += paragraph(format::english(check->covers), "  covers   ");
    return text;
}

/// Values stay in the units the formulas are written in; the reader's own stand beside them.
Row row(const checks::Step& step, System system) {
    const format::Figure other = format::in_system(step.value, step.unit, system);
    std::string meaning = step.meaning;
    if (other.unit != step.unit) meaning += " (" + format::number_text(other.value) + " " + other.unit + ")";
    return {{step.symbol, step.formula.empty() ? "" : "= " + step.formula, "= " + format::number_text(step.value),
             step.unit, step.clause.empty() ? "" : "[" + step.clause + "]", meaning},
            {}};
}

std::string steps(const checks::CheckResult& result, System system) {
    std::vector<Row> rows;
    rows.reserve(result.steps.size());
    for (const checks::Step& step : result.steps) rows.push_back(row(step, system));
    return table({{"symbol"}, {"formula"}, {"value"}, {"unit"}, {"clause"}, {"meaning"}}, rows);
}

std::string conclusion(const checks::CheckResult& result, System system) {
    std::string line = "demand " + format::figure_text(result.demand, result.unit, system);
    if (result.status == checks::Status::missing_evidence) {
        line += ", capacity not known";
    } else {
        line += ", capacity " + format::figure_text(result.capacity, result.unit, system);
        if (result.capacity > 0.0) line += ", demand over capacity " + format::ratio_text(result.ratio);
    }
    line += ": " + std::string(wording::word(result.status));
    if (result.direction_deg) line += " (push towards " + format::degrees_text(*result.direction_deg) + " deg)";
    return paragraph(line, "  result:  ") + (result.note.empty() ? "" : paragraph(format::english(result.note), "  note:    "));
}

}  // namespace

std::string explain_text(const review::Review& review, std::string_view check, System system) {
    std::string text;
    for (const checks::CheckResult& result : review.checks) {
        if (result.id != check) continue;
        if (text.empty()) text = heading(result);
        text += "\n" + paragraph(result.subject);
        if (!result.steps.empty()) text += steps(result, system);
        text += conclusion(result, system);
    }
    return text;
}

}  // namespace toehold::exporting
