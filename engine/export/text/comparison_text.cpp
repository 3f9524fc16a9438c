#include "export/text/comparison_text.h"
#include "export/text/columns.h"
#include "export/text/finding_line.h"
#include "export/text/table.h"
#include "format/figures.h"
#include "wording/outcomes.h"
#include "wording/status.h"
#include "wording/verdict.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>

namespace toehold::exporting {
namespace {

using checks::CheckResult;
using format::Locale;
using format::Phrase;
using format::phrase;
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

std::vector<Column> columns_of(const std::vector<Phrase>& headings, const Locale& locale) {
    std::vector<Column> columns;
    columns.reserve(headings.size());
    for (const Phrase& heading : headings) columns.push_back({format::text(heading, locale)});
    return columns;
}

std::vector<Column> check_columns(const Locale& locale) {
    std::vector<Column> columns = columns_of(
        {phrase("check"), phrase("part"), phrase("first D/C"), phrase("second D/C"), phrase("first"), phrase("second")},
        locale);
    columns[2].align = columns[3].align = Align::right;
    return columns;
}

std::string side_lines(const review::Side& side, const Phrase& which, const Locale& locale) {
    constexpr std::size_t which_columns = 8;
    const std::string indent(which_columns + 2, ' ');
    std::string text =
        paragraph(side.label + ": " + side.detail, "  " + padded_right(format::text(which, locale), which_columns));
    text += paragraph(
        format::text(phrase("{}: {}", wording::word(side.verdict), wording::verdict_reason(side)), locale), indent);
    return text + paragraph(format::text(phrase("SHA-256 of the file"), locale) + " " + side.input_sha256, indent);
}

std::string input_section(const Comparison& comparison, const Locale& locale) {
    if (comparison.input.empty()) return format::text(phrase("INPUT: the same on both sides"), locale) + "\n";
    std::vector<Row> rows;
    for (const review::InputDifference& one : comparison.input) {
        auto [first, second] = shown_values(one.first, one.second, locale.system);
        rows.push_back({{one.place, std::move(first), std::move(second)}, {}});
    }
    return format::text(phrase("INPUT DIFFERENCES (places as the file names them)"), locale) + "\n" +
           table(columns_of({phrase("place"), phrase("first"), phrase("second")}, locale), rows);
}

std::string anchors_section(const Comparison& comparison, const Locale& locale) {
    const std::vector<Phrase> sentences = wording::anchor_changes(comparison);
    if (sentences.empty()) return {};
    std::string text = format::text(phrase("ANCHORS"), locale) + "\n";
    for (const Phrase& sentence : sentences) text += paragraph(format::text(sentence, locale), "  - ");
    return text;
}

std::string ratio_cell(const std::optional<CheckResult>& result) {
    if (!result || result->status == checks::Status::missing_evidence) return "-";
    return format::ratio_text(result->ratio);
}

std::string status_cell(const std::optional<CheckResult>& result, const Locale& locale) {
    return format::text(result ? wording::word(result->status) : phrase("not there"), locale);
}

Phrase numbers(const std::optional<CheckResult>& result) {
    if (!result) return phrase("no such result");
    const format::Quantity demand{result->demand, result->unit}, capacity{result->capacity, result->unit};
    if (result->status == checks::Status::missing_evidence) return phrase("demand {}, capacity not specified", demand);
    return phrase("demand {}, capacity {}", demand, capacity);
}

/// `further` results of the same check stand in the same table.
Row check_row(const CheckDifference& check, std::size_t further, const Locale& locale) {
    const Phrase below =
        check.same() ? phrase("[{}] {}", check.id, numbers(check.first))
                     : phrase("[{}] first {}; second {}", check.id, numbers(check.first), numbers(check.second));
    Phrase part = model::part_name(check.part);
    if (further > 0) part = phrase("{} (and {} more)", std::move(part), further);
    return {{format::text(check.title, locale), format::text(part, locale), ratio_cell(check.first),
             ratio_cell(check.second), status_cell(check.first, locale), status_cell(check.second, locale)},
            {format::text(below, locale)}};
}

template <class Belongs>
std::string check_table(const Comparison& comparison, const Phrase& heading, const TextOptions& options,
                        Belongs&& belongs) {
    std::vector<CheckDifference> listed;
    std::copy_if(comparison.checks.begin(), comparison.checks.end(), std::back_inserter(listed), belongs);
    if (listed.empty()) return {};
    const auto alike = [](const CheckDifference& one, const CheckDifference& other) {
        return one.id == other.id && one.title == other.title;
    };
    std::vector<Row> rows;
    for (auto check = listed.begin(); check != listed.end(); ++check) {
        const auto same = [&](const CheckDifference& other) { return alike(other, *check); };
        if (!options.all_rows && std::any_of(listed.begin(), check, same)) continue;
        const auto count = static_cast<std::size_t>(std::count_if(listed.begin(), listed.end(), same));
        rows.push_back(check_row(*check, options.all_rows ? 0 : count - 1, options.locale));
    }
    return "\n" + format::text(phrase("{}: {}", heading, listed.size()), options.locale) + "\n" +
           table(check_columns(options.locale), rows);
}

/// Without `--all` the part of each check that changes most.
std::string checks_section(const Comparison& comparison, const TextOptions& options) {
    const auto turns = [](const CheckDifference& check) { return check.status_turns(); };
    const auto changes = [](const CheckDifference& check) { return !check.status_turns() && !check.same(); };
    const auto same = [](const CheckDifference& check) { return check.same(); };
    std::string text =
        check_table(comparison, phrase("CHECKS WHOSE STATUS CHANGES, larger change first"), options, turns);
    text += check_table(comparison, phrase("CHECKS THAT CHANGE, same status, larger change first"), options, changes);
    if (options.all_rows) return text + check_table(comparison, phrase("CHECKS WITHOUT CHANGE"), options, same);
    const auto count = std::count_if(comparison.checks.begin(), comparison.checks.end(), same);
    if (count == 0) return text;
    return text + "\n" +
           paragraph(format::text(phrase("CHECKS WITHOUT CHANGE: {} (--all shows every one)", count), options.locale));
}

std::string findings_section(const Comparison& comparison, const Locale& locale) {
    if (comparison.findings.empty()) return format::text(phrase("FINDINGS: the same on both sides"), locale) + "\n";
    std::string text = format::text(phrase("FINDINGS that are not on both sides"), locale) + "\n";
    for (const review::FindingDifference& one : comparison.findings) {
        if (one.first) text += finding_line(*one.first, phrase("first"), locale);
        if (one.second) text += finding_line(*one.second, phrase("second"), locale);
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
    const Locale& locale = options.locale;
    std::string text = paragraph(format::text(wording::verdict_change(comparison), locale));
    text +=
        side_lines(comparison.first, phrase("first"), locale) + side_lines(comparison.second, phrase("second"), locale);
    text += "\n" + input_section(comparison, locale);
    if (const std::string anchors = anchors_section(comparison, locale); !anchors.empty()) text += "\n" + anchors;
    text += checks_section(comparison, options);
    return text + "\n" + findings_section(comparison, locale);
}

}  // namespace toehold::exporting
