#include "drawing/plan/sheet.h"
#include "drawing/scene/shapes.h"
#include "drawing/side/above_sheet.h"
#include "model/placement.h"
#include "paper/site/extent.h"
#include "paper/site/side/side_drawings.h"
#include "paper/site/tape_chain.h"

#include <algorithm>
#include <utility>

namespace toehold::paper::site {
namespace {

namespace side = drawing::side;
using drawing::Box;
using drawing::Measure;
using drawing::Scene;

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

/// Faces of what runs outward, and the post's center line: what a tape runs to.
void add_row(Scene& scene, const side::AboveSheet& sheet, const ChainRow& row) {
    const double edge = sheet.shown.low.y;
    std::vector<double> stops{0.0};
    for (const model::Member& member : model::members(sheet.subject.detail.framing)) {
        if (member.along != model::PlanAxis::y) continue;
        const double half = 0.5 * member.width_in;
        const double near = member.across_in < 0.0 ? member.across_in + half : member.across_in - half;
        if (near > sheet.shown.low.x && near < sheet.shown.high.x) stops.push_back(near);
    }
    std::vector<drawing::DimensionEnd> ends;
    for (const double at : drawing::distinct(std::move(stops))) ends.push_back({at, edge});
    add_tape_chain(scene, {Measure::across, false, edge, std::move(ends)}, row);
}

void add_names(Scene& scene, const side::AboveSheet& sheet, double mm_per_in) {
    Taken taken(mm_per_in);
    taken.take_texts(scene);
    taken.take({{sheet.post.low.x * mm_per_in, sheet.post.low.y * mm_per_in},
                {sheet.post.high.x * mm_per_in, sheet.post.high.y * mm_per_in}});
    for (const model::TensionTie& tie : sheet.shape.mount.ties) {
        const drawing::Place end = drawing::standing(side::tie_end(sheet, tie));
        taken.add_where_free(scene, label(tie.id, side::tie_part(tie)),
                             {drawing::moved_mm(end, 4.0, 0.0), drawing::moved_mm(end, -8.0, 0.0)});
    }
    for (const model::Member& member : model::members(sheet.subject.detail.framing)) {
        const model::PlanRectangle plan = model::plan(member);
        const Box shown =
            drawing::common({{plan.x_min_in, plan.y_min_in}, {plan.x_max_in, plan.y_max_in}}, sheet.shown);
        if (!drawing::has_area(shown)) continue;
        std::vector<drawing::Place> places;
        for (const double share : {0.12, 0.3, 0.7, 0.88, 0.5}) {
            const bool along_x = member.along == model::PlanAxis::x;
            const double x = along_x ? share : 0.5, y = along_x ? 0.5 : share;
            places.push_back(
                drawing::standing({shown.low.x + x * drawing::width(shown), shown.low.y + y * drawing::height(shown)}));
        }
        taken.add_where_free(scene, label(member.id, model::part_of(member)), places);
    }
}

}  // namespace

Scene joint_from_above(const SiteSubject& subject, double mm_per_in) {
    const drawing::Subject drawn{subject.resolved.detail, &subject.resolved, nullptr, subject.locale};
    const side::AboveSheet sheet = side::above_sheet(drawn);
    const drawing::PlanOptions options;
    Scene scene;
    scene.name = "From above";
    scene.bounds = sheet.shown;
    side::add_above_members(scene, sheet);
    side::add_above_between(scene, sheet);
    drawing::add_post(scene, {drawn, options, {}, sheet.post, sheet.shown});
    side::add_above_fasteners(scene, sheet);
    side::add_above_ties(scene, sheet);
    add_row(scene, sheet, {1.2, mm_per_in, subject.locale.system});
    add_names(scene, sheet, mm_per_in);
    std::stable_partition(scene.items.begin(), scene.items.end(),
                          [](const drawing::Item& item) { return !std::holds_alternative<drawing::Text>(item); });
    return scene;
}

format::Phrase joint_from_above_caption(const SiteSubject& subject) {
    return subject.locale.system == units::System::si
               ? format::phrase("From above, boards off; outward is up. Millimeters.")
               : format::phrase("From above, boards off; outward is up. Inches.");
}

}  // namespace toehold::paper::site
