#include "search/run/run.h"

#include "search/run/crew.h"
#include "search/run/journal.h"
#include "search/run/lines.h"
#include "search/run/parallel.h"
#include "xml/document/file.h"

#include <chrono>
#include <optional>
#include <utility>
#include <vector>

namespace toehold::search {
namespace {

using Clock = std::chrono::steady_clock;

/// Tells how far the search is, at most a few times a second.
class Telling {
  public:
    Telling(const RunOptions& options, const Judged& before) : options_(options), before_(before.counts().judged) {}

    void tell(const Counts& counts, bool at_last) {
        const Clock::time_point now = Clock::now();
        constexpr std::chrono::milliseconds pause{200};
        if (!options_.progress || (!at_last && now - told_ < pause)) return;
        told_ = now;
        Progress progress{counts, std::chrono::duration<double>(now - began_).count(), 0.0};
        constexpr double a_minute = 60.0;
        if (progress.seconds > 0.0)
            progress.per_minute = a_minute * static_cast<double>(counts.judged - before_) / progress.seconds;
        options_.progress(progress);
    }

  private:
    const RunOptions& options_;
    Candidate before_;
    Clock::time_point began_ = Clock::now(), told_ = began_;
};

/// Judges what is not judged yet, until it is told to stop.
void judge_rest(const Space& space, const catalog::Catalog& catalog, const RunOptions& options, Judged& judged,
                Journal* journal) {
    const std::vector<bool> known = judged.known();  // the crew reads it while `judged` grows
    Telling telling(options, judged);
    {
        Crew crew(space, catalog, known, options.stop, threads_for(known.size(), options.jobs));
        do {
            constexpr std::chrono::milliseconds patience{200};
            std::vector<Judgement> taken = crew.take(patience);
            if (journal != nullptr && !taken.empty()) journal->add(taken);
            for (Judgement& judgement : taken) judged.add(std::move(judgement));
            telling.tell(judged.counts(), false);
        } while (!crew.done());
    }
    telling.tell(judged.counts(), true);
}

}  // namespace

std::string name_of(const Space& space, const std::string& context) {
    return short_name(xml::sha256(fingerprint(space) + context));
}

Outcome run(const Space& space, const catalog::Catalog& catalog, const RunOptions& options) {
    Judged judged(size(space));
    std::optional<Journal> journal;
    if (!options.journal.empty())
        journal.emplace(options.journal, name_of(space, options.context), options.resume, judged);
    judge_rest(space, catalog, options, judged, journal ? &*journal : nullptr);
    return conclude(space, catalog, judged, options);
}

}  // namespace toehold::search
