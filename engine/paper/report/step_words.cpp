#include "paper/report/step_words.h"

#include "demand/demand.h"
#include "format/figures.h"
#include "paper/layout/symbols.h"
#include "wording/status.h"

#include <algorithm>
#include <array>

namespace toehold::paper::report {
namespace {

using checks::Step;
using format::Locale;
using format::Phrase;
using format::phrase;
using layout::written_math;
using layout::written_number;
using layout::written_unit;

bool same(const Step& a, const Step& b) {
    return a.symbol == b.symbol && a.meaning == b.meaning && a.formula == b.formula && a.value == b.value &&
           a.unit == b.unit && a.clause == b.clause;
}

std::string value_words(const Step& step) {
    const std::string unit = step.unit.empty() ? "" : " " + written_unit(step.unit);
    return written_math(step.symbol) + " = " + written_number(format::number_text(step.value)) + unit;
}

/// Words of a formula that say nothing beyond what the clause says.
bool says_nothing(std::string_view formula) {
    constexpr std::array<std::string_view, 2> empty = {"", "given"};
    return std::find(empty.begin(), empty.end(), formula) != empty.end();
}

/// No symbol, number or sign in it: only words of two lower-case letters or more, and what stands between them.
bool in_words_alone(std::string_view formula) {
    std::size_t letters = 0;
    for (std::size_t at = 0; at <= formula.size(); ++at) {
        const char c = at < formula.size() ? formula[at] : ' ';
        if (c >= 'a' && c <= 'z') {
            ++letters;
        } else if (c == ' ' || c == ',' || c == '\'') {
            if (letters == 1 && c != '\'') return false;
            letters = c == '\'' ? letters + 1 : 0;
        } else {
            return false;
        }
    }
    return true;
}

Phrase given_words(const Step& step, const LongSources& sources, const Locale& locale) {
    Phrase words = phrase("{}, {}", value_words(step), meaning_words(step, locale));
    if (step.clause == "demand") return words;
    if (!says_nothing(step.formula)) words = phrase("{}, {}", std::move(words), format::text(step.formula, locale));
    const bool source_shown = !step.clause.empty() && step.clause != "input";
    if (source_shown) words = phrase("{} [{}]", std::move(words), sources.words(step.clause, locale));
    return words;
}

struct Reference {
    std::string number;
    std::vector<std::string> values;  ///< each once: a check may ask for the same factor for two of its values
};

void add(std::vector<Reference>& all, const std::string& number, const std::string& value) {
    const auto known = std::find_if(all.begin(), all.end(), [&](const auto& one) { return one.number == number; });
    if (known == all.end()) {
        all.push_back({number, {value}});
    } else if (std::find(known->values.begin(), known->values.end(), value) == known->values.end()) {
        known->values.push_back(value);
    }
}

}  // namespace

Phrase meaning_words(const Step& step, const Locale& locale) {
    const format::Figure other = format::in_system(step.value, step.unit, locale.system);
    if (other.unit == step.unit) return step.meaning;
    return phrase("{} ({} {})", step.meaning, format::number_text(other.value), written_unit(other.unit));
}

bool is_given(const Step& step) {
    constexpr std::array<std::string_view, 3> looked_up = {"given", "ASD", "LRFD"};
    if (std::find(looked_up.begin(), looked_up.end(), step.formula) != looked_up.end()) return true;
    const bool factor = step.symbol.starts_with("C_");
    if (step.formula.empty()) return factor && step.value == 1.0;
    return in_words_alone(step.formula) && (factor || step.clause == "input" || step.clause == "demand");
}

Phrase result_words(const Measure& measure) {
    if (measure.status == checks::Status::missing_evidence) return wording::word(measure.status);
    return phrase("{} {}", format::ratio_text(measure.ratio), wording::word(measure.status));
}

std::string SteppedBefore::next_number() {
    number_ = "6." + std::to_string(++count_);
    return number_;
}

std::string SteppedBefore::number_of(const Step& step) const {
    const auto known =
        std::find_if(known_.begin(), known_.end(), [&](const auto& one) { return same(*one.first, step); });
    return known == known_.end() ? std::string() : known->second;
}

SortedSteps SteppedBefore::sorted(const checks::CheckResult& result, const LongSources& sources, const Locale& locale) {
    SortedSteps steps;
    std::vector<Reference> before;
    for (const Step& step : result.steps) {
        const std::string number = number_of(step);
        if (!number.empty()) {
            add(before, number, value_words(step));
        } else if (is_given(step)) {
            std::string& list = step.clause == "demand" ? steps.demand : steps.given;
            list += (list.empty() ? "" : "; ") + written(given_words(step, sources, locale), locale);
        } else {
            steps.arithmetic.push_back(&step);
        }
    }
    if (!steps.demand.empty()) steps.demand = written(phrase("Demand: {}.", steps.demand), locale);
    if (!steps.given.empty()) steps.given = written(phrase("Given: {}.", steps.given), locale);
    std::vector<Phrase> references;
    for (const Reference& one : before) {
        std::string values;
        for (const std::string& value : one.values) values += (values.empty() ? "" : ", ") + value;
        references.push_back(phrase("As in {}: {}.", one.number, std::move(values)));
    }
    steps.as_before = sentences(references, locale);
    for (const Step& step : result.steps) {
        if (number_of(step).empty()) known_.emplace_back(&step, number_);
    }
    return steps;
}

}  // namespace toehold::paper::report
