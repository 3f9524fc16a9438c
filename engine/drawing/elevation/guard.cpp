#include "catalog/resolve.h"
#include "drawing/elevation/sheet.h"
#include "drawing/scene/shapes.h"
#include "drawing/section/sheet.h"

#include <algorithm>
#include <cmath>

namespace toehold::drawing {
namespace {

void add_level_name(Scene& scene, const Place& at, const std::string& words, Across across, const model::PartId& part) {
    Text text;
    text.at = at;
    text.words = words;
    text.size = TextSize::fine;
    text.across = across;
    text.pen = Pen::dimension;
    text.on_paper = true;
    text.part = part;
    scene.items.emplace_back(std::move(text));
}

void add_post(Scene& scene, const ElevationSheet& sheet) {
    const double half = 0.5 * sheet.post_in, foot = sheet.plate.high.y;
    if (!(half > 0.0) || !(sheet.top_in > foot)) return;
    const model::Post& post = sheet.subject.detail.post;
    const auto* const wood = std::get_if<model::WoodPost>(&post);
    scene.items.emplace_back(rectangle({{-half, foot}, {half, sheet.top_in}}, Pen::outline,
                                       wood != nullptr ? Fill::wood_side : Fill::plate, {model::PartKind::post}));
    if (wood == nullptr) return;
    const double shoe_half = 0.5 * std::abs(wood->shoe.depth_in);
    const double shoe_top = std::clamp(wood->shoe.height_in, foot, sheet.top_in);
    scene.items.emplace_back(
        rectangle({{-shoe_half, foot}, {shoe_half, shoe_top}}, Pen::outline, Fill::plate, {model::PartKind::post}));
}

/// Hidden behind joists and boards: the axes of the anchors to their tips.
void add_anchor_axes(Scene& scene, const ElevationSheet& sheet) {
    if (sheet.subject.resolved == nullptr) return;
    const SectionPlane plane;
    const SectionSheet measures{sheet.subject, plane, {}, {}, {}, sheet.layers_in, {}};
    for (const catalog::Anchor& anchor : sheet.subject.resolved->anchors) {
        const AnchorStations at = stations(measures, anchor);
        scene.items.emplace_back(line(Point{anchor.at.y_in, at.tip_in}, {anchor.at.y_in, at.head_top_in}, Pen::hidden,
                                      model::anchor_part(anchor.id)));
    }
}

}  // namespace

void add_levels(Scene& scene, const ElevationSheet& sheet) {
    constexpr double reach = 0.16;
    const double far = std::max(reach * width(sheet.shown), sheet.post_in);
    scene.items.emplace_back(
        line(standing({-far, sheet.top_in}), standing({far, sheet.top_in}), Pen::outline, {model::PartKind::guard}));
    const double surface = below_surface_in(sheet.subject.detail);
    scene.items.emplace_back(
        line(Point{sheet.shown.low.x, surface}, {sheet.shown.high.x, surface}, Pen::thin, {model::PartKind::guard}));
    add_level_name(scene, standing({sheet.shown.low.x, surface}, {0.0, 0.8}),
                   format::text(format::phrase("walking surface"), sheet.subject.locale), Across::left,
                   {model::PartKind::guard});
}

void add_guard(Scene& scene, const ElevationSheet& sheet) {
    add_anchor_axes(scene, sheet);
    add_levels(scene, sheet);
    add_post(scene, sheet);
    if (has_area(sheet.plate))
        scene.items.emplace_back(rectangle(sheet.plate, Pen::outline, Fill::plate, {model::PartKind::plate}));
}

}  // namespace toehold::drawing
