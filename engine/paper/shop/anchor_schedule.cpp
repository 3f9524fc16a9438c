#include "paper/shop/anchor_schedule.h"

#include "drawing/annotation/labels.h"
#include "format/figures.h"
#include "model/member.h"
#include "resistance/wood/lead_hole.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace toehold::paper::shop {
namespace {

using catalog::Anchor;
using catalog::FastenerKind;
using drawing::length_words;

/// Bits come in 64ths.
std::string fraction_words(double bit_in) {
    int part = static_cast<int>(std::lround(64.0 * bit_in)), whole = 64;
    for (; part % 2 == 0 && whole > 1; part /= 2) whole /= 2;
    return whole == 1 ? fmt::format("{} in", part) : fmt::format("{}/{} in", part, whole);
}

std::string bit_words(double low_in, double high_in, units::System system) {
    if (system == units::System::us) return fraction_words(resistance::customary_bit_in(low_in, high_in));
    return format::number_text(resistance::customary_bit_mm(low_in, high_in)) + " mm";
}

std::string kind_words(FastenerKind kind) {
    switch (kind) {
        case FastenerKind::lag_screw:
            return "Lag screw";
        case FastenerKind::wood_screw:
            return "Wood screw";
        case FastenerKind::through_bolt:
            return "Bolt, nut";
        case FastenerKind::reported:
            return "By its report";
    }
    return {};
}

std::string washer_words(const catalog::WasherSize& washer, units::System system) {
    return fmt::format("{} ({} outside)", washer.name, length_words(washer.outside_diameter_in, system));
}

std::string below_words(const Anchor& anchor, units::System system) {
    if (anchor.kind != FastenerKind::through_bolt) return {};
    if (anchor.washer_below) return "; below: " + washer_words(*anchor.washer_below, system);
    if (!anchor.backing) return "; below: none";
    const model::BackingPlate& plate = *anchor.backing;
    return fmt::format("; below: plate {} x {} x {}", drawing::length_figure(plate.width_in, system),
                       drawing::length_figure(plate.depth_in, system), length_words(plate.thickness_in, system));
}

std::string grade_words(const Anchor& anchor) {
    if (anchor.reported) return anchor.reported->name;
    return anchor.bolt_grade ? anchor.bolt_grade->name : anchor.metal.name;
}

struct LeadHole {
    std::string shank, thread;
};

LeadHole lead_hole(const catalog::Resolved& resolved, const Anchor& anchor, units::System system) {
    // 12.1.3.2, from memory: a bolt's hole is 1/32 to 1/16 in larger than the bolt.
    if (anchor.kind == FastenerKind::through_bolt)
        return {bit_words(anchor.diameter_in + 1.0 / 32, anchor.diameter_in + 1.0 / 16, system), "no thread"};
    if (anchor.kind == FastenerKind::reported) return {"by its report", "by its report"};
    if (!anchor.seat) return {"nothing below", "nothing below"};
    const double gravity = catalog::wood(resolved, anchor.seat->member).species.specific_gravity;
    if (anchor.kind == FastenerKind::lag_screw) {
        const resistance::LagLeadHole hole = resistance::lag_screw_lead_hole(anchor.diameter_in, gravity);
        return {length_words(hole.shank_in, system), bit_words(hole.thread_low_in, hole.thread_high_in, system)};
    }
    constexpr double about = 0.95;
    const resistance::WoodScrewLeadHole hole =
        resistance::wood_screw_lead_hole(anchor.diameter_in, anchor.root_diameter_in, gravity);
    return {bit_words(about * hole.shank_in, hole.shank_in, system),
            bit_words(hole.thread_low_in, hole.thread_high_in, system)};
}

/// What the bolt holds together, from under its head to the nut.
std::string grip_words(const catalog::Resolved& resolved, const Anchor& anchor, units::System system) {
    if (!anchor.seat) return "to suit";
    const model::BaseDetail& detail = resolved.detail;
    double grip = on_deck(detail).plate.thickness_in + model::thickness_in(on_deck(detail).layers) +
                  model::member(detail.framing, anchor.seat->member).depth_in;
    if (anchor.washer) grip += anchor.washer->thickness_in;
    if (anchor.washer_below) grip += anchor.washer_below->thickness_in;
    if (anchor.backing) grip += anchor.backing->thickness_in;
    return "to suit, grip " + length_words(grip, system);
}

std::string length_cell(double length_in, units::System system) {
    return length_in > 0.0 ? length_words(length_in, system) : "not stated";
}

/// All cells but the holes and their number.
std::vector<std::string> cells(const catalog::Resolved& resolved, const Anchor& anchor, units::System system) {
    const LeadHole hole = lead_hole(resolved, anchor, system);
    const std::string washer = anchor.washer ? washer_words(*anchor.washer, system) : "none";
    const bool bolt = anchor.kind == FastenerKind::through_bolt;
    return {kind_words(anchor.kind),
            length_words(anchor.diameter_in, system),
            bolt ? grip_words(resolved, anchor, system) : length_cell(anchor.length_in, system),
            bolt ? "for the nut" : length_cell(anchor.thread_length_in, system),
            grade_words(anchor),
            washer + below_words(anchor, system),
            hole.shank,
            hole.thread};
}

struct Alike {
    std::vector<std::string> cells;
    std::vector<std::string> holes;
};

std::vector<Alike> alike_anchors(const catalog::Resolved& resolved, units::System system) {
    std::vector<Alike> rows;
    for (const Anchor& anchor : resolved.anchors) {
        std::vector<std::string> of_anchor = cells(resolved, anchor, system);
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

std::string listed(const std::vector<std::string>& words) {
    std::string all;
    for (const std::string& one : words) all += (all.empty() ? "" : ", ") + one;
    return all;
}

std::vector<std::string> protections(const catalog::Resolved& resolved) {
    std::vector<std::string> notes;
    for (const model::AnchorGroup& group : anchor_groups(resolved.detail)) {
        const std::string words = group.corrosion_protection.empty()
                                      ? std::string("Corrosion protection of the anchors: not stated, by order.")
                                      : "Corrosion protection of the anchors: " + group.corrosion_protection + ".";
        if (std::find(notes.begin(), notes.end(), words) == notes.end()) notes.push_back(words);
    }
    return notes;
}

}  // namespace

Schedule anchor_schedule(const catalog::Resolved& resolved, units::System system) {
    using drawing::Across;
    Schedule schedule{"ANCHORS, and the holes bored for them in the wood",
                      {{"Holes", 1.0},
                       {"No.", 0.45, Across::middle},
                       {"Type", 1.0},
                       {"Diameter", 0.85},
                       {"Length", 0.95},
                       {"Thread", 0.95},
                       {"Grade", 1.6},
                       {"Washer", 2.0},
                       {"Bore, shank", 1.1},
                       {"Bore, thread", 1.1}},
                      {},
                      protections(resolved)};
    constexpr std::size_t many = 8;
    for (const Alike& row : alike_anchors(resolved, system)) {
        const bool all = row.holes.size() == on_deck(resolved.detail).plate.holes.size() && row.holes.size() > many;
        std::vector<std::string> cells = {all ? "all" : listed(row.holes), std::to_string(row.holes.size())};
        cells.insert(cells.end(), row.cells.begin(), row.cells.end());
        schedule.rows.push_back(std::move(cells));
    }
    schedule.notes.emplace_back(
        "Lengths under the head, thread with its tip. Bores after NDS 2018 12.1.3 to 12.1.5 for the wood described, as "
        "deep as shank and thread go in. Anchors go on site.");
    return schedule;
}

}  // namespace toehold::paper::shop
