#include "drawing/annotation/labels.h"
#include "drawing/annotation/symbols.h"
#include "drawing/scene/shapes.h"
#include "drawing/side/cut_sheet.h"
#include "paper/site/extent.h"
#include "paper/site/side/side_drawings.h"
#include "paper/site/tape_chain.h"

#include <algorithm>
#include <utility>

namespace toehold::paper::site {
namespace {

namespace side = drawing::side;
using drawing::Fill;
using drawing::Measure;
using drawing::Pen;
using drawing::Point;
using drawing::Scene;

/// A short stub of the post, since the drawing is about the joint.
side::CutSheet sheet_of(const drawing::Subject& drawn) {
    constexpr double stub_in = 1.8;
    side::CutSheet sheet = side::cut_sheet(drawn);
    sheet.shown.high.y =
        std::min(sheet.shown.high.y, std::max(0.0, side::seat_heights_in(sheet.shape).high_in) + stub_in);
    return sheet;
}

Fill wood_fill_of(const drawing::Profile& one) {
    if (one.end_grain) return Fill::wood_end;
    return one.cut ? Fill::wood_cut : Fill::wood_side;
}

/// With the seams of a doubled member.
void add_members(Scene& scene, const side::CutSheet& sheet) {
    constexpr int most_plies = 8;
    for (const drawing::Profile& one : sheet.framing) {
        drawing::add_broken_rectangle(scene, one.box, sheet.shown, one.cut ? Pen::cut : Pen::holds, wood_fill_of(one),
                                      one.part);
        for (int ply = 1; one.cut && one.end_grain && ply < std::min(one.member.plies, most_plies); ++ply) {
            const double y = one.box.low.x + ply * model::ply_width_in(one.member);
            scene.items.emplace_back(drawing::line(Point{y, one.box.low.y}, {y, one.box.high.y}, Pen::cut, one.part));
        }
    }
}

/// Post, what is between, the member with its pieces.
void add_row_below(Scene& scene, const side::CutSheet& sheet, const ChainRow& row) {
    constexpr double least_in = 0.99 / 16.0;
    const side::Shape& shape = sheet.shape;
    std::vector<double> stops{shape.back_in, shape.post_face_in, shape.member_face_in};
    for (std::size_t index = 0; index < shape.mount.layers.size(); ++index) {
        stops.push_back(side::layer_y_in(shape, index).low_in);
        stops.push_back(side::layer_y_in(shape, index).high_in);
    }
    if (shape.member) {
        for (int ply = 1; ply <= shape.member->plies; ++ply)
            stops.push_back(shape.member_face_in + shape.towards_y * ply * model::ply_width_in(*shape.member));
    }
    std::vector<drawing::DimensionEnd> ends;
    for (const double at : drawing::distinct(std::move(stops))) {
        if (ends.empty() || at - ends.back().at_in > least_in) ends.push_back({at, shape.bears_low_in});
    }
    add_tape_chain(scene, {Measure::across, false, sheet.shown.low.y, std::move(ends)}, row);
}

struct NamedPlace {
    std::string words;
    model::PartId part;
    Point at;  ///< where its leader ends
};

/// What lies over or between, from the top down.
std::vector<NamedPlace> named_layers(const side::CutSheet& sheet, const format::Locale& locale) {
    using format::phrase;
    const side::Shape& shape = sheet.shape;
    const auto figure = [&](double in) { return drawing::length_figure(in, locale.system); };
    std::vector<NamedPlace> all;
    if (const auto& decking = shape.mount.decking)
        all.push_back({format::text(phrase("boards {}", figure(decking->thickness_in)), locale),
                       {model::PartKind::decking},
                       {sheet.shown.low.x + 0.06 * drawing::width(sheet.shown), 0.5 * decking->thickness_in}});
    if (shape.mount.bracket)
        all.push_back({format::text(phrase("plate {}", figure(shape.mount.bracket->thickness_in)), locale),
                       {model::PartKind::plate},
                       {shape.post_face_in + 0.5 * shape.towards_y * shape.mount.bracket->thickness_in,
                        side::seat_heights_in(shape).high_in - 0.3}});
    for (std::size_t index = 0; index < shape.mount.layers.size(); ++index) {
        const side::Span across = side::layer_y_in(shape, index), heights = side::layer_heights_in(shape, index);
        all.push_back(
            {format::text(phrase("layer {}: {}", index + 1, figure(shape.mount.layers[index].thickness_in)), locale),
             model::shim_part(index),
             {0.5 * (across.low_in + across.high_in), heights.high_in - 0.4}});
    }
    return all;
}

/// Beside the boards, on the deck's side.
void add_layer_names(Scene& scene, const side::CutSheet& sheet, const format::Locale& locale) {
    constexpr double line_mm = 4.6, off_mm = 1.6, word_mm = 0.8;
    const std::vector<NamedPlace> all = named_layers(sheet, locale);
    const double level_in = sheet.shape.mount.decking ? sheet.shape.mount.decking->thickness_in : 0.0;
    double up_mm = line_mm * static_cast<double>(all.size());
    for (const NamedPlace& one : all) {
        const drawing::Place end{{sheet.shown.low.x, level_in}, {-off_mm, up_mm}};
        scene.items.emplace_back(drawing::line(end, drawing::standing(one.at), Pen::holds, one.part));
        drawing::Text text;
        text.at = drawing::moved_mm(end, -word_mm, 0.0);
        text.words = one.words;
        text.across = drawing::Across::right;
        text.upright = drawing::Upright::middle;
        text.part = one.part;
        scene.items.emplace_back(std::move(text));
        up_mm -= line_mm;
    }
}

/// In or under each member that is cut, where there is room.
void add_names(Scene& scene, const side::CutSheet& sheet, double mm_per_in) {
    Taken taken(mm_per_in);
    taken.take_texts(scene);
    for (const side::TieLevel& level : side::tie_levels(sheet)) {
        const model::TensionTie& tie = sheet.shape.mount.ties.at(level.ties.front());
        const drawing::Place end = drawing::standing(side::tie_corner(sheet, tie));
        drawing::Text text;
        for (const std::size_t index : level.ties)
            text.words += (text.words.empty() ? "" : ", ") + sheet.shape.mount.ties.at(index).id;
        text.bold = true;
        text.across = drawing::Across::middle;
        text.on_paper = true;
        text.part = side::tie_part(tie);
        taken.add_where_free(scene, std::move(text),
                             {drawing::moved_mm(end, 0.0, 1.0), drawing::moved_mm(end, 0.0, -8.0)});
    }
    for (const drawing::Profile& one : sheet.framing) {
        const drawing::Box shown = drawing::common(one.box, sheet.shown);
        if (!drawing::has_area(shown)) continue;
        drawing::Text text;
        text.words = one.member.id;
        text.bold = true;
        text.across = drawing::Across::middle;
        text.upright = drawing::Upright::middle;
        text.on_paper = true;
        text.part = one.part;
        std::vector<drawing::Place> places;
        for (const double down : {0.85, 0.65, 0.5, 0.35}) {
            for (const double along : {0.5, 0.25, 0.1})
                places.push_back(drawing::standing(
                    {shown.low.x + along * drawing::width(shown), shown.high.y - down * drawing::height(shown)}));
        }
        taken.add_where_free(scene, std::move(text), places);
    }
}

}  // namespace

Scene joint_section(const SiteSubject& subject, double mm_per_in) {
    const drawing::Subject drawn{subject.resolved.detail, &subject.resolved, nullptr, subject.locale};
    const side::CutSheet sheet = sheet_of(drawn);
    Scene scene;
    scene.name = "Section";
    scene.bounds = sheet.shown;
    add_members(scene, sheet);
    side::add_cut_boards(scene, sheet);
    side::add_cut_layers(scene, sheet);
    side::add_cut_ties(scene, sheet);
    side::add_cut_post(scene, sheet);
    side::add_cut_fasteners(scene, sheet);
    add_row_below(scene, sheet, {1.2, mm_per_in, subject.locale.system});
    add_layer_names(scene, sheet, subject.locale);
    add_names(scene, sheet, mm_per_in);
    std::stable_partition(scene.items.begin(), scene.items.end(),
                          [](const drawing::Item& item) { return !std::holds_alternative<drawing::Text>(item); });
    return scene;
}

}  // namespace toehold::paper::site
