#include "cli/check/summary.h"
#include "export/csv/cells.h"
#include "export/json/keys.h"

namespace toehold::cli {
namespace {

using exporting::csv_cell;
using exporting::csv_line;

std::string number(std::size_t count) { return std::to_string(count); }

std::string row_of(const SummaryRow& row) {
    if (!row.headline) {
        return csv_line({csv_cell(row.file), "", row.begun ? "unusable" : "not_reviewed", "", "", "", "", "", "", "",
                         "", csv_cell(format::english(row.trouble))});
    }
    const Headline& of = *row.headline;
    return csv_line({csv_cell(row.file), csv_cell(of.detail), std::string(exporting::key(of.verdict)),
                     csv_cell(of.cause.id), csv_cell(format::english(of.cause.title)),
                     csv_cell(model::key(of.cause.part)), exporting::csv_number(of.cause.ratio),
                     number(of.counts.failing()), number(of.counts.not_specified + of.counts.findings_missing),
                     number(of.counts.findings_fail), number(of.counts.cautions), csv_cell(format::english(of.words))});
}

}  // namespace

std::string summary_csv(const std::vector<SummaryRow>& rows) {
    std::string text = csv_line({"file", "detail", "verdict", "first cause", "title", "subject", "demand over capacity",
                                 "checks failing", "not specified", "findings failing", "cautions", "note"});
    for (const CauseGroup& group : by_first_cause(rows)) {
        for (const SummaryRow* row : group.rows) text += row_of(*row);
    }
    for (const SummaryRow& row : rows) {
        if (!row.begun) text += row_of(row);
    }
    return text;
}

}  // namespace toehold::cli
