#include "drawing/annotation/labels.h"
#include "drawing/line/line_sheet.h"
#include "drawing/scene/shapes.h"
#include "format/figures.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace toehold::drawing {
namespace {

using format::phrase;

constexpr double post_mm = 3.0;
constexpr double bar_from_mm = 3.0, whole_mm = 20.0, bar_wide_mm = 3.2;
constexpr double figure_off_mm = 2.6, mark_off_mm = 5.2;

Place off(const LinePostMark& post, double outward_mm, double aside_mm = 0.0) {
    return standing(post.at, {outward_mm * post.outward.x - aside_mm * post.outward.y,
                              outward_mm * post.outward.y + aside_mm * post.outward.x});
}

/// From the post outward, so long.
Path share_bar(const LinePostMark& post, double length_mm, double wide_mm, Pen pen, Fill fill) {
    const double from = bar_from_mm, to = bar_from_mm + length_mm, half = 0.5 * wide_mm;
    return {{{off(post, from, -half), off(post, to, -half), off(post, to, half), off(post, from, half)}},
            true,
            pen,
            fill,
            {model::PartKind::post, post.id}};
}

/// Words along a direction are turned to be read from below or from the right.
double upright_deg(Point along) {
    double degrees = std::atan2(along.y, along.x) * 180.0 / std::numbers::pi;
    if (degrees > 90.0 + 1e-6) degrees -= 180.0;
    if (degrees <= -90.0 + 1e-6) degrees += 180.0;
    return degrees;
}

void add_share(Scene& scene, const LineSheet& sheet, const LinePostMark& post) {
    if (!post.share) return;
    const double length_mm = whole_mm * std::min(*post.share, 1.25);
    scene.items.emplace_back(share_bar(post, whole_mm, bar_wide_mm, Pen::capacity, Fill::paper));
    const bool counts = sheet.subject.line.sharing;
    scene.items.emplace_back(
        share_bar(post, length_mm, bar_wide_mm - 1.2, Pen::none, counts ? Fill::demand : Fill::demand_pale));
    const Place end = off(post, bar_from_mm + length_mm);
    scene.items.emplace_back(line(moved_mm(end, -2.2 * post.outward.y, 2.2 * post.outward.x),
                                  moved_mm(end, 2.2 * post.outward.y, -2.2 * post.outward.x), Pen::demand));
    Text number;
    number.words = format::ratio_text(*post.share);
    number.at = off(post, bar_from_mm + std::max(whole_mm, length_mm) + 1.2);
    number.size = TextSize::small;
    number.bold = true;
    number.angle_deg = upright_deg(post.outward);
    const bool forward = post.outward.x > 1e-6 || (std::abs(post.outward.x) <= 1e-6 && post.outward.y > 0.0);
    number.across = forward ? Across::left : Across::right;
    number.upright = Upright::middle;
    number.pen = Pen::demand;
    number.on_paper = true;
    number.part = {model::PartKind::post, post.id};
    scene.items.emplace_back(std::move(number));
}

void add_post(Scene& scene, const LinePostMark& post) {
    constexpr double half = 0.5 * post_mm;
    const model::PartId part{model::PartKind::post, post.id};
    scene.items.emplace_back(
        rectangle_mm(standing(post.at), {-half, -half}, {post_mm, post_mm}, Pen::outline, Fill::capacity, part));
    Text mark;
    // Inside a corner the spans' figures stand.
    const bool corner = std::abs(post.turn_rad) > model::straight_rad;
    mark.at = corner ? off(post, 0.8, 6.4) : off(post, -mark_off_mm);
    mark.words = post.id;
    mark.size = TextSize::small;
    mark.bold = true;
    mark.across = Across::middle;
    mark.upright = Upright::middle;
    mark.on_paper = true;
    mark.part = part;
    scene.items.emplace_back(std::move(mark));
}

/// The rail's end at a wall, with the strokes of something that does not move behind it.
Point add_wall(Scene& scene, const LinePostMark& post, const LinePostMark& beside, double reach_in) {
    constexpr double half_mm = 6.0, stroke_mm = 2.2;
    constexpr int strokes = 6;
    const double size = std::hypot(post.at.x - beside.at.x, post.at.y - beside.at.y);
    const Point along{(post.at.x - beside.at.x) / size, (post.at.y - beside.at.y) / size};
    const Point at{post.at.x + reach_in * along.x, post.at.y + reach_in * along.y};
    const auto on_face = [&](double up_mm, double behind_mm) {
        return standing(at, {-up_mm * along.y + behind_mm * along.x, up_mm * along.x + behind_mm * along.y});
    };
    scene.items.emplace_back(line(post.at, at, Pen::cut));
    scene.items.emplace_back(line(on_face(-half_mm, 0.0), on_face(half_mm, 0.0), Pen::cut));
    for (int stroke = 0; stroke <= strokes; ++stroke) {
        const double up = half_mm * (2.0 * stroke / strokes - 1.0);
        scene.items.emplace_back(line(on_face(up, 0.0), on_face(up - stroke_mm, stroke_mm), Pen::thin));
    }
    return at;
}

void add_span(Scene& scene, const LineSheet& sheet, const LinePostMark& from, const LinePostMark& to) {
    const model::PartId part = model::rail_part(from.id, to.id);
    const double length = std::hypot(to.at.x - from.at.x, to.at.y - from.at.y);
    scene.items.emplace_back(line(from.at, to.at, sheet.subject.line.rail ? Pen::cut : Pen::hidden, part));
    if (!(length > 0.0)) return;
    const Point along{(to.at.x - from.at.x) / length, (to.at.y - from.at.y) / length};
    Point inward{along.y, -along.x};
    const Point faces{from.outward.x + to.outward.x, from.outward.y + to.outward.y};
    if (inward.x * faces.x + inward.y * faces.y > 0.0) inward = {-inward.x, -inward.y};
    const auto beside = [&](Point at, double by_mm) { return standing(at, {by_mm * inward.x, by_mm * inward.y}); };
    Text figure;
    figure.at = beside({0.5 * (from.at.x + to.at.x), 0.5 * (from.at.y + to.at.y)}, figure_off_mm);
    figure.words = length_figure(length, sheet.subject.locale.system);
    figure.size = TextSize::fine;
    figure.across = Across::middle;
    figure.upright = Upright::middle;
    figure.part = part;
    figure.angle_deg = upright_deg(along);
    scene.items.emplace_back(std::move(figure));
}

/// Along the rail in plan from the first post.
Point at_station(const LineSheet& sheet, double station_in) {
    for (std::size_t index = 1; index < sheet.posts.size(); ++index) {
        const LinePostMark &from = sheet.posts[index - 1], &to = sheet.posts[index];
        if (station_in > to.station_in && index + 1 < sheet.posts.size()) continue;
        const double share = (station_in - from.station_in) / std::max(1e-9, to.station_in - from.station_in);
        return {from.at.x + share * (to.at.x - from.at.x), from.at.y + share * (to.at.y - from.at.y)};
    }
    return {};
}

void add_joints(Scene& scene, const LineSheet& sheet) {
    if (!sheet.subject.line.rail) return;
    for (const double splice : sheet.subject.line.rail->splices_in)
        add_joint(scene, standing(at_station(sheet, splice)), {model::PartKind::rail});
}

std::vector<std::string> legend(const LineSheet& sheet) {
    const format::Locale& locale = sheet.subject.locale;
    std::vector<std::string> lines{rail_note(sheet), roles_note(sheet)};
    const bool shares = std::any_of(sheet.posts.begin(), sheet.posts.end(),
                                    [](const LinePostMark& post) { return post.share.has_value(); });
    if (shares) {
        lines.push_back(format::text(phrase("Bar and number: the largest part of a push on the rail that reaches the "
                                            "post's top; its frame is the whole push."),
                                     locale));
    }
    if (sheet.jointed()) lines.push_back(format::text(phrase("The rail has a joint at each post."), locale));
    if (sheet.subject.line.rail && !sheet.subject.line.rail->splices_in.empty())
        lines.push_back(format::text(phrase("Circles: splices of the rail."), locale));
    lines.push_back(format::text(phrase("Plan. {}", unit_note(locale)), locale));
    return lines;
}

/// Below what stands there: bars that point down, or marks.
void add_legend(Scene& scene, const LineSheet& sheet) {
    const bool bars_below = std::any_of(sheet.posts.begin(), sheet.posts.end(),
                                        [](const LinePostMark& post) { return post.outward.y < -0.3; });
    const double below_mm = bars_below ? 42.0 : 16.0;
    constexpr double spacing_mm = 3.6;
    const std::vector<std::string> lines = legend(sheet);
    for (std::size_t index = 0; index < lines.size(); ++index) {
        scene.items.emplace_back(line_note(
            standing(scene.bounds.low, {0.0, -below_mm - spacing_mm * static_cast<double>(index)}), lines[index]));
    }
    scene.margin_mm = std::max(40.0, below_mm + spacing_mm * static_cast<double>(lines.size()));
}

}  // namespace

Scene line_plan(const LineSubject& subject) {
    const LineSheet sheet = line_sheet(subject);
    Scene scene;
    scene.name = "Guard line, plan";
    if (sheet.posts.size() < 2) return finished(scene);
    std::vector<Point> corners;
    for (const LinePostMark& post : sheet.posts) corners.push_back(post.at);
    for (std::size_t index = 1; index < sheet.posts.size(); ++index)
        add_span(scene, sheet, sheet.posts[index - 1], sheet.posts[index]);
    const std::size_t last = sheet.posts.size() - 1;
    if (const auto reach = wall_reach_in(subject, true))
        corners.push_back(add_wall(scene, sheet.posts[0], sheet.posts[1], *reach));
    if (const auto reach = wall_reach_in(subject, false))
        corners.push_back(add_wall(scene, sheet.posts[last], sheet.posts[last - 1], *reach));
    scene.bounds = around(corners);
    add_joints(scene, sheet);
    for (const LinePostMark& post : sheet.posts) {
        add_share(scene, sheet, post);
        add_post(scene, post);
    }
    add_legend(scene, sheet);
    return finished(std::move(scene));
}

}  // namespace toehold::drawing
