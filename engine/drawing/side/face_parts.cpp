// What the face view draws of wood and metal.
#include "catalog/resolve.h"
#include "drawing/annotation/symbols.h"
#include "drawing/scene/shapes.h"
#include "drawing/side/face_sheet.h"
#include "model/side_geometry.h"

#include <algorithm>
#include <cmath>

namespace toehold::drawing::side {
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

/// A strip along the slope, as far as the sheet shows it: between two plumb distances from the edge.
void add_strip(Scene& scene, const FaceSheet& sheet, Span from_edge, Pen pen, Fill fill, const model::PartId& part) {
    const double low = sheet.shown.low.x, high = sheet.shown.high.x;
    const auto at = [&](double x, double off) { return Point{x, top_edge_in(sheet.shape, sheet.right * x) + off}; };
    scene.items.emplace_back(area({at(low, from_edge.low_in), at(high, from_edge.low_in), at(high, from_edge.high_in),
                                   at(low, from_edge.high_in)},
                                  Pen::none, fill, part));
    for (const double off : {from_edge.low_in, from_edge.high_in})
        scene.items.emplace_back(line(at(low, off), at(high, off), pen, part));
    for (const double x : {low, high}) {
        if (fill != Fill::none) add_break_line(scene, at(x, from_edge.low_in), at(x, from_edge.high_in), part);
    }
}

/// The member's own extent along x, broken where the sheet ends.
void add_level_member(Scene& scene, const FaceSheet& sheet) {
    const model::Member& member = *sheet.shape.member;
    const Box box = sheet.box({member.from_in, member.to_in}, {-sheet.shape.depth_in, 0.0});
    add_broken_rectangle(scene, box, sheet.shown, Pen::outline, Fill::wood_side, member_part(sheet.shape));
    const double piece_in = model::piece_depth_in(member);
    const Box shown = common(box, sheet.shown);
    for (int piece = 1; piece < member.stack && has_area(shown); ++piece)
        scene.items.emplace_back(line(Point{shown.low.x, -piece * piece_in}, {shown.high.x, -piece * piece_in},
                                      Pen::thin, member_part(sheet.shape)));
}

void add_boards(Scene& scene, const FaceSheet& sheet) {
    const auto& decking = sheet.shape.mount.decking;
    if (!decking || !(decking->thickness_in > 0.0)) return;
    constexpr double far_in = model::beyond_any_plate_in;
    add_broken_rectangle(scene, {{-far_in, 0.0}, {far_in, decking->thickness_in}}, sheet.shown, Pen::outline,
                         Fill::decking, {model::PartKind::decking});
}

void add_bracket(Scene& scene, const FaceSheet& sheet, const model::BracketPlate& bracket) {
    const double half = 0.5 * bracket.width_in;
    const Span heights = seat_heights_in(sheet.shape);
    scene.items.emplace_back(
        rectangle(sheet.box({-half, half}, heights), Pen::outline, Fill::plate, {model::PartKind::plate}));
    const Span weld{std::max(heights.low_in, sheet.shape.post_low_in), heights.high_in};
    const double post_half = 0.5 * sheet.shape.post.width_in;
    for (const double side : {-1.0, 1.0}) {
        const Span leg = span(side * post_half, side * (post_half + bracket.weld_leg_in));
        if (bracket.weld_leg_in > 0.0 && weld.low_in < weld.high_in)
            scene.items.emplace_back(rectangle(sheet.box(leg, weld), Pen::thin, Fill::plate, {model::PartKind::weld}));
    }
}

/// The wall lines of a tube, and the gap between twin bars, show as hidden or as edges.
void add_post_lines(Scene& scene, const FaceSheet& sheet, Span heights) {
    const model::Post& post = sheet.subject.detail.post;
    const double half = 0.5 * sheet.shape.post.width_in;
    double inner = 0.0;
    Pen pen = Pen::hidden;
    if (const auto* const bars = std::get_if<model::TwinBars>(&post)) {
        inner = bars->apart == model::PlanAxis::x ? 0.5 * bars->gap_in : 0.0;
        pen = Pen::outline;
    } else if (!model::is_solid(sheet.shape.post) && !std::holds_alternative<model::WoodPost>(post)) {
        inner = half - sheet.shape.post.wall_in;
    }
    for (const double x : {-inner, inner}) {
        if (inner > 0.0)
            scene.items.emplace_back(
                line(Point{x, heights.low_in}, {x, heights.high_in}, pen, {model::PartKind::post}));
    }
}

void add_center_mark(Scene& scene, const Place& center, double radius_in, const model::PartId& part) {
    constexpr double beyond_mm = 2.0;
    for (const Point way : {Point{1.0, 0.0}, Point{0.0, 1.0}}) {
        const auto end = [&](double sign) {
            return Place{{center.at.x + sign * radius_in * way.x, center.at.y + sign * radius_in * way.y},
                         {sign * beyond_mm * way.x, sign * beyond_mm * way.y}};
        };
        scene.items.emplace_back(line(end(-1.0), end(1.0), Pen::thin, part));
    }
}

void add_place(Scene& scene, const FaceSheet& sheet, const Fixing& fixing) {
    constexpr double unknown_mm = 1.2;
    const Place center = standing(sheet.at(fixing.x_in, fixing.z_in));
    const model::PartId part = model::anchor_part(fixing.id);
    if (fixing.anchor == nullptr) {
        scene.items.emplace_back(Circle{center, 0.0, unknown_mm, Pen::outline, Fill::paper, part});
        return add_center_mark(scene, center, 0.0, part);
    }
    const catalog::Anchor& anchor = *fixing.anchor;
    if (anchor.head_plate) {
        const double half_x = 0.5 * anchor.head_plate->width_in, half_z = 0.5 * anchor.head_plate->depth_in;
        scene.items.emplace_back(rectangle(
            sheet.box({fixing.x_in - half_x, fixing.x_in + half_x}, {fixing.z_in - half_z, fixing.z_in + half_z}),
            Pen::outline, Fill::plate, part));
    } else if (anchor.washer) {
        scene.items.emplace_back(
            Circle{center, std::max(0.0, 0.5 * anchor.washer->outside_diameter_in), 0.0, Pen::thin, Fill::plate, part});
    }
    const double radius_in = std::max(0.0, 0.5 * anchor.hole_diameter_in);
    scene.items.emplace_back(Circle{center, radius_in, 0.0, Pen::outline, Fill::paper, part});
    add_center_mark(scene, center, radius_in, part);
}

void add_tie(Scene& scene, const FaceSheet& sheet, const model::TensionTie& tie) {
    constexpr double half_mm = 1.5, off_mm = 0.8, lower_mm = 8.6;
    const Point at = sheet.at(tie.x_in, -tie.below_top_in);
    const model::PartId part = tie_part(tie);
    // One that hangs on a bolt is where that bolt is.
    if (tie.bolt.empty())
        scene.items.emplace_back(rectangle_mm(standing(at), {-half_mm, -half_mm}, {2.0 * half_mm, 2.0 * half_mm},
                                              Pen::outline, Fill::plate, part));
    // Outward, and below the mark of a place at the same height.
    const double side = at.x < 0.0 ? -1.0 : 1.0;
    Text text;
    text.at = standing({side * std::max(std::abs(at.x), seat_half_width_in(sheet.shape)), at.y},
                       {side * (half_mm + off_mm), -lower_mm});
    text.words = tie.id;
    text.bold = true;
    text.across = side > 0.0 ? Across::left : Across::right;
    text.upright = Upright::middle;
    text.on_paper = true;
    text.part = part;
    scene.items.emplace_back(std::move(text));
}

bool ends_at_face(const model::Member& member) { return member.along == model::PlanAxis::y; }

/// A block along the member, against its back.
bool backs(const FaceSheet& sheet, const model::Member& member) {
    constexpr double near_in = 1.0;
    if (member.kind != model::MemberKind::block || !sheet.shape.member) return false;
    const model::SideJoint joint = model::side_joint(sheet.subject.detail);
    const double behind_in = model::to_near_face_in(joint, member) - model::to_far_face_in(joint, *sheet.shape.member);
    return std::abs(behind_in) < near_in;
}

}  // namespace

void add_face_member(Scene& scene, const FaceSheet& sheet) {
    if (sheet.shape.member && sheet.shape.slope == 0.0) add_level_member(scene, sheet);
    if (sheet.shape.member && sheet.shape.slope != 0.0) {
        add_strip(scene, sheet, {-sheet.shape.depth_in, 0.0}, Pen::outline, Fill::wood_side, member_part(sheet.shape));
        if (sheet.shape.cut_away_in > 0.0)
            add_strip(scene, sheet, {sheet.shape.cut_away_in, sheet.shape.cut_away_in}, Pen::hidden, Fill::none,
                      member_part(sheet.shape));
    }
    if (sheet.shape.slope == 0.0) add_boards(scene, sheet);
}

std::vector<Profile> members_behind(const FaceSheet& sheet) {
    std::vector<Profile> all;
    for (const model::Member& member : model::members(sheet.subject.detail.framing)) {
        if (member.id == sheet.shape.mount.member || !(ends_at_face(member) || backs(sheet, member))) continue;
        const double half = 0.5 * member.width_in;
        const Span across = ends_at_face(member) ? Span{member.across_in - half, member.across_in + half}
                                                 : Span{member.from_in, member.to_in};
        const Box box = common(sheet.box(across, {-member.depth_in, 0.0}), sheet.shown);
        if (has_area(box)) all.push_back({member, model::part_of(member), box});
    }
    return all;
}

void add_face_behind(Scene& scene, const FaceSheet& sheet) {
    for (const Profile& one : members_behind(sheet))
        scene.items.emplace_back(rectangle(one.box, Pen::hidden, Fill::none, one.part));
}

void add_face_names(Scene& scene, const FaceSheet& sheet) {
    const Shape& shape = sheet.shape;
    const double low = -shape.depth_in + top_edge_in(shape, sheet.right * sheet.shown.low.x);
    if (shape.member)
        add_name(scene, standing({sheet.shown.low.x, low}, {2.2, 1.0}), shape.member->id, member_part(shape));
    if (!sheet.options.framing) return;
    for (const Profile& one : members_behind(sheet))
        add_name(scene, standing(one.box.low, {0.9, 4.2}), one.member.id, one.part);
}

void add_face_post(Scene& scene, const FaceSheet& sheet) {
    if (sheet.shape.mount.bracket) add_bracket(scene, sheet, *sheet.shape.mount.bracket);
    const double half = 0.5 * sheet.shape.post.width_in, high = sheet.shown.high.y, low = sheet.shape.post_low_in;
    const model::PartId part{model::PartKind::post};
    if (half > 0.0 && low < high) {
        const bool wood = std::holds_alternative<model::WoodPost>(sheet.subject.detail.post);
        const Box box{{-half, low}, {half, high}};
        scene.items.emplace_back(rectangle(box, Pen::none, wood ? Fill::wood_side : Fill::plate, part));
        scene.items.emplace_back(
            stroke_through({{-half, high}, {-half, low}, {half, low}, {half, high}}, Pen::outline, part));
        add_post_lines(scene, sheet, {low, high});
        add_break_line(scene, {-half, high}, {half, high}, part);
    }
    scene.items.emplace_back(
        line(standing({0.0, sheet.shown.low.y}), standing({0.0, high}, {0.0, 2.0}), Pen::center, part));
}

void add_face_places(Scene& scene, const FaceSheet& sheet) {
    for (const Fixing& fixing : sheet.fixings) add_place(scene, sheet, fixing);
    for (const model::TensionTie& tie : sheet.shape.mount.ties) add_tie(scene, sheet, tie);
}

}  // namespace toehold::drawing::side
