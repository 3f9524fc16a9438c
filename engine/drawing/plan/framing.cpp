#include "drawing/plan/sheet.h"
#include "drawing/scene/shapes.h"
#include "model/base_detail.h"
#include "model/placement.h"

#include <algorithm>
#include <cmath>

namespace toehold::drawing {
namespace {

bool along_x(const model::Member& member) { return member.along == model::PlanAxis::x; }

/// A side of the member, a coordinate across it, as far as the sheet shows it.
Path side(const model::Member& member, double across_in, double from_in, double to_in, Pen pen) {
    if (along_x(member)) return line(Point{from_in, across_in}, {to_in, across_in}, pen, model::part_of(member));
    return line(Point{across_in, from_in}, {across_in, to_in}, pen, model::part_of(member));
}

Path end(const model::Member& member, double at_in, double low_in, double high_in) {
    if (along_x(member)) return line(Point{at_in, low_in}, {at_in, high_in}, Pen::hidden, model::part_of(member));
    return line(Point{low_in, at_in}, {high_in, at_in}, Pen::hidden, model::part_of(member));
}

void add_label(Scene& scene, Point at, const std::string& words, const model::PartId& part) {
    Text text;
    text.at = standing(at, {1.1, 0.9});
    text.words = words;
    text.size = TextSize::fine;
    text.pen = Pen::dimension;
    text.on_paper = true;
    text.part = part;
    scene.items.emplace_back(std::move(text));
}

/// Seams of a doubled member; a file can ask for any number of plies.
void add_seams(Scene& scene, const model::Member& member, double low_in, double from_in, double to_in) {
    constexpr int most_plies = 8;
    for (int ply = 1; ply < std::min(member.plies, most_plies); ++ply) {
        scene.items.emplace_back(side(member, low_in + model::ply_width_in(member) * ply, from_in, to_in, Pen::hidden));
    }
}

void add_member(Scene& scene, const model::Member& member, const Box& shown) {
    const double half = 0.5 * member.width_in;
    const double low = member.across_in - half, high = member.across_in + half;
    const double shown_low = along_x(member) ? shown.low.y : shown.low.x;
    const double shown_high = along_x(member) ? shown.high.y : shown.high.x;
    const double shown_from = along_x(member) ? shown.low.x : shown.low.y;
    const double shown_to = along_x(member) ? shown.high.x : shown.high.y;
    const double from = std::max(member.from_in, shown_from), to = std::min(member.to_in, shown_to);
    if (high < shown_low || low > shown_high || !(from < to)) return;
    for (const double across : {low, high}) {
        if (across >= shown_low && across <= shown_high)
            scene.items.emplace_back(side(member, across, from, to, Pen::hidden));
    }
    const double visible_low = std::max(low, shown_low), visible_high = std::min(high, shown_high);
    for (const double at : {member.from_in, member.to_in}) {
        if (at >= shown_from && at <= shown_to) scene.items.emplace_back(end(member, at, visible_low, visible_high));
    }
    add_seams(scene, member, low, from, to);
    const Point corner = along_x(member) ? Point{from, visible_low} : Point{visible_low, from};
    add_label(scene, corner, member.id, model::part_of(member));
}

void add_support(Scene& scene, const model::JoistSupport& support, model::PlanAxis joists_along, const Box& shown) {
    const bool across_y = joists_along == model::PlanAxis::y;
    const double shown_low = across_y ? shown.low.y : shown.low.x, shown_high = across_y ? shown.high.y : shown.high.x;
    const model::PartId part = model::part_of(support);
    const double half = support.kind == model::JoistSupport::Kind::beam ? 0.5 * support.bearing_in : 0.0;
    for (const double at : {support.at_in - half, support.at_in + half}) {
        if (at < shown_low || at > shown_high) continue;
        scene.items.emplace_back(across_y ? line(Point{shown.low.x, at}, {shown.high.x, at}, Pen::hidden, part)
                                          : line(Point{at, shown.low.y}, {at, shown.high.y}, Pen::hidden, part));
        if (at > support.at_in || half == 0.0) continue;
        const Text label{
            across_y ? standing({shown.high.x, at}, {-1.1, 0.9}) : standing({at, shown.high.y}, {1.1, -0.9}),
            support.id,
            TextSize::fine,
            across_y ? Across::right : Across::left,
            across_y ? Upright::bottom : Upright::top,
            0.0,
            Pen::dimension,
            false,
            false,
            true,
            part};
        scene.items.emplace_back(label);
    }
}

}  // namespace

void add_framing_below(Scene& scene, const PlanSheet& sheet) {
    const model::Framing& framing = sheet.subject.detail.framing;
    if (framing.joists) {
        for (const model::JoistSupport& support : framing.supports)
            add_support(scene, support, framing.joists->along, sheet.shown);
    }
    for (const model::Member& member : model::members(framing)) add_member(scene, member, sheet.shown);
}

}  // namespace toehold::drawing
