#pragma once
// A whole search: every candidate of a space judged on as many threads as asked for, and what came of it. The outcome
// depends on space and catalog alone, not on the number of threads nor on how often the search was stopped and resumed.
#include "catalog/catalog.h"
#include "search/judge/judge.h"
#include "search/nearest/nearest.h"
#include "search/score/score.h"
#include "search/space/space.h"

#include <array>
#include <cstddef>
#include <functional>
#include <map>
#include <optional>
#include <string>
#include <vector>

namespace toehold::search {

/// How many candidates were judged, by the stage that decided.
struct Counts {
    Candidate candidates = 0;                ///< of the space
    Candidate judged = 0;                    ///< of those
    Candidate found = 0;                     ///< hold
    std::array<Candidate, 4> by_stage = {};  ///< judged, by `Stage`; those that hold are in the last
    [[nodiscard]] Candidate left() const { return candidates - judged; }
};

/// How far a search is.
struct Progress {
    Counts counts;
    double seconds = 0.0;     ///< since it began, or was resumed
    double per_minute = 0.0;  ///< candidates judged a minute since then; 0 at the start
};

struct RunOptions {
    std::size_t jobs = 0;  ///< threads; 0: one for every core
    /// Told now and then, on the thread that called `run`.
    std::function<void(const Progress&)> progress = {};
    /// Asked by every thread between candidates; true: stop. What was found till then is the outcome.
    std::function<bool()> stop = {};
    /// File every judgement is kept in; empty: none is.
    std::string journal = {};
    /// Go on where the journal ends, instead of refusing to overwrite it.
    bool resume = false;
};

/// What came of a search.
struct Outcome {
    std::vector<Result> holding;                ///< every candidate that holds, in the order of their numbers
    std::vector<Result> front;                  ///< those no other beats in every score, best first
    std::map<std::string, std::size_t> limits;  ///< candidates each check or finding stopped, by its id
    std::optional<NearestMiss> nearest;         ///< where nothing holds
    Counts counts;
    bool stopped = false;  ///< before every candidate was judged
};

/// Throws std::runtime_error for a fault of the program, and JournalError (run/journal.h) for a journal that cannot be
/// read, written or belongs to another space.
[[nodiscard]] Outcome run(const Space& space, const catalog::Catalog& catalog, const RunOptions& options = {});

}  // namespace toehold::search
