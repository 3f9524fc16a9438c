#pragma once
// Where the anchors stand, as whoever sets blocks under them sees it: in rows along the blocks, and in joist bays.
#include "model/base_detail.h"
#include "search/changes/applied.h"

#include <string>
#include <vector>

namespace toehold::search {

/// Two places across the blocks this near count as one row.
inline constexpr double same_row_in = 0.25;

/// Centers of the plate's holes that have an anchor; empty of a mount without a plate.
[[nodiscard]] std::vector<model::Position> anchor_places(const model::BaseDetail& detail);
/// The axis blocks run along: as the first block, else across the joists.
[[nodiscard]] model::PlanAxis blocks_along(const model::Framing& framing);
/// Coordinates of the rows across blocks that run along this axis, in order.
[[nodiscard]] std::vector<double> rows_of(const std::vector<model::Position>& places, model::PlanAxis along);

/// The clear length between two members that a block fits into.
struct Bay {
    double from_in = 0.0, to_in = 0.0;  ///< along the blocks
    model::BlockEnd from_end, to_end;   ///< fastened as the block that is there, else as the first block that is at all
};
/// Bays with an anchor in them: between neighboring joists, or where no joist is described or the blocks run along
/// them, those that the blocks fill.
[[nodiscard]] std::vector<Bay> bays_with_anchors(const model::BaseDetail& detail, model::PlanAxis along);

/// Ids of the blocks an anchor stands in.
[[nodiscard]] std::vector<std::string> blocks_with_anchors(const model::BaseDetail& detail);
/// Whether no block lies in another member.
[[nodiscard]] bool blocks_fit(const model::Framing& framing);
/// Refused where one does.
[[nodiscard]] Applied clear_of_others(const model::Framing& framing);

}  // namespace toehold::search
