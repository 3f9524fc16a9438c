// Packing through the boards where the plane cuts it, and the plate below the bolts.
#include "catalog/resolve.h"
#include "drawing/scene/shapes.h"
#include "drawing/section/sheet.h"
#include "model/placement.h"

#include <cmath>
#include <optional>

namespace toehold::drawing {
namespace {

/// Along the plane, of a rectangle in plan; absent where the plane does not meet it.
std::optional<Interval> cut_of(const SectionPlane& plane, const model::Position& center, double width_in,
                               double depth_in) {
    const bool along_y = plane.along == model::PlanAxis::y;
    const double half_in = 0.5 * (along_y ? depth_in : width_in), aside = 0.5 * (along_y ? width_in : depth_in);
    if (std::abs(plane.at_in - aside_in(plane, center)) > aside) return std::nullopt;
    const double at_in = along_in(plane, center);
    return Interval{at_in - half_in, at_in + half_in};
}

Fill packing_fill(const SectionSheet& sheet) {
    const catalog::Resolved* const resolved = sheet.subject.resolved;
    const bool wood = resolved != nullptr && on_deck(*resolved).packing &&
                      on_deck(*resolved).packing->kind == catalog::DeckingKind::wood;
    return wood ? Fill::wood_cut : Fill::metal_cut;
}

/// Face, and what stands off it: the leg of an angle is drawn on the left.
void add_lower_plate(Scene& scene, const SectionSheet& sheet, const model::LowerPlate& plate, double top_in,
                     const model::PartId& part) {
    const auto face = cut_of(sheet.plane, plate.center, plate.width_in, plate.depth_in);
    if (!face) return;
    const double thickness = plate.thickness_in;
    const auto add = [&](double low, double high, double bottom) {
        scene.items.emplace_back(rectangle({{low, bottom}, {high, top_in}}, Pen::cut, Fill::metal_cut, part));
    };
    add(face->low_in, face->high_in, top_in - thickness);
    if (plate.shape == model::LowerShape::plate) return;
    const bool end_on = model::runs_along(plate) != sheet.plane.along;
    if (!end_on) {
        scene.items.emplace_back(rectangle({{face->low_in, top_in - plate.leg_in}, {face->high_in, top_in - thickness}},
                                           Pen::outline, Fill::plate, part));
        return;
    }
    add(face->low_in, face->low_in + thickness, top_in - plate.leg_in);
    if (plate.shape == model::LowerShape::channel) add(face->high_in - thickness, face->high_in, top_in - plate.leg_in);
}

}  // namespace

void add_packing(Scene& scene, const SectionSheet& sheet) {
    const model::Layers& layers = on_deck(sheet.subject.detail).layers;
    if (!layers.packing || !layers.decking) return;
    const double depth_in =
        layers.packing->shape == model::PackingShape::round ? layers.packing->width_in : layers.packing->depth_in;
    for (const model::Position& place : model::packing_places(sheet.subject.detail)) {
        const auto piece = cut_of(sheet.plane, place, layers.packing->width_in, depth_in);
        if (!piece) continue;
        scene.items.emplace_back(rectangle({{piece->low_in, -layers.decking->thickness_in}, {piece->high_in, 0.0}},
                                           Pen::cut, packing_fill(sheet), {model::PartKind::packing}));
    }
}

void add_lower_plates(Scene& scene, const SectionSheet& sheet) {
    const model::BaseDetail& detail = sheet.subject.detail;
    const auto& groups = on_deck(detail).anchors;
    for (std::size_t group = 0; group < groups.size(); ++group) {
        const model::LowerPlate* const plate = model::lower_plate(groups[group]);
        if (plate == nullptr || sheet.subject.resolved == nullptr) continue;
        for (const catalog::Anchor& anchor : sheet.subject.resolved->anchors) {
            if (anchor.group != group || !anchor.seat) continue;
            add_lower_plate(scene, sheet, *plate, stations(sheet, anchor).seat_in,
                            model::lower_plate_part(detail, group));
            break;
        }
    }
}

}  // namespace toehold::drawing
