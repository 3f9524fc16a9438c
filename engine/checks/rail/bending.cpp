// A span of rail in bending. As a simple span it is bent the most of all that lies on posts which do not give way; on
// posts that do, a continuous rail may be bent more, and of that the solved line speaks.
#include "checks/basis/result_parts.h"
#include "checks/basis/wood_bending.h"
#include "checks/rail/rail.h"
#include "checks/rail/rail_section.h"

#include <algorithm>
#include <cmath>
#include <functional>
#include <limits>
#include <numbers>

namespace toehold::checks {
namespace {

using format::phrase;

/// A moment in a direction: that of the load above the level.
struct RailMoment {
    double total_lb_in = 0.0;
    double above_level_rad = 0.0;
    [[nodiscard]] double about_x() const { return total_lb_in * std::sin(above_level_rad); }
    [[nodiscard]] double about_y() const { return total_lb_in * std::cos(above_level_rad); }
};

struct SimpleSpan {
    double push_lb_in = 0.0, line_lb_in = 0.0, wind_lb_in = 0.0;
    [[nodiscard]] double most() const { return std::max(push_lb_in, line_lb_in); }
};

SimpleSpan simple_span(const RailLoads& loads, const RailSpan& span) {
    const double of_push = span.held_at_one_end ? 1.0 : 0.25, of_line = span.held_at_one_end ? 0.5 : 0.125;
    const double length2 = span.length_in * span.length_in;
    return {of_push * loads.push_lb * span.length_in, of_line * loads.line_lb_per_in * length2,
            of_line * loads.wind_lb_per_in * length2};
}

/// Of a load in that direction, by its level and its upright moment, with the wind's.
RailMoment with_wind(double level_lb_in, double upright_lb_in, double wind_lb_in, double push_rad) {
    const double level = level_lb_in * std::cos(push_rad) + wind_lb_in, up = upright_lb_in * std::sin(push_rad);
    return {std::hypot(level, up), std::atan2(up, level)};
}

/// Every moment the span is held to.
std::vector<RailMoment> moments(const RailLoads& loads, const RailSpan& span) {
    constexpr double upright = 0.5 * std::numbers::pi;
    constexpr int steps = 18;
    const SimpleSpan simple = simple_span(loads, span);
    std::vector<RailMoment> all;
    for (int step = 0; step <= steps; ++step) {
        if (!loads.any_direction && step != 0 && step != steps) continue;
        const double push_rad = upright * step / steps;
        all.push_back(with_wind(simple.most(), simple.most(), simple.wind_lb_in, push_rad));
        if (!span.solved) continue;
        all.push_back(with_wind(span.solved->level_moment_lb_in, span.solved->upright_moment_lb_in,
                                span.solved->wind_moment_lb_in, push_rad));
    }
    return all;
}

RailMoment worst_moment(const RailInput& input, const RailSpan& span,
                        const std::function<double(const RailMoment&)>& use) {
    RailMoment worst;
    double largest = -1.0;
    for (const RailMoment& moment : moments(input.loads, span)) {
        const double of_this = use(moment);
        if (of_this > largest * (1.0 + 1e-9)) largest = of_this, worst = moment;
    }
    return worst;
}

void add_wind(CheckResult& result, const RailInput& input, const RailSpan& span, const SimpleSpan& simple) {
    if (!(input.loads.wind_lb_per_in > 0.0)) return;
    append(result.steps, {given("w_W", phrase("wind on the infill that reaches the rail, at once with the load"),
                                input.loads.wind_lb_per_in, "lb/in", input.loads.wind_clause),
                          {"M_W", phrase("moment of the wind, level, simple span or held at one end"),
                           span.held_at_one_end ? "w_W L^2/2" : "w_W L^2/8", simple.wind_lb_in, "lb in", "statics"}});
    if (!span.solved) return;
    append(result.steps, {demanded("M_Ws", phrase("largest moment of the wind, rail and posts solved together"),
                                   span.solved->wind_moment_lb_in, "lb in")});
}

void add_moments(CheckResult& result, const RailInput& input, const RailSpan& span) {
    const SimpleSpan simple = simple_span(input.loads, span);
    append(result.steps,
           {from_file("L", phrase("span between the posts' axes, along the rail"), span.length_in, "in"),
            given("P", phrase("concentrated load at any point of the rail"), input.loads.push_lb, "lb",
                  input.loads.push_clause),
            {"M_P", phrase("moment of the concentrated load where it stands worst, simple span or held at one end"),
             span.held_at_one_end ? "P L" : "P L/4", simple.push_lb_in, "lb in", "statics"}});
    if (input.loads.line_lb_per_in > 0.0) {
        append(result.steps,
               {given("w", phrase("load along the rail"), input.loads.line_lb_per_in, "lb/in", input.loads.line_clause),
                {"M_w", phrase("moment of the load along the rail, simple span or held at one end"),
                 span.held_at_one_end ? "w L^2/2" : "w L^2/8", simple.line_lb_in, "lb in", "statics"}});
    }
    add_wind(result, input, span, simple);
    if (!span.solved) return;
    append(result.steps,
           {demanded("M_s", phrase("largest moment in plan, rail and posts solved together"),
                     span.solved->level_moment_lb_in, "lb in"),
            demanded("M_u", phrase("largest moment of loads straight down or up, rail over all its posts"),
                     span.solved->upright_moment_lb_in, "lb in")});
}

void add_governing(CheckResult& result, const RailMoment& moment) {
    append(result.steps, {{"theta", phrase("direction of the governing load above the level"),
                           "the worst of all it may have", degrees(moment.above_level_rad), "deg", ""},
                          {"M", phrase("governing moment"), "the worst of these", moment.total_lb_in, "lb in", ""}});
}

void bend_metal(CheckResult& result, const RailInput& input, const RailSpan& span) {
    const MetalStrength strength = metal_strength(rail_section(input.rail, span.length_in), input.basis);
    result.clause = strength.clause;
    result.unit = "lb in";
    if (!strength.missing.empty()) {
        result.demand =
            worst_moment(input, span, [](const RailMoment& moment) { return moment.total_lb_in; }).total_lb_in;
        lacks_evidence(result, strength.missing);
        return;
    }
    const auto capacity = [&](const RailMoment& moment) {
        return moment_capacity_lb_in(strength, moment.about_x(), moment.about_y());
    };
    const RailMoment worst = worst_moment(
        input, span, [&](const RailMoment& moment) { return ratio(moment.total_lb_in, capacity(moment)); });
    append(result.steps, strength.steps);
    add_governing(result, worst);
    result.demand = worst.total_lb_in;
    result.capacity = capacity(worst);
    result.steps.push_back({"M_c", phrase("available moment in that direction"), "M_n, ASD or LRFD", result.capacity,
                            "lb in", strength.clause});
    conclude(result);
}

void bend_wood(CheckResult& result, const RailInput& input, const RailSpan& span, const model::WoodRail& rail) {
    result.clause = "NDS 2018 3.9.2";
    const catalog::LumberGrade& grade = rail_grade(input.rail);
    const WoodBending wood = wood_bending(grade, rail.width_in, rail.depth_in, span.length_in, input.basis);
    const auto use_of = [&](const RailMoment& moment) {
        return bending_use(wood, std::abs(moment.about_x()), std::abs(moment.about_y()));
    };
    const RailMoment worst = worst_moment(input, span, [&](const RailMoment& moment) { return use_of(moment).ratio; });
    const WoodBendingUse use = use_of(worst);
    add_governing(result, worst);
    append(result.steps, stress_steps(wood, use));
    append(result.steps, allowable_steps(wood, grade));
    result.capacity = 1.0;
    if (!std::isfinite(use.ratio)) {
        result.ratio = std::numeric_limits<double>::infinity();
        result.status = Status::fails;
        result.note = phrase("The rail is too slender: it buckles sideways in bending ({}).",
                             format::Citation{"NDS 2018 3.3.3.7, 3.9.2"});
        return;
    }
    result.demand = use.ratio;
    result.steps.push_back(use_step(use));
    conclude(result);
}

}  // namespace

CheckResult rail_bending(const RailInput& input, const RailSpan& span) {
    CheckResult result;
    result.id = "rail-bending";
    result.title = phrase("Rail bending");
    result.part = span.part;
    add_moments(result, input, span);
    if (const model::WoodRail* const wood = wood_rail(input.rail)) {
        bend_wood(result, input, span, *wood);
    } else {
        bend_metal(result, input, span);
    }
    return result;
}

}  // namespace toehold::checks
