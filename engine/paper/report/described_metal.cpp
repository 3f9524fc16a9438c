// Guard, post, weld, plate and anchors.
#include "catalog/anchor_view.h"
#include "format/figures.h"
#include "paper/report/described.h"
#include "paper/weld_words.h"
#include "paper/words.h"
#include "wording/demand.h"

#include <algorithm>

namespace toehold::paper::report {
namespace {

using format::Dimension;
using format::Phrase;
using format::phrase;
using format::Quantity;

Phrase outline_words(const model::Outline& outline) {
    if (const auto* rectangle = std::get_if<model::RectangleOutline>(&outline)) {
        const Dimension width{rectangle->width_in}, depth{rectangle->depth_in};
        return rectangle->corner_radius_in > 0.0
                   ? phrase("{} x {}, corners rounded {}", width, depth, Dimension{rectangle->corner_radius_in})
                   : phrase("{} x {}", width, depth);
    }
    if (const auto* circle = std::get_if<model::CircleOutline>(&outline))
        return phrase("round, {}", Dimension{circle->diameter_in});
    return phrase("outline of {} corners, {} x {} overall", std::get<model::PolygonOutline>(outline).corners.size(),
                  Dimension{model::extent_in(outline, model::PlanAxis::x)},
                  Dimension{model::extent_in(outline, model::PlanAxis::y)});
}

Phrase shape_words(const model::Hole& hole) {
    if (const auto* slot = std::get_if<model::Slot>(&hole.shape)) {
        return phrase("slot {} x {}, its length at {} deg from x", Dimension{slot->length_in},
                      Dimension{slot->width_in}, format::degrees_text(slot->angle_deg));
    }
    return phrase("round hole {}", Dimension{std::get<model::RoundHole>(hole.shape).diameter_in});
}

Phrase shape_word(model::LowerShape shape) {
    switch (shape) {
        case model::LowerShape::angle:
            return phrase("angle");
        case model::LowerShape::channel:
            return phrase("channel");
        case model::LowerShape::plate:
            break;
    }
    return phrase("plate");
}

Phrase with_below(Phrase words, const catalog::Anchor& anchor) {
    if (anchor.washer_below) return phrase("{}, {} below", std::move(words), anchor.washer_below->name);
    if (anchor.lower) {
        return phrase("{}, one {} {} x {} x {} below all of them", std::move(words), shape_word(anchor.lower->shape),
                      Dimension{anchor.lower->width_in}, Dimension{anchor.lower->depth_in},
                      Dimension{anchor.lower->thickness_in});
    }
    if (!anchor.backing) return words;
    return phrase("{}, plate {} x {} x {} below", std::move(words), Dimension{anchor.backing->width_in},
                  Dimension{anchor.backing->depth_in}, Dimension{anchor.backing->thickness_in});
}

/// Under the head.
Phrase with_head(Phrase words, const catalog::Anchor& anchor) {
    if (anchor.head_plate)
        return phrase("{}, plate {} x {} x {} under the head", std::move(words), Dimension{anchor.head_plate->width_in},
                      Dimension{anchor.head_plate->depth_in}, Dimension{anchor.head_plate->thickness_in});
    if (!anchor.washer) return words;
    return catalog::lies_level(anchor) ? phrase("{}, {} under the head", std::move(words), anchor.washer->name)
                                       : phrase("{}, {} on the plate", std::move(words), anchor.washer->name);
}

/// Of an anchor that lies level.
Phrase with_nut(Phrase words, const catalog::Anchor& anchor) {
    if (anchor.washer_below) return phrase("{}, {} under the nut", std::move(words), anchor.washer_below->name);
    if (!anchor.backing) return words;
    return phrase("{}, plate {} x {} x {} under the nut", std::move(words), Dimension{anchor.backing->width_in},
                  Dimension{anchor.backing->depth_in}, Dimension{anchor.backing->thickness_in});
}

Phrase with_seat(Phrase words, const catalog::Resolved& resolved, const catalog::Anchor& anchor) {
    if (!anchor.seat)
        return catalog::lies_level(anchor) ? phrase("{}; in no member", std::move(words))
                                           : phrase("{}; over no framing", std::move(words));
    Phrase member = model::part_name(model::part_of(model::member(resolved.detail.framing, anchor.seat->member)));
    if (anchor.kind == catalog::FastenerKind::through_bolt)
        return phrase("{}; in {}", std::move(words), std::move(member));
    return phrase("{}; in {}, embedded {}, effective thread {}", std::move(words), std::move(member),
                  Quantity{anchor.embedment_in, "in"}, Quantity{anchor.thread_in_block_in, "in"});
}

Phrase anchor_words(const catalog::Resolved& resolved, const catalog::Anchor& anchor) {
    Phrase words = format::verbatim(anchor.name);
    const bool named = anchor.bolt_grade && anchor.name.find(anchor.bolt_grade->name) != std::string::npos;
    if (anchor.bolt_grade && !named) words = phrase("{}, {}", std::move(words), anchor.bolt_grade->name);
    words = with_head(std::move(words), anchor);
    words = catalog::lies_level(anchor) ? with_nut(std::move(words), anchor) : with_below(std::move(words), anchor);
    words = with_seat(std::move(words), resolved, anchor);
    const model::AnchorGroup& group = anchor_groups(resolved.detail).at(anchor.group);
    if (group.preload_lb) words = phrase("{}; preload {}", std::move(words), Quantity{*group.preload_lb, "lb"});
    return group.corrosion_protection.empty() ? phrase("{}; corrosion protection not specified", std::move(words))
                                              : phrase("{}; {}", std::move(words), group.corrosion_protection);
}

Phrase wood_post_words(const catalog::Resolved& resolved, const model::WoodPost& wood) {
    Phrase words = phrase("wood {} x {}", Dimension{wood.width_in}, Dimension{wood.depth_in});
    if (resolved.post_species) words = phrase("{}, {}", std::move(words), resolved.post_species->name);
    if (resolved.post_grade) words = phrase("{} {}", std::move(words), resolved.post_grade->name);
    if (wood.notched) words = phrase("{}, notched at the connection", std::move(words));
    const model::Shoe& shoe = wood.shoe;
    if (!model::is_described(shoe)) return words;
    const Dimension width{shoe.width_in}, depth{shoe.depth_in}, wall{shoe.wall_in}, height{shoe.height_in};
    const std::string& metal = resolved.post_metal.name;
    return shoe.attachment == model::ShoeAttachment::welded
               ? phrase("{}; in a shoe {} x {}, wall {}, {} high, {}, welded to the plate", std::move(words), width,
                        depth, wall, height, metal)
               : phrase("{}; in a shoe {} x {}, wall {}, {} high, {}, bolted to the plate", std::move(words), width,
                        depth, wall, height, metal);
}

}  // namespace

void add_alike(std::vector<Alike>& all, std::string words, std::string id) {
    const auto same = std::find_if(all.begin(), all.end(), [&](const Alike& one) { return one.words == words; });
    if (same == all.end()) {
        all.push_back({std::move(words), {std::move(id)}});
    } else {
        same->ids.push_back(std::move(id));
    }
}

Phrase guard_words(const model::BaseDetail& detail) {
    const model::Guard& guard = detail.guard;
    const double below_in = model::below_surface_in(detail);
    Phrase words = phrase("{} above the walking surface", Dimension{guard.height_in});
    if (below_in > 0.0 && kind(detail.mount) == model::MountKind::plate_on_deck)
        words = phrase("{}, underside of the plate {} below that surface", std::move(words), Dimension{below_in});
    if (below_in > 0.0 && kind(detail.mount) == model::MountKind::side_fastened)
        words = phrase("{}, top of the member {} below that surface", std::move(words), Dimension{below_in});
    if (guard.tributary_length_in)
        words = phrase("{}; takes {} of rail", std::move(words), Dimension{*guard.tributary_length_in});
    if (guard.occupancy == model::Occupancy::limited)
        return phrase("{}; Group I-3, F, H or S, not open to the public, under 50 people", std::move(words));
    return guard.occupancy == model::Occupancy::one_and_two_family
               ? phrase("{}; one- or two-family dwelling", std::move(words))
               : phrase("{}; not a one- or two-family dwelling", std::move(words));
}

Phrase post_words(const catalog::Resolved& resolved) {
    if (const auto* wood = std::get_if<model::WoodPost>(&resolved.detail.post)) return wood_post_words(resolved, *wood);
    const Phrase words = phrase("{}, {}", wording::post(resolved.detail.post), resolved.post_metal.name);
    return model::stub_of(resolved.detail.post) == nullptr ? words
                                                           : phrase("{}; stub of {}", words, foot_metal(resolved).name);
}

Phrase weld_words(const catalog::Resolved& resolved) {
    const auto& weld = on_deck(resolved.detail).weld;
    if (!weld) return phrase("none specified");
    const auto& filler = on_deck(resolved).filler;
    Phrase words =
        words_of_weld(*weld, phrase("{}", Dimension{weld->leg_in}), phrase("{}", Dimension{weld->throat_in}));
    if (filler) words = phrase("{}, {}", std::move(words), filler->name);
    const Phrase gussets = words_of_gussets(*weld);
    return gussets.empty() ? words : phrase("{}; {}", std::move(words), gussets);
}

Phrase plate_words(const catalog::Resolved& resolved) {
    const model::Plate& plate = on_deck(resolved.detail).plate;
    Phrase words = phrase("{}, {} thick, {}", outline_words(plate.outline), Dimension{plate.thickness_in},
                          on_deck(resolved).plate_metal.name);
    if (!plate.id.empty()) words = phrase("{}: {}", plate.id, std::move(words));
    if (const auto& reference = on_deck(resolved.detail).plate_reference) {
        words = reference->sha256.empty()
                    ? phrase("{}. From {}, not pinned", std::move(words), reference->file)
                    : phrase("{}. From {}, pinned by SHA-256 {}", std::move(words), reference->file, reference->sha256);
    }
    return words;
}

std::vector<Alike> holes_alike(const model::Plate& plate, const format::Locale& locale) {
    std::vector<Alike> all;
    for (const model::Hole& hole : plate.holes) add_alike(all, written(shape_words(hole), locale), hole.id);
    return all;
}

std::vector<Alike> anchors_alike(const catalog::Resolved& resolved, const format::Locale& locale) {
    std::vector<Alike> all;
    for (const catalog::Anchor& anchor : resolved.anchors)
        add_alike(all, written(anchor_words(resolved, anchor), locale), anchor.id);
    return all;
}

}  // namespace toehold::paper::report
