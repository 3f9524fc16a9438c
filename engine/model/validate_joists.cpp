#include "model/validate_joists.h"

#include "model/member.h"
#include "model/validate_connection.h"
#include "model/validate_framing.h"

#include <algorithm>
#include <cmath>

namespace toehold::model {
namespace {

using format::phrase;

bool ends_described(const Framing& framing) {
    return framing.joists && framing.joists->from_in && framing.joists->to_in;
}

bool same_place(double a_in, double b_in) { return std::abs(a_in - b_in) <= end_fit_in; }

format::Phrase ends_of(const Joists& joists) {
    return phrase("joists from {} in to {} in", brief(*joists.from_in), brief(*joists.to_in));
}

bool stands_at_an_end(const Rim& rim, const Joists& joists) {
    const double half_in = 0.5 * rim.width_in * rim.plies;
    return same_place(rim.at_in - half_in, *joists.to_in) || same_place(rim.at_in + half_in, *joists.from_in);
}

/// A rim may end on a joist's center line, where the next one begins, but not short of it.
void check_reach(ProblemList& problems, const Rim& rim, const Joists& joists) {
    bool holds_one = false;
    for (const Joist& joist : joists.members) {
        const double half_in = 0.5 * joists.width_in * joist.plies;
        const double reached_in = std::min(joist.offset_in - rim.from_in, rim.to_in - joist.offset_in);
        if (reached_in >= -end_fit_in) {
            holds_one = true;
        } else if (reached_in > -half_in) {
            problems.add(phrase("the rim ends short of the middle of joist {}", joist.id),
                         phrase("a rim that reaches the center line of each joist it holds"),
                         phrase("rim from {} in to {} in, joist centered at {} in", brief(rim.from_in),
                                brief(rim.to_in), brief(joist.offset_in)));
        }
    }
    if (!holds_one) {
        problems.add(phrase("the rim holds no joist"), phrase("a rim that reaches across the joists it holds"),
                     phrase("from {} in to {} in", brief(rim.from_in), brief(rim.to_in)));
    }
}

void check_place(ProblemList& problems, const Framing& framing, const Rim& rim) {
    if (!ends_described(framing)) {
        problems.add(phrase("a rim needs joists whose ends are described"), phrase("from and to of framing/joists"));
    } else if (!stands_at_an_end(rim, *framing.joists)) {
        problems.add(phrase("the rim does not stand at the joists' ends"),
                     phrase("a near face within {} in of where the joists end", brief(end_fit_in)),
                     phrase("rim {} in wide centered at {} in, {}", brief(rim.width_in * rim.plies), brief(rim.at_in),
                            ends_of(*framing.joists)));
    } else {
        check_reach(problems, rim, *framing.joists);
    }
}

void check_place(ProblemList& problems, const Framing& framing, const JoistSupport& support) {
    if (!ends_described(framing)) {
        problems.add(phrase("a support needs joists whose ends are described"),
                     phrase("from and to of framing/joists"));
        return;
    }
    const Joists& joists = *framing.joists;
    const format::Phrase found = phrase("at {} in, {}", brief(support.at_in), ends_of(joists));
    if (!(support.at_in >= *joists.from_in && support.at_in <= *joists.to_in)) {
        problems.add(phrase("the support stands beyond the joists' ends"),
                     phrase("a place between from and to of the joists"), found);
    } else if (support.kind == JoistSupport::Kind::ledger && !same_place(support.at_in, *joists.from_in) &&
               !same_place(support.at_in, *joists.to_in)) {
        problems.add(phrase("the ledger is not at an end of the joists that hang from it"),
                     phrase("a place within {} in of where the joists end", brief(end_fit_in)), found);
    }
}

void check_bearing(ProblemList& problems, const JoistSupport& support) {
    if (support.kind == JoistSupport::Kind::beam) {
        problems.positive(phrase("bearing (in) of the joists on the beam"), support.bearing_in, 48.0);
    } else if (!(support.bearing_in == 0.0)) {
        problems.add(phrase("joists hang from a ledger's face and bear on nothing"), phrase("no bearing"),
                     phrase("{} in", brief(support.bearing_in)));
    }
}

}  // namespace

void check_joists(ProblemList& problems, const Joists& joists) {
    problems.at("framing/joists");
    check_section(problems, joists.width_in, joists.depth_in);
    if (joists.from_in.has_value() != joists.to_in.has_value()) {
        problems.add(phrase("only one end of the joists is described"), phrase("both from and to, or neither"));
    } else if (joists.from_in) {
        check_ends(problems, *joists.from_in, *joists.to_in);
    }
    for (const Joist& joist : joists.members) {
        problems.at("framing/joists/joist[" + joist.id + "]");
        if (joist.id.empty()) problems.add(phrase("a joist has no id"), phrase("a short name such as J1"));
        problems.between(phrase("offset (in)"), joist.offset_in, -largest_length_in, largest_length_in);
        check_plies(problems, joist.plies);
    }
}

void check_rims(ProblemList& problems, const Framing& framing) {
    for (const Rim& rim : framing.rims) {
        problems.at("framing/rim[" + rim.id + "]");
        if (rim.id.empty()) problems.add(phrase("a rim has no id"), phrase("a short name such as R1"));
        check_section(problems, rim.width_in, rim.depth_in);
        check_plies(problems, rim.plies);
        problems.between(phrase("at (in)"), rim.at_in, -largest_length_in, largest_length_in);
        check_ends(problems, rim.from_in, rim.to_in);
        check_place(problems, framing, rim);
        // Each joist's end is held to the rim, so its fasteners stand in the joist's depth.
        if (framing.joists) check_connection(problems, rim.connection, framing.joists->depth_in);
    }
}

void check_supports(ProblemList& problems, const Framing& framing) {
    for (const JoistSupport& support : framing.supports) {
        problems.at("framing/support[" + support.id + "]");
        if (support.id.empty()) problems.add(phrase("a support has no id"), phrase("a short name such as S1"));
        problems.between(phrase("at (in)"), support.at_in, -largest_length_in, largest_length_in);
        check_bearing(problems, support);
        check_place(problems, framing, support);
        if (framing.joists) check_connection(problems, support.connection, framing.joists->depth_in);
    }
}

}  // namespace toehold::model
