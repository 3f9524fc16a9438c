#pragma once
// The discrete Kirchhoff triangle for thin plates in bending: J.-L. Batoz, K.-J. Bathe, L.-W. Ho, "A study of
// three-node triangular plate bending elements", Int. J. Numer. Methods Eng. 15 (1980) 1771-1812. Any consistent units.
//
// Nine freedoms, three a corner: deflection w and its slopes w,x and w,y. Curvatures are linear in the triangle, so
// three mid-side points integrate the stiffness exactly.
#include "mechanics/plane/geometry.h"

#include <Eigen/Core>

#include <array>

namespace toehold::mechanics {

using TriangleMatrix = Eigen::Matrix<double, 9, 9>;
using TriangleVector = Eigen::Matrix<double, 9, 1>;
using CurvatureMatrix = Eigen::Matrix<double, 3, 9>;  ///< to w,xx, w,yy, 2 w,xy

struct PlateMaterial {
    double modulus = 0.0;    ///< E, > 0
    double poisson = 0.3;    ///< 0 to below 0.5
    double thickness = 0.0;  ///< > 0
};

/// E t^3 / (12 (1 - nu^2)).
[[nodiscard]] double flexural_rigidity(const PlateMaterial& material);
/// Moments per length (Mx, My, Mxy) from curvatures (w,xx, w,yy, 2 w,xy); positive where the upper face is pressed (z
/// up, curvature upward: Mx = D (w,xx + nu w,yy)).
[[nodiscard]] Eigen::Matrix3d bending_matrix(const PlateMaterial& material);

/// Corners counter-clockwise.
[[nodiscard]] TriangleMatrix dkt_stiffness(const std::array<Point, 3>& corners, const PlateMaterial& material);
/// Curvatures at a point given by its area coordinates (they sum to one).
[[nodiscard]] CurvatureMatrix dkt_curvature(const std::array<Point, 3>& corners,
                                            const std::array<double, 3>& area_coordinates);

/// Deflection at a point as a row over the nine freedoms: the incomplete cubic of G. P. Bazeley, Y. K. Cheung, B. M.
/// Irons, O. C. Zienkiewicz (1965), which meets the element along its sides and is exact for any quadratic.
[[nodiscard]] TriangleVector deflection_row(const std::array<Point, 3>& corners,
                                            const std::array<double, 3>& area_coordinates);

[[nodiscard]] std::array<double, 3> area_coordinates(const std::array<Point, 3>& corners, Point at);
[[nodiscard]] double area(const std::array<Point, 3>& corners);

}  // namespace toehold::mechanics
