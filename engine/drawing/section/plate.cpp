#include "drawing/annotation/symbols.h"
#include "drawing/plan/sheet.h"
#include "drawing/scene/shapes.h"
#include "drawing/section/sheet.h"
#include "model/base_detail.h"

#include <algorithm>
#include <cmath>

namespace toehold::drawing {
namespace {

struct FootCut {
    double half_in = 0.0;  ///< of the post, along the plane
    double wall_in = 0.0;
    bool cut = false;       ///< the plane goes through the post
    bool in_front = false;  ///< between the plane and the reader: drawn thin, as what the cut took away
};

Pen edge_pen(const FootCut& foot) {
    if (foot.cut) return Pen::cut;
    return foot.in_front ? Pen::thin : Pen::outline;
}

/// What a cut shows of it, or a view; nothing where the cut has taken it away.
Fill face_fill(const FootCut& foot, Fill cut, Fill view) {
    if (foot.cut) return cut;
    return foot.in_front ? Fill::none : view;
}

FootCut foot_cut(const SectionSheet& sheet) {
    const model::Post& post = sheet.subject.detail.post;
    const PostFoot foot = post_foot(post);
    const bool along_y = sheet.plane.along == model::PlanAxis::y;
    const double half_aside = 0.5 * (along_y ? foot.width_in : foot.depth_in);
    FootCut result{0.5 * (along_y ? foot.depth_in : foot.width_in), 0.0, std::abs(sheet.plane.at_in) < half_aside};
    result.in_front = !result.cut && (along_y ? sheet.plane.at_in < 0.0 : sheet.plane.at_in > 0.0);
    if (const auto* const tube = std::get_if<model::RectangularTube>(&post)) result.wall_in = tube->wall_in;
    if (const auto* const tube = std::get_if<model::RoundTube>(&post)) result.wall_in = tube->wall_in;
    if (const auto* const wood = std::get_if<model::WoodPost>(&post)) result.wall_in = wood->shoe.wall_in;
    return result;
}

void add_wood_post(Scene& scene, const SectionSheet& sheet, const model::WoodPost& wood, const FootCut& foot) {
    const double low = on_deck(sheet.subject.detail).plate.thickness_in, high = sheet.shown.high.y;
    const double half = 0.5 * (sheet.plane.along == model::PlanAxis::y ? wood.depth_in : wood.width_in);
    add_break_line(scene, {-half, high}, {half, high}, {model::PartKind::post});
    scene.items.emplace_back(rectangle({{-half, low}, {half, high}}, edge_pen(foot),
                                       face_fill(foot, Fill::wood_cut, Fill::wood_side), {model::PartKind::post}));
    const double shoe_top = std::clamp(wood.shoe.height_in, low, std::max(low, high));
    const double wall = std::clamp(foot.wall_in, 0.0, std::max(0.0, foot.half_in));
    if (!foot.cut) {
        scene.items.emplace_back(rectangle({{-foot.half_in, low}, {foot.half_in, shoe_top}}, edge_pen(foot),
                                           face_fill(foot, Fill::metal_cut, Fill::plate), {model::PartKind::post}));
        return;
    }
    for (const double side : {-1.0, 1.0}) {
        const double outer = side * foot.half_in, inner = side * (foot.half_in - wall);
        scene.items.emplace_back(rectangle({{std::min(outer, inner), low}, {std::max(outer, inner), shoe_top}},
                                           Pen::cut, Fill::metal_cut, {model::PartKind::post}));
    }
}

void add_tube(Scene& scene, const SectionSheet& sheet, const FootCut& foot) {
    const double low = on_deck(sheet.subject.detail).plate.thickness_in, high = sheet.shown.high.y;
    const Box whole{{-foot.half_in, low}, {foot.half_in, high}};
    scene.items.emplace_back(
        rectangle(whole, Pen::none, face_fill(foot, Fill::paper, Fill::plate), {model::PartKind::post}));
    const double inner = foot.half_in - std::clamp(foot.wall_in, 0.0, std::max(0.0, foot.half_in));
    if (foot.cut) {
        scene.items.emplace_back(
            rectangle({{-foot.half_in, low}, {-inner, high}}, Pen::none, Fill::metal_cut, {model::PartKind::post}));
        scene.items.emplace_back(
            rectangle({{inner, low}, {foot.half_in, high}}, Pen::none, Fill::metal_cut, {model::PartKind::post}));
    }
    const Pen pen = edge_pen(foot);
    for (const double x : {-foot.half_in, -inner, inner, foot.half_in}) {
        const bool inside = std::abs(x) < foot.half_in;
        scene.items.emplace_back(line(Point{x, low}, {x, high},
                                      inside && !foot.cut ? (foot.in_front ? Pen::none : Pen::hidden) : pen,
                                      {model::PartKind::post}));
    }
    add_break_line(scene, {-foot.half_in, high}, {foot.half_in, high}, {model::PartKind::post});
}

}  // namespace

double post_stub_in(const SectionSheet& sheet) {
    constexpr double least_in = 2.0, share_of_plate = 0.4;
    double low = 0.0, high = 0.0;
    for (const Interval& piece : sheet.plate) {
        low = std::min(low, piece.low_in);
        high = std::max(high, piece.high_in);
    }
    return std::max(least_in, share_of_plate * (high - low));
}

void add_post_foot(Scene& scene, const SectionSheet& sheet) {
    const FootCut foot = foot_cut(sheet);
    if (!(foot.half_in > 0.0)) return;
    if (const auto* const wood = std::get_if<model::WoodPost>(&sheet.subject.detail.post)) {
        add_wood_post(scene, sheet, *wood, foot);
    } else {
        add_tube(scene, sheet, foot);
    }
    const auto& weld = on_deck(sheet.subject.detail).weld;
    if (!weld || !(weld->leg_in > 0.0)) return;
    const double base = on_deck(sheet.subject.detail).plate.thickness_in, leg = weld->leg_in;
    for (const double side : {-1.0, 1.0}) {
        const double face = side * foot.half_in;
        scene.items.emplace_back(area({{face, base}, {face + side * leg, base}, {face, base + leg}}, edge_pen(foot),
                                      face_fill(foot, Fill::metal_cut, Fill::plate), {model::PartKind::weld}));
    }
}

void add_cut_plate(Scene& scene, const SectionSheet& sheet) {
    const double top = on_deck(sheet.subject.detail).plate.thickness_in;
    for (const Interval& piece : sheet.plate) {
        double low = piece.low_in;
        for (const CutHole& hole : sheet.holes) {
            if (hole.high_in <= low || hole.low_in >= piece.high_in) continue;
            if (hole.low_in > low)
                scene.items.emplace_back(
                    rectangle({{low, 0.0}, {hole.low_in, top}}, Pen::cut, Fill::metal_cut, {model::PartKind::plate}));
            low = std::max(low, hole.high_in);
        }
        if (low < piece.high_in)
            scene.items.emplace_back(
                rectangle({{low, 0.0}, {piece.high_in, top}}, Pen::cut, Fill::metal_cut, {model::PartKind::plate}));
    }
}

}  // namespace toehold::drawing
