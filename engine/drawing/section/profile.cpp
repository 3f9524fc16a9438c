#include "drawing/section/profile.h"

#include "drawing/scene/shapes.h"
#include "model/base_detail.h"
#include "model/placement.h"

#include <algorithm>

namespace toehold::drawing {
namespace {

Profile profile(const model::Member& member, const SectionPlane& plane, double top_in) {
    const model::PlanRectangle plan = model::plan(member);
    const bool along_y = plane.along == model::PlanAxis::y;
    const double low = along_y ? plan.y_min_in : plan.x_min_in, high = along_y ? plan.y_max_in : plan.x_max_in;
    const double near = along_y ? plan.x_max_in : plan.y_min_in, far = along_y ? plan.x_min_in : plan.y_max_in;
    const double sign = along_y ? 1.0 : -1.0;
    const bool cut = plane.at_in >= std::min(near, far) && plane.at_in <= std::max(near, far);
    const double behind = sign * (plane.at_in - near);
    Profile result{member, model::part_of(member), {{low, top_in - member.depth_in}, {high, top_in}}};
    result.cut = cut;
    result.end_grain = member.along != plane.along;
    result.behind_in = cut ? 0.0 : behind;
    return result;
}

}  // namespace

double framing_top_in(const model::BaseDetail& detail) {
    const auto* const plate = std::get_if<model::PlateOnDeck>(&detail.mount);
    return plate != nullptr ? -model::thickness_in(plate->layers) : 0.0;
}

std::vector<Profile> profiles(const model::BaseDetail& detail, const SectionPlane& plane) {
    const double top_in = framing_top_in(detail);
    std::vector<Profile> all;
    for (const model::Member& member : model::members(detail.framing)) {
        Profile one = profile(member, plane, top_in);
        if (has_area(one.box)) all.push_back(std::move(one));
    }
    std::stable_sort(all.begin(), all.end(),
                     [](const Profile& one, const Profile& other) { return one.behind_in > other.behind_in; });
    return all;
}

DeckEnds deck_ends(const model::Framing& framing, const SectionPlane& plane) {
    DeckEnds ends{-model::beyond_any_plate_in, model::beyond_any_plate_in};
    if (!framing.joists || framing.joists->along != plane.along || framing.joists->members.empty()) return ends;
    if (framing.joists->from_in) ends.low_in = *framing.joists->from_in;
    if (framing.joists->to_in) ends.high_in = *framing.joists->to_in;
    for (const model::Rim& rim : framing.rims) {
        const double half = 0.5 * rim.width_in * rim.plies;
        if (framing.joists->from_in) ends.low_in = std::min(ends.low_in, rim.at_in - half);
        if (framing.joists->to_in) ends.high_in = std::max(ends.high_in, rim.at_in + half);
    }
    return ends;
}

double along_in(const SectionPlane& plane, const model::Position& position) {
    return plane.along == model::PlanAxis::y ? position.y_in : position.x_in;
}

double aside_in(const SectionPlane& plane, const model::Position& position) {
    return plane.along == model::PlanAxis::y ? position.x_in : position.y_in;
}

}  // namespace toehold::drawing
