#include "demand/loads/load_cases.h"

#include <fmt/format.h>

#include <numbers>

namespace toehold::demand {
namespace {

constexpr const char* concentrated_source = "IBC 2021 1607.9.1.1 and ASCE 7-16 4.5.1; IRC 2021 Table R301.5";
constexpr const char* line_source = "IBC 2021 1607.9.1 and ASCE 7-16 4.5.1";

void add(std::vector<LoadCase>& cases, LoadCase push, double down_lb) {
    push.push_lb *= push.load_factor;
    cases.push_back(push);
    if (down_lb == 0.0) return;
    push.id += "-with-vertical";
    push.down_lb = down_lb * push.load_factor;
    push.name += fmt::format(" with {:.4g} lb {}", std::abs(down_lb), down_lb > 0.0 ? "down" : "up");
    cases.push_back(push);
}

}  // namespace

double live_load_factor(const model::Basis& basis) { return basis.method == model::Method::lrfd ? 1.6 : 1.0; }

std::vector<LoadCase> load_cases(const model::BaseDetail& detail) {
    const double factor = live_load_factor(detail.basis);
    const double height = model::lever_height_in(detail);
    std::vector<LoadCase> cases;
    const model::Loads& loads = detail.loads;
    if (loads.concentrated || !loads.stated) {
        const model::ConcentratedLoad load = loads.concentrated.value_or(model::ConcentratedLoad{});
        add(cases,
            {"concentrated", fmt::format("{:.4g} lb at the top of the guard", load.push_lb), load.push_lb, 0.0, height,
             factor, concentrated_source},
            load.down_lb);
    }
    if (loads.line) {
        const double push_lb = loads.line->push_lb_per_ft * loads.line->spacing_ft;
        add(cases,
            {"line",
             fmt::format("{:.4g} lb/ft over {:.4g} ft of rail", loads.line->push_lb_per_ft, loads.line->spacing_ft),
             push_lb, 0.0, height, factor, line_source},
            loads.line->down_lb);
    }
    for (std::size_t index = 0; index < loads.user.size(); ++index) {
        const model::UserLoad& load = loads.user[index];
        const double user_height = load.height_in ? *load.height_in + model::below_surface_in(detail) : height;
        add(cases,
            {fmt::format("user-{}", index + 1), load.name, load.push_lb, 0.0, user_height, factor,
             load.source.empty() ? "stated by the user" : load.source},
            load.down_lb);
    }
    return cases;
}

std::vector<double> directions(const model::Loads& loads) {
    if (loads.directions == model::Directions::outward) return {0.5 * std::numbers::pi};
    constexpr int count = 72;
    std::vector<double> all;
    all.reserve(count);
    for (int index = 0; index < count; ++index) all.push_back(2.0 * std::numbers::pi * index / count);
    return all;
}

}  // namespace toehold::demand
