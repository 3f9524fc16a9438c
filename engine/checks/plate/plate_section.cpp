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

std::optional<PlateSection> tangent_section(const PostFoot& foot, const model::Plate& plate,
                                            const std::vector<model::Position>& corners, int eighth) {
    PlateSection section;
    section.normal_rad = eighth * std::numbers::pi / 4.0;
    // Exact zeros, so that a face's section runs along it.
    section.normal_x = eighth % 4 == 2 ? 0.0 : std::cos(section.normal_rad);
    section.normal_y = eighth % 4 == 0 ? 0.0 : std::sin(section.normal_rad);
    section.offset_in = reach_in(foot, section.normal_x, section.normal_y);
    const std::optional<Interval> chord = chord_at(section, corners, touching_place_in(foot, section));
    if (!chord) return std::nullopt;
    section.chord = *chord;
    for (const model::Hole& hole : plate.holes) {
        const Interval cut = cut_by(section, hole);
        if (cut.length() > 0.0) section.holes.push_back(cut);
    }
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
        if (auto section = tangent_section(foot, plate, corners, eighth)) sections.push_back(std::move(*section));
    }
    return sections;
}

}  // namespace toehold::checks
