#pragma once
// Small pieces that the report, the letter and the comparison are put together from.
#include "paper/document.h"
#include "paper/papers.h"
#include "paper/words.h"

#include <string>
#include <string_view>
#include <vector>

namespace toehold::paper::report {

using Blocks = std::vector<Block>;

/// What every section is written from.
struct Source {
    const review::Review& review;
    const Issue& issue;
};

[[nodiscard]] Paragraph paragraph(std::string words);
[[nodiscard]] Paragraph fine_print(std::string words);
/// With a mark before it, indented by as much as the mark takes.
[[nodiscard]] Paragraph item(std::string mark, std::string words);

/// Value and unit as they are written on paper, in the reader's system.
[[nodiscard]] std::string figure(double value, std::string_view unit, units::System system);
/// `3 3/8 in`, or mm.
[[nodiscard]] std::string length(double length_in, units::System system);
[[nodiscard]] std::string unit_of(std::string_view unit, units::System system);

/// Begins with a capital and ends with a full stop.
[[nodiscard]] std::string sentence(std::string words);
/// `anchors A, B and C`, `joists J1 and J2 at beam S2` for several of one kind; else each in full. Not empty.
[[nodiscard]] std::string named_together(const std::vector<std::string>& subjects);
/// `1 result`, `2 results`.
[[nodiscard]] std::string counted(std::size_t count, std::string_view one, std::string_view several);

[[nodiscard]] Cell words_cell(std::string words);
/// The status; in its frame where it does not hold.
[[nodiscard]] Cell status_cell(checks::Status status);
[[nodiscard]] Cell severity_cell(checks::Severity severity);
[[nodiscard]] Cell verdict_cell(review::Verdict verdict);
[[nodiscard]] checks::Status frame_of(review::Verdict verdict);

/// Demand, capacity, unit, D/C and status, as a check, a link of the load path or a remark's result has them.
struct Measure {
    double demand = 0.0, capacity = 0.0;
    std::string unit;
    double ratio = 0.0;
    checks::Status status = checks::Status::holds;
};
[[nodiscard]] Measure measure(const checks::CheckResult& result);
/// The first columns, or cells, and after them five of the measure. What is not known reads `-`, an infinite ratio too.
[[nodiscard]] std::vector<Column> with_measure(std::vector<Column> first);
[[nodiscard]] std::vector<Cell> with_measure(std::vector<Cell> first, const Measure& measure, units::System system);
/// Of a result in words: `0.91`, `nothing there to resist it`, `not known`.
[[nodiscard]] std::string ratio_words(const Measure& measure);

/// Name of the heading of a check's worked steps.
[[nodiscard]] std::string check_name(std::string_view id);

/// Program, date and the running head and foot of a paper about one detail.
[[nodiscard]] Document titled(const Issue& issue, const std::string& title, const std::string& detail);

}  // namespace toehold::paper::report
