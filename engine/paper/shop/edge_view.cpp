#include "drawing/annotation/labels.h"
#include "drawing/annotation/symbols.h"
#include "drawing/plan/sheet.h"
#include "drawing/scene/shapes.h"
#include "model/foot_sides.h"
#include "model/placement.h"
#include "model/segment.h"
#include "paper/cutting/plate_contours.h"
#include "paper/shop/views.h"
#include "paper/shop/weld_symbol.h"
#include "paper/weld_words.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace toehold::paper::shop {
namespace {

using drawing::Box;
using drawing::DimensionRow;
using drawing::Measure;
using drawing::Pen;
using drawing::Point;
using drawing::Scene;
using model::PlanAxis;

/// The plate's edge with what stands on it, seen along the plan: y of the scene is the height above the underside.
struct Edge {
    const ViewSubject& subject;
    PlanAxis along;
    double low_in = 0.0, high_in = 0.0;
    double thickness_in = 0.0;
    double post_in = 0.0;  ///< outside of what stands on the plate, along the view
    double top_in = 0.0;   ///< where the post is broken off
};

const model::BaseDetail& detail_of(const Edge& edge) { return edge.subject.resolved.detail; }

Edge edge_of(const ViewSubject& subject, PlanAxis along) {
    const model::BaseDetail& detail = subject.resolved.detail;
    const Box box = outline_box_in(on_deck(detail).plate.outline);
    const drawing::PostFoot foot = drawing::post_foot(detail.post);
    const bool x = along == PlanAxis::x;
    const double thickness = on_deck(detail).plate.thickness_in;
    return {subject,
            along,
            x ? box.low.x : box.low.y,
            x ? box.high.x : box.high.y,
            thickness,
            x ? foot.width_in : foot.depth_in,
            thickness + stub_mm / subject.drafting.mm_per_in};
}

/// The front is read from -y, the right side from +x: a corner is hidden where the plate is nearer to the reader.
bool hidden(const std::vector<model::Position>& corners, const model::Position& corner, PlanAxis along) {
    constexpr double far_in = 1e4, off_in = 1e-4;
    const model::Segment sight = along == PlanAxis::x
                                     ? model::Segment{{corner.x_in, corner.y_in - off_in}, {corner.x_in, -far_in}}
                                     : model::Segment{{corner.x_in + off_in, corner.y_in}, {far_in, corner.y_in}};
    const std::vector<model::Segment> sides = model::sides(corners);
    return std::any_of(sides.begin(), sides.end(),
                       [&](const model::Segment& side) { return model::distance_in(side, sight) <= 0.0; });
}

void add_corner_edges(Scene& scene, const Edge& edge) {
    constexpr std::size_t most_corners = 24;
    constexpr double same_in = 1e-3;
    const auto* const polygon = std::get_if<model::PolygonOutline>(&on_deck(detail_of(edge)).plate.outline);
    if (polygon == nullptr || polygon->corners.size() > most_corners) return;
    for (const model::Position& corner : polygon->corners) {
        const double at = model::coordinate_in(corner, edge.along);
        if (at < edge.low_in + same_in || at > edge.high_in - same_in) continue;
        const Pen pen = hidden(polygon->corners, corner, edge.along) ? Pen::hidden : Pen::outline;
        scene.items.emplace_back(drawing::line(Point{at, 0.0}, {at, edge.thickness_in}, pen, {model::PartKind::plate}));
    }
}

void add_hidden_holes(Scene& scene, const Edge& edge) {
    constexpr double beyond_mm = 2.0;
    std::vector<double> sides, axes;
    for (const model::Hole& hole : on_deck(detail_of(edge)).plate.holes) {
        const Extent interval = extent(hole, edge.along);
        sides.insert(sides.end(), {interval.low_in, interval.high_in});
        axes.push_back(model::coordinate_in(hole.center, edge.along));
    }
    for (const double at : drawing::distinct(std::move(sides)))
        scene.items.emplace_back(
            drawing::line(Point{at, 0.0}, {at, edge.thickness_in}, Pen::hidden, {model::PartKind::plate}));
    for (const double at : drawing::distinct(std::move(axes)))
        scene.items.emplace_back(drawing::line(drawing::standing({at, 0.0}, {0.0, -beyond_mm}),
                                               drawing::standing({at, edge.thickness_in}, {0.0, beyond_mm}),
                                               Pen::center, {model::PartKind::plate}));
}

void add_upright(Scene& scene, double at_in, const Edge& edge, double top_in, Pen pen) {
    scene.items.emplace_back(
        drawing::line(Point{at_in, edge.thickness_in}, {at_in, top_in}, pen, {model::PartKind::post}));
}

/// A piece of the foot along the view.
struct Piece {
    double middle_in = 0.0, half_in = 0.0;
    double wall_in = 0.0;  ///< 0: solid
};

std::vector<Piece> pieces_of(const Edge& edge) {
    std::vector<Piece> pieces;
    for (const model::FootPiece& piece : model::foot_pieces(detail_of(edge).post)) {
        const double size_in = edge.along == PlanAxis::x ? piece.print.width_in : piece.print.depth_in;
        if (size_in > 0.0)
            pieces.push_back({model::coordinate_in(piece.center, edge.along), 0.5 * size_in,
                              model::is_solid(piece.print) ? 0.0 : piece.print.wall_in});
    }
    return pieces;
}

/// The wood above its shoe, broken off.
void add_wood_stub(Scene& scene, const Edge& edge, const model::WoodPost& wood, double shoe_top) {
    const double half = 0.5 * (edge.along == PlanAxis::x ? wood.width_in : wood.depth_in);
    if (shoe_top >= edge.top_in || !(half > 0.0)) return;
    const Box above{{-half, shoe_top}, {half, edge.top_in}};
    scene.items.emplace_back(drawing::rectangle(above, Pen::none, drawing::Fill::wood_side, {model::PartKind::post}));
    for (const double side : {-half, half})
        scene.items.emplace_back(
            drawing::line(Point{side, shoe_top}, {side, edge.top_in}, Pen::outline, {model::PartKind::post}));
    drawing::add_break_line(scene, {-half, edge.top_in}, {half, edge.top_in}, {model::PartKind::post});
}

void add_piece(Scene& scene, const Edge& edge, const Piece& piece, double metal_top) {
    const double left = piece.middle_in - piece.half_in, right = piece.middle_in + piece.half_in;
    const Box metal{{left, edge.thickness_in}, {right, metal_top}};
    scene.items.emplace_back(drawing::rectangle(metal, Pen::none, drawing::Fill::plate, {model::PartKind::post}));
    for (const double side : {left, right}) add_upright(scene, side, edge, metal_top, Pen::outline);
    if (piece.wall_in > 0.0 && piece.wall_in < piece.half_in)
        for (const double side : {left + piece.wall_in, right - piece.wall_in})
            add_upright(scene, side, edge, metal_top, Pen::hidden);
    if (metal_top < edge.top_in) {
        scene.items.emplace_back(
            drawing::line(Point{left, metal_top}, {right, metal_top}, Pen::outline, {model::PartKind::post}));
    } else {
        drawing::add_break_line(scene, {left, edge.top_in}, {right, edge.top_in}, {model::PartKind::post});
    }
}

/// What is welded to the plate: the post broken off above, its stub, or the shoe with the wood in it.
void add_post_stub(Scene& scene, const Edge& edge) {
    const model::Post& post = detail_of(edge).post;
    double metal_top = edge.top_in;
    const auto reaching = [&edge](double height_in) { return std::clamp(height_in, edge.thickness_in, edge.top_in); };
    if (const model::Stub* const stub = model::stub_of(post)) metal_top = reaching(stub->height_in);
    if (const auto* const wood = std::get_if<model::WoodPost>(&post)) {
        metal_top = reaching(wood->shoe.height_in);
        add_wood_stub(scene, edge, *wood, metal_top);
    }
    for (const Piece& piece : pieces_of(edge)) add_piece(scene, edge, piece, metal_top);
}

/// A fillet in the corner of post and plate; `up`: 1 above the plate, -1 below it.
void add_fillet(Scene& scene, double face_in, double side, double plate_in, double up, double leg_in) {
    scene.items.emplace_back(
        drawing::area({{face_in, plate_in}, {face_in + side * leg_in, plate_in}, {face_in, plate_in + up * leg_in}},
                      Pen::outline, drawing::Fill::capacity, {model::PartKind::weld}));
}

void add_weld_faces(Scene& scene, const Edge& edge) {
    const std::optional<model::Weld>& weld = on_deck(detail_of(edge)).weld;
    if (!weld || !(weld->leg_in > 0.0)) return;
    for (const Piece& piece : pieces_of(edge)) {
        for (const double side : {-1.0, 1.0}) {
            if (!model::has_side(weld->sides, edge.along, side)) continue;
            const double face = piece.middle_in + side * piece.half_in;
            add_fillet(scene, face, side, edge.thickness_in, 1.0, weld->leg_in);
            if (weld->faces == model::WeldFaces::both) add_fillet(scene, face, side, 0.0, -1.0, weld->leg_in);
        }
    }
}

/// Gussets seen from the side; those in the middle of the faces towards and away from the reader are not.
void add_gussets(Scene& scene, const Edge& edge) {
    const std::optional<model::Weld>& weld = on_deck(detail_of(edge)).weld;
    if (!weld || !weld->gussets) return;
    const model::Gussets& gussets = *weld->gussets;
    for (const double side : {-1.0, 1.0}) {
        if (!model::has_side(gussets.sides, edge.along, side)) continue;
        const double face = 0.5 * side * edge.post_in;
        scene.items.emplace_back(drawing::area({{face, edge.thickness_in},
                                                {face + side * gussets.length_in, edge.thickness_in},
                                                {face, edge.thickness_in + gussets.height_in}},
                                               Pen::outline, drawing::Fill::plate, {model::PartKind::weld}));
    }
}

bool has_weld(const Edge& edge) {
    const std::optional<model::Weld>& weld = on_deck(detail_of(edge)).weld;
    return weld && (weld->leg_in > 0.0 || weld->kind != model::WeldKind::fillet);
}

WeldSign sign_of(const Edge& edge) {
    const model::Weld& weld = *on_deck(detail_of(edge)).weld;
    const format::Locale& locale = edge.subject.drafting.locale;
    return weld_sign(weld, locale.system, format::text(welded_sides(weld.sides), locale));
}

void add_sign(Scene& scene, const Edge& edge) {
    if (!has_weld(edge)) return;
    const double half_leg = 0.5 * on_deck(detail_of(edge)).weld->leg_in;
    add_weld_sign(scene, drawing::standing({0.5 * edge.post_in + half_leg, edge.thickness_in + half_leg}),
                  sign_of(edge));
}

void add_axis(Scene& scene, const Edge& edge) {
    constexpr double below_mm = 3.0, above_mm = 2.5;
    scene.items.emplace_back(drawing::line(drawing::standing({0.0, 0.0}, {0.0, -below_mm}),
                                           drawing::standing({0.0, edge.top_in}, {0.0, above_mm}), Pen::center));
}

/// Where the post stands between the plate's edges.
void add_place_of_post(Scene& scene, const Edge& edge) {
    constexpr double row_mm = 7.5;
    const DimensionRow row{Measure::across, 0.0, -row_mm, Pen::dimension, {model::PartKind::plate}};
    if (!(edge.low_in < 0.0 && edge.high_in > 0.0)) return;
    (void)add_fitting_chain(scene, row, {{edge.low_in, 0.0}, {0.0, 0.0}, {edge.high_in, 0.0}}, edge.subject.drafting);
}

void add_post_width(Scene& scene, const Edge& edge) {
    constexpr double row_mm = 5.0;
    if (!(edge.post_in > 0.0)) return;
    const DimensionRow row{Measure::across, edge.top_in, row_mm, Pen::dimension, {model::PartKind::post}};
    const bool round = model::footprint(detail_of(edge).post).round;
    const double half = 0.5 * edge.post_in;
    add_measure(scene, row, {-half, edge.top_in}, {half, edge.top_in},
                (round ? "\u2300 " : "") + drawing::length_figure(edge.post_in, edge.subject.drafting.locale.system),
                edge.subject.drafting);
}

void add_thickness(Scene& scene, const Edge& edge) {
    constexpr double row_mm = 7.0;
    const DimensionRow row{Measure::upright, edge.low_in, -row_mm, Pen::dimension, {model::PartKind::plate}};
    add_measure(scene, row, {0.0, edge.low_in}, {edge.thickness_in, edge.low_in},
                drawing::length_figure(edge.thickness_in, edge.subject.drafting.locale.system), edge.subject.drafting);
}

}  // namespace

Extent extent(const model::Hole& hole, PlanAxis along) {
    const double at = model::coordinate_in(hole.center, along);
    const auto* const slot = std::get_if<model::Slot>(&hole.shape);
    if (slot == nullptr) {
        const double radius = 0.5 * std::get<model::RoundHole>(hole.shape).diameter_in;
        return {at - radius, at + radius};
    }
    const double angle = slot->angle_deg * std::numbers::pi / 180.0;
    const double share = std::abs(along == PlanAxis::x ? std::cos(angle) : std::sin(angle));
    const double half = 0.5 * (slot->length_in - slot->width_in) * share + 0.5 * slot->width_in;
    return {at - half, at + half};
}

Scene edge_view(const ViewSubject& subject, PlanAxis along) {
    const Edge edge = edge_of(subject, along);
    Scene scene;
    scene.name = along == PlanAxis::x ? "Front" : "Right side";
    const Box plate{{edge.low_in, 0.0}, {edge.high_in, edge.thickness_in}};
    scene.bounds = {{edge.low_in, 0.0}, {edge.high_in, edge.top_in}};
    add_post_stub(scene, edge);
    scene.items.emplace_back(drawing::rectangle(plate, Pen::outline, drawing::Fill::plate, {model::PartKind::plate}));
    add_corner_edges(scene, edge);
    add_hidden_holes(scene, edge);
    add_gussets(scene, edge);
    add_weld_faces(scene, edge);
    add_axis(scene, edge);
    add_place_of_post(scene, edge);
    add_post_width(scene, edge);
    if (along == PlanAxis::x) {
        add_thickness(scene, edge);
        add_sign(scene, edge);
    }
    return drawing::finished(std::move(scene));
}

double weld_symbol_reach_mm(const ViewSubject& subject) {
    const Edge edge = edge_of(subject, PlanAxis::x);
    if (!has_weld(edge)) return 0.0;
    return (0.5 * edge.post_in + 0.5 * on_deck(detail_of(edge)).weld->leg_in) * subject.drafting.mm_per_in +
           weld_sign_reach_mm(sign_of(edge));
}

}  // namespace toehold::paper::shop
