#include "model/post.h"

#include <algorithm>

namespace toehold::model {
namespace {

Footprint solid(bool round, double width_in, double depth_in) {
    return {round, width_in, depth_in, 0.5 * std::min(width_in, depth_in)};
}

Footprint of_stub(const Stub& stub, bool round) {
    if (!(stub.wall_in > 0.0)) return solid(round, stub.width_in, stub.depth_in);
    return {round, stub.width_in, stub.depth_in, stub.wall_in};
}

struct Shaft {
    Footprint operator()(const RectangularTube& tube) const {
        return {false, tube.width_in, tube.depth_in, tube.wall_in};
    }
    Footprint operator()(const RoundTube& tube) const {
        return {true, tube.diameter_in, tube.diameter_in, tube.wall_in};
    }
    Footprint operator()(const WoodPost& post) const { return {false, post.width_in, post.depth_in, 0.0}; }
    Footprint operator()(const SolidBar& bar) const { return solid(bar.round, bar.width_in, bar.depth_in); }
    Footprint operator()(const TwinBars& bars) const {
        const bool along_x = bars.apart == PlanAxis::x;
        Footprint whole = solid(false, bars.width_in, bars.depth_in);
        (along_x ? whole.width_in : whole.depth_in) = 2.0 * (along_x ? bars.width_in : bars.depth_in) + bars.gap_in;
        return whole;
    }
};

}  // namespace

const Stub* stub_of(const Post& post) {
    if (const auto* tube = std::get_if<RectangularTube>(&post)) return tube->stub ? &*tube->stub : nullptr;
    if (const auto* tube = std::get_if<RoundTube>(&post)) return tube->stub ? &*tube->stub : nullptr;
    return nullptr;
}

Footprint footprint(const Post& post) {
    if (const Stub* const stub = stub_of(post)) return of_stub(*stub, std::holds_alternative<RoundTube>(post));
    if (const auto* wood = std::get_if<WoodPost>(&post); wood != nullptr && is_described(wood->shoe))
        return {false, wood->shoe.width_in, wood->shoe.depth_in, wood->shoe.wall_in};
    return shaft(post);
}

bool is_solid(const Footprint& print) { return 2.0 * print.wall_in >= std::min(print.width_in, print.depth_in); }

std::vector<FootPiece> foot_pieces(const Post& post) {
    const auto* twin = std::get_if<TwinBars>(&post);
    if (twin == nullptr) return {{footprint(post), {}}};
    const Footprint bar = solid(false, twin->width_in, twin->depth_in);
    const bool along_x = twin->apart == PlanAxis::x;
    const double half_in = 0.5 * (twin->gap_in + (along_x ? twin->width_in : twin->depth_in));
    const Position one = along_x ? Position{half_in, 0.0} : Position{0.0, half_in};
    return {{bar, {-one.x_in, -one.y_in}}, {bar, one}};
}

Footprint shaft(const Post& post) { return std::visit(Shaft{}, post); }

}  // namespace toehold::model
