#include "search/changes/ends.h"

#include <algorithm>
#include <cmath>
#include <variant>

namespace toehold::search {
namespace {

using format::phrase;
using model::BaseDetail;
using model::Block;
using model::BlockEnd;
using model::EndConnection;

constexpr double bolt_in = 0.375, bolt_spacing_in = 1.75, loaded_edge_in = 4.0 * bolt_in;
constexpr int most_per_leg = 3;

double deep_in(const Block& block) { return block.depth_in * block.stack; }
double wide_in(const Block& block) { return block.width_in * block.plies; }

model::SideAngles angles_for(double depth_in) {
    model::SideAngles angles;
    angles.thickness_in = 0.25;
    angles.metal = "steel-a36";
    angles.kind = model::SideAngles::Kind::bolt;
    angles.diameter_in = bolt_in;
    angles.per_leg = std::min(most_per_leg, 1 + static_cast<int>((depth_in - 2.0 * loaded_edge_in) / bolt_spacing_in));
    angles.spacing_in = angles.per_leg > 1 ? bolt_spacing_in : 0.0;
    angles.gauge_in = 1.5;
    return angles;
}

double rounded_lb(double force_lb) { return 10.0 * std::round(force_lb / 10.0); }

/// Where a connection stands in a block of another section.
struct Fit {
    const Block& before;
    const Block& after;

    std::optional<EndConnection> operator()(std::monostate none) const { return none; }

    std::optional<EndConnection> operator()(model::EndGrainFasteners fasteners) const {
        // The outermost of the nails stay as far from the block's edges as they were.
        const double edges_in = deep_in(before) - fasteners.spread_in;
        fasteners.spread_in = std::min(fasteners.spread_in, std::max(0.0, deep_in(after) - edges_in));
        constexpr double diameters_apart = 4.0;  // common practice: closer nails split the end
        if (fasteners.spread_in < (fasteners.count - 1) * diameters_apart * fasteners.diameter_in) return std::nullopt;
        return fasteners;
    }

    std::optional<EndConnection> operator()(const model::ToeNails& nails) const {
        if (nails.spread_in >= deep_in(after)) return std::nullopt;
        return nails;
    }

    std::optional<EndConnection> operator()(const model::SideAngles& angles) const {
        const double line_in = (angles.per_leg - 1) * angles.spacing_in;
        if (line_in + 2.0 * loaded_edge_in > deep_in(after)) return std::nullopt;
        return angles;
    }

    std::optional<EndConnection> operator()(model::ReportedConnector connector) const {
        connector.couple_arm_in = std::min(connector.couple_arm_in, wide_in(after));
        if (connector.height_in > deep_in(after)) return std::nullopt;
        if (connector.from_bottom_in && *connector.from_bottom_in > 0.0) {
            *connector.from_bottom_in += deep_in(after) - deep_in(before);
            if (*connector.from_bottom_in < 0.0) return std::nullopt;
        }
        if (connector.from_top_in && *connector.from_top_in >= deep_in(after)) return std::nullopt;
        return connector;
    }
};

}  // namespace

Applied bolted_angles(BaseDetail& detail) {
    bool any = false;
    for (Block& block : detail.framing.blocks) {
        if (deep_in(block) < 2.0 * loaded_edge_in) continue;
        for (BlockEnd* end : {&block.from_end, &block.to_end}) {
            if (end->joist.empty()) continue;
            end->connection = angles_for(deep_in(block));
            any = true;
        }
    }
    if (!any) return refused(phrase("no block with a held end is deep enough for a bolted angle"));
    return {};
}

LeastValues least_values(double vertical_lb, double depth_in) {
    constexpr double lateral_share = 700.0 / 1600.0, pull_share = 1200.0 / 1600.0;
    constexpr double whole_height_in = 6.0, edges_in = 1.0;
    return {vertical_lb, rounded_lb(lateral_share * vertical_lb), rounded_lb(pull_share * vertical_lb),
            std::max(0.0, std::min(whole_height_in, depth_in - edges_in)), edges_in};
}

Applied reported_hardware(BaseDetail& detail, double vertical_lb) {
    bool any = false;
    for (Block& block : detail.framing.blocks) {
        const LeastValues least = least_values(vertical_lb, deep_in(block));
        model::ReportedConnector hardware;
        hardware.name = "hardware on both sides of the block";
        hardware.chosen = false;
        hardware.uplift_lb = least.vertical_lb;
        hardware.down_lb = least.vertical_lb;
        hardware.lateral_lb = least.lateral_lb;
        hardware.couple_arm_in = wide_in(block);
        hardware.pull_lb = least.pull_lb;
        hardware.height_in = least.height_in;
        hardware.from_top_in = least.to_edges_in;
        hardware.from_bottom_in = least.to_edges_in;
        for (BlockEnd* end : {&block.from_end, &block.to_end}) {
            if (end->joist.empty()) continue;
            end->connection = hardware;
            any = true;
        }
    }
    if (!any) return refused(phrase("no joist or rim holds the end of a block"));
    return {};
}

std::optional<EndConnection> fitted(const EndConnection& connection, const Block& before, const Block& after) {
    return std::visit(Fit{before, after}, connection);
}

}  // namespace toehold::search
