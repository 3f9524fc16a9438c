#include "model/facing.h"

#include "model/placement.h"

#include <numbers>
#include <optional>
#include <utility>

namespace toehold::model {
namespace {

/// So that a place at 0 stays a plain 0.
void turn_place(double& place_in, TurnedAxis to) {
    if (to.reversed) place_in = 0.0 - place_in;
}

template <class Place>
void turn_ends(Place& from_in, Place& to_in, TurnedAxis to) {
    if (!to.reversed) return;
    std::swap(from_in, to_in);
    for (Place* const end_in : {&from_in, &to_in}) {
        if constexpr (std::is_same_v<Place, double>) {
            turn_place(*end_in, to);
        } else if (*end_in) {
            turn_place(**end_in, to);
        }
    }
}

void turn_block(Block& block, PostFacing facing) {
    const TurnedAxis along = turned(block.along, facing);
    turn_place(block.across_in, turned(other(block.along), facing));
    turn_ends(block.from_in, block.to_in, along);
    if (along.reversed) std::swap(block.from_end, block.to_end);
    block.along = along.axis;
}

}  // namespace

std::string_view word(PostFacing facing) {
    switch (facing) {
        case PostFacing::plus_y:
            return "+y";
        case PostFacing::minus_y:
            return "-y";
        case PostFacing::plus_x:
            return "+x";
        case PostFacing::minus_x:
            break;
    }
    return "-x";
}

TurnedAxis turned(PlanAxis axis, PostFacing facing) {
    const bool of_x = axis == PlanAxis::x;
    switch (facing) {
        case PostFacing::plus_y:
            break;
        case PostFacing::minus_y:
            return {axis, true};
        case PostFacing::plus_x:  // its outward is the project's x, its rail runs against the project's y
            return {other(axis), !of_x};
        case PostFacing::minus_x:
            return {other(axis), of_x};
    }
    return {axis, false};
}

Position outward(PostFacing facing) {
    switch (facing) {
        case PostFacing::plus_y:
            return {0.0, 1.0};
        case PostFacing::minus_y:
            return {0.0, -1.0};
        case PostFacing::plus_x:
            return {1.0, 0.0};
        case PostFacing::minus_x:
            break;
    }
    return {-1.0, 0.0};
}

double turn_rad(PostFacing facing) {
    constexpr double quarter_rad = 0.5 * std::numbers::pi;
    switch (facing) {
        case PostFacing::plus_y:
            return 0.0;
        case PostFacing::minus_x:
            return quarter_rad;
        case PostFacing::minus_y:
            return 2.0 * quarter_rad;
        case PostFacing::plus_x:
            break;
    }
    return 3.0 * quarter_rad;
}

Framing turned(const Framing& framing, PostFacing facing) {
    Framing result = framing;
    const PlanAxis joists_along = framing.joists ? framing.joists->along : PlanAxis::y;
    const TurnedAxis along = turned(joists_along, facing);
    const TurnedAxis across = turned(other(joists_along), facing);
    if (result.joists) {
        result.joists->along = along.axis;
        turn_ends(result.joists->from_in, result.joists->to_in, along);
        for (Joist& joist : result.joists->members) turn_place(joist.offset_in, across);
    }
    for (Rim& rim : result.rims) {
        turn_place(rim.at_in, along);
        turn_ends(rim.from_in, rim.to_in, across);
    }
    for (JoistSupport& support : result.supports) turn_place(support.at_in, along);
    for (Block& block : result.blocks) turn_block(block, facing);
    return result;
}

}  // namespace toehold::model
