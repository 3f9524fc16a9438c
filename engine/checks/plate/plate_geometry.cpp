#include "checks/plate/plate_geometry.h"

#include "catalog/resolve.h"
#include "demand/plate_on_deck/bed.h"
#include "model/capsule.h"

#include <algorithm>
#include <cmath>
#include <iterator>

namespace toehold::checks {
namespace {

mechanics::Point point(model::Position at) { return {at.x_in, at.y_in}; }

mechanics::PlateHole plate_hole(const model::Hole& hole) {
    const model::Capsule shape = model::capsule(hole);
    return {point(shape.axis.from), point(shape.axis.to), shape.radius_in};
}

mechanics::PlateShape plate_shape(const model::Plate& plate) {
    mechanics::PlateShape shape{demand::outline(plate), {}};
    for (const model::Hole& hole : plate.holes) shape.holes.push_back(plate_hole(hole));
    return shape;
}

bool is_covered(const mechanics::PlateHole& hole, const std::vector<mechanics::AnchorFootprint>& anchors) {
    return std::any_of(anchors.begin(), anchors.end(), [&](const mechanics::AnchorFootprint& anchor) {
        const auto reaches = [&](mechanics::Point end) {
            return std::hypot(end.x - anchor.center.x, end.y - anchor.center.y) + hole.radius_in <= anchor.radius_in;
        };
        return reaches(hole.from) && reaches(hole.to);
    });
}

}  // namespace

PlateGeometry plate_geometry(const catalog::Resolved& resolved, const PostFoot& foot) {
    PlateGeometry geometry{
        {foot.tube.round, foot.tube.width_in, foot.tube.depth_in}, plate_shape(on_deck(resolved.detail).plate), {}};
    for (const catalog::Anchor& anchor : resolved.anchors)
        geometry.anchors.push_back({point(in_plan(anchor.at)), catalog::footprint_radius_in(anchor)});
    return geometry;
}

std::vector<mechanics::PlateHole> open_holes(const PlateGeometry& geometry) {
    std::vector<mechanics::PlateHole> open;
    std::copy_if(geometry.plate.holes.begin(), geometry.plate.holes.end(), std::back_inserter(open),
                 [&](const mechanics::PlateHole& hole) { return !is_covered(hole, geometry.anchors); });
    return open;
}

std::vector<mechanics::PatchForce> bearing_of(const demand::State& state) {
    std::vector<mechanics::PatchForce> forces;
    forces.reserve(state.supports.size());
    for (const demand::SupportForce& support : state.supports) {
        forces.push_back(
            {support.force_lb, point(support.at), support.peak_psi, point(support.peak_at), support.contact_area_in2});
    }
    return forces;
}

std::vector<double> tensions_of(const demand::State& state) {
    std::vector<double> tension_lb;
    tension_lb.reserve(state.anchors.size());
    for (const demand::AnchorForce& anchor : state.anchors) tension_lb.push_back(anchor.tension_lb);
    return tension_lb;
}

}  // namespace toehold::checks
