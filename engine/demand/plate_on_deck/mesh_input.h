#pragma once
// A resolved detail as the flexible plate wants it: mesh, metal, anchors through their washers, supports.
#include "demand/anchor_stiffness.h"
#include "demand/plate_on_deck/bed.h"
#include "mechanics/flexible_plate/flexible_plate.h"

#include <stdexcept>
#include <utility>
#include <vector>

namespace toehold::demand {

/// No sound mesh comes of the plate's shape.
struct UnfitForMesh : std::runtime_error {
    explicit UnfitForMesh(format::Phrase why) : std::runtime_error(format::english(why)), reason(std::move(why)) {}
    format::Phrase reason;  ///< the end of a sentence
};

/// What the plate stands on: one rectangle for every support of the bed.
[[nodiscard]] std::vector<mechanics::BedRectangle> bed_rectangles(const catalog::Resolved& resolved, const Bed& bed);

/// Of the support at the point, its edges included; 0 where nothing backs the plate.
[[nodiscard]] double bed_stiffness_at(const std::vector<mechanics::BedRectangle>& bed, mechanics::Point at);

/// The plate as a mesh about the outline of the post's foot.
struct MeshedPlate {
    mechanics::PlateMesh mesh;
    mechanics::Polygon foot;
};
/// `fineness`: see mechanics::mesh_plate. Throws UnfitForMesh.
[[nodiscard]] MeshedPlate meshed_plate(const catalog::Resolved& resolved, double fineness);
/// Where the anchors' washers or heads press on the plate, in the order of `resolved.anchors`.
[[nodiscard]] std::vector<mechanics::Footprint> footprints(const catalog::Resolved& resolved);
/// The mesh with metal, anchors and supports.
[[nodiscard]] mechanics::FlexiblePlateInput plate_input(const catalog::Resolved& resolved, const Bed& bed,
                                                        const std::vector<Stiffness>& anchors,
                                                        const MeshedPlate& meshed);
/// On a mesh of this fineness. Throws UnfitForMesh.
[[nodiscard]] mechanics::FlexiblePlateInput plate_input(const catalog::Resolved& resolved, const Bed& bed,
                                                        const std::vector<Stiffness>& anchors, double fineness);

}  // namespace toehold::demand
