#include "checks/anchor/placement_rules.h"

#include "catalog/resolve.h"
#include "demand/governing_state.h"
#include "resistance/wood/fastener_placement.h"
#include "units/limit.h"

#include <algorithm>
#include <cmath>

namespace toehold::checks {
namespace {

using format::phrase;

constexpr double nothing_lb = 1e-3;  // round-off of a 200 lb push is far below
constexpr const char* commentary = "NDS Commentary, wood screws (recommendation, from memory)";

bool tabulated(double diameter_in) { return units::at_least(diameter_in, resistance::least_tabulated_diameter_in()); }
format::Quantity least_tabulated() { return {resistance::least_tabulated_diameter_in(), "in"}; }

}  // namespace

PlacementLoads placement_loads(const demand::Demand& demand, std::size_t index, const catalog::Anchor& anchor,
                               model::PlanAxis grain) {
    const bool grain_along_x = grain == model::PlanAxis::x;
    const auto along = demand::governing_state(demand, [&](const demand::State& state) {
        const demand::AnchorForce& force = state.anchors.at(index);
        return std::abs(grain_along_x ? force.shear_x_lb : force.shear_y_lb);
    });
    const auto across = demand::governing_state(demand, [&](const demand::State& state) {
        const demand::AnchorForce& force = state.anchors.at(index);
        return std::abs(grain_along_x ? force.shear_y_lb : force.shear_x_lb);
    });
    const bool screw = anchor.kind != catalog::FastenerKind::through_bolt;
    return {screw && demand.anchors.at(index).tension_lb > nothing_lb, along.value > nothing_lb,
            across.value > nothing_lb};
}

double rows_apart_in(double diameter_in, const std::vector<Neighbor>& neighbors) {
    bool in_row = false;
    double nearest_in = 0.0;
    for (const Neighbor& neighbor : neighbors) {
        const bool same_row = neighbor.across_in <= 0.5 * diameter_in;
        in_row = in_row || same_row;
        if (!same_row && (nearest_in == 0.0 || neighbor.across_in < nearest_in)) nearest_in = neighbor.across_in;
    }
    return in_row ? nearest_in : 0.0;
}

std::vector<PlacementRule> edge_rules(double diameter_in, double length_in_wood_in, const PlacementLoads& loads,
                                      double rows_apart_in, double edge_in) {
    constexpr const char* table = "NDS 2018 Table 12.5.1C";
    if (!tabulated(diameter_in))
        return {{resistance::small_screw_edge_in(diameter_in), edge_in,
                 phrase("minimum edge distance, fastener under {}", least_tabulated()), "2.5 D", commentary}};
    std::vector<PlacementRule> rules{{resistance::unloaded_edge_in(diameter_in), edge_in,
                                      phrase("minimum edge distance, edge not loaded across the grain"), "1.5 D",
                                      table}};
    if (loads.withdrawal)
        rules.push_back({resistance::withdrawal_edge_in(diameter_in), edge_in,
                         phrase("minimum edge distance, withdrawal"), "1.5 D", "NDS 2018 Table 12.5.1E"});
    if (loads.along_grain) {
        rules.push_back({resistance::edge_loaded_along_in(diameter_in, length_in_wood_in, rows_apart_in), edge_in,
                         phrase("minimum edge distance, loaded along the grain"),
                         "1.5 D; l/D > 6: at least half the row spacing", table});
    }
    if (loads.across_grain)
        rules.push_back({resistance::loaded_edge_in(diameter_in), edge_in,
                         phrase("minimum edge distance, edge loaded across the grain"), "4 D", table});
    return rules;
}

std::vector<PlacementRule> end_rules(double diameter_in, const PlacementLoads& loads, double end_in) {
    if (!tabulated(diameter_in))
        return {{resistance::small_screw_end_in(diameter_in), end_in,
                 phrase("minimum end distance, fastener under {}", least_tabulated()), "10 D", commentary}};
    std::vector<PlacementRule> rules{{resistance::end_loaded_across_in(diameter_in), end_in,
                                      phrase("minimum end distance, loaded across the grain or not at all"), "2 D",
                                      "NDS 2018 Table 12.5.1A"}};
    if (loads.along_grain)
        rules.push_back({resistance::end_loaded_along_in(diameter_in), end_in,
                         phrase("minimum end distance, end loaded along the grain, softwood"), "3.5 D",
                         "NDS 2018 Table 12.5.1A"});
    if (loads.withdrawal)
        rules.push_back({resistance::withdrawal_end_in(diameter_in), end_in, phrase("minimum end distance, withdrawal"),
                         "4 D", "NDS 2018 Table 12.5.1E"});
    return rules;
}

std::vector<PlacementRule> spacing_rules(double diameter_in, double length_in_wood_in, const PlacementLoads& loads,
                                         const Neighbor& neighbor) {
    const double apart_in = std::hypot(neighbor.along_in, neighbor.across_in);
    const bool more_along = neighbor.along_in >= neighbor.across_in;
    if (!tabulated(diameter_in)) {
        return {
            {more_along ? resistance::small_screw_spacing_along_in(diameter_in)
                        : resistance::small_screw_spacing_across_in(diameter_in),
             apart_in,
             phrase("minimum spacing to {}, fasteners under {}", model::part_name(neighbor.part), least_tabulated()),
             more_along ? "10 D" : "5 D", commentary}};
    }
    std::vector<PlacementRule> rules{{resistance::spacing_in_row_in(diameter_in), apart_in,
                                      phrase("minimum spacing to {} in a row", model::part_name(neighbor.part)), "3 D",
                                      "NDS 2018 Table 12.5.1B"}};
    if (loads.withdrawal)
        rules.push_back({resistance::withdrawal_spacing_in(diameter_in), apart_in,
                         phrase("minimum spacing to {}, withdrawal", model::part_name(neighbor.part)), "4 D",
                         "NDS 2018 Table 12.5.1E"});
    if (loads.across_grain && more_along) {
        rules.push_back({resistance::rows_loaded_across_in(diameter_in, length_in_wood_in), neighbor.along_in,
                         phrase("minimum distance along the grain to {}, rows loaded across the grain",
                                model::part_name(neighbor.part)),
                         "2.5 D <= (5 l + 10 D)/8 <= 5 D", "NDS 2018 Table 12.5.1D"});
    }
    return rules;
}

double multiple(const PlacementRule& rule) {
    constexpr double touching_in = 1e-9;
    return rule.least_in / std::max(rule.actual_in, touching_in);
}

const PlacementRule& hardest(const std::vector<PlacementRule>& rules) {
    return *std::max_element(rules.begin(), rules.end(),
                             [](const PlacementRule& a, const PlacementRule& b) { return multiple(a) < multiple(b); });
}

}  // namespace toehold::checks
