#include "export/text/search_text.h"

#include "export/text/columns.h"
#include "export/text/table.h"
#include "format/figures.h"
#include "search/score/robustness.h"
#include "wording/search.h"

#include <fmt/format.h>

#include <algorithm>

namespace toehold::exporting {
namespace {

using format::Locale;
using format::Phrase;
using format::phrase;
using search::Result;
using search::Score;

std::string said(const Phrase& words, const Locale& locale) { return format::text(words, locale); }

/// With what has no price set apart, so that it is not taken for the whole.
std::string cost_text(const Score& score) {
    return fmt::format("{:.2f}{}", score.steel_cost, score.unpriced > 0 ? "+" : "");
}

std::vector<Column> columns_of(const SearchTextOptions& options) {
    const Locale& locale = options.locale;
    std::vector<Column> columns{{said(phrase("candidate"), locale), Align::right},
                                {said(phrase("steel"), locale), Align::right}};
    if (!options.currency.empty())
        columns.push_back({said(phrase("cost, {}", options.currency), locale), Align::right});
    for (const Phrase& heading : {phrase("pieces"), phrase("anchors"), phrase("ratio"), phrase("ratio misplaced")})
        columns.push_back({said(heading, locale), Align::right});
    return columns;
}

Row row_of(const search::Space& space, const Result& result, const SearchTextOptions& options) {
    const Score& score = result.score;
    Row row{{std::to_string(result.candidate), format::figure_text(score.weight_lb, "lb", options.locale.system)}, {}};
    if (!options.currency.empty()) row.cells.push_back(cost_text(score));
    row.cells.push_back(std::to_string(score.pieces));
    row.cells.push_back(std::to_string(score.anchors));
    row.cells.push_back(format::ratio_text(score.governing_ratio));
    row.cells.push_back(score.robustness_ratio ? format::ratio_text(*score.robustness_ratio) : std::string());
    if (const Phrase choices = wording::choices(space, result.candidate); !choices.empty())
        row.below.push_back(said(choices, options.locale));
    return row;
}

/// What the table's columns are, for those that do not say it.
Phrase legend(const search::Outcome& outcome, std::size_t shown, const SearchTextOptions& options) {
    const bool unpriced = std::any_of(outcome.front.begin(), outcome.front.begin() + static_cast<long>(shown),
                                      [](const Result& result) { return result.score.unpriced > 0; });
    Phrase words = phrase(
        "Ratio: demand over capacity of the check that governs; misplaced: with the holes {} and the blocks {} off.",
        format::Dimension{search::hole_misplaced_in}, format::Dimension{search::block_misplaced_in});
    if (!options.currency.empty() && unpriced)
        words = phrase("{} + after a cost: some pieces have no price in the table.", words);
    return words;
}

std::string front_text(const search::Space& space, const search::Outcome& outcome, const SearchTextOptions& options) {
    const std::size_t shown = std::min(options.top, outcome.front.size());
    std::vector<Row> rows;
    for (std::size_t place = 0; place < shown; ++place) rows.push_back(row_of(space, outcome.front[place], options));
    std::string text =
        "\n" +
        paragraph(said(
            phrase(
                "Best results. No other candidate is at least as good in steel, cost, pieces, anchors and ratio, and "
                "better in one:"),
            options.locale)) +
        "\n" + table(columns_of(options), rows) + "\n" +
        paragraph(said(legend(outcome, shown, options), options.locale));
    if (shown < outcome.front.size())
        text +=
            paragraph(said(phrase("{} of {} shown; --top shows more.", shown, outcome.front.size()), options.locale));
    return text;
}

std::string nearest_text(const search::Space& space, const search::NearestMiss& nearest, const Locale& locale) {
    std::string text =
        "\n" + paragraph(said(phrase("Nearest miss, candidate {}: {}", nearest.candidate, wording::stopped_by(nearest)),
                              locale));
    if (const Phrase choices = wording::choices(space, nearest.candidate); !choices.empty())
        text += paragraph(said(choices, locale), "  ");
    if (nearest.failing > 1)
        text += paragraph(said(phrase("{} checks and findings fail.", nearest.failing), locale), "  ");
    if (!nearest.would_change.empty()) text += paragraph(said(nearest.would_change, locale), "  ");
    return text;
}

/// How many candidates each of these stops; empty without any.
std::string counted(const std::vector<wording::StoppedBy>& all, const Phrase& above, const Phrase& heading,
                    const Locale& locale) {
    std::vector<Row> rows;
    rows.reserve(all.size());
    for (const wording::StoppedBy& one : all)
        rows.push_back({{std::to_string(one.candidates), said(one.limit, locale)}, {}});
    if (rows.empty()) return {};
    return "\n" + paragraph(said(above, locale)) +
           table({{said(phrase("candidates"), locale), Align::right}, {said(heading, locale)}}, rows);
}

std::string limits_text(const search::Outcome& outcome, const Locale& locale) {
    return counted(wording::stopped_by(outcome), phrase("What stops the others, the limit met first:"), phrase("limit"),
                   locale);
}

std::string clashes_text(const search::Space& space, const search::Outcome& outcome, const Locale& locale) {
    constexpr std::size_t most = 6;
    return counted(wording::clashes(space, outcome, most), phrase("Which choices do not go together, and why:"),
                   phrase("choice"), locale);
}

}  // namespace

std::string search_text(const std::string& name, const search::Space& space, const search::Outcome& outcome,
                        const SearchTextOptions& options) {
    const Locale& locale = options.locale;
    std::string text = paragraph(name + ": " + said(wording::search_outcome(outcome), locale));
    if (!outcome.front.empty()) text += front_text(space, outcome, options);
    if (outcome.nearest) text += nearest_text(space, *outcome.nearest, locale);
    return text + limits_text(outcome, locale) + clashes_text(space, outcome, locale);
}

}  // namespace toehold::exporting
