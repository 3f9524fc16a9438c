#include "cli/check/summary.h"

#include "export/text/columns.h"
#include "export/text/table.h"
#include "format/figures.h"
#include "wording/status.h"
#include "wording/verdict.h"

#include <algorithm>
#include <filesystem>
#include <tuple>
#include <utility>

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
        return row.begun && (row.headline ? verdict == row.headline->verdict : !verdict);
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
    const long left = std::count_if(rows.begin(), rows.end(), [](const SummaryRow& row) { return !row.begun; });
    if (left > 0) line = phrase("{}, {} not reviewed (stopped)", std::move(line), left);
    return exporting::paragraph(format::text(line, locale));
}

/// Where a verdict stands among groups: what must go back to its writer first.
int place_of(const std::optional<Verdict>& verdict) {
    if (!verdict) return 2;
    return *verdict == Verdict::inadequate ? 0 : *verdict == Verdict::incomplete ? 1 : 3;
}

Phrase group_words(const CauseGroup& group) {
    const std::size_t count = group.rows.size();
    if (!group.verdict) return phrase("UNUSABLE: {}", count);
    const Phrase verdict = wording::word(*group.verdict);
    if (*group.verdict == Verdict::adequate) return phrase("{}: {}", verdict, count);
    if (group.cause.empty()) return phrase("{}, no check could be made: {}", verdict, count);
    return *group.verdict == Verdict::incomplete ? phrase("{}, not specified: {}: {}", verdict, group.cause, count)
                                                 : phrase("{}, first cause {}: {}", verdict, group.cause, count);
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
    const Phrase& words = row.headline->words;
    return {{file, format::text(wording::word(row.headline->verdict), locale),
             ratio ? format::ratio_text(*ratio) : std::string("-"), findings_cell(row.headline->counts, locale)},
            {format::text(words.empty() ? phrase("no check could be made") : words, locale)}};
}

}  // namespace

Headline headline(const review::Review& review) {
    Headline headline{review.detail,          review.verdict, review::cause_of(review),
                      wording::cause(review), std::nullopt,   review.facts.counts};
    const bool by_a_check =
        review.verdict == Verdict::adequate || (review.facts.first_cause && !review.facts.first_finding);
    if (by_a_check) headline.ratio = review.governing.ratio;
    return headline;
}

std::vector<CauseGroup> by_first_cause(const std::vector<SummaryRow>& rows) {
    std::vector<CauseGroup> groups;
    for (const SummaryRow& row : rows) {
        if (!row.begun) continue;
        CauseGroup own;
        if (row.headline) own.verdict = row.headline->verdict;
        if (row.headline && row.headline->verdict != Verdict::adequate) own.cause = row.headline->cause.title;
        auto group = std::find_if(groups.begin(), groups.end(), [&own](const CauseGroup& one) {
            return one.verdict == own.verdict && one.cause == own.cause;
        });
        if (group == groups.end()) group = groups.insert(groups.end(), std::move(own));
        group->rows.push_back(&row);
    }
    std::stable_sort(groups.begin(), groups.end(), [](const CauseGroup& one, const CauseGroup& other) {
        return std::make_tuple(place_of(one.verdict), other.rows.size(), format::english(one.cause)) <
               std::make_tuple(place_of(other.verdict), one.rows.size(), format::english(other.cause));
    });
    return groups;
}

std::string summary_text(const std::vector<SummaryRow>& rows, const Locale& locale) {
    const fs::path folder = common_folder(rows);
    std::vector<Row> lines;
    lines.reserve(rows.size());
    for (const CauseGroup& group : by_first_cause(rows)) {
        for (const SummaryRow* row : group.rows) {
            lines.push_back(summary_row(*row, !folder.empty(), locale));
            if (row == group.rows.front()) lines.back().above = format::text(group_words(group), locale);
        }
    }
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
