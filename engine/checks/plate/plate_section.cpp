#include "checks/plate/plate_section.h"

#include "model/placement.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>

namespace toehold::checks {
namespace {

constexpr double touching_in = 1e-9;

/// How far the post's outline reaches along the normal.
double reach_in(const PostFoot& foot, double normal_x, double normal_y) {
    if (foot.round) return 0.5 * foot.width_in;
    return 0.5 * (foot.width_in * std::abs(normal_x) + foot.depth_in * std::abs(normal_y));
}

/// Where the post touches the section, as a place along it: the middle of a face, or a corner.
double touching_place_in(const PostFoot& foot, const PlateSection& section) {
    const bool diagonal = std::abs(section.normal_x) > 0.1 && std::abs(section.normal_y) > 0.1;
    if (foot.round || !diagonal) return 0.0;
    return section.along_in(
        {std::copysign(0.5 * foot.width_in, section.normal_x), std::copysign(0.5 * foot.depth_in, section.normal_y)});
}

/// Places where the section crosses the polygon, in order; always an even number.
std::vector<double> crossings(const PlateSection& section, const std::vector<model::Position>& corners) {
    std::vector<double> places;
    for (std::size_t index = 0; index < corners.size(); ++index) {
        const model::Position from = corners[index];
        const model::Position to = corners[(index + 1) % corners.size()];
        const double before = section.beyond_in(from);
        const double after = section.beyond_in(to);
        if ((before >= 0.0) == (after >= 0.0)) continue;
        const double share = before / (before - after);
        places.push_back(section.along_in(from) + share * (section.along_in(to) - section.along_in(from)));
    }
    std::sort(places.begin(), places.end());
    return places;
}

std::optional<Interval> chord_at(const PlateSection& section, const std::vector<model::Position>& corners,
                                 double place_in) {
    const std::vector<double> places = crossings(section, corners);
    for (std::size_t index = 0; index + 1 < places.size(); index += 2) {
        if (places[index] - touching_in <= place_in && place_in <= places[index + 1] + touching_in)
            return Interval{places[index], places[index + 1]};
    }
    return std::nullopt;
}

void widen(Interval& interval, const PlateSection& section, model::Position center, double radius_in) {
    const double away = section.beyond_in(center);
    if (std::abs(away) >= radius_in) return;
    const double half = std::sqrt(radius_in * radius_in - away * away);
    interval.from = std::min(interval.from, section.along_in(center) - half);
    interval.to = std::max(interval.to, section.along_in(center) + half);
}

/// A hole is two round ends (one place for a round hole) and, for a slot, the rectangle between them.
Interval cut_by(const PlateSection& section, const model::Hole& hole) {
    Interval cut{std::numeric_limits<double>::infinity(), -std::numeric_limits<double>::infinity()};
    if (const auto* round = std::get_if<model::RoundHole>(&hole.shape)) {
        widen(cut, section, hole.center, 0.5 * round->diameter_in);
        return cut;
    }
    const auto& slot = std::get<model::Slot>(hole.shape);
    const double angle = slot.angle_deg * std::numbers::pi / 180.0;
    const double radius = 0.5 * slot.width_in;
    const double half = 0.5 * slot.length_in - radius;
    const model::Position axis{std::cos(angle), std::sin(angle)};
    std::vector<model::Position> corners;
    for (const double sign : {-1.0, 1.0}) {
        const model::Position end{hole.center.x_in + sign * half * axis.x_in,
                                  hole.center.y_in + sign * half * axis.y_in};
        widen(cut, section, end, radius);
        corners.push_back({end.x_in + sign * radius * axis.y_in, end.y_in - sign * radius * axis.x_in});
        corners.push_back({end.x_in - sign * radius * axis.y_in, end.y_in + sign * radius * axis.x_in});
    }
    for (const double place : crossings(section, corners)) {
        cut.from = std::min(cut.from, place);
        cut.to = std::max(cut.to, place);
    }
    return cut;
}

/// Cut where the section meets the plate around this place along it.
bool cut(PlateSection& section, const model::Plate& plate, const std::vector<model::Position>& corners,
         double place_in) {
    const std::optional<Interval> chord = chord_at(section, corners, place_in);
    if (!chord) return false;
    section.chord = *chord;
    for (const model::Hole& hole : plate.holes) {
        const Interval gap = cut_by(section, hole);
        if (gap.length() > 0.0) section.holes.push_back(gap);
    }
    return true;
}

PlateSection tangent_line(const PostFoot& foot, int eighth) {
    PlateSection section;
    section.normal_rad = eighth * std::numbers::pi / 4.0;
    // Exact zeros, so that a face's section runs along it.
    section.normal_x = eighth % 4 == 2 ? 0.0 : std::cos(section.normal_rad);
    section.normal_y = eighth % 4 == 0 ? 0.0 : std::sin(section.normal_rad);
    section.offset_in = reach_in(foot, section.normal_x, section.normal_y);
    return section;
}

/// Normals along x, along y and along the line from the post's axis, all pointing away from the post.
std::vector<model::Position> normals_at(model::Position at) {
    std::vector<model::Position> normals;
    const bool off_x = std::abs(at.x_in) > touching_in;
    const bool off_y = std::abs(at.y_in) > touching_in;
    if (off_x) normals.push_back({std::copysign(1.0, at.x_in), 0.0});
    if (off_y) normals.push_back({0.0, std::copysign(1.0, at.y_in)});
    const double distance = std::hypot(at.x_in, at.y_in);
    if (off_x && off_y) normals.push_back({at.x_in / distance, at.y_in / distance});
    return normals;
}

PlateSection line_through(std::size_t anchor, model::Position at, model::Position normal) {
    PlateSection section;
    section.normal_rad = std::atan2(normal.y_in, normal.x_in);
    section.normal_x = normal.x_in;
    section.normal_y = normal.y_in;
    section.offset_in = normal.x_in * at.x_in + normal.y_in * at.y_in;
    section.anchor = anchor;
    return section;
}

}  // namespace

double PlateSection::beyond_in(model::Position point) const {
    return normal_x * point.x_in + normal_y * point.y_in - offset_in;
}

double PlateSection::along_in(model::Position point) const { return normal_x * point.y_in - normal_y * point.x_in; }

double PlateSection::width_in(Interval span) const {
    const Interval metal{std::max(span.from, chord.from), std::min(span.to, chord.to)};
    double width = metal.length();
    for (const Interval& hole : holes) {
        width -= Interval{std::max(hole.from, metal.from), std::min(hole.to, metal.to)}.length();
    }
    return std::max(0.0, width);
}

std::vector<PlateSection> tangent_sections(const PostFoot& foot, const model::Plate& plate) {
    const std::vector<model::Position> corners = model::polygon(plate.outline);
    std::vector<PlateSection> sections;
    for (int eighth = 0; eighth < 8; ++eighth) {
        PlateSection section = tangent_line(foot, eighth);
        if (cut(section, plate, corners, touching_place_in(foot, section))) sections.push_back(std::move(section));
    }
    return sections;
}

std::vector<PlateSection> anchor_sections(const PostFoot& foot, const model::Plate& plate,
                                          const std::vector<model::Position>& places) {
    const std::vector<model::Position> corners = model::polygon(plate.outline);
    std::vector<PlateSection> sections;
    for (std::size_t anchor = 0; anchor < places.size(); ++anchor) {
        for (const model::Position normal : normals_at(places[anchor])) {
            PlateSection section = line_through(anchor, places[anchor], normal);
            if (section.offset_in < reach_in(foot, normal.x_in, normal.y_in)) continue;
            if (cut(section, plate, corners, section.along_in(places[anchor]))) sections.push_back(std::move(section));
        }
    }
    return sections;
}

}  // namespace toehold::checks
