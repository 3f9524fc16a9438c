// What the plate hides besides framing: packing through the boards and the plate below the bolts.
#include "drawing/plan/sheet.h"
#include "drawing/scene/shapes.h"
#include "model/base_detail.h"

#include <cmath>
#include <numbers>

namespace toehold::drawing {
namespace {

Path hidden(const std::vector<Point>& contour, const model::PartId& part) {
    return area(contour, Pen::hidden, Fill::none, part);
}

std::vector<Point> rectangle_about(const model::Position& center, double width_in, double depth_in) {
    const double x = 0.5 * width_in, y = 0.5 * depth_in;
    return {{center.x_in - x, center.y_in - y},
            {center.x_in + x, center.y_in - y},
            {center.x_in + x, center.y_in + y},
            {center.x_in - x, center.y_in + y}};
}

std::vector<Point> circle_about(const model::Position& center, double diameter_in) {
    constexpr int chords = 36;
    std::vector<Point> contour;
    for (int index = 0; index < chords; ++index) {
        const double angle = 2.0 * std::numbers::pi * index / chords;
        contour.push_back(
            {center.x_in + 0.5 * diameter_in * std::cos(angle), center.y_in + 0.5 * diameter_in * std::sin(angle)});
    }
    return contour;
}

}  // namespace

void add_spacers(Scene& scene, const PlanSheet& sheet) {
    const model::BaseDetail& detail = sheet.subject.detail;
    if (const auto& packing = on_deck(detail).layers.packing) {
        for (const model::Position& place : model::packing_places(detail)) {
            scene.items.emplace_back(hidden(packing->shape == model::PackingShape::round
                                                ? circle_about(place, packing->width_in)
                                                : rectangle_about(place, packing->width_in, packing->depth_in),
                                            {model::PartKind::packing}));
        }
    }
    const auto& groups = on_deck(detail).anchors;
    for (std::size_t index = 0; index < groups.size(); ++index) {
        const model::LowerPlate* const plate = model::lower_plate(groups[index]);
        if (plate == nullptr) continue;
        scene.items.emplace_back(hidden(rectangle_about(plate->center, plate->width_in, plate->depth_in),
                                        model::lower_plate_part(detail, index)));
    }
}

}  // namespace toehold::drawing
