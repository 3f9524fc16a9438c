#pragma once
// A plate as quadratic wedges (C3D15), one through the thickness, over a triangle mesh. The middle surface lies at
// z = 0.
#include "mechanics/flexible_plate/plate_mesh.h"

#include <array>
#include <utility>
#include <vector>

namespace toehold::test {

struct SolidNode {
    double x = 0.0, y = 0.0, z = 0.0;
};

/// Corners below, corners above, middles of the sides below, above, and upright.
using Wedge = std::array<std::size_t, 15>;

enum class Face { under, over };

/// A lift as a sum of weight * lift of a node.
using SolidRow = std::vector<std::pair<std::size_t, double>>;

class SolidPlate {
  public:
    SolidPlate(const mechanics::PlateMesh& mesh, double thickness_in);

    [[nodiscard]] const std::vector<SolidNode>& nodes() const { return nodes_; }
    [[nodiscard]] const std::vector<Wedge>& wedges() const { return wedges_; }
    [[nodiscard]] std::array<mechanics::Point, 3> corners(std::size_t wedge) const;
    /// All nodes at, above and below the mesh's ring, those in the middles of its sides included.
    [[nodiscard]] const std::vector<std::size_t>& ring() const { return ring_; }

    /// Lift at a point of a face, by the six shape functions of the wedge's triangle there.
    [[nodiscard]] SolidRow row(std::size_t wedge, Face face, mechanics::Point at) const;
    /// In the wedge that holds the point, or comes nearest to holding it.
    [[nodiscard]] SolidRow row(Face face, mechanics::Point at) const;
    /// Mean over a disc: two circles of eight points, weighted by Gauss's rule over the radius squared.
    [[nodiscard]] SolidRow mean_row(Face face, const mechanics::Footprint& footprint) const;

  private:
    std::vector<SolidNode> nodes_;
    std::vector<Wedge> wedges_;
    std::vector<std::size_t> ring_;
};

}  // namespace toehold::test
