#include "drawing/annotation/labels.h"
#include "drawing/annotation/overlay.h"
#include "drawing/annotation/plate_field.h"
#include "drawing/annotation/symbols.h"
#include "drawing/scene/shapes.h"
#include "drawing/section/sheet.h"
#include "format/figures.h"
#include "model/base_detail.h"

#include <algorithm>
#include <cmath>

namespace toehold::drawing {
namespace {

const Overlay* overlay_of(const SectionSheet& sheet) { return sheet.subject.overlay; }

const AnchorMark* mark_of(const Overlay& overlay, const std::string& id) {
    const auto found = std::find_if(overlay.anchors.begin(), overlay.anchors.end(),
                                    [&](const AnchorMark& one) { return one.part.id == id; });
    return found == overlay.anchors.end() ? nullptr : &*found;
}

Text demand_words(const Place& at, std::string words, bool stale, const model::PartId& part) {
    Text text;
    text.at = at;
    text.words = std::move(words);
    text.size = TextSize::small;
    text.across = Across::middle;
    text.pen = stale ? Pen::dimension : Pen::demand;
    text.on_paper = true;
    text.part = part;
    return text;
}

void add_pull(Scene& scene, const SectionSheet& sheet, const CutHole& hole, const AnchorMark& mark, double largest_lb) {
    constexpr double start_mm = 1.2, shortest_mm = 5.0, longest_mm = 15.0;
    const Overlay& overlay = *overlay_of(sheet);
    const model::PartId part = model::anchor_part(hole.id);
    const double plate = on_deck(sheet.subject.detail).plate.thickness_in;
    const double top = hole.anchor != nullptr ? stations(sheet, *hole.anchor).head_top_in : plate;
    const Place tail = standing({hole.at_in, top}, {0.0, start_mm});
    const double length_mm = shortest_mm + (longest_mm - shortest_mm) * std::min(1.0, *mark.tension_lb / largest_lb);
    const Place tip = moved_mm(tail, 0.0, length_mm);
    ArrowStyle style;
    style.part = part;
    if (overlay.stale) {
        style.pen = Pen::thin;
        style.fill = Fill::demand_pale;
    }
    add_arrow(scene, tail, tip, {0.0, 1.0}, style);
    scene.items.emplace_back(demand_words(moved_mm(tip, 0.0, 1.0),
                                          force_words(*mark.tension_lb, overlay.locale.system, overlay.stale),
                                          overlay.stale, part));
}

}  // namespace

void add_pulls(Scene& scene, const SectionSheet& sheet) {
    const Overlay* const overlay = overlay_of(sheet);
    if (overlay == nullptr || !overlay->marks) return;
    double largest_lb = 0.0;
    for (const AnchorMark& mark : overlay->anchors)
        largest_lb = std::max({largest_lb, mark.largest_tension_lb, mark.tension_lb.value_or(0.0)});
    constexpr double next_to_nothing = 1e-3;
    for (const CutHole& hole : sheet.holes) {
        const AnchorMark* const mark = mark_of(*overlay, hole.id);
        if (mark != nullptr && mark->tension_lb && *mark->tension_lb > next_to_nothing * largest_lb)
            add_pull(scene, sheet, hole, *mark, largest_lb);
    }
}

namespace {

/// Beside the plate's edge that the pressure is nearer to.
void add_bearing_words(Scene& scene, const SectionSheet& sheet, const CutEnd& peak) {
    if (sheet.plate.empty()) return;
    const Overlay& overlay = *overlay_of(sheet);
    const double low = sheet.plate.front().low_in, high = sheet.plate.back().high_in;
    const bool right = peak.along_in >= 0.5 * (low + high);
    const std::string words = format::figure_text(peak.pressure_psi, "psi", overlay.locale.system);
    Text text = demand_words(standing({right ? high : low, 0.0}, {right ? 1.5 : -1.5, 0.8}),
                             words_of_today(words, overlay.stale), overlay.stale, {});
    text.across = right ? Across::left : Across::right;
    scene.items.emplace_back(std::move(text));
}

}  // namespace

void add_bearing(Scene& scene, const SectionSheet& sheet) {
    const Overlay* const overlay = overlay_of(sheet);
    if (overlay == nullptr || !overlay->pressure || !overlay->field) return;
    const double largest = largest_psi(*overlay->field);
    if (!(largest > 0.0)) return;
    constexpr double deepest_mm = 9.0, next_to_nothing = 0.02;
    Path below{{}, true, Pen::none, Fill::demand_pale, {}}, edge{{}, false, Pen::demand, Fill::none, {}};
    CutEnd peak;
    for (const auto& [from, to] : field_cut(*overlay->field, sheet.plane)) {
        if (!(from.pressure_psi > 0.0) && !(to.pressure_psi > 0.0)) continue;
        const auto under = [&](const CutEnd& end) {
            return standing({end.along_in, 0.0}, {0.0, -deepest_mm * end.pressure_psi / largest});
        };
        below.contours.push_back(
            {standing({from.along_in, 0.0}), standing({to.along_in, 0.0}), under(to), under(from)});
        edge.contours.push_back({under(from), under(to)});
        for (const CutEnd& end : {from, to}) {
            if (end.pressure_psi > peak.pressure_psi) peak = end;
        }
    }
    if (!(peak.pressure_psi > next_to_nothing * largest)) return;
    scene.items.emplace_back(std::move(below));
    if (!overlay->stale) scene.items.emplace_back(std::move(edge));
    add_bearing_words(scene, sheet, peak);
}

void add_bent_plate(Scene& scene, const SectionSheet& sheet) {
    const Overlay* const overlay = overlay_of(sheet);
    if (overlay == nullptr || !overlay->bent || !overlay->field) return;
    const double factor = exaggeration(*overlay->field), thick = on_deck(sheet.subject.detail).plate.thickness_in;
    Path faces{{}, false, overlay->stale ? Pen::thin : Pen::demand, Fill::none, {model::PartKind::plate}};
    for (const auto& [from, to] : field_cut(*overlay->field, sheet.plane)) {
        for (const double face : {0.0, thick}) {
            faces.contours.push_back({standing({from.along_in, face + factor * from.lift_in}),
                                      standing({to.along_in, face + factor * to.lift_in})});
        }
    }
    if (faces.contours.empty()) return;
    scene.items.emplace_back(std::move(faces));
    Text words = demand_words(
        standing(sheet.shown.high, {0.0, 1.5}),
        format::text(format::phrase("plate's deflection \u00d7 {}", format::number_text(factor)), overlay->locale),
        overlay->stale, {model::PartKind::plate});
    words.across = Across::right;
    scene.items.emplace_back(std::move(words));
}

}  // namespace toehold::drawing
