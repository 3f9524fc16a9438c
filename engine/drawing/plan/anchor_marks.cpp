#include "drawing/annotation/force_bar.h"
#include "drawing/annotation/labels.h"
#include "drawing/annotation/symbols.h"
#include "drawing/plan/sheet.h"
#include "drawing/scene/shapes.h"
#include "format/figures.h"
#include "model/base_detail.h"
#include "model/plate.h"

#include <algorithm>
#include <cmath>

namespace toehold::drawing {
namespace {

constexpr double off_hole_mm = 1.6;

const AnchorMark* mark_of(const Subject& subject, const std::string& id) {
    if (!has_marks(subject)) return nullptr;
    const auto& marks = subject.overlay->anchors;
    const auto found =
        std::find_if(marks.begin(), marks.end(), [&](const AnchorMark& one) { return one.part.id == id; });
    return found == marks.end() ? nullptr : &*found;
}

/// Marks stand outward of their hole, so that the plate's middle stays free for the post and the pressure.
MarkPlace mark_place(const Subject& subject, const model::Hole& hole) {
    const double side = hole.center.x_in < 0.0 ? -1.0 : 1.0;
    const double reach = covered_radius_in(subject, hole);
    return {standing({hole.center.x_in + side * reach, hole.center.y_in}, {side * off_hole_mm, 0.0}), side};
}

/// A letter alone stands inward of its hole, off the plate's edge.
MarkPlace letter_place(const Subject& subject, const model::Hole& hole) {
    const double side = hole.center.x_in < 0.0 ? 1.0 : -1.0;
    const double reach = covered_radius_in(subject, hole);
    return {standing({hole.center.x_in + side * reach, hole.center.y_in}, {side * 0.8, 0.0}), side};
}

Text words_beside(const MarkPlace& place, double out_mm, double up_mm, std::string words, const model::PartId& part) {
    Text text;
    text.at = moved_mm(place.at, place.side * out_mm, up_mm);
    text.words = std::move(words);
    text.size = TextSize::small;
    text.across = place.side > 0.0 ? Across::left : Across::right;
    text.upright = Upright::middle;
    text.on_paper = true;
    text.part = part;
    return text;
}

void add_plain_letter(Scene& scene, const MarkPlace& place, const std::string& id) {
    Text text = words_beside(place, 0.0, 2.0, id, model::anchor_part(id));
    text.size = TextSize::normal;
    text.bold = true;
    text.on_paper = false;
    scene.items.emplace_back(std::move(text));
}

std::string ratio_words(const AnchorMark& mark, const Overlay& overlay) {
    std::string words = mark.ratio ? format::ratio_text(*mark.ratio) : std::string("?");
    if (mark.status == checks::Status::no_path) words = format::text(format::phrase("no load path"), overlay.locale);
    if (mark.status == checks::Status::missing_evidence)
        words = format::text(format::phrase("not specified"), overlay.locale);
    return words_of_today(words, overlay.stale);
}

void add_mark(Scene& scene, const Subject& subject, const MarkPlace& place, const AnchorMark& mark) {
    constexpr double frame_low_mm = 2.4, frame_gap_mm = 1.2, bar_low_mm = -1.6, words_mm = -4.3;
    const bool stale = subject.overlay->stale;
    const model::PartId& part = mark.part;
    const double width_mm = frame_width_mm(part.id);
    const Place low = moved_mm(place.at, place.side > 0.0 ? 0.0 : -width_mm, frame_low_mm);
    add_framed(scene, low, part.id, stale ? Pen::thin : frame_pen(mark.status), part);
    Text ratio = words_beside(place, width_mm + frame_gap_mm, frame_low_mm + 0.5 * frame_height_mm,
                              ratio_words(mark, *subject.overlay), part);
    ratio.bold = !stale;
    if (stale) ratio.pen = Pen::dimension;
    if (mark.status) scene.items.emplace_back(std::move(ratio));
    add_force_bar(scene, moved_mm(place.at, 0.0, bar_low_mm), place.side > 0.0, mark, bar_scale(*subject.overlay),
                  stale);
    Text pull = words_beside(place, 0.0, words_mm,
                             mark.tension_lb ? force_words(*mark.tension_lb, subject.overlay->locale.system, stale)
                                             : format::text(format::phrase("no hand value"), subject.overlay->locale),
                             part);
    pull.pen = stale ? Pen::dimension : Pen::demand;
    scene.items.emplace_back(std::move(pull));
}

}  // namespace

void add_letter_or_mark(Scene& scene, const Subject& subject, const std::string& id, const MarkPlace& mark_at,
                        const MarkPlace& letter_at) {
    const AnchorMark* const mark = mark_of(subject, id);
    if (mark == nullptr) {
        add_plain_letter(scene, letter_at, id);
    } else {
        add_mark(scene, subject, mark_at, *mark);
    }
}

void add_letters(Scene& scene, const PlanSheet& sheet) {
    for (const model::Hole& hole : on_deck(sheet.subject.detail).plate.holes)
        add_letter_or_mark(scene, sheet.subject, hole.id, mark_place(sheet.subject, hole),
                           letter_place(sheet.subject, hole));
}

void add_shear_arrow(Scene& scene, const Subject& subject, const std::string& id, const Place& from, double right) {
    constexpr double longest_mm = 5.5, shortest_mm = 2.5;
    const AnchorMark* const mark = mark_of(subject, id);
    if (mark == nullptr) return;
    double largest_lb = 0.0;
    for (const AnchorMark& one : subject.overlay->anchors) largest_lb = std::max(largest_lb, one.shear_lb);
    if (!(mark->shear_lb > 1e-6 * largest_lb)) return;
    const double length_mm = std::max(shortest_mm, longest_mm * mark->shear_lb / largest_lb);
    const Point along{right * std::cos(mark->shear_direction_rad), std::sin(mark->shear_direction_rad)};
    ArrowStyle style;
    style.pen = subject.overlay->stale ? Pen::thin : Pen::demand;
    style.fill = subject.overlay->stale ? Fill::demand_pale : Fill::demand;
    style.head_mm = 2.0;
    style.head_width_mm = 1.5;
    style.part = model::anchor_part(id);
    add_arrow(scene, from, moved_mm(from, length_mm * along.x, length_mm * along.y), along, style);
}

void add_shear_arrows(Scene& scene, const PlanSheet& sheet) {
    for (const model::Hole& hole : on_deck(sheet.subject.detail).plate.holes)
        add_shear_arrow(scene, sheet.subject, hole.id, standing({hole.center.x_in, hole.center.y_in}));
}

}  // namespace toehold::drawing
