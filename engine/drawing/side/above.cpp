// The joint from above, boards off: what backs the member, and how fasteners and ties go back into the deck.
#include "catalog/resolve.h"
#include "drawing/annotation/dimension.h"
#include "drawing/annotation/labels.h"
#include "drawing/annotation/overlay.h"
#include "drawing/annotation/symbols.h"
#include "drawing/plan/sheet.h"
#include "drawing/scene/shapes.h"
#include "drawing/side/above_sheet.h"
#include "drawing/side/side_drawings.h"
#include "model/placement.h"

#include <algorithm>
#include <cmath>

namespace toehold::drawing::side {
namespace {

using format::phrase;

constexpr double half_strap_in = 0.25;

Box box_of(const model::Member& member) {
    const model::PlanRectangle plan = model::plan(member);
    return {{plan.x_min_in, plan.y_min_in}, {plan.x_max_in, plan.y_max_in}};
}

/// The joint, and members on both sides of it that it can go back to.
Box shown_box(const AboveSheet& sheet) {
    constexpr double near_in = 14.0, beyond_in = 0.75, back_in = 9.0, front_in = 2.0, least_in = 5.0;
    const Shape& shape = sheet.shape;
    double half = std::max(least_in, seat_half_width_in(shape) + front_in);
    for (const model::Member& member : model::members(sheet.subject.detail.framing)) {
        const double far = std::abs(member.across_in) + 0.5 * member.width_in;
        if (member.along == model::PlanAxis::y && far < near_in) half = std::max(half, far + beyond_in);
    }
    const double member_in = shape.member ? shape.member->width_in : 0.0;
    // The deck lies inward of both, whichever side of the member the post is on.
    const Span joint = span(shape.back_in, shape.member_face_in + shape.towards_y * member_in);
    Box shown{{-half, joint.low_in - back_in}, {half, joint.high_in + front_in}};
    if (sheet.subject.resolved == nullptr) return shown;
    for (const Fixing& fixing : sheet.fixings) {
        if (fixing.anchor == nullptr) continue;
        const AnchorStations at = level_stations(*sheet.subject.resolved, *fixing.anchor);
        for (const double station : {at.head_top_in, at.tip_in}) {
            const double y = station_y_in(shape, station);
            shown = around(shown, {{0.0, y - beyond_in}, {0.0, y + beyond_in}});
        }
    }
    return shown;
}

}  // namespace

AboveSheet above_sheet(const Subject& subject) {
    AboveSheet sheet{subject, shape(subject.detail), fixings(subject), {}, {}};
    std::stable_sort(sheet.fixings.begin(), sheet.fixings.end(),
                     [](const Fixing& one, const Fixing& other) { return one.z_in < other.z_in; });
    const Point half{0.5 * std::abs(sheet.shape.post.width_in), 0.5 * std::abs(sheet.shape.post.depth_in)};
    sheet.post = {{-half.x, -half.y}, half};
    sheet.shown = shown_box(sheet);
    return sheet;
}

namespace {

void add_name(Scene& scene, const Place& at, const std::string& words, const model::PartId& part) {
    Text text;
    text.at = at;
    text.words = words;
    text.size = TextSize::fine;
    text.pen = Pen::dimension;
    text.on_paper = true;
    text.part = part;
    scene.items.emplace_back(std::move(text));
}

/// In the corner where nothing is fastened.
void add_names(Scene& scene, const AboveSheet& sheet) {
    for (const model::Member& member : model::members(sheet.subject.detail.framing)) {
        const Box shown = common(box_of(member), sheet.shown);
        if (!has_area(shown)) continue;
        add_name(scene, standing(shown.low, {1.1, 0.9}), member.id, model::part_of(member));
    }
}

/// Ties over one another are named together, beside their end and away from the post's axis.
void add_tie_names(Scene& scene, const AboveSheet& sheet) {
    constexpr double same_in = 1e-3;
    const auto& ties = sheet.shape.mount.ties;
    for (std::size_t index = 0; index < ties.size(); ++index) {
        const auto same = [&](const model::TensionTie& one) {
            return std::abs(one.x_in - ties[index].x_in) < same_in && one.into == ties[index].into;
        };
        const auto before = ties.begin() + static_cast<std::ptrdiff_t>(index);
        if (std::any_of(ties.begin(), before, same)) continue;
        std::string ids;
        for (const model::TensionTie& one : ties) {
            if (same(one)) ids += (ids.empty() ? "" : ", ") + one.id;
        }
        const double side = ties[index].x_in < 0.0 ? -1.0 : 1.0;
        Text text;
        text.at = standing({ties[index].x_in + side * half_strap_in, tie_end(sheet, ties[index]).y},
                           {side, sheet.shape.towards_y < 0.0 ? 0.6 : -2.6});
        text.words = format::text(phrase("{} to {}", ids, ties[index].into), sheet.subject.locale);
        text.size = TextSize::fine;
        text.across = side > 0.0 ? Across::left : Across::right;
        text.pen = Pen::dimension;
        text.on_paper = true;
        text.part = tie_part(ties[index]);
        scene.items.emplace_back(std::move(text));
    }
}

}  // namespace

void add_above_members(Scene& scene, const AboveSheet& sheet) {
    constexpr int most_plies = 8;
    for (const model::Member& member : model::members(sheet.subject.detail.framing)) {
        const Box box = box_of(member), shown = common(box, sheet.shown);
        if (!has_area(shown)) continue;
        const model::PartId part = model::part_of(member);
        const bool along_x = member.along == model::PlanAxis::x;
        add_broken_rectangle(scene, box, sheet.shown, Pen::outline, Fill::wood_side, part);
        for (const double end : {shown.low.y, shown.high.y}) {
            if (!along_x && end != box.low.y && end != box.high.y)
                add_break_line(scene, {shown.low.x, end}, {shown.high.x, end}, part);
        }
        for (int ply = 1; ply < std::min(member.plies, most_plies); ++ply) {
            const double in = model::ply_width_in(member) * ply;
            scene.items.emplace_back(
                along_x ? line(Point{shown.low.x, box.low.y + in}, {shown.high.x, box.low.y + in}, Pen::thin, part)
                        : line(Point{box.low.x + in, shown.low.y}, {box.low.x + in, shown.high.y}, Pen::thin, part));
        }
    }
}

void add_above_between(Scene& scene, const AboveSheet& sheet) {
    const Shape& shape = sheet.shape;
    const double half = seat_half_width_in(shape);
    for (std::size_t index = 0; index < shape.mount.layers.size(); ++index) {
        const Span across = layer_y_in(shape, index);
        scene.items.emplace_back(rectangle({{-half, across.low_in}, {half, across.high_in}}, Pen::outline,
                                           Fill::decking, model::shim_part(index)));
    }
    if (!shape.mount.bracket) return;
    const Span across =
        span(shape.post_face_in, shape.post_face_in + shape.towards_y * shape.mount.bracket->thickness_in);
    scene.items.emplace_back(rectangle({{-half, across.low_in}, {half, across.high_in}}, Pen::outline, Fill::plate,
                                       {model::PartKind::plate}));
}

void add_above_fasteners(Scene& scene, const AboveSheet& sheet) {
    constexpr double beyond_mm = 2.0;
    for (const Fixing& fixing : sheet.fixings) {
        const model::PartId part = model::anchor_part(fixing.id);
        double head_y = sheet.shape.back_in, tip_y = sheet.shape.member_face_in;
        if (fixing.anchor != nullptr && sheet.subject.resolved != nullptr) {
            const AnchorStations at = level_stations(*sheet.subject.resolved, *fixing.anchor);
            add_placed(scene,
                       fastener_pieces(*fixing.anchor, at, under_head_across(*fixing.anchor),
                                       under_nut_across(*fixing.anchor), part),
                       [&](Point own) {
                           return Point{fixing.x_in + own.x, station_y_in(sheet.shape, own.y)};
                       });
            head_y = station_y_in(sheet.shape, at.head_top_in);
            tip_y = station_y_in(sheet.shape, at.tip_in);
        }
        const double out = -sheet.shape.towards_y;
        scene.items.emplace_back(line(standing({fixing.x_in, tip_y}, {0.0, -out * beyond_mm}),
                                      standing({fixing.x_in, head_y}, {0.0, out * beyond_mm}), Pen::center, part));
    }
}

Point tie_end(const AboveSheet& sheet, const model::TensionTie& tie) {
    constexpr double least_in = 6.0;
    const Shape& shape = sheet.shape;
    const double member_in = shape.member ? shape.member->width_in : 0.0;
    return {tie.x_in + half_strap_in, shape.member_face_in + shape.towards_y * (member_in + least_in)};
}

void add_above_ties(Scene& scene, const AboveSheet& sheet) {
    for (const model::TensionTie& tie : sheet.shape.mount.ties) {
        const Span reach = span(sheet.shape.back_in, tie_end(sheet, tie).y);
        scene.items.emplace_back(rectangle(
            common({{tie.x_in - half_strap_in, reach.low_in}, {tie.x_in + half_strap_in, reach.high_in}}, sheet.shown),
            Pen::outline, Fill::plate, tie_part(tie)));
    }
}

namespace {

/// In the upper left corner's margin, off everything: which way the push goes.
void add_push_sign(Scene& scene, const AboveSheet& sheet) {
    const Overlay* const overlay = sheet.subject.overlay;
    if (overlay == nullptr || !overlay->push) return;
    constexpr double across_mm = 7.0, up_mm = 15.0, half_mm = 6.0, words_mm = 15.0, top_mm = 19.0, line_mm = 3.7;
    const Point along{std::cos(overlay->push->direction_rad), std::sin(overlay->push->direction_rad)};
    const Place corner = standing({sheet.shown.low.x, sheet.shown.high.y});
    const Place center = moved_mm(corner, across_mm, up_mm);
    ArrowStyle style;
    style.part = {model::PartKind::push};
    if (overlay->stale) {
        style.pen = Pen::thin;
        style.fill = Fill::demand_pale;
    }
    add_arrow(scene, moved_mm(center, -half_mm * along.x, -half_mm * along.y),
              moved_mm(center, half_mm * along.x, half_mm * along.y), along, style);
    std::string toward = direction_words(*overlay->push, overlay->locale);
    if (overlay->push->governing) toward = format::text(phrase("{}, governing", toward), overlay->locale);
    double down_mm = 0.0;
    for (std::string& words : std::vector<std::string>{push_words(*overlay->push, *overlay), toward}) {
        Text text;
        text.at = moved_mm(corner, words_mm, top_mm - down_mm);
        text.words = std::move(words);
        text.size = TextSize::small;
        text.bold = down_mm == 0.0;
        text.upright = Upright::top;
        text.pen = overlay->stale ? Pen::dimension : Pen::demand;
        text.part = {model::PartKind::push};
        scene.items.emplace_back(std::move(text));
        down_mm += line_mm;
    }
}

/// Below: members that run outward against the post's axis. Above: the post's faces and the places across it.
void add_dimensions(Scene& scene, const AboveSheet& sheet) {
    constexpr double first_row_mm = 7.5;
    constexpr std::size_t most_ends = 30;
    const auto add = [&](const DimensionRow& row, std::vector<double> places, double feature_in) {
        places = distinct(std::move(places));
        if (places.size() < 2 || places.size() > most_ends) return;
        std::vector<DimensionEnd> ends;
        std::vector<std::string> words;
        for (const double at : places) {
            if (!ends.empty()) words.push_back(length_figure(at - ends.back().at_in, sheet.subject.locale.system));
            ends.push_back({at, feature_in});
        }
        add_chain(scene, row, ends, words);
    };
    const Shape& shape = sheet.shape;
    const double member_in = shape.member ? shape.member->width_in : 0.0;
    const double outmost = std::max(shape.back_in, shape.member_face_in + shape.towards_y * member_in);
    std::vector<double> across{-seat_half_width_in(sheet.shape), seat_half_width_in(sheet.shape)}, middles{0.0};
    for (const Fixing& fixing : sheet.fixings) across.push_back(fixing.x_in);
    for (const model::Member& member : model::members(sheet.subject.detail.framing)) {
        const bool seen = member.across_in > sheet.shown.low.x && member.across_in < sheet.shown.high.x;
        if (member.along == model::PlanAxis::y && seen) middles.push_back(member.across_in);
    }
    add({Measure::across, sheet.shown.high.y, first_row_mm, Pen::dimension, {model::PartKind::post}}, across, outmost);
    add({Measure::across, sheet.shown.low.y, -first_row_mm, Pen::dimension, {}}, middles, sheet.shown.low.y);
}

}  // namespace

Scene from_above(const Subject& subject) {
    constexpr double around_mm = 22.0, note_mm = 1.2;
    const AboveSheet sheet = above_sheet(subject);
    const PlanOptions options;
    const PlanSheet plan{subject, options, {}, sheet.post, sheet.shown};
    Scene scene;
    scene.name = format::text(phrase("From above"), subject.locale);
    scene.bounds = sheet.shown;
    scene.margin_mm = around_mm;
    add_above_members(scene, sheet);
    add_above_between(scene, sheet);
    add_post(scene, plan);
    add_above_fasteners(scene, sheet);
    add_above_ties(scene, sheet);
    add_names(scene, sheet);
    add_tie_names(scene, sheet);
    add_dimensions(scene, sheet);
    add_plan_note(
        scene, sheet.shown, note_mm,
        format::text(phrase("From above, boards off; outward is up. {}", unit_note(subject.locale)), subject.locale));
    add_push_sign(scene, sheet);
    return finished(std::move(scene));
}

}  // namespace toehold::drawing::side
