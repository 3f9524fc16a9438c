#include "checks/plate/bending_steps.h"

#include "catalog/resolve.h"
#include "checks/basis/result_parts.h"
#include "demand/demand.h"
#include "resistance/aluminum/member.h"
#include "resistance/steel/member.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace toehold::checks {
namespace {

using format::phrase;

using mechanics::PlateSection;
using mechanics::PlateStrip;
using mechanics::SupportBearing;

/// The line the bound stands on, with its numbers: mechanics/plate_strip/bearing_bound.h says why it is one.
std::string bound(const SupportBearing& bearing) {
    const std::string area = fmt::format("Q = {:.4g} in3", bearing.above_line_in3);
    if (bearing.line_slope == 0.0) return "p Q; " + area;
    if (bearing.above_line_in3 == 0.0 && bearing.line_offset_in == 0.0) return "F s";
    return fmt::format("F m (s + d) + p Q; m = {:.4g}, d = {:.4g} in, ", bearing.line_slope, bearing.line_offset_in) +
           area;
}

void add_support_steps(std::vector<Step>& steps, const CheckInput& input, const SupportBearing& bearing) {
    const std::string id = model::symbol(input.demand.supports.at(bearing.support).part);
    steps.push_back(demanded("F_" + id, phrase("bearing on {}", id), bearing.force_lb, "lb"));
    steps.push_back(demanded("s_" + id, phrase("its resultant past the section"), bearing.arm_in, "in"));
    steps.push_back(demanded("p_" + id, phrase("its peak pressure"), bearing.peak_psi, "psi"));
    steps.push_back({"M_" + id, phrase("its largest moment about the section for any pressure distribution"),
                     bound(bearing), bearing.moment_lb_in, "lb in", ""});
}

void in_aluminum(Capacity& capacity, double width_in, double thickness_in, const BesideWeld& used,
                 const model::Basis& basis) {
    namespace aluminum = resistance::aluminum;
    const std::string clause = "Aluminum Design Manual 2020 F.2 (from memory)";
    capacity.clause = clause + "; strip method and limit analysis";
    const aluminum::Moment nominal =
        aluminum::plate_moment(width_in, thickness_in, {used.yield_psi, used.ultimate_psi});
    const Adjusted yielding = available(nominal.yield_lb_in, aluminum::yield_safety, basis, clause);
    const Adjusted rupture = available(nominal.rupture_lb_in, aluminum::rupture_safety, basis, clause);
    const bool yields = yielding.value <= rupture.value;
    capacity.steps.push_back({"M_n", yields ? phrase("nominal moment, yielding") : phrase("nominal moment, rupture"),
                              yields ? "F_y Z" : "F_u Z", yields ? nominal.yield_lb_in : nominal.rupture_lb_in, "lb in",
                              clause});
    append(capacity.steps, yields ? yielding.steps : rupture.steps);
    capacity.value = yields ? yielding.value : rupture.value;
}

void in_steel(Capacity& capacity, const catalog::Metal& metal, double width_in, double thickness_in,
              const model::Basis& basis) {
    namespace steel = resistance::steel;
    const std::string clause = steel_clause(metal, "AISC 360-16 F11");
    capacity.clause = clause + "; strip method and limit analysis";
    const double nominal = steel::plate_moment_lb_in(width_in, thickness_in, metal.yield_psi);
    const Adjusted usable = available(nominal, steel::flexure_safety, basis, clause);
    capacity.steps.push_back(
        {"M_n", phrase("nominal moment, at most 1.6 times the yield moment"), "F_y Z", nominal, "lb in", clause});
    append(capacity.steps, usable.steps);
    capacity.value = usable.value;
}

std::vector<Step> pattern_steps(const mechanics::YieldPattern& pattern) {
    const bool across = pattern.shape == mechanics::YieldShape::across;
    std::vector<Step> steps = {
        {"m_y",
         across ? phrase("moment per unit width that the weakest yield line, straight across the plate, needs")
                : phrase("moment per unit width that the weakest yield-line pattern, around the post, needs"),
         "upper bound, work over length and turn of the hinges", pattern.moment_needed_lb, "lb", "limit analysis"},
        {"a_y", phrase("direction it tilts the plate, from +x"), "searched", degrees(pattern.normal_rad), "deg",
         "limit analysis"},
        {"c_y", phrase("distance of its axis from the post axis"), "searched", pattern.offset_in, "in",
         "limit analysis"}};
    steps.push_back(across ? Step{"L_y", phrase("metal along it, less holes"), "measured", pattern.length_in, "in", ""}
                           : Step{"s_y", phrase("width of the band around the post"), "searched", pattern.spread_in,
                                  "in", "limit analysis"});
    return steps;
}

}  // namespace

std::vector<Step> section_steps(const CheckInput& input, const PlateSection& section) {
    const std::string through =
        section.anchor ? "through anchor " + input.resolved.anchors.at(*section.anchor).id : "tangent to the post";
    return {{"a", phrase("direction from the post to the section, from +x"), through, degrees(section.normal_rad),
             "deg", "common practice"},
            from_file("c", phrase("distance from the post axis to the section"), section.offset_in, "in"),
            from_file("b", phrase("plate width along the section"), section.chord.length(), "in")};
}

std::vector<Step> tension_steps(const CheckInput& input, const PlateStrip& strip) {
    std::vector<Step> steps;
    for (const mechanics::StripAnchor& anchor : strip.anchors) {
        const std::string& id = input.resolved.anchors.at(anchor.anchor).id;
        steps.push_back(demanded("T_" + id, phrase("tension in anchor {}", id), anchor.tension_lb, "lb"));
        steps.push_back(
            anchor.across
                ? Step{"e_" + id, phrase("mean distance past the section of the rim that anchor {} presses with", id),
                       "nothing short of the section", anchor.arm_in, "in", ""}
                : from_file("e_" + id, phrase("distance from the section to anchor {}", id), anchor.arm_in, "in"));
    }
    steps.push_back({"M", phrase("moment on the section; bearing past it would reduce it and is not counted"),
                     "sum of T e", strip.moment_lb_in, "lb in", ""});
    steps.push_back({"w", phrase("width that resists it"), "45 degrees from each anchor, within the plate, less holes",
                     strip.width_in, "in", "common practice"});
    return steps;
}

std::vector<Step> bearing_steps(const CheckInput& input, const PlateStrip& strip) {
    const mechanics::BearingBeyond& beyond = strip.bearing;
    const bool at_most = !strip.supports.empty();
    std::vector<Step> steps;
    for (const SupportBearing& bearing : strip.supports) add_support_steps(steps, input, bearing);
    steps.push_back({"R", phrase("bearing past the section"), at_most ? "at most" : "demand", beyond.force_lb, "lb",
                     at_most ? "" : "demand", at_most ? Origin::derived : Origin::demanded});
    steps.push_back({"e", phrase("distance from the section to its resultant"),
                     at_most ? "M / R" : "linear pressure over each support", beyond.moment_lb_in / beyond.force_lb,
                     "in", ""});
    steps.push_back({"M", phrase("moment on the section; tension past it would reduce it and is not counted"),
                     at_most ? "sum over the supports" : "R e", strip.moment_lb_in, "lb in", ""});
    steps.push_back(
        {"w", phrase("width that resists it"),
         at_most ? "45 degrees from the length under the peak pressure, within the plate, less holes"
                 : "45 degrees from the length of a uniform pressure with that resultant, within the plate, less holes",
         strip.width_in, "in", "common practice"});
    return steps;
}

std::vector<Step> stress_steps(const PlateStrip& strip, double thickness_in) {
    const double modulus = strip.width_in * thickness_in * thickness_in / 6.0;
    if (!(modulus > 0.0)) return {};
    return {{"S", phrase("elastic section modulus of the strip"), "w t^2/6", modulus, "in3", ""},
            {"f_b", phrase("elastic bending stress at the section, for comparison"), "M / S",
             strip.moment_lb_in / modulus, "psi", ""}};
}

format::Phrase section_rule(const PlateSection& section) {
    if (section.anchor)
        return phrase(
            "Sections pass through each anchor center, square to the line from the post axis and parallel to x and y. "
            "The moment is from the bearing past the section; holes are deducted from the width.");
    return phrase(
        "Sections are tangent to the post outline, and the moment is from statics of what lies past them: the peak "
        "moment of plate theory at a tube corner is singular, growing with every refinement of a mesh.");
}

format::Phrase strength_rule(const model::Basis& basis) {
    if (model::plate_strength(basis) == model::PlateStrength::yield_line)
        return phrase("The verdict rests on the weakest yield-line pattern less a tenth, as the file chooses.");
    return phrase(
        "The verdict rests on a lower bound: the better of the strip and a moment field in equilibrium, and no better "
        "than the yield lines.");
}

std::vector<Step> bound_steps(const BoundValues& values, const model::Basis& basis) {
    const mechanics::YieldPattern& pattern = values.bounds.pattern;
    const double strip_lb = values.strip.intensity_lb(), field_lb = values.bounds.field_lb;
    std::vector<Step> steps;
    if (std::isfinite(strip_lb))
        steps.push_back(
            {"m_s", phrase("moment per unit width that the strip needs"), "M / w", strip_lb, "lb", "common practice"});
    if (std::isfinite(field_lb))
        steps.push_back({"m_f", phrase("moment per unit width that suffices: a moment field in equilibrium"),
                         "lower bound, von Mises", field_lb, "lb", "limit analysis"});
    if (std::isfinite(pattern.moment_needed_lb) && pattern.moment_needed_lb > 0.0)
        append(steps, pattern_steps(pattern));
    const double needed_lb = moment_needed_lb(values.strip, values.bounds, model::plate_strength(basis));
    if (!std::isfinite(needed_lb)) return steps;
    const bool by_lines = model::plate_strength(basis) == model::PlateStrength::yield_line;
    steps.push_back(
        {"m", phrase("moment per unit width that the verdict asks for"),
         pattern.moment_needed_lb > 0.0 ? (by_lines ? "m_y / 0.9" : "least of m_s and m_f, at least m_y") : "m_s",
         needed_lb, "lb", ""});
    steps.push_back({"m_c", phrase("available moment per unit width"), "M_c / w", values.per_width_lb, "lb", ""});
    steps.push_back(
        {"M_a", phrase("moment M at which the plate is fully used"), "M m_c / m", values.capacity_lb_in, "lb in", ""});
    return steps;
}

Capacity plate_moment(const catalog::Metal& metal, double width_in, const Welding& welding, const model::Basis& basis) {
    Capacity capacity;
    const double thickness_in = welding.thickness_in;
    const BesideWeld used = strengths(metal, welding);
    capacity.missing = used.missing;
    if (capacity.missing.empty() && !(used.yield_psi > 0.0))
        capacity.missing = phrase("Yield strength of {} is not specified.", metal.name);
    if (!capacity.missing.empty()) return capacity;
    capacity.steps = {from_file("t", phrase("plate thickness"), thickness_in, "in"),
                      {"Z", phrase("plastic section modulus of the strip"), "w t^2/4",
                       0.25 * width_in * thickness_in * thickness_in, "in3", ""}};
    capacity.steps.push_back(yield_step(metal, used));
    if (metal.kind == catalog::MetalKind::aluminum) {
        capacity.steps.push_back(ultimate_step(metal, used));
        in_aluminum(capacity, width_in, thickness_in, used, basis);
    } else {
        in_steel(capacity, metal, width_in, thickness_in, basis);
    }
    const bool asd = basis.method == model::Method::asd;
    capacity.steps.push_back(
        {"M_c", phrase("available moment"), asd ? "M_n / Omega" : "phi M_n", capacity.value, "lb in", ""});
    return capacity;
}

}  // namespace toehold::checks
