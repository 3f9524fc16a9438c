#pragma once
// Choices that do not go together: which, why, and how many candidates they cost. Worked out after a search by applying
// the options once more, so that no journal and no worker has to keep it.
#include "catalog/catalog.h"
#include "format/phrase.h"
#include "search/run/judged.h"
#include "search/space/space.h"

#include <cstddef>
#include <optional>
#include <vector>

namespace toehold::search {

/// The number of an option along the axis of this number.
struct Choice {
    std::size_t axis = 0, option = 0;
    friend bool operator==(const Choice&, const Choice&) = default;
};

struct Clash {
    /// The option that does not go with choices before it; absent: each does, but together they make no detail that
    /// `check` would take.
    std::optional<Choice> choice;
    /// Options of the axes before it that it was refused with, of each axis on which that depends: where all the
    /// options tried there are refused alike, the axis has none here.
    std::vector<Choice> with;
    format::Phrase why;        ///< a clause, as of Applied
    bool meaningless = false;  ///< another option stands for it
    Candidate candidates = 0;
    friend bool operator==(const Clash&, const Clash&) = default;
};

/// What keeps the judged candidates of the stage `choice` from being details, in order: what means nothing after what
/// does not go, the most candidates first, then by axis and option. `details`: the judged beyond that stage, in the
/// order of their numbers.
[[nodiscard]] std::vector<Clash> clashes(const Space& space, const catalog::Catalog& catalog, const Judged& judged,
                                         const std::vector<Judgement>& details);

}  // namespace toehold::search
