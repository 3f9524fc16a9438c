#include "checks/connection/fastener_reach.h"

#include "resistance/wood/fastener_placement.h"

namespace toehold::checks {
namespace {

using format::Dimension;
using format::phrase;

/// On a line at mid-depth.
FastenerReach on_line(const EndPlace& place, double line_in) {
    const double depth_in = place.member.depth_in;
    FastenerReach reach;
    reach.highest_in = 0.5 * (depth_in - line_in);
    reach.lowest_in = 0.5 * (depth_in + line_in);
    reach.where = phrase("fasteners on an upright line of {} at mid-depth", Dimension{line_in});
    return reach;
}

struct ReachOf {
    const EndPlace& place;

    std::optional<FastenerReach> operator()(std::monostate /*nothing described*/) const { return std::nullopt; }

    std::optional<FastenerReach> operator()(const model::ToeNails& nails) const {
        if (place.on_beam) return std::nullopt;
        FastenerReach reach = on_line(place, nails.spread_in);
        reach.through = nails.count > 1 || place.member.plies == 1;
        reach.through_holder = false;
        return reach;
    }

    std::optional<FastenerReach> operator()(const model::SideAngles& angles) const {
        if (place.on_beam) return std::nullopt;
        FastenerReach reach = on_line(place, angles.spacing_in * (angles.per_leg - 1));
        const bool bolts = angles.kind == model::SideAngles::Kind::bolt;
        reach.through = bolts || angles.sides == 2;
        reach.in_holder = angles.kind != model::SideAngles::Kind::wood_screw;
        reach.through_holder = bolts;
        return reach;
    }

    std::optional<FastenerReach> operator()(const model::ReportedConnector& connector) const {
        FastenerReach reach;
        if (connector.from_top_in) reach.highest_in = *connector.from_top_in;
        if (connector.from_bottom_in) reach.lowest_in = place.member.depth_in - *connector.from_bottom_in;
        if (connector.from_top_in || connector.from_bottom_in)
            reach.where = phrase("hardware's fasteners, as the file states");
        return reach;
    }

    /// Driven through the holder into the member's end grain.
    template <class Fasteners>
    std::optional<FastenerReach> operator()(const Fasteners& fasteners) const {
        if (place.on_beam) return std::nullopt;
        FastenerReach reach = on_line(place, fasteners.spread_in);
        reach.in_holder = fasteners.diameter_in >= resistance::least_tabulated_diameter_in();
        return reach;
    }
};

}  // namespace

std::optional<FastenerReach> fastener_reach(const EndPlace& place) {
    if (place.unsupported) return std::nullopt;
    return std::visit(ReachOf{place}, place.support->connection);
}

}  // namespace toehold::checks
