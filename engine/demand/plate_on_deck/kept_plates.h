#pragma once
// Meshes and plates on their beds, kept by what they are made from: the last few of each.
#include "demand/kept.h"
#include "demand/plate_on_deck/mesh_input.h"
#include "model/plate.h"
#include "model/post.h"

#include <list>
#include <memory>
#include <vector>

namespace toehold::demand {

struct Kept::Plates {
    /// As FlexiblePlate(plate_input(...)). Throws UnfitForMesh.
    [[nodiscard]] mechanics::FlexiblePlate plate(const catalog::Resolved& resolved, const Bed& bed,
                                                 const std::vector<Stiffness>& anchors, double fineness);

  private:
    /// What a mesh is made from.
    struct Shape {
        model::Outline outline;
        model::Footprint foot;
        std::vector<mechanics::Footprint> footprints;
        double fineness = 0.0;
    };
    struct KeptMesh {
        Shape of;
        std::shared_ptr<const MeshedPlate> mesh;
    };
    struct KeptPlate {
        std::shared_ptr<const MeshedPlate> mesh;  ///< known by its place, since it is kept as long as this
        double modulus_psi = 0.0, poisson = 0.0, thickness_in = 0.0;
        std::vector<mechanics::BedRectangle> bed;
        mechanics::FlexiblePlate plate;  ///< never solved itself: others begin with its mesh, springs and responses
    };
    [[nodiscard]] static bool same(const Shape& one, const Shape& other);
    [[nodiscard]] static bool same(const KeptPlate& kept, const MeshedPlate* mesh,
                                   const mechanics::FlexiblePlateInput& input);
    [[nodiscard]] std::shared_ptr<const MeshedPlate> mesh(const catalog::Resolved& resolved, double fineness);

    std::list<KeptMesh> meshes_;  ///< asked for last first
    std::list<KeptPlate> plates_;
};

}  // namespace toehold::demand
