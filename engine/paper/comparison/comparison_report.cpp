// Two details beside each other, or two bases of one: the verdict first, then input, checks and findings.
#include "format/figures.h"
#include "paper/papers.h"
#include "paper/report/blocks.h"
#include "wording/status.h"

#include <cmath>

#include <fmt/format.h>

namespace toehold::paper {
namespace comparison {
namespace {

using drawing::Across;
using report::Blocks;
using review::CheckDifference;
using review::Comparison;
using review::Side;
using units::System;

std::string governs(const Side& side) {
    if (side.governing.check.empty()) return "no check could be made";
    const std::string ratio = std::isfinite(side.governing.ratio) ? "D/C " + format::ratio_text(side.governing.ratio)
                                                                  : std::string("nothing there to resist it");
    return side.governing.title + ", " + side.governing.subject + ": " + ratio;
}

std::string pull(const Side& side, System system) {
    if (!side.largest_pull) return "no demand was found";
    return fmt::format("{} on anchor {}, push towards {} deg",
                       report::figure(side.largest_pull->tension_lb, "lb", system), side.largest_pull->anchor,
                       format::degrees_text(format::degrees(side.largest_pull->direction_rad)));
}

Table sides_table(const Comparison& comparison, System system) {
    const Side &first = comparison.first, &second = comparison.second;
    Table table;
    table.columns = {{"", 0.16}, {first.label, 0.42}, {second.label, 0.42}};
    const auto add = [&table](const char* label, Cell one, Cell other) {
        table.rows.push_back({{label, true}, std::move(one), std::move(other)});
    };
    using report::words_cell;
    add("Detail", words_cell(first.detail), words_cell(second.detail));
    add("SHA-256", words_cell(first.input_sha256), words_cell(second.input_sha256));
    add("Verdict", report::verdict_cell(first.verdict), report::verdict_cell(second.verdict));
    add("Reason", words_cell(report::sentence(first.reason)), words_cell(report::sentence(second.reason)));
    add("Governs", words_cell(governs(first)), words_cell(governs(second)));
    add("Largest pull", words_cell(pull(first, system)), words_cell(pull(second, system)));
    return table;
}

std::string verdict_sentence(const Comparison& comparison) {
    const std::string first(wording::word(comparison.first.verdict)), second(wording::word(comparison.second.verdict));
    if (!comparison.verdict_turns()) return "The verdict stays: both are " + first + ".";
    return fmt::format("The verdict turns: {} is {}, {} is {}.", comparison.first.label, first, comparison.second.label,
                       second);
}

void add_input(Blocks& blocks, const Comparison& comparison) {
    blocks.emplace_back(Heading{1, "1  Input", "input"});
    if (comparison.input.empty()) {
        blocks.emplace_back(report::paragraph("Nothing differs."));
        return;
    }
    Table table;
    table.columns = {{"value", 0.4}, {comparison.first.label, 0.3}, {comparison.second.label, 0.3}};
    const auto written = [](const std::string& words) { return report::words_cell(words.empty() ? "-" : words); };
    for (const review::InputDifference& one : comparison.input)
        table.rows.push_back({report::words_cell(one.place), written(one.first), written(one.second)});
    blocks.emplace_back(std::move(table));
}

std::string ratio(const std::optional<checks::CheckResult>& result) {
    if (!result) return "not there";
    return result->status == checks::Status::missing_evidence ? "-" : format::ratio_text(result->ratio);
}

Cell status(const std::optional<checks::CheckResult>& result) {
    return result ? report::status_cell(result->status) : report::words_cell("");
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

void add_checks(Blocks& blocks, const Comparison& comparison) {
    blocks.emplace_back(Heading{1, "2  Checks", "checks"});
    Table table;
    table.columns = {{"check", 0.28},
                     {"subject", 0.2},
                     {"first D/C", 0.08, Across::right},
                     {"status", 0.12},
                     {"second D/C", 0.1, Across::right},
                     {"status", 0.12},
                     {"change", 0.09, Across::right}};
    std::size_t same = 0;
    for (const CheckDifference& one : comparison.checks) {
        if (one.same()) {
            ++same;
            continue;
        }
        const bool turns = one.status_turns();
        table.rows.push_back({{one.title, turns},
                              {one.subject, turns},
                              report::words_cell(ratio(one.first)),
                              status(one.first),
                              report::words_cell(ratio(one.second)),
                              status(one.second),
                              report::words_cell(change(one))});
    }
    const std::string rest = same == 0 ? "" : " " + report::counted(same, "result is", "results are") + " the same.";
    if (table.rows.empty()) {
        blocks.emplace_back(report::paragraph("No result differs." + rest));
        return;
    }
    blocks.emplace_back(report::paragraph(
        "First is " + comparison.first.label + ", second is " + comparison.second.label +
        ". Results that hold on one side alone stand first, in bold; then those whose ratio changes most." + rest));
    blocks.emplace_back(std::move(table));
}

void add_findings(Blocks& blocks, const Comparison& comparison) {
    blocks.emplace_back(Heading{1, "3  Findings", "findings"});
    if (comparison.findings.empty()) {
        blocks.emplace_back(report::paragraph("No finding came or went."));
        return;
    }
    Table table;
    table.columns = {{"only in, or as worded in", 0.2}, {"", 0.1}, {"about", 0.12}, {"finding", 0.38}, {"clause", 0.2}};
    const auto add = [&table](const std::optional<checks::Finding>& finding, const std::string& side) {
        if (!finding) return;
        table.rows.push_back({report::words_cell(side), report::severity_cell(finding->severity),
                              report::words_cell(finding->subject), report::words_cell(finding->message),
                              report::words_cell(finding->clause)});
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
    Document document = report::titled(issue, "Comparison of two guard post bases",
                                       comparison.first.label + " and " + comparison.second.label);
    report::Blocks& blocks = document.blocks;
    Paragraph title = report::paragraph("Comparison");
    title.size = drawing::TextSize::title;
    title.bold = true;
    blocks.emplace_back(title);
    if (!issue.project.empty()) blocks.emplace_back(report::paragraph("Project: " + issue.project));
    Paragraph verdict = report::paragraph(comparison::verdict_sentence(comparison));
    verdict.size = drawing::TextSize::normal;
    verdict.bold = true;
    blocks.emplace_back(std::move(verdict));
    blocks.emplace_back(comparison::sides_table(comparison, issue.system));
    comparison::add_input(blocks, comparison);
    comparison::add_checks(blocks, comparison);
    comparison::add_findings(blocks, comparison);
    return document;
}

}  // namespace toehold::paper
