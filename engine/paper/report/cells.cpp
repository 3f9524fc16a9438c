// Cells of tables.
#include "format/figures.h"
#include "paper/report/blocks.h"
#include "wording/status.h"

namespace toehold::paper::report {

using checks::Status;
using format::Locale;
using format::phrase;

Cell words_cell(std::string words) { return {std::move(words)}; }

Cell status_cell(Status status, const Locale& locale) {
    Cell cell{written(wording::word(status), locale), status != Status::holds};
    // Passing is the rule: without a frame around it, what does not pass is seen.
    if (status != Status::holds) cell.frame = status;
    return cell;
}

Cell severity_cell(checks::Severity severity, const Locale& locale) {
    const std::string word = written(wording::word(severity), locale);
    switch (severity) {
        case checks::Severity::fails:
            return {word, true, {}, Status::fails};
        case checks::Severity::missing:
            return {word, true, {}, Status::missing_evidence};
        case checks::Severity::caution:
            break;
    }
    return {word, false, {}, Status::holds};
}

Status frame_of(review::Verdict verdict) {
    switch (verdict) {
        case review::Verdict::adequate:
            return Status::holds;
        case review::Verdict::inadequate:
            return Status::fails;
        case review::Verdict::incomplete:
            break;
    }
    return Status::missing_evidence;
}

Cell verdict_cell(review::Verdict verdict, const Locale& locale) {
    return {written(wording::word(verdict), locale), true, {}, frame_of(verdict)};
}

std::vector<Cell> finding_cells(const checks::Finding& finding, const Locale& locale) {
    return {severity_cell(finding.severity, locale), words_cell(written(model::part_name(finding.part), locale)),
            words_cell(written(finding.message, locale)), words_cell(format::text(finding.clause, locale))};
}

Measure measure(const checks::CheckResult& result) {
    return {result.demand, result.capacity, result.unit, result.ratio, result.status};
}

std::vector<Column> with_measure(std::vector<Column> first, const Locale& locale) {
    using drawing::Across;
    first.push_back({written(phrase("demand"), locale), 0.086, Across::right});
    first.push_back({written(phrase("capacity"), locale), 0.096, Across::right});
    first.push_back({written(phrase("unit"), locale), 0.064});
    first.push_back({written(phrase("D/C"), locale), 0.07, Across::right});
    first.push_back({written(phrase("status"), locale), 0.124});
    return first;
}

std::vector<Cell> with_measure(std::vector<Cell> first, const Measure& measure, const Locale& locale) {
    const bool known = measure.status != Status::missing_evidence;
    const bool passes = measure.status == Status::holds;
    first.push_back(words_cell(format::number_text(measure.demand, measure.unit, locale.system)));
    first.push_back(words_cell(known ? format::number_text(measure.capacity, measure.unit, locale.system) : "-"));
    first.push_back(words_cell(unit_of(measure.unit, locale.system)));
    first.push_back({known ? format::ratio_text(measure.ratio) : "-", !passes});
    first.push_back(status_cell(measure.status, locale));
    return first;
}

}  // namespace toehold::paper::report
