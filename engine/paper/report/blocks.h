#pragma once
// Small pieces that the report, the letter and the comparison are put together from.
#include "checks/result.h"
#include "paper/document.h"
#include "paper/issue.h"
#include "paper/words.h"
#include "review/facts.h"

#include <string>
#include <string_view>
#include <vector>

namespace toehold::review {
struct Review;
}

namespace toehold::paper::report {

using Blocks = std::vector<Block>;

/// What every section is written from.
struct Source {
    const review::Review& review;
    const Issue& issue;
    [[nodiscard]] const format::Locale& locale() const { return issue.locale; }
    [[nodiscard]] std::string text(const format::Phrase& phrase) const { return written(phrase, issue.locale); }
};

[[nodiscard]] Paragraph paragraph(std::string words);
[[nodiscard]] Paragraph fine_print(std::string words);
/// With a mark before it, indented by as much as the mark takes.
[[nodiscard]] Paragraph item(std::string mark, std::string words);
/// Bold, and larger than the text.
[[nodiscard]] Paragraph title(std::string words, drawing::TextSize size);
/// `4  Demand at the anchors`, with the name that links lead to.
[[nodiscard]] Heading section(int number, const format::Phrase& words, std::string name, const format::Locale& locale);

[[nodiscard]] Cell words_cell(std::string words);
/// The status; in its frame where it does not pass.
[[nodiscard]] Cell status_cell(checks::Status status, const format::Locale& locale);
[[nodiscard]] Cell severity_cell(checks::Severity severity, const format::Locale& locale);
[[nodiscard]] Cell verdict_cell(review::Verdict verdict, const format::Locale& locale);
[[nodiscard]] checks::Status frame_of(review::Verdict verdict);
/// Severity, what it is about, the finding, the clause.
[[nodiscard]] std::vector<Cell> finding_cells(const checks::Finding& finding, const format::Locale& locale);

/// Demand, capacity, unit, D/C and status, as a check, a link of the load path or a remark's result has them.
struct Measure {
    double demand = 0.0, capacity = 0.0;
    std::string unit;
    double ratio = 0.0;
    checks::Status status = checks::Status::holds;
};
[[nodiscard]] Measure measure(const checks::CheckResult& result);
/// The first columns, or cells, and after them five of the measure. What is not known reads `-`, an infinite ratio too.
[[nodiscard]] std::vector<Column> with_measure(std::vector<Column> first, const format::Locale& locale);
[[nodiscard]] std::vector<Cell> with_measure(std::vector<Cell> first, const Measure& measure,
                                             const format::Locale& locale);

/// Name of the heading of a check's worked steps.
[[nodiscard]] std::string check_name(std::string_view id);

/// Program, date and the running head and foot of a paper about one detail.
[[nodiscard]] Document titled(const Issue& issue, const format::Phrase& title, const std::string& detail);

}  // namespace toehold::paper::report
