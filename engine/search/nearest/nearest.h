#pragma once
// Where nothing holds: the candidate that comes nearest, what stops it, and what would have to change.
#include "catalog/catalog.h"
#include "format/phrase.h"
#include "model/part.h"
#include "search/judge/judge.h"
#include "search/space/space.h"

#include <cstddef>
#include <functional>
#include <optional>
#include <string>
#include <vector>

namespace toehold::search {

struct NearestMiss {
    Candidate candidate = 0;
    model::BaseDetail detail;
    std::string limit;     ///< id of the check with the worst ratio, or of the finding that forbids it
    format::Phrase title;  ///< of that check or finding
    model::PartId part;
    double ratio = 0.0;           ///< demand over capacity of that check, > 1; 0 of a finding
    std::size_t failing = 0;      ///< checks that fail and findings that forbid it
    format::Phrase would_change;  ///< what would have to change, one or two sentences
};

/// Among the judged the one whose worst failing ratio is least, by the whole engine; equal ones by candidate number. A
/// judgement's ratio is a bound from below on the worst, so candidates are looked at in its order until none can come
/// nearer, or 24 were evaluated. Candidates stopped by findings come last. Absent where no candidate is a detail, or
/// where one holds.
[[nodiscard]] std::optional<NearestMiss> nearest_miss(const Space& space, const catalog::Catalog& catalog,
                                                      const std::vector<Judgement>& judged,
                                                      const std::function<bool()>& stop = {});

/// What would have to change for this check or finding, at this ratio, to hold: which of the space's axes bear on it,
/// and whether the candidate has their largest option already.
[[nodiscard]] format::Phrase would_change(const Space& space, Candidate candidate, const std::string& limit,
                                          double ratio);

}  // namespace toehold::search
