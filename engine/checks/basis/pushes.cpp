#include "checks/basis/pushes.h"

#include <set>
#include <utility>

namespace toehold::checks {

std::shared_ptr<const Pushes> pushes(const CheckInput& input) {
    return input.once<Pushes>([&input] {
        Pushes all;
        std::set<std::pair<std::size_t, double>> seen;
        for (std::size_t index = 0; index < input.demand.states.size(); ++index) {
            const demand::State& state = input.demand.states[index];
            if (seen.emplace(state.load_case, state.direction_rad).second) all.states.push_back(index);
        }
        return all;
    });
}

}  // namespace toehold::checks
