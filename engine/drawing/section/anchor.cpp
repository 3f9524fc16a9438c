#include "catalog/resolve.h"
#include "drawing/scene/shapes.h"
#include "drawing/section/sheet.h"
#include "model/placement.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace toehold::drawing {
namespace {

// The look of fasteners from their side. Heights of heads and nuts, and the pitch of threads, are drawn as is usual for
// the diameter (common practice); no check reads them.
constexpr double head_of_diameter = 0.65, nut_of_diameter = 0.87, pitch_of_diameter = 0.38;
constexpr double round_head_of_width = 0.35;

/// A screw whose tip is not told apart from its thread has one all the same.
double tip_length_in(const catalog::Anchor& anchor) {
    return anchor.tip_length_in > 0.0 ? anchor.tip_length_in : anchor.diameter_in;
}

/// Half the width left at this height: the tip tapers to a point.
double tapered(double half, double z, const AnchorStations& at, double tip_length) {
    return half * std::clamp((z - at.tip_in) / tip_length, 0.0, 1.0);
}

/// One side of the thread from its beginning down to the tip, as half widths at heights.
std::vector<Point> thread_side(const catalog::Anchor& anchor, const AnchorStations& at, double shift) {
    constexpr double most_turns = 120.0;
    const double top = std::min(at.thread_in, at.head_in), length = top - at.tip_in;
    const double outer = 0.5 * anchor.diameter_in, root = 0.5 * std::min(anchor.root_diameter_in, anchor.diameter_in);
    std::vector<Point> side;
    if (!(length > 0.0) || !(outer > 0.0)) return side;
    const double pitch = std::max(pitch_of_diameter * anchor.diameter_in, length / most_turns);
    for (double turn = shift; turn * pitch < length; turn += 1.0) {
        for (const bool crest : {false, true}) {
            const double z = top - std::min(length, (turn + (crest ? 0.5 : 0.0)) * pitch);
            side.push_back({tapered(crest ? outer : root, z, at, tip_length_in(anchor)), z});
        }
    }
    return side;
}

double head_height_in(const catalog::Anchor& anchor) {
    if (anchor.kind == catalog::FastenerKind::wood_screw) return round_head_of_width * anchor.head_width_in;
    return head_of_diameter * anchor.diameter_in;
}

double nut_height_in(const catalog::Anchor& anchor) { return nut_of_diameter * anchor.diameter_in; }

/// Shank, thread and tip below the head, closed.
std::vector<Point> screw_contour(const catalog::Anchor& anchor, const AnchorStations& at, double axis_in) {
    const double half = 0.5 * anchor.diameter_in, thread = std::min(at.thread_in, at.head_in);
    const std::vector<Point> right = thread_side(anchor, at, 0.0), left = thread_side(anchor, at, 0.5);
    std::vector<Point> contour = {{axis_in + half, at.head_in}, {axis_in + half, thread}};
    for (const Point& point : right) contour.push_back({axis_in + point.x, point.y});
    contour.push_back({axis_in, at.tip_in});
    for (auto point = left.rbegin(); point != left.rend(); ++point) contour.push_back({axis_in - point->x, point->y});
    contour.push_back({axis_in - half, thread});
    contour.push_back({axis_in - half, at.head_in});
    return contour;
}

struct Heights {
    double low_in = 0.0, high_in = 0.0;
};

/// A hexagonal head or nut seen across its corners.
void add_hexagon(Scene& scene, double axis_in, Heights heights, double across_flats_in, const model::PartId& part) {
    const double half = across_flats_in / std::numbers::sqrt3;
    scene.items.emplace_back(rectangle({{axis_in - half, heights.low_in}, {axis_in + half, heights.high_in}},
                                       Pen::outline, Fill::plate, part));
    for (const double x : {axis_in - 0.5 * half, axis_in + 0.5 * half})
        scene.items.emplace_back(line(Point{x, heights.low_in}, {x, heights.high_in}, Pen::thin, part));
}

void add_round_head(Scene& scene, double axis_in, Heights heights, double diameter_in, const model::PartId& part) {
    constexpr int chords = 16;
    std::vector<Point> contour;
    for (int index = 0; index <= chords; ++index) {
        const double angle = std::numbers::pi * index / chords;
        contour.push_back({axis_in + 0.5 * diameter_in * std::cos(angle),
                           heights.low_in + (heights.high_in - heights.low_in) * std::sin(angle)});
    }
    scene.items.emplace_back(area(contour, Pen::outline, Fill::plate, part));
}

void add_plate_below(Scene& scene, double at, double width, double top, double thickness, const model::PartId& part) {
    if (!(width > 0.0) || !(thickness > 0.0)) return;
    scene.items.emplace_back(
        rectangle({{at - 0.5 * width, top - thickness}, {at + 0.5 * width, top}}, Pen::outline, Fill::plate, part));
}

double width_below(const catalog::Anchor& anchor, const SectionPlane& plane) {
    if (anchor.washer_below) return anchor.washer_below->outside_diameter_in;
    if (!anchor.backing) return 0.0;
    return plane.along == model::PlanAxis::y ? anchor.backing->depth_in : anchor.backing->width_in;
}

void add_bolt(Scene& scene, const SectionSheet& sheet, const CutHole& hole, const AnchorStations& at) {
    const catalog::Anchor& anchor = *hole.anchor;
    const model::PartId part = model::anchor_part(hole.id);
    const double half = 0.5 * anchor.diameter_in;
    scene.items.emplace_back(
        rectangle({{hole.at_in - half, at.tip_in}, {hole.at_in + half, at.head_in}}, Pen::outline, Fill::plate, part));
    add_plate_below(scene, hole.at_in, width_below(anchor, sheet.plane), at.seat_in, at.below_in, part);
    const double nut_top = at.seat_in - at.below_in;
    add_hexagon(scene, hole.at_in, {nut_top - nut_height_in(anchor), nut_top}, anchor.head_width_in, part);
}

void add_screw(Scene& scene, const CutHole& hole, const AnchorStations& at) {
    const catalog::Anchor& anchor = *hole.anchor;
    scene.items.emplace_back(
        area(screw_contour(anchor, at, hole.at_in), Pen::outline, Fill::plate, model::anchor_part(hole.id)));
}

void add_head(Scene& scene, const SectionSheet& sheet, const CutHole& hole, const AnchorStations& at) {
    const catalog::Anchor& anchor = *hole.anchor;
    const model::PartId part = model::anchor_part(hole.id);
    if (anchor.washer)
        add_plate_below(scene, hole.at_in, anchor.washer->outside_diameter_in, at.head_in,
                        at.head_in - on_deck(sheet.subject.detail).plate.thickness_in, part);
    if (anchor.kind == catalog::FastenerKind::wood_screw) {
        add_round_head(scene, hole.at_in, {at.head_in, at.head_top_in}, anchor.head_width_in, part);
    } else {
        const double head = anchor.head_width_in > 0.0 ? anchor.head_width_in : 1.5 * anchor.diameter_in;
        add_hexagon(scene, hole.at_in, {at.head_in, at.head_top_in}, head, part);
    }
}

void add_axis(Scene& scene, const CutHole& hole, double top, double bottom) {
    constexpr double beyond_mm = 2.0;
    scene.items.emplace_back(line(standing({hole.at_in, top}, {0.0, beyond_mm}),
                                  standing({hole.at_in, bottom}, {0.0, -beyond_mm}), Pen::center,
                                  model::anchor_part(hole.id)));
}

void add_letter(Scene& scene, const CutHole& hole, double half_head, double level) {
    const double side = hole.at_in < 0.0 ? -1.0 : 1.0;
    Text text;
    text.at = standing({hole.at_in + side * half_head, level}, {side * 1.6, 0.4});
    text.words = hole.id;
    text.bold = true;
    text.across = side > 0.0 ? Across::left : Across::right;
    text.part = model::anchor_part(hole.id);
    scene.items.emplace_back(std::move(text));
}

}  // namespace

AnchorStations stations(const SectionSheet& sheet, const catalog::Anchor& anchor) {
    const model::BaseDetail& detail = sheet.subject.detail;
    AnchorStations at;
    at.head_in = on_deck(detail).plate.thickness_in + (anchor.washer ? anchor.washer->thickness_in : 0.0);
    at.head_top_in = at.head_in + head_height_in(anchor);
    if (anchor.kind != catalog::FastenerKind::through_bolt) {
        at.tip_in = at.head_in - anchor.length_in;
        at.thread_in = at.tip_in + anchor.thread_length_in;
        return at;
    }
    const double depth = anchor.seat ? anchor.embedment_in : 0.0;
    at.seat_in = -sheet.layers_in - depth;
    at.below_in = anchor.washer_below ? anchor.washer_below->thickness_in
                  : anchor.backing    ? anchor.backing->thickness_in
                  : anchor.lower      ? anchor.lower->thickness_in
                                      : 0.0;
    at.tip_in = at.seat_in - at.below_in - 1.3 * nut_height_in(anchor);
    at.thread_in = at.seat_in;
    return at;
}

void add_anchors(Scene& scene, const SectionSheet& sheet) {
    for (const CutHole& hole : sheet.holes) {
        const double top = on_deck(sheet.subject.detail).plate.thickness_in;
        if (hole.anchor == nullptr) {
            add_axis(scene, hole, top, -sheet.layers_in);
            add_letter(scene, hole, 0.5 * (hole.high_in - hole.low_in), top);
            continue;
        }
        const AnchorStations at = stations(sheet, *hole.anchor);
        if (hole.anchor->kind == catalog::FastenerKind::through_bolt) {
            add_bolt(scene, sheet, hole, at);
        } else {
            add_screw(scene, hole, at);
        }
        add_head(scene, sheet, hole, at);
        add_axis(scene, hole, at.head_top_in, at.tip_in);
        const double washer = hole.anchor->washer ? hole.anchor->washer->outside_diameter_in : 0.0;
        add_letter(scene, hole, 0.5 * std::max(washer, hole.anchor->head_width_in), at.head_in);
    }
}

}  // namespace toehold::drawing
