#pragma once
// Changes of what joins blocks to the members that hold them.
#include "model/base_detail.h"
#include "search/changes/applied.h"

#include <optional>

namespace toehold::search {

/// Steel angles on both sides of every held end of every block, 3/8 in bolts through block and joist: up to three to a
/// leg at 1 3/4 in, as many as the depth takes with 4 D to its edges. Refused where no block is deep enough for one.
Applied bolted_angles(model::BaseDetail& detail);

/// Hardware from a report that is not named yet: the least values its report must give. The lateral value and the pull
/// go with the vertical ones as in hardware of this use (700 and 1200 with 1600 lb, common practice).
struct LeastValues {
    double vertical_lb = 0.0;  ///< up, and down
    double lateral_lb = 0.0;
    double pull_lb = 0.0;      ///< against drawing the end away
    double height_in = 0.0;    ///< over which a pull and the pressed edge form a couple
    double to_edges_in = 0.0;  ///< from the block's top and bottom to the nearest fastener, at most
};
/// For an end this deep: 6 in of height where the depth allows, else the depth less 1 in.
[[nodiscard]] LeastValues least_values(double vertical_lb, double depth_in);
/// Hardware of these values on both sides of every held end of every block. Refused where no block's end is held.
Applied reported_hardware(model::BaseDetail& detail, double vertical_lb);

/// The same connection at the end of a block of another section: hardware from a report keeps its size and its top, a
/// couple's arm never grows, nails and screws move together where the depth is less. Absent: it does not fit.
[[nodiscard]] std::optional<model::EndConnection> fitted(const model::EndConnection& connection,
                                                         const model::Block& before, const model::Block& after);

}  // namespace toehold::search
