#include "drawing/annotation/labels.h"
#include "drawing/annotation/overlay.h"
#include "drawing/drawings.h"
#include "drawing/plan/sheet.h"
#include "drawing/scene/shapes.h"
#include "drawing/side/side_drawings.h"
#include "model/base_detail.h"
#include "model/placement.h"

#include <algorithm>
#include <cmath>

namespace toehold::drawing {
namespace {

std::vector<Point> outline_points(const model::Outline& outline) {
    std::vector<Point> points;
    for (const model::Position& corner : model::polygon(outline)) points.push_back({corner.x_in, corner.y_in});
    return points;
}

Box post_box(const model::Post& post) {
    const PostFoot foot = post_foot(post);
    const Point half{0.5 * std::abs(foot.width_in), 0.5 * std::abs(foot.depth_in)};
    return {{-half.x, -half.y}, half};
}

Box box_of(const model::Member& member) {
    const model::PlanRectangle rectangle = model::plan(member);
    return {{rectangle.x_min_in, rectangle.y_min_in}, {rectangle.x_max_in, rectangle.y_max_in}};
}

/// The plate, and of the framing whole blocks and the members beside them as far as the plate's own size around it.
Box shown_box(const model::Framing& framing, const Box& plate) {
    constexpr double least_in = 4.0, near_in = 1.0, beyond_in = 0.5;
    const Box limit = grown(plate, std::max({least_in, width(plate), height(plate)}));
    Box shown = plate;
    for (const model::Block& block : framing.blocks) {
        model::Framing alone;
        alone.blocks = {block};
        const Box box = box_of(model::members(alone).front());
        if (has_area(common(grown(plate, near_in), box))) shown = around(shown, common(limit, box));
    }
    Box with_holders = shown;
    for (const model::Member& member : model::members(framing)) {
        const Box box = box_of(member);
        if (!has_area(common(grown(shown, near_in), box))) continue;
        const bool along_x = member.along == model::PlanAxis::x;
        const Box across{{along_x ? shown.low.x : box.low.x, along_x ? box.low.y : shown.low.y},
                         {along_x ? shown.high.x : box.high.x, along_x ? box.high.y : shown.high.y}};
        with_holders = around(with_holders, common(limit, across));
    }
    return common(limit, grown(with_holders, beyond_in));
}

}  // namespace

PlanSheet plan_sheet(const Subject& subject, const PlanOptions& options) {
    PlanSheet sheet{subject, options, outline_points(on_deck(subject.detail).plate.outline), {}, {}};
    sheet.plate = around(around(sheet.outline), post_box(subject.detail.post));
    sheet.shown = options.framing ? shown_box(subject.detail.framing, sheet.plate) : sheet.plate;
    return sheet;
}

bool has_marks(const Subject& subject) {
    return subject.overlay != nullptr && subject.overlay->marks && !subject.overlay->anchors.empty();
}

void add_plan_note(Scene& scene, const Box& shown, double up_mm, std::string words) {
    Text note;
    note.at = standing({shown.high.x, shown.low.y}, {0.0, up_mm - scene.margin_mm});
    note.across = Across::right;
    note.words = std::move(words);
    note.size = TextSize::fine;
    note.pen = Pen::dimension;
    scene.items.emplace_back(std::move(note));
}

std::string pull_note(const Subject& subject) {
    const Overlay& overlay = *subject.overlay;
    double largest = 0.0;
    for (const AnchorMark& mark : overlay.anchors) largest = std::max(largest, mark.largest_tension_lb);
    return format::text(format::phrase("Tension under the push shown, stiffness as computed. Largest of all pushes: {}",
                                       force_words(largest, subject.locale.system, overlay.stale)),
                        subject.locale);
}

Scene from_above(const Subject& subject) {
    if (std::holds_alternative<model::SideFastened>(subject.detail.mount)) return side::from_above(subject);
    return {};
}

Scene plan(const Subject& subject, const PlanOptions& options) {
    if (std::holds_alternative<model::SideFastened>(subject.detail.mount)) return side::face(subject, options);
    const PlanSheet sheet = plan_sheet(subject, options);
    Scene scene;
    scene.name = format::text(format::phrase("Plan"), subject.locale);
    scene.bounds = sheet.shown;
    constexpr double around_mm = 19.5, line_mm = 3.2, first_mm = 1.2;
    scene.margin_mm = has_marks(subject) ? around_mm + line_mm : around_mm;
    add_plate_face(scene, sheet);
    add_pressure(scene, sheet);
    if (options.framing) {
        add_framing_below(scene, sheet);
        add_spacers(scene, sheet);
    }
    add_axes(scene, sheet);
    add_plate_edge(scene, sheet);
    add_gussets(scene, sheet);
    add_weld(scene, sheet);
    add_post(scene, sheet);
    add_holes(scene, sheet);
    if (options.dimensions) {
        add_plan_dimensions(scene, sheet);
        add_plan_note(scene, sheet.shown, scene.margin_mm - around_mm + first_mm, unit_note(sheet.subject.locale));
    }
    if (has_marks(subject) && subject.overlay->as_computed)
        add_plan_note(scene, sheet.shown, first_mm, pull_note(subject));
    add_shear_arrows(scene, sheet);
    add_letters(scene, sheet);
    add_push(scene, sheet);
    add_measured(scene, sheet);
    add_pressure_scale(scene, sheet);
    return finished(std::move(scene));
}

}  // namespace toehold::drawing
