// A bracket plate's face, seen from the post's side, and its right side beside it, in third-angle projection.
#include "drawing/annotation/labels.h"
#include "drawing/annotation/symbols.h"
#include "drawing/render/lettering.h"
#include "drawing/scene/shapes.h"
#include "paper/cutting/plate_contours.h"
#include "paper/layout/on_paper.h"
#include "paper/shop/callouts.h"
#include "paper/shop/side/bracket.h"
#include "paper/shop/weld_symbol.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace toehold::paper::shop {
namespace {

using drawing::Box;
using drawing::Measure;
using drawing::Pen;
using drawing::Point;
using drawing::Scene;

constexpr double post_above_mm = 7.0;  ///< of the post that goes on above the plate
constexpr double below_rows_mm = 17.0, titles_mm = 9.0, bracket_callout_off_mm = 6.0, bracket_gap_mm = 14.0;

struct Bracket {
    const catalog::Resolved& resolved;
    MadePlate made;
    Drafting drafting;
    Box plate;
    model::Footprint post;
    double post_low_in = 0.0;
    double weld_leg_in = 0.0;
};

Bracket bracket_of(const catalog::Resolved& resolved, const Drafting& drafting) {
    const model::SideFastened& mount = on_side(resolved.detail);
    Bracket bracket{resolved, made_plate(resolved), drafting, {}, model::shaft(resolved.detail.post), 0.0, 0.0};
    bracket.plate = outline_box_in(bracket.made.plate.outline);
    bracket.post_low_in = -mount.post_bottom_below_top_in;
    bracket.weld_leg_in = mount.bracket->weld_leg_in;
    return bracket;
}

/// Heights over which post and plate touch.
std::pair<double, double> welded_heights(const Bracket& of) {
    return {std::max(of.plate.low.y, of.post_low_in), of.plate.high.y};
}

void add_broken_post(Scene& scene, const Bracket& of, double low_x, double high_x) {
    const drawing::Place left = drawing::standing({low_x, of.plate.high.y}, {0.0, post_above_mm});
    const drawing::Place right = drawing::standing({high_x, of.plate.high.y}, {0.0, post_above_mm});
    const drawing::Place low_left = drawing::standing({low_x, of.post_low_in});
    const drawing::Place low_right = drawing::standing({high_x, of.post_low_in});
    const model::PartId part{model::PartKind::post};
    scene.items.emplace_back(
        drawing::Path{{{left, low_left, low_right, right}}, true, Pen::none, drawing::Fill::plate, part});
    scene.items.emplace_back(
        drawing::Path{{{left, low_left, low_right, right}}, false, Pen::outline, drawing::Fill::none, part});
    scene.items.emplace_back(drawing::line(left, right, Pen::thin, part));
}

/// Of post and plate: rows of dimensions stand below both.
double lowest_in(const Bracket& of) { return std::min(of.plate.low.y, of.post_low_in); }

void add_holes(Scene& scene, const Bracket& of) {
    constexpr double beyond_mm = 2.0;
    for (const model::Hole& hole : of.made.plate.holes) {
        const double radius = 0.5 * std::get<model::RoundHole>(hole.shape).diameter_in;
        const Point at{hole.center.x_in, hole.center.y_in};
        const model::PartId part = model::anchor_part(hole.id);
        scene.items.emplace_back(
            drawing::Circle{drawing::standing(at), radius, 0.0, Pen::outline, drawing::Fill::paper, part});
        scene.items.emplace_back(drawing::line(drawing::standing({at.x - radius, at.y}, {-beyond_mm, 0.0}),
                                               drawing::standing({at.x + radius, at.y}, {beyond_mm, 0.0}), Pen::thin,
                                               part));
        scene.items.emplace_back(drawing::line(drawing::standing({at.x, at.y - radius}, {0.0, -beyond_mm}),
                                               drawing::standing({at.x, at.y + radius}, {0.0, beyond_mm}), Pen::thin,
                                               part));
    }
}

Scene face_view(const Bracket& of) {
    Scene scene;
    scene.name = "Face";
    scene.bounds = of.plate;
    const Box& plate = of.plate;
    const double half = 0.5 * of.post.width_in;
    const auto [low, high] = welded_heights(of);
    scene.items.emplace_back(drawing::rectangle(plate, Pen::outline, drawing::Fill::plate, {model::PartKind::plate}));
    for (const double side : {-1.0, 1.0}) {
        const double inner = side * half, outer = side * (half + of.weld_leg_in);
        if (of.weld_leg_in > 0.0 && low < high)
            scene.items.emplace_back(drawing::rectangle({{std::min(inner, outer), low}, {std::max(inner, outer), high}},
                                                        Pen::thin, drawing::Fill::capacity, {model::PartKind::weld}));
    }
    add_broken_post(scene, of, -half, half);
    add_holes(scene, of);
    add_hole_ids(scene, of.made.plate.holes, of.drafting.mm_per_in);
    add_hole_rows(scene, of.made.plate, of.drafting,
                  {Measure::across, plate.low.x, plate.high.x, lowest_in(of), -1.0, plate.low.y});
    add_hole_rows(scene, of.made.plate, of.drafting, {Measure::upright, plate.low.y, plate.high.y, plate.low.x, -1.0});
    add_callouts(scene, callouts(of.made.plate, of.drafting.locale), plate.high.x, bracket_callout_off_mm,
                 of.drafting.mm_per_in);
    return drawing::finished(std::move(scene));
}

/// The post in front of the plate, to its left.
Scene side_view(const Bracket& of) {
    constexpr double row_mm = 7.0;
    Scene scene;
    scene.name = "Right side";
    const double thick = of.made.plate.thickness_in;
    const Box plate{{0.0, of.plate.low.y}, {thick, of.plate.high.y}};
    scene.bounds = {{-of.post.depth_in, of.plate.low.y}, plate.high};
    add_broken_post(scene, of, -of.post.depth_in, 0.0);
    scene.items.emplace_back(drawing::rectangle(plate, Pen::outline, drawing::Fill::plate, {model::PartKind::plate}));
    const auto [low, high] = welded_heights(of);
    const units::System system = of.drafting.locale.system;
    if (of.weld_leg_in > 0.0 && low < high) {
        scene.items.emplace_back(drawing::rectangle({{-of.weld_leg_in, low}, {0.0, high}}, Pen::thin,
                                                    drawing::Fill::capacity, {model::PartKind::weld}));
        // Both sides of the post: the sign on both sides of the line.
        const WeldSign sign{drawing::length_figure(of.weld_leg_in, system), false, false, true, {}};
        add_weld_sign(scene, drawing::standing({-0.5 * of.weld_leg_in, 0.5 * (low + high)}), sign);
    }
    const drawing::DimensionRow row{Measure::across, lowest_in(of), -row_mm, Pen::dimension, {model::PartKind::plate}};
    add_measure(scene, row, {0.0, plate.low.y}, {thick, plate.low.y}, drawing::length_figure(thick, system),
                of.drafting);
    if (of.post_low_in != plate.low.y) {
        const drawing::DimensionRow beside{
            Measure::upright, -of.post.depth_in, -row_mm, Pen::dimension, {model::PartKind::post}};
        const bool past = of.post_low_in < plate.low.y;
        const drawing::DimensionEnd post{of.post_low_in, -of.post.depth_in}, edge{plate.low.y, -of.post.depth_in};
        add_measure(scene, beside, past ? post : edge, past ? edge : post,
                    drawing::length_figure(std::abs(of.post_low_in - plate.low.y), system), of.drafting);
    }
    return drawing::finished(std::move(scene));
}

struct BracketNeed {
    double width_mm = 0.0, height_mm = 0.0, gap_mm = 0.0, right_mm = 0.0;
};

BracketNeed need_of(const Bracket& of) {
    const double scale = of.drafting.mm_per_in;
    double widest = 0.0;
    for (const Callout& callout : callouts(of.made.plate, of.drafting.locale))
        widest = std::max(widest, drawing::text_width_mm(callout.words, {drawing::TextSize::small, false, false}));
    BracketNeed need;
    need.gap_mm = std::max(bracket_gap_mm, bracket_callout_off_mm + widest) + rows_reach_mm;
    need.right_mm =
        weld_sign_reach_mm({drawing::length_figure(of.weld_leg_in, of.drafting.locale.system), false, false, true, {}});
    const double below_plate_mm = std::max(0.0, of.plate.low.y - of.post_low_in) * scale;
    need.width_mm = rows_reach_mm + drawing::width(of.plate) * scale + need.gap_mm +
                    (of.post.depth_in + of.made.plate.thickness_in) * scale + need.right_mm;
    need.height_mm = post_above_mm + drawing::height(of.plate) * scale + below_plate_mm + below_rows_mm + titles_mm;
    return need;
}

double fitting_scale(const catalog::Resolved& resolved, const format::Locale& locale, const drawing::Area& frame,
                     double lettering) {
    constexpr double mm_per_in = 25.4, largest = 2.0, smaller = 0.999, smallest = 1.0 / 200.0;
    double scale = largest;
    while (scale > smallest) {
        const BracketNeed need = need_of(bracket_of(resolved, {locale, scale * mm_per_in / lettering}));
        if (need.width_mm <= frame.width && need.height_mm <= frame.height) return scale;
        scale = drawing::customary_scale(scale * smaller);
    }
    return smallest;
}

}  // namespace

Views laid_out_bracket(const catalog::Resolved& resolved, const format::Locale& locale, const drawing::Area& frame,
                       double lettering) {
    constexpr double mm_per_in = 25.4, title_foot_mm = 5.0;
    const double scale = fitting_scale(resolved, locale, frame, lettering);
    const double per_in = scale * mm_per_in / lettering;
    const Bracket of = bracket_of(resolved, {locale, per_in});
    const BracketNeed need = need_of(of);
    const double left = frame.left + std::max(0.0, 0.5 * (frame.width - need.width_mm)) + rows_reach_mm;
    const double bottom = frame.top + std::max(0.0, 0.5 * (frame.height - need.height_mm)) + post_above_mm +
                          drawing::height(of.plate) * per_in;
    const double side_left = left + drawing::width(of.plate) * per_in + need.gap_mm;
    const auto placed = [&](Scene scene, Point at_in, double x_mm) {
        return Placed{std::move(scene), at_in, {lettering * x_mm, lettering * bottom}, scale, lettering};
    };
    Views views;
    views.scale = scale;
    views.placed.push_back(placed(face_view(of), of.plate.low, left));
    views.placed.push_back(placed(side_view(of), {-of.post.depth_in, of.plate.low.y}, side_left));
    Scene titles;
    titles.name = "Titles of the views";
    const double below_plate_mm = std::max(0.0, of.plate.low.y - of.post_low_in) * per_in;
    const double foot = bottom + below_plate_mm + below_rows_mm + title_foot_mm;
    const auto add = [&](double middle_mm, const format::Phrase& title) {
        layout::add_words(titles, {middle_mm, foot},
                          format::text(title, locale) + "  " + format::text(scale_words(scale), locale),
                          {drawing::TextSize::small, true, drawing::Across::middle});
    };
    add(left + 0.5 * drawing::width(of.plate) * per_in, format::phrase("FACE, POST'S SIDE"));
    add(side_left + 0.5 * (of.post.depth_in + of.made.plate.thickness_in) * per_in, format::phrase("RIGHT SIDE"));
    views.placed.push_back(placed_on_paper(std::move(titles), {}, lettering));
    return views;
}

}  // namespace toehold::paper::shop
