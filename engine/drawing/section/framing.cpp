#include "drawing/annotation/symbols.h"
#include "drawing/scene/shapes.h"
#include "drawing/section/sheet.h"
#include "model/base_detail.h"
#include "model/layers.h"

#include <algorithm>

namespace toehold::drawing {
namespace {

void add_name(Scene& scene, const Place& at, const std::string& words, const model::PartId& part) {
    Text text;
    text.at = at;
    text.words = words;
    text.size = TextSize::fine;
    text.pen = Pen::dimension;
    text.part = part;
    scene.items.emplace_back(std::move(text));
}

Fill wood_fill(const Profile& one) {
    if (one.end_grain) return Fill::wood_end;
    return one.cut ? Fill::wood_cut : Fill::wood_side;
}

/// Seams between the pieces of a doubled member cut across its grain.
void add_seams(Scene& scene, const Profile& one, const Box& window) {
    constexpr int most_plies = 8;
    if (!one.end_grain) return;
    for (int ply = 1; ply < std::min(one.member.plies, most_plies); ++ply) {
        const double x = one.box.low.x + model::ply_width_in(one.member) * ply;
        if (x > window.low.x && x < window.high.x)
            scene.items.emplace_back(line(Point{x, one.box.low.y}, {x, one.box.high.y}, Pen::cut, one.part));
    }
}

/// The joints of a stack, which show from the side and across the grain alike.
void add_layer_joints(Scene& scene, const Profile& one, const Box& window) {
    const Box shown = common(one.box, window);
    if (!has_area(shown)) return;
    for (int piece = 1; piece < one.member.stack; ++piece) {
        const double y = one.box.high.y - model::piece_depth_in(one.member) * piece;
        if (y > shown.low.y && y < shown.high.y)
            scene.items.emplace_back(line(Point{shown.low.x, y}, {shown.high.x, y}, Pen::thin, one.part));
    }
}

}  // namespace

void add_framing_behind(Scene& scene, const SectionSheet& sheet) {
    for (const Profile& one : sheet.framing) {
        if (one.cut) continue;
        const Box shown = common(one.box, sheet.shown);
        if (!has_area(shown)) continue;
        add_broken_rectangle(scene, one.box, sheet.shown, Pen::thin, Fill::wood_side, one.part);
        add_layer_joints(scene, one, sheet.shown);
        add_name(scene, standing(shown.low, {1.2, 0.9}), one.member.id, one.part);
    }
}

void add_cut_framing(Scene& scene, const SectionSheet& sheet) {
    for (const Profile& one : sheet.framing) {
        if (!one.cut) continue;
        add_broken_rectangle(scene, one.box, sheet.shown, Pen::cut, wood_fill(one), one.part);
        add_seams(scene, one, sheet.shown);
        add_layer_joints(scene, one, sheet.shown);
    }
}

void add_layers(Scene& scene, const SectionSheet& sheet) {
    const model::Layers& layers = on_deck(sheet.subject.detail).layers;
    const DeckEnds ends = deck_ends(sheet.subject.detail.framing, sheet.plane);
    Box layer{{ends.low_in, 0.0}, {ends.high_in, 0.0}};
    const auto add = [&](double thickness_in, const model::PartId& part) {
        layer.high.y = layer.low.y;
        layer.low.y -= std::max(0.0, thickness_in);
        add_broken_rectangle(scene, layer, sheet.shown, Pen::cut, Fill::decking, part);
    };
    if (layers.decking) add(layers.decking->thickness_in, {model::PartKind::decking});
    for (std::size_t index = 0; index < layers.shims.size(); ++index)
        add(layers.shims[index].thickness_in, model::shim_part(index));
}

}  // namespace toehold::drawing
