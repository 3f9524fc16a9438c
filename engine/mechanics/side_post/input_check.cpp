#include "mechanics/side_post/input_check.h"

#include <Eigen/Cholesky>
#include <Eigen/Core>

#include <cmath>
#include <stdexcept>
#include <string>

namespace toehold::mechanics::side_post {
namespace {

void require(bool holds, const std::string& what) {
    if (!holds) throw std::invalid_argument("side post: " + what);
}

bool above_zero(double value) { return std::isfinite(value) && value > 0.0; }
bool not_below_zero(double value) { return std::isfinite(value) && value >= 0.0; }
bool finite(const SpaceVector& v) { return std::isfinite(v.x) && std::isfinite(v.y) && std::isfinite(v.z); }

void check_body(const std::optional<std::size_t>& body, const BackingBodies& bodies, const std::string& what) {
    require(!body || *body < bodies.places.size(), what + " names a body that is not there");
}

void check_section(const PostSection& section) {
    for (const double stiffness :
         {section.bending_x_lb_in2, section.bending_y_lb_in2, section.torsion_lb_in2, section.axial_lb})
        require(above_zero(stiffness), "the section's stiffness must be above 0");
    require(not_below_zero(section.shear_x_lb) && not_below_zero(section.shear_y_lb),
            "the section's shear stiffness must be 0 or more");
}

void check_bearing(const PostBearing& bearing, const BackingBodies& bodies) {
    const bool is_rectangle = std::isfinite(bearing.x_min_in) && std::isfinite(bearing.x_max_in) &&
                              std::isfinite(bearing.z_min_in) && std::isfinite(bearing.z_max_in) &&
                              bearing.x_min_in < bearing.x_max_in && bearing.z_min_in < bearing.z_max_in;
    require(is_rectangle, "a bearing needs a width and a height above 0");
    require(above_zero(bearing.stiffness_psi_per_in), "a bearing's stiffness must be above 0");
    require(not_below_zero(bearing.gap_in), "a bearing's gap must be 0 or more");
    check_body(bearing.body, bodies, "a bearing");
}

void check_fastener(const PostFastener& fastener, const BackingBodies& bodies) {
    require(std::isfinite(fastener.x_in) && std::isfinite(fastener.z_in), "a fastener's place must be finite");
    require(not_below_zero(fastener.tension_lb_per_in) && not_below_zero(fastener.slip_x_lb_per_in) &&
                not_below_zero(fastener.slip_z_lb_per_in),
            "a fastener's stiffness must be 0 or more");
    require(not_below_zero(fastener.gap_in), "a fastener's gap must be 0 or more");
    check_body(fastener.body, bodies, "a fastener");
}

void check_bodies(const BackingBodies& bodies) {
    for (const SpaceVector& place : bodies.places) require(finite(place), "a body's place must be finite");
    const std::size_t order = 6 * bodies.places.size();
    require(bodies.stiffness.size() == order * order, "the bodies' stiffness must be 6n x 6n");
    if (order == 0) return;
    using RowByRow = Eigen::Matrix<double, Eigen::Dynamic, Eigen::Dynamic, Eigen::RowMajor>;
    const Eigen::Map<const RowByRow> matrix(bodies.stiffness.data(), static_cast<Eigen::Index>(order),
                                            static_cast<Eigen::Index>(order));
    constexpr double same = 1e-9;
    const bool symmetric = matrix.allFinite() &&
                           (matrix - matrix.transpose()).cwiseAbs().maxCoeff() <= same * matrix.cwiseAbs().maxCoeff();
    require(symmetric, "the bodies' stiffness must be symmetric");
    require(Eigen::LLT<Eigen::MatrixXd>(matrix).info() == Eigen::Success,
            "the bodies' stiffness must hold every motion (be positive definite)");
}

}  // namespace

void check_input(const SidePost& post, std::span<const PostLoad> loads, double fineness) {
    require(above_zero(post.axis_y_in), "the axis must stand off the face");
    require(above_zero(fineness), "the fineness must be above 0");
    require(!post.bearings.empty() || !post.fasteners.empty(), "nothing holds the post");
    check_section(post.section);
    check_bodies(post.bodies);
    for (const PostBearing& bearing : post.bearings) check_bearing(bearing, post.bodies);
    for (const PostFastener& fastener : post.fasteners) check_fastener(fastener, post.bodies);
    for (const PostLoad& load : loads)
        require(finite(load.at) && finite(load.force_lb) && finite(load.moment_lb_in), "a load must be finite");
}

}  // namespace toehold::mechanics::side_post
