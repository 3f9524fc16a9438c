#pragma once
// Plates assembled in the test itself from single elements, with any freedom prescribed, for closed forms that know no
// post: structured grids and patches of triangles. Freedoms of node n: 3n (w), 3n + 1 (w,x), 3n + 2 (w,y).
#include "mechanics/flexible_plate/dkt_element.h"
#include "mechanics/flexible_plate/plate_mesh.h"

#include <Eigen/SparseCore>

#include <vector>

namespace toehold::test {

struct PlateGrid {
    std::vector<mechanics::Point> nodes;
    std::vector<mechanics::Triangle> triangles;  ///< counter-clockwise
    [[nodiscard]] std::array<mechanics::Point, 3> corners(const mechanics::Triangle& triangle) const;
};

/// `columns` x `rows` rectangles, each cut in two; node (i, j) has index j (columns + 1) + i.
[[nodiscard]] PlateGrid rectangle_grid(double x_min, double x_max, double y_min, double y_max, int columns, int rows);

class AssembledPlate {
  public:
    AssembledPlate(const PlateGrid& grid, const mechanics::PlateMaterial& material);

    void prescribe(int freedom, double value);
    void load(int freedom, double force) { force_(freedom) += force; }
    /// Pressure up, worked through the deflection at the middles of the triangles' sides, as the engine's bed is.
    void load_evenly(double pressure);
    /// All freedoms, prescribed ones included.
    [[nodiscard]] Eigen::VectorXd solve() const;

  private:
    const PlateGrid& grid_;
    Eigen::SparseMatrix<double> stiffness_;
    Eigen::VectorXd force_, prescribed_;
    std::vector<char> fixed_;
};

}  // namespace toehold::test
