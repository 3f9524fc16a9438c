// Wood and metal of the section.
#include "catalog/resolve.h"
#include "drawing/annotation/symbols.h"
#include "drawing/scene/shapes.h"
#include "drawing/side/cut_sheet.h"

#include <algorithm>
#include <cmath>

namespace toehold::drawing::side {
namespace {

const model::PartId post_part{model::PartKind::post};
constexpr double half_strap_in = 0.25;

bool is_wood(const CutSheet& sheet) { return std::holds_alternative<model::WoodPost>(sheet.subject.detail.post); }

/// Of the post; a notch is cut from its face towards the member, below its shoulder.
std::vector<Point> post_contour(const CutSheet& sheet, double high) {
    const Shape& shape = sheet.shape;
    const double back = shape.back_in, full = -shape.back_in, low = shape.post_low_in;
    if (!shape.mount.notch) return {{full, high}, {full, low}, {back, low}, {back, high}};
    const double shoulder = std::clamp(-shape.mount.notch->below_top_in, low, std::max(low, high));
    return {{full, high}, {full, shoulder}, {shape.post_face_in, shoulder}, {shape.post_face_in, low},
            {back, low},  {back, high}};
}

/// Walls of a tube on both sides of its hollow; a bar, and twin bars side by side along the rail, whole.
void add_metal_post(Scene& scene, const CutSheet& sheet, double high) {
    const Shape& shape = sheet.shape;
    const double half = 0.5 * shape.post.depth_in, low = shape.post_low_in;
    const auto* const bars = std::get_if<model::TwinBars>(&sheet.subject.detail.post);
    const bool between = bars != nullptr && bars->apart == model::PlanAxis::x;
    const double wall = bars != nullptr && !between   ? bars->depth_in
                        : model::is_solid(shape.post) ? half
                                                      : std::min(half, shape.post.wall_in);
    if (between || 2.0 * wall < 2.0 * half)
        scene.items.emplace_back(rectangle({{-half, low}, {half, high}}, Pen::outline, Fill::plate, post_part));
    if (between) return;
    if (!(wall < half)) {
        scene.items.emplace_back(rectangle({{-half, low}, {half, high}}, Pen::cut, Fill::metal_cut, post_part));
        return;
    }
    for (const double side : {-1.0, 1.0}) {
        const Span across = span(side * (half - wall), side * half);
        scene.items.emplace_back(
            rectangle({{across.low_in, low}, {across.high_in, high}}, Pen::cut, Fill::metal_cut, post_part));
    }
}

/// With the fillets at its upper and lower end where the post goes past them.
void add_bracket(Scene& scene, const CutSheet& sheet, const model::BracketPlate& bracket) {
    const Shape& shape = sheet.shape;
    const Span heights = seat_heights_in(shape);
    const Span across = span(shape.post_face_in, shape.post_face_in + shape.towards_y * bracket.thickness_in);
    scene.items.emplace_back(rectangle({{across.low_in, heights.low_in}, {across.high_in, heights.high_in}}, Pen::cut,
                                       Fill::metal_cut, {model::PartKind::plate}));
}

void add_fastener(Scene& scene, const CutSheet& sheet, const Fixing& fixing) {
    constexpr double beyond_mm = 2.0;
    const model::PartId part = model::anchor_part(fixing.id);
    double head_y = sheet.shape.back_in, tip_y = sheet.shape.member_face_in;
    if (fixing.anchor != nullptr && sheet.subject.resolved != nullptr) {
        const AnchorStations at = level_stations(*sheet.subject.resolved, *fixing.anchor);
        add_placed(scene,
                   fastener_pieces(*fixing.anchor, at, under_head_upright(*fixing.anchor),
                                   under_nut_upright(*fixing.anchor), part),
                   [&](Point own) {
                       return Point{station_y_in(sheet.shape, own.y), fixing.z_in + own.x};
                   });
        head_y = station_y_in(sheet.shape, at.head_top_in);
        tip_y = station_y_in(sheet.shape, at.tip_in);
    }
    const double out = sheet.post_side();
    scene.items.emplace_back(line(standing({tip_y, fixing.z_in}, {-out * beyond_mm, 0.0}),
                                  standing({head_y, fixing.z_in}, {out * beyond_mm, 0.0}), Pen::center, part));
}

/// Above the heads, all at one height together.
void add_letters(Scene& scene, const CutSheet& sheet, const Level& level) {
    constexpr double off_mm = 1.2, up_mm = 0.6;
    const double out = sheet.post_side();
    Text letter;
    letter.at = standing({level.out_y_in, level.z_in + level.half_in}, {out * off_mm, up_mm});
    for (const Fixing& fixing : level.fixings) letter.words += (letter.words.empty() ? "" : ", ") + fixing.id;
    letter.bold = true;
    letter.across = out > 0.0 ? Across::left : Across::right;
    if (level.fixings.size() == 1) letter.part = model::anchor_part(level.fixings.front().id);
    scene.items.emplace_back(std::move(letter));
}

}  // namespace

void add_cut_layers(Scene& scene, const CutSheet& sheet) {
    for (std::size_t index = 0; index < sheet.shape.mount.layers.size(); ++index) {
        const Span across = layer_y_in(sheet.shape, index), heights = layer_heights_in(sheet.shape, index);
        scene.items.emplace_back(rectangle({{across.low_in, heights.low_in}, {across.high_in, heights.high_in}},
                                           Pen::cut, Fill::decking, model::shim_part(index)));
    }
}

void add_cut_boards(Scene& scene, const CutSheet& sheet) {
    const auto& decking = sheet.shape.mount.decking;
    if (!decking) return;
    // Beside joists that run along the rail nothing says how far the boards go: not past the member, where the post is.
    const DeckEnds ends = deck_ends(sheet.subject.detail.framing, {model::PlanAxis::y, 0.0});
    add_broken_rectangle(
        scene, {{ends.low_in, 0.0}, {std::min(ends.high_in, outward_face_in(sheet.shape)), decking->thickness_in}},
        sheet.shown, Pen::cut, Fill::decking, {model::PartKind::decking});
}

void add_cut_post(Scene& scene, const CutSheet& sheet) {
    const double half = 0.5 * sheet.shape.post.depth_in, high = sheet.shown.high.y;
    if (sheet.shape.mount.bracket) add_bracket(scene, sheet, *sheet.shape.mount.bracket);
    if (!(half > 0.0) || !(sheet.shape.post_low_in < high)) return;
    if (is_wood(sheet)) {
        scene.items.emplace_back(area(post_contour(sheet, high), Pen::cut, Fill::wood_cut, post_part));
    } else {
        add_metal_post(scene, sheet, high);
    }
    add_break_line(scene, {-half, high}, {half, high}, post_part);
}

void add_cut_fasteners(Scene& scene, const CutSheet& sheet) {
    for (const Fixing& fixing : sheet.fixings) add_fastener(scene, sheet, fixing);
    for (const Level& level : levels(sheet)) add_letters(scene, sheet, level);
}

Point tie_corner(const CutSheet& sheet, const model::TensionTie& tie) {
    constexpr double least_in = 4.0;
    const Shape& shape = sheet.shape;
    const double member_in = shape.member ? shape.member->width_in : 0.0;
    return {shape.member_face_in + shape.towards_y * (member_in + least_in), half_strap_in - tie.below_top_in};
}

void add_cut_ties(Scene& scene, const CutSheet& sheet) {
    for (const model::TensionTie& tie : sheet.shape.mount.ties) {
        const Point end = tie_corner(sheet, tie);
        const Span across = span(sheet.shape.back_in, end.x);
        const Box strap{{across.low_in, end.y - 2.0 * half_strap_in}, {across.high_in, end.y}};
        scene.items.emplace_back(rectangle(common(strap, sheet.shown), Pen::outline, Fill::plate, tie_part(tie)));
    }
}

}  // namespace toehold::drawing::side
