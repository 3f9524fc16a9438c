#include "drawing/annotation/symbols.h"
#include "drawing/plan/sheet.h"
#include "drawing/scene/shapes.h"
#include "model/placement.h"
#include "paper/site/extent.h"
#include "paper/site/side/side_drawings.h"
#include "paper/site/site_drawings.h"
#include "paper/site/tape_chain.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace toehold::paper::site {
namespace {

using drawing::Box;
using drawing::Fill;
using drawing::Pen;
using drawing::Point;
using drawing::Scene;

struct PlanView {
    const SiteSubject& subject;
    double mm_per_in = 0.0;
    Box plate, post;
    std::vector<model::Member> members = {};  ///< those near the plate
    Box shown = {};
};

Box box_of(const model::Member& member) {
    const model::PlanRectangle rectangle = model::plan(member);
    return {{rectangle.x_min_in, rectangle.y_min_in}, {rectangle.x_max_in, rectangle.y_max_in}};
}

bool runs_along_x(const model::Member& member) { return member.along == model::PlanAxis::x; }

Box plate_box(const model::BaseDetail& detail) {
    std::vector<Point> corners;
    for (const model::Position& corner : model::polygon(on_deck(detail).plate.outline))
        corners.push_back({corner.x_in, corner.y_in});
    return drawing::around(corners);
}

Box post_box(const model::Post& post) {
    const drawing::PostFoot foot = drawing::post_foot(post);
    return {{-0.5 * foot.width_in, -0.5 * foot.depth_in}, {0.5 * foot.width_in, 0.5 * foot.depth_in}};
}

/// Whole blocks, then what stands beside them across its width, and a rim near enough to hook a tape to.
Box shown_box(const model::Framing& framing, const Box& plate) {
    constexpr double near_plate_in = 6.0, near_rim_in = 8.0, touching_in = 0.5, beyond_in = 0.6;
    Box blocks = plate;
    for (const model::Member& member : model::members(framing)) {
        if (member.kind != model::MemberKind::block) continue;
        const Box box = box_of(member);
        if (drawing::has_area(drawing::common(drawing::grown(plate, near_plate_in), box)))
            blocks = drawing::around(blocks, box);
    }
    Box shown = blocks;
    for (const model::Member& member : model::members(framing)) {
        const double near_in = member.kind == model::MemberKind::rim ? near_rim_in : touching_in + near_plate_in;
        const Box box = box_of(member);
        if (!drawing::has_area(drawing::common(drawing::grown(blocks, near_in), box))) continue;
        const bool along_x = runs_along_x(member);
        shown = drawing::around(shown, {{along_x ? shown.low.x : box.low.x, along_x ? box.low.y : shown.low.y},
                                        {along_x ? shown.high.x : box.high.x, along_x ? box.high.y : shown.high.y}});
    }
    return drawing::grown(shown, beyond_in);
}

PlanView plan_view(const SiteSubject& subject, double mm_per_in) {
    const model::BaseDetail& detail = subject.resolved.detail;
    PlanView view{subject, mm_per_in, plate_box(detail), post_box(detail.post)};
    view.shown = shown_box(detail.framing, drawing::around(view.plate, view.post));
    for (const model::Member& member : model::members(detail.framing)) {
        if (drawing::has_area(drawing::common(box_of(member), view.shown))) view.members.push_back(member);
    }
    return view;
}

void add_member(Scene& scene, const PlanView& view, const model::Member& member) {
    const bool block = member.kind == model::MemberKind::block;
    const model::PartId part = model::part_of(member);
    drawing::add_broken_rectangle(scene, box_of(member), view.shown, block ? Pen::cut : Pen::outline,
                                  block ? Fill::wood_cut : Fill::wood_side, part);
    const Box box = box_of(member), shown = drawing::common(box, view.shown);
    constexpr int most_plies = 8;
    for (int ply = 1; ply < std::min(member.plies, most_plies); ++ply) {
        const double in = model::ply_width_in(member) * ply;
        scene.items.emplace_back(
            runs_along_x(member)
                ? drawing::line(Point{shown.low.x, box.low.y + in}, {shown.high.x, box.low.y + in}, Pen::holds, part)
                : drawing::line(Point{box.low.x + in, shown.low.y}, {box.low.x + in, shown.high.y}, Pen::holds, part));
    }
}

void add_base(Scene& scene, const PlanView& view) {
    const model::BaseDetail& detail = view.subject.resolved.detail;
    std::vector<Point> outline;
    for (const model::Position& corner : model::polygon(on_deck(detail).plate.outline))
        outline.push_back({corner.x_in, corner.y_in});
    if (!outline.empty())
        scene.items.emplace_back(drawing::area(outline, Pen::hidden, Fill::none, {model::PartKind::plate}));
    if (drawing::has_area(view.post))
        scene.items.emplace_back(drawing::rectangle(view.post, Pen::hidden, Fill::none, {model::PartKind::post}));
    constexpr double cross_mm = 1.8;
    for (const model::Hole& hole : on_deck(detail).plate.holes) {
        const drawing::Place center = drawing::standing({hole.center.x_in, hole.center.y_in});
        const double radius_in = 0.5 * drawing::across_in(hole);
        const model::PartId part = model::anchor_part(hole.id);
        scene.items.emplace_back(drawing::Circle{center, std::max(0.0, radius_in), 0.0, Pen::cut, Fill::paper, part});
        const double reach_mm = radius_in * view.mm_per_in + cross_mm;
        scene.items.emplace_back(drawing::line(drawing::moved_mm(center, -reach_mm, 0.0),
                                               drawing::moved_mm(center, reach_mm, 0.0), Pen::holds, part));
        scene.items.emplace_back(drawing::line(drawing::moved_mm(center, 0.0, -reach_mm),
                                               drawing::moved_mm(center, 0.0, reach_mm), Pen::holds, part));
    }
}

struct Faces {
    std::vector<double> x_in, y_in;
};

void add_within(std::vector<double>& faces, double at_in, double low_in, double high_in) {
    if (at_in >= low_in && at_in <= high_in) faces.push_back(at_in);
}

/// Faces of everything, and the ends of blocks: what a tape is hooked to and runs to.
Faces framing_faces(const PlanView& view) {
    Faces faces;
    for (const model::Member& member : view.members) {
        const Box box = box_of(member);
        const bool block = member.kind == model::MemberKind::block;
        for (const double at_in : {box.low.x, box.high.x}) {
            if (block || !runs_along_x(member)) add_within(faces.x_in, at_in, view.shown.low.x, view.shown.high.x);
        }
        for (const double at_in : {box.low.y, box.high.y}) {
            if (block || runs_along_x(member)) add_within(faces.y_in, at_in, view.shown.low.y, view.shown.high.y);
        }
    }
    faces.x_in = drawing::distinct(std::move(faces.x_in));
    faces.y_in = drawing::distinct(std::move(faces.y_in));
    return faces;
}

/// Along the blocks: from the first end of one to the last, since how thick a joist is helps nobody to place a block.
std::vector<double> between_blocks(const PlanView& view, const std::vector<double>& faces_in, bool along_x) {
    constexpr double gap_in = 0.3;
    std::vector<double> ends_in;
    for (const model::Member& member : view.members) {
        if (member.kind != model::MemberKind::block || runs_along_x(member) != along_x) continue;
        ends_in.push_back(member.from_in);
        ends_in.push_back(member.to_in);
    }
    if (ends_in.empty()) return faces_in;
    const double low = *std::min_element(ends_in.begin(), ends_in.end()) - gap_in;
    const double high = *std::max_element(ends_in.begin(), ends_in.end()) + gap_in;
    std::vector<double> kept;
    for (const double face_in : faces_in) add_within(kept, face_in, low, high);
    return kept;
}

/// The anchors' lines between the nearest faces on both sides; between the plate's edges where there are none.
std::vector<double> anchor_stops(std::vector<double> anchors_in, const std::vector<double>& faces_in,
                                 double plate_low_in, double plate_high_in) {
    anchors_in = drawing::distinct(std::move(anchors_in));
    if (anchors_in.empty()) return drawing::distinct({plate_low_in, plate_high_in});
    const double first = anchors_in.front(), last = anchors_in.back();
    double low = plate_low_in, high = plate_high_in;
    bool low_found = false;
    for (const double face : faces_in) {
        if (face < first) {
            low = face;
            low_found = true;
        }
    }
    const auto above = std::find_if(faces_in.begin(), faces_in.end(), [&](double face) { return face > last; });
    const bool high_found = above != faces_in.end();
    if (high_found) high = *above;
    std::vector<double> stops = anchors_in;
    if (low_found || low < first) stops.push_back(low);
    if (high_found || high > last) stops.push_back(high);
    return drawing::distinct(std::move(stops));
}

/// Without what no tape tells apart.
std::vector<drawing::DimensionEnd> ends(const std::vector<double>& stops_in, double feature_in) {
    constexpr double least_in = 1.0 / 16.0;
    std::vector<drawing::DimensionEnd> result;
    for (const double at_in : stops_in) {
        if (result.empty() || at_in - result.back().at_in > 0.99 * least_in) result.push_back({at_in, feature_in});
    }
    return result;
}

/// A line of holes begins its extension at the hole nearest to the row.
std::vector<drawing::DimensionEnd> anchor_ends(const PlanView& view, const std::vector<double>& stops_in, bool along_x,
                                               bool from_high) {
    constexpr double same_in = 1e-3;
    const double edge_in = along_x ? view.shown.low.y : (from_high ? view.shown.high.x : view.shown.low.x);
    std::vector<drawing::DimensionEnd> result = ends(stops_in, edge_in);
    for (drawing::DimensionEnd& end : result) {
        bool found = false;
        for (const model::Hole& hole : on_deck(view.subject.resolved.detail).plate.holes) {
            const double at_in = along_x ? hole.center.x_in : hole.center.y_in;
            const double aside_in = along_x ? hole.center.y_in : hole.center.x_in;
            if (std::abs(at_in - end.at_in) > same_in) continue;
            const bool nearer = from_high ? aside_in > end.feature_in : aside_in < end.feature_in;
            if (!found || nearer) end.feature_in = aside_in;
            found = true;
        }
    }
    return result;
}

void add_dimensions(Scene& scene, const PlanView& view) {
    constexpr double first_mm = 1.2, between_mm = 1.0;
    const Faces faces = framing_faces(view);
    std::vector<double> holes_x, holes_y;
    for (const model::Hole& hole : on_deck(view.subject.resolved.detail).plate.holes) {
        holes_x.push_back(hole.center.x_in);
        holes_y.push_back(hole.center.y_in);
    }
    const units::System system = view.subject.locale.system;
    const double below_mm = add_tape_chain(scene,
                                           {drawing::Measure::across, false, view.shown.low.y,
                                            ends(between_blocks(view, faces.x_in, true), view.shown.low.y)},
                                           {first_mm, view.mm_per_in, system});
    const auto stops_x = anchor_stops(holes_x, faces.x_in, view.plate.low.x, view.plate.high.x);
    add_tape_chain(scene, {drawing::Measure::across, false, view.shown.low.y, anchor_ends(view, stops_x, true, false)},
                   {below_mm + between_mm, view.mm_per_in, system});
    add_tape_chain(scene, {drawing::Measure::upright, false, view.shown.low.x, ends(faces.y_in, view.shown.low.x)},
                   {first_mm, view.mm_per_in, system});
    std::vector<double> stops_y = drawing::distinct(std::move(holes_y));
    add_within(stops_y, view.plate.high.y, view.shown.low.y, view.shown.high.y);
    if (!faces.y_in.empty()) stops_y.push_back(faces.y_in.back());
    add_tape_chain(scene,
                   {drawing::Measure::upright, true, view.shown.high.x,
                    anchor_ends(view, drawing::distinct(std::move(stops_y)), false, true)},
                   {first_mm, view.mm_per_in, system});
}

drawing::Text label(std::string words, model::PartId part) {
    drawing::Text text;
    text.words = std::move(words);
    text.bold = true;
    text.across = drawing::Across::middle;
    text.upright = drawing::Upright::middle;
    text.on_paper = true;
    text.part = std::move(part);
    return text;
}

void add_anchor_letters(Scene& scene, const PlanView& view, Taken& taken) {
    constexpr double off_mm = 2.3;
    for (const model::Hole& hole : on_deck(view.subject.resolved.detail).plate.holes) {
        const double away_mm = 0.5 * drawing::across_in(hole) * view.mm_per_in + off_mm;
        std::vector<drawing::Place> places;
        for (const double reach : {1.0, 1.6}) {
            for (const Point way : {Point{1, 1}, {-1, 1}, {1, -1}, {-1, -1}, {1.3, 0}, {-1.3, 0}, {0, 1.3}, {0, -1.3}})
                places.push_back({{hole.center.x_in, hole.center.y_in},
                                  {reach * away_mm * way.x * 0.85, reach * away_mm * way.y * 0.85}});
        }
        taken.add_where_free(scene, label(hole.id, model::anchor_part(hole.id)), places);
    }
}

void add_member_letters(Scene& scene, const PlanView& view, Taken& taken) {
    for (const model::Member& member : view.members) {
        const Box shown = drawing::common(box_of(member), view.shown);
        std::vector<drawing::Place> places;
        for (const double aside : {0.5, 0.25, 0.75}) {
            for (const double share : {0.5, 0.35, 0.65, 0.2, 0.8, 0.1, 0.9}) {
                // Joists and rims are named near an end, out of the way of what hangs between them.
                const double along = member.kind == model::MemberKind::block ? share : std::fmod(share + 0.4, 1.0);
                const double x = runs_along_x(member) ? along : aside, y = runs_along_x(member) ? aside : along;
                places.push_back(drawing::standing(
                    {shown.low.x + x * drawing::width(shown), shown.low.y + y * drawing::height(shown)}));
            }
        }
        taken.add_where_free(scene, label(member.id, model::part_of(member)), places);
    }
}

void add_outward(Scene& scene, const PlanView& view) {
    const std::string word = format::text(format::phrase("OUTWARD"), view.subject.locale);
    drawing::Text text = label("▲ " + word + " ▲", {});
    text.upright = drawing::Upright::bottom;
    text.at = {{drawing::middle(view.shown).x, view.shown.high.y}, {0.0, 1.6}};
    scene.items.emplace_back(std::move(text));
}

}  // namespace

Scene framing_plan(const SiteSubject& subject, double mm_per_in) {
    if (is_on_a_side(subject)) return joint_face(subject, mm_per_in);
    const PlanView view = plan_view(subject, mm_per_in);
    Scene scene;
    scene.name = "Under the boards";
    scene.bounds = view.shown;
    for (const bool blocks : {false, true}) {
        for (const model::Member& member : view.members) {
            if ((member.kind == model::MemberKind::block) == blocks) add_member(scene, view, member);
        }
    }
    add_base(scene, view);
    add_dimensions(scene, view);
    add_outward(scene, view);
    Taken taken(mm_per_in);
    taken.take_texts(scene);
    for (const model::Hole& hole : on_deck(subject.resolved.detail).plate.holes) {
        const Point center{hole.center.x_in * mm_per_in, hole.center.y_in * mm_per_in};
        taken.take(drawing::grown({center, center}, 0.5 * drawing::across_in(hole) * mm_per_in));
    }
    add_anchor_letters(scene, view, taken);
    add_member_letters(scene, view, taken);
    std::stable_partition(scene.items.begin(), scene.items.end(),
                          [](const drawing::Item& item) { return !std::holds_alternative<drawing::Text>(item); });
    return scene;
}

format::Phrase framing_plan_caption(const SiteSubject& subject) {
    if (is_on_a_side(subject)) return joint_face_caption(subject);
    return subject.locale.system == units::System::si
               ? format::phrase("From above, boards off; plate dashed. Millimeters.")
               : format::phrase("From above, boards off; plate dashed. Inches.");
}

}  // namespace toehold::paper::site
