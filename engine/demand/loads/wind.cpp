// ASCE 7-16 chapters 26 to 30 give a pressure at strength level; allowable stress design takes 0.6 of it. Combinations,
// guard load L, wind W (the weight of post and guard is left out: it is small, and steadies them):
//   2.4.1 (ASD)   0.6 W;  0.75 L + 0.75 (0.6 W)
//   2.3.1 (LRFD)  1.0 W;  1.0 W + 1.0 L. The half of L that 2.3.1 allows is for floors, not for a guard's load.
// Nothing in the standard leaves the guard's load out of the combination with wind, so it is in unless the file says
// that nobody leans on the guard in a storm of the design wind.
#include "demand/loads/wind.h"

#include "demand/loads/load_cases.h"
#include "model/base_detail.h"
#include "units/length.h"

#include <algorithm>
#include <numbers>
#include <utility>

namespace toehold::demand {
namespace {

using format::Citation;
using format::phrase;
using format::Quantity;

constexpr double service_part = 0.6;  // ASCE 7-16 2.4.1: of a wind at strength level
constexpr double live_with_wind = 0.75;

}  // namespace

WindFactors wind_factors(const model::Basis& basis, const model::WindLoad& wind) {
    const double at_service = wind.service_level ? 1.0 : service_part;
    if (basis.method == model::Method::asd) return {at_service, live_with_wind * at_service, live_with_wind, 1.0};
    const double at_strength = at_service / service_part;
    return {at_strength, at_strength, 1.0, 1.0 / live_with_wind};
}

double infill_height_in(const model::BaseDetail& detail) {
    return detail.loads.wind->infill_height_in.value_or(detail.guard.height_in);
}

format::Phrase wind_source(const model::BaseDetail& detail) {
    const model::BuildingCode code = model::building_code(detail.basis);
    const bool asd = detail.basis.method == model::Method::asd;
    return phrase(
        "{}; {}", Citation{model::clause(code, model::Provision::wind)},
        Citation{model::clause(code, asd ? model::Provision::asd_combinations : model::Provision::lrfd_combinations)});
}

double wind_center_in(const model::BaseDetail& detail) {
    return detail.loads.wind->centroid_in.value_or(0.5 * infill_height_in(detail));
}

namespace {

constexpr double along_x_rad = 0.0;
constexpr std::string_view other_axis = "-along";

/// The same wind along the rail of the post's own axes: at a corner, across the other leg.
LoadCase along_rail(LoadCase load, const std::vector<double>& alone_rad) {
    load.id += other_axis;
    load.name = phrase("{}, along x", std::move(load.name));
    load.wind_axis_rad = along_x_rad;
    if (load.push_lb == 0.0) load.directions_rad = alone_rad;
    return load;
}

/// Of a guard that stands both ways at the post.
void add_other_axis(std::vector<LoadCase>& cases, const model::WindLoad& wind) {
    if (!wind.both_axes) return;
    const std::size_t count = cases.size();
    for (std::size_t index = 0; index < count; ++index)
        cases.push_back(along_rail(cases[index], {along_x_rad, along_x_rad + std::numbers::pi}));
}

}  // namespace

std::string_view whole_load(const LoadCase& load) {
    std::string_view id = load.id;
    if (id.ends_with(other_axis)) id.remove_suffix(other_axis.size());
    return id;
}

std::optional<double> wind_area_ft2(const model::BaseDetail& detail) {
    if (!detail.loads.wind) return std::nullopt;
    if (detail.loads.wind->area_ft2) return detail.loads.wind->area_ft2;
    const std::optional<double> length_in = model::tributary_length_in(detail.guard, detail.loads);
    if (!length_in) return std::nullopt;
    const double face_ft2 = infill_height_in(detail) * *length_in / (units::inches_per_foot * units::inches_per_foot);
    return face_ft2 * detail.loads.wind->solid_ratio.value_or(1.0);
}

std::vector<LoadCase> wind_cases(const model::BaseDetail& detail, const std::optional<LoadCase>& live) {
    const std::optional<double> area_ft2 = wind_area_ft2(detail);
    if (!area_ft2) return {};
    const model::WindLoad& wind = *detail.loads.wind;
    const WindFactors by = wind_factors(detail.basis, wind);
    const double force_lb = wind.pressure_psf * *area_ft2;
    LoadCase alone;
    alone.id = "wind";
    alone.name = phrase("{} of wind, {} on {} of infill", Quantity{by.alone, ""}, Quantity{wind.pressure_psf, "psf"},
                        Quantity{*area_ft2, "ft2"});
    alone.wind_lb = by.alone * force_lb;
    alone.wind_height_in = wind_center_in(detail) + model::below_surface_in(detail);
    alone.height_in = model::lever_height_in(detail);
    alone.load_factor = by.alone / (wind.service_level ? 1.0 : service_part);
    alone.source = wind_source(detail);
    alone.duration = LoadDuration::wind;
    alone.directions_rad = {0.5 * std::numbers::pi, 1.5 * std::numbers::pi};
    std::vector<LoadCase> cases{alone};
    if (wind.with_live_load && live) {
        LoadCase both = alone;
        both.id = "wind-with-live";
        both.name = phrase("{} of the guard's load ({}) with {} of wind ({} on {})", Quantity{by.live, ""}, live->name,
                           Quantity{by.with_live, ""}, Quantity{wind.pressure_psf, "psf"}, Quantity{*area_ft2, "ft2"});
        both.push_lb = by.live * live->push_lb / live->load_factor;
        both.wind_lb = by.with_live * force_lb;
        both.load_factor = by.over_service;
        both.directions_rad = live->directions_rad;
        cases.push_back(std::move(both));
    }
    add_other_axis(cases, wind);
    return cases;
}

}  // namespace toehold::demand
