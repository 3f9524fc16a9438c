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
    if (counts.judged == 1)
        return counts.found == 0 ? phrase("1 candidate judged, it fails.") : phrase("1 candidate judged, it holds.");
    if (counts.found == 0) return phrase("{} candidates judged, none holds.", counts.judged);
    if (counts.found == 1) return phrase("{} candidates judged, 1 holds.", counts.judged);
    return phrase("{} candidates judged, {} hold.", counts.judged, counts.found);
}

/// `5x5, 5x7 and 4 more`.
Phrase first_of(const std::vector<std::string>& labels) {
    constexpr std::size_t most = 3;
    std::string named;
    for (std::size_t at = 0; at < std::min(most, labels.size()); ++at) named += (at == 0 ? "" : ", ") + labels[at];
    if (labels.size() <= most) return format::verbatim(std::move(named));
    return phrase("{} and {} more", named, labels.size() - most);
}

/// `Plate 5x5, 5x7 and Anchors lag-3/8`: axis by axis.
format::Listed options_of(const search::Space& space, const std::vector<search::Choice>& chosen) {
    format::Listed all;
    for (std::size_t axis = 0; axis < space.axes.size(); ++axis) {
        std::vector<std::string> labels;
        for (const search::Choice& one : chosen)
            if (one.axis == axis) labels.push_back(space.axes[axis].options[one.option].label);
        if (!labels.empty()) all.items.push_back(phrase("{} {}", space.axes[axis].title, first_of(labels)));
    }
    return all;
}

using Chosen = std::vector<search::Choice>;

Phrase clash_words(const search::Space& space, const search::Clash& clash, const Chosen& options) {
    if (options.empty()) return phrase("All choices together: {}", clash.why);
    const format::Listed refused = options_of(space, options);
    if (clash.with.empty()) return phrase("{}: {}", refused, clash.why);
    return phrase("{} with {}: {}", refused, options_of(space, clash.with), clash.why);
}

/// Options of one axis that are refused for one reason.
struct Alike {
    const search::Clash* first = nullptr;
    Chosen options;
    std::size_t candidates = 0;
};

bool alike(const search::Clash& a, const search::Clash& b) {
    return a.choice && b.choice && a.choice->axis == b.choice->axis && a.with == b.with && a.why == b.why &&
           a.meaningless == b.meaningless;
}

/// The most candidates first.
std::vector<Alike> refused_alike(const std::vector<search::Clash>& clashes) {
    std::vector<Alike> all;
    for (const search::Clash& one : clashes) {
        auto same = std::find_if(all.begin(), all.end(), [&](const Alike& other) { return alike(*other.first, one); });
        if (same == all.end()) same = all.insert(all.end(), Alike{&one, {}, 0});
        if (one.choice) same->options.push_back(*one.choice);
        same->candidates += one.candidates;
    }
    std::stable_sort(all.begin(), all.end(),
                     [](const Alike& a, const Alike& b) { return a.candidates > b.candidates; });
    return all;
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

Phrase clash(const search::Space& space, const search::Clash& clash) {
    return clash_words(space, clash, clash.choice ? Chosen{*clash.choice} : Chosen{});
}

std::vector<StoppedBy> clashes(const search::Space& space, const search::Outcome& outcome, std::size_t most) {
    std::vector<StoppedBy> all;
    std::size_t others = 0, reasons = 0, meaningless = 0;
    const search::Clash* first_meaningless = nullptr;
    for (const Alike& one : refused_alike(outcome.clashes)) {
        if (one.first->meaningless) {
            if (first_meaningless == nullptr) first_meaningless = one.first;
            meaningless += one.candidates;
        } else if (all.size() < most) {
            all.push_back({clash_words(space, *one.first, one.options), one.candidates});
        } else {
            ++reasons;
            others += one.candidates;
        }
    }
    if (reasons > 0)
        all.push_back({reasons == 1 ? phrase("1 other reason") : phrase("{} other reasons", reasons), others});
    if (first_meaningless != nullptr)
        all.push_back({phrase("Tried as another choice, such as {}", clash(space, *first_meaningless)), meaningless});
    return all;
}

Phrase worst_clash(const search::Space& space, const search::Outcome& outcome) {
    if (outcome.clashes.empty()) return {};
    const search::Clash& worst = outcome.clashes.front();
    return phrase("Choices that do not go together, most often: {} ({} candidates).", clash(space, worst),
                  worst.candidates);
}

Phrase stopped_by(const search::NearestMiss& nearest) {
    Phrase what = result(nearest.title, nearest.part);
    if (!(nearest.ratio > 0.0)) return what;
    return phrase("{}: {}", what, ratio(checks::Status::fails, nearest.ratio));
}

}  // namespace toehold::wording
