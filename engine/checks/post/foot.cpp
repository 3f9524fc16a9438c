#include "checks/post/foot.h"

#include "demand/demand.h"

#include <algorithm>
#include <cmath>

namespace toehold::checks {
namespace {

/// Each of twin bars, with the places of both.
void add_pieces(PostFoot& foot, const model::TwinBars& bars) {
    foot.piece = {false, bars.width_in, bars.depth_in, 0.5 * std::min(bars.width_in, bars.depth_in)};
    const bool along_x = bars.apart == model::PlanAxis::x;
    const double half_in = 0.5 * (bars.gap_in + (along_x ? bars.width_in : bars.depth_in));
    const model::Position one = along_x ? model::Position{half_in, 0.0} : model::Position{0.0, half_in};
    foot.centers = {{-one.x_in, -one.y_in}, one};
}

bool is_solid(const model::Post& post) {
    if (const model::Stub* const stub = model::stub_of(post)) return !(stub->wall_in > 0.0);
    return std::holds_alternative<model::SolidBar>(post) || std::holds_alternative<model::TwinBars>(post);
}

}  // namespace

PostFoot post_foot(const model::Post& post) {
    const model::Footprint print = model::footprint(post);
    const auto* const wood = std::get_if<model::WoodPost>(&post);
    PostFoot foot;
    foot.tube = {print.round, print.width_in, print.depth_in, print.wall_in};
    foot.shoe = wood != nullptr;
    foot.welded = wood == nullptr || wood->shoe.attachment == model::ShoeAttachment::welded;
    foot.piece = foot.tube;
    foot.centers = {{0.0, 0.0}};
    if (const auto* const twin = std::get_if<model::TwinBars>(&post)) add_pieces(foot, *twin);
    foot.solid = is_solid(post);
    foot.thickness_in = foot.solid ? 2.0 * foot.piece.wall_in : foot.piece.wall_in;
    return foot;
}

PushMoment push_moment(const demand::Demand& demand, const demand::State& state, double above_in) {
    const demand::LoadCase load = load_case(demand, state);
    const double moment = std::abs(load.push_lb) * std::max(0.0, load.height_in - above_in);
    return {moment, moment * std::abs(std::sin(state.direction_rad)), moment * std::abs(std::cos(state.direction_rad))};
}

demand::LoadCase load_case(const demand::Demand& demand, const demand::State& state) {
    return demand::acting(demand, state);
}

}  // namespace toehold::checks
