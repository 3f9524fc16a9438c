#pragma once
// What a mount's own hardware beside its anchors meets, and what a reviewer works out by hand of the mount as a whole:
// for rooms that print them and know no mount. Forces lb, lengths in.
#include "demand/side_demand.h"
#include "model/part.h"

#include <string>
#include <vector>

namespace toehold::catalog {
struct Resolved;
}

namespace toehold::demand {

struct Demand;

/// A tie back to the framing, and the largest pull in it over all states.
struct TieDemand {
    model::PartId part;
    std::string name;            ///< the user's own
    model::PartId into;          ///< the joist or block that takes the force
    double x_in = 0.0;           ///< of its line of force, along the rail
    double z_in = 0.0;           ///< the same, up from the mount's z = 0
    double tension_lb = 0.0;     ///< >= 0
    double direction_rad = 0.0;  ///< of the push that gives it
    double allowable_lb = 0.0;   ///< by its report (ASD), > 0
    bool chosen = true;          ///< false: its values are what its report must give
};
/// In the mount's order; empty of a mount without any.
[[nodiscard]] std::vector<TieDemand> tie_demands(const catalog::Resolved& resolved, const Demand& demand);

/// Couples worked out by hand, in which some fastener is drawn; empty of a mount whose anchors each have a hand value.
[[nodiscard]] std::vector<HandCouple> hand_couples(const Demand& demand);

}  // namespace toehold::demand
