#pragma once
// A resolved detail as the flexible plate wants it: mesh, metal, anchors through their washers, supports.
#include "demand/anchor_stiffness.h"
#include "demand/plate_on_deck/bed.h"
#include "mechanics/flexible_plate/flexible_plate.h"

#include <stdexcept>
#include <vector>

namespace toehold::demand {

/// No sound mesh comes of the plate's shape.
struct UnfitForMesh : std::runtime_error {
    using std::runtime_error::runtime_error;
};

/// What the plate stands on: one rectangle for every support of the bed.
[[nodiscard]] std::vector<mechanics::BedRectangle> bed_rectangles(const catalog::Resolved& resolved, const Bed& bed);

/// Of the support at the point, its edges included; 0 where nothing backs the plate.
[[nodiscard]] double bed_stiffness_at(const std::vector<mechanics::BedRectangle>& bed, mechanics::Point at);

/// `fineness`: see mechanics::mesh_plate. Throws UnfitForMesh.
[[nodiscard]] mechanics::FlexiblePlateInput plate_input(const catalog::Resolved& resolved, const Bed& bed,
                                                        const std::vector<Stiffness>& anchors, double fineness);

}  // namespace toehold::demand
