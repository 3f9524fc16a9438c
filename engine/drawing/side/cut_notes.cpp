// Words and dimensions of the section.
#include "catalog/resolve.h"
#include "drawing/annotation/dimension.h"
#include "drawing/annotation/labels.h"
#include "drawing/scene/shapes.h"
#include "drawing/side/cut_sheet.h"

#include <algorithm>
#include <cmath>

namespace toehold::drawing::side {
namespace {

using format::phrase;

constexpr double first_row_mm = 7.5, row_mm = 7.0;
constexpr std::size_t most_ends = 30;

void add_chain_of(Scene& scene, const CutSheet& sheet, const DimensionRow& row, std::vector<double> places,
                  double feature_in) {
    places = distinct(std::move(places));
    if (places.size() < 2 || places.size() > most_ends) return;
    std::vector<DimensionEnd> ends;
    std::vector<std::string> words;
    for (const double at : places) {
        if (!ends.empty()) words.push_back(length_figure(at - ends.back().at_in, sheet.subject.locale.system));
        ends.push_back({at, feature_in});
    }
    add_chain(scene, row, ends, words);
}

/// Beside the post: down from the member's top to each fastener and to the member's lower edge; then the post's end.
void add_heights(Scene& scene, const CutSheet& sheet) {
    const Shape& shape = sheet.shape;
    const double side = sheet.post_side(), edge = side > 0.0 ? sheet.shown.high.x : sheet.shown.low.x;
    std::vector<double> heights{0.0};
    if (shape.depth_in > 0.0 && shape.slope == 0.0) heights.push_back(-shape.depth_in);
    for (const Fixing& fixing : sheet.fixings) heights.push_back(fixing.z_in);
    DimensionRow row{Measure::upright, edge, side * first_row_mm, Pen::dimension, member_part(shape)};
    add_chain_of(scene, sheet, row, heights, shape.back_in);
    row.offset_mm += side * row_mm;
    row.part = {model::PartKind::post};
    if (shape.post_low_in < 0.0)
        add_dimension(scene, row, {shape.post_low_in, shape.back_in}, {0.0, shape.back_in},
                      format::text(phrase("post {}", length_figure(-shape.post_low_in, sheet.subject.locale.system)),
                                   sheet.subject.locale));
}

/// Post, what is between, and the member with its pieces.
void add_row_below(Scene& scene, const CutSheet& sheet) {
    const Shape& shape = sheet.shape;
    std::vector<double> places{shape.back_in, shape.post_face_in, shape.member_face_in};
    if (shape.mount.bracket) places.push_back(shape.post_face_in + shape.towards_y * shape.mount.bracket->thickness_in);
    for (std::size_t index = 0; index < shape.mount.layers.size(); ++index)
        places.push_back(layer_y_in(shape, index).low_in);
    if (shape.member) {
        constexpr int most_plies = 8;
        const double ply_in = model::ply_width_in(*shape.member);
        for (int ply = 1; ply <= std::min(shape.member->plies, most_plies); ++ply)
            places.push_back(shape.member_face_in + shape.towards_y * ply_in * ply);
    }
    add_chain_of(scene, sheet, {Measure::across, sheet.shown.low.y, -first_row_mm, Pen::dimension, {}}, places,
                 std::max(sheet.shown.low.y, shape.bears_low_in));
}

struct Note {
    format::Phrase words;
    model::PartId part;
    Point at;  ///< where its leader ends
};

format::Phrase wide_by_deep(const model::Member& member, units::System system) {
    const std::string one =
        length_figure(model::ply_width_in(member), system) + " \u00d7 " + length_figure(member.depth_in, system);
    return member.plies > 1 ? phrase("{} of {}", member.plies, one) : format::verbatim(one);
}

/// From the top down, about what a leader must point at.
std::vector<Note> notes(const CutSheet& sheet) {
    const Shape& shape = sheet.shape;
    const units::System system = sheet.subject.locale.system;
    std::vector<Note> all;
    if (const auto& decking = shape.mount.decking)
        all.push_back({phrase("decking {}", length_figure(decking->thickness_in, system)),
                       {model::PartKind::decking},
                       {sheet.shown.low.x + 0.04 * width(sheet.shown), 0.5 * decking->thickness_in}});
    if (shape.mount.bracket)
        all.push_back({phrase("bracket plate {}", length_figure(shape.mount.bracket->thickness_in, system)),
                       {model::PartKind::plate},
                       {shape.post_face_in + 0.5 * shape.towards_y * shape.mount.bracket->thickness_in,
                        seat_heights_in(shape).high_in - 0.3}});
    for (std::size_t index = 0; index < shape.mount.layers.size(); ++index) {
        const Span across = layer_y_in(shape, index), heights = layer_heights_in(shape, index);
        all.push_back({phrase("layer {}: {}", index + 1, length_figure(shape.mount.layers[index].thickness_in, system)),
                       model::shim_part(index),
                       {0.5 * (across.low_in + across.high_in), heights.high_in - 0.4}});
    }
    return all;
}

/// On the deck's side, above the boards.
void add_leaders(Scene& scene, const CutSheet& sheet) {
    constexpr double line_mm = 4.2, off_mm = 2.0, leader_mm = 1.0, word_mm = 0.8;
    const std::vector<Note> all = notes(sheet);
    double up_mm = line_mm * static_cast<double>(all.size());
    const double level = sheet.shape.mount.decking ? sheet.shape.mount.decking->thickness_in : 0.0;
    for (const Note& note : all) {
        const Place end = standing({sheet.shown.low.x, level}, {-off_mm, up_mm});
        scene.items.emplace_back(
            Path{{{moved_mm(end, -leader_mm, 0.0), end, standing(note.at)}}, false, Pen::thin, Fill::none, note.part});
        scene.items.emplace_back(Circle{standing(note.at), 0.0, 0.45, Pen::none, Fill::capacity, note.part});
        Text text;
        text.at = moved_mm(end, -leader_mm - word_mm, 0.0);
        text.words = format::text(note.words, sheet.subject.locale);
        text.size = TextSize::small;
        text.across = Across::right;
        text.upright = Upright::middle;
        text.part = note.part;
        scene.items.emplace_back(std::move(text));
        up_mm -= line_mm;
    }
}

/// Under a member cut across its grain; inside one cut along it.
void add_member_names(Scene& scene, const CutSheet& sheet) {
    constexpr double below_mm = 1.4, inside_mm = 1.2;
    for (const Profile& one : sheet.framing) {
        const Box shown = common(one.box, sheet.shown);
        if (!one.cut || !has_area(shown)) continue;
        Text text;
        text.at = standing({middle(shown).x, shown.low.y}, {0.0, one.end_grain ? -below_mm : inside_mm});
        text.words = format::text(
            phrase("{}, {}", model::part_name(one.part), wide_by_deep(one.member, sheet.subject.locale.system)),
            sheet.subject.locale);
        text.size = TextSize::fine;
        text.across = Across::middle;
        text.upright = one.end_grain ? Upright::top : Upright::bottom;
        text.on_paper = true;
        text.part = one.part;
        scene.items.emplace_back(std::move(text));
    }
}

void add_tie_names(Scene& scene, const CutSheet& sheet) {
    constexpr double up_mm = 0.7;
    for (const TieLevel& level : tie_levels(sheet)) {
        const model::TensionTie& tie = sheet.shape.mount.ties.at(level.ties.front());
        Text text;
        text.at = standing(tie_corner(sheet, tie), {0.0, up_mm});
        std::string ids;
        bool same = true;
        for (const std::size_t index : level.ties) {
            const model::TensionTie& one = sheet.shape.mount.ties.at(index);
            ids += (ids.empty() ? "" : ", ") + one.id;
            same = same && one.into == tie.into;
        }
        // Where they go to several, the view from above says to which.
        text.words = same ? format::text(phrase("{} to {}", ids, tie.into), sheet.subject.locale) : ids;
        text.size = TextSize::fine;
        text.across = sheet.shape.towards_y > 0.0 ? Across::right : Across::left;
        text.on_paper = true;
        text.part = tie_part(tie);
        scene.items.emplace_back(std::move(text));
    }
}

/// Fasteners that end in the air.
void add_missing_seats(Scene& scene, const CutSheet& sheet) {
    std::string ids;
    for (const Fixing& fixing : sheet.fixings) {
        if (fixing.anchor != nullptr && !fixing.anchor->seat) ids += (ids.empty() ? "" : ", ") + fixing.id;
    }
    if (ids.empty()) return;
    Text text;
    text.at = standing({middle(sheet.shown).x, sheet.shown.high.y}, {0.0, 2.0});
    text.words = format::text(phrase("{}: in no member", ids), sheet.subject.locale);
    text.size = TextSize::small;
    text.across = Across::middle;
    text.on_paper = true;
    text.bold = true;
    scene.items.emplace_back(std::move(text));
}

}  // namespace

void add_cut_dimensions(Scene& scene, const CutSheet& sheet) {
    add_heights(scene, sheet);
    add_row_below(scene, sheet);
}

void add_cut_notes(Scene& scene, const CutSheet& sheet) {
    constexpr double note_mm = 17.0;
    add_leaders(scene, sheet);
    add_member_names(scene, sheet);
    add_tie_names(scene, sheet);
    add_missing_seats(scene, sheet);
    Text text;
    text.at = standing(sheet.shown.low, {0.0, -note_mm});
    text.words =
        format::text(phrase("Section through the post, outward to the right. {}", unit_note(sheet.subject.locale)),
                     sheet.subject.locale);
    text.size = TextSize::fine;
    text.pen = Pen::dimension;
    scene.items.emplace_back(std::move(text));
}

}  // namespace toehold::drawing::side
