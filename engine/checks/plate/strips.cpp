#include "checks/plate/strips.h"

#include "catalog/resolve.h"
#include "demand/plate_on_deck/bed.h"
#include "model/capsule.h"

#include <algorithm>
#include <cmath>
#include <iterator>
#include <utility>

namespace toehold::checks {
namespace {

using mechanics::PlateSection;
using mechanics::PlateStrip;

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

std::vector<mechanics::Polygon> patch_outlines(const CheckInput& input) {
    const demand::Bed bed = demand::find_bed(input.resolved);
    std::vector<mechanics::Polygon> outlines;
    // Supports that are not this bed's (a demand made otherwise) have no outline here; their force is concentrated.
    if (bed.patches.size() != input.demand.supports.size()) return outlines;
    for (const mechanics::BedPatch& patch : bed.patches) outlines.push_back(patch.outline);
    return outlines;
}

void consider(GoverningStrip& worst, PlateStrip&& other, const PlateSection& at, std::size_t state) {
    if (!(other.moment_lb_in > 0.0)) return;
    if (worst.section && other.intensity_lb() <= worst.strip.intensity_lb()) return;
    worst = {std::move(other), &at, state};
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

std::vector<mechanics::PlateHole> open_holes(const PlateStrips& strips) {
    std::vector<mechanics::PlateHole> open;
    std::copy_if(strips.plate.holes.begin(), strips.plate.holes.end(), std::back_inserter(open),
                 [&](const mechanics::PlateHole& hole) { return !is_covered(hole, strips.anchors); });
    return open;
}

PlateStrips plate_strips(const CheckInput& input, const PostFoot& foot) {
    PlateStrips strips;
    strips.foot = {foot.tube.round, foot.tube.width_in, foot.tube.depth_in};
    strips.plate = plate_shape(on_deck(input.resolved.detail).plate);
    strips.patches = patch_outlines(input);
    std::vector<mechanics::Point> centers;
    for (const catalog::Anchor& anchor : input.resolved.anchors) {
        centers.push_back(point(in_plan(anchor.at)));
        strips.anchors.push_back({centers.back(), catalog::footprint_radius_in(anchor)});
    }
    for (auto&& sections : {mechanics::tangent_sections(strips.foot, strips.plate),
                            mechanics::anchor_sections(strips.foot, strips.plate, centers)}) {
        for (const PlateSection& section : sections) {
            strips.places.push_back({section, {}});
            for (const mechanics::Polygon& patch : strips.patches)
                strips.places.back().areas.push_back(mechanics::area_at_section(section, patch));
        }
    }
    return strips;
}

WorstStrips worst_strips(const CheckInput& input, const PlateStrips& strips, std::span<const std::size_t> states) {
    WorstStrips worst;
    for (const std::size_t index : states) {
        const demand::State& state = input.demand.states[index];
        const std::vector<double> tension_lb = tensions_of(state);
        const std::vector<mechanics::PatchForce> supports = bearing_of(state);
        const std::vector<mechanics::PlanePressure> plane = mechanics::plane_pressures(supports, strips.patches);
        for (const StripPlace& place : strips.places) {
            const PlateSection& section = place.section;
            GoverningStrip& bears = section.anchor ? worst.beyond_anchors : worst.bearing;
            consider(bears, mechanics::bearing_strip(section, place.areas, supports, plane), section, index);
            if (section.anchor) continue;
            for (PlateStrip& strip : mechanics::anchor_strips(section, tension_lb, strips.anchors))
                consider(worst.anchors, std::move(strip), section, index);
        }
    }
    return worst;
}

std::vector<mechanics::PatchForce> bearing_of(const demand::State& state) {
    std::vector<mechanics::PatchForce> forces;
    for (const demand::SupportForce& support : state.supports) {
        forces.push_back(
            {support.force_lb, point(support.at), support.peak_psi, point(support.peak_at), support.contact_area_in2});
    }
    return forces;
}

std::vector<double> tensions_of(const demand::State& state) {
    std::vector<double> tension_lb;
    for (const demand::AnchorForce& anchor : state.anchors) tension_lb.push_back(anchor.tension_lb);
    return tension_lb;
}

}  // namespace toehold::checks
