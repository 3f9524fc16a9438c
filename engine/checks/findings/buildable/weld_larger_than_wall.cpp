// A fillet too large for the thinner part it joins: its heat burns through the wall, and the strength counted for it is
// not there; or a groove deeper than the wall. For the least leg see `weld-too-small`.
#include "catalog/resolve.h"
#include "checks/basis/result_parts.h"
#include "checks/findings/buildable/fit.h"
#include "checks/registry.h"
#include "units/limit.h"

#include <algorithm>

namespace toehold::checks {
namespace {

using format::Dimension;
using format::phrase;

/// Largest leg over the thickness of the thinner part (common practice).
constexpr double largest_leg_to_thickness = 2.0;

std::vector<Finding> weld_larger_than_wall(const catalog::Resolved& resolved) {
    const double wall_in = post_foot(resolved.detail.post).thickness_in;
    const std::optional<model::Weld>& weld = on_deck(resolved.detail).weld;
    if (weld && !units::at_most(weld->throat_in, wall_in)) {
        return {finding_on({model::PartKind::weld}, Severity::fails,
                           phrase("The groove's effective throat of {} is more than the {} of metal it is cut into. "
                                  "Make it a complete penetration groove, or give a smaller throat.",
                                  Dimension{weld->throat_in}, Dimension{wall_in}))};
    }
    const double thinner_in = std::min(wall_in, on_deck(resolved.detail).plate.thickness_in);
    const double leg_in = weld_leg_in(resolved);
    const double largest_in = largest_leg_to_thickness * thinner_in;
    if (units::at_most(leg_in, largest_in)) return {};
    return {finding_on({model::PartKind::weld}, Severity::fails,
                       phrase("The weld's leg of {} is more than twice the thinner part it joins ({}): so large a weld "
                              "burns through, and its strength is not there. Use a leg of {} or less, or thicker "
                              "metal.",
                              Dimension{leg_in}, Dimension{thinner_in}, Dimension{largest_in}))};
}

const RegisterFinding registered{
    {"weld-larger-than-wall", phrase("Weld too large for the wall"), "common practice", weld_larger_than_wall},
    {model::MountKind::plate_on_deck},
    Cause::geometry};

}  // namespace
}  // namespace toehold::checks
