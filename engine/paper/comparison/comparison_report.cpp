// Two details beside each other, or two bases of one: the verdict first, then input, checks and findings.
#include "format/figures.h"
#include "paper/papers.h"
#include "paper/report/blocks.h"
#include "review/comparison.h"
#include "wording/outcomes.h"
#include "wording/status.h"
#include "wording/verdict.h"

#include <cmath>

namespace toehold::paper {
namespace comparison {
namespace {

using drawing::Across;
using format::Locale;
using format::Phrase;
using format::phrase;
using report::Blocks;
using report::words_cell;
using review::CheckDifference;
using review::Comparison;
using review::Side;

Phrase governs(const Side& side) {
    return side.governing.check.empty() ? phrase("no check could be made") : wording::governing(side.governing);
}

Phrase tension(const Side& side) {
    const auto& largest = side.facts.largest_tension;
    if (!largest) return phrase("no demand was found");
    return phrase("{} on {}, push toward {} deg", format::Quantity{largest->tension_lb, "lb"},
                  model::part_name(largest->part), format::degrees_text(format::degrees(largest->direction_rad)));
}

Table sides_table(const Comparison& comparison, const Locale& locale) {
    const Side &first = comparison.first, &second = comparison.second;
    Table table;
    table.columns = {{"", 0.16}, {first.label, 0.42}, {second.label, 0.42}};
    const auto add = [&](const Phrase& label, Cell one, Cell other) {
        table.rows.push_back({{written(label, locale), true}, std::move(one), std::move(other)});
    };
    const auto words = [&locale](const Phrase& phrase) { return words_cell(written(phrase, locale)); };
    add(phrase("Detail"), words_cell(first.detail), words_cell(second.detail));
    add(phrase("SHA-256"), words_cell(first.input_sha256), words_cell(second.input_sha256));
    add(phrase("Verdict"), report::verdict_cell(first.verdict, locale), report::verdict_cell(second.verdict, locale));
    add(phrase("Reason"), words(wording::verdict_reason(first)), words(wording::verdict_reason(second)));
    add(phrase("Governs"), words(governs(first)), words(governs(second)));
    add(phrase("Largest tension"), words(tension(first)), words(tension(second)));
    return table;
}

Phrase verdict_sentence(const Comparison& comparison) {
    const Side &first = comparison.first, &second = comparison.second;
    if (!comparison.verdict_turns())
        return phrase("The verdict is the same: both are {}.", wording::word(first.verdict));
    return phrase("The verdict changes: {} is {}, {} is {}.", first.label, wording::word(first.verdict), second.label,
                  wording::word(second.verdict));
}

void add_input(Blocks& blocks, const Comparison& comparison, const Locale& locale) {
    blocks.emplace_back(report::section(1, phrase("Input"), "input", locale));
    if (comparison.input.empty()) {
        blocks.emplace_back(report::paragraph(written(phrase("Nothing differs."), locale)));
        return;
    }
    Table table;
    table.columns = {
        {written(phrase("value"), locale), 0.4}, {comparison.first.label, 0.3}, {comparison.second.label, 0.3}};
    const auto shown = [](const std::string& words) { return words_cell(words.empty() ? "-" : words); };
    for (const review::InputDifference& one : comparison.input)
        table.rows.push_back({words_cell(one.place), shown(one.first), shown(one.second)});
    blocks.emplace_back(std::move(table));
}

Cell ratio(const std::optional<checks::CheckResult>& result, const Locale& locale) {
    if (!result) return words_cell(written(phrase("absent"), locale));
    return words_cell(result->status == checks::Status::missing_evidence ? "-" : format::ratio_text(result->ratio));
}

Cell status(const std::optional<checks::CheckResult>& result, const Locale& locale) {
    return result ? report::status_cell(result->status, locale) : words_cell("");
}

/// Of the ratio, with its sign; `-` where one side has none.
std::string change(const CheckDifference& one) {
    const auto known = [](const std::optional<checks::CheckResult>& result) {
        return result && result->status != checks::Status::missing_evidence && std::isfinite(result->ratio);
    };
    if (!known(one.first) || !known(one.second)) return "-";
    const double step = one.second->ratio - one.first->ratio;
    const std::string size = format::ratio_text(std::abs(step));
    if (size == "0.00") return "0.00";
    return (step > 0.0 ? "+" : "−") + size;
}

Phrase same_words(std::size_t same) {
    if (same == 0) return {};
    return same == 1 ? phrase("1 result is the same.") : phrase("{} results are the same.", same);
}

void add_checks(Blocks& blocks, const Comparison& comparison, const Locale& locale) {
    blocks.emplace_back(report::section(2, phrase("Checks"), "checks", locale));
    Table table;
    const auto column = [&](const Phrase& title, double share, Across across = Across::left) {
        table.columns.push_back({written(title, locale), share, across});
    };
    column(phrase("check"), 0.28);
    column(phrase("part"), 0.2);
    column(phrase("first D/C"), 0.08, Across::right);
    column(phrase("status"), 0.12);
    column(phrase("second D/C"), 0.1, Across::right);
    column(phrase("status"), 0.12);
    column(phrase("change"), 0.09, Across::right);
    std::size_t same = 0;
    for (const CheckDifference& one : comparison.checks) {
        if (one.same()) {
            ++same;
            continue;
        }
        const bool turns = one.status_turns();
        table.rows.push_back({{written(one.title, locale), turns},
                              {written(model::part_name(one.part), locale), turns},
                              ratio(one.first, locale),
                              status(one.first, locale),
                              ratio(one.second, locale),
                              status(one.second, locale),
                              words_cell(change(one))});
    }
    if (table.rows.empty()) {
        blocks.emplace_back(report::paragraph(sentences({phrase("No result differs."), same_words(same)}, locale)));
        return;
    }
    blocks.emplace_back(report::paragraph(sentences(
        {phrase("First is {}, second is {}. Results that pass on one side only are listed first, in bold; then those "
                "whose ratio changes most.",
                comparison.first.label, comparison.second.label),
         same_words(same)},
        locale)));
    blocks.emplace_back(std::move(table));
}

void add_findings(Blocks& blocks, const Comparison& comparison, const Locale& locale) {
    blocks.emplace_back(report::section(3, phrase("Findings"), "findings", locale));
    if (comparison.findings.empty()) {
        blocks.emplace_back(report::paragraph(written(phrase("The findings are the same."), locale)));
        return;
    }
    Table table;
    table.columns = {{written(phrase("only in, or as worded in"), locale), 0.2},
                     {"", 0.1},
                     {written(phrase("about"), locale), 0.12},
                     {written(phrase("finding"), locale), 0.38},
                     {written(phrase("clause"), locale), 0.2}};
    const auto add = [&](const std::optional<checks::Finding>& finding, const std::string& side) {
        if (!finding) return;
        std::vector<Cell> row = report::finding_cells(*finding, locale);
        row.insert(row.begin(), words_cell(side));
        table.rows.push_back(std::move(row));
    };
    for (const review::FindingDifference& one : comparison.findings) {
        add(one.first, comparison.first.label);
        add(one.second, comparison.second.label);
    }
    blocks.emplace_back(std::move(table));
}

}  // namespace
}  // namespace comparison

Document comparison_report(const review::Comparison& comparison, const Issue& issue) {
    using format::phrase;
    const format::Locale& locale = issue.locale;
    const std::string both = written(phrase("{} and {}", comparison.first.label, comparison.second.label), locale);
    Document document = report::titled(issue, phrase("Comparison of two guard post bases"), both);
    report::Blocks& blocks = document.blocks;
    blocks.emplace_back(report::title(written(phrase("Comparison"), locale), drawing::TextSize::title));
    if (!issue.project.empty())
        blocks.emplace_back(report::paragraph(written(phrase("Project: {}", issue.project), locale)));
    blocks.emplace_back(
        report::title(written(comparison::verdict_sentence(comparison), locale), drawing::TextSize::normal));
    blocks.emplace_back(comparison::sides_table(comparison, locale));
    comparison::add_input(blocks, comparison, locale);
    comparison::add_checks(blocks, comparison, locale);
    comparison::add_findings(blocks, comparison, locale);
    return document;
}

}  // namespace toehold::paper
