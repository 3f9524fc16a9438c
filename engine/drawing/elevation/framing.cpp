#include "drawing/annotation/labels.h"
#include "drawing/annotation/symbols.h"
#include "drawing/elevation/sheet.h"
#include "drawing/scene/shapes.h"
#include "drawing/side/shape.h"
#include "model/base_detail.h"
#include "model/layers.h"

#include <algorithm>
#include <cmath>

namespace toehold::drawing {
namespace {

using format::phrase;

void add_members(Scene& scene, const ElevationSheet& sheet) {
    for (const Profile& one : sheet.framing) {
        if (one.member.kind == model::MemberKind::block) continue;
        add_broken_rectangle(scene, one.box, sheet.shown, Pen::outline,
                             one.end_grain ? Fill::wood_end : Fill::wood_side, one.part);
    }
}

/// Blocks stand behind the joists: hidden edges, so that one sees what holds the base.
void add_blocks(Scene& scene, const ElevationSheet& sheet) {
    const bool hidden = sheet.subject.detail.framing.joists.has_value();
    for (const Profile& one : sheet.framing) {
        if (one.member.kind != model::MemberKind::block) continue;
        const Box shown = common(one.box, sheet.shown);
        if (!has_area(shown)) continue;
        const Fill fill = one.end_grain ? Fill::wood_end : Fill::wood_side;
        scene.items.emplace_back(
            rectangle(shown, hidden ? Pen::hidden : Pen::outline, hidden ? Fill::none : fill, one.part));
    }
}

void add_decking(Scene& scene, const ElevationSheet& sheet) {
    const auto* const plate = std::get_if<model::PlateOnDeck>(&sheet.subject.detail.mount);
    const model::Decking* const boards = model::deck_boards(sheet.subject.detail);
    DeckEnds ends = deck_ends(sheet.subject.detail.framing, {model::PlanAxis::y, 0.0});
    if (plate == nullptr)
        ends.high_in = std::min(ends.high_in, side::outward_face_in(side::shape(sheet.subject.detail)));
    // Under a plate the layers begin at z = 0; beside a post on a side the boards end there.
    const double top = plate == nullptr && boards != nullptr ? std::max(0.0, boards->thickness_in) : 0.0;
    Box layer{{ends.low_in, top}, {ends.high_in, top}};
    const auto add = [&](double thickness_in, const model::PartId& part) {
        layer.high.y = layer.low.y;
        layer.low.y -= std::max(0.0, thickness_in);
        add_broken_rectangle(scene, layer, sheet.shown, Pen::outline, Fill::decking, part);
    };
    if (boards != nullptr) add(boards->thickness_in, {model::PartKind::decking});
    if (plate == nullptr) return;
    for (std::size_t index = 0; index < plate->layers.shims.size(); ++index)
        add(plate->layers.shims[index].thickness_in, model::shim_part(index));
}

void add_joists_note(Scene& scene, const ElevationSheet& sheet) {
    const auto& joists = sheet.subject.detail.framing.joists;
    if (!joists || joists->members.empty()) return;
    const units::System system = sheet.subject.locale.system;
    const double low = -sheet.layers_in - joists->depth_in;
    Text text;
    text.at = standing({sheet.shown.low.x, low}, {2.2, 1.2});
    text.words = format::text(
        phrase("joists {} \u00d7 {}", length_figure(joists->width_in, system), length_figure(joists->depth_in, system)),
        sheet.subject.locale);
    text.size = TextSize::fine;
    text.pen = Pen::dimension;
    text.part = {model::PartKind::joist, joists->members.front().id};
    scene.items.emplace_back(std::move(text));
}

}  // namespace

void add_elevation_framing(Scene& scene, const ElevationSheet& sheet) {
    add_members(scene, sheet);
    add_blocks(scene, sheet);
    add_decking(scene, sheet);
    add_joists_note(scene, sheet);
}

namespace {

constexpr double below_in = 2.2;  ///< of a beam, which goes on downward: its depth is not described

void add_name(Scene& scene, const Place& at, const std::string& words, Across across, const model::PartId& part) {
    Text text;
    text.at = at;
    text.words = words;
    text.size = TextSize::fine;
    text.across = across;
    text.upright = Upright::top;
    text.on_paper = true;
    text.part = part;
    scene.items.emplace_back(std::move(text));
}

void add_beam(Scene& scene, const ElevationSheet& sheet, const model::JoistSupport& support, double joist_low) {
    const model::PartId part = model::part_of(support);
    const double half = 0.5 * std::max(0.5, support.bearing_in), low = joist_low - below_in;
    const Box box{{support.at_in - half, low}, {support.at_in + half, joist_low}};
    scene.items.emplace_back(rectangle(box, Pen::none, Fill::wood_end, part));
    scene.items.emplace_back(line(box.low, {box.low.x, box.high.y}, Pen::outline, part));
    scene.items.emplace_back(line(Point{box.high.x, box.low.y}, box.high, Pen::outline, part));
    add_break_line(scene, box.low, {box.high.x, box.low.y}, part);
    add_name(scene, standing({support.at_in, low}, {0.0, -1.6}),
             format::text(model::part_name(part), sheet.subject.locale), Across::middle, part);
}

/// A face with the strokes of something that does not move behind it.
void add_ledger(Scene& scene, const ElevationSheet& sheet, const model::JoistSupport& support, double low) {
    const model::PartId part = model::part_of(support);
    const double top = -sheet.layers_in;
    constexpr int strokes = 6;
    constexpr double stroke_mm = 2.0;
    scene.items.emplace_back(line(Point{support.at_in, low}, {support.at_in, top}, Pen::cut, part));
    for (int index = 0; index <= strokes; ++index) {
        const Place from = standing({support.at_in, low + (top - low) * index / strokes});
        scene.items.emplace_back(line(from, moved_mm(from, -stroke_mm, -stroke_mm), Pen::thin, part));
    }
    add_name(scene, standing({support.at_in, low}, {0.0, -1.6}),
             format::text(model::part_name(part), sheet.subject.locale), Across::middle, part);
}

/// Supports off the sheet are named at the break, with how far they stand from the post.
void add_far_support(Scene& scene, const ElevationSheet& sheet, const model::JoistSupport& support, double line_mm) {
    const bool left = support.at_in < sheet.shown.low.x;
    const format::Locale& locale = sheet.subject.locale;
    const model::PartId part = model::part_of(support);
    const std::string words = format::text(
        phrase("{0} at {1}", model::part_name(part), length_figure(std::abs(support.at_in), locale.system)), locale);
    add_name(scene,
             standing({left ? sheet.shown.low.x : sheet.shown.high.x, sheet.shown.low.y}, {0.0, -10.0 - line_mm}),
             left ? "\u2190 " + words : words + " \u2192", left ? Across::left : Across::right, part);
}

}  // namespace

void add_elevation_supports(Scene& scene, const ElevationSheet& sheet) {
    const model::Framing& framing = sheet.subject.detail.framing;
    if (!framing.joists || framing.joists->along != model::PlanAxis::y) return;
    const double low = -sheet.layers_in - std::max(0.0, framing.joists->depth_in);
    double line_mm = 0.0;
    for (const model::JoistSupport& support : framing.supports) {
        if (support.at_in < sheet.shown.low.x || support.at_in > sheet.shown.high.x) {
            add_far_support(scene, sheet, support, line_mm);
            line_mm += 3.2;
        } else if (support.kind == model::JoistSupport::Kind::beam) {
            add_beam(scene, sheet, support, low);
        } else {
            add_ledger(scene, sheet, support, low);
        }
    }
}

}  // namespace toehold::drawing
