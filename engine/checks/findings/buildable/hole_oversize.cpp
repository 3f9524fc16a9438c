// A hole wider than the standard one for its anchor gives it play, and past the oversize hole the anchor does not hold
// the plate in place. A slot is judged by its width. A hole wider than the head or washer over it is no detail at all:
// resolving refuses it.
#include "catalog/resolve.h"
#include "checks/basis/result_parts.h"
#include "checks/findings/buildable/fit.h"
#include "checks/registry.h"
#include "resistance/steel/bolt.h"
#include "units/limit.h"

namespace toehold::checks {
namespace {

using format::Dimension;
using format::phrase;

namespace steel = resistance::steel;

format::Phrase with_play(const catalog::Anchor& anchor, double standard_in) {
    if (anchor.washer)
        return phrase(
            "Hole {0} is {1} wide for anchor {0} of {2}; a standard hole is {3}. The play lets the plate "
            "shift and the post lean. Drill {3}.",
            anchor.id, Dimension{anchor.hole_diameter_in}, Dimension{anchor.diameter_in}, Dimension{standard_in});
    return phrase(
        "Hole {0} is {1} wide for anchor {0} of {2}; a standard hole is {3}. The play lets the plate shift "
        "and the post lean, and an oversize hole needs a washer. Drill {3}, or add a washer.",
        anchor.id, Dimension{anchor.hole_diameter_in}, Dimension{anchor.diameter_in}, Dimension{standard_in});
}

format::Phrase too_wide(const catalog::Anchor& anchor, double standard_in, double oversize_in) {
    return phrase(
        "Hole {0} is {1} wide for anchor {0} of {2}; the largest oversize hole is {3}. The anchor does not "
        "hold the plate in place. Drill {4}, or use a larger anchor.",
        anchor.id, Dimension{anchor.hole_diameter_in}, Dimension{anchor.diameter_in}, Dimension{oversize_in},
        Dimension{standard_in});
}

std::string clause(const catalog::Anchor& anchor) {
    return anchor.diameter_in < 0.5 ? "common practice; AISC 360-16 Table J3.3 begins at 1/2 in (from memory)"
                                    : "AISC 360-16 Table J3.3 (from memory)";
}

std::vector<Finding> hole_oversize(const catalog::Resolved& resolved) {
    std::vector<Finding> findings;
    for (const catalog::Anchor& anchor : resolved.anchors) {
        const double standard_in = steel::drilled_in(steel::largest_standard_hole_in(anchor.diameter_in));
        const double oversize_in = steel::drilled_in(steel::oversize_hole_in(anchor.diameter_in));
        if (units::at_most(anchor.hole_diameter_in, standard_in)) continue;
        const bool within = units::at_most(anchor.hole_diameter_in, oversize_in);
        findings.push_back(finding_on(
            model::hole_part(anchor.id), within ? Severity::caution : Severity::fails,
            within ? with_play(anchor, standard_in) : too_wide(anchor, standard_in, oversize_in), clause(anchor)));
    }
    return findings;
}

const RegisterFinding registered{
    {"hole-oversize", phrase("Hole too wide for its anchor"), "AISC 360-16 Table J3.3 (from memory)", hole_oversize},
    {model::MountKind::plate_on_deck},
    Cause::geometry};

}  // namespace
}  // namespace toehold::checks
