#include "catalog/resolve.h"
#include "drawing/annotation/labels.h"
#include "drawing/scene/shapes.h"
#include "drawing/section/sheet.h"
#include "model/base_detail.h"

#include <algorithm>
#include <cstddef>
#include <vector>

namespace toehold::drawing {
namespace {

using format::phrase;

struct Note {
    format::Phrase words;
    model::PartId part;
    Point at;  ///< where its leader ends
};

format::Phrase size_words(const model::Member& member, units::System system) {
    std::string one = length_figure(member.width_in / std::max(1, member.plies), system) + " \u00d7 " +
                      length_figure(model::piece_depth_in(member), system);
    if (member.stack > 1) return phrase("{} high, {} wide, of {}", member.stack, member.plies, one);
    return member.plies > 1 ? phrase("{} of {}", member.plies, one) : format::verbatim(std::move(one));
}

/// From the plate down.
std::vector<Note> layer_notes(const SectionSheet& sheet) {
    const model::BaseDetail& detail = sheet.subject.detail;
    const units::System system = sheet.subject.locale.system;
    const Box& shown = sheet.shown;
    std::vector<Note> notes;
    if (!sheet.plate.empty()) {
        notes.push_back({phrase("plate {}", length_figure(on_deck(detail).plate.thickness_in, system)),
                         {model::PartKind::plate},
                         {sheet.plate.front().low_in, 0.5 * on_deck(detail).plate.thickness_in}});
    }
    const double inside = shown.low.x + 0.04 * width(shown);
    double top = 0.0;
    const auto add = [&](format::Phrase words, const model::PartId& part, double thickness_in) {
        notes.push_back({std::move(words), part, {inside, top - 0.5 * thickness_in}});
        top -= thickness_in;
    };
    if (const auto& decking = on_deck(detail).layers.decking)
        add(on_deck(detail).layers.packing
                ? phrase("decking {}, packing through it", length_figure(decking->thickness_in, system))
                : phrase("decking {}", length_figure(decking->thickness_in, system)),
            {model::PartKind::decking}, decking->thickness_in);
    for (std::size_t index = 0; index < on_deck(detail).layers.shims.size(); ++index) {
        const model::PartId part = model::shim_part(index);
        const double thickness_in = on_deck(detail).layers.shims[index].thickness_in;
        add(phrase("{}, {}", model::part_name(part), length_figure(thickness_in, system)), part, thickness_in);
    }
    return notes;
}

void add_layer_notes(Scene& scene, const SectionSheet& sheet) {
    constexpr double line_mm = 4.2, off_mm = 2.0, leader_mm = 1.0, highest_mm = 5.5;
    double up_mm = highest_mm;
    for (const Note& note : layer_notes(sheet)) {
        const Place end = standing({sheet.shown.low.x, 0.0}, {-off_mm, up_mm});
        scene.items.emplace_back(
            Path{{{moved_mm(end, -leader_mm, 0.0), end, standing(note.at)}}, false, Pen::thin, Fill::none, note.part});
        scene.items.emplace_back(Circle{standing(note.at), 0.0, 0.45, Pen::none, Fill::capacity, note.part});
        Text text;
        text.at = moved_mm(end, -leader_mm - 0.8, 0.0);
        text.words = format::text(note.words, sheet.subject.locale);
        text.size = TextSize::small;
        text.across = Across::right;
        text.upright = Upright::middle;
        text.part = note.part;
        scene.items.emplace_back(std::move(text));
        up_mm -= line_mm;
    }
}

/// Below the member and what comes out of it.
double name_level(const SectionSheet& sheet, const Profile& one) {
    double level = one.box.low.y;
    for (const CutHole& hole : sheet.holes) {
        if (hole.anchor != nullptr && hole.at_in > one.box.low.x && hole.at_in < one.box.high.x)
            level = std::min(level, stations(sheet, *hole.anchor).tip_in);
    }
    return level;
}

/// Of the ends of members that stand side by side every second has its name a line lower, clear of its neighbor's.
bool on_second_line(const SectionSheet& sheet, const Profile& of) {
    constexpr double too_near_in = 7.0;
    std::vector<double> middles;
    for (const Profile& one : sheet.framing) {
        if (one.cut && one.end_grain && has_area(common(one.box, sheet.shown)))
            middles.push_back(middle(common(one.box, sheet.shown)).x);
    }
    std::sort(middles.begin(), middles.end());
    const double own = middle(common(of.box, sheet.shown)).x;
    bool second = false;
    for (std::size_t i = 1; i < middles.size() && middles[i - 1] < own; ++i)
        second = !second && middles[i] - middles[i - 1] < too_near_in;
    return second;
}

void add_member_names(Scene& scene, const SectionSheet& sheet) {
    constexpr double below_mm = 1.4, line_mm = 2.6, above_mm = 1.2;
    for (const Profile& one : sheet.framing) {
        const Box shown = common(one.box, sheet.shown);
        if (!one.cut || !has_area(shown)) continue;
        const double level = one.end_grain ? name_level(sheet, one) : shown.low.y;
        const double lower_mm = on_second_line(sheet, one) ? line_mm : 0.0;
        Text text;
        text.at = standing({middle(shown).x, level}, {0.0, one.end_grain ? -below_mm - lower_mm : above_mm});
        text.words = format::text(
            phrase("{}, {}", model::part_name(one.part), size_words(one.member, sheet.subject.locale.system)),
            sheet.subject.locale);
        text.size = TextSize::fine;
        text.across = Across::middle;
        text.upright = one.end_grain ? Upright::top : Upright::bottom;
        text.on_paper = true;
        text.part = one.part;
        scene.items.emplace_back(std::move(text));
    }
}

/// A screw that ends in the air is the drawing's most important line; one for all of the row.
void add_missing_seats(Scene& scene, const SectionSheet& sheet) {
    std::string ids;
    double low = 0.0, from = 0.0, to = 0.0;
    const std::string* only = nullptr;
    for (const CutHole& hole : sheet.holes) {
        if (hole.anchor == nullptr || hole.anchor->seat) continue;
        only = ids.empty() ? &hole.id : nullptr;
        from = ids.empty() ? hole.at_in : from;
        to = hole.at_in;
        low = std::min(low, stations(sheet, *hole.anchor).tip_in);
        ids += (ids.empty() ? "" : ", ") + hole.id;
    }
    if (ids.empty()) return;
    Text text;
    text.at = standing({0.5 * (from + to), low}, {0.0, -3.0});
    text.words = format::text(phrase("no framing under {}", ids), sheet.subject.locale);
    text.size = TextSize::small;
    text.across = Across::middle;
    text.upright = Upright::top;
    text.on_paper = true;
    text.bold = true;
    if (only != nullptr) text.part = model::anchor_part(*only);
    scene.items.emplace_back(std::move(text));
}

void add_plane_note(Scene& scene, const SectionSheet& sheet) {
    const bool along_y = sheet.plane.along == model::PlanAxis::y;
    Text text;
    text.at = standing(sheet.shown.low, {0.0, -17.0});
    const format::Locale& locale = sheet.subject.locale;
    const std::string at = length_words(sheet.plane.at_in, locale.system), note = unit_note(locale);
    text.words = format::text(along_y ? phrase("Section at x = {}, outward to the right. {}", at, note)
                                      : phrase("Section at y = {}, along the rail. {}", at, note),
                              locale);
    text.size = TextSize::fine;
    text.pen = Pen::dimension;
    scene.items.emplace_back(std::move(text));
}

}  // namespace

void add_section_notes(Scene& scene, const SectionSheet& sheet) {
    add_layer_notes(scene, sheet);
    add_member_names(scene, sheet);
    add_missing_seats(scene, sheet);
    add_plane_note(scene, sheet);
}

}  // namespace toehold::drawing
