#include "mechanics/plate_strip/section.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>
#include <utility>

namespace toehold::mechanics {
namespace {

constexpr double touching_in = 1e-9;

/// How far the post's outline reaches along the normal.
double reach_in(const FootOutline& foot, double normal_x, double normal_y) {
    if (foot.round) return 0.5 * foot.width_in;
    return 0.5 * (foot.width_in * std::abs(normal_x) + foot.depth_in * std::abs(normal_y));
}

/// Where the post touches the section, as a place along it: the middle of a face, or a corner.
double touching_place_in(const FootOutline& foot, const PlateSection& section) {
    const bool diagonal = std::abs(section.normal_x) > 0.1 && std::abs(section.normal_y) > 0.1;
    if (foot.round || !diagonal) return 0.0;
    return section.along_in(
        {std::copysign(0.5 * foot.width_in, section.normal_x), std::copysign(0.5 * foot.depth_in, section.normal_y)});
}

void widen(Interval& interval, const PlateSection& section, Point center, double radius_in) {
    const double away = section.beyond_in(center);
    if (std::abs(away) >= radius_in) return;
    const double half = std::sqrt(radius_in * radius_in - away * away);
    interval.from = std::min(interval.from, section.along_in(center) - half);
    interval.to = std::max(interval.to, section.along_in(center) + half);
}

/// Places where the section's line crosses the outline, in order; always an even number, two where it is convex.
std::vector<double> crossings_in(const PlateSection& section, const Polygon& corners) {
    std::vector<double> places;
    for (std::size_t index = 0; index < corners.size(); ++index) {
        const Point from = corners[index];
        const Point to = corners[(index + 1) % corners.size()];
        const double before = section.beyond_in(from);
        const double after = section.beyond_in(to);
        if ((before >= 0.0) == (after >= 0.0)) continue;
        const double share = before / (before - after);
        places.push_back(section.along_in(from) + share * (section.along_in(to) - section.along_in(from)));
    }
    std::sort(places.begin(), places.end());
    return places;
}

std::optional<Interval> chord_at(const PlateSection& section, const Polygon& corners, double place_in) {
    const std::vector<double> places = crossings_in(section, corners);
    for (std::size_t index = 0; index + 1 < places.size(); index += 2) {
        if (places[index] - touching_in <= place_in && place_in <= places[index + 1] + touching_in)
            return Interval{places[index], places[index + 1]};
    }
    return std::nullopt;
}

/// Cut where the section meets the plate around this place along it.
bool cut(PlateSection& section, const PlateShape& plate, double place_in) {
    const std::optional<Interval> chord = chord_at(section, plate.outline, place_in);
    if (!chord) return false;
    section.chord = *chord;
    for (const PlateHole& hole : plate.holes) {
        const Interval gap = cut_by_hole(section, hole);
        if (gap.length() > 0.0) section.holes.push_back(gap);
    }
    return true;
}

PlateSection tangent_line(const FootOutline& foot, int eighth) {
    PlateSection section;
    section.normal_rad = eighth * std::numbers::pi / 4.0;
    // Exact zeros, so that a face's section runs along it.
    section.normal_x = eighth % 4 == 2 ? 0.0 : std::cos(section.normal_rad);
    section.normal_y = eighth % 4 == 0 ? 0.0 : std::sin(section.normal_rad);
    section.offset_in = reach_in(foot, section.normal_x, section.normal_y);
    return section;
}

/// Normals along x, along y and along the line from the post's axis, all pointing away from the post.
std::vector<Point> normals_at(Point at) {
    std::vector<Point> normals;
    const bool off_x = std::abs(at.x) > touching_in;
    const bool off_y = std::abs(at.y) > touching_in;
    if (off_x) normals.push_back({std::copysign(1.0, at.x), 0.0});
    if (off_y) normals.push_back({0.0, std::copysign(1.0, at.y)});
    const double distance = std::hypot(at.x, at.y);
    if (off_x && off_y) normals.push_back({at.x / distance, at.y / distance});
    return normals;
}

PlateSection line_through(std::size_t anchor, Point at, Point normal) {
    PlateSection section;
    section.normal_rad = std::atan2(normal.y, normal.x);
    section.normal_x = normal.x;
    section.normal_y = normal.y;
    section.offset_in = normal.x * at.x + normal.y * at.y;
    section.anchor = anchor;
    return section;
}

}  // namespace

/// A hole is two round ends (one place for a round hole) and, for a slot, the rectangle between them.
Interval cut_by_hole(const PlateSection& section, const PlateHole& hole) {
    Interval cut{std::numeric_limits<double>::infinity(), -std::numeric_limits<double>::infinity()};
    widen(cut, section, hole.from, hole.radius_in);
    const double length = std::hypot(hole.to.x - hole.from.x, hole.to.y - hole.from.y);
    if (!(length > 0.0)) return cut;
    widen(cut, section, hole.to, hole.radius_in);
    const Point across{hole.radius_in * (hole.to.y - hole.from.y) / length,
                       -hole.radius_in * (hole.to.x - hole.from.x) / length};
    const Polygon between = {{hole.from.x + across.x, hole.from.y + across.y},
                             {hole.to.x + across.x, hole.to.y + across.y},
                             {hole.to.x - across.x, hole.to.y - across.y},
                             {hole.from.x - across.x, hole.from.y - across.y}};
    for (const double place : crossings_in(section, between)) {
        cut.from = std::min(cut.from, place);
        cut.to = std::max(cut.to, place);
    }
    return cut;
}

double PlateSection::beyond_in(Point point) const { return normal_x * point.x + normal_y * point.y - offset_in; }

double PlateSection::along_in(Point point) const { return normal_x * point.y - normal_y * point.x; }

double PlateSection::width_in(Interval span) const {
    const Interval metal{std::max(span.from, chord.from), std::min(span.to, chord.to)};
    double width = metal.length();
    for (const Interval& hole : holes) {
        width -= Interval{std::max(hole.from, metal.from), std::min(hole.to, metal.to)}.length();
    }
    return std::max(0.0, width);
}

std::vector<PlateSection> tangent_sections(const FootOutline& foot, const PlateShape& plate) {
    std::vector<PlateSection> sections;
    for (int eighth = 0; eighth < 8; ++eighth) {
        PlateSection section = tangent_line(foot, eighth);
        if (cut(section, plate, touching_place_in(foot, section))) sections.push_back(std::move(section));
    }
    return sections;
}

std::vector<PlateSection> anchor_sections(const FootOutline& foot, const PlateShape& plate,
                                          std::span<const Point> anchors) {
    std::vector<PlateSection> sections;
    for (std::size_t anchor = 0; anchor < anchors.size(); ++anchor) {
        for (const Point normal : normals_at(anchors[anchor])) {
            PlateSection section = line_through(anchor, anchors[anchor], normal);
            if (section.offset_in < reach_in(foot, normal.x, normal.y)) continue;
            if (cut(section, plate, section.along_in(anchors[anchor]))) sections.push_back(std::move(section));
        }
    }
    return sections;
}

}  // namespace toehold::mechanics
