// Each check worked out for its worst subject: what is given first, then the arithmetic, D/C last, then the results of
// its other subjects.
#include "format/figures.h"
#include "paper/report/results.h"
#include "paper/report/sections.h"
#include "paper/report/sources.h"
#include "paper/report/step_words.h"
#include "paper/report/symbols.h"

#include <cmath>

namespace toehold::paper::report {
namespace {

using checks::CheckResult;
using drawing::Across;
using units::System;

Cell clause_cell(const std::string& clause, const LongSources& sources) {
    return {sources.words(clause), false, sources.is_long(clause) ? "cautions" : ""};
}

std::vector<Cell> step_row(const checks::Step& step, const LongSources& sources, System system) {
    return {words_cell(written_math(step.symbol)),
            words_cell(meaning_words(step, system)),
            words_cell(step.formula.empty() ? "" : "= " + written_math(step.formula)),
            words_cell("= " + written_number(format::number_text(step.value))),
            words_cell(written_unit(step.unit)),
            clause_cell(step.clause, sources)};
}

/// The last line of the arithmetic: demand over capacity, and the status.
std::vector<Cell> ratio_row(const CheckResult& result, System system) {
    const Measure of = measure(result);
    const bool known = of.status != checks::Status::missing_evidence;
    std::string words = result.subject;
    if (result.direction_deg) words += ", push towards " + format::degrees_text(*result.direction_deg) + " deg";
    const std::string capacity = known ? figure(of.capacity, of.unit, system) : std::string("not known");
    return {{"D/C", true},
            words_cell(words),
            words_cell("= " + format::number_text(of.demand, of.unit, system) + " / " + capacity),
            {"= " + (known ? format::ratio_text(of.ratio) : "-"), true},
            words_cell(""),
            status_cell(of.status)};
}

Table arithmetic(const CheckResult& result, const std::vector<const checks::Step*>& steps, const LongSources& sources,
                 System system) {
    Table table;
    table.ruled = false;
    table.columns = {{"", 0.065, Across::left, true},
                     {"", 0.325, Across::left, true},
                     {"", 0.275, Across::left, true},
                     {"", 0.095, Across::right},
                     {"", 0.05},
                     {"", 0.19}};
    for (const checks::Step* step : steps) table.rows.push_back(step_row(*step, sources, system));
    table.rows.push_back(ratio_row(result, system));
    return table;
}

/// Subjects with the same ratio under the same title, named together.
struct SameResults {
    std::string title;
    std::vector<std::string> subjects;
    std::string words;
};

/// A check may hold several distances against each other, each under a title of its own.
std::string others(const CheckResults& check) {
    std::vector<SameResults> all;
    for (std::size_t index = 1; index < check.results.size(); ++index) {
        const CheckResult& result = *check.results[index];
        const std::string words = result_words(measure(result));
        if (all.empty() || all.back().words != words || all.back().title != result.title)
            all.push_back({result.title, {}, words});
        all.back().subjects.push_back(result.subject);
    }
    std::string list, title = check.worst().title;
    for (const SameResults& same : all) {
        list += list.empty() ? "" : "; ";
        if (same.title != title) list += same.title + ": ";
        title = same.title;
        list += named_together(same.subjects) + " " + same.words;
    }
    return list.empty() ? list : "Others, D/C: " + list + ". ";
}

void add_check(Blocks& blocks, const CheckResults& check, SteppedBefore& before, const LongSources& sources,
               System system) {
    const CheckResult& worst = check.worst();
    const std::string number = before.next_number();
    blocks.emplace_back(Heading{2, number + "  " + worst.title, check_name(check.id)});
    std::string head = worst.clause.empty() ? std::string() : "[" + sources.words(worst.clause) + "]";
    const SortedSteps steps = before.sorted(worst, sources, system);
    for (const std::string& words : {steps.demand, steps.given, steps.as_before}) {
        if (!words.empty()) head += " " + words;
    }
    if (!head.empty()) {
        Paragraph given = fine_print(head);
        given.math = true;
        blocks.emplace_back(std::move(given));
    }
    blocks.emplace_back(arithmetic(worst, steps.arithmetic, sources, system));
    const std::string rest = others(check) + worst.note;
    if (!rest.empty()) blocks.emplace_back(fine_print(rest));
}

}  // namespace

void add_check_steps(Blocks& blocks, const Source& source) {
    const LongSources sources(source.review);
    SteppedBefore before;
    for (const CheckResults& check : results_by_check(source.review))
        add_check(blocks, check, before, sources, source.issue.system);
}

}  // namespace toehold::paper::report
