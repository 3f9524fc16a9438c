#include "catalog/resolve.h"
#include "drawing/drawings.h"
#include "drawing/plan/sheet.h"
#include "drawing/scene/shapes.h"
#include "drawing/section/sheet.h"
#include "model/placement.h"

#include <algorithm>
#include <cmath>

namespace toehold::drawing {
namespace {

/// Where a part stands in plan, as far as it has one place.
std::optional<model::Position> place_of(const model::BaseDetail& detail, const model::PartId& part) {
    const auto& holes = on_deck(detail).plate.holes;
    const auto hole = std::find_if(holes.begin(), holes.end(),
                                   [&](const model::Hole& one) { return model::anchor_part(one.id) == part; });
    if (hole != holes.end()) return hole->center;
    for (const model::Member& member : model::members(detail.framing)) {
        if (model::part_of(member) != part) continue;
        const double middle = member.length_stated ? 0.5 * (member.from_in + member.to_in) : 0.0;
        return member.along == model::PlanAxis::x ? model::Position{middle, member.across_in}
                                                  : model::Position{member.across_in, middle};
    }
    return std::nullopt;
}

const model::Hole* nearest_hole(const std::vector<model::Hole>& holes, const std::optional<model::Position>& place) {
    if (holes.empty()) return nullptr;
    if (!place) return &holes.front();
    const auto distance = [&](const model::Hole& hole) {
        return std::hypot(hole.center.x_in - place->x_in, hole.center.y_in - place->y_in);
    };
    return &*std::min_element(holes.begin(), holes.end(), [&](const model::Hole& one, const model::Hole& other) {
        return distance(one) < distance(other);
    });
}

/// Across what the hole stands over; else across the first block; else outward.
model::PlanAxis direction(const model::Framing& framing, const model::Hole& hole) {
    model::PlanAxis grain = model::PlanAxis::x;
    if (const auto seat = model::seat(framing, hole.center)) {
        grain = model::member(framing, seat->member).along;
    } else if (!framing.blocks.empty()) {
        grain = framing.blocks.front().along;
    }
    return grain == model::PlanAxis::x ? model::PlanAxis::y : model::PlanAxis::x;
}

}  // namespace

SectionPlane section_plane(const model::BaseDetail& detail, const model::PartId& part) {
    if (std::holds_alternative<model::SideFastened>(detail.mount)) return {model::PlanAxis::y, 0.0};
    const model::Hole* const hole = nearest_hole(on_deck(detail).plate.holes, place_of(detail, part));
    if (hole == nullptr) return {};
    const model::PlanAxis along = direction(detail.framing, *hole);
    return {along, along == model::PlanAxis::y ? hole->center.x_in : hole->center.y_in};
}

namespace {

/// Where the plane cuts a closed contour, in pairs from left to right.
std::vector<Interval> cut(const std::vector<model::Position>& corners, const SectionPlane& plane) {
    std::vector<double> crossings;
    for (std::size_t index = 0; index < corners.size(); ++index) {
        const model::Position& from = corners[index];
        const model::Position& to = corners[(index + 1) % corners.size()];
        const double a = aside_in(plane, from), b = aside_in(plane, to);
        if ((a > plane.at_in) == (b > plane.at_in)) continue;
        const double share = (plane.at_in - a) / (b - a);
        crossings.push_back(along_in(plane, from) + share * (along_in(plane, to) - along_in(plane, from)));
    }
    std::sort(crossings.begin(), crossings.end());
    std::vector<Interval> intervals;
    for (std::size_t index = 0; index + 1 < crossings.size(); index += 2)
        intervals.push_back({crossings[index], crossings[index + 1]});
    return intervals;
}

std::optional<Interval> cut(const model::Hole& hole, const SectionPlane& plane) {
    if (const auto* const slot = std::get_if<model::Slot>(&hole.shape)) {
        std::vector<model::Position> corners;
        for (const Point& point : slot_contour(hole, *slot)) corners.push_back({point.x, point.y});
        const std::vector<Interval> intervals = cut(corners, plane);
        if (intervals.empty()) return std::nullopt;
        return Interval{intervals.front().low_in, intervals.back().high_in};
    }
    const double radius = 0.5 * std::get<model::RoundHole>(hole.shape).diameter_in;
    const double off = plane.at_in - aside_in(plane, hole.center);
    if (!(std::abs(off) < radius)) return std::nullopt;
    const double half = std::sqrt(radius * radius - off * off), at = along_in(plane, hole.center);
    return Interval{at - half, at + half};
}

const catalog::Anchor* anchor_in(const Subject& subject, const std::string& id) {
    if (subject.resolved == nullptr) return nullptr;
    for (const catalog::Anchor& anchor : subject.resolved->anchors) {
        if (anchor.id == id) return &anchor;
    }
    return nullptr;
}

}  // namespace

std::vector<Interval> plate_cut(const model::Plate& plate, const SectionPlane& plane) {
    return cut(model::polygon(plate.outline), plane);
}

std::vector<CutHole> holes_cut(const Subject& subject, const SectionPlane& plane) {
    std::vector<CutHole> holes;
    for (const model::Hole& hole : on_deck(subject.detail).plate.holes) {
        if (const auto interval = cut(hole, plane)) {
            holes.push_back({hole.id, along_in(plane, hole.center), interval->low_in, interval->high_in,
                             anchor_in(subject, hole.id)});
        }
    }
    std::sort(holes.begin(), holes.end(),
              [](const CutHole& one, const CutHole& other) { return one.at_in < other.at_in; });
    return holes;
}

}  // namespace toehold::drawing
