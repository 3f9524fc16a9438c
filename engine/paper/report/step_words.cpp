#include "paper/report/step_words.h"

#include "demand/demand.h"
#include "format/figures.h"
#include "paper/layout/symbols.h"
#include "wording/status.h"

#include <algorithm>

namespace toehold::paper::report {
namespace {

using checks::Origin;
using checks::Step;
using format::Locale;
using format::Phrase;
using format::phrase;
using layout::written_math;
using layout::written_number;
using layout::written_unit;

std::string value_words(const Step& step) {
    const std::string unit = step.unit.empty() ? "" : " " + written_unit(step.unit);
    return written_math(step.symbol) + " = " + written_number(format::number_text(step.value)) + unit;
}

/// Where a value of the demand or of the file comes from needs no words beyond the list it stands in.
Phrase given_words(const Step& step, const LongSources& sources, const Locale& locale) {
    Phrase words = phrase("{}, {}", value_words(step), meaning_words(step, locale));
    if (step.origin == Origin::demanded) return words;
    if (!step.as_is) words = phrase("{}, {}", std::move(words), format::text(step.formula, locale));
    const bool source_shown = step.origin == Origin::given && !step.clause.empty();
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

Phrase result_words(const Measure& measure) {
    if (measure.status == checks::Status::missing_evidence) return wording::word(measure.status);
    return phrase("{} {}", format::ratio_text(measure.ratio), wording::word(measure.status));
}

std::string SteppedBefore::next_number() {
    number_ = section_ + "." + std::to_string(++count_);
    return number_;
}

std::string SteppedBefore::number_of(const Step& step) const {
    const auto known = std::find_if(known_.begin(), known_.end(), [&](const auto& one) { return *one.first == step; });
    return known == known_.end() ? std::string() : known->second;
}

SortedSteps SteppedBefore::sorted(const checks::CheckResult& result, const LongSources& sources, const Locale& locale) {
    SortedSteps steps;
    std::vector<Reference> before;
    for (const Step& step : result.steps) {
        const std::string number = number_of(step);
        if (!number.empty()) {
            add(before, number, value_words(step));
        } else if (step.origin == Origin::derived) {
            steps.arithmetic.push_back(&step);
        } else {
            std::string& list = step.origin == Origin::demanded ? steps.demand : steps.given;
            list += (list.empty() ? "" : "; ") + written(given_words(step, sources, locale), locale);
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
