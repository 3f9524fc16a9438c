#include "drawing/marks/dimension.h"
#include "drawing/marks/figures.h"
#include "drawing/marks/shapes.h"
#include "drawing/plan_sheet.h"

#include <algorithm>
#include <functional>

namespace toehold::drawing {
namespace {

constexpr double first_row_mm = 7.5, row_mm = 7.0;
/// Numbers and bars at the anchors reach this far out of a plate without framing around it.
constexpr double marks_reach_mm = 20.0;
/// The words of a push from below stand between the plate and the rows.
constexpr double push_words_mm = 4.5;

struct Axis {
    Measure measure = Measure::across;
    double low_in = 0.0, high_in = 0.0;  ///< of the plate
    double beside_in = 0.0;              ///< edge of the sheet that the rows stand beside
    double feature_in = 0.0;             ///< edge of the plate on that side
};

struct HolePlace {
    double at_in = 0.0, across_in = 0.0;
};

std::vector<HolePlace> places_along(const std::vector<model::Hole>& holes, Measure measure) {
    std::vector<HolePlace> places;
    for (const model::Hole& hole : holes) {
        const bool across = measure == Measure::across;
        places.push_back({across ? hole.center.x_in : hole.center.y_in, across ? hole.center.y_in : hole.center.x_in});
    }
    return places;
}

/// The hole of that line nearest to the rows, where its extension line begins.
double nearest_hole(const std::vector<HolePlace>& holes, double at_in, double otherwise_in) {
    constexpr double same_in = 1e-3;
    bool found = false;
    double nearest = otherwise_in;
    for (const HolePlace& hole : holes) {
        if (std::abs(hole.at_in - at_in) > same_in) continue;
        nearest = found ? std::min(nearest, hole.across_in) : hole.across_in;
        found = true;
    }
    return nearest;
}

void add_rows(Scene& scene, const Axis& axis, const std::vector<model::Hole>& holes, double start_mm,
              units::System system) {
    constexpr std::size_t most_lines = 40;
    const std::vector<HolePlace> places = places_along(holes, axis.measure);
    std::vector<double> lines = {axis.low_in, axis.high_in};
    for (const HolePlace& hole : places) lines.push_back(hole.at_in);
    lines = distinct(std::move(lines));
    DimensionRow row{axis.measure, axis.beside_in, -start_mm, Pen::dimension, "plate"};
    if (lines.size() > 2 && lines.size() <= most_lines) {
        std::vector<DimensionEnd> ends;
        std::vector<std::string> words;
        for (const double at : lines) {
            if (!ends.empty()) words.push_back(length_figure(at - ends.back().at_in, system));
            ends.push_back({at, nearest_hole(places, at, axis.feature_in)});
        }
        add_chain(scene, row, ends, words);
        row.offset_mm -= row_mm;
    }
    add_dimension(scene, row, {axis.low_in, axis.feature_in}, {axis.high_in, axis.feature_in},
                  length_figure(axis.high_in - axis.low_in, system));
}

}  // namespace

void add_plan_dimensions(Scene& scene, const PlanSheet& sheet) {
    if (sheet.outline.empty()) return;
    const Box plate = around(sheet.outline);
    const Box& shown = sheet.shown;
    const std::vector<model::Hole>& holes = on_deck(sheet.subject.detail).plate.holes;
    const bool marks_in_the_way = has_marks(sheet.subject) && shown.low.x > plate.low.x - 1.5;
    const bool pushed = sheet.subject.overlay != nullptr && sheet.subject.overlay->push.has_value();
    const double below_mm = first_row_mm + (pushed ? push_words_mm : 0.0);
    scene.margin_mm += below_mm - first_row_mm;
    add_rows(scene, {Measure::across, plate.low.x, plate.high.x, shown.low.y, plate.low.y}, holes, below_mm,
             sheet.subject.system);
    const double left_mm = marks_in_the_way ? marks_reach_mm : first_row_mm;
    add_rows(scene, {Measure::upright, plate.low.y, plate.high.y, shown.low.x, plate.low.x}, holes, left_mm,
             sheet.subject.system);
    if (marks_in_the_way) scene.margin_mm += marks_reach_mm - first_row_mm;
}

}  // namespace toehold::drawing
