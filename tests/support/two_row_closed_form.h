#pragma once
// Closed form for a rigid rectangular plate on a uniform tensionless bed with two rows of anchors, pushed square to
// the rows. Rotation r about the neutral axis at depth c from the toe edge (0 < c < depth):
//     bed force   C = k B r c^2 / 2, at c/3 from the toe edge
//     row forces  T_j = K r max(0, d_j - c)
// No net vertical force: k B c^2 / 2 = K sum max(0, d_j - c), a quadratic in c on each side of the toe row.
// Moment about the toe edge: M = sum T_j d_j - C c / 3. Reinforced-concrete transformed section, textbook.
#include <cmath>

namespace toehold::test {

struct TwoRows {
    double width_in, depth_in;
    double toe_row_in, heel_row_in;  ///< from the toe edge
    double row_lb_per_in;            ///< stiffness of a whole row
    double bed_psi_per_in;
};

struct RowForces {
    double toe_lb, heel_lb;
};

inline RowForces two_row_tensions(const TwoRows& rows, double moment_lb_in) {
    const double a = 0.5 * rows.bed_psi_per_in * rows.width_in;
    const auto root = [&](double rows_pulling, double sum_of_distances) {
        const double b = rows_pulling * rows.row_lb_per_in;
        return (-b + std::sqrt(b * b + 4.0 * a * rows.row_lb_per_in * sum_of_distances)) / (2.0 * a);
    };
    double c = root(1.0, rows.heel_row_in);
    const bool toe_pulls = c < rows.toe_row_in;
    if (toe_pulls) c = root(2.0, rows.heel_row_in + rows.toe_row_in);
    const double toe_lift = toe_pulls ? rows.toe_row_in - c : 0.0;
    const double heel_lift = rows.heel_row_in - c;
    const double moment_of_one_radian =
        rows.row_lb_per_in * (heel_lift * rows.heel_row_in + toe_lift * rows.toe_row_in) - a * c * c * c / 3.0;
    const double rotation = moment_lb_in / moment_of_one_radian;
    return {rows.row_lb_per_in * toe_lift * rotation, rows.row_lb_per_in * heel_lift * rotation};
}

}  // namespace toehold::test
