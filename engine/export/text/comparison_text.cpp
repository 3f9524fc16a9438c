#include "export/text/comparison_text.h"
#include "export/text/columns.h"
#include "export/text/table.h"
#include "format/figures.h"
#include "wording/status.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <set>

namespace toehold::exporting {
namespace {

using checks::CheckResult;
using review::CheckDifference;
using review::Comparison;

// What the file's canonical form writes after a number.
constexpr std::array<std::string_view, 7> written_units{"in", "lbf", "lb-in", "lb/in", "psi/in", "plf", "ft"};

std::string quantity(double value, std::string_view unit, units::System system) {
    if (unit == "in" && system == units::System::us) return units::fraction_in(value);
    const format::Figure figure = format::in_system(value, unit, system);
    return fmt::format("{:.6g} {}", figure.value, figure.unit);
}

/// Quantities of a text, each a number, a blank and a unit, in the reader's system.
std::string shown(const std::string& text, units::System system) {
    std::string result;
    std::string_view rest = text;
    while (!rest.empty()) {
        const std::string_view word = rest.substr(0, std::min(rest.find(' ') + 1, rest.size()));
        const std::string_view after = rest.substr(word.size());
        const std::string_view unit = after.substr(0, after.find_first_of(" ,()"));
        const auto number = units::parse_number(word);
        const bool known = std::find(written_units.begin(), written_units.end(), unit) != written_units.end();
        if (word.ends_with(' ') && number && known) {
            result += quantity(*number, unit, system);
            rest = after.substr(unit.size());
        } else {
            result += word.empty() ? rest : word;
            rest = word.empty() ? std::string_view() : after;
        }
    }
    return result;
}

std::string or_dash(std::string text) { return text.empty() ? std::string("-") : std::move(text); }

const std::vector<Column> check_columns = {
    {"check"}, {"subject"}, {"first D/C", Align::right}, {"second D/C", Align::right}, {"first"}, {"second"}};

std::string verdict_line(const Comparison& comparison) {
    if (!comparison.verdict_turns()) {
        return paragraph(fmt::format("VERDICT STAYS: {} on both sides", wording::word(comparison.first.verdict)));
    }
    return paragraph(fmt::format("VERDICT TURNS: the first is {}, the second {}",
                                 wording::word(comparison.first.verdict), wording::word(comparison.second.verdict)));
}

std::string side_lines(const review::Side& side, std::string_view which) {
    std::string text = paragraph(side.label + ": " + side.detail, "  " + padded_right(which, 8));
    text += paragraph(fmt::format("{}: {}", wording::word(side.verdict), side.reason), std::string(10, ' '));
    return text + paragraph("SHA-256 of the file " + side.input_sha256, std::string(10, ' '));
}

std::string input_section(const Comparison& comparison, units::System system) {
    if (comparison.input.empty()) return "INPUT: the same on both sides\n";
    std::vector<Row> rows;
    for (const review::InputDifference& one : comparison.input) {
        auto [first, second] = shown_values(one.first, one.second, system);
        rows.push_back({{one.place, std::move(first), std::move(second)}, {}});
    }
    return "INPUT, what differs (places in the words of the file)\n" + table({{"place"}, {"first"}, {"second"}}, rows);
}

std::string anchors_section(const Comparison& comparison) {
    if (comparison.anchors.empty()) return {};
    std::string text = "ANCHORS\n";
    for (const std::string& sentence : comparison.anchors) text += paragraph(sentence, "  - ");
    return text;
}

std::string counted(std::size_t results) { return fmt::format("{} {}", results, results == 1 ? "result" : "results"); }

std::string ratio_cell(const std::optional<CheckResult>& result) {
    if (!result || result->status == checks::Status::missing_evidence) return "-";
    return format::ratio_text(result->ratio);
}

std::string status_cell(const std::optional<CheckResult>& result) {
    return result ? std::string(wording::word(result->status)) : std::string("not there");
}

std::string numbers(const std::optional<CheckResult>& result, units::System system) {
    if (!result) return "no such result";
    std::string text = "demand " + format::figure_text(result->demand, result->unit, system);
    if (result->status == checks::Status::missing_evidence) return text + ", capacity not known";
    return text + ", capacity " + format::figure_text(result->capacity, result->unit, system);
}

/// `further` results of the same check stand in the same table.
Row check_row(const CheckDifference& check, std::size_t further, units::System system) {
    std::string below = "[" + check.id + "] ";
    if (check.same()) {
        below += numbers(check.first, system);
    } else {
        below += "first " + numbers(check.first, system) + "; second " + numbers(check.second, system);
    }
    const std::string subject = further == 0 ? check.subject : fmt::format("{} (and {} more)", check.subject, further);
    return {{check.title, subject, ratio_cell(check.first), ratio_cell(check.second), status_cell(check.first),
             status_cell(check.second)},
            {below}};
}

template <class Belongs>
std::string check_table(const Comparison& comparison, const std::string& heading, const TextOptions& options,
                        Belongs&& belongs) {
    std::vector<CheckDifference> listed;
    std::copy_if(comparison.checks.begin(), comparison.checks.end(), std::back_inserter(listed), belongs);
    if (listed.empty()) return {};
    std::vector<Row> rows;
    std::set<std::string> shown;
    for (const CheckDifference& check : listed) {
        if (!options.all_rows && !shown.insert(check.id + check.title).second) continue;
        const auto alike = std::count_if(listed.begin(), listed.end(), [&](const CheckDifference& other) {
            return other.id == check.id && other.title == check.title;
        });
        const std::size_t further = options.all_rows ? 0 : static_cast<std::size_t>(alike - 1);
        rows.push_back(check_row(check, further, options.system));
    }
    return fmt::format("\n{}: {}\n{}", heading, counted(listed.size()), table(check_columns, rows));
}

/// Without `--all` the subject of each check that changes most.
std::string checks_section(const Comparison& comparison, const TextOptions& options) {
    const auto turns = [](const CheckDifference& check) { return check.status_turns(); };
    const auto changes = [](const CheckDifference& check) { return !check.status_turns() && !check.same(); };
    const auto same = [](const CheckDifference& check) { return check.same(); };
    std::string text = check_table(comparison, "CHECKS THAT TURN, larger change first", options, turns);
    text += check_table(comparison, "CHECKS THAT CHANGE AND DO NOT TURN, larger change first", options, changes);
    if (options.all_rows) return text + check_table(comparison, "CHECKS THAT STAY THE SAME", options, same);
    const auto count = std::count_if(comparison.checks.begin(), comparison.checks.end(), same);
    if (count == 0) return text;
    return text + "\n" +
           paragraph(fmt::format("CHECKS THAT STAY THE SAME: {} (--all shows every one)",
                                 counted(static_cast<std::size_t>(count))));
}

std::string finding_lines(const std::optional<checks::Finding>& finding, std::string_view which) {
    if (!finding) return {};
    std::string line = finding->subject.empty() ? "" : finding->subject + ": ";
    line += finding->message;
    if (!finding->clause.empty()) line.append(" [").append(finding->clause).append("]");
    return paragraph(line, "  " + padded_right(which, 8) + padded_right(wording::word(finding->severity), 9));
}

std::string findings_section(const Comparison& comparison) {
    if (comparison.findings.empty()) return "FINDINGS: the same on both sides\n";
    std::string text = "FINDINGS that are not on both sides\n";
    for (const review::FindingDifference& one : comparison.findings) {
        text += finding_lines(one.first, "first") + finding_lines(one.second, "second");
    }
    return text;
}

}  // namespace

std::pair<std::string, std::string> shown_values(const std::string& first, const std::string& second,
                                                 units::System system) {
    std::string one = shown(first, system);
    std::string other = shown(second, system);
    if (one == other && first != second) return {or_dash(first), or_dash(second)};
    return {or_dash(std::move(one)), or_dash(std::move(other))};
}

std::string comparison_text(const Comparison& comparison, const TextOptions& options) {
    std::string text = verdict_line(comparison);
    text += side_lines(comparison.first, "first") + side_lines(comparison.second, "second");
    text += "\n" + input_section(comparison, options.system);
    if (const std::string anchors = anchors_section(comparison); !anchors.empty()) text += "\n" + anchors;
    text += checks_section(comparison, options);
    return text + "\n" + findings_section(comparison);
}

}  // namespace toehold::exporting
