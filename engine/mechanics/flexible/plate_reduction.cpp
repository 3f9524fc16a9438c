#include "mechanics/flexible/plate_reduction.h"

#include <Eigen/Cholesky>
#include <Eigen/Eigenvalues>
#include <Eigen/SparseCholesky>

#include <algorithm>
#include <cmath>

namespace toehold::mechanics {
namespace {

constexpr Eigen::Index rigid_freedoms = 3;
constexpr int pressure_degree = 5;
constexpr double weakest_hold = 1e-13;  // of the stiffest freedom

void scatter(const LiftRow& row, double weight, Eigen::Ref<Eigen::VectorXd> elastic) {
    for (const auto& [freedom, value] : row.elastic) elastic(freedom) += weight * value;
}

/// Each anchor's unit pull, then the polynomial pressures x^i y^j over the bed.
Eigen::MatrixXd unit_loads(const PlateAssembly& assembly, const OneWaySprings& springs) {
    double reach = 1e-300;
    for (const Point node : assembly.mesh().nodes) reach = std::max(reach, std::hypot(node.x, node.y));
    const auto anchors = static_cast<Eigen::Index>(springs.anchors().size());
    constexpr Eigen::Index pressures = (pressure_degree + 1) * (pressure_degree + 2) / 2;
    Eigen::MatrixXd loads = Eigen::MatrixXd::Zero(assembly.freedoms(), anchors + pressures);
    for (Eigen::Index i = 0; i < anchors; ++i) {
        scatter(springs.rows()[springs.points().size() + static_cast<std::size_t>(i)], 1.0, loads.col(i));
    }
    for (std::size_t i = 0; i < springs.points().size(); ++i) {
        const BedPoint& point = springs.points()[i];
        Eigen::Index column = anchors;
        double x_power = point.area_in2;
        for (int x = 0; x <= pressure_degree; ++x, x_power *= point.at.x / reach) {
            double value = x_power;
            for (int y = 0; x + y <= pressure_degree; ++y, value *= point.at.y / reach) {
                scatter(springs.rows()[i], value, loads.col(column++));
            }
        }
    }
    return loads;
}

/// Combinations of the responses that are orthonormal in the plate's energy; those that add nothing are left out.
RowMatrix orthonormal(const Eigen::MatrixXd& responses, const Eigen::MatrixXd& loads) {
    Eigen::MatrixXd energy = responses.transpose() * loads;
    energy = 0.5 * (energy + energy.transpose()).eval();
    const Eigen::VectorXd scale = energy.diagonal().cwiseMax(1e-300).cwiseSqrt().cwiseInverse();
    energy = scale.asDiagonal() * energy * scale.asDiagonal();
    const Eigen::SelfAdjointEigenSolver<Eigen::MatrixXd> modes(energy);
    constexpr double nothing = 1e-10;
    const Eigen::Index count = (modes.eigenvalues().array() > nothing).count();
    const Eigen::MatrixXd kept =
        modes.eigenvectors().rightCols(count) * modes.eigenvalues().tail(count).cwiseSqrt().cwiseInverse().asDiagonal();
    return responses * (scale.asDiagonal() * kept);
}

void fill(Eigen::Ref<Eigen::RowVectorXd> reduced, const LiftRow& row, const RowMatrix& basis) {
    reduced.head(rigid_freedoms) = row.rigid.transpose();
    for (const auto& [freedom, value] : row.elastic) reduced.tail(basis.cols()) += value * basis.row(freedom);
}

}  // namespace

ReducedRows reduced_rows(const PlateAssembly& assembly, const OneWaySprings& springs) {
    const Eigen::SimplicialLDLT<Eigen::SparseMatrix<double>> factor(assembly.stiffness());
    const Eigen::MatrixXd loads = unit_loads(assembly, springs);
    const RowMatrix basis = orthonormal(factor.solve(loads), loads);
    const Eigen::Index width = rigid_freedoms + basis.cols();
    ReducedRows rows{RowMatrix::Zero(static_cast<Eigen::Index>(springs.size()), width),
                     RowMatrix::Zero(static_cast<Eigen::Index>(springs.probes().size()), width)};
    for (std::size_t i = 0; i < springs.size(); ++i) {
        fill(rows.springs.row(static_cast<Eigen::Index>(i)), springs.rows()[i], basis);
    }
    for (std::size_t i = 0; i < springs.probes().size(); ++i) {
        fill(rows.probes.row(static_cast<Eigen::Index>(i)), springs.probes()[i].row, basis);
    }
    return rows;
}

ReducedSystem::ReducedSystem(const RowMatrix& rows, const ScaledSprings& springs)
    : rows_(rows),
      springs_(springs),
      counted_(static_cast<std::size_t>(rows.rows()), 0),
      matrix_(Eigen::MatrixXd::Identity(rows.cols(), rows.cols())),
      preload_force_(Eigen::VectorXd::Zero(rows.cols())) {
    matrix_.topLeftCorner(rigid_freedoms, rigid_freedoms).setZero();
}

void ReducedSystem::count(Eigen::Index spring, double sense) {
    const double stiffness = sense * springs_.stiffness(spring);
    const auto row = rows_.row(spring);
    for (Eigen::Index column = 0; column < matrix_.cols(); ++column) {
        const Eigen::Index below = matrix_.cols() - column;
        matrix_.col(column).tail(below) += stiffness * row(column) * row.tail(below).transpose();
    }
    const double gap = springs_.gap(spring);
    if (gap != 0.0) preload_force_ -= stiffness * gap * springs_.sign(spring) * row.transpose();
}

std::optional<PlateState> ReducedSystem::lowest(const Working& works) {
    for (std::size_t i = 0; i < works.size(); ++i) {
        if (works[i] != counted_[i]) count(static_cast<Eigen::Index>(i), works[i] ? 1.0 : -1.0);
    }
    counted_ = works;
    Eigen::LLT<Eigen::MatrixXd, Eigen::Lower> factor(matrix_);
    if (factor.info() != Eigen::Success) {
        // Too few springs work to hold the rigid body: a hold so weak that it changes no force picks one of its places.
        Eigen::MatrixXd held = matrix_;
        held.diagonal().array() += weakest_hold * matrix_.diagonal().maxCoeff();
        factor.compute(held);
        if (factor.info() != Eigen::Success) return std::nullopt;
    }
    Eigen::VectorXd force = preload_force_;
    force.head(rigid_freedoms) += load_;
    const Eigen::VectorXd solution = factor.solve(force);
    return PlateState{solution.head<rigid_freedoms>(), solution.tail(solution.size() - rigid_freedoms),
                      rows_ * solution};
}

}  // namespace toehold::mechanics
