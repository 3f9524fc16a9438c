#include "mechanics/flexible_plate/full_system.h"

#include "mechanics/flexible_plate/rigid_motion.h"

#include <Eigen/Cholesky>
#include <Eigen/SparseCholesky>

#include <vector>

namespace toehold::mechanics {
namespace {

using Sparse = Eigen::SparseMatrix<double>;

/// What the working springs add: to the elastic stiffness, to its coupling with the rigid body, to the body itself.
struct SpringMatrices {
    std::vector<Eigen::Triplet<double>> elastic;  ///< lower half
    Eigen::MatrixXd coupling;                     ///< three columns, and a fourth: the force of the preloads
    Eigen::Matrix3d rigid = Eigen::Matrix3d::Zero();
    Eigen::Vector3d rigid_force = Eigen::Vector3d::Zero();

    explicit SpringMatrices(int freedoms) : coupling(Eigen::MatrixXd::Zero(freedoms, 4)) {}

    void add(const LiftRow& row, double stiffness, double pull) {
        rigid += stiffness * row.rigid * row.rigid.transpose();
        rigid_force -= pull * row.rigid;
        for (const auto& [freedom, value] : row.elastic) {
            coupling.row(freedom).head<3>() += stiffness * value * row.rigid.transpose();
            coupling(freedom, 3) -= pull * value;
            for (const auto& [other, other_value] : row.elastic)
                if (other <= freedom) elastic.emplace_back(freedom, other, stiffness * value * other_value);
        }
    }
};

}  // namespace

std::optional<PlateState> FullSystem::equilibrium(const ActiveSet& active, const Eigen::Vector3d& from) const {
    const int freedoms = assembly_.freedoms();
    SpringMatrices support(freedoms);
    for (std::size_t i = 0; i < active.size(); ++i) {
        if (!active[i]) continue;
        const auto r = static_cast<Eigen::Index>(i);
        const double stiffness = scaled_.stiffness(r);
        support.add(springs_.rows()[i], stiffness, scaled_.sign(r) * stiffness * scaled_.gap(r));
    }
    Sparse stiffness(freedoms, freedoms);
    stiffness.setFromTriplets(support.elastic.begin(), support.elastic.end());
    stiffness += assembly_.stiffness();
    const Eigen::SimplicialLDLT<Sparse> factor(stiffness);
    if (factor.info() != Eigen::Success) return std::nullopt;
    // Block elimination: elastic = response_3 - response_012 rigid.
    const Eigen::MatrixXd response = factor.solve(support.coupling);
    const auto coupling = support.coupling.leftCols<3>();
    const Eigen::Matrix3d body = support.rigid - coupling.transpose() * response.leftCols<3>();
    const Eigen::Vector3d force = load_ + support.rigid_force - coupling.transpose() * response.col(3);
    PlateState state;
    state.rigid = hardly_resisted(support.rigid) ? rigid_motion(body, force, from) : body.ldlt().solve(force);
    state.elastic = response.col(3) - response.leftCols<3>() * state.rigid;
    state.lift.resize(static_cast<Eigen::Index>(springs_.size()));
    for (std::size_t i = 0; i < springs_.size(); ++i) {
        state.lift(static_cast<Eigen::Index>(i)) = lift_of(springs_.rows()[i], state.rigid, state.elastic);
    }
    return state;
}

}  // namespace toehold::mechanics
