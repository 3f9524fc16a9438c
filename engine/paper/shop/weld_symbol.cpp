#include "paper/shop/weld_symbol.h"

#include "drawing/render/lettering.h"
#include "drawing/scene/shapes.h"
#include "paper/shop/leader.h"

namespace toehold::paper::shop {
namespace {

using drawing::moved_mm;
using drawing::Pen;
using drawing::Place;

constexpr double bend_mm = 8.0, before_size_mm = 4.0, size_gap_mm = 1.8, triangle_mm = 4.0, after_mm = 4.0;
constexpr double circle_mm = 1.6;

double size_width_mm(const std::string& size) {
    return drawing::text_width_mm(size, {drawing::TextSize::small, false, false});
}

}  // namespace

double fillet_sign_reach_mm(const std::string& size) {
    return bend_mm + before_size_mm + size_width_mm(size) + size_gap_mm + triangle_mm + after_mm;
}

void add_fillet_sign(drawing::Scene& scene, const Place& tip, const std::string& size) {
    const Place bend = moved_mm(tip, bend_mm, fillet_sign_height_mm);
    add_leader(scene, bend, tip, 1.0);
    scene.items.emplace_back(drawing::line(bend, moved_mm(bend, fillet_sign_reach_mm(size) - bend_mm, 0.0), Pen::holds,
                                           {model::PartKind::weld}));
    scene.items.emplace_back(
        drawing::Circle{bend, 0.0, circle_mm, Pen::holds, drawing::Fill::none, {model::PartKind::weld}});
    drawing::Text text;
    text.at = moved_mm(bend, before_size_mm, -0.6);
    text.words = size;
    text.size = drawing::TextSize::small;
    text.upright = drawing::Upright::top;
    text.part = {model::PartKind::weld};
    scene.items.emplace_back(std::move(text));
    const Place corner = moved_mm(bend, before_size_mm + size_width_mm(size) + size_gap_mm, 0.0);
    scene.items.emplace_back(
        drawing::Path{{{corner, moved_mm(corner, 0.0, -triangle_mm), moved_mm(corner, triangle_mm, 0.0)}},
                      true,
                      Pen::holds,
                      drawing::Fill::none,
                      {model::PartKind::weld}});
}

}  // namespace toehold::paper::shop
