#include "review/line/rail_loads.h"

#include "demand/loads/code_loads.h"
#include "demand/loads/load_cases.h"
#include "demand/loads/wind.h"
#include "review/line/review_line.h"
#include "units/length.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace toehold::review {
namespace {

using format::phrase;
using format::Quantity;
using model::Provision;

constexpr double in2_per_ft2 = units::inches_per_foot * units::inches_per_foot;

/// Push and vertical force of one load act at once.
double together_lb(double push_lb, double down_lb) { return std::hypot(push_lb, down_lb); }

double line_lb_per_ft(const model::BaseDetail& detail) {
    const double code = demand::code_line_lb_per_ft(detail.guard).value_or(0.0);
    if (!detail.loads.line) return code;
    const model::LineLoad& own = *detail.loads.line;
    const double down = own.spacing_ft > 0.0 ? own.down_lb / own.spacing_ft : 0.0;
    return std::max(code, together_lb(own.push_lb_per_ft, down));
}

double largest_push_lb(const model::BaseDetail& detail) {
    double push_lb = rail_push_lb(detail);
    for (const model::UserLoad& load : detail.loads.user)
        push_lb = std::max(push_lb, part_on_rail(detail, load) * together_lb(load.push_lb, load.down_lb));
    return push_lb;
}

std::string clause(const model::BaseDetail& detail, Provision provision) {
    return model::clause(model::building_code(detail.basis), provision);
}

/// The guard's loads, factored.
checks::RailLoads live_loads(const model::BaseDetail& detail) {
    const double factor = demand::live_load_factor(detail.basis);
    return {factor * largest_push_lb(detail), factor * line_lb_per_ft(detail) / units::inches_per_foot,
            demand::code_directions(detail) != model::Directions::outward,
            clause(detail, Provision::concentrated_guard_load), clause(detail, Provision::line_guard_load)};
}

/// The length a stated area of one post's wind is over.
double length_of_area_in(const SolvedLine& solved) {
    return solved.stated_length_in.value_or(
        *std::min_element(solved.half_spans_in.begin(), solved.half_spans_in.end()));
}

/// Solid area over length of rail.
double area_in2_per_in(const SolvedLine& solved, const model::BaseDetail& detail) {
    const model::WindLoad& wind = *detail.loads.wind;
    if (wind.area_ft2) return in2_per_ft2 * *wind.area_ft2 / length_of_area_in(solved);
    return demand::infill_height_in(detail) * wind.solid_ratio.value_or(1.0);
}

double center_over_rail(const model::BaseDetail& detail) {
    return demand::wind_center_in(detail) / detail.guard.height_in;
}

}  // namespace

double part_on_rail(const model::BaseDetail& detail, const model::UserLoad& load) {
    return load.height_in.value_or(detail.guard.height_in) / detail.guard.height_in;
}

double rail_wind_lb_per_in(const SolvedLine& solved, const model::BaseDetail& detail) {
    if (!detail.loads.wind || solved.half_spans_in.empty()) return 0.0;
    return detail.loads.wind->pressure_psf / in2_per_ft2 * area_in2_per_in(solved, detail) * center_over_rail(detail);
}

std::vector<RailCombination> rail_combinations(const SolvedLine& solved, const model::BaseDetail& detail) {
    const checks::RailLoads live = live_loads(detail);
    std::vector<RailCombination> all{{live, demand::LoadDuration::guard_live}};
    const double wind_lb_per_in = rail_wind_lb_per_in(solved, detail);
    if (!(wind_lb_per_in > 0.0)) return all;
    const demand::WindFactors by = demand::wind_factors(detail.basis, *detail.loads.wind);
    checks::RailLoads alone;
    alone.any_direction = false;  // level
    alone.wind_lb_per_in = by.alone * wind_lb_per_in;
    alone.wind_clause = format::english(demand::wind_source(detail));
    checks::RailLoads both = live;
    const double live_part = by.live / demand::live_load_factor(detail.basis);
    both.push_lb *= live_part;
    both.line_lb_per_in *= live_part;
    both.wind_lb_per_in = by.with_live * wind_lb_per_in;
    both.wind_clause = alone.wind_clause;
    all.push_back({std::move(alone), demand::LoadDuration::wind});
    if (detail.loads.wind->with_live_load) all.push_back({std::move(both), demand::LoadDuration::wind});
    return all;
}

void add_load_assumptions(std::vector<format::Phrase>& all, const SolvedLine& solved, const model::BaseDetail& detail) {
    if (const double wind = rail_wind_lb_per_in(solved, detail); wind > 0.0) {
        all.push_back(phrase(
            "Wind on the infill is {} of rail at the level the file gives it, square to the rail: {:.2f} of the wind "
            "on the infill, which is held at the rail and at the walking surface. Bases count all of it. The rail is "
            "checked for it alone and together with the guard's load ({}).",
            Quantity{units::inches_per_foot * wind, "lb/ft"}, center_over_rail(detail), demand::wind_source(detail)));
    } else {
        all.push_back(phrase("No wind is specified in the file: none is counted on the rail and the posts."));
    }
    for (const model::UserLoad& load : detail.loads.user) {
        all.push_back(phrase("Load {} is counted on the rail as a push at any point, {:.2f} of it by its height.",
                             load.name, part_on_rail(detail, load)));
    }
}

}  // namespace toehold::review
