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

UseWords no_value(const char* symbol, format::Phrase meaning) {
    format::Phrase why = phrase("The connector has no value for this force: {}. Give it, with its report.", meaning);
    return {symbol, std::move(meaning), "", std::move(why)};
}

void add_couples_it_does_not_resist(Uses& uses, const demand::SupportReaction& forces,
                                    const ReportedConnector& connector) {
    if (!(connector.couple_arm_in > 0.0)) {
        uses.add_unresisted_couple(UseGroup::lateral, std::abs(forces.torque_lb_in), [] {
            return UseWords{
                "T", phrase("torque about the member's axis"), "",
                phrase("The connector does not resist torque about the member's axis. Use hardware on both sides and "
                       "give the distance between its two lines.")};
        });
    }
    if (!(connector.height_in > 0.0)) {
        uses.add_unresisted_couple(UseGroup::withdrawal, std::abs(forces.moment_lb_in), [] {
            return UseWords{
                "M", phrase("moment in the member's vertical plane"), "",
                phrase("The connector does not resist moment. Use hardware with a tension value and give the height "
                       "over which it acts.")};
        });
    }
}

void add_uses(Uses& uses, const demand::SupportReaction& forces, const ReportedConnector& connector,
              const Allowed& allowed, bool on_beam) {
    const bool has_arm = connector.couple_arm_in > 0.0, has_height = connector.height_in > 0.0;
    const double pair_lb = has_arm ? std::abs(forces.torque_lb_in) / connector.couple_arm_in : 0.0;
    const double edge_lb = has_height ? std::abs(forces.moment_lb_in) / connector.height_in : 0.0;
    const double half_lb = 0.5 * forces.up_lb;
    const double pressed_lb = forces.down_lb > 0.0 ? 0.5 * forces.down_lb + pair_lb : 0.0;
    uses.add(UseGroup::shear, std::max({half_lb + pair_lb, half_lb - pair_lb, 0.0}), allowed.line_up,
             [] { return no_value("R_u", phrase("uplift on one line: R_v/2 + T/arm")); });
    uses.add(UseGroup::lateral, std::abs(forces.across_lb), allowed.lateral,
             [] { return no_value("R_s", phrase("lateral, across the member")); });
    uses.add(UseGroup::withdrawal, std::max(forces.along_lb, 0.0) + edge_lb, allowed.tension,
             [] { return no_value("R_p", phrase("tension along the member: P_a + M/height")); });
    if (!on_beam) {
        uses.add(UseGroup::shear, std::max({pressed_lb, pair_lb - half_lb, 0.0}), allowed.line_down,
                 [] { return no_value("R_d", phrase("downward on the other line: T/arm - R_v/2, or R_g/2 + T/arm")); });
    }
    add_couples_it_does_not_resist(uses, forces, connector);
}

std::string source_of(const ReportedConnector& connector) {
    if (!connector.chosen) return "required of hardware not yet chosen";
    return connector.report.empty() ? "report not named" : "report: " + connector.report;
}

}  // namespace

EndStrength strength_of(const catalog::Resolved& resolved, const EndPlace& place, const ReportedConnector& connector) {
    const model::Basis& basis = resolved.detail.basis;
    const auto raised = [&](double allowable_lb) { return reported_value(allowable_lb, "lb", basis).value; };
    const Allowed allowed{0.5 * raised(connector.uplift_lb), 0.5 * raised(connector.down_lb),
                          raised(connector.lateral_lb), raised(connector.pull_lb)};
    EndStrength strength;
    strength.by = connector.name.empty() ? phrase("reported connector") : format::verbatim(connector.name);
    strength.clause = source_of(connector);
    const bool raises = basis.method == model::Method::lrfd;
    const char* source = raises ? "the report's, times 1.6" : "the report's";
    const Origin origin = raises ? Origin::derived : Origin::file;
    strength.steps = {
        {"U", phrase("uplift on the whole end"), source, 2.0 * allowed.line_up, "lb", "input", origin},
        {"G", phrase("downward force on the whole end"), source, 2.0 * allowed.line_down, "lb", "input", origin},
        from_file("a", phrase("distance between the two lines of connectors"), connector.couple_arm_in, "in")};
    strength.uses = [connector, allowed, on_beam = place.on_beam](const demand::SupportReaction& forces, Uses& uses) {
        add_uses(uses, forces, connector, allowed, on_beam);
    };
    return strength;
}

}  // namespace toehold::checks
