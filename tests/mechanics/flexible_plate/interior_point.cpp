#include "mechanics/flexible_plate/interior_point.h"

#include <IpStdCInterface.h>

#include <algorithm>
#include <memory>
#include <stdexcept>
#include <string>
#include <vector>

namespace toehold::test {
namespace {

constexpr int rigid_freedoms = 3;
// Unknowns are counted in thousandths of an inch, so that none is far from one.
constexpr double unit_in = 1e-3;

struct Entry {
    int row, column;
    double value;
};

/// 1/2 x' H x + c x, and rows of A x; x = (rigid, elastic, stretches).
struct QuadraticProgram {
    int unknowns = 0, constraints = 0;
    std::vector<Entry> hessian;  ///< lower half
    std::vector<Entry> rows;
    std::vector<double> linear, least_row, least_unknown;
};

QuadraticProgram program(const mechanics::PlateAssembly& assembly, const mechanics::OneWaySprings& springs,
                         const mechanics::ScaledSprings& scaled, const Eigen::Vector3d& load) {
    constexpr double no_bound = -1e20;
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

const QuadraticProgram& of(UserDataPtr data) { return *static_cast<const QuadraticProgram*>(data); }

double at(const Number* x, int place) { return x[place]; }

/// H x by its lower half.
std::vector<double> hessian_times(const QuadraticProgram& qp, const Number* x) {
    std::vector<double> product(static_cast<std::size_t>(qp.unknowns), 0.0);
    for (const Entry& entry : qp.hessian) {
        product[static_cast<std::size_t>(entry.row)] += entry.value * at(x, entry.column);
        if (entry.row != entry.column)
            product[static_cast<std::size_t>(entry.column)] += entry.value * at(x, entry.row);
    }
    return product;
}

Bool objective(Index n, Number* x, Bool, Number* value, UserDataPtr data) {
    const std::vector<double> product = hessian_times(of(data), x);
    *value = 0.0;
    for (Index i = 0; i < n; ++i)
        *value += x[i] * (0.5 * product[static_cast<std::size_t>(i)] + of(data).linear[static_cast<std::size_t>(i)]);
    return TRUE;
}

Bool gradient(Index n, Number* x, Bool, Number* values, UserDataPtr data) {
    const std::vector<double> product = hessian_times(of(data), x);
    for (Index i = 0; i < n; ++i)
        values[i] = product[static_cast<std::size_t>(i)] + of(data).linear[static_cast<std::size_t>(i)];
    return TRUE;
}

Bool constraint(Index, Number* x, Bool, Index m, Number* values, UserDataPtr data) {
    std::fill(values, values + m, 0.0);
    for (const Entry& entry : of(data).rows) values[entry.row] += entry.value * x[entry.column];
    return TRUE;
}

/// Ipopt asks for places first (values null), for values later.
void give(const std::vector<Entry>& entries, double factor, Index* rows, Index* columns, Number* values) {
    for (std::size_t i = 0; i < entries.size(); ++i) {
        if (values == nullptr) {
            rows[i] = entries[i].row;
            columns[i] = entries[i].column;
        } else {
            values[i] = factor * entries[i].value;
        }
    }
}

Bool constraint_rows(Index, Number*, Bool, Index, Index, Index* rows, Index* columns, Number* values,
                     UserDataPtr data) {
    give(of(data).rows, 1.0, rows, columns, values);
    return TRUE;
}

Bool second_derivatives(Index, Number*, Bool, Number factor, Index, Number*, Bool, Index, Index* rows, Index* columns,
                        Number* values, UserDataPtr data) {
    give(of(data).hessian, factor, rows, columns, values);
    return TRUE;
}

struct FreeProblem {
    void operator()(IpoptProblemInfo* problem) const { FreeIpoptProblem(problem); }
};

void set(IpoptProblem problem, std::string option, std::string value) {
    AddIpoptStrOption(problem, option.data(), value.data());
}

void set(IpoptProblem problem, std::string option, double value) { AddIpoptNumOption(problem, option.data(), value); }

}  // namespace

LowestState lowest_by_interior_point(const mechanics::PlateAssembly& assembly, const mechanics::OneWaySprings& springs,
                                     const mechanics::ScaledSprings& scaled, const Eigen::Vector3d& load) {
    QuadraticProgram qp = program(assembly, springs, scaled, load);
    std::vector<double> most_unknown(static_cast<std::size_t>(qp.unknowns), 1e20);
    std::vector<double> most_row(static_cast<std::size_t>(qp.constraints), 1e20);
    const std::unique_ptr<IpoptProblemInfo, FreeProblem> problem(CreateIpoptProblem(
        qp.unknowns, qp.least_unknown.data(), most_unknown.data(), qp.constraints, qp.least_row.data(), most_row.data(),
        static_cast<Index>(qp.rows.size()), static_cast<Index>(qp.hessian.size()), 0, objective, constraint, gradient,
        constraint_rows, second_derivatives));
    set(problem.get(), "hessian_constant", "yes");
    set(problem.get(), "jac_d_constant", "yes");
    set(problem.get(), "mehrotra_algorithm", "yes");
    set(problem.get(), "sb", "yes");
    // As far as it will go: round-off may stop it a little before, which is the "acceptable level".
    set(problem.get(), "tol", 1e-13);
    set(problem.get(), "acceptable_tol", 1e-11);
    // Bounds are to be met, not loosened by 1e-8 as is Ipopt's habit.
    set(problem.get(), "bound_relax_factor", 0.0);
    std::string print_level = "print_level";
    AddIpoptIntOption(problem.get(), print_level.data(), 0);
    std::vector<double> x(static_cast<std::size_t>(qp.unknowns), 0.0);
    const ApplicationReturnStatus status =
        IpoptSolve(problem.get(), x.data(), nullptr, nullptr, nullptr, nullptr, nullptr, &qp);
    if (status != Solve_Succeeded && status != Solved_To_Acceptable_Level)
        throw std::runtime_error("Ipopt ended with " + std::to_string(status));
    const auto found = Eigen::Map<const Eigen::VectorXd>(x.data(), qp.unknowns) * unit_in;
    LowestState state{found.head<rigid_freedoms>(), {}};
    state.force = scaled.stiffness.cwiseProduct(found.tail(qp.constraints));
    return state;
}

}  // namespace toehold::test
