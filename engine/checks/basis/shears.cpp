#include "checks/basis/shears.h"

#include <map>
#include <utility>

namespace toehold::checks {

std::shared_ptr<const SameShears> same_shears(const CheckInput& input) {
    return input.once<SameShears>([&input] {
        const std::vector<demand::State>& states = input.demand.states;
        SameShears same;
        std::map<std::vector<double>, std::size_t> seen;
        for (std::size_t index = 0; index < states.size(); ++index) {
            std::vector<double> shears;
            shears.reserve(2 * states[index].anchors.size());
            for (const demand::AnchorForce& force : states[index].anchors)
                shears.insert(shears.end(), {force.shear_x_lb, force.shear_y_lb});
            same.first.push_back(seen.emplace(std::move(shears), index).first->second);
        }
        return same;
    });
}

demand::GoverningState largest_shear(const CheckInput& input, std::size_t anchor) {
    const auto same = same_shears(input);
    demand::GoverningState worst;
    for (std::size_t index = 0; index < same->first.size(); ++index) {
        if (same->first[index] < index) continue;
        const double shear = input.demand.states[index].anchors.at(anchor).shear_lb();
        if (index == 0 || shear > worst.value) worst = {shear, index};
    }
    return worst;
}

}  // namespace toehold::checks
