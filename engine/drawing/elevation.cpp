#include "drawing/drawings.h"
#include "drawing/elevation_sheet.h"
#include "drawing/marks/finish.h"
#include "drawing/marks/shapes.h"
#include "drawing/plan_sheet.h"
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
    constexpr double least_in = 12.0, beyond_in = 3.0, inward = 0.6, inward_at_most = 1.3, outward = 0.35;
    const double size = std::max(least_in, sheet.top_in);
    Box shown{{std::min(sheet.plate.low.x - beyond_in, -inward * size), -sheet.layers_in - beyond_in},
              {std::max(sheet.plate.high.x + beyond_in, outward * size), std::max(size, push_height_in(sheet))}};
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
    ElevationSheet sheet{subject, profiles(detail, beyond_everything), 0.0, 0.0,
                         0.0,     plate_box(on_deck(detail).plate),    {}};
    sheet.top_in = std::max(0.0, model::lever_height_in(detail));
    sheet.layers_in = std::max(0.0, model::thickness_in(on_deck(detail).layers));
    const auto* const wood = std::get_if<model::WoodPost>(&detail.post);
    sheet.post_in = std::abs(wood != nullptr ? wood->depth_in : post_foot(detail.post).depth_in);
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
    scene.name = "Elevation";
    scene.bounds = sheet.shown;
    scene.margin_mm = 18.0;
    add_elevation_supports(scene, sheet);
    add_elevation_framing(scene, sheet);
    add_guard(scene, sheet);
    add_elevation_dimensions(scene, sheet);
    add_elevation_push(scene, sheet);
    return finished(std::move(scene));
}

}  // namespace toehold::drawing
