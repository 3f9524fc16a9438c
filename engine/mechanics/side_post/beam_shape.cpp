#include "mechanics/side_post/beam_shape.h"

namespace toehold::mechanics::side_post {

double BeamPiece::shear_share() const {
    return shear_lb > 0.0 ? 12.0 * bending_lb_in2 / (shear_lb * length_in * length_in) : 0.0;
}

Eigen::Matrix4d BeamPiece::stiffness() const {
    const double l = length_in, share = shear_share();
    Eigen::Matrix4d matrix;
    matrix << 12.0, 6.0 * l, -12.0, 6.0 * l,                              //
        6.0 * l, (4.0 + share) * l * l, -6.0 * l, (2.0 - share) * l * l,  //
        -12.0, -6.0 * l, 12.0, -6.0 * l,                                  //
        6.0 * l, (2.0 - share) * l * l, -6.0 * l, (4.0 + share) * l * l;
    return matrix * (bending_lb_in2 / (l * l * l * (1.0 + share)));
}

Eigen::Vector4d BeamPiece::motion(double part) const {
    const double s = part, share = shear_share();
    const Eigen::Vector4d shape(1.0 + share - share * s + s * s * (2.0 * s - 3.0),
                                length_in * s * (1.0 + 0.5 * share + s * (s - 2.0 - 0.5 * share)),
                                share * s + s * s * (3.0 - 2.0 * s),
                                length_in * s * (-0.5 * share + s * (s - 1.0 + 0.5 * share)));
    return shape / (1.0 + share);
}

}  // namespace toehold::mechanics::side_post
