#include "drawing/marks/arrow.h"
#include "drawing/marks/push_words.h"
#include "drawing/marks/shapes.h"
#include "drawing/plan_sheet.h"

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

void add_words(Scene& scene, const Place& tail, Point away, const PushShown& push, const Overlay& overlay) {
    constexpr double sideways = 0.4, off_mm = 2.0, line_mm = 3.6;
    const double lines_up_mm = away.y > sideways ? line_mm : away.y < -sideways ? 0.0 : 0.5 * line_mm;
    Text text;
    text.at = moved_mm(tail, off_mm * away.x, off_mm * away.y + lines_up_mm);
    text.words = push_words(push, overlay);
    text.across = away.x > sideways ? Across::left : away.x < -sideways ? Across::right : Across::middle;
    text.upright = away.y > sideways ? Upright::bottom : away.y < -sideways ? Upright::top : Upright::middle;
    text.pen = overlay.stale ? Pen::dimension : Pen::demand;
    text.bold = true;
    text.on_paper = true;
    text.part = "push";
    scene.items.emplace_back(text);
    text.at = moved_mm(text.at, 0.0, -line_mm);
    text.words = direction_words(push);
    text.size = TextSize::small;
    text.bold = false;
    scene.items.emplace_back(std::move(text));
}

}  // namespace

void add_push(Scene& scene, const PlanSheet& sheet) {
    const Overlay* const overlay = sheet.subject.overlay;
    if (overlay == nullptr || !overlay->push) return;
    constexpr double outside_mm = 10.0;
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
    style.part = "push";
    if (overlay->stale) {
        style.pen = Pen::thin;
        style.fill = Fill::demand_pale;
    }
    add_arrow(scene, tail, tip, along, style);
    add_words(scene, tail, away, push, *overlay);
}

}  // namespace toehold::drawing
