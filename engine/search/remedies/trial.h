#pragma once
// A detail with some changes of the menu made, and what a few of its pushes show.
#include "demand/kept.h"
#include "review/review.h"
#include "search/remedies/menu.h"

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

namespace toehold::search {

struct Trial {
    std::vector<std::size_t> changes;  ///< numbers in the menu, ascending: the order they are made in
    catalog::Resolved resolved;
    double cost = 0.0;                ///< by the catalog's prices
    std::size_t failing = 0;          ///< checks and findings that fail, under the pushes tried
    double worst = 0.0;               ///< largest ratio among those; infinite without a load path
    std::vector<std::string> limits;  ///< their ids, each once
    std::string first;                ///< of them the one to mend first: others follow from it
    bool stuck = false;               ///< that is still the one of the trial this was made of
};

/// The original after these changes; absent where one does not apply or leaves no detail that `check` would take.
[[nodiscard]] std::optional<Trial> changed(const catalog::Resolved& original, const std::vector<Change>& menu,
                                           const std::vector<std::size_t>& changes, const catalog::Catalog& catalog);
/// Fills what fails from a review of it, of whatever pushes.
void note_failures(Trial& trial, const review::Review& review);
/// The same by a probe, of a rigid plate first, which costs a fraction, and where nothing fails then of the plate as it
/// is. It guides the search and decides nothing: what passes it is reviewed whole. `kept`: from the trials before.
void probe(Trial& trial, demand::Kept& kept);

/// Whether a change of a detail with this mount bears on this check or finding.
[[nodiscard]] bool bears_on(const Change& change, const std::string& limit,
                            model::MountKind mount = model::MountKind::plate_on_deck);
/// What is changed, in numbered steps where there are several.
[[nodiscard]] format::Phrase words(const Trial& trial, const std::vector<Change>& menu);
/// Ids of its changes, joined by a plus sign.
[[nodiscard]] std::string id(const Trial& trial, const std::vector<Change>& menu);

}  // namespace toehold::search
