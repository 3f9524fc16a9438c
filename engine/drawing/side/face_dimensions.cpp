// Where the holes are: heights below the member's top, and distances from the edges of post or bracket.
#include "drawing/annotation/dimension.h"
#include "drawing/annotation/labels.h"
#include "drawing/annotation/overlay.h"
#include "drawing/plan/sheet.h"
#include "drawing/scene/shapes.h"
#include "drawing/side/face_sheet.h"

#include <algorithm>
#include <cmath>

namespace toehold::drawing::side {
namespace {

using format::phrase;

constexpr double face_first_row_mm = 7.5, face_row_mm = 7.0;
constexpr std::size_t most_face_ends = 40;

void add_chain_of(Scene& scene, const FaceSheet& sheet, const DimensionRow& row, std::vector<double> places,
                  double feature_in) {
    places = distinct(std::move(places));
    if (places.size() < 2 || places.size() > most_face_ends) return;
    std::vector<DimensionEnd> ends;
    std::vector<std::string> words;
    for (const double at : places) {
        if (!ends.empty()) words.push_back(length_figure(at - ends.back().at_in, sheet.subject.locale.system));
        ends.push_back({at, feature_in});
    }
    add_chain(scene, row, ends, words);
}

/// Down from the member's top: places, and the member's lower edge; beside them where the post ends.
void add_heights(Scene& scene, const FaceSheet& sheet) {
    const Shape& shape = sheet.shape;
    const double edge = -seat_half_width_in(shape);
    std::vector<double> heights{0.0};
    if (shape.depth_in > 0.0 && shape.slope == 0.0) heights.push_back(-shape.depth_in);
    for (const Fixing& fixing : sheet.fixings) heights.push_back(fixing.z_in);
    DimensionRow row{Measure::upright, sheet.shown.low.x, -face_first_row_mm, Pen::dimension, member_part(shape)};
    add_chain_of(scene, sheet, row, heights, edge);
    row.offset_mm -= face_row_mm;
    row.part = {model::PartKind::post};
    if (shape.post_low_in < 0.0)
        add_dimension(scene, row, {shape.post_low_in, edge}, {0.0, edge},
                      format::text(phrase("post {}", length_figure(-shape.post_low_in, sheet.subject.locale.system)),
                                   sheet.subject.locale));
}

/// A bracket's edges against the member's top.
void add_bracket_heights(Scene& scene, const FaceSheet& sheet) {
    if (!sheet.shape.mount.bracket) return;
    const Span heights = seat_heights_in(sheet.shape);
    const DimensionRow row{
        Measure::upright, sheet.shown.high.x, face_first_row_mm, Pen::dimension, {model::PartKind::plate}};
    add_chain_of(scene, sheet, row, {heights.low_in, 0.0, heights.high_in}, seat_half_width_in(sheet.shape));
}

void add_across(Scene& scene, const FaceSheet& sheet) {
    const double half = seat_half_width_in(sheet.shape), low = seat_heights_in(sheet.shape).low_in;
    std::vector<double> places{-half, half};
    for (const Fixing& fixing : sheet.fixings) places.push_back(sheet.right * fixing.x_in);
    const model::PartId part =
        sheet.shape.mount.bracket ? model::PartId{model::PartKind::plate} : model::PartId{model::PartKind::post};
    DimensionRow row{Measure::across, sheet.shown.low.y, -face_first_row_mm, Pen::dimension, part};
    if (distinct(places).size() > 2) {
        add_chain_of(scene, sheet, row, places, low);
        row.offset_mm -= face_row_mm;
    }
    add_dimension(scene, row, {-half, low}, {half, low}, length_figure(2.0 * half, sheet.subject.locale.system));
}

/// From a place to an edge, a stroke across each end.
void add_distance(Scene& scene, Point from, Point to, const model::PartId& part) {
    constexpr double stroke_mm = 1.6;
    const bool across = from.y == to.y;
    scene.items.emplace_back(line(from, to, Pen::snap, part));
    for (const Point& end : {from, to}) {
        const Place at = standing(end);
        scene.items.emplace_back(
            across ? line(moved_mm(at, 0.0, -stroke_mm), moved_mm(at, 0.0, stroke_mm), Pen::handle, part)
                   : line(moved_mm(at, -stroke_mm, 0.0), moved_mm(at, stroke_mm, 0.0), Pen::handle, part));
    }
}

void add_measures(Scene& scene, const FaceSheet& sheet, const Fixing& fixing) {
    constexpr double off_mm = 2.2, line_mm = 3.7;
    const model::PartId part = model::anchor_part(fixing.id);
    const Point at = sheet.at(fixing.x_in, fixing.z_in);
    const double side = at.x < 0.0 ? -1.0 : 1.0, edge = side * seat_half_width_in(sheet.shape);
    const double top = top_edge_in(sheet.shape, fixing.x_in);
    add_distance(scene, at, {edge, at.y}, part);
    add_distance(scene, at, {at.x, top}, part);
    const format::Locale& locale = sheet.subject.locale;
    const auto figure = [&](double in) { return length_figure(std::abs(in), locale.system); };
    double up_mm = off_mm + line_mm;
    for (const format::Phrase& words :
         {phrase("{} to the side", figure(edge - at.x)), phrase("{} below the top", figure(top - at.y))}) {
        Text text;
        text.at = standing({at.x - side * covered_radius_in(fixing), at.y}, {-side * off_mm, up_mm});
        text.words = format::text(words, locale);
        text.size = TextSize::small;
        text.across = side > 0.0 ? Across::right : Across::left;
        text.pen = Pen::handle;
        text.on_paper = true;
        text.part = part;
        scene.items.emplace_back(std::move(text));
        up_mm -= line_mm;
    }
}

}  // namespace

void add_face_dimensions(Scene& scene, const FaceSheet& sheet) {
    add_heights(scene, sheet);
    add_bracket_heights(scene, sheet);
    add_across(scene, sheet);
}

void add_face_measured(Scene& scene, const FaceSheet& sheet) {
    for (const model::PartId& part : sheet.options.measured) {
        const auto fixing = std::find_if(sheet.fixings.begin(), sheet.fixings.end(),
                                         [&](const Fixing& one) { return model::anchor_part(one.id) == part; });
        if (fixing != sheet.fixings.end()) add_measures(scene, sheet, *fixing);
    }
}

}  // namespace toehold::drawing::side
