#include "demand/framing/support_stiffness.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <utility>
#include <variant>

namespace toehold::demand {
namespace {

using format::Citation;
using format::phrase;

/// Load/slip modulus of one dowel, lb/in: NDS 2018 11.3.6, read across from D >= 1/4 in to nails.
double wood_to_wood_lb_per_in(double diameter_in) { return 180000.0 * std::pow(diameter_in, 1.5); }
double wood_to_metal_lb_per_in(double diameter_in) { return 270000.0 * std::pow(diameter_in, 1.5); }
Citation slip_clause() { return {"NDS 2018 11.3.6"}; }

/// Sum of the squared distances of an even line from its middle, over the squared distance of its ends.
double sum_of_squares_in2(int count, double spread_in) {
    if (count < 2) return 0.0;
    const double n = count;
    return spread_in * spread_in * n * (n + 1.0) / (12.0 * (n - 1.0));
}

SupportStiffness of(std::monostate, const model::Member&) { return {0.0, 0.0, 0.0, phrase("nothing described")}; }

SupportStiffness of(const model::EndGrainFasteners& fasteners, const model::Member&) {
    const double one = wood_to_wood_lb_per_in(fasteners.diameter_in);
    return {fasteners.count * one, one * sum_of_squares_in2(fasteners.count, fasteners.spread_in), 0.0,
            phrase("180,000 D^1.5 lb/in a fastener ({}), also in end grain: assumption", slip_clause())};
}

SupportStiffness of(const model::ToeNails& nails, const model::Member& member) {
    const double all = nails.count * wood_to_wood_lb_per_in(nails.diameter_in);
    // Driven from both sides, they cross the holder's face this far from the member's axis.
    const double inward_in = nails.length_in / 3.0 * std::tan(std::numbers::pi / 6.0);
    const double arm_in = nails.count > 1 ? std::max(0.0, 0.5 * member.width_in - inward_in) : 0.0;
    return {all, all * arm_in * arm_in, 0.0,
            phrase("180,000 D^1.5 lb/in a nail ({}), also driven aslant: assumption", slip_clause())};
}

SupportStiffness of(const model::SideAngles& angles, const model::Member& member) {
    // Both legs of an angle slip, one after the other.
    const double one = 0.5 * wood_to_metal_lb_per_in(angles.diameter_in);
    const double all = angles.sides * angles.per_leg * one;
    const double arm_in = 0.5 * member.width_in;
    const double line_in2 =
        angles.sides * sum_of_squares_in2(angles.per_leg, angles.spacing_in * std::max(0, angles.per_leg - 1));
    const double torque = angles.sides > 1 ? all * arm_in * arm_in : 0.0;
    const double lever_in = 0.5 * member.depth_in;
    // A bolt's hold against being drawn out is not computed, so it is given no part in keeping the members square.
    const bool drawn = angles.kind != model::SideAngles::Kind::bolt;
    return {all, torque, drawn ? one * (angles.sides * angles.per_leg * lever_in * lever_in + line_in2) : 0.0,
            phrase("270,000 D^1.5 lb/in a fastener ({}), two legs in series", slip_clause())};
}

SupportStiffness of(const model::ReportedConnector& connector, const model::Member&) {
    // ASTM D7147 bounds an allowable load by that at 1/8 in of movement (from memory).
    constexpr double movement_in = 0.125;
    const auto stiffness = [&](double allowable_lb) {
        return allowable_lb > 0.0 ? connector.stiffness_lb_per_in.value_or(allowable_lb / movement_in) : 0.0;
    };
    const double vertical = stiffness(std::max(connector.uplift_lb, connector.down_lb));
    const double arm_in = 0.5 * connector.couple_arm_in;
    format::Phrase source =
        connector.stiffness_lb_per_in
            ? phrase("as entered")
            : phrase("allowable value over 1/8 in of movement (after {}, from memory)", Citation{"ASTM D7147"});
    return {vertical, vertical * arm_in * arm_in,
            stiffness(connector.pull_lb) * connector.height_in * connector.height_in, std::move(source)};
}

}  // namespace

SupportStiffness support_stiffness(const model::EndConnection& connection, const model::Member& member) {
    return std::visit([&](const auto& kind) { return of(kind, member); }, connection);
}

SupportStiffness beam_stiffness(const model::JoistSupport& support, const model::Member& joist,
                                double across_modulus_psi) {
    SupportStiffness stiffness = support_stiffness(support.connection, joist);
    const double bearing = across_modulus_psi * joist.width_in * support.bearing_in / joist.depth_in;
    if (bearing <= stiffness.vertical_lb_per_in) return stiffness;
    stiffness.vertical_lb_per_in = bearing;
    stiffness.source = phrase("the joist's squeeze over the beam at E/20; against rolling, its fasteners: {}",
                              std::move(stiffness.source));
    return stiffness;
}

}  // namespace toehold::demand
