#include "drawing/drawings.h"
#include "drawing/plan/sheet.h"
#include "drawing/scene/shapes.h"
#include "drawing/section/sheet.h"
#include "drawing/side/side_drawings.h"
#include "model/base_detail.h"

#include <algorithm>
#include <cmath>

namespace toehold::drawing {
namespace {

Box plate_box(const SectionSheet& sheet) {
    const model::BaseDetail& detail = sheet.subject.detail;
    const PostFoot foot = post_foot(detail.post);
    const double half = 0.5 * std::abs(sheet.plane.along == model::PlanAxis::y ? foot.depth_in : foot.width_in);
    Box box{{-half, 0.0}, {half, std::max(0.0, on_deck(detail).plate.thickness_in)}};
    for (const Interval& piece : sheet.plate) box = around(box, {{piece.low_in, 0.0}, {piece.high_in, 0.0}});
    return box;
}

/// Plate, what it stands on, the members cut near it, and the anchors to their tips.
Box shown_box(const SectionSheet& sheet) {
    constexpr double least_in = 3.0, beyond_in = 0.75, near_in = 1.0, beside_in = 2.4, least_share = 1.15;
    const Box plate = plate_box(sheet);
    const double size = std::max(least_in, width(plate));
    const double limit_low = plate.low.x - size, limit_high = plate.high.x + size;
    Box shown{{plate.low.x - beside_in, -sheet.layers_in - beyond_in},
              {plate.high.x + beside_in, plate.high.y + post_stub_in(sheet)}};
    for (const Profile& one : sheet.framing) {
        shown.low.y = std::min(shown.low.y, one.box.low.y);
        const bool near = one.box.high.x > shown.low.x - near_in && one.box.low.x < shown.high.x + near_in;
        if (!one.cut || !one.end_grain || !near) continue;
        shown.low.x = std::max(limit_low, std::min(shown.low.x, one.box.low.x - beyond_in));
        shown.high.x = std::min(limit_high, std::max(shown.high.x, one.box.high.x + beyond_in));
    }
    for (const CutHole& hole : sheet.holes) {
        if (hole.anchor != nullptr) shown.low.y = std::min(shown.low.y, stations(sheet, *hole.anchor).tip_in);
    }
    shown.low.y -= 0.25;
    const double wanting = 0.5 * (least_share * (plate.high.y - shown.low.y) - width(shown));
    if (wanting > 0.0) {
        shown.low.x -= wanting;
        shown.high.x += wanting;
    }
    return shown;
}

}  // namespace

SectionSheet section_sheet(const Subject& subject, const SectionPlane& plane) {
    SectionSheet sheet{subject, plane, plate_cut(on_deck(subject.detail).plate, plane), holes_cut(subject, plane), {},
                       0.0,     {}};
    sheet.layers_in = std::max(0.0, model::thickness_in(on_deck(subject.detail).layers));
    for (Profile& one : profiles(subject.detail, plane)) {
        if (one.behind_in >= 0.0) sheet.framing.push_back(std::move(one));
    }
    sheet.shown = shown_box(sheet);
    return sheet;
}

Scene section(const Subject& subject, const SectionPlane& plane) {
    if (std::holds_alternative<model::SideFastened>(subject.detail.mount)) return side::section(subject);
    const SectionSheet sheet = section_sheet(subject, plane);
    Scene scene;
    scene.name = format::text(format::phrase("Section"), subject.locale);
    scene.bounds = sheet.shown;
    scene.margin_mm = 24.0;
    add_framing_behind(scene, sheet);
    add_cut_framing(scene, sheet);
    add_layers(scene, sheet);
    add_packing(scene, sheet);
    add_lower_plates(scene, sheet);
    add_bearing(scene, sheet);
    add_post_foot(scene, sheet);
    add_cut_plate(scene, sheet);
    add_anchors(scene, sheet);
    add_section_dimensions(scene, sheet);
    add_section_notes(scene, sheet);
    add_bent_plate(scene, sheet);
    add_pulls(scene, sheet);
    return finished(std::move(scene));
}

}  // namespace toehold::drawing
