#pragma once
// The sides of a foot: the words a file and the window name them by, and which of them a view sees at its left and
// right.
#include "model/place.h"
#include "model/post.h"

#include <string>
#include <string_view>
#include <vector>

namespace toehold::model {

/// `outward`, `inward`, `right`, `left`: those that are among them, in this order.
[[nodiscard]] std::vector<std::string> side_words(const FootSides& sides);
/// Adds the side of this name; false where no side has it.
[[nodiscard]] bool add_side(FootSides& sides, std::string_view word);

/// Whether the side at the axis's positive (`sign` > 0) or negative end is among them.
[[nodiscard]] constexpr bool has_side(const FootSides& sides, PlanAxis along, double sign) {
    if (along == PlanAxis::x) return sign > 0.0 ? sides.right : sides.left;
    return sign > 0.0 ? sides.outward : sides.inward;
}

}  // namespace toehold::model
