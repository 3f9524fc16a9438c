#pragma once
// Which least distances of NDS 2018 12.5.1 apply to an anchor, given how it is loaded; in.
//
// Readings taken: an anchor that is pulled in any state keeps Table 12.5.1E; the near edge is a loaded edge (4 D) as
// soon as the anchor carries force across the grain in any state, whichever edge that state presses towards; wood
// screws of 1/4 in and more follow the lag screw's limits. A row is a line of fasteners along the force.
#include "demand/demand.h"
#include "format/phrase.h"
#include "model/part.h"

#include <string>
#include <vector>

namespace toehold::catalog {
struct Anchor;
}
namespace toehold::model {
enum class PlanAxis;
}

namespace toehold::checks {

/// How an anchor meets its member over all states.
struct PlacementLoads {
    bool withdrawal = false;    ///< a screw that is pulled
    bool along_grain = false;   ///< some horizontal force along the member
    bool across_grain = false;  ///< some horizontal force across it
};
[[nodiscard]] PlacementLoads placement_loads(const demand::Demand& demand, std::size_t index,
                                             const catalog::Anchor& anchor, model::PlanAxis grain);

/// One least distance and the distance there is. `actual_in` is 0 where nothing is left.
struct PlacementRule {
    double least_in = 0.0;
    double actual_in = 0.0;
    format::Phrase meaning;
    std::string formula;  ///< in diameters; empty where a report states the distance
    std::string clause;
    bool reported = false;  ///< stated by the fastener's report
};

/// Another anchor in the same member, and how far it is from this one: >= 0.
struct Neighbor {
    model::PartId part;
    double along_in = 0.0;
    double across_in = 0.0;
};

/// `length_in_wood_in`: of the fastener. `rows_apart_in`: see below.
[[nodiscard]] std::vector<PlacementRule> edge_rules(double diameter_in, double length_in_wood_in,
                                                    const PlacementLoads& loads, double rows_apart_in, double edge_in);
/// Distance across the grain from the anchor's row along the grain to the nearest other anchor off it; 0 where the
/// anchor stands in no row (within half a diameter) or all stand in one.
[[nodiscard]] double rows_apart_in(double diameter_in, const std::vector<Neighbor>& neighbors);
[[nodiscard]] std::vector<PlacementRule> end_rules(double diameter_in, const PlacementLoads& loads, double end_in);

/// `length_in_wood_in`: of the fastener, for rows loaded across the grain.
[[nodiscard]] std::vector<PlacementRule> spacing_rules(double diameter_in, double length_in_wood_in,
                                                       const PlacementLoads& loads, const Neighbor& neighbor);

/// Least distance over actual one; very large where nothing is left.
[[nodiscard]] double multiple(const PlacementRule& rule);
/// The rule of the largest multiple. `rules` must not be empty.
[[nodiscard]] const PlacementRule& hardest(const std::vector<PlacementRule>& rules);

}  // namespace toehold::checks
