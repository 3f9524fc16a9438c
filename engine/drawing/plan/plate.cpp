#include "catalog/resolve.h"
#include "drawing/plan/sheet.h"
#include "drawing/scene/shapes.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace toehold::drawing {
namespace {

constexpr double rad_per_deg = std::numbers::pi / 180.0;
constexpr double axis_beyond_mm = 1.6;

Point center_of(const model::Hole& hole) { return {hole.center.x_in, hole.center.y_in}; }

const catalog::Anchor* anchor_in(const Subject& subject, const std::string& hole_id) {
    if (subject.resolved == nullptr) return nullptr;
    const auto& anchors = subject.resolved->anchors;
    const auto found =
        std::find_if(anchors.begin(), anchors.end(), [&](const catalog::Anchor& one) { return one.id == hole_id; });
    return found == anchors.end() ? nullptr : &*found;
}

/// Two axes across a hole, a little longer than it.
void add_center_mark(Scene& scene, const model::Hole& hole, Point half_in, double angle_rad) {
    const Point axes[] = {{std::cos(angle_rad), std::sin(angle_rad)}, {-std::sin(angle_rad), std::cos(angle_rad)}};
    const double halves[] = {half_in.x, half_in.y};
    const Point center = center_of(hole);
    for (int axis = 0; axis < 2; ++axis) {
        const Point u = axes[axis];
        const double half = halves[axis];
        scene.items.emplace_back(
            line({{center.x - half * u.x, center.y - half * u.y}, {-axis_beyond_mm * u.x, -axis_beyond_mm * u.y}},
                 {{center.x + half * u.x, center.y + half * u.y}, {axis_beyond_mm * u.x, axis_beyond_mm * u.y}},
                 Pen::thin, model::anchor_part(hole.id)));
    }
}

void add_hole(Scene& scene, const model::Hole& hole) {
    const model::PartId part = model::anchor_part(hole.id);
    if (const auto* const slot = std::get_if<model::Slot>(&hole.shape)) {
        scene.items.emplace_back(area(slot_contour(hole, *slot), Pen::outline, Fill::paper, part));
        add_center_mark(scene, hole, {0.5 * slot->length_in, 0.5 * slot->width_in}, slot->angle_deg * rad_per_deg);
        return;
    }
    const double radius_in = 0.5 * std::get<model::RoundHole>(hole.shape).diameter_in;
    scene.items.emplace_back(
        Circle{standing(center_of(hole)), std::max(0.0, radius_in), 0.0, Pen::outline, Fill::paper, part});
    add_center_mark(scene, hole, {radius_in, radius_in}, 0.0);
}

}  // namespace

void add_plate_face(Scene& scene, const PlanSheet& sheet) {
    if (!sheet.outline.empty())
        scene.items.emplace_back(area(sheet.outline, Pen::none, Fill::plate, {model::PartKind::plate}));
}

void add_plate_edge(Scene& scene, const PlanSheet& sheet) {
    if (!sheet.outline.empty())
        scene.items.emplace_back(area(sheet.outline, Pen::outline, Fill::none, {model::PartKind::plate}));
}

std::vector<Point> slot_contour(const model::Hole& hole, const model::Slot& slot) {
    constexpr int chords = 24;
    const double radius = 0.5 * slot.width_in;
    const double straight = std::max(0.0, 0.5 * slot.length_in - radius);
    const double angle = slot.angle_deg * rad_per_deg;
    const Point center = center_of(hole);
    std::vector<Point> contour;
    for (int end = 0; end < 2; ++end) {
        const double shift = end == 0 ? straight : -straight;
        for (int index = 0; index <= chords; ++index) {
            const double turn = (end - 0.5 + static_cast<double>(index) / chords) * std::numbers::pi;
            const Point flat{shift + radius * std::cos(turn), radius * std::sin(turn)};
            contour.push_back({center.x + flat.x * std::cos(angle) - flat.y * std::sin(angle),
                               center.y + flat.x * std::sin(angle) + flat.y * std::cos(angle)});
        }
    }
    return contour;
}

double across_in(const model::Hole& hole) {
    if (const auto* const slot = std::get_if<model::Slot>(&hole.shape)) return slot->width_in;
    return std::get<model::RoundHole>(hole.shape).diameter_in;
}

double covered_radius_in(const Subject& subject, const model::Hole& hole) {
    const catalog::Anchor* const anchor = anchor_in(subject, hole.id);
    const auto* const slot = std::get_if<model::Slot>(&hole.shape);
    double diameter_in = slot != nullptr ? std::max(slot->length_in, slot->width_in) : across_in(hole);
    if (anchor != nullptr) {
        diameter_in = std::max(diameter_in, anchor->head_width_in);
        if (anchor->washer) diameter_in = std::max(diameter_in, anchor->washer->outside_diameter_in);
    }
    return std::max(0.0, 0.5 * diameter_in);
}

void add_holes(Scene& scene, const PlanSheet& sheet) {
    for (const model::Hole& hole : on_deck(sheet.subject.detail).plate.holes) {
        const catalog::Anchor* const anchor = anchor_in(sheet.subject, hole.id);
        if (anchor != nullptr && anchor->washer) {
            scene.items.emplace_back(Circle{standing(center_of(hole)),
                                            std::max(0.0, 0.5 * anchor->washer->outside_diameter_in), 0.0, Pen::thin,
                                            Fill::plate, model::anchor_part(hole.id)});
        }
        add_hole(scene, hole);
    }
}

}  // namespace toehold::drawing
