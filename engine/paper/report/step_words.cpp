#include "paper/report/step_words.h"

#include "format/figures.h"
#include "paper/report/symbols.h"
#include "wording/status.h"

#include <algorithm>
#include <array>

namespace toehold::paper::report {
namespace {

using checks::Step;
using units::System;

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

std::string given_words(const Step& step, const LongSources& sources, System system) {
    std::string words = value_words(step) + ", " + meaning_words(step, system);
    if (step.clause == "demand") return words;
    if (!says_nothing(step.formula)) words += ", " + step.formula;
    const bool source_shown = !step.clause.empty() && step.clause != "input";
    return source_shown ? words + " [" + sources.words(step.clause) + "]" : words;
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

std::string meaning_words(const Step& step, System system) {
    const format::Figure other = format::in_system(step.value, step.unit, system);
    if (other.unit == step.unit) return step.meaning;
    return step.meaning + " (" + format::number_text(other.value) + " " + written_unit(other.unit) + ")";
}

bool is_given(const Step& step) {
    constexpr std::array<std::string_view, 3> looked_up = {"given", "ASD", "LRFD"};
    if (std::find(looked_up.begin(), looked_up.end(), step.formula) != looked_up.end()) return true;
    const bool factor = step.symbol.starts_with("C_");
    if (step.formula.empty()) return factor && step.value == 1.0;
    return in_words_alone(step.formula) && (factor || step.clause == "input" || step.clause == "demand");
}

std::string result_words(const Measure& measure) {
    const bool known = measure.status != checks::Status::missing_evidence;
    return (known ? format::ratio_text(measure.ratio) + " " : "") + std::string(wording::word(measure.status));
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

SortedSteps SteppedBefore::sorted(const checks::CheckResult& result, const LongSources& sources, System system) {
    SortedSteps steps;
    std::vector<Reference> before;
    for (const Step& step : result.steps) {
        const std::string number = number_of(step);
        if (!number.empty()) {
            add(before, number, value_words(step));
            continue;
        }
        if (is_given(step)) {
            const bool of_demand = step.clause == "demand";
            std::string& list = of_demand ? steps.demand : steps.given;
            list += (list.empty() ? (of_demand ? "Demand: " : "Given: ") : "; ") + given_words(step, sources, system);
        } else {
            steps.arithmetic.push_back(&step);
        }
    }
    for (std::string* list : {&steps.demand, &steps.given}) {
        if (!list->empty()) *list += ".";
    }
    for (const Reference& one : before) {
        steps.as_before += (steps.as_before.empty() ? "As in " : "; as in ") + one.number + ": ";
        for (const std::string& value : one.values)
            steps.as_before += (&value == &one.values.front() ? "" : ", ") + value;
    }
    if (!steps.as_before.empty()) steps.as_before += ".";
    for (const Step& step : result.steps) {
        if (number_of(step).empty()) known_.emplace_back(&step, number_);
    }
    return steps;
}

}  // namespace toehold::paper::report
