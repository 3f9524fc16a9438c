#include "drawing/side/guard.h"

#include "drawing/scene/shapes.h"
#include "drawing/side/shape.h"

#include <algorithm>
#include <cmath>

namespace toehold::drawing::side {
namespace {

/// Hidden in post and wood: from head to tip.
void add_axes(Scene& scene, const ElevationSheet& sheet, const Shape& of) {
    if (sheet.subject.resolved == nullptr) return;
    for (const Fixing& fixing : fixings(sheet.subject)) {
        if (fixing.anchor == nullptr) continue;
        const AnchorStations at = level_stations(*sheet.subject.resolved, *fixing.anchor);
        scene.items.emplace_back(line(Point{station_y_in(of, at.tip_in), fixing.z_in},
                                      {station_y_in(of, at.head_top_in), fixing.z_in}, Pen::hidden,
                                      model::anchor_part(fixing.id)));
    }
}

void add_between(Scene& scene, const Shape& of) {
    for (std::size_t index = 0; index < of.mount.layers.size(); ++index) {
        const Span across = layer_y_in(of, index), heights = layer_heights_in(of, index);
        scene.items.emplace_back(rectangle({{across.low_in, heights.low_in}, {across.high_in, heights.high_in}},
                                           Pen::outline, Fill::decking, model::shim_part(index)));
    }
    if (!of.mount.bracket) return;
    const Span across = span(of.post_face_in, of.post_face_in + of.towards_y * of.mount.bracket->thickness_in);
    const Span heights = seat_heights_in(of);
    scene.items.emplace_back(rectangle({{across.low_in, heights.low_in}, {across.high_in, heights.high_in}},
                                       Pen::outline, Fill::plate, {model::PartKind::plate}));
}

/// With its notch, whose shoulder may stand on the member.
void add_post(Scene& scene, const ElevationSheet& sheet, const Shape& of) {
    const double full = -of.back_in, low = of.post_low_in, high = sheet.top_in;
    if (of.back_in == 0.0 || !(high > low)) return;
    std::vector<Point> contour{{of.back_in, low}, {of.back_in, high}, {full, high}};
    if (of.mount.notch) {
        const double shoulder = std::clamp(-of.mount.notch->below_top_in, low, high);
        contour.insert(contour.end(), {{full, shoulder}, {of.post_face_in, shoulder}, {of.post_face_in, low}});
    } else {
        contour.push_back({full, low});
    }
    const bool wood = std::holds_alternative<model::WoodPost>(sheet.subject.detail.post);
    scene.items.emplace_back(
        area(contour, Pen::outline, wood ? Fill::wood_side : Fill::plate, {model::PartKind::post}));
}

}  // namespace

Box overlap_box(const model::BaseDetail& detail) {
    const Shape of = shape(detail);
    const double half = std::abs(of.back_in);
    return {{-half, of.post_low_in}, {half, 0.0}};
}

void add_guard(Scene& scene, const ElevationSheet& sheet) {
    const Shape of = shape(sheet.subject.detail);
    add_levels(scene, sheet);
    add_between(scene, of);
    add_post(scene, sheet, of);
    add_axes(scene, sheet, of);
}

}  // namespace toehold::drawing::side
