#pragma once
// The triangle of a mesh in which a point lies, looked for among the few near it.
#include "mechanics/plate_limit/equilibrium_triangle.h"

#include <cstddef>
#include <span>
#include <vector>

namespace toehold::mechanics {

class TriangleFinder {
  public:
    TriangleFinder() = default;
    explicit TriangleFinder(std::span<const EquilibriumTriangle> triangles);

    /// The number of the triangle the point lies in, or, off the mesh, of the one it is least off. Of those it was made
    /// with, which are not empty.
    [[nodiscard]] std::size_t at(std::span<const EquilibriumTriangle> triangles, Point point) const;

  private:
    static constexpr std::size_t cells_ = 16;  // each way
    [[nodiscard]] std::size_t cell(Point point) const;

    Point low_, cell_;                              ///< the lowest corner; a cell's sides
    std::vector<std::vector<std::size_t>> within_;  ///< of each cell, the triangles whose box touches it
};

}  // namespace toehold::mechanics
