// Screws of 1/4 in and more in end grain: no standard gives them a value there, so each has what its report allows.
// Like hardware with a report, but the couples are carried by the spread of the screws on their upright line: an
// elastic group, common practice. The member's pressed edge is not counted, which is on the safe side.
#include "checks/connection/structural_screws.h"

#include "catalog/resolve.h"
#include "checks/basis/wood_basis.h"

#include <algorithm>
#include <cmath>

namespace toehold::checks {
namespace {

using format::Dimension;
using format::phrase;
using model::EndGrainFasteners;

/// What one screw may take, raised to meet the demand's method, lb.
struct Allowed {
    double lateral_lb = 0.0, withdrawal_lb = 0.0;
};

format::Phrase no_value(const format::Phrase& what) {
    return phrase("The report's value of the screws in end grain is not given: {}. Give it, or add hardware.", what);
}

void add_uses(Uses& uses, const demand::SupportReaction& forces, const EndGrainFasteners& screws,
              const Allowed& allowed) {
    const double per_couple = outermost_per_couple(screws.count, screws.spread_in);
    const double across_lb =
        std::hypot(upright_lb(forces), forces.across_lb) / screws.count + std::abs(forces.torque_lb_in) * per_couple;
    const double along_lb = std::max(forces.along_lb, 0.0) / screws.count + std::abs(forces.moment_lb_in) * per_couple;
    uses.add(UseGroup::shear, across_lb, allowed.lateral_lb, [] {
        return UseWords{"P", phrase("force across the outermost screw"), "sqrt(R_v^2 + R_h^2)/n + T r_max/sum(r^2)",
                        no_value(phrase("lateral"))};
    });
    uses.add(UseGroup::withdrawal, along_lb, allowed.withdrawal_lb, [] {
        return UseWords{"P_w", phrase("withdrawal of the outermost screw"), "P_a/n + M r_max/sum(r^2)",
                        no_value(phrase("withdrawal"))};
    });
    if (per_couple > 0.0) return;
    const auto one_screw = [](const char* symbol, format::Phrase meaning) {
        return UseWords{symbol, std::move(meaning), "",
                        phrase("One screw does not resist a couple. Use two or more, spread over the depth.")};
    };
    uses.add_unresisted_couple(UseGroup::lateral, std::abs(forces.torque_lb_in),
                               [&] { return one_screw("T", phrase("torque about the member's axis")); });
    uses.add_unresisted_couple(UseGroup::withdrawal, std::abs(forces.moment_lb_in),
                               [&] { return one_screw("M", phrase("moment in the member's vertical plane")); });
}

std::vector<Step> steps(const EndGrainFasteners& screws, const Allowed& allowed, bool raised) {
    const char* source = raised ? "the report's, times 1.6" : "the report's";
    const Origin origin = raised ? Origin::derived : Origin::file;
    return {from_file("n", phrase("number of screws on one upright line"), screws.count, ""),
            from_file("s", phrase("between the outermost two"), screws.spread_in, "in"),
            {"Z_r", phrase("allowable lateral value of one screw in end grain"), source, allowed.lateral_lb, "lb",
             "input", origin},
            {"W_r", phrase("allowable withdrawal of one screw from end grain"), source, allowed.withdrawal_lb, "lb",
             "input", origin}};
}

}  // namespace

EndStrength structural_screw_strength(const catalog::Resolved& resolved, const EndPlace& place,
                                      const EndGrainFasteners& screws) {
    const model::Basis& basis = resolved.detail.basis;
    const auto raised = [&](double allowable_lb) { return reported_value(allowable_lb, "lb", basis).value; };
    const Allowed allowed{raised(screws.reported.lateral_lb), raised(screws.reported.withdrawal_lb)};
    EndStrength strength;
    strength.by = phrase("{} structural screws {} x {}, into end grain", screws.count, Dimension{screws.diameter_in},
                         Dimension{screws.length_in});
    strength.clause = "report: " + screws.reported.report;
    if (screws.spread_in > place.member.depth_in) {
        strength.missing =
            phrase("The spread of the fasteners, {}, exceeds the member's depth, {}: some miss it. Reduce the spread.",
                   Dimension{screws.spread_in}, Dimension{place.member.depth_in});
        return strength;
    }
    strength.steps = steps(screws, allowed, basis.method == model::Method::lrfd);
    strength.note =
        sentences(phrase("Values of the report for end grain, which hold for: {}.", screws.reported.conditions),
                  place.holder.assumption);
    strength.uses = [screws, allowed](const demand::SupportReaction& forces, Uses& uses) {
        add_uses(uses, forces, screws, allowed);
    };
    return strength;
}

}  // namespace toehold::checks
