#include "paper/shop/weld_symbol.h"

#include "drawing/annotation/labels.h"
#include "drawing/render/lettering.h"
#include "drawing/scene/shapes.h"
#include "paper/shop/leader.h"

namespace toehold::paper::shop {
namespace {

using drawing::moved_mm;
using drawing::Pen;
using drawing::Place;

constexpr double bend_mm = 8.0, before_size_mm = 4.0, size_gap_mm = 1.8, sign_mm = 4.0, after_mm = 4.0;
constexpr double circle_mm = 1.6, tail_mm = 3.0;

double width_mm(const std::string& words) {
    return words.empty() ? 0.0 : drawing::text_width_mm(words, {drawing::TextSize::small, false, false});
}

double line_mm(const WeldSign& sign) { return before_size_mm + width_mm(sign.size) + size_gap_mm + sign_mm + after_mm; }

void add_text(drawing::Scene& scene, const Place& at, const std::string& words, drawing::Upright upright) {
    if (words.empty()) return;
    drawing::Text text;
    text.at = at;
    text.words = words;
    text.size = drawing::TextSize::small;
    text.upright = upright;
    text.part = {model::PartKind::weld};
    scene.items.emplace_back(std::move(text));
}

/// `down`: -1 below the reference line, 1 above it.
void add_one_side(drawing::Scene& scene, const Place& bend, const WeldSign& sign, double down) {
    add_text(scene, moved_mm(bend, before_size_mm, 0.6 * down), sign.size,
             down < 0.0 ? drawing::Upright::top : drawing::Upright::bottom);
    const Place corner = moved_mm(bend, before_size_mm + width_mm(sign.size) + size_gap_mm, 0.0);
    const Place foot = moved_mm(corner, 0.0, down * sign_mm);
    if (sign.groove) {
        scene.items.emplace_back(drawing::line(corner, foot, Pen::holds, {model::PartKind::weld}));
        scene.items.emplace_back(
            drawing::line(corner, moved_mm(corner, sign_mm, down * sign_mm), Pen::holds, {model::PartKind::weld}));
        return;
    }
    scene.items.emplace_back(drawing::Path{{{corner, foot, moved_mm(corner, sign_mm, 0.0)}},
                                           true,
                                           Pen::holds,
                                           drawing::Fill::none,
                                           {model::PartKind::weld}});
}

void add_tail(drawing::Scene& scene, const Place& end, const std::string& words) {
    if (words.empty()) return;
    for (const double up : {-1.0, 1.0})
        scene.items.emplace_back(
            drawing::line(end, moved_mm(end, tail_mm, up * tail_mm), Pen::holds, {model::PartKind::weld}));
    add_text(scene, moved_mm(end, tail_mm + 0.6, 0.0), words, drawing::Upright::middle);
}

}  // namespace

WeldSign weld_sign(const model::Weld& weld, units::System system, const std::string& sides) {
    WeldSign sign;
    sign.groove = weld.kind != model::WeldKind::fillet;
    if (weld.kind == model::WeldKind::fillet) sign.size = drawing::length_figure(weld.leg_in, system);
    if (weld.kind == model::WeldKind::partial_penetration)
        sign.size = "(" + drawing::length_figure(weld.throat_in, system) + ")";
    sign.all_around = sides.empty();
    sign.both_faces = weld.faces == model::WeldFaces::both;
    sign.tail = weld.kind == model::WeldKind::complete_penetration ? "CJP" : "";
    if (!sides.empty()) sign.tail += (sign.tail.empty() ? "" : ", ") + sides;
    return sign;
}

double weld_sign_reach_mm(const WeldSign& sign) {
    const double tail = sign.tail.empty() ? 0.0 : tail_mm + 0.6 + width_mm(sign.tail);
    return bend_mm + line_mm(sign) + tail;
}

void add_weld_sign(drawing::Scene& scene, const Place& tip, const WeldSign& sign) {
    const Place bend = moved_mm(tip, bend_mm, weld_sign_height_mm);
    add_leader(scene, bend, tip, 1.0);
    const Place end = moved_mm(bend, line_mm(sign), 0.0);
    scene.items.emplace_back(drawing::line(bend, end, Pen::holds, {model::PartKind::weld}));
    if (sign.all_around)
        scene.items.emplace_back(
            drawing::Circle{bend, 0.0, circle_mm, Pen::holds, drawing::Fill::none, {model::PartKind::weld}});
    add_one_side(scene, bend, sign, -1.0);
    if (sign.both_faces) add_one_side(scene, bend, sign, 1.0);
    add_tail(scene, end, sign.tail);
}

}  // namespace toehold::paper::shop
