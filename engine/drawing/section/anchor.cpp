#include "catalog/resolve.h"
#include "drawing/scene/shapes.h"
#include "drawing/section/sheet.h"
#include "model/placement.h"

#include <algorithm>
#include <cmath>

namespace toehold::drawing {
namespace {

double width_below(const catalog::Anchor& anchor, const SectionPlane& plane) {
    if (anchor.washer_below) return anchor.washer_below->outside_diameter_in;
    if (!anchor.backing) return 0.0;
    return plane.along == model::PlanAxis::y ? anchor.backing->depth_in : anchor.backing->width_in;
}

void add_fastener(Scene& scene, const SectionSheet& sheet, const CutHole& hole, const AnchorStations& at) {
    const catalog::Anchor& anchor = *hole.anchor;
    Bearer washer;
    if (anchor.washer)
        washer = {anchor.washer->outside_diameter_in, at.head_in - on_deck(sheet.subject.detail).plate.thickness_in};
    add_placed(scene,
               fastener_pieces(anchor, at, washer, {width_below(anchor, sheet.plane), at.below_in},
                               model::anchor_part(hole.id)),
               [&hole](Point own) {
                   return Point{hole.at_in + own.x, own.y};
               });
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
        add_fastener(scene, sheet, hole, at);
        add_axis(scene, hole, at.head_top_in, at.tip_in);
        const double washer = hole.anchor->washer ? hole.anchor->washer->outside_diameter_in : 0.0;
        add_letter(scene, hole, 0.5 * std::max(washer, hole.anchor->head_width_in), at.head_in);
    }
}

}  // namespace toehold::drawing
