// What comes with each post: the post, its plate, what is under the wood, anchors, washers, packing.
#include "drawing/annotation/labels.h"
#include "model/mount.h"
#include "paper/bill/collect.h"
#include "paper/shop/shop_notes.h"
#include "search/score/metal_pieces.h"

#include <fmt/format.h>

#include <cmath>
#include <set>

namespace toehold::paper::bill {
namespace {

using drawing::length_figure;
using drawing::length_words;
using format::Phrase;
using format::phrase;

Phrase outline_words(const model::Outline& outline, double thickness_in, units::System system) {
    const std::string thick = length_words(thickness_in, system);
    if (const auto* const circle = std::get_if<model::CircleOutline>(&outline))
        return phrase("⌀ {} x {}", length_figure(circle->diameter_in, system), thick);
    if (const auto* const rectangle = std::get_if<model::RectangleOutline>(&outline))
        return format::verbatim(fmt::format("{} x {} x {}", length_figure(rectangle->width_in, system),
                                            length_figure(rectangle->depth_in, system), thick));
    return phrase("cut to a polygon, {}", thick);
}

/// Of metal and wood alike: what stands above the plate, or reaches down past the member's face.
double post_length_in(const catalog::Resolved& resolved) {
    const double above_in = lever_height_in(resolved.detail);
    if (const auto* const side = std::get_if<model::SideFastened>(&resolved.detail.mount))
        return above_in + side->post_bottom_below_top_in;
    return above_in - on_deck(resolved.detail).plate.thickness_in;
}

void add_shaft(Collected& all, const catalog::Resolved& resolved, const std::string& mark, units::System system) {
    BillItem item{BillKind::post, shop::post_words(resolved, system), {}, 1, post_length_in(resolved), {}, {mark}};
    const auto* const wood = std::get_if<model::WoodPost>(&resolved.detail.post);
    if (wood != nullptr) {
        BillItem shoe = item;
        shoe.length_in.reset();
        if (model::is_described(wood->shoe)) all.add(shoe);
        const std::string figures =
            fmt::format("{} x {}", length_figure(wood->width_in, system), length_words(wood->depth_in, system));
        item.name = wood->size.empty() ? phrase("Wood post {}", figures) : phrase("Wood post {}", wood->size);
        if (resolved.post_species && resolved.post_grade)
            item.material = phrase("{} {}", resolved.post_species->name, resolved.post_grade->name);
    }
    all.add(std::move(item));
}

void add_plate(Collected& all, const catalog::Resolved& resolved, const std::string& mark, double weight_lb,
               units::System system) {
    const model::Plate& plate = on_deck(resolved.detail).plate;
    const Phrase size = outline_words(plate.outline, plate.thickness_in, system);
    const Phrase name = plate.id.empty() ? phrase("Base plate {}", size) : phrase("Base plate {}: {}", plate.id, size);
    all.add({BillKind::plate, name, format::verbatim(on_deck(resolved).plate_metal.name), 1, {}, weight_lb, {mark}});
}

/// Empty without one.
void add_bracket(Collected& all, const catalog::Resolved& resolved, const std::string& mark,
                 const std::vector<search::CutPiece>& pieces, units::System system) {
    const auto& bracket = on_side(resolved.detail).bracket;
    if (!bracket) return;
    const auto& metal = on_side(resolved).bracket_metal;
    all.add({BillKind::bracket,
             phrase("Bracket plate {} x {} x {}", length_figure(bracket->width_in, system),
                    length_figure(bracket->height_in, system), length_words(bracket->thickness_in, system)),
             format::verbatim(metal ? metal->name : bracket->metal),
             1,
             {},
             pieces.front().weight_lb,
             {mark}});
}

/// Hardware by its report.
void add_ties(Collected& all, const model::SideFastened& mount, const std::string& mark) {
    for (const model::TensionTie& tie : mount.ties)
        all.add({BillKind::connector,
                 tie.chosen ? phrase("{}, report {}", tie.name, tie.report)
                            : phrase("{}: NOT CHOSEN YET, the values are the least its report must give", tie.name),
                 {},
                 1,
                 {},
                 {},
                 {mark}});
}

Phrase lower_words(const model::LowerPlate& plate, units::System system) {
    const std::string face =
        fmt::format("{} x {} x {}", length_figure(plate.width_in, system), length_figure(plate.depth_in, system),
                    length_words(plate.thickness_in, system));
    switch (plate.shape) {
        case model::LowerShape::plate:
            break;
        case model::LowerShape::angle:
            return phrase("Angle {}, leg {}", face, length_words(plate.leg_in, system));
        case model::LowerShape::channel:
            return phrase("Channel {}, flanges {}", face, length_words(plate.leg_in, system));
    }
    return phrase("Plate under the bolts {}", face);
}

/// In the order of `search::cut_pieces`, whose weights they take.
void add_under_the_wood(Collected& all, const catalog::Resolved& resolved, const std::string& mark,
                        const std::vector<search::CutPiece>& pieces, units::System system) {
    const auto* const side = std::get_if<model::SideFastened>(&resolved.detail.mount);
    std::size_t next = side != nullptr && !side->bracket ? 0 : 1;
    std::set<std::size_t> groups;
    const auto add = [&](Phrase name, const catalog::Metal& metal) {
        all.add({side != nullptr ? BillKind::bolt_plate : BillKind::backing,
                 std::move(name),
                 format::verbatim(metal.name),
                 1,
                 {},
                 pieces.at(next++).weight_lb,
                 {mark}});
    };
    for (const catalog::Anchor& anchor : resolved.anchors) {
        if (anchor.head_plate && anchor.head_plate_metal) {
            const model::BackingPlate& plate = *anchor.head_plate;
            add(phrase("Plate under the head {} x {} x {}", length_figure(plate.width_in, system),
                       length_figure(plate.depth_in, system), length_words(plate.thickness_in, system)),
                *anchor.head_plate_metal);
        }
        if (!anchor.backing_metal) continue;
        if (anchor.backing) {
            const model::BackingPlate& plate = *anchor.backing;
            add(phrase("Backing plate {} x {} x {}", length_figure(plate.width_in, system),
                       length_figure(plate.depth_in, system), length_words(plate.thickness_in, system)),
                *anchor.backing_metal);
        }
        if (anchor.lower && groups.insert(anchor.group).second)
            add(lower_words(*anchor.lower, system), *anchor.backing_metal);
    }
}

/// As screws are sold; a bolt of no stated length reaches through what it joins and its nut, to the next 1/2 in
/// (common practice).
std::optional<double> anchor_length_in(const catalog::Resolved& resolved, const catalog::Anchor& anchor) {
    const double length_in = search::anchor_length_in(resolved, anchor);
    const bool stated = anchor.kind != catalog::FastenerKind::through_bolt || (anchor.bolt && anchor.bolt->length_in);
    if (!(length_in > 0.0)) return std::nullopt;
    return stated ? length_in : std::ceil(2.0 * length_in - 1e-9) / 2.0;
}

void add_anchors(Collected& all, const catalog::Resolved& resolved, const std::string& mark) {
    for (const catalog::Anchor& anchor : resolved.anchors) {
        const model::AnchorGroup& group = anchor_groups(resolved.detail).at(anchor.group);
        const std::string& coating = group.corrosion_protection;
        const Phrase protection = coating.empty() ? phrase("protection not specified") : format::verbatim(coating);
        const bool bolt = anchor.kind == catalog::FastenerKind::through_bolt;
        all.add({BillKind::anchor,
                 bolt ? phrase("{}, with nut", anchor.name) : format::verbatim(anchor.name),
                 protection,
                 1,
                 anchor_length_in(resolved, anchor),
                 {},
                 {mark}});
        for (const catalog::WasherSize& washer : search::washers_of(anchor))
            all.add({BillKind::washer, format::verbatim(washer.name), protection, 1, {}, {}, {mark}});
    }
}

void add_packing(Collected& all, const catalog::Resolved& resolved, const std::string& mark, units::System system) {
    const model::Layers& layers = on_deck(resolved.detail).layers;
    if (!layers.packing || !layers.decking) return;
    const model::Packing& packing = *layers.packing;
    const std::string high = length_words(layers.decking->thickness_in, system);
    const std::string wide = length_figure(packing.width_in, system);
    Phrase name = packing.shape == model::PackingShape::round
                      ? phrase("Packing ⌀ {} x {} high", wide, high)
                      : phrase("Packing {} x {} x {} high", wide, length_figure(packing.depth_in, system), high);
    const auto& material = on_deck(resolved).packing;
    all.add({BillKind::packing,
             std::move(name),
             format::verbatim(material ? material->name : packing.material),
             model::packing_places(resolved.detail).size(),
             {},
             {},
             {mark}});
}

}  // namespace

void add_post(Collected& all, const review::ResolvedPost& post, units::System system) {
    const catalog::Resolved& resolved = post.resolved;
    const std::string& mark = post.post.id;
    const std::vector<search::CutPiece> pieces = search::cut_pieces(resolved);
    add_shaft(all, resolved, mark, system);
    const auto* const side = std::get_if<model::SideFastened>(&resolved.detail.mount);
    if (side == nullptr) {
        add_plate(all, resolved, mark, pieces.front().weight_lb, system);
    } else {
        add_bracket(all, resolved, mark, pieces, system);
    }
    add_under_the_wood(all, resolved, mark, pieces, system);
    add_anchors(all, resolved, mark);
    if (side == nullptr) add_packing(all, resolved, mark, system);
    if (side != nullptr) add_ties(all, *side, mark);
}

}  // namespace toehold::paper::bill
