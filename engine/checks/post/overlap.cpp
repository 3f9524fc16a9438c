#include "checks/post/overlap.h"

#include "catalog/resolve.h"
#include "checks/basis/pushes.h"
#include "checks/basis/result_parts.h"
#include "model/base_detail.h"

#include <algorithm>
#include <cmath>

namespace toehold::checks {
namespace {

using format::phrase;

Overlap between(double bottom_in, double top_in, double play_x_in, double play_y_in) {
    return {bottom_in, top_in, std::max({0.0, play_x_in, play_y_in})};
}

std::optional<Overlap> over_stub(const model::BaseDetail& detail, const model::Stub& stub) {
    const model::PlateOnDeck& mount = on_deck(detail);
    const model::Footprint tube = model::shaft(detail.post);
    const double weld_in = mount.weld ? mount.weld->leg_in : 0.0;
    return between(mount.plate.thickness_in + weld_in, stub.height_in,
                   tube.width_in - 2.0 * tube.wall_in - stub.width_in,
                   tube.depth_in - 2.0 * tube.wall_in - stub.depth_in);
}

std::optional<Overlap> in_shoe(const model::BaseDetail& detail, const model::WoodPost& post) {
    const model::Shoe& shoe = post.shoe;
    if (shoe.form != model::ShoeForm::closed || shoe.attachment != model::ShoeAttachment::welded) return std::nullopt;
    return between(on_deck(detail).plate.thickness_in, shoe.height_in,
                   shoe.width_in - 2.0 * shoe.wall_in - post.width_in,
                   shoe.depth_in - 2.0 * shoe.wall_in - post.depth_in);
}

}  // namespace

std::optional<Overlap> overlap_of(const catalog::Resolved& resolved) {
    const model::BaseDetail& detail = resolved.detail;
    if (kind(detail.mount) != model::MountKind::plate_on_deck) return std::nullopt;
    std::optional<Overlap> overlap;
    if (const model::Stub* const stub = model::stub_of(detail.post)) overlap = over_stub(detail, *stub);
    if (const auto* const wood = std::get_if<model::WoodPost>(&detail.post)) overlap = in_shoe(detail, *wood);
    if (overlap && !(overlap->top_in > overlap->bottom_in)) return std::nullopt;
    return overlap;
}

WorstCouple worst_couple(const CheckInput& input, const Overlap& overlap, double weight_x, double weight_y) {
    const double length_in = overlap.top_in - overlap.bottom_in;
    const auto couple_along = [&](const demand::State& state, bool along_x) {
        const demand::ActingLoad load = demand::acting_load(input.demand, state);
        const double part = std::abs(along_x ? std::cos(state.direction_rad) : std::sin(state.direction_rad));
        // A push lower than the overlap's top turns the post less than one at its top.
        const double height_in = std::max(load.height_in, overlap.top_in);
        const double push_lb = std::abs(load.push_lb) * part;
        return WorstCouple{mechanics::overlap_couple(push_lb, height_in - overlap.bottom_in, length_in), along_x,
                           push_lb, height_in, degrees(state.direction_rad)};
    };
    const auto counted = [&](const WorstCouple& one) {
        return one.couple.line_lb_per_in * (one.along_x ? weight_x : weight_y);
    };
    const auto worse_way = [&](const demand::State& state) {
        const WorstCouple x = couple_along(state, true), y = couple_along(state, false);
        return counted(x) > counted(y) ? x : y;
    };
    const demand::GoverningState worst =
        governing_push(input, [&](const demand::State& state) { return counted(worse_way(state)); });
    return worse_way(input.demand.states.at(worst.state));
}

std::vector<Step> couple_steps(const Overlap& overlap, const WorstCouple& worst) {
    const double length_in = overlap.top_in - overlap.bottom_in;
    return {demanded("H", phrase("push, component square to the faces that bear"), worst.push_lb, "lb"),
            demanded("h", phrase("height of the push above the underside of the plate"), worst.height_in, "in"),
            from_file("z_0", phrase("bottom of the overlap above the underside of the plate"), overlap.bottom_in, "in"),
            from_file("L", phrase("length of the overlap"), length_in, "in"),
            {"a", phrase("length bearing at the bottom of the overlap"),
             "h' - (h'^2 - h' L + L^2/2)^(1/2), h' = h - z_0", worst.couple.lower_in, "in", "statics"},
            {"w", phrase("even pressure that balances the push"), "H/(L - 2 a)", worst.couple.line_lb_per_in, "lb/in",
             "statics"},
            {"R_u", phrase("force at the top of the overlap"), "w (L - a)", worst.couple.upper_lb, "lb", "statics"},
            {"R_l", phrase("force at the bottom of the overlap"), "w a", worst.couple.lower_lb, "lb", "statics"}};
}

}  // namespace toehold::checks
