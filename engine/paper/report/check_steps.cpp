// Each check worked out for its worst part: what is given first, then the arithmetic, D/C last, then the results of its
// other parts.
#include "format/figures.h"
#include "paper/layout/symbols.h"
#include "paper/report/results.h"
#include "paper/report/sections.h"
#include "paper/report/sources.h"
#include "paper/report/step_words.h"

namespace toehold::paper::report {
namespace {

using checks::CheckResult;
using drawing::Across;
using format::Locale;
using format::Phrase;
using format::phrase;

Cell clause_cell(const std::string& clause, const LongSources& sources, const Locale& locale) {
    return {written(sources.words(clause, locale), locale), false, sources.is_long(clause) ? "cautions" : ""};
}

std::vector<Cell> step_row(const checks::Step& step, const LongSources& sources, const Locale& locale) {
    return {words_cell(layout::written_math(step.symbol)),
            words_cell(written(meaning_words(step, locale), locale)),
            words_cell(step.formula.empty() ? "" : "= " + layout::written_math(format::text(step.formula, locale))),
            words_cell("= " + layout::written_number(format::number_text(step.value))),
            words_cell(layout::written_unit(step.unit)),
            clause_cell(step.clause, sources, locale)};
}

/// The last line of the arithmetic: demand over capacity, and the status.
std::vector<Cell> ratio_row(const CheckResult& result, const Locale& locale) {
    const Measure of = measure(result);
    const bool known = of.status != checks::Status::missing_evidence;
    Phrase words = model::part_name(result.part);
    if (result.direction_deg) {
        words = phrase("{}, push toward {} deg", std::move(words), format::degrees_text(*result.direction_deg));
    }
    const std::string capacity =
        known ? figure(of.capacity, of.unit, locale.system) : written(phrase("not specified"), locale);
    return {{written(phrase("D/C"), locale), true},
            words_cell(written(words, locale)),
            words_cell("= " + format::number_text(of.demand, of.unit, locale.system) + " / " + capacity),
            {"= " + (known ? format::ratio_text(of.ratio) : "-"), true},
            words_cell(""),
            status_cell(of.status, locale)};
}

Table arithmetic(const CheckResult& result, const std::vector<const checks::Step*>& steps, const LongSources& sources,
                 const Locale& locale) {
    Table table;
    table.ruled = false;
    table.columns = {{"", 0.065, Across::left, true},
                     {"", 0.325, Across::left, true},
                     {"", 0.275, Across::left, true},
                     {"", 0.095, Across::right},
                     {"", 0.05},
                     {"", 0.19}};
    for (const checks::Step* step : steps) table.rows.push_back(step_row(*step, sources, locale));
    table.rows.push_back(ratio_row(result, locale));
    return table;
}

/// Parts with the same ratio under the same title, named together.
struct SameResults {
    Phrase title;
    std::vector<model::PartId> parts;
    std::string words;
};

/// A check may hold several distances against each other, each under a title of its own.
std::string others(const CheckResults& check, const Locale& locale) {
    std::vector<SameResults> all;
    for (std::size_t index = 1; index < check.results.size(); ++index) {
        const CheckResult& result = *check.results[index];
        const std::string words = written(result_words(measure(result)), locale);
        if (all.empty() || all.back().words != words || all.back().title != result.title)
            all.push_back({result.title, {}, words});
        all.back().parts.push_back(result.part);
    }
    std::string list;
    Phrase title = check.worst().title;
    for (const SameResults& same : all) {
        Phrase one = phrase("{} {}", named_together(same.parts), same.words);
        if (same.title != title) one = phrase("{}: {}", same.title, std::move(one));
        title = same.title;
        list += (list.empty() ? "" : "; ") + written(one, locale);
    }
    return list.empty() ? list : written(phrase("Others, D/C: {}.", list), locale);
}

void add_check(Blocks& blocks, const CheckResults& check, SteppedBefore& before, const LongSources& sources,
               const Locale& locale) {
    const CheckResult& worst = check.worst();
    const std::string number = before.next_number();
    blocks.emplace_back(Heading{2, number + "  " + written(worst.title, locale), check_name(check.id)});
    std::string head =
        worst.clause.empty() ? std::string() : "[" + written(sources.words(worst.clause, locale), locale) + "]";
    const SortedSteps steps = before.sorted(worst, sources, locale);
    for (const std::string& words : {steps.demand, steps.given, steps.as_before}) {
        if (!words.empty()) head += " " + words;
    }
    if (!head.empty()) {
        Paragraph given = fine_print(head);
        given.math = true;
        blocks.emplace_back(std::move(given));
    }
    blocks.emplace_back(arithmetic(worst, steps.arithmetic, sources, locale));
    const std::string rest = sentences({format::verbatim(others(check, locale)), worst.note}, locale);
    if (!rest.empty()) blocks.emplace_back(fine_print(rest));
}

}  // namespace

void add_check_steps(Blocks& blocks, const Source& source, const std::string& section) {
    const LongSources sources(source.review);
    SteppedBefore before(section);
    for (const CheckResults& check : results_by_check(source.review))
        add_check(blocks, check, before, sources, source.locale());
}

}  // namespace toehold::paper::report
