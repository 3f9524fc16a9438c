#include "demand/loads/load_cases.h"

#include "model/base_detail.h"

#include <fmt/format.h>

#include <cmath>
#include <numbers>
#include <utility>

namespace toehold::demand {
namespace {

using format::Citation;
using format::phrase;

format::Phrase concentrated_source() {
    return phrase("{} and {}; {}", Citation{"IBC 2021 1607.9.1.1"}, Citation{"ASCE 7-16 4.5.1"},
                  Citation{"IRC 2021 Table R301.5"});
}
format::Phrase line_source() { return phrase("{} and {}", Citation{"IBC 2021 1607.9.1"}, Citation{"ASCE 7-16 4.5.1"}); }

void add(std::vector<LoadCase>& cases, LoadCase push, double down_lb) {
    push.push_lb *= push.load_factor;
    cases.push_back(push);
    if (down_lb == 0.0) return;
    push.id += "-with-vertical";
    push.down_lb = down_lb * push.load_factor;
    const format::Quantity size{std::abs(down_lb), "lb"};
    push.name = down_lb > 0.0 ? phrase("{} with {} down", std::move(push.name), size)
                              : phrase("{} with {} up", std::move(push.name), size);
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
            {"concentrated", phrase("{} at the top of the guard", format::Quantity{load.push_lb, "lb"}), load.push_lb,
             0.0, height, factor, concentrated_source()},
            load.down_lb);
    }
    if (loads.line) {
        const double push_lb = loads.line->push_lb_per_ft * loads.line->spacing_ft;
        add(cases,
            {"line",
             phrase("{} over {} of rail", format::Quantity{loads.line->push_lb_per_ft, "lb/ft"},
                    format::Quantity{loads.line->spacing_ft, "ft"}),
             push_lb, 0.0, height, factor, line_source()},
            loads.line->down_lb);
    }
    for (std::size_t index = 0; index < loads.user.size(); ++index) {
        const model::UserLoad& load = loads.user[index];
        const double user_height = load.height_in ? *load.height_in + model::below_surface_in(detail) : height;
        add(cases,
            {fmt::format("user-{}", index + 1), format::verbatim(load.name), load.push_lb, 0.0, user_height, factor,
             load.source.empty() ? phrase("stated by the user") : phrase("{}", Citation{load.source})},
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
