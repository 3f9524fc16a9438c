// A hole that leaves its anchor less than 1/32 in takes it only when shank, coating and drill are all on the right side
// of their tolerances: bolts and screws are made a few hundredths over their nominal diameter, and galvanizing adds to
// it. The standards name the largest hole of a plate, not the least; common practice drills 1/16 in more.
#include "catalog/resolve.h"
#include "checks/basis/result_parts.h"
#include "checks/registry.h"
#include "resistance/steel/bolt.h"
#include "units/limit.h"

namespace toehold::checks {
namespace {

using format::Dimension;
using format::phrase;

namespace steel = resistance::steel;

/// The least that NDS 2018 12.1.3.2 lets a bolt's hole in wood exceed the bolt.
constexpr double least_clearance_in = 1.0 / 32.0;

std::vector<Finding> hole_tight(const catalog::Resolved& resolved) {
    std::vector<Finding> findings;
    for (const catalog::Anchor& anchor : resolved.anchors) {
        if (units::at_most(anchor.diameter_in + least_clearance_in, anchor.hole_diameter_in)) continue;
        findings.push_back(finding_on(
            model::hole_part(anchor.id), Severity::caution,
            phrase("Hole {0} is {1} wide for anchor {0} of {2}: with its tolerance and coating the anchor may not go "
                   "through. Drill {3}.",
                   anchor.id, Dimension{anchor.hole_diameter_in}, Dimension{anchor.diameter_in},
                   Dimension{steel::drilled_in(steel::standard_hole_in(anchor.diameter_in))}),
            "common practice; NDS 2018 12.1.3.2 for bolt holes in wood"));
    }
    return findings;
}

const RegisterFinding registered{{"hole-tight", phrase("Hole too tight for its anchor"), "common practice", hole_tight},
                                 {model::MountKind::plate_on_deck},
                                 Cause::geometry};

}  // namespace
}  // namespace toehold::checks
