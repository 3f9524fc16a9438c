#include "drawing/plan/sheet.h"
#include "drawing/scene/shapes.h"
#include "model/base_detail.h"
#include "model/foot_sides.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace toehold::drawing {
namespace {

std::vector<Point> foot_contour(const PostFoot& foot, double outward_in) {
    const double half_width = 0.5 * foot.width_in + outward_in, half_depth = 0.5 * foot.depth_in + outward_in;
    if (!foot.round) {
        return {
            {-half_width, -half_depth}, {half_width, -half_depth}, {half_width, half_depth}, {-half_width, half_depth}};
    }
    constexpr int chords = 96;
    std::vector<Point> contour;
    for (int index = 0; index < chords; ++index) {
        const double angle = 2.0 * std::numbers::pi * index / chords;
        contour.push_back({half_width * std::cos(angle), half_depth * std::sin(angle)});
    }
    return contour;
}

PostFoot foot_of(const model::Footprint& print) { return {print.width_in, print.depth_in, print.round}; }

std::vector<Point> moved(std::vector<Point> contour, model::Position by) {
    for (Point& point : contour) point = {point.x + by.x_in, point.y + by.y_in};
    return contour;
}

std::vector<Place> as_places(const std::vector<Point>& points) {
    std::vector<Place> places;
    places.reserve(points.size());
    for (const Point& point : points) places.push_back(standing(point));
    return places;
}

Path ring_of(const model::Footprint& print, model::Position center) {
    const PostFoot foot = foot_of(print);
    Path ring{
        {as_places(moved(foot_contour(foot, 0.0), center))}, true, Pen::cut, Fill::metal_cut, {model::PartKind::post}};
    if (print.wall_in > 0.0 && !model::is_solid(print))
        ring.contours.push_back(as_places(moved(foot_contour(foot, -print.wall_in), center)));
    return ring;
}

void add_axis_label(Scene& scene, const Place& at, const std::string& words, double angle_deg) {
    Text text;
    text.at = at;
    text.words = words;
    text.size = TextSize::fine;
    text.across = Across::middle;
    text.upright = angle_deg == 0.0 ? Upright::bottom : Upright::top;
    text.angle_deg = angle_deg;
    text.pen = Pen::dimension;
    scene.items.emplace_back(std::move(text));
}

/// A strip along each welded side.
void add_weld_sides(Scene& scene, const model::FootPiece& piece, const model::Weld& weld) {
    const double x = 0.5 * piece.print.width_in, y = 0.5 * piece.print.depth_in, leg = weld.leg_in;
    const auto add = [&](bool wanted, Point low, Point high) {
        const Point at{piece.center.x_in, piece.center.y_in};
        if (wanted)
            scene.items.emplace_back(rectangle({{at.x + low.x, at.y + low.y}, {at.x + high.x, at.y + high.y}},
                                               Pen::thin, Fill::plate, {model::PartKind::weld}));
    };
    add(weld.sides.outward, {-x, y}, {x, y + leg});
    add(weld.sides.inward, {-x, -y - leg}, {x, -y});
    add(weld.sides.right, {x, -y}, {x + leg, y});
    add(weld.sides.left, {-x - leg, -y}, {-x, y});
}

}  // namespace

PostFoot post_foot(const model::Post& post) { return foot_of(model::footprint(post)); }

void add_weld(Scene& scene, const PlanSheet& sheet) {
    const auto& weld = on_deck(sheet.subject.detail).weld;
    if (!weld || !(weld->leg_in > 0.0)) return;
    const bool all_round = model::count(weld->sides) == 4;
    for (const model::FootPiece& piece : model::foot_pieces(sheet.subject.detail.post)) {
        if (!all_round) add_weld_sides(scene, piece, *weld);
        if (all_round)
            scene.items.emplace_back(area(moved(foot_contour(foot_of(piece.print), weld->leg_in), piece.center),
                                          Pen::thin, Fill::plate, {model::PartKind::weld}));
    }
}

void add_gussets(Scene& scene, const PlanSheet& sheet) {
    const auto& weld = on_deck(sheet.subject.detail).weld;
    if (!weld || !weld->gussets) return;
    const model::Gussets& gussets = *weld->gussets;
    const PostFoot foot = post_foot(sheet.subject.detail.post);
    const double half = 0.5 * gussets.thickness_in;
    for (const double side : {-1.0, 1.0}) {
        const auto add = [&](bool wanted, double face, bool along_x) {
            const double end = face + gussets.length_in;
            const Box box =
                along_x ? Box{{std::min(side * face, side * end), -half}, {std::max(side * face, side * end), half}}
                        : Box{{-half, std::min(side * face, side * end)}, {half, std::max(side * face, side * end)}};
            if (wanted) scene.items.emplace_back(rectangle(box, Pen::outline, Fill::plate, {model::PartKind::weld}));
        };
        add(model::has_side(gussets.sides, model::PlanAxis::x, side), 0.5 * foot.width_in, true);
        add(model::has_side(gussets.sides, model::PlanAxis::y, side), 0.5 * foot.depth_in, false);
    }
}

void add_post(Scene& scene, const PlanSheet& sheet) {
    const model::Post& post = sheet.subject.detail.post;
    for (const model::FootPiece& piece : model::foot_pieces(post))
        scene.items.emplace_back(ring_of(piece.print, piece.center));
    // A post over a stub is cut above its foot.
    if (model::stub_of(post) != nullptr) scene.items.emplace_back(ring_of(model::shaft(post), {}));
    if (const auto* const wood = std::get_if<model::WoodPost>(&post)) {
        scene.items.emplace_back(area(foot_contour({wood->width_in, wood->depth_in}, 0.0), Pen::outline, Fill::wood_end,
                                      {model::PartKind::post}));
    }
}

void add_axes(Scene& scene, const PlanSheet& sheet) {
    constexpr double beyond_mm = 2.0;
    const Box& shown = sheet.shown;
    const Place right = standing({shown.high.x, 0.0}, {beyond_mm, 0.0});
    const Place top = standing({0.0, shown.high.y}, {0.0, beyond_mm});
    scene.items.emplace_back(line(standing({shown.low.x, 0.0}, {-beyond_mm, 0.0}), right, Pen::center));
    scene.items.emplace_back(line(standing({0.0, shown.low.y}, {0.0, -beyond_mm}), top, Pen::center));
    add_axis_label(scene, moved_mm(right, 1.0, 0.0),
                   format::text(format::phrase("x, along the rail"), sheet.subject.locale), 90.0);
    add_axis_label(scene, moved_mm(top, 0.0, 1.0), format::text(format::phrase("y, outward"), sheet.subject.locale),
                   0.0);
}

}  // namespace toehold::drawing
