#include "wording/marks.h"

#include "review/schedule/marks.h"

#include <utility>

namespace toehold::wording {

using format::Phrase;
using format::phrase;

Phrase marks(const std::vector<std::string>& marks) {
    Phrase all;
    for (const review::MarkRun& run : review::mark_runs(marks)) {
        Phrase one = run.count > 1 ? phrase("{} to {}", run.first, run.last) : format::verbatim(run.first);
        all = all.empty() ? std::move(one) : phrase("{}, {}", std::move(all), std::move(one));
    }
    return all;
}

}  // namespace toehold::wording
