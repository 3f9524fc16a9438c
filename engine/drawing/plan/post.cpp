#include "drawing/plan/sheet.h"
#include "drawing/scene/shapes.h"
#include "model/base_detail.h"

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
    Path ring{{as_places(moved(foot_contour(foot, 0.0), center))}, true, Pen::cut, Fill::metal_cut,
              {model::PartKind::post}};
    if (print.wall_in > 0.0 && !model::is_solid(print)) ring.contours.push_back(as_places(moved(foot_contour(foot, -print.wall_in), center)));
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

}  // namespace

PostFoot post_foot(const model::Post& post) {
    return foot_of(model::footprint(post));
}

void add_weld(Scene& scene, const PlanSheet& sheet) {
    const auto& weld = on_deck(sheet.subject.detail).weld;
    if (!weld || !(weld->leg_in > 0.0)) return;
    for (const model::FootPiece& piece : model::foot_pieces(sheet.subject.detail.post))
        scene.items.emplace_back(area(moved(foot_contour(foot_of(piece.print), weld->leg_in), piece.center), Pen::thin,
                                      Fill::plate, {model::PartKind::weld}));
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
