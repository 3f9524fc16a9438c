#include "checks/anchor/placement_rules.h"

#include "demand/worst.h"
#include "resistance/wood/fastener_placement.h"

#include <algorithm>
#include <cmath>

namespace toehold::checks {
namespace {

constexpr double nothing_lb = 1e-3;  // round-off of a 200 lb push is far below
constexpr const char* commentary = "NDS Commentary, wood screws (recommendation, from memory)";

bool tabulated(double diameter_in) { return diameter_in >= resistance::least_tabulated_diameter_in(); }

}  // namespace

PlacementLoads placement_loads(const demand::Demand& demand, std::size_t index, const catalog::Anchor& anchor,
                               model::PlanAxis grain) {
    const bool grain_along_x = grain == model::PlanAxis::x;
    const auto along = demand::worst_state(demand, [&](const demand::State& state) {
        const demand::AnchorForce& force = state.anchors.at(index);
        return std::abs(grain_along_x ? force.shear_x_lb : force.shear_y_lb);
    });
    const auto across = demand::worst_state(demand, [&](const demand::State& state) {
        const demand::AnchorForce& force = state.anchors.at(index);
        return std::abs(grain_along_x ? force.shear_y_lb : force.shear_x_lb);
    });
    const bool screw = anchor.kind != catalog::FastenerKind::through_bolt;
    return {screw && demand.anchors.at(index).tension_lb > nothing_lb, along.value > nothing_lb,
            across.value > nothing_lb};
}

double rows_apart_in(double diameter_in, const std::vector<Neighbour>& neighbours) {
    bool in_row = false;
    double nearest_in = 0.0;
    for (const Neighbour& neighbour : neighbours) {
        const bool same_row = neighbour.across_in <= 0.5 * diameter_in;
        in_row = in_row || same_row;
        if (!same_row && (nearest_in == 0.0 || neighbour.across_in < nearest_in)) nearest_in = neighbour.across_in;
    }
    return in_row ? nearest_in : 0.0;
}

std::vector<PlacementRule> edge_rules(double diameter_in, double length_in_wood_in, const PlacementLoads& loads,
                                      double rows_apart_in, double edge_in) {
    constexpr const char* table = "NDS 2018 Table 12.5.1C";
    if (!tabulated(diameter_in))
        return {{resistance::small_screw_edge_in(diameter_in), edge_in, "edge, fastener under 1/4 in", "2.5 D",
                 commentary}};
    std::vector<PlacementRule> rules{
        {resistance::unloaded_edge_in(diameter_in), edge_in, "edge not loaded across the grain", "1.5 D", table}};
    if (loads.withdrawal)
        rules.push_back({resistance::withdrawal_edge_in(diameter_in), edge_in, "edge, withdrawal", "1.5 D",
                         "NDS 2018 Table 12.5.1E"});
    if (loads.along_grain) {
        rules.push_back({resistance::edge_loaded_along_in(diameter_in, length_in_wood_in, rows_apart_in), edge_in,
                         "edge, loaded along the grain", "1.5 D; l/D > 6: at least half the row spacing", table});
    }
    if (loads.across_grain)
        rules.push_back(
            {resistance::loaded_edge_in(diameter_in), edge_in, "edge loaded across the grain", "4 D", table});
    return rules;
}

std::vector<PlacementRule> end_rules(double diameter_in, const PlacementLoads& loads, double end_in) {
    if (!tabulated(diameter_in))
        return {
            {resistance::small_screw_end_in(diameter_in), end_in, "end, fastener under 1/4 in", "10 D", commentary}};
    std::vector<PlacementRule> rules{{resistance::end_loaded_across_in(diameter_in), end_in,
                                      "end, loaded across the grain or not at all", "2 D", "NDS 2018 Table 12.5.1A"}};
    if (loads.along_grain)
        rules.push_back({resistance::end_loaded_along_in(diameter_in), end_in,
                         "end loaded along the grain, softwood, least", "3.5 D", "NDS 2018 Table 12.5.1A"});
    if (loads.withdrawal)
        rules.push_back(
            {resistance::withdrawal_end_in(diameter_in), end_in, "end, withdrawal", "4 D", "NDS 2018 Table 12.5.1E"});
    return rules;
}

std::vector<PlacementRule> spacing_rules(double diameter_in, double length_in_wood_in, const PlacementLoads& loads,
                                         const Neighbour& neighbour) {
    const double apart_in = std::hypot(neighbour.along_in, neighbour.across_in);
    const bool more_along = neighbour.along_in >= neighbour.across_in;
    if (!tabulated(diameter_in)) {
        return {{more_along ? resistance::small_screw_spacing_along_in(diameter_in)
                            : resistance::small_screw_spacing_across_in(diameter_in),
                 apart_in, "spacing to anchor " + neighbour.id + ", fasteners under 1/4 in",
                 more_along ? "10 D" : "5 D", commentary}};
    }
    std::vector<PlacementRule> rules{{resistance::spacing_in_row_in(diameter_in), apart_in,
                                      "spacing to anchor " + neighbour.id + " in a row, least", "3 D",
                                      "NDS 2018 Table 12.5.1B"}};
    if (loads.withdrawal)
        rules.push_back({resistance::withdrawal_spacing_in(diameter_in), apart_in,
                         "spacing to anchor " + neighbour.id + ", withdrawal", "4 D", "NDS 2018 Table 12.5.1E"});
    if (loads.across_grain && more_along) {
        rules.push_back({resistance::rows_loaded_across_in(diameter_in, length_in_wood_in), neighbour.along_in,
                         "along the grain to anchor " + neighbour.id + ": rows loaded across the grain",
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
