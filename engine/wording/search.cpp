#include "wording/search.h"

#include "wording/status.h"
#include "wording/title.h"

#include <algorithm>
#include <utility>

namespace toehold::wording {
namespace {

using format::Phrase;
using format::phrase;
using search::Stage;

Phrase how_many_hold(const search::Counts& counts) {
    if (counts.found == 0) return phrase("{} candidates judged, none holds.", counts.judged);
    if (counts.found == 1) return phrase("{} candidates judged, 1 holds.", counts.judged);
    return phrase("{} candidates judged, {} hold.", counts.judged, counts.found);
}

}  // namespace

Phrase limit_title(const std::string& id) {
    if (id == search::no_equilibrium) return phrase("Base overturns");
    if (id == search::not_solved) return phrase("Not solved: no forces can be given");
    return title_of(id);
}

Phrase choices(const search::Space& space, search::Candidate candidate) {
    const std::vector<std::size_t> chosen = search::choices(space, candidate);
    Phrase all;
    for (std::size_t axis = 0; axis < space.axes.size(); ++axis) {
        if (space.axes[axis].options.size() < 2) continue;
        Phrase one = phrase("{}: {}", space.axes[axis].title, space.axes[axis].options[chosen[axis]].label);
        all = all.empty() ? std::move(one) : phrase("{}; {}", std::move(all), std::move(one));
    }
    return all;
}

Phrase search_outcome(const search::Outcome& outcome) {
    Phrase judged = how_many_hold(outcome.counts);
    if (!outcome.stopped) return judged;
    return phrase("{} {} of {} candidates are not judged yet.", judged, outcome.counts.left(),
                  outcome.counts.candidates);
}

Phrase search_progress(const search::Progress& progress) {
    return phrase("judged: {} of {}, {} hold, {:.0f} a minute", progress.counts.judged, progress.counts.candidates,
                  progress.counts.found, progress.per_minute);
}

std::vector<StoppedBy> stopped_by(const search::Outcome& outcome) {
    std::vector<StoppedBy> all;
    const auto impossible = outcome.counts.by_stage.at(static_cast<std::size_t>(Stage::choice));
    if (impossible > 0) all.push_back({phrase("Choices that do not go together"), impossible});
    for (const auto& [id, count] : outcome.limits) all.push_back({limit_title(id), count});
    std::stable_sort(all.begin(), all.end(),
                     [](const StoppedBy& a, const StoppedBy& b) { return a.candidates > b.candidates; });
    return all;
}

Phrase stopped_by(const search::NearestMiss& nearest) {
    Phrase what = result(nearest.title, nearest.part);
    if (!(nearest.ratio > 0.0)) return what;
    return phrase("{}: {}", what, ratio(checks::Status::fails, nearest.ratio));
}

}  // namespace toehold::wording
