#include "mechanics/flexible_plate/interior_point.h"

#include "mechanics/interior_point.h"

#include <vector>

namespace toehold::test {
namespace {

constexpr int rigid_freedoms = 3;
// Unknowns are counted in thousandths of an inch, so that none is far from one.
constexpr double unit_in = 1e-3;

/// x = (rigid, elastic, stretches).
QuadraticProgram program(const mechanics::PlateAssembly& assembly, const mechanics::OneWaySprings& springs,
                         const mechanics::ScaledSprings& scaled, const Eigen::Vector3d& load) {
    const int first_stretch = rigid_freedoms + assembly.freedoms(), count = static_cast<int>(springs.size());
    QuadraticProgram result;
    result.unknowns = first_stretch + count;
    result.constraints = count;
    result.linear.assign(static_cast<std::size_t>(result.unknowns), 0.0);
    result.least_unknown.assign(static_cast<std::size_t>(result.unknowns), no_bound);
    for (int i = 0; i < rigid_freedoms; ++i) result.linear[static_cast<std::size_t>(i)] = -load(i) * unit_in;
    for (int column = 0; column < assembly.freedoms(); ++column) {
        for (Eigen::SparseMatrix<double>::InnerIterator entry(assembly.stiffness(), column); entry; ++entry) {
            const int row = static_cast<int>(entry.row());
            if (row < column) continue;
            result.hessian.push_back(
                {rigid_freedoms + row, rigid_freedoms + column, entry.value() * unit_in * unit_in});
        }
    }
    for (int i = 0; i < count; ++i) {
        const mechanics::LiftRow& row = springs.rows()[static_cast<std::size_t>(i)];
        result.hessian.push_back({first_stretch + i, first_stretch + i, scaled.stiffness(i) * unit_in * unit_in});
        result.least_unknown[static_cast<std::size_t>(first_stretch) + static_cast<std::size_t>(i)] = 0.0;
        result.rows.push_back({i, first_stretch + i, 1.0});
        for (int k = 0; k < rigid_freedoms; ++k) result.rows.push_back({i, k, -scaled.sign(i) * row.rigid(k)});
        for (const auto& [freedom, value] : row.elastic)
            result.rows.push_back({i, rigid_freedoms + freedom, -scaled.sign(i) * value});
        result.least_row.push_back(scaled.gap(i) / unit_in);
    }
    return result;
}

}  // namespace

LowestState lowest_by_interior_point(const mechanics::PlateAssembly& assembly, const mechanics::OneWaySprings& springs,
                                     const mechanics::ScaledSprings& scaled, const Eigen::Vector3d& load) {
    const QuadraticProgram qp = program(assembly, springs, scaled, load);
    const std::vector<double> x = lowest_by_interior_point(qp);
    const auto found = Eigen::Map<const Eigen::VectorXd>(x.data(), qp.unknowns) * unit_in;
    LowestState state{found.head<rigid_freedoms>(), {}};
    state.force = scaled.stiffness.cwiseProduct(found.tail(qp.constraints));
    return state;
}

}  // namespace toehold::test
