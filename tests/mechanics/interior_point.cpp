#include "mechanics/interior_point.h"

#include <IpStdCInterface.h>

#include <algorithm>
#include <memory>
#include <stdexcept>
#include <string>

namespace toehold::test {
namespace {

const QuadraticProgram& of(UserDataPtr data) { return *static_cast<const QuadraticProgram*>(data); }

double at(const Number* x, int place) { return x[place]; }

/// H x by its lower half.
std::vector<double> hessian_times(const QuadraticProgram& qp, const Number* x) {
    std::vector<double> product(static_cast<std::size_t>(qp.unknowns), 0.0);
    for (const MatrixEntry& entry : qp.hessian) {
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
    for (const MatrixEntry& entry : of(data).rows) values[entry.row] += entry.value * x[entry.column];
    return TRUE;
}

/// Ipopt asks for places first (values null), for values later.
void give(const std::vector<MatrixEntry>& entries, double factor, Index* rows, Index* columns, Number* values) {
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

std::vector<double> lowest_by_interior_point(QuadraticProgram qp, double acceptable) {
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
    set(problem.get(), "acceptable_tol", acceptable);
    // Bounds are to be met, not loosened by 1e-8 as is Ipopt's habit.
    set(problem.get(), "bound_relax_factor", 0.0);
    std::string print_level = "print_level";
    AddIpoptIntOption(problem.get(), print_level.data(), 0);
    std::vector<double> x(static_cast<std::size_t>(qp.unknowns), 0.0);
    const ApplicationReturnStatus status =
        IpoptSolve(problem.get(), x.data(), nullptr, nullptr, nullptr, nullptr, nullptr, &qp);
    if (status != Solve_Succeeded && status != Solved_To_Acceptable_Level)
        throw std::runtime_error("Ipopt ended with " + std::to_string(status));
    return x;
}

}  // namespace toehold::test
