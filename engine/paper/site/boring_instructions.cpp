// The holes bored for anchors: bits, depths, and where depths are measured from.
#include "catalog/anchor_view.h"
#include "catalog/fastened.h"
#include "paper/site/anchor_sets.h"
#include "paper/site/wording.h"
#include "paper/words.h"
#include "resistance/wood/lead_hole.h"

#include <algorithm>

namespace toehold::paper::site {
namespace {

using catalog::Anchor;
using catalog::FastenerKind;
using format::Phrase;
using format::phrase;

bool through_wood_post(const Reader& reader) {
    return std::holds_alternative<model::WoodPost>(reader.resolved.detail.post);
}

/// Of an anchor that lies level: from under its head to where its hole in wood begins, at the face of a wood post or
/// behind a metal one.
double level_off_in(const Reader& reader, const Anchor& anchor) {
    const double washer_in = anchor.washer ? anchor.washer->thickness_in : 0.0;
    const double under_head_in = anchor.head_plate ? anchor.head_plate->thickness_in : washer_in;
    if (through_wood_post(reader)) return under_head_in;
    return under_head_in + catalog::fastened_by(reader.resolved, anchor).side.thickness_in;
}

/// Below the plate's underside, so below the top of whatever the plate stands on.
struct BoringDepths {
    double shank_in = 0.0, all_in = 0.0;
};
BoringDepths boring_depths(const Reader& reader, const Anchor& anchor) {
    if (catalog::lies_level(anchor)) {
        // From the face the head is on, of a wood post; else from what lies behind the metal.
        const double off = level_off_in(reader, anchor);
        return {std::max(0.0, anchor.length_in - anchor.thread_length_in - off), std::max(0.0, anchor.length_in - off)};
    }
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

Phrase pilot_lead(const Reader& reader, const AnchorSet& set, const std::string& bits) {
    return are_all(reader, set) ? phrase("Pilot holes: {}.", bits)
                                : phrase("Pilot holes {}: {}.", listed(ids(set)), bits);
}

/// The shank's hole goes through the post, the thread's on into the member.
Instruction level_screw_holes(const Reader& reader, const AnchorSet& set) {
    const Anchor& anchor = *set.anchors.front();
    const Bits bits = screw_bits(anchor, *set.specific_gravity);
    const BoringDepths depths = boring_depths(reader, anchor);
    const std::string thread = bit_words(bits.thread_low_in, bits.thread_high_in, reader.system);
    const std::string depth = tape_words(depths.all_in, reader.system);
    const Phrase from = through_wood_post(reader) ? phrase("From the face of the post")
                                                  : phrase("From the face behind the metal, post off");
    if (!(depths.shank_in > 0.0))
        return {pilot_lead(reader, set, thread), phrase("{}: {} to {} deep ({}).", from, thread, depth, bits.clause)};
    const std::string shank = anchor.kind == FastenerKind::wood_screw
                                  ? bit_words(0.95 * bits.shank_in, 1.05 * bits.shank_in, reader.system)
                                  : hole_words(bits.shank_in, reader.system);
    return {are_all(reader, set) ? phrase("Pilot holes: {}, then {}.", shank, thread)
                                 : phrase("Pilot holes {}: {}, then {}.", listed(ids(set)), shank, thread),
            phrase("{}: {} to {} deep for the shank, then {} to {} deep ({}).", from, shank,
                   tape_words(depths.shank_in, reader.system), thread, depth, bits.clause)};
}

Instruction screw_holes(const Reader& reader, const AnchorSet& set) {
    const Anchor& anchor = *set.anchors.front();
    if (catalog::lies_level(anchor)) return level_screw_holes(reader, set);
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

Phrase bored_words(const Reader& reader, const Anchor& anchor) {
    if (!catalog::lies_level(anchor)) return phrase("Bored square through boards and wood (NDS 2018 12.1.3).");
    return on_side(reader.resolved.detail).bracket
               ? phrase("Bored level and square through the member, by the bracket's holes (NDS 2018 12.1.3).")
               : phrase("Bored level and square through post and member together (NDS 2018 12.1.3).");
}

/// NDS 2018 12.1.3.2 (from memory): 1/32 to 1/16 in over the bolt.
Instruction bolt_holes(const Reader& reader, const AnchorSet& set) {
    const double diameter_in = set.anchors.front()->diameter_in;
    const std::string bit = bit_words(diameter_in + 1.0 / 32.0, diameter_in + 1.0 / 16.0, reader.system);
    return {are_all(reader, set) ? phrase("Bolt holes: {}.", bit) : phrase("Bolt holes {}: {}.", listed(ids(set)), bit),
            bored_words(reader, *set.anchors.front())};
}

}  // namespace

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

}  // namespace toehold::paper::site
