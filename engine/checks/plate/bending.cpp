// The plate bent between its anchors and the post, between its toe and the post, and beyond its anchors, by the strip
// method (common practice): at every push, on every straight section tangent to the post or through an anchor. Not a
// point value: at a tube's corner the peak moment of plate theory has no limit.
#include "catalog/resolve.h"
#include "checks/basis/result_parts.h"
#include "checks/plate/bending_steps.h"
#include "checks/post/filler.h"
#include "checks/post/foot.h"
#include "demand/plate_on_deck/bed.h"
#include "model/capsule.h"

#include <algorithm>

namespace toehold::checks {
namespace {

using format::phrase;

using mechanics::PlateSection;
using mechanics::PlateStrip;

struct Governing {
    PlateStrip strip;
    const PlateSection* section = nullptr;
    std::size_t state = 0;

    void consider(PlateStrip&& other, const PlateSection& at, std::size_t in_state) {
        if (!(other.moment_lb_in > 0.0)) return;
        if (section && other.intensity_lb() <= strip.intensity_lb()) return;
        strip = std::move(other);
        section = &at;
        state = in_state;
    }
};

/// A section with what every push meets there.
struct Place {
    PlateSection section;
    std::vector<mechanics::AreaAtSection> areas;
};

struct WorstStrips {
    Governing anchors, bearing, beyond_anchors;
};

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

std::vector<Place> find_places(const CheckInput& input, const PostFoot& foot,
                               const std::vector<mechanics::Point>& anchors,
                               const std::vector<mechanics::Polygon>& patches) {
    const mechanics::PlateShape plate = plate_shape(on_deck(input.resolved.detail).plate);
    const mechanics::FootOutline outline{foot.tube.round, foot.tube.width_in, foot.tube.depth_in};
    std::vector<Place> places;
    for (auto&& sections :
         {mechanics::tangent_sections(outline, plate), mechanics::anchor_sections(outline, plate, anchors)}) {
        for (const PlateSection& section : sections) {
            places.push_back({section, {}});
            for (const mechanics::Polygon& patch : patches)
                places.back().areas.push_back(mechanics::area_at_section(section, patch));
        }
    }
    return places;
}

std::vector<mechanics::PatchForce> bearing(const demand::State& state) {
    std::vector<mechanics::PatchForce> forces;
    for (const demand::SupportForce& support : state.supports) {
        forces.push_back(
            {support.force_lb, point(support.at), support.peak_psi, point(support.peak_at), support.contact_area_in2});
    }
    return forces;
}

std::vector<double> tensions(const demand::State& state) {
    std::vector<double> tension_lb;
    for (const demand::AnchorForce& anchor : state.anchors) tension_lb.push_back(anchor.tension_lb);
    return tension_lb;
}

WorstStrips worst_strips(const CheckInput& input, const std::vector<Place>& places,
                         const std::vector<mechanics::AnchorFootprint>& anchors,
                         const std::vector<mechanics::Polygon>& patches) {
    WorstStrips worst;
    for (std::size_t index = 0; index < input.demand.states.size(); ++index) {
        const demand::State& state = input.demand.states[index];
        const std::vector<double> tension_lb = tensions(state);
        const std::vector<mechanics::PatchForce> supports = bearing(state);
        const std::vector<mechanics::PlanePressure> plane = mechanics::plane_pressures(supports, patches);
        for (const Place& place : places) {
            const PlateSection& section = place.section;
            Governing& bears = section.anchor ? worst.beyond_anchors : worst.bearing;
            bears.consider(mechanics::bearing_strip(section, place.areas, supports, plane), section, index);
            if (section.anchor) continue;
            for (PlateStrip& strip : mechanics::anchor_strips(section, tension_lb, anchors))
                worst.anchors.consider(std::move(strip), section, index);
        }
    }
    return worst;
}

/// The anchor with the largest moment on the section.
model::PartId leading_anchor(const CheckInput& input, const PlateStrip& strip) {
    const auto lead = std::max_element(strip.anchors.begin(), strip.anchors.end(),
                                       [](const mechanics::StripAnchor& a, const mechanics::StripAnchor& b) {
                                           return a.tension_lb * a.arm_in < b.tension_lb * b.arm_in;
                                       });
    return model::anchor_part(input.resolved.anchors.at(lead->anchor).id);
}

/// What the plate bears on where it presses most.
model::PartId leading_support(const CheckInput& input, std::size_t state_index) {
    model::PartId decking{model::PartKind::decking};
    if (on_deck(input.resolved.detail).layers.decking) return decking;
    const demand::State& state = input.demand.states.at(state_index);
    const auto lead = std::max_element(
        state.supports.begin(), state.supports.end(),
        [](const demand::SupportForce& a, const demand::SupportForce& b) { return a.force_lb < b.force_lb; });
    const demand::Support& support = input.demand.supports.at(static_cast<std::size_t>(lead - state.supports.begin()));
    if (support.kind != demand::SupportKind::member) return decking;
    return model::part_of(model::member(input.resolved.detail.framing, support.member));
}

model::PartId part_of(const Governing& worst) {
    using model::PartPiece;
    if (worst.section->anchor) return {model::PartKind::plate, {}, PartPiece::past_anchor};
    return {model::PartKind::plate, {}, worst.strip.anchors.empty() ? PartPiece::at_toe : PartPiece::at_anchors};
}

/// What lies past an anchor bends the plate there but is no link of its own: it comes back through the post's foot.
std::optional<Link> link_of(const CheckInput& input, const Governing& worst) {
    if (worst.section->anchor) return std::nullopt;
    const bool pulled = !worst.strip.anchors.empty();
    return link_between({model::PartKind::plate},
                        pulled ? leading_anchor(input, worst.strip) : leading_support(input, worst.state),
                        phrase("plate bending"));
}

CheckResult result_of(const CheckInput& input, const Governing& worst, bool welded) {
    const model::Plate& plate = on_deck(input.resolved.detail).plate;
    const PlateStrip& strip = worst.strip;
    CheckResult result;
    result.part = part_of(worst);
    result.unit = "lb in";
    result.demand = strip.moment_lb_in;
    result.direction_deg = degrees(input.demand.states.at(worst.state).direction_rad);
    result.link = link_of(input, worst);
    result.note = section_rule(*worst.section);
    append(result.steps, section_steps(input, *worst.section));
    append(result.steps, strip.anchors.empty() ? bearing_steps(input, strip) : tension_steps(input, strip));
    const Capacity strength =
        plate_moment(on_deck(input.resolved).plate_metal, strip.width_in,
                     {welded, weld_filler(input.resolved), plate.thickness_in}, input.resolved.detail.basis);
    const bool known = take_capacity(result, strength);
    append(result.steps, stress_steps(strip, plate.thickness_in));
    if (known) conclude(result);
    return result;
}

std::vector<CheckResult> plate_bending(const CheckInput& input) {
    const PostFoot foot = post_foot(input.resolved.detail.post);
    std::vector<mechanics::Point> centers;
    std::vector<mechanics::AnchorFootprint> footprints;
    for (const catalog::Anchor& anchor : input.resolved.anchors) {
        centers.push_back(point(in_plan(anchor.at)));
        footprints.push_back({centers.back(), catalog::footprint_radius_in(anchor)});
    }
    const std::vector<mechanics::Polygon> patches = patch_outlines(input);
    const std::vector<Place> places = find_places(input, foot, centers, patches);
    const WorstStrips worst = worst_strips(input, places, footprints, patches);
    std::vector<CheckResult> results;
    for (const Governing* governing : {&worst.anchors, &worst.bearing, &worst.beyond_anchors}) {
        if (governing->section) results.push_back(result_of(input, *governing, foot.welded));
    }
    return results;
}

const RegisterCheck registered{
    {"plate-bending", phrase("Plate bending"), "AISC 360-16 F11; strip method, common practice",
     phrase("Plate bending on straight sections tangent to the post: between the post and the anchors in tension, and "
            "between the post and the toe in bearing; and through each anchor, under the bearing past it."),
     plate_bending},
    {model::MountKind::plate_on_deck}};

}  // namespace
}  // namespace toehold::checks
