// What a search for sizes has to say of itself.
#include "session/sizes.h"
#include "wording/search.h"

namespace toehold::session {

using format::phrase;
using format::Phrase;

std::string thousands(search::Candidate number) {
    std::string digits = std::to_string(number);
    for (int at = static_cast<int>(digits.size()) - 3; at > 0; at -= 3)
        digits.insert(static_cast<std::size_t>(at), ",");
    return digits;
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
    const Phrase clash = space_ ? wording::worst_clash(*space_, *outcome_) : Phrase();
    if (outcome_->limits.empty()) {
        const Phrase none = phrase("None of the {} candidates tried can be built.", judged);
        return clash.empty() ? none : phrase("{} {}", none, clash);
    }
    const wording::StoppedBy most = wording::stopped_by(*outcome_).front();
    const Phrase none = phrase("None of the {} candidates tried passes every check. What stops the most: {} ({}).",
                               judged, most.limit, thousands(most.candidates));
    return clash.empty() ? none : phrase("{} {}", none, clash);
}

Phrase Sizes::nearest_words() const {
    if (!has_nearest()) return {};
    const search::NearestMiss& miss = *outcome_->nearest;
    if (miss.ratio > 0.0)
        return phrase("The nearest miss: {}, demand/capacity {:.2f}. {}", miss.title, miss.ratio, miss.would_change);
    return phrase("The nearest miss: {}. {}", miss.title, miss.would_change);
}

}  // namespace toehold::session
