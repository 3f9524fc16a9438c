// Figures and cells of tables.
#include "format/figures.h"
#include "paper/report/blocks.h"
#include "paper/report/symbols.h"
#include "wording/status.h"

#include <cmath>

namespace toehold::paper::report {

using checks::Status;

std::string figure(double value, std::string_view unit, units::System system) {
    const format::Figure figure = format::in_system(value, unit, system);
    const std::string number = written_number(format::number_text(figure.value));
    return figure.unit.empty() ? number : number + " " + written_unit(figure.unit);
}

std::string length(double length_in, units::System system) {
    return system == units::System::us ? units::fraction_in(length_in) : figure(length_in, "in", system);
}

std::string unit_of(std::string_view unit, units::System system) {
    return written_unit(format::in_system(0.0, unit, system).unit);
}

Cell words_cell(std::string words) { return {std::move(words)}; }

Cell status_cell(Status status) {
    Cell cell{std::string(wording::word(status)), status != Status::holds};
    // What holds is the rule: without a frame around it, what does not hold is seen.
    if (status != Status::holds) cell.frame = status;
    return cell;
}

Cell severity_cell(checks::Severity severity) {
    const std::string word(wording::word(severity));
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

Cell verdict_cell(review::Verdict verdict) {
    return {std::string(wording::word(verdict)), true, {}, frame_of(verdict)};
}

Measure measure(const checks::CheckResult& result) {
    return {result.demand, result.capacity, result.unit, result.ratio, result.status};
}

std::vector<Column> with_measure(std::vector<Column> first) {
    using drawing::Across;
    first.push_back({"demand", 0.086, Across::right});
    first.push_back({"capacity", 0.096, Across::right});
    first.push_back({"unit", 0.064});
    first.push_back({"D/C", 0.07, Across::right});
    first.push_back({"status", 0.124});
    return first;
}

std::vector<Cell> with_measure(std::vector<Cell> first, const Measure& measure, units::System system) {
    const bool known = measure.status != Status::missing_evidence;
    const bool holds = measure.status == Status::holds;
    first.push_back(words_cell(format::number_text(measure.demand, measure.unit, system)));
    first.push_back(words_cell(known ? format::number_text(measure.capacity, measure.unit, system) : "-"));
    first.push_back(words_cell(unit_of(measure.unit, system)));
    first.push_back({known ? format::ratio_text(measure.ratio) : "-", !holds});
    first.push_back(status_cell(measure.status));
    return first;
}

std::string ratio_words(const Measure& measure) {
    if (measure.status == Status::missing_evidence) return "not known";
    if (!std::isfinite(measure.ratio)) return "nothing there to resist it";
    return format::ratio_text(measure.ratio);
}

}  // namespace toehold::paper::report
