#include "cli/summary.h"

#include "export/text/columns.h"
#include "export/text/table.h"
#include "format/figures.h"
#include "wording/status.h"
#include "wording/verdict.h"

#include <algorithm>
#include <filesystem>

namespace toehold::cli {
namespace {

namespace fs = std::filesystem;

using exporting::Align;
using exporting::Row;
using format::Locale;
using format::Phrase;
using format::phrase;
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

std::string first_line(const std::vector<SummaryRow>& rows, const Locale& locale) {
    Phrase line =
        phrase("{} details: {} adequate, {} inadequate, {} incomplete", rows.size(), count(rows, Verdict::adequate),
               count(rows, Verdict::inadequate), count(rows, Verdict::incomplete));
    if (rows.size() == 1) {
        line = phrase("1 detail: {} adequate, {} inadequate, {} incomplete", count(rows, Verdict::adequate),
                      count(rows, Verdict::inadequate), count(rows, Verdict::incomplete));
    }
    if (const long unusable = count(rows, std::nullopt); unusable > 0)
        line = phrase("{}, {} unusable", std::move(line), unusable);
    return exporting::paragraph(format::text(line, locale));
}

std::string findings_cell(const review::Counts& counts, const Locale& locale) {
    std::string cell;
    const auto add = [&](std::size_t count, const Phrase& words) {
        if (count > 0) cell += (cell.empty() ? "" : ", ") + format::text(words, locale);
    };
    add(counts.findings_fail, phrase("{} fail", counts.findings_fail));
    add(counts.findings_missing, phrase("{} not specified", counts.findings_missing));
    add(counts.cautions, phrase("{} caution", counts.cautions));
    return cell.empty() ? format::text(phrase("none"), locale) : cell;
}

Row summary_row(const SummaryRow& row, bool bare_name, const Locale& locale) {
    const std::string file = bare_name ? fs::path(row.file).filename().string() : row.file;
    if (!row.headline)
        return {{file, format::text(phrase("UNUSABLE"), locale), "-", "-"}, {format::text(row.trouble, locale)}};
    const std::optional<double>& ratio = row.headline->ratio;
    return {
        {file, format::text(wording::word(row.headline->verdict), locale),
         ratio ? format::ratio_text(*ratio) : std::string("-"), findings_cell(row.headline->counts, locale)},
        {format::text(row.headline->cause.empty() ? phrase("no check could be made") : row.headline->cause, locale)}};
}

}  // namespace

Headline headline(const review::Review& review) {
    Headline headline{review.verdict, wording::cause(review), std::nullopt, review.facts.counts};
    const bool by_a_check =
        review.verdict == review::Verdict::adequate || (review.facts.first_cause && !review.facts.first_finding);
    if (by_a_check) headline.ratio = review.governing.ratio;
    return headline;
}

std::string summary_text(const std::vector<SummaryRow>& rows, const Locale& locale) {
    const fs::path folder = common_folder(rows);
    std::vector<Row> lines;
    lines.reserve(rows.size());
    for (const SummaryRow& row : rows) lines.push_back(summary_row(row, !folder.empty(), locale));
    std::string text = first_line(rows, locale);
    if (!folder.empty()) text += exporting::paragraph(format::text(phrase("in {}", folder.string()), locale));
    const std::vector<exporting::Column> columns = {{format::text(phrase("file"), locale)},
                                                    {format::text(phrase("verdict"), locale)},
                                                    {format::text(phrase("D/C"), locale), Align::right},
                                                    {format::text(phrase("findings"), locale)}};
    return text + "\n" + exporting::table(columns, lines) + "\n" +
           exporting::paragraph(format::text(
               phrase("Below each file, the first cause of its verdict, or what is nearest its limit; D/C: demand over "
                      "capacity there. The whole review of one file: toehold check FILE; of all of them: --full."),
               locale));
}

}  // namespace toehold::cli
