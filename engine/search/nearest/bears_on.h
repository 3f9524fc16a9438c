#pragma once
// Which axes bear on a check or finding: what a reader of its failure would change.
#include "model/mount.h"

#include <string_view>
#include <vector>

namespace toehold::search {

/// Ids of axes, the most direct first; empty where none does (of a plate the post and its weld; the guard's own loads).
[[nodiscard]] std::vector<std::string_view> axes_on(std::string_view limit,
                                                    model::MountKind mount = model::MountKind::plate_on_deck);

/// One row of a mount's table.
struct AxisRule {
    std::string_view begins;  ///< of the id of a check or finding
    std::vector<std::string_view> axes;
};
/// The table of a post on a member's side.
[[nodiscard]] const std::vector<AxisRule>& side_rules();

}  // namespace toehold::search
