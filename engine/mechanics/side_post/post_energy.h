#pragma once
// The energy of post, springs and bodies under the load:
//   E(q) = e' K e / 2 + sum k max(0, opening - gap)^2 / 2 + sum of slip springs + integral of k max(0, closing)^2 / 2
//          - load q,
// its slope and its curvature. Convex, since every term is; once differentiable.
#include "mechanics/side_post/post_model.h"

#include <vector>

namespace toehold::mechanics::side_post {

enum class Contact {
    one_way,
    two_way,  ///< every fastener also pushes and every bearing also pulls, gaps closed: where a solve begins
};

struct Slope {
    double energy_lb_in = 0.0;
    Unknowns gradient;         ///< lb; of rotations lb in, of the rigid ones over the model's length
    double total_force = 0.0;  ///< every pull, slip and bearing and the load, added up by size
};
[[nodiscard]] Slope slope_at(const PostModel& model, const Unknowns& at, Contact contact);
/// The largest lack of balance of the elastic unknowns, moments over the model's length.
[[nodiscard]] double largest_elastic_force(const PostModel& model, const Slope& slope);

/// Split as the unknowns are: rigid six and elastic rest.
struct Curvature {
    Matrix6 rigid = Matrix6::Zero();
    Eigen::MatrixXd elastic_rigid;
    Eigen::SparseMatrix<double> elastic;  ///< lower half
};
[[nodiscard]] Curvature curvature_at(const PostModel& model, const Unknowns& at, Contact contact);

}  // namespace toehold::mechanics::side_post
