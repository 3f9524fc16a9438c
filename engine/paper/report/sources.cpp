#include "paper/report/sources.h"

#include "paper/report/results.h"
#include "review/review.h"

#include <algorithm>

namespace toehold::paper::report {
namespace {

constexpr std::size_t longest_in_a_column = 46;

}  // namespace

LongSources::LongSources(const review::Review& review) {
    for (const CheckResults& check : results_by_check(review)) {
        for (const checks::Step& step : check.worst().steps) {
            const bool known = std::find(all_.begin(), all_.end(), step.clause) != all_.end();
            if (is_long(step.clause) && !known) all_.push_back(step.clause);
        }
    }
}

bool LongSources::is_long(const std::string& clause) const { return clause.size() > longest_in_a_column; }

format::Phrase LongSources::words(const std::string& clause, const format::Locale& locale) const {
    const auto known = std::find(all_.begin(), all_.end(), clause);
    return known == all_.end() ? format::verbatim(format::text(clause, locale))
                               : format::phrase("source {}", known - all_.begin() + 1);
}

}  // namespace toehold::paper::report
