#include "drawing/annotation/labels.h"
#include "drawing/annotation/overlay.h"
#include "drawing/annotation/plate_field.h"
#include "drawing/annotation/symbols.h"
#include "drawing/plan/sheet.h"
#include "drawing/scene/shapes.h"
#include "format/figures.h"
#include "model/base_detail.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace toehold::drawing {
namespace {

/// From the origin to where a ray leaves a box around it; 0 where the origin is not in it.
double leaves(const Box& box, Point along) {
    double distance = std::numeric_limits<double>::infinity();
    if (along.x != 0.0) distance = std::min(distance, (along.x > 0.0 ? box.high.x : box.low.x) / along.x);
    if (along.y != 0.0) distance = std::min(distance, (along.y > 0.0 ? box.high.y : box.low.y) / along.y);
    return std::isfinite(distance) ? std::max(0.0, distance) : 0.0;
}

double foot_radius(const PostFoot& foot, Point along) {
    if (foot.round) return 0.5 * foot.width_in;
    const Point half{0.5 * foot.width_in, 0.5 * foot.depth_in};
    return leaves({{-half.x, -half.y}, half}, along);
}

/// Where the first line's upper side stands, and which side of the lines the tail is on: outward of a tail at a corner,
/// beside one that comes square to an edge, where the dimensions are beyond it.
struct WordsPlace {
    double right_mm = 0.0, top_mm = 0.0;
    Across across = Across::left;
};

WordsPlace words_place(Point away, double lines_mm) {
    constexpr double sideways = 0.4, off_mm = 2.0;
    if (std::abs(away.x) < sideways) return {off_mm, away.y > 0.0 ? 0.0 : lines_mm, Across::left};
    WordsPlace place{off_mm * away.x, 0.5 * lines_mm, away.x > 0.0 ? Across::left : Across::right};
    if (away.y > sideways) place.top_mm = lines_mm + off_mm * away.y;
    if (away.y < -sideways) place.top_mm = off_mm * away.y;
    return place;
}

void add_words(Scene& scene, const Place& tail, Point away, const PushShown& push, const Overlay& overlay) {
    constexpr double line_mm = 3.7;
    std::vector<std::string> lines = {push_words(push, overlay), direction_words(push, overlay.locale)};
    if (push.governing) lines.push_back(format::text(format::phrase("governing"), overlay.locale));
    const WordsPlace place = words_place(away, line_mm * static_cast<double>(lines.size()));
    double down_mm = 0.0;
    for (std::string& words : lines) {
        Text text;
        text.at = moved_mm(tail, place.right_mm, place.top_mm - down_mm);
        text.words = std::move(words);
        text.size = down_mm == 0.0 ? TextSize::normal : TextSize::small;
        text.bold = down_mm == 0.0;
        text.across = place.across;
        text.upright = Upright::top;
        text.pen = overlay.stale ? Pen::dimension : Pen::demand;
        text.on_paper = true;
        text.part = {model::PartKind::push};
        scene.items.emplace_back(std::move(text));
        down_mm += line_mm;
    }
}

}  // namespace

void add_push(Scene& scene, const PlanSheet& sheet) {
    const Overlay* const overlay = sheet.subject.overlay;
    if (overlay == nullptr || !overlay->push) return;
    constexpr double outside_mm = 7.0;
    const PushShown& push = *overlay->push;
    const Point along{std::cos(push.direction_rad), std::sin(push.direction_rad)};
    const Point away{-along.x, -along.y};
    const double foot_in = foot_radius(post_foot(sheet.subject.detail.post), away);
    const double tail_in = std::max(foot_in, leaves(sheet.plate, away));
    const Place tip = standing({away.x * foot_in, away.y * foot_in});
    const Place tail = standing({away.x * tail_in, away.y * tail_in}, {away.x * outside_mm, away.y * outside_mm});
    ArrowStyle style;
    style.head_mm = 4.2;
    style.head_width_mm = 2.6;
    style.part = {model::PartKind::push};
    if (overlay->stale) {
        style.pen = Pen::thin;
        style.fill = Fill::demand_pale;
    }
    add_arrow(scene, tail, tip, along, style);
    add_words(scene, tail, away, push, *overlay);
}

namespace {

/// The edge of the bearing zone is drawn where next to nothing presses any more.
constexpr double edge_of_bearing = 0.01;

const demand::DeflectedShape* shown_field(const Subject& subject) {
    const Overlay* const overlay = subject.overlay;
    return overlay != nullptr && overlay->pressure && overlay->field ? &*overlay->field : nullptr;
}

Shading scale_strip(const Box& strip) {
    Shading shading;
    shading.nodes = {strip.low, {strip.high.x, strip.low.y}, strip.high, {strip.low.x, strip.high.y}};
    shading.level = {0.0, 0.0, 1.0, 1.0};
    shading.triangles = {{0, 1, 2}, {0, 2, 3}};
    return shading;
}

void add_scale_words(Scene& scene, const Place& at, std::string words, Across across, Upright upright) {
    Text text;
    text.at = at;
    text.words = std::move(words);
    text.size = TextSize::fine;
    text.across = across;
    text.upright = upright;
    scene.items.emplace_back(std::move(text));
}

}  // namespace

void add_pressure(Scene& scene, const PlanSheet& sheet) {
    const demand::DeflectedShape* const field = shown_field(sheet.subject);
    if (field == nullptr) return;
    const std::optional<Shading> shading = pressure_shading(*field);
    if (!shading) return;
    scene.items.emplace_back(*shading);
    if (sheet.subject.overlay->stale) scene.items.emplace_back(area(sheet.outline, Pen::none, Fill::stale));
    for (const double level : {edge_of_bearing, 1.0 / 3.0, 2.0 / 3.0})
        scene.items.emplace_back(level_line(*shading, level, Pen::thin));
}

void add_pressure_scale(Scene& scene, const PlanSheet& sheet) {
    const demand::DeflectedShape* const field = shown_field(sheet.subject);
    if (field == nullptr || !(largest_psi(*field) > 0.0)) return;
    const Box& shown = sheet.shown;
    const double strip_in = 0.025 * width(shown), off_in = 0.07 * width(shown);
    const Box strip{{shown.high.x + off_in, shown.high.y - 0.3 * height(shown)},
                    {shown.high.x + off_in + strip_in, shown.high.y}};
    scene.bounds = around(scene.bounds, strip);
    scene.items.emplace_back(scale_strip(strip));
    scene.items.emplace_back(rectangle(strip, Pen::thin, Fill::none));
    for (const double level : {1.0 / 3.0, 2.0 / 3.0}) {
        const double y = strip.low.y + level * height(strip);
        scene.items.emplace_back(line(Point{strip.low.x, y}, {strip.high.x, y}, Pen::thin));
    }
    const Overlay& overlay = *sheet.subject.overlay;
    add_scale_words(scene, standing(strip.high, {1.0, 0.0}),
                    format::figure_text(largest_psi(*field), "psi", overlay.locale.system), Across::left, Upright::top);
    add_scale_words(scene, standing({strip.high.x, strip.low.y}, {1.0, 0.0}), "0", Across::left, Upright::bottom);
    add_scale_words(scene, standing(strip.high, {0.0, 1.2}),
                    words_of_today(format::text(format::phrase("bearing"), overlay.locale), overlay.stale),
                    Across::right, Upright::bottom);
}

}  // namespace toehold::drawing
