#include "mechanics/flexible_plate/reduced_system.h"

#include "mechanics/flexible_plate/rigid_motion.h"

#include <Eigen/Cholesky>
#include <Eigen/Eigenvalues>
#include <Eigen/SparseCholesky>

#include <algorithm>
#include <cmath>
#include <functional>
#include <numeric>
#include <vector>

namespace toehold::mechanics {
namespace {

constexpr Eigen::Index rigid_freedoms = 3;

void scatter(const LiftRow& row, double weight, Eigen::Ref<Eigen::VectorXd> elastic) {
    for (const auto& [freedom, value] : row.elastic) elastic(freedom) += weight * value;
}

/// How high the polynomial pressures must go: a plate that is long against its bending length (4 D / k)^(1/4) bends in
/// more waves. By trial over random bases, this holds forces to about 1e-4 of the largest.
int pressure_degree(const PlateAssembly& assembly, const OneWaySprings& springs, double half_span) {
    double stiffest = 0.0;
    for (const BedRectangle& rectangle : springs.bed()) stiffest = std::max(stiffest, rectangle.stiffness_psi_per_in);
    const double lengths = half_span * std::sqrt(std::sqrt(stiffest / (4.0 * assembly.rigidity())));
    constexpr int least = 5, most = 14;
    return static_cast<int>(std::clamp(std::ceil(2.5 * lengths) + 1.0, 1.0 * least, 1.0 * most));
}

/// Chebyshev's polynomials of the first kind up to a degree, at -1 <= x <= 1.
void chebyshev(double x, std::vector<double>& values) {
    values[0] = 1.0;
    values[1] = x;
    for (std::size_t n = 2; n < values.size(); ++n) values[n] = 2.0 * x * values[n - 1] - values[n - 2];
}

/// Each anchor's unit pull, then the bed's pressures under deflections T_i(x) T_j(y): they jump where its stiffness
/// does.
Eigen::MatrixXd unit_loads(const PlateAssembly& assembly, const OneWaySprings& springs) {
    Point low = assembly.mesh().nodes.front(), high = low;
    for (const Point node : assembly.mesh().nodes) {
        low = {std::min(low.x, node.x), std::min(low.y, node.y)};
        high = {std::max(high.x, node.x), std::max(high.y, node.y)};
    }
    const Point middle{0.5 * (low.x + high.x), 0.5 * (low.y + high.y)};
    const double half_x = 0.5 * (high.x - low.x), half_y = 0.5 * (high.y - low.y);
    const int degree = pressure_degree(assembly, springs, std::max(half_x, half_y));
    const auto anchors = static_cast<Eigen::Index>(springs.anchors().size());
    const Eigen::Index pressures = (degree + 1) * (degree + 2) / 2;
    Eigen::MatrixXd loads = Eigen::MatrixXd::Zero(assembly.freedoms(), anchors + pressures);
    for (Eigen::Index i = 0; i < anchors; ++i) {
        scatter(springs.rows()[springs.points().size() + static_cast<std::size_t>(i)], 1.0, loads.col(i));
    }
    std::vector<double> by_x(static_cast<std::size_t>(degree) + 1), by_y(by_x.size());
    for (std::size_t i = 0; i < springs.points().size(); ++i) {
        const BedPoint& point = springs.points()[i];
        const double stiffness = point.area_in2 * springs.bed()[point.rectangle].stiffness_psi_per_in;
        chebyshev((point.at.x - middle.x) / half_x, by_x);
        chebyshev((point.at.y - middle.y) / half_y, by_y);
        Eigen::Index column = anchors;
        for (std::size_t x = 0; x < by_x.size(); ++x) {
            for (std::size_t y = 0; x + y < by_y.size(); ++y)
                scatter(springs.rows()[i], stiffness * by_x[x] * by_y[y], loads.col(column++));
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

ReducedRows rows_on_supports(const ReducedRows& still, const PlateAssembly& on_supports,
                             const OneWaySprings& measured_from_supports) {
    const int first = on_supports.freedoms() - on_supports.support_freedoms();
    // Freedoms y with energy y.y/2: the supports move by L^-T y, where their stiffness is L L^T.
    const auto widened = [&](const RowMatrix& rows, const auto& row_of) {
        RowMatrix wide(rows.rows(), rows.cols() + on_supports.support_freedoms());
        wide.leftCols(rows.cols()) = rows;
        Eigen::MatrixXd of_supports = Eigen::MatrixXd::Zero(on_supports.support_freedoms(), rows.rows());
        for (Eigen::Index i = 0; i < rows.rows(); ++i) {
            for (const auto& [freedom, value] : row_of(static_cast<std::size_t>(i)).elastic)
                if (freedom >= first) of_supports(freedom - first, i) += value;
        }
        on_supports.supports_factor().triangularView<Eigen::Lower>().solveInPlace(of_supports);
        wide.rightCols(of_supports.rows()) = of_supports.transpose();
        return wide;
    };
    const OneWaySprings& springs = measured_from_supports;
    return {widened(still.springs, [&](std::size_t i) -> const LiftRow& { return springs.rows()[i]; }),
            widened(still.probes, [&](std::size_t i) -> const LiftRow& { return springs.probes()[i].row; })};
}

ReducedSystem::ReducedSystem(const RowMatrix& rows, const ScaledSprings& springs) : rows_(rows), springs_(springs) {
    clear_springs();
}

void ReducedSystem::clear_springs() {
    active_.assign(static_cast<std::size_t>(rows_.rows()), 0);
    matrix_.setIdentity(rows_.cols(), rows_.cols());
    matrix_.topLeftCorner(rigid_freedoms, rigid_freedoms).setZero();
    preload_force_.setZero(rows_.cols());
}

void ReducedSystem::add_spring(Eigen::Index spring, double sense) {
    const double stiffness = sense * springs_.stiffness(spring);
    const auto row = rows_.row(spring);
    for (Eigen::Index column = 0; column < matrix_.cols(); ++column) {
        const Eigen::Index below = matrix_.cols() - column;
        matrix_.col(column).tail(below) += stiffness * row(column) * row.tail(below).transpose();
    }
    const double gap = springs_.gap(spring);
    if (gap != 0.0) preload_force_ -= stiffness * gap * springs_.sign(spring) * row.transpose();
}

void ReducedSystem::activate(const ActiveSet& active) {
    const auto changes = std::inner_product(active.begin(), active.end(), active_.begin(), std::size_t{0},
                                            std::plus<>(), std::not_equal_to<>());
    if (changes > active.size() / 4) return add_all(active);
    for (std::size_t i = 0; i < active.size(); ++i) {
        if (active[i] != active_[i]) add_spring(static_cast<Eigen::Index>(i), active[i] ? 1.0 : -1.0);
    }
    active_ = active;
}

/// Many springs at once: as one product of matrices.
void ReducedSystem::add_all(const ActiveSet& active) {
    clear_springs();
    RowMatrix working(rows_.rows(), rows_.cols());
    Eigen::Index count = 0;
    for (std::size_t i = 0; i < active.size(); ++i) {
        if (!active[i]) continue;
        const auto spring = static_cast<Eigen::Index>(i);
        working.row(count++) = std::sqrt(springs_.stiffness(spring)) * rows_.row(spring);
        const double pull = springs_.stiffness(spring) * springs_.gap(spring) * springs_.sign(spring);
        if (pull != 0.0) preload_force_ -= pull * rows_.row(spring).transpose();
    }
    matrix_.selfadjointView<Eigen::Lower>().rankUpdate(working.topRows(count).transpose());
    active_ = active;
}

PlateState ReducedSystem::state_of(const Eigen::VectorXd& solution) const {
    return {solution.head<rigid_freedoms>(), solution.tail(solution.size() - rigid_freedoms), rows_ * solution};
}

/// Too few springs work to hold the rigid body: the elastic freedoms, which hold themselves, are eliminated before it.
std::optional<PlateState> ReducedSystem::hardly_held(const Eigen::VectorXd& force, const Eigen::Vector3d& from) {
    // Counted anew, because what round-off left of springs taken out would outweigh what is left.
    const ActiveSet active = active_;
    add_all(active);
    const Eigen::Index elastic = rows_.cols() - rigid_freedoms;
    const Eigen::LLT<Eigen::MatrixXd, Eigen::Lower> factor(matrix_.bottomRightCorner(elastic, elastic));
    if (factor.info() != Eigen::Success) return std::nullopt;
    const Eigen::MatrixXd coupling = matrix_.bottomLeftCorner(elastic, rigid_freedoms);
    const Eigen::MatrixXd response = factor.solve(coupling);
    const Eigen::VectorXd at_rest = factor.solve(force.tail(elastic));
    const Eigen::Matrix3d rigid =
        matrix_.topLeftCorner<rigid_freedoms, rigid_freedoms>().selfadjointView<Eigen::Lower>();
    Eigen::VectorXd solution(rows_.cols());
    solution.head<rigid_freedoms>() = rigid_motion(rigid - coupling.transpose() * response,
                                                   force.head<rigid_freedoms>() - coupling.transpose() * at_rest, from);
    solution.tail(elastic) = at_rest - response * solution.head<rigid_freedoms>();
    return state_of(solution);
}

std::optional<PlateState> ReducedSystem::equilibrium(const ActiveSet& active, const Eigen::Vector3d& from) {
    activate(active);
    Eigen::VectorXd force = preload_force_;
    force.head(rigid_freedoms) += load_;
    const Eigen::Matrix3d rigid =
        matrix_.topLeftCorner<rigid_freedoms, rigid_freedoms>().selfadjointView<Eigen::Lower>();
    if (hardly_resisted(rigid)) return hardly_held(force, from);
    const Eigen::LLT<Eigen::MatrixXd, Eigen::Lower> factor(matrix_);
    if (factor.info() != Eigen::Success) return hardly_held(force, from);
    return state_of(factor.solve(force));
}

}  // namespace toehold::mechanics
