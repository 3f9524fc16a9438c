#include "drawing/annotation/symbols.h"
#include "drawing/plan/sheet.h"
#include "drawing/scene/shapes.h"
#include "drawing/section/sheet.h"
#include "model/base_detail.h"
#include "model/foot_sides.h"

#include <algorithm>
#include <cmath>

namespace toehold::drawing {
namespace {

struct FootCut {
    double half_in = 0.0;  ///< of the post, along the plane
    double wall_in = 0.0;
    bool cut = false;        ///< the plane goes through the post
    bool in_front = false;   ///< between the plane and the reader: drawn thin, as what the cut took away
    double middle_in = 0.0;  ///< along the plane
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

FootCut cut_of(const SectionSheet& sheet, const model::Footprint& print, model::Position center) {
    const bool along_y = sheet.plane.along == model::PlanAxis::y;
    const double half_aside = 0.5 * (along_y ? print.width_in : print.depth_in);
    const double aside = sheet.plane.at_in - (along_y ? center.x_in : center.y_in);
    FootCut result{0.5 * (along_y ? print.depth_in : print.width_in), print.wall_in, std::abs(aside) < half_aside};
    if (model::is_solid(print)) result.wall_in = result.half_in;
    result.middle_in = along_y ? center.y_in : center.x_in;
    result.in_front = !result.cut && (along_y ? aside < 0.0 : aside > 0.0);
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

/// From one height to another; solid where its wall reaches its middle.
void add_piece(Scene& scene, const FootCut& foot, double low, double high) {
    const double middle = foot.middle_in;
    const Box whole{{middle - foot.half_in, low}, {middle + foot.half_in, high}};
    scene.items.emplace_back(
        rectangle(whole, Pen::none, face_fill(foot, Fill::paper, Fill::plate), {model::PartKind::post}));
    const double inner = foot.half_in - std::clamp(foot.wall_in, 0.0, std::max(0.0, foot.half_in));
    if (foot.cut) {
        scene.items.emplace_back(rectangle({{middle - foot.half_in, low}, {middle - inner, high}}, Pen::none,
                                           Fill::metal_cut, {model::PartKind::post}));
        scene.items.emplace_back(rectangle({{middle + inner, low}, {middle + foot.half_in, high}}, Pen::none,
                                           Fill::metal_cut, {model::PartKind::post}));
    }
    const Pen pen = edge_pen(foot);
    for (const double x : {-foot.half_in, -inner, inner, foot.half_in}) {
        const bool inside = std::abs(x) < foot.half_in;
        if (inside && !(inner > 0.0)) continue;
        scene.items.emplace_back(line(Point{middle + x, low}, {middle + x, high},
                                      inside && !foot.cut ? (foot.in_front ? Pen::none : Pen::hidden) : pen,
                                      {model::PartKind::post}));
    }
}

void add_broken_off(Scene& scene, const FootCut& foot, double high) {
    add_break_line(scene, {foot.middle_in - foot.half_in, high}, {foot.middle_in + foot.half_in, high},
                   {model::PartKind::post});
}

/// The stub as far as it reaches, then the post around it and above it.
void add_post_over_stub(Scene& scene, const SectionSheet& sheet, const model::Stub& stub, const FootCut& foot) {
    const model::BaseDetail& detail = sheet.subject.detail;
    const double low = on_deck(detail).plate.thickness_in, high = sheet.shown.high.y;
    const auto& weld = on_deck(detail).weld;
    const double post_low = std::min(high, low + (weld ? std::max(0.0, weld->leg_in) : 0.0));
    const FootCut post = cut_of(sheet, model::shaft(detail.post), {});
    add_piece(scene, post, post_low, high);
    const double top = std::clamp(stub.height_in, low, std::max(low, high));
    add_piece(scene, foot, low, top);
    if (top < high)
        scene.items.emplace_back(
            line(Point{-foot.half_in, top}, {foot.half_in, top}, edge_pen(foot), {model::PartKind::post}));
    add_broken_off(scene, post, high);
}

void add_metal_post(Scene& scene, const SectionSheet& sheet, const FootCut& foot) {
    const double low = on_deck(sheet.subject.detail).plate.thickness_in, high = sheet.shown.high.y;
    add_piece(scene, foot, low, high);
    add_broken_off(scene, foot, high);
}

void add_fillet(Scene& scene, const FootCut& foot, double side, double plate, double rise) {
    const double face = foot.middle_in + side * foot.half_in;
    scene.items.emplace_back(area({{face, plate}, {face + side * std::abs(rise), plate}, {face, plate + rise}},
                                  edge_pen(foot), face_fill(foot, Fill::metal_cut, Fill::plate),
                                  {model::PartKind::weld}));
}

void add_piece_weld(Scene& scene, const SectionSheet& sheet, const FootCut& foot, const model::Weld& weld) {
    for (const double side : {-1.0, 1.0}) {
        if (!model::has_side(weld.sides, sheet.plane.along, side)) continue;
        add_fillet(scene, foot, side, on_deck(sheet.subject.detail).plate.thickness_in, weld.leg_in);
        if (weld.faces == model::WeldFaces::both) add_fillet(scene, foot, side, 0.0, -weld.leg_in);
    }
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
    const model::BaseDetail& detail = sheet.subject.detail;
    const auto* const wood = std::get_if<model::WoodPost>(&detail.post);
    const model::Stub* const stub = model::stub_of(detail.post);
    const auto& weld = on_deck(detail).weld;
    for (const model::FootPiece& piece : model::foot_pieces(detail.post)) {
        const FootCut foot = cut_of(sheet, piece.print, piece.center);
        if (!(foot.half_in > 0.0)) continue;
        if (wood != nullptr) {
            add_wood_post(scene, sheet, *wood, foot);
        } else if (stub != nullptr) {
            add_post_over_stub(scene, sheet, *stub, foot);
        } else {
            add_metal_post(scene, sheet, foot);
        }
        if (weld && weld->leg_in > 0.0) add_piece_weld(scene, sheet, foot, *weld);
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
