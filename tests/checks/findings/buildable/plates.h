#pragma once
// The example with one anchor, for the rules on what can be built: a plate of 5 1/2 x 7 in, 3/8 in thick, a post of
// 2 x 2 x 1/8 in with a 3/16 in fillet, and a 3/8 in lag screw (head 9/16 in across flats) in a 7/16 in hole.
#include "catalog/resolve.h"
#include "support/example.h"

#include <variant>

namespace toehold::test {

inline constexpr double half_flats_in = 0.28125;
inline constexpr double half_corners_in = 0.3247595;  ///< 9/16 / sqrt(3)

using HoleShape = std::variant<model::RoundHole, model::Slot>;

/// Only anchor A, its hole of this shape at this place.
inline catalog::Resolved one_anchor(model::Position at, HoleShape shape = model::RoundHole{0.4375}) {
    catalog::Resolved resolved = example_resolved();
    resolved.anchors.resize(1);
    on_deck(resolved.detail).plate.holes = {{"A", at, shape}};
    return resolved;
}

/// Only anchors A and B.
inline catalog::Resolved two_anchors(model::Position a, model::Position b, HoleShape shape = model::RoundHole{0.4375}) {
    catalog::Resolved resolved = example_resolved();
    resolved.anchors.resize(2);
    on_deck(resolved.detail).plate.holes = {{"A", a, shape}, {"B", b, model::RoundHole{0.4375}}};
    return resolved;
}

inline void add_washers(catalog::Resolved& resolved, double outside_diameter_in) {
    for (catalog::Anchor& anchor : resolved.anchors)
        anchor.washer = catalog::WasherSize{"washer", "washer", outside_diameter_in, 0.4375, 0.083, {}};
}

}  // namespace toehold::test
