#include "cli/summary.h"

#include "export/text/columns.h"
#include "export/text/table.h"
#include "format/figures.h"
#include "wording/status.h"

#include <fmt/format.h>

#include <algorithm>
#include <filesystem>

namespace toehold::cli {
namespace {

namespace fs = std::filesystem;

using exporting::Align;
using exporting::Row;
using review::Verdict;

/// The one folder all files are in; empty where they are not.
fs::path common_folder(const std::vector<SummaryRow>& rows) {
    if (rows.empty()) return {};
    const fs::path folder = fs::path(rows.front().file).parent_path();
    const auto elsewhere = [&](const SummaryRow& row) { return fs::path(row.file).parent_path() != folder; };
    return std::any_of(rows.begin(), rows.end(), elsewhere) ? fs::path() : folder;
}

long count(const std::vector<SummaryRow>& rows, std::optional<Verdict> verdict) {
    return std::count_if(rows.begin(), rows.end(), [&](const SummaryRow& row) {
        return row.headline ? verdict == row.headline->verdict : !verdict;
    });
}

std::string first_line(const std::vector<SummaryRow>& rows) {
    std::string text = fmt::format("{} {}: {} adequate, {} inadequate, {} incomplete", rows.size(),
                                   rows.size() == 1 ? "detail" : "details", count(rows, Verdict::adequate),
                                   count(rows, Verdict::inadequate), count(rows, Verdict::incomplete));
    if (const long unusable = count(rows, std::nullopt); unusable > 0) text += fmt::format(", {} unusable", unusable);
    return exporting::paragraph(text);
}

std::string findings_cell(const Headline& headline) {
    constexpr std::array<const char*, 3> words{"fails", "missing", "caution"};
    std::vector<std::string> parts;
    for (std::size_t kind = 0; kind < words.size(); ++kind) {
        if (headline.findings.at(kind) > 0) {
            parts.push_back(fmt::format("{} {}", headline.findings.at(kind), words.at(kind)));
        }
    }
    return parts.empty() ? std::string("none") : fmt::format("{}", fmt::join(parts, ", "));
}

Row summary_row(const SummaryRow& row, bool bare_name) {
    const std::string file = bare_name ? fs::path(row.file).filename().string() : row.file;
    if (!row.headline) return {{file, "UNUSABLE", "-", "-"}, {row.trouble}};
    const review::Governing& governing = row.headline->governing;
    const bool governed = !governing.check.empty();
    return {{file, std::string(wording::word(row.headline->verdict)),
             governed ? format::ratio_text(governing.ratio) : std::string("-"), findings_cell(*row.headline)},
            {governed ? governing.title + ", " + governing.subject : std::string("no check could be made")}};
}

}  // namespace

Headline headline(const review::Review& review) {
    Headline result{review.verdict, review.governing, {}};
    for (const checks::Finding& finding : review.findings) {
        ++result.findings.at(static_cast<std::size_t>(finding.severity));
    }
    return result;
}

std::string summary_text(const std::vector<SummaryRow>& rows) {
    const fs::path folder = common_folder(rows);
    std::vector<Row> lines;
    lines.reserve(rows.size());
    for (const SummaryRow& row : rows) lines.push_back(summary_row(row, !folder.empty()));
    std::string text = first_line(rows);
    if (!folder.empty()) text += exporting::paragraph("in " + folder.string());
    return text + "\n" + exporting::table({{"file"}, {"verdict"}, {"D/C", Align::right}, {"findings"}}, lines) + "\n" +
           exporting::paragraph(
               "Below each file what governs it; D/C: its demand over capacity. The whole review of one file: toehold "
               "check "
               "FILE; of all of them: --full.");
}

}  // namespace toehold::cli
