// Hardware at a member's end, with allowable values from its report. A torque about the member's axis becomes a pair of
// forces on the two lines of connectors, up on one and down on the other; each line has half of the end's values. A
// moment in the member's upright plane becomes a pull and a pressed edge, `height` apart.
#include "catalog/resolve.h"
#include "checks/basis/wood_basis.h"
#include "checks/connection/connection.h"

#include <algorithm>
#include <cmath>

namespace toehold::checks {
namespace {

using format::phrase;
using model::ReportedConnector;

/// What the report allows, raised to meet the demand's method. lb.
struct Allowed {
    double line_up = 0.0, line_down = 0.0, lateral = 0.0, tension = 0.0;
};

EndUse against(std::string symbol, format::Phrase meaning, double force_lb, double allowable_lb, UseGroup group) {
    format::Phrase why = phrase("The connector has no value for this force: {}. Give it, with its report.", meaning);
    return {std::move(symbol), std::move(meaning), "", force_lb, allowable_lb, "lb", group, std::move(why)};
}

std::vector<EndUse> uses(const demand::SupportReaction& forces, const ReportedConnector& connector,
                         const Allowed& allowed, bool on_beam) {
    const bool has_arm = connector.couple_arm_in > 0.0, has_height = connector.height_in > 0.0;
    const double pair_lb = has_arm ? std::abs(forces.torque_lb_in) / connector.couple_arm_in : 0.0;
    const double edge_lb = has_height ? std::abs(forces.moment_lb_in) / connector.height_in : 0.0;
    const double half_lb = 0.5 * forces.up_lb;
    const double pressed_lb = forces.down_lb > 0.0 ? 0.5 * forces.down_lb + pair_lb : 0.0;
    std::vector<EndUse> all{
        against("R_u", phrase("uplift on one line: R_v/2 + T/arm"),
                std::max({half_lb + pair_lb, half_lb - pair_lb, 0.0}), allowed.line_up, UseGroup::shear),
        against("R_s", phrase("lateral, across the member"), std::abs(forces.across_lb), allowed.lateral,
                UseGroup::lateral),
        against("R_p", phrase("tension along the member: P_a + M/height"), std::max(forces.along_lb, 0.0) + edge_lb,
                allowed.tension, UseGroup::withdrawal)};
    if (!on_beam) {
        all.push_back(against("R_d", phrase("downward on the other line: T/arm - R_v/2, or R_g/2 + T/arm"),
                              std::max({pressed_lb, pair_lb - half_lb, 0.0}), allowed.line_down, UseGroup::shear));
    }
    if (!has_arm) {
        all.push_back(
            {"T", phrase("torque about the member's axis"), "", std::abs(forces.torque_lb_in), 0.0, "lb in",
             UseGroup::lateral,
             phrase("The connector does not resist torque about the member's axis. Use hardware on both sides and "
                    "give the distance between its two lines.")});
    }
    if (!has_height) {
        all.push_back(
            {"M", phrase("moment in the member's vertical plane"), "", std::abs(forces.moment_lb_in), 0.0, "lb in",
             UseGroup::withdrawal,
             phrase("The connector does not resist moment. Use hardware with a tension value and give the height "
                    "over which it acts.")});
    }
    return all;
}

}  // namespace

EndStrength strength_of(const catalog::Resolved& resolved, const EndPlace& place, const ReportedConnector& connector) {
    const model::Basis& basis = resolved.detail.basis;
    const auto raised = [&](double allowable_lb) { return reported_value(allowable_lb, "lb", basis).value; };
    const Allowed allowed{0.5 * raised(connector.uplift_lb), 0.5 * raised(connector.down_lb),
                          raised(connector.lateral_lb), raised(connector.pull_lb)};
    EndStrength strength;
    strength.by = connector.name.empty() ? phrase("reported connector") : format::verbatim(connector.name);
    strength.clause = connector.report.empty() ? "report not named" : "report: " + connector.report;
    const bool raises = basis.method == model::Method::lrfd;
    const char* source = raises ? "the report's, times 1.6" : "the report's";
    const Origin origin = raises ? Origin::derived : Origin::file;
    strength.steps = {
        {"U", phrase("uplift on the whole end"), source, 2.0 * allowed.line_up, "lb", "input", origin},
        {"G", phrase("downward force on the whole end"), source, 2.0 * allowed.line_down, "lb", "input", origin},
        from_file("a", phrase("distance between the two lines of connectors"), connector.couple_arm_in, "in")};
    strength.uses = [connector, allowed, on_beam = place.on_beam](const demand::SupportReaction& forces) {
        return uses(forces, connector, allowed, on_beam);
    };
    return strength;
}

}  // namespace toehold::checks
