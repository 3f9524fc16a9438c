#pragma once
// What the plate's underside bears on: its outline cut by the plan of every block and joist under it.
#include "demand/demand.h"
#include "mechanics/rigid_plate/rigid_plate.h"

#include <string>
#include <vector>

namespace toehold::model {
struct Plate;
}

namespace toehold::demand {

struct Bed {
    std::vector<Support> supports;             ///< one for every patch, same order
    std::vector<mechanics::BedPatch> patches;  ///< nominal stiffness
    std::vector<format::Phrase> assumptions;
};

/// Decking that no block or joist backs bears nothing, which brings the toe inward and raises the tension. Only where
/// no framing lies under the plate at all do the layers alone bear, so that the demand can still be shown.
[[nodiscard]] Bed find_bed(const catalog::Resolved& resolved);

/// The plate's outline in the mechanics' own type.
[[nodiscard]] mechanics::Polygon outline(const model::Plate& plate);

}  // namespace toehold::demand
