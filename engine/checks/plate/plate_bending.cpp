// The plate bent between its anchors and the post, and between its toe and the post, by the strip method (common
// practice): at every push, on every straight section tangent to the post. Not a point value: at a tube's corner the
// peak moment of plate theory has no limit.
#include "checks/anchor/anchor_seating.h"
#include "checks/plate/plate_strength.h"
#include "checks/plate/plate_strip.h"
#include "demand/bed.h"

#include <algorithm>
#include <numbers>

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

struct WorstStrips {
    Governing anchors, bearing;
};

std::vector<mechanics::Polygon> patch_outlines(const CheckInput& input) {
    const demand::Bed bed = demand::find_bed(input.resolved);
    std::vector<mechanics::Polygon> outlines;
    // Supports that are not this bed's (a demand made otherwise) have no outline here; their force is concentrated.
    if (bed.patches.size() != input.demand.supports.size()) return outlines;
    for (const mechanics::BedPatch& patch : bed.patches) outlines.push_back(patch.outline);
    return outlines;
}

WorstStrips worst_strips(const CheckInput& input, const std::vector<PlateSection>& sections) {
    std::vector<model::Position> places;
    for (const catalog::Anchor& anchor : input.resolved.anchors) places.push_back(anchor.at);
    const std::vector<mechanics::Polygon> patches = patch_outlines(input);
    WorstStrips worst;
    for (std::size_t index = 0; index < input.demand.states.size(); ++index) {
        const demand::State& state = input.demand.states[index];
        const std::vector<Pressure> under = pressures(state, patches);
        for (const PlateSection& section : sections) {
            for (Strip& strip : anchor_strips(section, state, places))
                worst.anchors.consider(std::move(strip), section, index);
            worst.bearing.consider(bearing_strip(section, under), section, index);
        }
    }
    return worst;
}

void add_section_steps(CheckResult& result, const Governing& worst) {
    const PlateSection& section = *worst.section;
    result.steps = {{"a", "direction from the post to the section, from x", "tangent to the post",
                     section.normal_rad * 180.0 / std::numbers::pi, "deg", "common practice"},
                    {"c", "from the post's axis to the section", "given", section.offset_in, "in", "input"},
                    {"b", "width of plate along the section", "given", section.chord.length(), "in", "input"}};
}

void add_pull_steps(CheckResult& result, const CheckInput& input, const Strip& strip) {
    for (const Pull& pull : strip.pulls) {
        const std::string& id = input.resolved.anchors.at(pull.anchor).id;
        result.steps.push_back({"T_" + id, "pull of anchor " + id, "demand", pull.tension_lb, "lb", "demand"});
        result.steps.push_back({"e_" + id, "from the section to anchor " + id, "given", pull.arm_in, "in", "input"});
    }
    result.steps.push_back({"M", "moment on the section", "sum of T e", strip.moment_lb_in, "lb in", ""});
    result.steps.push_back({"w", "width that carries it", "45 degrees from each anchor, within the plate, less holes",
                            strip.width_in, "in", "common practice"});
}

void add_bearing_steps(CheckResult& result, const Strip& strip) {
    const BearingBeyond& beyond = strip.bearing;
    result.steps.push_back({"R", "bearing beyond the section", "demand", beyond.force_lb, "lb", "demand"});
    result.steps.push_back({"e", "from the section to its resultant", "pressure varying evenly over each support",
                            beyond.moment_lb_in / beyond.force_lb, "in", ""});
    result.steps.push_back({"M", "moment on the section", "R e", strip.moment_lb_in, "lb in", ""});
    result.steps.push_back({"w", "width that carries it",
                            "45 degrees from the length of an even pressure with that resultant, within the plate, "
                            "less holes",
                            strip.width_in, "in", "common practice"});
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
    if (input.resolved.detail.layers.decking) return "decking";
    const demand::State& state = input.demand.states.at(state_index);
    const auto lead = std::max_element(
        state.supports.begin(), state.supports.end(),
        [](const demand::SupportForce& a, const demand::SupportForce& b) { return a.force_lb < b.force_lb; });
    const demand::Support& support = input.demand.supports.at(static_cast<std::size_t>(lead - state.supports.begin()));
    switch (support.kind) {
        case demand::SupportKind::block:
            return "block " + support.id;
        case demand::SupportKind::joist:
            return "joist " + support.id;
        default:
            return "decking";
    }
}

CheckResult result_of(const CheckInput& input, const Governing& worst, bool welded) {
    const model::Plate& plate = input.resolved.detail.plate;
    const bool pulled = !worst.strip.pulls.empty();
    CheckResult result;
    result.subject = pulled ? "plate at its anchors" : "plate at its toe";
    result.unit = "lb in";
    result.demand = worst.strip.moment_lb_in;
    result.direction_deg = degrees(input.demand.states.at(worst.state).direction_rad);
    result.link = Link{"plate", pulled ? leading_anchor(input, worst.strip) : leading_support(input, worst.state),
                       "plate in bending"};
    add_section_steps(result, worst);
    if (pulled) {
        add_pull_steps(result, input, worst.strip);
    } else {
        add_bearing_steps(result, worst.strip);
    }
    const Capacity strength = plate_moment(input.resolved.plate_metal, worst.strip.width_in, plate.thickness_in, welded,
                                           input.resolved.detail.basis);
    if (!take_capacity(result, strength)) return result;
    conclude(result);
    return result;
}

std::vector<CheckResult> plate_bending(const CheckInput& input) {
    const PostFoot foot = post_foot(input.resolved.detail.post);
    const std::vector<PlateSection> sections = tangent_sections(foot, input.resolved.detail.plate);
    const WorstStrips worst = worst_strips(input, sections);
    std::vector<CheckResult> results;
    for (const Governing* governing : {&worst.anchors, &worst.bearing}) {
        if (governing->section) results.push_back(result_of(input, *governing, foot.welded));
    }
    return results;
}

const RegisterCheck registered{{"plate-bending", "Plate in bending", "AISC 360-16 F11; strip method, common practice",
                                "The plate on straight sections tangent to the post, between it and the anchors that "
                                "pull, and between it and the toe that bears.",
                                plate_bending}};

}  // namespace
}  // namespace toehold::checks
