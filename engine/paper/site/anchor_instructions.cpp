#include "drawing/annotation/labels.h"
#include "model/member.h"
#include "paper/site/instructions.h"
#include "paper/site/wording.h"
#include "paper/words.h"
#include "resistance/wood/lead_hole.h"

#include <algorithm>
#include <cmath>
#include <optional>

namespace toehold::paper::site {
namespace {

using catalog::Anchor;
using catalog::FastenerKind;
using format::Phrase;
using format::phrase;

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

/// `B1 (A, B) and B2 (C, D)`
format::Listed seat_words(const Reader& reader, const AnchorSet& set) {
    const model::Framing& framing = reader.resolved.detail.framing;
    std::vector<std::size_t> members;
    for (const Anchor* anchor : set.anchors) members.push_back(anchor->seat->member);
    std::sort(members.begin(), members.end());
    members.erase(std::unique(members.begin(), members.end()), members.end());
    format::Listed places;
    for (const std::size_t member : members) {
        std::string in_it;
        for (const Anchor* anchor : set.anchors) {
            if (anchor->seat->member == member) in_it += (in_it.empty() ? "" : ", ") + anchor->id;
        }
        places.items.push_back(phrase("{} ({})", model::member(framing, member).id, in_it));
    }
    return places;
}

/// Wood screws are sold by number: their shank is 0.060 in and 0.013 in for each (ASME B18.6.1).
std::optional<long> wood_screw_number(const Anchor& anchor) {
    if (anchor.kind != FastenerKind::wood_screw) return std::nullopt;
    constexpr double of_number_0_in = 0.060, step_in = 0.013, rounding_in = 0.0005;
    const long number = std::lround((anchor.diameter_in - of_number_0_in) / step_in);
    const bool exact =
        std::abs(of_number_0_in + step_in * static_cast<double>(number) - anchor.diameter_in) <= rounding_in;
    return number >= 0 && exact ? std::optional(number) : std::nullopt;
}

/// The size it is sold by, and in SI what that measures: `7/16 in`, `7/16 in (11.1 mm)`, `No. 14`.
std::string size_words(const Anchor& anchor, units::System system) {
    if (const auto number = wood_screw_number(anchor)) return "No. " + std::to_string(*number);
    std::string inches = hole_words(anchor.diameter_in, units::System::us);
    if (system == units::System::us) return inches;
    return inches + " (" + drawing::length_words(anchor.diameter_in, system) + ")";
}

/// `4 lag screws 7/16 in x 8 in`
Phrase kind_words(const Anchor& anchor, std::size_t count, units::System system) {
    const std::string size = size_words(anchor, system), length = tape_words(anchor.length_in, system);
    const std::string grade = anchor.bolt_grade ? anchor.bolt_grade->name : std::string();
    const bool one = count == 1;
    switch (anchor.kind) {
        case FastenerKind::lag_screw:
            return one ? phrase("1 lag screw {} x {}", size, length)
                       : phrase("{} lag screws {} x {}", count, size, length);
        case FastenerKind::wood_screw:
            return one ? phrase("1 wood screw {} x {}", size, length)
                       : phrase("{} wood screws {} x {}", count, size, length);
        case FastenerKind::through_bolt:
            return one ? phrase("1 bolt {} {}", size, grade) : phrase("{} bolts {} {}", count, size, grade);
        case FastenerKind::reported:
            return phrase("{} of {}, {} x {}", count, anchor.reported ? anchor.reported->name : anchor.name,
                          drawing::length_words(anchor.diameter_in, system), length);
    }
    return format::verbatim(anchor.name);
}

Phrase washer_words(const catalog::WasherSize& washer, units::System system) {
    return phrase("washer {} across, {} thick", tape_words(washer.outside_diameter_in, system),
                  drawing::length_words(washer.thickness_in, system));
}

Phrase head_words(const Reader& reader, const AnchorSet& set) {
    const std::string& protection = anchor_groups(reader.resolved.detail).at(set.group).corrosion_protection;
    Phrase words =
        protection.empty() ? phrase("Corrosion protection is not specified: ASK.") : phrase("{}.", protection);
    if (const auto& washer = set.anchors.front()->washer)
        words = phrase("{} Under each head: {}.", std::move(words), washer_words(*washer, reader.system));
    return words;
}

Phrase below_words(const Anchor& anchor, units::System system) {
    if (anchor.washer_below) return phrase("Under each nut: {}.", washer_words(*anchor.washer_below, system));
    if (anchor.lower) {
        return phrase("Under the wood one piece {} x {} x {} for all bolts.",
                      tape_figure(anchor.lower->width_in, system), tape_figure(anchor.lower->depth_in, system),
                      drawing::length_words(anchor.lower->thickness_in, system));
    }
    if (!anchor.backing) return phrase("The nut bears on the wood.");
    return phrase("Under the wood at each nut a steel plate {} x {} x {}.",
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
    if (anchor.lower) grip += anchor.lower->thickness_in;
    return grip;
}

Phrase depth_words(const Reader& reader, const AnchorSet& set) {
    const auto least = [&](double Anchor::*of) {
        double value = set.anchors.front()->*of;
        for (const Anchor* anchor : set.anchors) value = std::min(value, anchor->*of);
        return tape_words(value, reader.system);
    };
    if (set.anchors.front()->kind == FastenerKind::through_bolt) {
        double grip = 0.0;
        for (const Anchor* anchor : set.anchors) grip = std::max(grip, grip_in(reader, *anchor));
        return phrase("{} Grip, head to nut: {}.", below_words(*set.anchors.front(), reader.system),
                      tape_words(grip, reader.system));
    }
    return phrase("In the wood: {}, of it {} full thread.", least(&Anchor::embedment_in),
                  least(&Anchor::thread_in_block_in));
}

Instruction set_instruction(const Reader& reader, const AnchorSet& set) {
    const Phrase kind = kind_words(*set.anchors.front(), set.anchors.size(), reader.system);
    const Phrase lead = set.anchors.size() == 1 ? phrase("Anchor {}: {}", set.anchors.front()->id, kind)
                                                : phrase("Anchors {}: {}", listed(ids(set)), kind);
    if (!set.specific_gravity) {
        return {phrase("{}: NO FRAMING UNDER THEM.", lead),
                phrase("These anchors miss the framing. Stop and call the designer.")};
    }
    return {phrase("{}, into {}.", lead, seat_words(reader, set)),
            phrase("{} {}", head_words(reader, set), depth_words(reader, set))};
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

/// All the anchors have the same holes, so that none is named.
bool are_all(const Reader& reader, const AnchorSet& set) {
    return set.anchors.size() == reader.resolved.anchors.size();
}

Instruction screw_holes(const Reader& reader, const AnchorSet& set) {
    const Anchor& anchor = *set.anchors.front();
    const Bits bits = screw_bits(anchor, *set.specific_gravity);
    const BoringDepths depths = boring_depths(reader, anchor);
    const units::System system = reader.system;
    const bool boards = on_deck(reader.resolved.detail).layers.decking.has_value(), all = are_all(reader, set);
    const std::string thread = bit_words(bits.thread_low_in, bits.thread_high_in, system);
    const std::string depth = tape_words(depths.all_in, system);
    if (!(depths.shank_in > 0.0)) {
        return {all ? phrase("Pilot holes: {}.", thread) : phrase("Pilot holes {}: {}.", listed(ids(set)), thread),
                boards
                    ? phrase("From the top of the boards, plate off: {} to {} deep ({}).", thread, depth, bits.clause)
                    : phrase("From the top of the wood, plate off: {} to {} deep ({}).", thread, depth, bits.clause)};
    }
    const bool wood_screw = anchor.kind == FastenerKind::wood_screw;
    const std::string shank =
        wood_screw ? bit_words(0.95 * bits.shank_in, 1.05 * bits.shank_in, system) : hole_words(bits.shank_in, system);
    const std::string shank_depth = tape_words(depths.shank_in, system);
    return {all ? phrase("Pilot holes: {}, then {}.", shank, thread)
                : phrase("Pilot holes {}: {}, then {}.", listed(ids(set)), shank, thread),
            boards ? phrase("From the top of the boards, plate off: {} to {} deep for the shank, then {} to {} deep "
                            "({}).",
                            shank, shank_depth, thread, depth, bits.clause)
                   : phrase("From the top of the wood, plate off: {} to {} deep for the shank, then {} to {} deep "
                            "({}).",
                            shank, shank_depth, thread, depth, bits.clause)};
}

/// NDS 2018 12.1.3.2 (from memory): 1/32 to 1/16 in over the bolt.
Instruction bolt_holes(const Reader& reader, const AnchorSet& set) {
    const double diameter_in = set.anchors.front()->diameter_in;
    const std::string bit = bit_words(diameter_in + 1.0 / 32.0, diameter_in + 1.0 / 16.0, reader.system);
    return {are_all(reader, set) ? phrase("Bolt holes: {}.", bit) : phrase("Bolt holes {}: {}.", listed(ids(set)), bit),
            phrase("Bored square through boards and wood (NDS 2018 12.1.3).")};
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
            return {phrase("Holes {}: as the fastener's report says.", listed(ids(set))),
                    anchor.reported ? phrase("{}.", anchor.reported->report) : Phrase()};
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
