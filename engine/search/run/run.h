#pragma once
// A whole search: every candidate of a space judged on as many threads as asked for, and what came of it. The outcome
// depends on space and catalog alone, not on the number of threads nor on how often the search was stopped and resumed.
#include "catalog/catalog.h"
#include "search/nearest/nearest.h"
#include "search/run/clashes.h"
#include "search/run/judged.h"
#include "search/score/score.h"
#include "search/space/space.h"

#include <cstddef>
#include <functional>
#include <map>
#include <optional>
#include <string>
#include <vector>

namespace toehold::search {

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
    std::string context = {};  ///< of the journal's space: see `name_of`
    /// Go on where the journal ends, instead of refusing to overwrite it.
    bool resume = false;
    /// How many results of the front, from the best on, are tried with their holes and blocks misplaced, at up to six
    /// evaluations each.
    std::size_t most_misplaced = 12;
};

/// What came of a search; costs by the catalog's price table.
struct Outcome {
    std::vector<Result> holding;                ///< every candidate that holds, in the order of their numbers
    std::vector<Result> front;                  ///< those no other beats in every score, best first
    std::map<std::string, std::size_t> limits;  ///< candidates each check or finding stopped, by its id
    std::vector<Clash> clashes;                 ///< what keeps the others from being details, the worst first
    std::optional<NearestMiss> nearest;         ///< where nothing holds
    Counts counts;
    bool stopped = false;  ///< before every candidate was judged
};

/// The short name by which journals and workers' lines know the space. `context`: whatever else the judgements depend
/// on, as a text: the program's version, the catalogs' digests.
[[nodiscard]] std::string name_of(const Space& space, const std::string& context);

/// Throws std::runtime_error for a fault of the program, std::length_error beyond `most_candidates`, and JournalError
/// (run/journal.h) for a journal that cannot be read, written or belongs to another space.
[[nodiscard]] Outcome run(const Space& space, const catalog::Catalog& catalog, const RunOptions& options = {});

/// What comes of judgements made before, by workers elsewhere. `options`: jobs, stop and most_misplaced.
[[nodiscard]] Outcome conclude(const Space& space, const catalog::Catalog& catalog, const Judged& judged,
                               const RunOptions& options = {});

}  // namespace toehold::search
