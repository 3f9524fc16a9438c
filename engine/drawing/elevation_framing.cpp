#include "drawing/elevation_sheet.h"
#include "drawing/marks/broken.h"
#include "drawing/marks/figures.h"
#include "drawing/marks/shapes.h"
#include "drawing/parts.h"

#include <algorithm>

namespace toehold::drawing {
namespace {

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
    const model::Layers& layers = on_deck(sheet.subject.detail).layers;
    const DeckEnds ends = deck_ends(sheet.subject.detail.framing, {model::PlanAxis::y, 0.0});
    Box layer{{ends.low_in, 0.0}, {ends.high_in, 0.0}};
    const auto add = [&](double thickness_in, const std::string& part) {
        layer.high.y = layer.low.y;
        layer.low.y -= std::max(0.0, thickness_in);
        add_broken_rectangle(scene, layer, sheet.shown, Pen::outline, Fill::decking, part);
    };
    if (layers.decking) add(layers.decking->thickness_in, "decking");
    for (std::size_t index = 0; index < layers.shims.size(); ++index)
        add(layers.shims[index].thickness_in, "shim " + std::to_string(index + 1));
}

void add_joists_note(Scene& scene, const ElevationSheet& sheet) {
    const auto& joists = sheet.subject.detail.framing.joists;
    if (!joists || joists->members.empty()) return;
    const units::System system = sheet.subject.system;
    const double low = -sheet.layers_in - joists->depth_in;
    Text text;
    text.at = standing({sheet.shown.low.x, low}, {2.2, 1.2});
    text.words =
        "joists " + length_figure(joists->width_in, system) + " \u00d7 " + length_figure(joists->depth_in, system);
    text.size = TextSize::fine;
    text.pen = Pen::dimension;
    text.part = "joist " + joists->members.front().id;
    scene.items.emplace_back(std::move(text));
}

}  // namespace

void add_elevation_framing(Scene& scene, const ElevationSheet& sheet) {
    add_members(scene, sheet);
    add_blocks(scene, sheet);
    add_decking(scene, sheet);
    add_joists_note(scene, sheet);
}

}  // namespace toehold::drawing
