#include "model/validate_connection.h"

namespace toehold::model {
namespace {

using format::phrase;
using format::verbatim;

constexpr double largest_diameter_in = 2.0;
constexpr double largest_fastener_in = 24.0;
constexpr double smallest_structural_in = 0.22;  // the shank of what is sold as 1/4 in
constexpr int most_fasteners = 60;
constexpr double largest_allowable_lb = 1e6;

struct Check {
    ProblemList& problems;
    double depth_in;

    void operator()(std::monostate /*nothing described*/) const {}

    void operator()(const EndGrainFasteners& fasteners) const {
        problems.positive(phrase("diameter (in)"), fasteners.diameter_in, largest_diameter_in);
        problems.positive(phrase("length (in)"), fasteners.length_in, largest_fastener_in);
        problems.between(phrase("count"), fasteners.count, 1, most_fasteners);
        problems.between(phrase("spread (in)"), fasteners.spread_in, 0.0, 48.0);
        if (fasteners.count > 1 && !(fasteners.spread_in > 0.0)) {
            problems.add(phrase("more than one fastener needs the distance between the outermost two"),
                         phrase("a spread above 0"));
        }
        if (fasteners.kind == EndGrainFasteners::Kind::structural_screw) structural(fasteners);
    }

    void structural(const EndGrainFasteners& screws) const {
        problems.between(phrase("lateral (lb)"), screws.reported.lateral_lb, 0.0, largest_allowable_lb);
        problems.between(phrase("withdrawal (lb)"), screws.reported.withdrawal_lb, 0.0, largest_allowable_lb);
        if (screws.diameter_in < smallest_structural_in) {
            problems.add(phrase("a screw this thin is no structural screw"),
                         phrase("a diameter of 1/4 in or more, or <screws> with the values of the standard"),
                         phrase("{} in", brief(screws.diameter_in)));
        }
        if (screws.reported.report.empty() || screws.reported.conditions.empty()) {
            problems.add(phrase("values of structural screws need their source"),
                         phrase("the evaluation report and the conditions its values hold for"));
        }
    }

    void operator()(const ToeNails& nails) const {
        problems.positive(phrase("diameter (in)"), nails.diameter_in, largest_diameter_in);
        problems.positive(phrase("length (in)"), nails.length_in, largest_fastener_in);
        problems.between(phrase("count"), nails.count, 1, most_fasteners);
        problems.between(phrase("spread (in)"), nails.spread_in, 0.0, 48.0);
        if (nails.count > 2 && !(nails.spread_in > 0.0)) {
            problems.add(phrase("more than one toe-nail a side needs the distance between the outermost two of a side"),
                         phrase("a spread above 0"));
        }
        line_fits(phrase("the toe-nails of one side reach beyond the member's depth"), nails.spread_in);
    }

    void operator()(const SideAngles& angles) const {
        problems.between(phrase("sides"), angles.sides, 1, 2);
        problems.positive(phrase("thickness (in)"), angles.thickness_in, 1.0);
        problems.positive(phrase("diameter (in)"), angles.diameter_in, largest_diameter_in);
        if (angles.kind == SideAngles::Kind::bolt) {
            if (!(angles.length_in == 0.0))
                problems.add(phrase("a bolt through the wood has no length of its own"), phrase("no length"),
                             verbatim(brief(angles.length_in)));
        } else {
            problems.positive(phrase("length (in)"), angles.length_in, largest_fastener_in);
        }
        if (angles.kind == SideAngles::Kind::wood_screw && angles.threads) {
            problems.add(phrase("a wood screw is threaded where it holds"),
                         phrase("threads of bolts and lag screws only"));
        }
        problems.between(phrase("fasteners per leg"), angles.per_leg, 1, most_fasteners);
        problems.between(phrase("spacing (in)"), angles.spacing_in, 0.0, 48.0);
        problems.positive(phrase("gauge (in)"), angles.gauge_in, 12.0);
        if (angles.per_leg > 1 && !(angles.spacing_in > 0.0)) {
            problems.add(phrase("more than one fastener per leg needs the distance between neighbors"),
                         phrase("a spacing above 0"));
        }
        line_fits(phrase("the fasteners of one leg reach beyond the member's depth"),
                  (angles.per_leg - 1) * angles.spacing_in);
    }

    void operator()(const ReportedConnector& connector) const {
        problems.between(phrase("uplift (lb)"), connector.uplift_lb, 0.0, largest_allowable_lb);
        problems.between(phrase("down (lb)"), connector.down_lb, 0.0, largest_allowable_lb);
        problems.between(phrase("lateral (lb)"), connector.lateral_lb, 0.0, largest_allowable_lb);
        problems.between(phrase("couple arm (in)"), connector.couple_arm_in, 0.0, 48.0);
        problems.between(phrase("pull (lb)"), connector.pull_lb, 0.0, largest_allowable_lb);
        problems.between(phrase("height (in)"), connector.height_in, 0.0, 48.0);
        if (connector.stiffness_lb_per_in)
            problems.positive(phrase("stiffness (lb/in)"), *connector.stiffness_lb_per_in, 1e8);
        if (connector.from_top_in) problems.between(phrase("from top (in)"), *connector.from_top_in, 0.0, depth_in);
        if (connector.from_bottom_in)
            problems.between(phrase("from bottom (in)"), *connector.from_bottom_in, 0.0, depth_in);
    }

    void line_fits(const format::Phrase& message, double line_in) const {
        if (!(line_in >= depth_in)) return;
        problems.add(message, phrase("a line shorter than {} in", brief(depth_in)), phrase("{} in", brief(line_in)));
    }
};

}  // namespace

void check_connection(ProblemList& problems, const EndConnection& connection, double depth_in) {
    std::visit(Check{problems, depth_in}, connection);
}

}  // namespace toehold::model
