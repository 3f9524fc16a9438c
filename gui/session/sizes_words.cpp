// What a search for sizes has to say of itself.
#include "checks/registry.h"
#include "session/sizes.h"

#include <algorithm>

namespace toehold::session {
namespace {

using format::phrase;
using format::Phrase;

/// The limit that stopped most candidates; absent: none is named.
const std::pair<const std::string, std::size_t>* most_often(const std::map<std::string, std::size_t>& limits) {
    const auto most = std::max_element(limits.begin(), limits.end(),
                                       [](const auto& one, const auto& other) { return one.second < other.second; });
    return most == limits.end() ? nullptr : &*most;
}

}  // namespace

std::string thousands(search::Candidate number) {
    std::string digits = std::to_string(number);
    for (int at = static_cast<int>(digits.size()) - 3; at > 0; at -= 3)
        digits.insert(static_cast<std::size_t>(at), ",");
    return digits;
}

Phrase title_of_limit(const std::string& id) {
    for (const checks::Check& check : checks::registered_checks()) {
        if (check.id == id) return check.title;
    }
    for (const checks::FindingRule& rule : checks::registered_findings()) {
        if (rule.id == id) return rule.title;
    }
    return format::verbatim(id);
}

Phrase Sizes::summary() const {
    if (!failure_.empty()) return failure_;
    if (!outcome_) return {};
    const search::Counts& counts = outcome_->counts;
    const std::string found = thousands(counts.found), judged = thousands(counts.judged);
    if (counts.found > 0 && outcome_->stopped)
        return phrase("{} of the {} candidates tried pass every check; {} were not tried.", found, judged,
                      thousands(counts.left()));
    if (counts.found > 0) return phrase("{} of {} candidates pass every check.", found, judged);
    if (counts.judged == 0) return phrase("Stopped before any candidate was tried.");
    const auto* limit = most_often(outcome_->limits);
    if (limit == nullptr) return phrase("None of the {} candidates tried can be built.", judged);
    return phrase("None of the {} candidates tried passes every check. {} stops most of them: {}.", judged,
                  title_of_limit(limit->first), thousands(limit->second));
}

Phrase Sizes::nearest_words() const {
    if (!has_nearest()) return {};
    const search::NearestMiss& miss = *outcome_->nearest;
    if (miss.ratio > 0.0)
        return phrase("The nearest miss: {}, demand/capacity {:.2f}. {}", miss.title, miss.ratio, miss.would_change);
    return phrase("The nearest miss: {}. {}", miss.title, miss.would_change);
}

}  // namespace toehold::session
