#include "checks/post/foot.h"

#include "demand/demand.h"

#include <algorithm>
#include <cmath>

namespace toehold::checks {
namespace {

PostFoot foot(const model::RectangularTube& tube) {
    return {{false, tube.width_in, tube.depth_in, tube.wall_in}, false, true};
}

PostFoot foot(const model::RoundTube& tube) {
    return {{true, tube.diameter_in, tube.diameter_in, tube.wall_in}, false, true};
}

PostFoot foot(const model::WoodPost& post) {
    const model::Shoe& shoe = post.shoe;
    return {
        {false, shoe.width_in, shoe.depth_in, shoe.wall_in}, true, shoe.attachment == model::ShoeAttachment::welded};
}

}  // namespace

PostFoot post_foot(const model::Post& post) {
    return std::visit([](const auto& shape) { return foot(shape); }, post);
}

PushMoment push_moment(const demand::Demand& demand, const demand::State& state, double above_in) {
    const demand::LoadCase& load = load_case(demand, state);
    const double moment = std::abs(load.push_lb) * std::max(0.0, load.height_in - above_in);
    return {moment, moment * std::abs(std::sin(state.direction_rad)), moment * std::abs(std::cos(state.direction_rad))};
}

const demand::LoadCase& load_case(const demand::Demand& demand, const demand::State& state) {
    return demand.cases.at(state.load_case);
}

}  // namespace toehold::checks
