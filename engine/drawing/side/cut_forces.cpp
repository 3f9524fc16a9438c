// Forces on the section: each fastener's pull, what the face presses, and the push at the post's broken top.
#include "drawing/annotation/labels.h"
#include "drawing/annotation/overlay.h"
#include "drawing/annotation/symbols.h"
#include "drawing/elevation/sheet.h"
#include "drawing/scene/shapes.h"
#include "drawing/side/cut_sheet.h"
#include "format/figures.h"

#include <algorithm>
#include <cmath>

namespace toehold::drawing::side {
namespace {

Text demand_words(const Place& at, std::string words, const Overlay& overlay, const model::PartId& part) {
    Text text;
    text.at = at;
    text.words = std::move(words);
    text.size = TextSize::small;
    text.pen = overlay.stale ? Pen::dimension : Pen::demand;
    text.on_paper = true;
    text.part = part;
    return text;
}

ArrowStyle style_of(const Overlay& overlay, const model::PartId& part) {
    ArrowStyle style;
    style.part = part;
    if (overlay.stale) {
        style.pen = Pen::thin;
        style.fill = Fill::demand_pale;
    }
    return style;
}

bool has_pulls(const CutSheet& sheet) {
    const Overlay* const overlay = sheet.subject.overlay;
    return overlay != nullptr && overlay->marks && !overlay->anchors.empty();
}

double largest_pull_lb(const Overlay& overlay) {
    double largest = 0.0;
    for (const AnchorMark& mark : overlay.anchors)
        largest = std::max({largest, mark.largest_tension_lb, mark.tension_lb.value_or(0.0)});
    for (const double tie : overlay.ties_lb) largest = std::max(largest, tie);
    return largest;
}

/// `2 × 1,900 lb`, or one after the other where they differ.
std::string pull_words(const std::vector<double>& pulls_lb, const Overlay& overlay) {
    std::vector<std::string> all;
    all.reserve(pulls_lb.size());
    for (const double pull_lb : pulls_lb) all.push_back(force_words(pull_lb, overlay.locale.system, overlay.stale));
    if (std::all_of(all.begin(), all.end(), [&](const std::string& one) { return one == all.front(); }))
        return all.size() == 1 ? all.front() : std::to_string(all.size()) + " \u00d7 " + all.front();
    std::string words;
    for (const std::string& one : all) words += (words.empty() ? "" : ", ") + one;
    return words;
}

/// Away from the member, from where the pulls take hold; as long as the largest of them says.
void add_pull(Scene& scene, const CutSheet& sheet, Point from, const std::vector<double>& pulls_lb,
              const model::PartId& part) {
    constexpr double start_mm = 1.2, shortest_mm = 3.5, longest_mm = 8.0, words_mm = 1.0;
    const Overlay& overlay = *sheet.subject.overlay;
    const double pull_lb = *std::max_element(pulls_lb.begin(), pulls_lb.end());
    const double out = sheet.post_side(), share = std::min(1.0, pull_lb / largest_pull_lb(overlay));
    const double length_mm = shortest_mm + (longest_mm - shortest_mm) * share;
    const Place tail = standing(from, {out * start_mm, 0.0}), tip = moved_mm(tail, out * length_mm, 0.0);
    add_arrow(scene, tail, tip, {out, 0.0}, style_of(overlay, part));
    Text words = demand_words(moved_mm(tip, out * words_mm, 0.0), pull_words(pulls_lb, overlay), overlay, part);
    words.across = out > 0.0 ? Across::left : Across::right;
    words.upright = Upright::middle;
    scene.items.emplace_back(std::move(words));
}

const AnchorMark* mark_of(const Overlay& overlay, const std::string& id) {
    const auto found = std::find_if(overlay.anchors.begin(), overlay.anchors.end(),
                                    [&](const AnchorMark& one) { return one.part.id == id; });
    return found == overlay.anchors.end() ? nullptr : &*found;
}

/// Over the names of the ties at one height, at their end.
void add_tie_pulls(Scene& scene, const CutSheet& sheet, const TieLevel& level, double least_lb) {
    constexpr double over_name_mm = 3.6;
    const Overlay& overlay = *sheet.subject.overlay;
    const model::TensionTie& tie = sheet.shape.mount.ties.at(level.ties.front());
    std::vector<double> pulls_lb;
    for (const std::size_t index : level.ties) {
        if (index < overlay.ties_lb.size() && overlay.ties_lb[index] > least_lb)
            pulls_lb.push_back(overlay.ties_lb[index]);
    }
    if (pulls_lb.empty()) return;
    Text words = demand_words(standing(tie_corner(sheet, tie), {0.0, over_name_mm}), pull_words(pulls_lb, overlay),
                              overlay, level.ties.size() == 1 ? tie_part(tie) : model::PartId{});
    words.across = sheet.shape.towards_y > 0.0 ? Across::right : Across::left;
    scene.items.emplace_back(std::move(words));
}

}  // namespace

double forces_reach_in(const CutSheet& sheet) {
    constexpr double arrow_and_words_in = 5.5;
    return has_pulls(sheet) ? arrow_and_words_in : 0.0;
}

void add_cut_pulls(Scene& scene, const CutSheet& sheet) {
    if (!has_pulls(sheet)) return;
    constexpr double next_to_nothing = 1e-3;
    const Overlay& overlay = *sheet.subject.overlay;
    const double least_lb = next_to_nothing * largest_pull_lb(overlay);
    for (const Level& level : levels(sheet)) {
        std::vector<double> pulls_lb;
        model::PartId part;
        for (const Fixing& fixing : level.fixings) {
            const AnchorMark* const mark = mark_of(overlay, fixing.id);
            if (mark == nullptr || !mark->tension_lb || !(*mark->tension_lb > least_lb)) continue;
            part = pulls_lb.empty() ? mark->part : model::PartId{};
            pulls_lb.push_back(*mark->tension_lb);
        }
        if (!pulls_lb.empty()) add_pull(scene, sheet, {level.out_y_in, level.z_in}, pulls_lb, part);
    }
    for (const TieLevel& level : tie_levels(sheet)) add_tie_pulls(scene, sheet, level, least_lb);
}

void add_cut_bearing(Scene& scene, const CutSheet& sheet) {
    const Overlay* const overlay = sheet.subject.overlay;
    if (overlay == nullptr || !overlay->pressure) return;
    constexpr double deepest_mm = 9.0, words_mm = 1.0;
    double largest = 0.0;
    for (const FaceBearing& one : overlay->bearings) largest = std::max(largest, one.peak_psi);
    const double into = sheet.shape.towards_y, face = sheet.shape.member_face_in;
    for (const FaceBearing& one : overlay->bearings) {
        if (!(one.peak_psi > 0.0) || one.peak_z_in == one.end_z_in) continue;
        const Place peak = standing({face, one.peak_z_in});
        const Place deep = moved_mm(peak, into * deepest_mm * one.peak_psi / largest, 0.0);
        const Place end = standing({face, one.end_z_in});
        scene.items.emplace_back(Path{{{peak, deep, end}}, true, Pen::none, Fill::demand_pale, one.part});
        if (!overlay->stale)
            scene.items.emplace_back(Path{{{peak, deep, end}}, false, Pen::demand, Fill::none, one.part});
        Text words = demand_words(
            moved_mm(deep, into * words_mm, 0.0),
            words_of_today(format::figure_text(one.peak_psi, "psi", overlay->locale.system), overlay->stale), *overlay,
            one.part);
        words.across = into > 0.0 ? Across::left : Across::right;
        words.upright = one.peak_z_in > one.end_z_in ? Upright::top : Upright::bottom;
        scene.items.emplace_back(std::move(words));
    }
}

void add_cut_push(Scene& scene, const CutSheet& sheet) {
    const Overlay* const overlay = sheet.subject.overlay;
    if (overlay == nullptr || !overlay->push) return;
    constexpr double below_top_in = 0.8, along_the_rail = 1e-6, shaft_mm = 16.0;
    const double side = std::sin(overlay->push->direction_rad) < -along_the_rail ? -1.0 : 1.0;
    add_push_at(scene, {0.5 * sheet.shape.post.depth_in, sheet.shown.high.y - below_top_in, side, shaft_mm}, *overlay);
}

}  // namespace toehold::drawing::side
