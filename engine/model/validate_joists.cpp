#include "model/validate_joists.h"

#include "model/member.h"
#include "model/validate_connection.h"
#include "model/validate_framing.h"

#include <algorithm>
#include <cmath>

namespace toehold::model {
namespace {

bool ends_described(const Framing& framing) {
    return framing.joists && framing.joists->from_in && framing.joists->to_in;
}

bool same_place(double a_in, double b_in) { return std::abs(a_in - b_in) <= end_fit_in; }

std::string ends_of(const Joists& joists) {
    return "joists from " + brief(*joists.from_in) + " in to " + brief(*joists.to_in) + " in";
}

bool stands_at_an_end(const Rim& rim, const Joists& joists) {
    const double half_in = 0.5 * rim.width_in * rim.plies;
    return same_place(rim.at_in - half_in, *joists.to_in) || same_place(rim.at_in + half_in, *joists.from_in);
}

/// A rim may end on a joist's centre line, where the next one begins, but not short of it.
void check_reach(ProblemList& problems, const Rim& rim, const Joists& joists) {
    bool holds_one = false;
    for (const Joist& joist : joists.members) {
        const double half_in = 0.5 * joists.width_in * joist.plies;
        const double reached_in = std::min(joist.offset_in - rim.from_in, rim.to_in - joist.offset_in);
        if (reached_in >= -end_fit_in) {
            holds_one = true;
        } else if (reached_in > -half_in) {
            problems.add("the rim ends short of the middle of joist " + joist.id,
                         "a rim that reaches the centre line of each joist it holds",
                         "rim from " + brief(rim.from_in) + " in to " + brief(rim.to_in) + " in, joist centred at " +
                             brief(joist.offset_in) + " in");
        }
    }
    if (!holds_one) {
        problems.add("the rim holds no joist", "a rim that reaches across the joists it holds",
                     "from " + brief(rim.from_in) + " in to " + brief(rim.to_in) + " in");
    }
}

void check_place(ProblemList& problems, const Framing& framing, const Rim& rim) {
    if (!ends_described(framing)) {
        problems.add("a rim needs joists whose ends are described", "from and to of framing/joists");
    } else if (!stands_at_an_end(rim, *framing.joists)) {
        problems.add("the rim does not stand at the joists' ends",
                     "a near face within " + brief(end_fit_in) + " in of where the joists end",
                     "rim " + brief(rim.width_in * rim.plies) + " in wide centred at " + brief(rim.at_in) + " in, " +
                         ends_of(*framing.joists));
    } else {
        check_reach(problems, rim, *framing.joists);
    }
}

void check_place(ProblemList& problems, const Framing& framing, const JoistSupport& support) {
    if (!ends_described(framing)) {
        problems.add("a support needs joists whose ends are described", "from and to of framing/joists");
        return;
    }
    const Joists& joists = *framing.joists;
    const std::string found = "at " + brief(support.at_in) + " in, " + ends_of(joists);
    if (!(support.at_in >= *joists.from_in && support.at_in <= *joists.to_in)) {
        problems.add("the support stands beyond the joists' ends", "a place between from and to of the joists", found);
    } else if (support.kind == JoistSupport::Kind::ledger && !same_place(support.at_in, *joists.from_in) &&
               !same_place(support.at_in, *joists.to_in)) {
        problems.add("the ledger is not at an end of the joists that hang from it",
                     "a place within " + brief(end_fit_in) + " in of where the joists end", found);
    }
}

void check_bearing(ProblemList& problems, const JoistSupport& support) {
    if (support.kind == JoistSupport::Kind::beam) {
        problems.positive("bearing (in) of the joists on the beam", support.bearing_in, 48.0);
    } else if (!(support.bearing_in == 0.0)) {
        problems.add("joists hang from a ledger's face and bear on nothing", "no bearing",
                     brief(support.bearing_in) + " in");
    }
}

}  // namespace

void check_joists(ProblemList& problems, const Joists& joists) {
    problems.at("framing/joists");
    check_section(problems, joists.width_in, joists.depth_in);
    if (joists.from_in.has_value() != joists.to_in.has_value()) {
        problems.add("only one end of the joists is described", "both from and to, or neither");
    } else if (joists.from_in) {
        check_ends(problems, "a joist", *joists.from_in, *joists.to_in);
    }
    for (const Joist& joist : joists.members) {
        problems.at("framing/joists/joist[" + joist.id + "]");
        if (joist.id.empty()) problems.add("a joist has no id", "a short name such as J1");
        problems.between("offset (in)", joist.offset_in, -largest_length_in, largest_length_in);
        check_plies(problems, joist.plies);
    }
}

void check_rims(ProblemList& problems, const Framing& framing) {
    for (const Rim& rim : framing.rims) {
        problems.at("framing/rim[" + rim.id + "]");
        if (rim.id.empty()) problems.add("a rim has no id", "a short name such as R1");
        check_section(problems, rim.width_in, rim.depth_in);
        check_plies(problems, rim.plies);
        problems.between("at (in)", rim.at_in, -largest_length_in, largest_length_in);
        check_ends(problems, "a rim", rim.from_in, rim.to_in);
        check_place(problems, framing, rim);
        // Each joist's end is held to the rim, so its fasteners stand in the joist's depth.
        if (framing.joists) check_connection(problems, rim.connection, framing.joists->depth_in);
    }
}

void check_supports(ProblemList& problems, const Framing& framing) {
    for (const JoistSupport& support : framing.supports) {
        problems.at("framing/support[" + support.id + "]");
        if (support.id.empty()) problems.add("a support has no id", "a short name such as S1");
        problems.between("at (in)", support.at_in, -largest_length_in, largest_length_in);
        check_bearing(problems, support);
        check_place(problems, framing, support);
        if (framing.joists) check_connection(problems, support.connection, framing.joists->depth_in);
    }
}

}  // namespace toehold::model
