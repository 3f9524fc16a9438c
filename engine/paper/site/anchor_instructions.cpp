#include "catalog/anchor_view.h"
#include "catalog/fastened.h"
#include "drawing/annotation/labels.h"
#include "model/member.h"
#include "paper/site/anchor_sets.h"
#include "paper/site/wording.h"
#include "paper/words.h"

#include <algorithm>
#include <cmath>
#include <optional>

namespace toehold::paper::site {
namespace {

using catalog::Anchor;
using catalog::FastenerKind;
using format::Phrase;
using format::phrase;

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
    if (const auto& plate = set.anchors.front()->head_plate) {
        return phrase("{} Under each head: steel plate {} x {} x {}.", std::move(words),
                      tape_figure(plate->width_in, reader.system), tape_figure(plate->depth_in, reader.system),
                      drawing::length_words(plate->thickness_in, reader.system));
    }
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
    if (catalog::lies_level(anchor)) {
        return phrase("Behind the wood at each nut a steel plate {} x {} x {}.",
                      tape_figure(anchor.backing->width_in, system), tape_figure(anchor.backing->depth_in, system),
                      drawing::length_words(anchor.backing->thickness_in, system));
    }
    return phrase("Under the wood at each nut a steel plate {} x {} x {}.",
                  tape_figure(anchor.backing->width_in, system), tape_figure(anchor.backing->depth_in, system),
                  drawing::length_words(anchor.backing->thickness_in, system));
}

/// From under the head to the nut's seat.
double grip_in(const Reader& reader, const Anchor& anchor) {
    if (catalog::lies_level(anchor))
        return catalog::above_member_in(reader.resolved, anchor) + anchor.embedment_in + catalog::below_in(anchor);
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
    if (!set.specific_gravity && catalog::lies_level(*set.anchors.front())) {
        return {phrase("{}: NO MEMBER BEHIND THEM.", lead),
                phrase("These anchors miss the member. Stop and call the designer.")};
    }
    if (!set.specific_gravity) {
        return {phrase("{}: NO FRAMING UNDER THEM.", lead),
                phrase("These anchors miss the framing. Stop and call the designer.")};
    }
    return {phrase("{}, into {}.", lead, seat_words(reader, set)),
            phrase("{} {}", head_words(reader, set), depth_words(reader, set))};
}

}  // namespace

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

Instructions anchor_instructions(const Reader& reader) {
    Instructions instructions;
    for (const AnchorSet& set : anchor_sets(reader.resolved)) {
        instructions.push_back(set_instruction(reader, set));
        if (set.specific_gravity) instructions.push_back(hole_instruction(reader, set));
    }
    return instructions;
}

}  // namespace toehold::paper::site
