#include "checks/post/foot.h"

#include "demand/demand.h"

#include <algorithm>
#include <cmath>

namespace toehold::checks {
namespace {

resistance::steel::TubeShape shape_of(const model::Footprint& print) {
    return {print.round, print.width_in, print.depth_in, print.wall_in};
}

}  // namespace

PostFoot post_foot(const model::Post& post) {
    const std::vector<model::FootPiece> pieces = model::foot_pieces(post);
    const auto* const wood = std::get_if<model::WoodPost>(&post);
    PostFoot foot;
    foot.tube = shape_of(model::footprint(post));
    foot.shoe = wood != nullptr;
    foot.welded = wood == nullptr || wood->shoe.attachment == model::ShoeAttachment::welded;
    foot.piece = shape_of(pieces.front().print);
    for (const model::FootPiece& piece : pieces) foot.centers.push_back(piece.center);
    foot.solid = model::is_solid(pieces.front().print);
    foot.thickness_in = foot.solid ? 2.0 * foot.piece.wall_in : foot.piece.wall_in;
    return foot;
}

PushMoment push_moment(const demand::Demand& demand, const demand::State& state, double above_in) {
    const demand::ActingLoad load = demand::acting_load(demand, state);
    const double moment = std::abs(load.push_lb) * std::max(0.0, load.height_in - above_in);
    return {moment, moment * std::abs(std::sin(state.direction_rad)), moment * std::abs(std::cos(state.direction_rad))};
}

}  // namespace toehold::checks
