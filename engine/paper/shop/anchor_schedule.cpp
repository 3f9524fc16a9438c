#include "paper/shop/anchor_schedule.h"

#include "catalog/anchor_view.h"
#include "catalog/fastened.h"
#include "drawing/annotation/labels.h"
#include "model/member.h"
#include "paper/words.h"
#include "resistance/wood/lead_hole.h"

#include <algorithm>
#include <cmath>

namespace toehold::paper::shop {
namespace {

using catalog::Anchor;
using catalog::FastenerKind;
using drawing::length_words;
using format::Phrase;
using format::phrase;

Phrase kind_words(FastenerKind kind) {
    switch (kind) {
        case FastenerKind::lag_screw:
            return phrase("Lag screw");
        case FastenerKind::wood_screw:
            return phrase("Wood screw");
        case FastenerKind::through_bolt:
            return phrase("Bolt, nut");
        case FastenerKind::reported:
            return phrase("By its report");
    }
    return {};
}

Phrase washer_words(const catalog::WasherSize& washer, units::System system) {
    return phrase("{} ({} outside)", washer.name, length_words(washer.outside_diameter_in, system));
}

Phrase plate_size(const model::BackingPlate& plate, units::System system) {
    return phrase("plate {} x {} x {}", drawing::length_figure(plate.width_in, system),
                  drawing::length_figure(plate.depth_in, system), length_words(plate.thickness_in, system));
}

/// Of an anchor that lies level: under its head, and of a bolt under its nut.
Phrase level_washers_words(const Anchor& anchor, units::System system) {
    Phrase head = anchor.head_plate ? plate_size(*anchor.head_plate, system)
                  : anchor.washer   ? washer_words(*anchor.washer, system)
                                    : phrase("none");
    if (anchor.kind != FastenerKind::through_bolt) return head;
    if (anchor.washer_below) return phrase("{}; nut: {}", std::move(head), washer_words(*anchor.washer_below, system));
    if (anchor.backing) return phrase("{}; nut: {}", std::move(head), plate_size(*anchor.backing, system));
    return phrase("{}; nut: none", std::move(head));
}

/// On the plate, and of a bolt below the wood.
Phrase washers_words(const Anchor& anchor, units::System system) {
    if (catalog::lies_level(anchor)) return level_washers_words(anchor, system);
    Phrase above = anchor.washer ? washer_words(*anchor.washer, system) : phrase("none");
    if (anchor.kind != FastenerKind::through_bolt) return above;
    if (anchor.washer_below)
        return phrase("{}; below: {}", std::move(above), washer_words(*anchor.washer_below, system));
    if (anchor.lower) {
        const model::LowerPlate& common = *anchor.lower;
        Phrase words =
            phrase("{}; below all: {} x {} x {}", std::move(above), drawing::length_figure(common.width_in, system),
                   drawing::length_figure(common.depth_in, system), length_words(common.thickness_in, system));
        if (common.shape == model::LowerShape::plate) return words;
        return phrase("{}, leg {}", std::move(words), length_words(common.leg_in, system));
    }
    if (!anchor.backing) return phrase("{}; below: none", std::move(above));
    const model::BackingPlate& plate = *anchor.backing;
    return phrase("{}; below: plate {} x {} x {}", std::move(above), drawing::length_figure(plate.width_in, system),
                  drawing::length_figure(plate.depth_in, system), length_words(plate.thickness_in, system));
}

std::string grade_words(const Anchor& anchor) {
    if (anchor.reported) return anchor.reported->name;
    return anchor.bolt_grade ? anchor.bolt_grade->name : anchor.metal.name;
}

struct LeadHole {
    Phrase shank, thread;
};

LeadHole lead_hole(const catalog::Resolved& resolved, const Anchor& anchor, units::System system) {
    // 12.1.3.2, from memory: a bolt's hole is 1/32 to 1/16 in larger than the bolt.
    if (anchor.kind == FastenerKind::through_bolt)
        return {format::verbatim(bit_words(anchor.diameter_in + 1.0 / 32, anchor.diameter_in + 1.0 / 16, system)),
                phrase("no thread")};
    if (anchor.kind == FastenerKind::reported) return {phrase("by its report"), phrase("by its report")};
    if (!anchor.seat && catalog::lies_level(anchor)) return {phrase("in no member"), phrase("in no member")};
    if (!anchor.seat) return {phrase("no framing below"), phrase("no framing below")};
    const double gravity = catalog::wood(resolved, anchor.seat->member).species.specific_gravity;
    if (anchor.kind == FastenerKind::lag_screw) {
        const resistance::LagLeadHole hole = resistance::lag_screw_lead_hole(anchor.diameter_in, gravity);
        return {format::verbatim(length_words(hole.shank_in, system)),
                format::verbatim(bit_words(hole.thread_low_in, hole.thread_high_in, system))};
    }
    constexpr double about = 0.95;
    const resistance::WoodScrewLeadHole hole =
        resistance::wood_screw_lead_hole(anchor.diameter_in, anchor.root_diameter_in, gravity);
    return {format::verbatim(bit_words(about * hole.shank_in, hole.shank_in, system)),
            format::verbatim(bit_words(hole.thread_low_in, hole.thread_high_in, system))};
}

/// From under the head to the nut.
double grip_in(const catalog::Resolved& resolved, const Anchor& anchor) {
    if (catalog::lies_level(anchor))
        return catalog::above_member_in(resolved, anchor) + anchor.embedment_in + catalog::below_in(anchor);
    const model::BaseDetail& detail = resolved.detail;
    double grip = on_deck(detail).plate.thickness_in + model::thickness_in(on_deck(detail).layers) +
                  model::member(detail.framing, anchor.seat->member).depth_in;
    if (anchor.washer) grip += anchor.washer->thickness_in;
    if (anchor.washer_below) grip += anchor.washer_below->thickness_in;
    if (anchor.backing) grip += anchor.backing->thickness_in;
    if (anchor.lower) grip += anchor.lower->thickness_in;
    return grip;
}

/// What the bolt holds together.
Phrase grip_words(const catalog::Resolved& resolved, const Anchor& anchor, units::System system) {
    if (!anchor.seat) return phrase("to suit");
    double grip = grip_in(resolved, anchor);
    // To a sixteenth, as the site's paper says it: what is ordered is the next bolt longer.
    if (system == units::System::us) grip = std::round(16.0 * grip) / 16.0;
    return phrase("to suit, grip {}", length_words(grip, system));
}

Phrase length_cell(double length_in, units::System system) {
    return length_in > 0.0 ? format::verbatim(length_words(length_in, system)) : phrase("not specified");
}

/// All cells but the holes and their number.
std::vector<std::string> cells(const catalog::Resolved& resolved, const Anchor& anchor, const format::Locale& locale) {
    const units::System system = locale.system;
    const auto say = [&locale](const Phrase& words) { return format::text(words, locale); };
    const LeadHole hole = lead_hole(resolved, anchor, system);
    const bool bolt = anchor.kind == FastenerKind::through_bolt;
    return {say(kind_words(anchor.kind)),
            length_words(anchor.diameter_in, system),
            say(bolt ? grip_words(resolved, anchor, system) : length_cell(anchor.length_in, system)),
            say(bolt ? phrase("for the nut") : length_cell(anchor.thread_length_in, system)),
            grade_words(anchor),
            say(washers_words(anchor, system)),
            say(hole.shank),
            say(hole.thread)};
}

struct Alike {
    std::vector<std::string> cells;
    std::vector<std::string> holes;
};

std::vector<Alike> alike_anchors(const catalog::Resolved& resolved, const format::Locale& locale) {
    std::vector<Alike> rows;
    for (const Anchor& anchor : resolved.anchors) {
        std::vector<std::string> of_anchor = cells(resolved, anchor, locale);
        const auto found =
            std::find_if(rows.begin(), rows.end(), [&](const Alike& row) { return row.cells == of_anchor; });
        if (found == rows.end()) {
            rows.push_back({std::move(of_anchor), {anchor.id}});
        } else {
            found->holes.push_back(anchor.id);
        }
    }
    return rows;
}

std::string joined(const std::vector<std::string>& ids) {
    std::string all;
    for (const std::string& id : ids) all += (all.empty() ? "" : ", ") + id;
    return all;
}

std::vector<std::string> protections(const catalog::Resolved& resolved, const format::Locale& locale) {
    std::vector<std::string> notes;
    for (const model::AnchorGroup& group : anchor_groups(resolved.detail)) {
        const Phrase words = group.corrosion_protection.empty()
                                 ? phrase("Corrosion protection of the anchors: not specified, by order.")
                                 : phrase("Corrosion protection of the anchors: {}.", group.corrosion_protection);
        std::string note = format::text(words, locale);
        if (std::find(notes.begin(), notes.end(), note) == notes.end()) notes.push_back(std::move(note));
    }
    return notes;
}

}  // namespace

Schedule anchor_schedule(const catalog::Resolved& resolved, const format::Locale& locale) {
    const auto say = [&locale](const Phrase& words) { return format::text(words, locale); };
    Schedule schedule{say(phrase("ANCHORS, and the holes bored for them in the wood")),
                      {{say(phrase("Holes")), 1.0},
                       {say(phrase("No.")), 0.45, drawing::Across::middle},
                       {say(phrase("Type")), 1.0},
                       {say(phrase("Diameter")), 0.85},
                       {say(phrase("Length")), 0.95},
                       {say(phrase("Thread")), 0.95},
                       {say(phrase("Grade")), 1.6},
                       {say(phrase("Washer")), 2.0},
                       {say(phrase("Bore, shank")), 1.1},
                       {say(phrase("Bore, thread")), 1.1}},
                      {},
                      protections(resolved, locale)};
    constexpr std::size_t many = 8;
    for (const Alike& row : alike_anchors(resolved, locale)) {
        const bool all = row.holes.size() == model::anchor_place_ids(resolved.detail).size() && row.holes.size() > many;
        std::vector<std::string> cells = {all ? say(phrase("all")) : joined(row.holes),
                                          std::to_string(row.holes.size())};
        cells.insert(cells.end(), row.cells.begin(), row.cells.end());
        schedule.rows.push_back(std::move(cells));
    }
    schedule.notes.push_back(
        say(phrase("Lengths under the head, thread with its tip. Bores by NDS 2018 12.1.3 to 12.1.5 for the wood "
                   "specified, as deep as shank and thread go in. Anchors are installed on site.")));
    return schedule;
}

}  // namespace toehold::paper::shop
