// Guard, post, weld, plate and anchors.
#include "format/figures.h"
#include "paper/report/blocks.h"
#include "paper/report/described.h"

#include <fmt/format.h>

#include <algorithm>

namespace toehold::paper::report {
namespace {

using units::System;

std::string sides(double width_in, double depth_in, System system) {
    return length(width_in, system) + " x " + length(depth_in, system);
}

std::string outline_words(const model::Outline& outline, System system) {
    if (const auto* rectangle = std::get_if<model::RectangleOutline>(&outline)) {
        std::string words = sides(rectangle->width_in, rectangle->depth_in, system);
        if (rectangle->corner_radius_in > 0.0)
            words += ", corners rounded " + length(rectangle->corner_radius_in, system);
        return words;
    }
    if (const auto* circle = std::get_if<model::CircleOutline>(&outline))
        return "round, " + length(circle->diameter_in, system);
    return fmt::format(
        "outline of {} corners, {} over all", std::get<model::PolygonOutline>(outline).corners.size(),
        sides(model::extent_in(outline, model::PlanAxis::x), model::extent_in(outline, model::PlanAxis::y), system));
}

std::string shape_words(const model::Hole& hole, System system) {
    if (const auto* slot = std::get_if<model::Slot>(&hole.shape)) {
        return fmt::format("slot {}, its length at {} deg from x", sides(slot->length_in, slot->width_in, system),
                           format::degrees_text(slot->angle_deg));
    }
    return "round hole " + length(std::get<model::RoundHole>(hole.shape).diameter_in, system);
}

void add(std::vector<Alike>& all, std::string words, const std::string& id) {
    const auto same = std::find_if(all.begin(), all.end(), [&](const Alike& one) { return one.words == words; });
    if (same == all.end()) {
        all.push_back({std::move(words), {id}});
    } else {
        same->ids.push_back(id);
    }
}

std::string below_words(const catalog::Anchor& anchor, System system) {
    if (anchor.washer_below) return ", " + anchor.washer_below->name + " below";
    if (!anchor.backing) return {};
    return fmt::format(", plate {} x {} below", sides(anchor.backing->width_in, anchor.backing->depth_in, system),
                       length(anchor.backing->thickness_in, system));
}

std::string anchor_words(const catalog::Resolved& resolved, const catalog::Anchor& anchor, System system) {
    std::string words = anchor.name;
    if (anchor.bolt_grade) words += ", " + anchor.bolt_grade->name;
    if (anchor.washer) words += ", " + anchor.washer->name + " on the plate";
    words += below_words(anchor, system);
    if (!anchor.seat) {
        words += "; over no framing";
    } else {
        words += "; in " + model::subject(model::member(resolved.detail.framing, anchor.seat->member));
        if (anchor.kind != catalog::FastenerKind::through_bolt) {
            words += ", embedded " + figure(anchor.embedment_in, "in", system) + ", thread that holds " +
                     figure(anchor.thread_in_block_in, "in", system);
        }
    }
    const model::AnchorGroup& group = anchor_groups(resolved.detail).at(anchor.group);
    if (group.preload_lb) words += "; preload " + figure(*group.preload_lb, "lb", system);
    words += "; " + (group.corrosion_protection.empty() ? std::string("protection against corrosion not stated")
                                                        : group.corrosion_protection);
    return words;
}

}  // namespace

std::string guard_words(const model::BaseDetail& detail, System system) {
    const model::Guard& guard = detail.guard;
    const double below_in = model::below_surface_in(detail);
    std::string words = length(guard.height_in, system) + " above the walking surface";
    if (below_in > 0.0) words += ", plate's underside " + length(below_in, system) + " below that surface";
    return words + (guard.occupancy == model::Occupancy::one_and_two_family ? "; one- or two-family dwelling"
                                                                            : "; not a one- or two-family dwelling");
}

std::string post_words(const catalog::Resolved& resolved, System system) {
    if (const auto* tube = std::get_if<model::RectangularTube>(&resolved.detail.post)) {
        return fmt::format("tube {}, wall {}, {}", sides(tube->width_in, tube->depth_in, system),
                           length(tube->wall_in, system), resolved.post_metal.name);
    }
    if (const auto* tube = std::get_if<model::RoundTube>(&resolved.detail.post)) {
        return fmt::format("round tube {}, wall {}, {}", length(tube->diameter_in, system),
                           length(tube->wall_in, system), resolved.post_metal.name);
    }
    const auto& wood = std::get<model::WoodPost>(resolved.detail.post);
    std::string words = "wood " + sides(wood.width_in, wood.depth_in, system);
    if (resolved.post_species) words += ", " + resolved.post_species->name;
    if (resolved.post_grade) words += " " + resolved.post_grade->name;
    if (wood.notched) words += ", notched at the connection";
    return words + fmt::format("; in a shoe {}, wall {}, {} high, {}, {} to the plate",
                               sides(wood.shoe.width_in, wood.shoe.depth_in, system), length(wood.shoe.wall_in, system),
                               length(wood.shoe.height_in, system), resolved.post_metal.name,
                               wood.shoe.attachment == model::ShoeAttachment::welded ? "welded" : "bolted");
}

std::string weld_words(const catalog::Resolved& resolved, System system) {
    if (!on_deck(resolved.detail).weld) return "none described";
    std::string words = length(on_deck(resolved.detail).weld->leg_in, system) + " fillet all round the foot";
    return on_deck(resolved).filler ? words + ", " + on_deck(resolved).filler->name : words;
}

std::string plate_words(const catalog::Resolved& resolved, System system) {
    const model::Plate& plate = on_deck(resolved.detail).plate;
    std::string words =
        fmt::format("{}{}, {} thick, {}", plate.id.empty() ? "" : plate.id + ": ", outline_words(plate.outline, system),
                    length(plate.thickness_in, system), on_deck(resolved).plate_metal.name);
    if (const auto& reference = on_deck(resolved.detail).plate_reference) {
        words += ". From " + reference->file;
        words += reference->sha256.empty() ? ", not pinned" : ", pinned by SHA-256 " + reference->sha256;
    }
    return words;
}

std::vector<Alike> holes_alike(const model::Plate& plate, System system) {
    std::vector<Alike> all;
    for (const model::Hole& hole : plate.holes) add(all, shape_words(hole, system), hole.id);
    return all;
}

std::vector<Alike> anchors_alike(const catalog::Resolved& resolved, System system) {
    std::vector<Alike> all;
    for (const catalog::Anchor& anchor : resolved.anchors) add(all, anchor_words(resolved, anchor, system), anchor.id);
    return all;
}

}  // namespace toehold::paper::report
