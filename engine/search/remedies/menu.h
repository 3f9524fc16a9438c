#pragma once
// The changes a builder or a fabricator can make to one detail, each with what to buy and where it goes.
#include "catalog/catalog.h"
#include "catalog/resolve.h"
#include "format/phrase.h"
#include "search/changes/applied.h"

#include <functional>
#include <string>
#include <string_view>
#include <vector>

namespace toehold::search {

struct Change {
    std::string id;  ///< unique in the menu, lower case with hyphens: `thicker-plate`
    std::string_view
        axis;  ///< of what it changes, as the axes of a space are named; two of one axis exclude each other
    std::function<Applied(model::BaseDetail&)> apply;  ///< refused: does not go with the detail, or changes nothing
    /// One or two sentences on what is bought and where it goes, read off the changed detail.
    std::function<format::Phrase(const model::BaseDetail& changed)> words;
    /// Steps of one kind share it, the smaller before the larger: where the largest does not mend what is to be mended
    /// first, none does. Empty: a step by itself.
    std::string_view steps = {};
};

/// In the order they are made one after the other: plate, pattern, anchors, blocks, ends; of a post on a member's side
/// framing, post, rows, anchors, ties. Smaller steps of a kind first.
[[nodiscard]] std::vector<Change> menu(const catalog::Resolved& resolved, const catalog::Catalog& catalog);

// Its parts where the post stands on a plate; see side_changes.h.
[[nodiscard]] std::vector<Change> plate_changes(const catalog::Resolved& resolved, const catalog::Catalog& catalog);
[[nodiscard]] std::vector<Change> anchor_changes(const catalog::Resolved& resolved, const catalog::Catalog& catalog);
[[nodiscard]] std::vector<Change> framing_changes(const catalog::Resolved& resolved, const catalog::Catalog& catalog);

}  // namespace toehold::search
