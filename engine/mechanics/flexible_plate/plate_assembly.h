#pragma once
// From a mesh to matrices: the stiffness of the plate relative to the post's rigid foot, and the lift at any point as a
// row. Freedoms: the rigid body's (lift, tilt x, tilt y) apart from the elastic ones, which are relative to its motion
// and vanish on the ring; so the elastic stiffness alone holds all the energy and is positive definite.
#include "mechanics/flexible_plate/dkt_element.h"
#include "mechanics/flexible_plate/flexible_plate.h"
#include "mechanics/flexible_plate/plate_mesh.h"

#include <Eigen/Core>
#include <Eigen/SparseCore>

#include <optional>
#include <span>
#include <vector>

namespace toehold::mechanics {

/// Lift at a point: rigid . (lift, tilt_x, tilt_y) + sum of value * elastic freedom.
struct LiftRow {
    Eigen::Vector3d rigid = Eigen::Vector3d::Zero();
    std::vector<std::pair<int, double>> elastic;  ///< in order of freedom, each once
};

class PlateAssembly {
  public:
    PlateAssembly(const PlateMesh& mesh, const PlateMaterial& material);
    /// The same plate where its supports give: their motions are further elastic freedoms with their own stiffness.
    /// Throws std::invalid_argument as `FlexiblePlate::on` does.
    [[nodiscard]] PlateAssembly on(const CompliantSupports& supports) const;

    /// Its lower half.
    [[nodiscard]] const Eigen::SparseMatrix<double>& stiffness() const { return stiffness_; }
    [[nodiscard]] int freedoms() const { return freedoms_; }
    /// The last of the freedoms: those of compliant supports.
    [[nodiscard]] int support_freedoms() const { return 3 * static_cast<int>(places_.size()); }
    /// Cholesky's lower factor of the supports' own stiffness.
    [[nodiscard]] const Eigen::MatrixXd& supports_factor() const { return supports_factor_; }
    [[nodiscard]] double rigidity() const { return rigidity_; }  ///< flexural_rigidity of its material
    [[nodiscard]] const PlateMesh& mesh() const { return mesh_; }
    /// First elastic freedom of a node; -1 on the ring.
    [[nodiscard]] int freedom(int node) const { return freedom_[static_cast<std::size_t>(node)]; }

    [[nodiscard]] std::array<Point, 3> corners(std::size_t triangle) const;
    [[nodiscard]] LiftRow row(std::size_t triangle, Point at) const;
    /// In the triangle that holds the point, or comes nearest to holding it.
    [[nodiscard]] LiftRow row(Point at) const;
    /// Mean lift over a disc: seven points, exact for polynomials of degree five (Abramowitz and Stegun 25.4.61).
    [[nodiscard]] LiftRow mean_row(const Footprint& footprint) const;

    /// Takes the lift of a support at a point from a row, which then reads the lift above that support.
    void measure_from_support(LiftRow& row, std::size_t support, Point at) const;

  private:
    PlateMesh mesh_;
    std::vector<Point> places_;
    std::vector<int> freedom_;
    int freedoms_ = 0;
    double rigidity_ = 0.0;
    Eigen::SparseMatrix<double> stiffness_;  ///< lower half
    Eigen::MatrixXd supports_factor_;
};

/// The lift a row reads from a rigid motion and elastic freedoms.
[[nodiscard]] double lift_of(const LiftRow& row, const Eigen::Vector3d& rigid, const Eigen::VectorXd& elastic);

/// a + weight * b.
void add(LiftRow& a, const LiftRow& b, double weight);

}  // namespace toehold::mechanics
