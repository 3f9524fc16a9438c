// Forces on the face view: each anchor's mark, where the face presses, and the push, broken off with the post.
#include "drawing/annotation/labels.h"
#include "drawing/annotation/overlay.h"
#include "drawing/annotation/symbols.h"
#include "drawing/plan/sheet.h"
#include "drawing/scene/shapes.h"
#include "drawing/side/face_sheet.h"
#include "format/figures.h"

#include <algorithm>
#include <cmath>

namespace toehold::drawing::side {
namespace {

constexpr double along_the_rail = 0.05;

/// Beside the post or bracket: to the side the place is on; of those on the axis by turns from the highest.
std::vector<double> sides(const FaceSheet& sheet) {
    constexpr double on_the_axis_in = 1e-3;
    std::vector<std::size_t> on_axis;
    std::vector<double> result(sheet.fixings.size(), 1.0);
    for (std::size_t index = 0; index < sheet.fixings.size(); ++index) {
        const double x = sheet.right * sheet.fixings[index].x_in;
        if (std::abs(x) < on_the_axis_in) {
            on_axis.push_back(index);
        } else {
            result[index] = x < 0.0 ? -1.0 : 1.0;
        }
    }
    std::stable_sort(on_axis.begin(), on_axis.end(), [&](std::size_t one, std::size_t other) {
        return sheet.fixings[one].z_in > sheet.fixings[other].z_in;
    });
    for (std::size_t turn = 0; turn < on_axis.size(); ++turn) result[on_axis[turn]] = turn % 2 == 0 ? 1.0 : -1.0;
    return result;
}

/// Beside what covers the place; where that ends at the edge of post or bracket, outside that edge and clear of a tie.
MarkPlace letter_place(const FaceSheet& sheet, const Fixing& fixing, double side) {
    constexpr double off_mm = 0.8, past_edge_mm = 2.6, room_in = 0.6;
    const Point at = sheet.at(fixing.x_in, fixing.z_in);
    const double reach = at.x + side * covered_radius_in(fixing), edge = side * seat_half_width_in(sheet.shape);
    if (side * (edge - reach) > room_in) return {standing({reach, at.y}, {side * off_mm, 0.0}), side};
    return {standing({side * std::max(side * reach, side * edge), at.y}, {side * past_edge_mm, 0.0}), side};
}

Text push_text(const Place& at, std::string words, const Overlay& overlay) {
    Text text;
    text.at = at;
    text.words = std::move(words);
    text.pen = overlay.stale ? Pen::dimension : Pen::demand;
    text.on_paper = true;
    text.part = {model::PartKind::push};
    return text;
}

/// Toward the reader a point in a ring, away from the reader a cross in it.
void add_push_sign(Scene& scene, const Place& at, bool toward_reader, const ArrowStyle& style) {
    constexpr double ring_mm = 2.6, point_mm = 0.7;
    scene.items.emplace_back(Circle{at, 0.0, ring_mm, style.pen, Fill::paper, style.part});
    if (toward_reader) {
        scene.items.emplace_back(Circle{at, 0.0, point_mm, Pen::none, style.fill, style.part});
        return;
    }
    const double reach = ring_mm * std::sqrt(0.5);
    for (const double slope : {-1.0, 1.0})
        scene.items.emplace_back(
            line(moved_mm(at, -reach, -slope * reach), moved_mm(at, reach, slope * reach), style.pen, style.part));
}

}  // namespace

void add_face_marks(Scene& scene, const FaceSheet& sheet) {
    constexpr double off_mm = 1.6;
    const std::vector<double> side = sides(sheet);
    for (std::size_t index = 0; index < sheet.fixings.size(); ++index) {
        const Fixing& fixing = sheet.fixings[index];
        const Point at = sheet.at(fixing.x_in, fixing.z_in);
        add_shear_arrow(scene, sheet.subject, fixing.id, standing(at), sheet.right);
        const double reach = std::max(seat_half_width_in(sheet.shape), std::abs(at.x) + covered_radius_in(fixing));
        const MarkPlace beside{standing({side[index] * reach, at.y}, {side[index] * off_mm, 0.0}), side[index]};
        const MarkPlace letter = letter_place(sheet, fixing, side[index]);
        add_letter_or_mark(scene, sheet.subject, fixing.id, beside, letter);
    }
}

void add_face_bearing(Scene& scene, const FaceSheet& sheet) {
    const Overlay* const overlay = sheet.subject.overlay;
    if (overlay == nullptr || !overlay->pressure) return;
    double largest = 0.0;
    for (const FaceBearing& one : overlay->bearings) largest = std::max(largest, one.peak_psi);
    for (const FaceBearing& one : overlay->bearings) {
        if (!(one.peak_psi > 0.0) || !(one.half_width_in > 0.0) || one.peak_z_in == one.end_z_in) continue;
        const double half = one.half_width_in, level = one.peak_psi / largest;
        Shading shading;
        shading.nodes = {{-half, one.peak_z_in}, {half, one.peak_z_in}, {half, one.end_z_in}, {-half, one.end_z_in}};
        shading.level = {level, level, 0.0, 0.0};
        shading.triangles = {{0, 1, 2}, {0, 2, 3}};
        scene.items.emplace_back(std::move(shading));
        if (overlay->stale)
            scene.items.emplace_back(rectangle(sheet.box({-half, half}, span(one.peak_z_in, one.end_z_in)), Pen::none,
                                               Fill::stale, one.part));
    }
}

void add_face_push(Scene& scene, const FaceSheet& sheet) {
    const Overlay* const overlay = sheet.subject.overlay;
    if (overlay == nullptr || !overlay->push) return;
    constexpr double below_mm = 5.0, shaft_mm = 14.0, beside_mm = 6.0, line_mm = 3.7;
    const PushShown& push = *overlay->push;
    const double half = 0.5 * sheet.shape.post.width_in, along = sheet.right * std::cos(push.direction_rad);
    ArrowStyle style;
    style.part = {model::PartKind::push};
    if (overlay->stale) {
        style.pen = Pen::thin;
        style.fill = Fill::demand_pale;
    }
    const Place axis = standing({0.0, sheet.shown.high.y}, {0.0, -below_mm});
    if (std::abs(along) < along_the_rail) {
        add_push_sign(scene, axis, std::sin(push.direction_rad) * sheet.right < 0.0, style);
    } else {
        const double way = along > 0.0 ? 1.0 : -1.0;
        const Place tip = standing({-way * half, sheet.shown.high.y}, {0.0, -below_mm});
        add_arrow(scene, moved_mm(tip, -way * shaft_mm, 0.0), tip, {way, 0.0}, style);
    }
    const Place words = standing({half, sheet.shown.high.y}, {beside_mm, 0.0});
    Text first = push_text(words, push_words(push, *overlay), *overlay);
    first.bold = true;
    first.upright = Upright::top;
    scene.items.emplace_back(std::move(first));
    std::string toward = direction_words(push, overlay->locale);
    if (push.governing) toward = format::text(format::phrase("{}, governing", toward), overlay->locale);
    Text second = push_text(moved_mm(words, 0.0, -line_mm), toward, *overlay);
    second.size = TextSize::small;
    second.upright = Upright::top;
    scene.items.emplace_back(std::move(second));
}

}  // namespace toehold::drawing::side
