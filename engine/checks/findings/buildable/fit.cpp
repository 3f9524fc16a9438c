#include "checks/findings/buildable/fit.h"

#include "catalog/resolve.h"
#include "checks/plate/holes.h"
#include "model/capsule.h"
#include "model/placement.h"
#include "units/limit.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>

namespace toehold::checks {
namespace {

using format::phrase;
using model::Position;
using model::Segment;

/// From a rectangle centered on the origin; negative within.
double from_rectangle_in(Position at, double half_width_in, double half_depth_in) {
    const double past_x = std::abs(at.x_in) - half_width_in;
    const double past_y = std::abs(at.y_in) - half_depth_in;
    return std::hypot(std::max(past_x, 0.0), std::max(past_y, 0.0)) + std::min(std::max(past_x, past_y), 0.0);
}

/// From the face that lies `within_in` inside the outside face; negative within it.
double from_face_in(const PostFoot& foot, double within_in, Position at) {
    const double half_width_in = 0.5 * foot.tube.width_in - within_in;
    if (foot.tube.round) return std::hypot(at.x_in, at.y_in) - half_width_in;
    return from_rectangle_in(at, half_width_in, 0.5 * foot.tube.depth_in - within_in);
}

Position point_at(const Segment& segment, double share) {
    return {segment.from.x_in + share * (segment.to.x_in - segment.from.x_in),
            segment.from.y_in + share * (segment.to.y_in - segment.from.y_in)};
}

/// The least of a convex function along the segment. Each step keeps two thirds of what is left; after so many the
/// place is known to the last digit.
template <class Distance>
double least_along(const Segment& segment, const Distance& distance) {
    constexpr int steps = 90;
    double from = 0.0, to = 1.0;
    for (int step = 0; step < steps; ++step) {
        const double third = (to - from) / 3.0;
        if (distance(point_at(segment, from + third)) <= distance(point_at(segment, to - third))) {
            to -= third;
        } else {
            from += third;
        }
    }
    return distance(point_at(segment, 0.5 * (from + to)));
}

/// The largest of a convex function along the segment is at one of its ends.
template <class Distance>
double largest_along(const Segment& segment, const Distance& distance) {
    return std::max(distance(segment.from), distance(segment.to));
}

Position relative(Position point, Position center) { return {point.x_in - center.x_in, point.y_in - center.y_in}; }

double edge_in(const model::RectangleOutline& outline, const Segment& segment) {
    const double radius_in = outline.corner_radius_in;
    return -largest_along(segment, [&](Position point) {
        return from_rectangle_in(relative(point, outline.center), 0.5 * outline.width_in - radius_in,
                                 0.5 * outline.depth_in - radius_in) -
               radius_in;
    });
}

double edge_in(const model::CircleOutline& outline, const Segment& segment) {
    return -largest_along(segment, [&](Position point) {
        const Position from_center = relative(point, outline.center);
        return std::hypot(from_center.x_in, from_center.y_in) - 0.5 * outline.diameter_in;
    });
}

double edge_in(const model::PolygonOutline& outline, const Segment& segment) {
    double distance = std::numeric_limits<double>::infinity();
    for (const Segment& side : model::sides(outline.corners))
        distance = std::min(distance, model::distance_in(segment, side));
    return model::edge_distance_in(outline, segment.from) > 0.0 ? distance : -distance;
}

format::Phrase top_name(const catalog::Anchor& anchor) {
    return anchor.washer ? phrase("Washer of anchor {}", anchor.id) : phrase("Head of anchor {}", anchor.id);
}

}  // namespace

double outside_face_in(const PostFoot& foot, const Segment& segment) {
    return least_along(segment, [&](Position point) { return from_face_in(foot, 0.0, point); });
}

double inside_face_in(const PostFoot& foot, const Segment& segment) {
    return -largest_along(segment, [&](Position point) { return from_face_in(foot, foot.tube.wall_in, point); });
}

bool clear_of_post(const PostFoot& foot, const model::Capsule& hole) {
    return units::at_least(outside_face_in(foot, hole.axis), hole.radius_in);
}

bool in_hollow(const PostFoot& foot, const model::Capsule& hole) {
    return units::at_least(inside_face_in(foot, hole.axis), hole.radius_in);
}

double weld_leg_in(const catalog::Resolved& resolved) {
    const std::optional<model::Weld>& weld = on_deck(resolved.detail).weld;
    return weld && post_foot(resolved.detail.post).welded ? weld->leg_in : 0.0;
}

format::Phrase foot_name(const PostFoot& foot) { return foot.shoe ? phrase("shoe") : phrase("post"); }

double plate_edge_in(const model::Outline& outline, const Segment& segment) {
    return std::visit([&](const auto& shape) { return edge_in(shape, segment); }, outline);
}

model::Capsule hole_shape(const catalog::Resolved& resolved, const catalog::Anchor& anchor) {
    return model::capsule(hole_of(on_deck(resolved.detail).plate, anchor.id));
}

double across_corners_in(const catalog::Anchor& anchor) {
    const bool hexagon =
        anchor.kind == catalog::FastenerKind::lag_screw || anchor.kind == catalog::FastenerKind::through_bolt;
    return hexagon ? 2.0 / std::numbers::sqrt3 * anchor.head_width_in : 0.0;
}

std::optional<TopPart> top_part(const catalog::Anchor& anchor) {
    const double half_head_in = 0.5 * anchor.head_width_in;
    const double half_corners_in = 0.5 * across_corners_in(anchor);
    if (anchor.washer) {
        const double radius_in = 0.5 * anchor.washer->outside_diameter_in;
        return TopPart{top_name(anchor), std::max(radius_in, half_head_in), std::max(radius_in, half_corners_in)};
    }
    if (half_head_in <= 0.0) return std::nullopt;
    return TopPart{top_name(anchor), half_head_in, std::max(half_head_in, half_corners_in)};
}

}  // namespace toehold::checks
