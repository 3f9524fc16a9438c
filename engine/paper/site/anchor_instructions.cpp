#include "drawing/annotation/labels.h"
#include "model/member.h"
#include "paper/site/instructions.h"
#include "paper/site/wording.h"
#include "paper/words.h"
#include "resistance/wood/lead_hole.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <optional>

namespace toehold::paper::site {
namespace {

using catalog::Anchor;
using catalog::FastenerKind;

/// Anchors of one group in wood of one density, so that one line of boring holds for all.
struct AnchorSet {
    std::size_t group = 0;
    std::optional<double> specific_gravity;  ///< absent: nothing under them
    std::vector<const Anchor*> anchors;
};

std::vector<AnchorSet> anchor_sets(const catalog::Resolved& resolved) {
    std::vector<AnchorSet> sets;
    for (const Anchor& anchor : resolved.anchors) {
        std::optional<double> gravity;
        if (anchor.seat) gravity = catalog::wood(resolved, anchor.seat->member).species.specific_gravity;
        auto set = std::find_if(sets.begin(), sets.end(), [&](const AnchorSet& one) {
            return one.group == anchor.group && one.specific_gravity == gravity;
        });
        if (set == sets.end()) set = sets.insert(sets.end(), {anchor.group, gravity, {}});
        set->anchors.push_back(&anchor);
    }
    return sets;
}

std::vector<std::string> ids(const AnchorSet& set) {
    std::vector<std::string> names;
    for (const Anchor* anchor : set.anchors) names.push_back(anchor->id);
    return names;
}

/// `into B1 (A, B) and B2 (C, D)`
std::string seat_words(const Reader& reader, const AnchorSet& set) {
    const model::Framing& framing = reader.resolved.detail.framing;
    std::vector<std::size_t> members;
    for (const Anchor* anchor : set.anchors) members.push_back(anchor->seat->member);
    std::sort(members.begin(), members.end());
    members.erase(std::unique(members.begin(), members.end()), members.end());
    std::vector<std::string> places;
    for (const std::size_t member : members) {
        std::string in_it;
        for (const Anchor* anchor : set.anchors) {
            if (anchor->seat->member == member) in_it += (in_it.empty() ? "" : ", ") + anchor->id;
        }
        places.push_back(model::member(framing, member).id + " (" + in_it + ")");
    }
    return listed(places);
}

/// The size it is sold by, and in SI what that measures: `7/16 in`, `7/16 in (11.1 mm)`, `No. 14`.
std::string size_words(const Anchor& anchor, units::System system) {
    std::string number = anchor.name.rfind("No. ", 0) == 0 ? anchor.name.substr(0, anchor.name.find(' ', 4)) : "";
    if (!number.empty()) return number;
    std::string inches = hole_words(anchor.diameter_in, units::System::us);
    if (system == units::System::us) return inches;
    return inches + " (" + drawing::length_words(anchor.diameter_in, system) + ")";
}

/// `4 lag screws 7/16 in x 8 in`
std::string kind_words(const Anchor& anchor, std::size_t count, units::System system) {
    const char* const plural = count == 1 ? "" : "s";
    const std::string size = size_words(anchor, system), length = tape_words(anchor.length_in, system);
    switch (anchor.kind) {
        case FastenerKind::lag_screw:
            return fmt::format("{} lag screw{} {} x {}", count, plural, size, length);
        case FastenerKind::wood_screw:
            return fmt::format("{} wood screw{} {} x {}", count, plural, size, length);
        case FastenerKind::through_bolt:
            return fmt::format("{} bolt{} {} {}", count, plural, size,
                               anchor.bolt_grade ? anchor.bolt_grade->name : std::string());
        case FastenerKind::reported:
            return fmt::format("{} of {}, {} x {}", count, anchor.reported ? anchor.reported->name : anchor.name,
                               drawing::length_words(anchor.diameter_in, system), length);
    }
    return anchor.name;
}

std::string washer_words(const catalog::WasherSize& washer, units::System system) {
    return fmt::format("washer {} across, {} thick", tape_words(washer.outside_diameter_in, system),
                       drawing::length_words(washer.thickness_in, system));
}

std::string protection_words(const Reader& reader, const AnchorSet& set) {
    const std::string& stated = anchor_groups(reader.resolved.detail).at(set.group).corrosion_protection;
    return stated.empty() ? "Corrosion protection is not stated: ASK." : stated + ".";
}

std::string head_words(const Reader& reader, const AnchorSet& set) {
    const Anchor& first = *set.anchors.front();
    std::string words = protection_words(reader, set);
    if (first.washer) words += " Under each head: " + washer_words(*first.washer, reader.system) + ".";
    return words;
}

std::string below_words(const Anchor& anchor, units::System system) {
    if (anchor.washer_below) return "Under each nut: " + washer_words(*anchor.washer_below, system) + ".";
    if (!anchor.backing) return "The nut bears on the wood.";
    return fmt::format("Under the wood at each nut a steel plate {} x {} x {}.",
                       tape_figure(anchor.backing->width_in, system), tape_figure(anchor.backing->depth_in, system),
                       drawing::length_words(anchor.backing->thickness_in, system));
}

/// From under the head to the nut's seat.
double grip_in(const Reader& reader, const Anchor& anchor) {
    const model::BaseDetail& detail = reader.resolved.detail;
    double grip =
        on_deck(detail).plate.thickness_in + model::thickness_in(on_deck(detail).layers) + anchor.embedment_in;
    if (anchor.washer) grip += anchor.washer->thickness_in;
    if (anchor.washer_below) grip += anchor.washer_below->thickness_in;
    if (anchor.backing) grip += anchor.backing->thickness_in;
    return grip;
}

std::string depth_words(const Reader& reader, const AnchorSet& set) {
    const auto least = [&](double Anchor::*of) {
        double value = set.anchors.front()->*of;
        for (const Anchor* anchor : set.anchors) value = std::min(value, anchor->*of);
        return value;
    };
    if (set.anchors.front()->kind == FastenerKind::through_bolt) {
        double grip = 0.0;
        for (const Anchor* anchor : set.anchors) grip = std::max(grip, grip_in(reader, *anchor));
        return fmt::format("{} Grip, head to nut: {}.", below_words(*set.anchors.front(), reader.system),
                           tape_words(grip, reader.system));
    }
    return fmt::format("In the wood: {}, of it {} full thread.",
                       tape_words(least(&Anchor::embedment_in), reader.system),
                       tape_words(least(&Anchor::thread_in_block_in), reader.system));
}

std::string count_words(const AnchorSet& set, const std::string& kind) {
    return fmt::format("Anchor{} {}: {}", set.anchors.size() > 1 ? "s" : "", listed(ids(set)), kind);
}

Instruction set_instruction(const Reader& reader, const AnchorSet& set) {
    const std::string lead = count_words(set, kind_words(*set.anchors.front(), set.anchors.size(), reader.system));
    if (!set.specific_gravity)
        return {lead + ": NO FRAMING UNDER THEM.",
                "They hold in nothing that counts: no block, joist or rim is below. Stop and ask."};
    return {lead + ", into " + seat_words(reader, set) + ".", head_words(reader, set) + " " + depth_words(reader, set)};
}

/// Below the plate's underside, so below the top of whatever the plate stands on.
struct BoringDepths {
    double shank_in = 0.0, all_in = 0.0;
};
BoringDepths boring_depths(const Reader& reader, const Anchor& anchor) {
    const double above =
        on_deck(reader.resolved.detail).plate.thickness_in + (anchor.washer ? anchor.washer->thickness_in : 0.0);
    return {std::max(0.0, anchor.length_in - anchor.thread_length_in - above), std::max(0.0, anchor.length_in - above)};
}

struct Bits {
    double shank_in = 0.0, thread_low_in = 0.0, thread_high_in = 0.0;
    const char* clause = "";
};

Bits screw_bits(const Anchor& anchor, double specific_gravity) {
    if (anchor.kind == FastenerKind::lag_screw) {
        const resistance::LagLeadHole hole = resistance::lag_screw_lead_hole(anchor.diameter_in, specific_gravity);
        return {hole.shank_in, hole.thread_low_in, hole.thread_high_in, "NDS 2018 12.1.4"};
    }
    const resistance::WoodScrewLeadHole hole =
        resistance::wood_screw_lead_hole(anchor.diameter_in, anchor.root_diameter_in, specific_gravity);
    return {hole.shank_in, hole.thread_low_in, hole.thread_high_in, "NDS 2018 12.1.5"};
}

/// Nothing where all the anchors have the same holes.
std::string of_whom(const Reader& reader, const AnchorSet& set) {
    return set.anchors.size() == reader.resolved.anchors.size() ? std::string() : " " + listed(ids(set));
}

Instruction screw_holes(const Reader& reader, const AnchorSet& set) {
    const Anchor& anchor = *set.anchors.front();
    const Bits bits = screw_bits(anchor, *set.specific_gravity);
    const BoringDepths depths = boring_depths(reader, anchor);
    const units::System system = reader.system;
    const std::string top = on_deck(reader.resolved.detail).layers.decking ? "boards' top" : "wood's top";
    const std::string thread = bit_words(bits.thread_low_in, bits.thread_high_in, system);
    const std::string whose = of_whom(reader, set);
    const std::string whole = fmt::format("{} to {} deep", thread, tape_words(depths.all_in, system));
    if (!(depths.shank_in > 0.0))
        return {fmt::format("Pilot holes{}: {}.", whose, thread),
                fmt::format("From the {}, plate off: {} ({}).", top, whole, bits.clause)};
    const bool wood_screw = anchor.kind == FastenerKind::wood_screw;
    const std::string shank =
        wood_screw ? bit_words(0.95 * bits.shank_in, 1.05 * bits.shank_in, system) : hole_words(bits.shank_in, system);
    return {fmt::format("Pilot holes{}: {}, then {}.", whose, shank, thread),
            fmt::format("From the {}, plate off: {} to {} deep for the shank, then {} ({}).", top, shank,
                        tape_words(depths.shank_in, system), whole, bits.clause)};
}

/// NDS 2018 12.1.3.2 (from memory): 1/32 to 1/16 in over the bolt.
Instruction bolt_holes(const Reader& reader, const AnchorSet& set) {
    const double diameter_in = set.anchors.front()->diameter_in;
    return {fmt::format("Bolt holes{}: {}.", of_whom(reader, set),
                        bit_words(diameter_in + 1.0 / 32.0, diameter_in + 1.0 / 16.0, reader.system)),
            "Bored square through boards and wood (NDS 2018 12.1.3)."};
}

Instruction hole_instruction(const Reader& reader, const AnchorSet& set) {
    const Anchor& anchor = *set.anchors.front();
    switch (anchor.kind) {
        case FastenerKind::lag_screw:
        case FastenerKind::wood_screw:
            return screw_holes(reader, set);
        case FastenerKind::through_bolt:
            return bolt_holes(reader, set);
        case FastenerKind::reported:
            return {"Holes " + listed(ids(set)) + ": as the fastener's report says.",
                    anchor.reported ? anchor.reported->report + "." : std::string()};
    }
    return {};
}

}  // namespace

Instructions anchor_instructions(const Reader& reader) {
    Instructions instructions;
    for (const AnchorSet& set : anchor_sets(reader.resolved)) {
        instructions.push_back(set_instruction(reader, set));
        if (set.specific_gravity) instructions.push_back(hole_instruction(reader, set));
    }
    return instructions;
}

}  // namespace toehold::paper::site
