#pragma once
// The shear on the anchors, of which most states have the same: stiffness hardly changes how it is shared.
#include "checks/registry.h"
#include "demand/governing_state.h"

#include <cstddef>
#include <memory>
#include <vector>

namespace toehold::checks {

/// For every state the first state in which all anchors have the same shear.
struct SameShears {
    std::vector<std::size_t> first;
    /// All shears grow alike.
    [[nodiscard]] SameShears grown(double) const { return *this; }
};
[[nodiscard]] std::shared_ptr<const SameShears> same_shears(const CheckInput& input);

/// The state in which the anchor's shear is largest; the first of equal ones.
[[nodiscard]] demand::GoverningState largest_shear(const CheckInput& input, std::size_t anchor);

}  // namespace toehold::checks
