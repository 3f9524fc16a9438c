#pragma once
// How far members of the framing give at given places, all together: the grillage seen from what stands on it.
#include "demand/framing/frame.h"

#include <Eigen/Core>

#include <cstddef>
#include <vector>

namespace toehold::demand {

struct MemberPlace {
    std::size_t member = 0;  ///< in the frame
    double along_in = 0.0;   ///< coordinate along it
};

/// The wanted place along the member, kept clear of both its ends.
[[nodiscard]] double clear_of_ends_in(const model::Member& member, double wanted_in);

/// Motions (lift, tilt about x, tilt about y) of every place from a unit force and unit couples at each; symmetric.
[[nodiscard]] Eigen::MatrixXd member_compliance(const Frame& frame, const std::vector<MemberPlace>& places);

/// Its inverse, symmetric. Places of one member at one station are told apart by next to no give between them.
[[nodiscard]] Eigen::MatrixXd member_stiffness(const Frame& frame, const std::vector<MemberPlace>& places,
                                               bool told_apart = false);

}  // namespace toehold::demand
