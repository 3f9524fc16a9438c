#include "mechanics/space_frame/superposition.h"

#include <algorithm>
#include <cmath>
#include <stdexcept>

namespace toehold::mechanics {
namespace {

void add_to(SpaceVector& sum, double factor, const SpaceVector& part) { sum = sum + factor * part; }
void add_to(SpaceForce& sum, double factor, const SpaceForce& part) {
    add_to(sum.force_lb, factor, part.force_lb);
    add_to(sum.couple_lb_in, factor, part.couple_lb_in);
}
void add_to(SpaceMotion& sum, double factor, const SpaceMotion& part) {
    add_to(sum.move_in, factor, part.move_in);
    add_to(sum.turn_rad, factor, part.turn_rad);
}
void add_to(SpaceMemberForces& sum, double factor, const SpaceMemberForces& part) {
    add_to(sum.at_from, factor, part.at_from);
    add_to(sum.at_to, factor, part.at_to);
}

template <class Value>
void add_all(std::vector<Value>& sum, double factor, const std::vector<Value>& parts) {
    if (sum.size() != parts.size()) throw std::invalid_argument("solutions of different frames do not add");
    for (std::size_t i = 0; i < sum.size(); ++i) add_to(sum[i], factor, parts[i]);
}

}  // namespace

void add_scaled(SpaceSolution& sum, double factor, const SpaceSolution& part) {
    if (sum.motions.empty()) {
        sum.stable = true;
        sum.motions.resize(part.motions.size());
        sum.members.resize(part.members.size());
        sum.joints.resize(part.joints.size());
        sum.supports.resize(part.supports.size());
    }
    if (!sum.stable || !part.stable) {
        sum = {};
        return;
    }
    add_all(sum.motions, factor, part.motions);
    add_all(sum.members, factor, part.members);
    add_all(sum.joints, factor, part.joints);
    add_all(sum.supports, factor, part.supports);
    sum.residual = std::max(sum.residual, part.residual);
}

}  // namespace toehold::mechanics
