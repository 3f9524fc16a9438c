#include "model/capsule.h"
#include "model/placement.h"
#include "model/problem_list.h"
#include "model/validate.h"

#include <algorithm>
#include <cmath>
#include <set>

namespace toehold::model {
namespace {

using format::phrase;
using format::verbatim;

constexpr std::size_t most_corners = 400;
constexpr std::size_t most_holes = 100;

void check_position(ProblemList& problems, Position at) {
    problems.between(phrase("x"), at.x_in, -largest_length_in, largest_length_in);
    problems.between(phrase("y"), at.y_in, -largest_length_in, largest_length_in);
}

void check(ProblemList& problems, const RectangleOutline& rectangle) {
    problems.at("plate/rectangle");
    problems.positive(phrase("width (in)"), rectangle.width_in, largest_length_in);
    problems.positive(phrase("depth (in)"), rectangle.depth_in, largest_length_in);
    problems.between(phrase("corner radius (in)"), rectangle.corner_radius_in, 0.0,
                     std::max(0.0, 0.5 * std::min(rectangle.width_in, rectangle.depth_in)));
    check_position(problems, rectangle.center);
}

void check(ProblemList& problems, const CircleOutline& circle) {
    problems.at("plate/circle");
    problems.positive(phrase("diameter (in)"), circle.diameter_in, largest_length_in);
    check_position(problems, circle.center);
}

bool crosses_itself(const std::vector<Position>& corners) {
    const std::vector<Segment> all = sides(corners);
    for (std::size_t a = 0; a < all.size(); ++a) {
        for (std::size_t b = a + 1; b < all.size(); ++b) {
            const bool neighbors = b == a + 1 || (a == 0 && b + 1 == all.size());
            if (!neighbors && distance_in(all[a], all[b]) <= 0.0) return true;
        }
    }
    return false;
}

double area(const std::vector<Position>& corners) {
    double twice = 0.0;
    for (const Segment& side : sides(corners)) {
        twice += side.from.x_in * side.to.y_in - side.to.x_in * side.from.y_in;
    }
    return 0.5 * std::abs(twice);
}

void check(ProblemList& problems, const PolygonOutline& outline) {
    problems.at("plate/polygon");
    const std::size_t count = outline.corners.size();
    if (count < 3 || count > most_corners) {
        problems.add(phrase("wrong number of corners"), phrase("3 to {}", most_corners),
                     verbatim(std::to_string(count)));
        return;
    }
    for (const Position corner : outline.corners) check_position(problems, corner);
    if (crosses_itself(outline.corners))
        problems.add(phrase("the outline crosses or touches itself"), phrase("a simple polygon"));
    if (!(area(outline.corners) > 0.0))
        problems.add(phrase("the outline encloses no area"), phrase("three or more corners not in a line"));
}

void check_size(ProblemList& problems, const Hole& hole) {
    check_position(problems, hole.center);
    if (const auto* round = std::get_if<RoundHole>(&hole.shape)) {
        problems.positive(phrase("diameter (in)"), round->diameter_in, largest_length_in);
        return;
    }
    const Slot& slot = std::get<Slot>(hole.shape);
    problems.positive(phrase("width (in)"), slot.width_in, largest_length_in);
    problems.positive(phrase("length (in)"), slot.length_in, largest_length_in);
    problems.between(phrase("angle (deg)"), slot.angle_deg, -360.0, 360.0);
    if (!(slot.length_in > slot.width_in)) {
        problems.add(phrase("a slot is longer than it is wide"), phrase("a length above {} in", brief(slot.width_in)),
                     phrase("{} in", brief(slot.length_in)));
    }
}

std::string path(const Hole& hole) {
    return std::string("plate/") + (std::holds_alternative<Slot>(hole.shape) ? "slot[" : "hole[") + hole.id + "]";
}

void check_inside(ProblemList& problems, const Plate& plate, const Hole& hole) {
    const Capsule shape = capsule(hole);
    double distance =
        std::min(edge_distance_in(plate.outline, shape.axis.from), edge_distance_in(plate.outline, shape.axis.to));
    for (const Segment& side : sides(polygon(plate.outline))) {
        if (distance > 0.0) distance = std::min(distance, distance_in(side, shape.axis));
    }
    if (distance > shape.radius_in) return;
    problems.at(path(hole))
        .add(distance < 0.0 ? phrase("the hole lies outside the plate") : phrase("the hole cuts the plate's edge"),
             phrase("a center at least half the hole's width inside the outline"),
             phrase("x {} in, y {} in", brief(hole.center.x_in), brief(hole.center.y_in)));
}

void check_overlaps(ProblemList& problems, const Plate& plate) {
    for (std::size_t a = 0; a < plate.holes.size(); ++a) {
        for (std::size_t b = a + 1; b < plate.holes.size(); ++b) {
            const Capsule first = capsule(plate.holes[a]);
            const Capsule second = capsule(plate.holes[b]);
            if (distance_in(first.axis, second.axis) > first.radius_in + second.radius_in) continue;
            problems.at(path(plate.holes[b]))
                .add(phrase("the hole overlaps hole {}", plate.holes[a].id), phrase("holes with metal between them"));
        }
    }
}

}  // namespace

Problems validate(const Plate& plate) {
    ProblemList problems;
    problems.at("plate").positive(phrase("thickness (in)"), plate.thickness_in, 12.0);
    std::visit([&](const auto& outline) { check(problems, outline); }, plate.outline);
    problems.at("plate");
    if (plate.holes.empty())
        problems.add(phrase("the plate has no hole for an anchor"), phrase("one or more holes or slots"));
    if (plate.holes.size() > most_holes) {
        problems.add(phrase("too many holes"), phrase("at most {}", most_holes),
                     verbatim(std::to_string(plate.holes.size())));
    }
    std::set<std::string> ids;
    for (const Hole& hole : plate.holes) {
        problems.at(path(hole));
        if (hole.id.empty()) problems.add(phrase("a hole has no id"), phrase("a short name such as A"));
        if (!ids.insert(hole.id).second)
            problems.add(phrase("two holes have the same id"), phrase("ids that differ"), verbatim(hole.id));
        check_size(problems, hole);
    }
    Problems found = problems.take();
    // Places are only meaningful once every size is.
    if (!found.empty()) return found;
    for (const Hole& hole : plate.holes) check_inside(problems, plate, hole);
    check_overlaps(problems, plate);
    return problems.take();
}

}  // namespace toehold::model
