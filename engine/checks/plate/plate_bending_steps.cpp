#include "checks/plate/plate_bending_steps.h"

#include "checks/anchor/seating.h"

#include <fmt/format.h>

namespace toehold::checks {
namespace {

/// The line the bound stands on, with its numbers: plate_bearing_bound.h says why it is one.
std::string bound(const SupportBearing& bearing) {
    const std::string area = fmt::format("Q = {:.4g} in3", bearing.above_line_in3);
    if (bearing.line_slope == 0.0) return "p Q; " + area;
    if (bearing.above_line_in3 == 0.0 && bearing.line_offset_in == 0.0) return "F s";
    return fmt::format("F m (s + d) + p Q; m = {:.4g}, d = {:.4g} in, ", bearing.line_slope, bearing.line_offset_in) +
           area;
}

void add_support_steps(std::vector<Step>& steps, const CheckInput& input, const SupportBearing& bearing) {
    const std::string& id = input.demand.supports.at(bearing.support).id;
    steps.push_back({"F_" + id, "bearing on " + id, "demand", bearing.force_lb, "lb", "demand"});
    steps.push_back({"s_" + id, "its resultant beyond the section", "demand", bearing.arm_in, "in", "demand"});
    steps.push_back({"p_" + id, "its highest pressure", "demand", bearing.peak_psi, "psi", "demand"});
    steps.push_back({"M_" + id, "its moment about the section at most, however its pressure varies", bound(bearing),
                     bearing.moment_lb_in, "lb in", ""});
}

}  // namespace

std::vector<Step> section_steps(const CheckInput& input, const PlateSection& section) {
    const std::string through =
        section.anchor ? "through " + subject(input.resolved.anchors.at(*section.anchor)) : "tangent to the post";
    return {{"a", "direction from the post to the section, from x", through, degrees(section.normal_rad), "deg",
             "common practice"},
            {"c", "from the post's axis to the section", "given", section.offset_in, "in", "input"},
            {"b", "width of plate along the section", "given", section.chord.length(), "in", "input"}};
}

std::vector<Step> pull_steps(const CheckInput& input, const Strip& strip) {
    std::vector<Step> steps;
    for (const Pull& pull : strip.pulls) {
        const std::string& id = input.resolved.anchors.at(pull.anchor).id;
        steps.push_back({"T_" + id, "pull of anchor " + id, "demand", pull.tension_lb, "lb", "demand"});
        steps.push_back({"e_" + id, "from the section to anchor " + id, "given", pull.arm_in, "in", "input"});
    }
    steps.push_back({"M", "moment on the section; bearing beyond it would lessen it and is not counted", "sum of T e",
                     strip.moment_lb_in, "lb in", ""});
    steps.push_back({"w", "width that carries it", "45 degrees from each anchor, within the plate, less holes",
                     strip.width_in, "in", "common practice"});
    return steps;
}

std::vector<Step> bearing_steps(const CheckInput& input, const Strip& strip) {
    const BearingBeyond& beyond = strip.bearing;
    const bool at_most = !strip.supports.empty();
    std::vector<Step> steps;
    for (const SupportBearing& bearing : strip.supports) add_support_steps(steps, input, bearing);
    steps.push_back({"R", "bearing beyond the section", at_most ? "at most" : "demand", beyond.force_lb, "lb",
                     at_most ? "" : "demand"});
    steps.push_back({"e", "from the section to its resultant",
                     at_most ? "M / R" : "pressure varying evenly over each support",
                     beyond.moment_lb_in / beyond.force_lb, "in", ""});
    steps.push_back({"M", "moment on the section; pulls beyond it would lessen it and are not counted",
                     at_most ? "sum over the supports" : "R e", strip.moment_lb_in, "lb in", ""});
    steps.push_back({"w", "width that carries it",
                     at_most ? "45 degrees from the length under the highest pressure, within the plate, less holes"
                             : "45 degrees from the length of an even pressure with that resultant, within the plate, "
                               "less holes",
                     strip.width_in, "in", "common practice"});
    return steps;
}

std::vector<Step> stress_steps(const Strip& strip, double thickness_in) {
    const double modulus = strip.width_in * thickness_in * thickness_in / 6.0;
    if (!(modulus > 0.0)) return {};
    return {{"S", "elastic modulus of the strip", "w t^2/6", modulus, "in3", ""},
            {"f_b", "elastic bending stress at the section, for comparison", "M / S", strip.moment_lb_in / modulus,
             "psi", ""}};
}

std::string section_rule(const PlateSection& section) {
    if (section.anchor)
        return "Sections through each anchor's centre, square to the line from the post's axis and parallel to x and "
               "to y; moment by equilibrium of the bearing beyond, the hole taken out of the width.";
    return "Sections tangent to the post's outline, moment by equilibrium of what lies beyond: plate theory's own peak "
           "at a tube's corner is singular, growing with every refinement of a mesh.";
}

}  // namespace toehold::checks
