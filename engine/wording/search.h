#pragma once
// What came of a search, in words.
#include "format/phrase.h"
#include "search/run/run.h"

#include <string>
#include <vector>

namespace toehold::wording {

/// What a limit's id stands for: the title of the check or the finding; of one that none has, the id itself.
[[nodiscard]] format::Phrase limit_title(const std::string& id);

/// `Plate: 6 x 8 in; Anchor: bolt-1/2 a307`: the candidate's option of each axis that has several.
[[nodiscard]] format::Phrase choices(const search::Space& space, search::Candidate candidate);

/// How many candidates there are, how many hold, and whether any are left: one to two sentences.
[[nodiscard]] format::Phrase search_outcome(const search::Outcome& outcome);
/// How far a search is, in a line.
[[nodiscard]] format::Phrase search_progress(const search::Progress& progress);

/// What stopped the others, the most first: a limit and how many candidates.
struct StoppedBy {
    format::Phrase limit;
    std::size_t candidates = 0;
};
[[nodiscard]] std::vector<StoppedBy> stopped_by(const search::Outcome& outcome);

/// `Hole pattern 2x2@1 1/8 with Plate 4x4: two holes overlap`.
[[nodiscard]] format::Phrase clash(const search::Space& space, const search::Clash& clash);
/// Which choices do not go together and why, the most frequent first; beyond `most` of them, and those that mean
/// nothing together, in a row each.
[[nodiscard]] std::vector<StoppedBy> clashes(const search::Space& space, const search::Outcome& outcome,
                                             std::size_t most);
/// The most frequent of them in a sentence; empty: there is none.
[[nodiscard]] format::Phrase worst_clash(const search::Space& space, const search::Outcome& outcome);

/// What stops the candidate that comes nearest: `Anchor withdrawal, anchor A: demand/capacity 1.08`.
[[nodiscard]] format::Phrase stopped_by(const search::NearestMiss& nearest);

}  // namespace toehold::wording
