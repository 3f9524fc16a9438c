#include "drawing/elevation_sheet.h"
#include "drawing/marks/dimension.h"
#include "drawing/marks/figures.h"
#include "drawing/marks/shapes.h"

#include <algorithm>

namespace toehold::drawing {
namespace {

/// Supports and the framing's end on the sheet, from the post's axis.
void add_row_below(Scene& scene, const ElevationSheet& sheet) {
    const model::Framing& framing = sheet.subject.detail.framing;
    std::vector<double> places = {0.0};
    const auto add = [&](double at) {
        if (at > sheet.shown.low.x && at < sheet.shown.high.x) places.push_back(at);
    };
    if (framing.joists && framing.joists->along == model::PlanAxis::y) {
        for (const model::JoistSupport& support : framing.supports) add(support.at_in);
    }
    const DeckEnds ends = deck_ends(framing, {model::PlanAxis::y, 0.0});
    add(ends.low_in);
    add(ends.high_in);
    places = distinct(std::move(places));
    constexpr std::size_t most_ends = 20;
    if (places.size() < 2 || places.size() > most_ends) return;
    std::vector<DimensionEnd> along;
    std::vector<std::string> words;
    for (const double at : places) {
        if (!along.empty()) words.push_back(length_figure(at - along.back().at_in, sheet.subject.system));
        along.push_back({at, sheet.shown.low.y});
    }
    add_chain(scene, {Measure::across, sheet.shown.low.y, -6.5, Pen::dimension, {}}, along, words);
}

}  // namespace

void add_elevation_dimensions(Scene& scene, const ElevationSheet& sheet) {
    constexpr double first_row_mm = 9.0, row_mm = 7.5;
    const units::System system = sheet.subject.system;
    const double side = push_side(sheet), beside = side * 0.5 * sheet.post_in;
    const double surface = below_surface_in(sheet.subject.detail), push = push_height_in(sheet);
    DimensionRow row{Measure::upright, beside, side * first_row_mm, Pen::dimension, "push"};
    if (push > 0.0)
        add_dimension(scene, row, {0.0, beside}, {push, beside}, "lever arm " + length_figure(push, system));
    row.offset_mm += side * row_mm;
    row.part = "guard";
    if (sheet.top_in > surface) {
        add_dimension(scene, row, {surface, beside}, {sheet.top_in, beside},
                      "guard " + length_figure(sheet.top_in - surface, system));
    }
    add_row_below(scene, sheet);
    Text note;
    note.at = standing(sheet.shown.low, {0.0, -17.0});
    note.words = "Seen along the rail. " + unit_note(system);
    note.size = TextSize::fine;
    note.pen = Pen::dimension;
    scene.items.emplace_back(std::move(note));
}

}  // namespace toehold::drawing
