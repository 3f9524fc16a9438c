#include "drawing/annotation/dimension.h"
#include "drawing/annotation/labels.h"
#include "drawing/annotation/overlay.h"
#include "drawing/drawings.h"
#include "drawing/elevation/sheet.h"
#include "drawing/plan/sheet.h"
#include "drawing/scene/shapes.h"
#include "drawing/side/guard.h"
#include "model/base_detail.h"
#include "model/placement.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace toehold::drawing {
namespace {

/// Seen from beyond every member, so that all of them stand behind.
constexpr SectionPlane beyond_everything{model::PlanAxis::y, 1e5};

Box plate_box(const model::Plate& plate) {
    std::vector<Point> places;
    for (const model::Position& corner : model::polygon(plate.outline)) places.push_back({corner.y_in, 0.0});
    Box box = around(places);
    box.high.y = std::max(0.0, plate.thickness_in);
    return box;
}

/// From behind the post as far as supports near it, to the framing's outer end; the guard above, the framing below.
Box shown_box(const ElevationSheet& sheet) {
    constexpr double least_in = 12.0, beyond_in = 3.0, least_inward = 0.6, further_inward = 0.85, inward_at_most = 1.3,
                     outward = 0.35;
    const double size = std::max(least_in, sheet.top_in);
    // A post that passes the deck has the name of the walking surface beside its moment.
    const double inward = sheet.plate.low.y < 0.0 ? further_inward : least_inward;
    Box shown{{std::min(sheet.plate.low.x - beyond_in, -inward * size), -sheet.layers_in - beyond_in},
              {std::max(sheet.plate.high.x + beyond_in, outward * size), std::max(size, push_height_in(sheet))}};
    shown.low.y = std::min(shown.low.y, sheet.plate.low.y - beyond_in);
    for (const Profile& one : sheet.framing) shown.low.y = std::min(shown.low.y, one.box.low.y - beyond_in);
    const model::Framing& framing = sheet.subject.detail.framing;
    if (!framing.joists || framing.joists->along != model::PlanAxis::y) return shown;
    for (const model::JoistSupport& support : framing.supports) {
        const double reach = support.at_in - 0.5 * support.bearing_in - beyond_in;
        if (reach > -inward_at_most * size) shown.low.x = std::min(shown.low.x, reach);
    }
    return shown;
}

}  // namespace

ElevationSheet elevation_sheet(const Subject& subject) {
    const model::BaseDetail& detail = subject.detail;
    const auto* const plate = std::get_if<model::PlateOnDeck>(&detail.mount);
    ElevationSheet sheet{subject, profiles(detail, beyond_everything),
                         0.0,     0.0,
                         0.0,     plate != nullptr ? plate_box(plate->plate) : side::overlap_box(detail),
                         {}};
    sheet.top_in = std::max(0.0, model::lever_height_in(detail));
    sheet.layers_in = plate != nullptr ? std::max(0.0, model::thickness_in(plate->layers)) : 0.0;
    sheet.post_in = std::abs(model::shaft(detail.post).depth_in);
    sheet.shown = shown_box(sheet);
    return sheet;
}

double push_height_in(const ElevationSheet& sheet) {
    const Overlay* const overlay = sheet.subject.overlay;
    return overlay != nullptr && overlay->push ? overlay->push->height_in : sheet.top_in;
}

double push_side(const ElevationSheet& sheet) {
    const Overlay* const overlay = sheet.subject.overlay;
    constexpr double along_the_rail = 1e-6;
    return overlay != nullptr && overlay->push && std::sin(overlay->push->direction_rad) < -along_the_rail ? -1.0 : 1.0;
}

Scene elevation(const Subject& subject) {
    const ElevationSheet sheet = elevation_sheet(subject);
    Scene scene;
    scene.name = format::text(format::phrase("Elevation"), subject.locale);
    scene.bounds = sheet.shown;
    scene.margin_mm = 18.0;
    add_elevation_supports(scene, sheet);
    add_elevation_framing(scene, sheet);
    if (std::holds_alternative<model::SideFastened>(subject.detail.mount)) {
        side::add_guard(scene, sheet);
    } else {
        add_guard(scene, sheet);
    }
    add_elevation_dimensions(scene, sheet);
    add_elevation_push(scene, sheet);
    return finished(std::move(scene));
}

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
        if (!along.empty()) words.push_back(length_figure(at - along.back().at_in, sheet.subject.locale.system));
        along.push_back({at, sheet.shown.low.y});
    }
    add_chain(scene, {Measure::across, sheet.shown.low.y, -6.5, Pen::dimension, {}}, along, words);
}

}  // namespace

void add_elevation_dimensions(Scene& scene, const ElevationSheet& sheet) {
    using format::phrase;
    constexpr double first_row_mm = 9.0, row_mm = 7.5;
    const format::Locale& locale = sheet.subject.locale;
    const double side = push_side(sheet), beside = side * 0.5 * sheet.post_in;
    const double surface = below_surface_in(sheet.subject.detail), push = push_height_in(sheet);
    DimensionRow row{Measure::upright, beside, side * first_row_mm, Pen::dimension, {model::PartKind::push}};
    if (push > 0.0)
        add_dimension(scene, row, {0.0, beside}, {push, beside},
                      format::text(phrase("lever arm {}", length_figure(push, locale.system)), locale));
    row.offset_mm += side * row_mm;
    row.part = {model::PartKind::guard};
    if (sheet.top_in > surface) {
        add_dimension(scene, row, {surface, beside}, {sheet.top_in, beside},
                      format::text(phrase("guard {}", length_figure(sheet.top_in - surface, locale.system)), locale));
    }
    add_row_below(scene, sheet);
    Text note;
    note.at = standing(sheet.shown.low, {0.0, -17.0});
    note.words = format::text(phrase("Seen along the rail. {}", unit_note(locale)), locale);
    note.size = TextSize::fine;
    note.pen = Pen::dimension;
    scene.items.emplace_back(std::move(note));
}

}  // namespace toehold::drawing
