#pragma once
// How the post's rigid foot moves on what holds it, once the elastic freedoms are eliminated: also where too few
// springs work to hold it in every motion.
#include <Eigen/Core>

namespace toehold::mechanics {

/// Whether some motion of (lift, tilt_x, tilt_y) meets next to no resistance from these springs, or none: then
/// round-off may outweigh it, and `rigid_motion` is to be asked.
[[nodiscard]] bool hardly_resisted(const Eigen::Matrix3d& stiffness);

/// From stiffness and force on (lift, tilt_x, tilt_y), tilts about the origin. A motion that meets no resistance:
///   - unloaded, it is in neutral equilibrium, where any place is as good: it stays where it is, as `from` has it;
///   - loaded, it goes far, as on a hold so weak that it changes no force, until other springs work.
[[nodiscard]] Eigen::Vector3d rigid_motion(const Eigen::Matrix3d& stiffness, const Eigen::Vector3d& force,
                                           const Eigen::Vector3d& from);

}  // namespace toehold::mechanics
