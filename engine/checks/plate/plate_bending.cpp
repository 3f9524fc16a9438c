// The plate bent between its anchors and the post, between its toe and the post, and beyond its anchors, by the strip
// method (common practice): at every push, on every straight section tangent to the post or through an anchor. Not a
// point value: at a tube's corner the peak moment of plate theory has no limit.
#include "checks/anchor/seating.h"
#include "checks/plate/plate_bending_steps.h"
#include "checks/plate/plate_strength.h"
#include "demand/plate_on_deck/bed.h"

#include <algorithm>

namespace toehold::checks {
namespace {

struct Governing {
    Strip strip;
    const PlateSection* section = nullptr;
    std::size_t state = 0;

    void consider(Strip&& other, const PlateSection& at, std::size_t in_state) {
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
    std::vector<AreaAtSection> areas;
};

struct WorstStrips {
    Governing anchors, bearing, beyond_anchors;
};

std::vector<mechanics::Polygon> patch_outlines(const CheckInput& input) {
    const demand::Bed bed = demand::find_bed(input.resolved);
    std::vector<mechanics::Polygon> outlines;
    // Supports that are not this bed's (a demand made otherwise) have no outline here; their force is concentrated.
    if (bed.patches.size() != input.demand.supports.size()) return outlines;
    for (const mechanics::BedPatch& patch : bed.patches) outlines.push_back(patch.outline);
    return outlines;
}

std::vector<Place> find_places(const CheckInput& input, const PostFoot& foot,
                               const std::vector<model::Position>& anchors,
                               const std::vector<mechanics::Polygon>& patches) {
    const model::Plate& plate = on_deck(input.resolved.detail).plate;
    std::vector<Place> places;
    for (auto&& sections : {tangent_sections(foot, plate), anchor_sections(foot, plate, anchors)}) {
        for (const PlateSection& section : sections) {
            places.push_back({section, {}});
            for (const mechanics::Polygon& patch : patches)
                places.back().areas.push_back(area_at_section(section, patch));
        }
    }
    return places;
}

WorstStrips worst_strips(const CheckInput& input, const std::vector<Place>& places,
                         const std::vector<model::Position>& anchors, const std::vector<mechanics::Polygon>& patches) {
    WorstStrips worst;
    for (std::size_t index = 0; index < input.demand.states.size(); ++index) {
        const demand::State& state = input.demand.states[index];
        const std::vector<Pressure> under = pressures(state, patches);
        for (const Place& place : places) {
            const PlateSection& section = place.section;
            Governing& bearing = section.anchor ? worst.beyond_anchors : worst.bearing;
            bearing.consider(bearing_strip(section, place.areas, state, under), section, index);
            if (section.anchor) continue;
            for (Strip& strip : anchor_strips(section, state, anchors))
                worst.anchors.consider(std::move(strip), section, index);
        }
    }
    return worst;
}

/// The anchor with the largest moment on the section.
std::string leading_anchor(const CheckInput& input, const Strip& strip) {
    const auto lead = std::max_element(strip.pulls.begin(), strip.pulls.end(), [](const Pull& a, const Pull& b) {
        return a.tension_lb * a.arm_in < b.tension_lb * b.arm_in;
    });
    return subject(input.resolved.anchors.at(lead->anchor));
}

/// What the plate bears on where it presses most.
std::string leading_support(const CheckInput& input, std::size_t state_index) {
    if (on_deck(input.resolved.detail).layers.decking) return "decking";
    const demand::State& state = input.demand.states.at(state_index);
    const auto lead = std::max_element(
        state.supports.begin(), state.supports.end(),
        [](const demand::SupportForce& a, const demand::SupportForce& b) { return a.force_lb < b.force_lb; });
    const demand::Support& support = input.demand.supports.at(static_cast<std::size_t>(lead - state.supports.begin()));
    if (support.kind != demand::SupportKind::member) return "decking";
    return model::subject(model::member(input.resolved.detail.framing, support.member));
}

std::string subject_of(const Governing& worst) {
    if (worst.section->anchor) return "plate beyond its anchors";
    return worst.strip.pulls.empty() ? "plate at its toe" : "plate at its anchors";
}

/// What lies beyond an anchor bends the plate there but is no link of its own: it comes back through the post's foot.
std::optional<Link> link_of(const CheckInput& input, const Governing& worst) {
    if (worst.section->anchor) return std::nullopt;
    const bool pulled = !worst.strip.pulls.empty();
    return Link{"plate", pulled ? leading_anchor(input, worst.strip) : leading_support(input, worst.state),
                "plate in bending"};
}

CheckResult result_of(const CheckInput& input, const Governing& worst, bool welded) {
    const model::Plate& plate = on_deck(input.resolved.detail).plate;
    const Strip& strip = worst.strip;
    CheckResult result;
    result.subject = subject_of(worst);
    result.unit = "lb in";
    result.demand = strip.moment_lb_in;
    result.direction_deg = degrees(input.demand.states.at(worst.state).direction_rad);
    result.link = link_of(input, worst);
    result.note = section_rule(*worst.section);
    append(result.steps, section_steps(input, *worst.section));
    append(result.steps, strip.pulls.empty() ? bearing_steps(input, strip) : pull_steps(input, strip));
    const Capacity strength = plate_moment(on_deck(input.resolved).plate_metal, strip.width_in, plate.thickness_in,
                                           welded, input.resolved.detail.basis);
    const bool known = take_capacity(result, strength);
    append(result.steps, stress_steps(strip, plate.thickness_in));
    if (known) conclude(result);
    return result;
}

std::vector<CheckResult> plate_bending(const CheckInput& input) {
    const PostFoot foot = post_foot(input.resolved.detail.post);
    std::vector<model::Position> anchors;
    for (const catalog::Anchor& anchor : input.resolved.anchors) anchors.push_back(in_plan(anchor.at));
    const std::vector<mechanics::Polygon> patches = patch_outlines(input);
    const std::vector<Place> places = find_places(input, foot, anchors, patches);
    const WorstStrips worst = worst_strips(input, places, anchors, patches);
    std::vector<CheckResult> results;
    for (const Governing* governing : {&worst.anchors, &worst.bearing, &worst.beyond_anchors}) {
        if (governing->section) results.push_back(result_of(input, *governing, foot.welded));
    }
    return results;
}

const RegisterCheck registered{
    {"plate-bending", "Plate in bending", "AISC 360-16 F11; strip method, common practice",
     "The plate on straight sections tangent to the post (its weld line), between it and the "
     "anchors that pull and between it and the toe that bears; and through each anchor, "
     "under the bearing beyond it.",
     plate_bending},
    {model::MountKind::plate_on_deck}};

}  // namespace
}  // namespace toehold::checks
