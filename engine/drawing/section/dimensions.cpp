#include "catalog/resolve.h"
#include "drawing/annotation/dimension.h"
#include "drawing/annotation/labels.h"
#include "drawing/scene/shapes.h"
#include "drawing/section/sheet.h"

#include <algorithm>
#include <cmath>
#include <optional>

namespace toehold::drawing {
namespace {

using format::phrase;

constexpr double first_row_mm = 7.5, row_mm = 7.0;

/// What holds one anchor of the row, as heights.
struct Hold {
    std::string id;
    double at_in = 0.0;
    double top_in = 0.0, bottom_in = 0.0;             ///< of the member
    double thread_top_in = 0.0, thread_low_in = 0.0;  ///< effective thread in it
    bool bolt = false;
    format::Phrase kind = {};  ///< `block`
};

format::Phrase kind_name(model::MemberKind kind) {
    switch (kind) {
        case model::MemberKind::block:
            return phrase("block");
        case model::MemberKind::joist:
            return phrase("joist");
        case model::MemberKind::rim:
            break;
    }
    return phrase("rim");
}

std::optional<Hold> hold_of(const SectionSheet& sheet, const CutHole& hole) {
    if (hole.anchor == nullptr || !hole.anchor->seat) return std::nullopt;
    const catalog::Anchor& anchor = *hole.anchor;
    const std::vector<model::Member> all = model::members(sheet.subject.detail.framing);
    if (anchor.seat->member >= all.size()) return std::nullopt;
    const model::Member& member = all[anchor.seat->member];
    const AnchorStations at = stations(sheet, anchor);
    Hold hold{hole.id, hole.at_in, -sheet.layers_in, -sheet.layers_in - member.depth_in};
    hold.thread_top_in = std::min(hold.top_in, at.thread_in);
    hold.thread_low_in = hold.thread_top_in - anchor.thread_in_block_in;
    hold.bolt = anchor.kind == catalog::FastenerKind::through_bolt;
    hold.kind = kind_name(member.kind);
    return hold;
}

bool alike(const Hold& one, const Hold& other) {
    constexpr double same_in = 1e-6;
    return std::abs(one.bottom_in - other.bottom_in) < same_in &&
           std::abs(one.thread_low_in - other.thread_low_in) < same_in &&
           std::abs(one.thread_top_in - other.thread_top_in) < same_in;
}

/// `side`: 1 to the right of the drawing, -1 to its left.
void add_hold(Scene& scene, const SectionSheet& sheet, const Hold& hold, double side) {
    const units::System system = sheet.subject.locale.system;
    const double beside = side > 0.0 ? sheet.shown.high.x : sheet.shown.low.x;
    const std::string depth = length_figure(hold.top_in - hold.bottom_in, system);
    DimensionRow row{Measure::upright, beside, side * first_row_mm, Pen::dimension, model::anchor_part(hold.id), true};
    const double thread = hold.thread_top_in - hold.thread_low_in;
    if (!hold.bolt && thread > 0.0) {
        add_dimension(scene, row, {hold.thread_low_in, hold.at_in}, {hold.thread_top_in, hold.at_in},
                      format::text(phrase("thread in {} {} of {}", hold.kind, length_figure(thread, system), depth),
                                   sheet.subject.locale));
        row.offset_mm += side * row_mm;
    }
    const std::string words =
        hold.bolt ? format::text(phrase("through {} {}", hold.kind, depth), sheet.subject.locale) : depth;
    add_dimension(scene, row, {hold.bottom_in, hold.at_in}, {hold.top_in, hold.at_in}, words);
}

/// Sides of the members cut across their grain, and the axes of the row: how far an anchor stands from a block's edge.
void add_row_below(Scene& scene, const SectionSheet& sheet) {
    constexpr std::size_t most_ends = 30;
    std::vector<double> places;
    double low = 0.0;
    for (const Profile& one : sheet.framing) {
        if (!one.cut || !one.end_grain || one.box.low.x < sheet.shown.low.x || one.box.high.x > sheet.shown.high.x)
            continue;
        const bool holds = std::any_of(sheet.holes.begin(), sheet.holes.end(), [&](const CutHole& hole) {
            return hole.at_in >= one.box.low.x && hole.at_in <= one.box.high.x;
        });
        if (!holds) continue;
        places.push_back(one.box.low.x);
        places.push_back(one.box.high.x);
        low = std::min(low, one.box.low.y);
    }
    for (const CutHole& hole : sheet.holes) places.push_back(hole.at_in);
    places = distinct(std::move(places));
    if (places.size() < 2 || places.size() > most_ends) return;
    std::vector<DimensionEnd> ends;
    std::vector<std::string> words;
    for (const double at : places) {
        if (!ends.empty()) words.push_back(length_figure(at - ends.back().at_in, sheet.subject.locale.system));
        ends.push_back({at, low});
    }
    add_chain(scene, {Measure::across, sheet.shown.low.y, -first_row_mm - 1.0, Pen::dimension, {}}, ends, words);
}

}  // namespace

void add_section_dimensions(Scene& scene, const SectionSheet& sheet) {
    std::vector<Hold> holds;
    for (const CutHole& hole : sheet.holes) {
        if (const auto hold = hold_of(sheet, hole)) holds.push_back(*hold);
    }
    if (!holds.empty()) add_hold(scene, sheet, holds.back(), 1.0);
    if (holds.size() > 1 && !alike(holds.front(), holds.back())) add_hold(scene, sheet, holds.front(), -1.0);
    add_row_below(scene, sheet);
}

}  // namespace toehold::drawing
