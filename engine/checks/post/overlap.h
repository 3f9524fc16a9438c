#pragma once
// Where a post overlaps what holds it: the worst push on the couple between the two.
#include "checks/registry.h"
#include "mechanics/overlap/overlap_couple.h"

#include <optional>
#include <vector>

namespace toehold::checks {

/// A post between two heights above the bearing plane held by a stub within it or a shoe around it.
struct Overlap {
    double bottom_in = 0.0;
    double top_in = 0.0;   ///< > bottom
    double play_in = 0.0;  ///< inside less outside, the larger of both ways, >= 0
};

/// Absent: the post has neither a stub nor a closed, welded shoe, or the overlap has no length. The tube stands clear
/// of the weld around its stub; wood stands on the plate.
[[nodiscard]] std::optional<Overlap> overlap_of(const catalog::Resolved& resolved);

/// The couple under the push whose component along an axis turns the post most; each way has faces of its own.
struct WorstCouple {
    mechanics::OverlapCouple couple;
    bool along_x = false;    ///< the component counted
    double push_lb = 0.0;    ///< that component
    double height_in = 0.0;  ///< of the push above the bearing plane
    double direction_deg = 0.0;
};
/// `weight_x`, `weight_y`: what a component counts, where the two ways are not alike; > 0.
[[nodiscard]] WorstCouple worst_couple(const CheckInput& input, const Overlap& overlap, double weight_x = 1.0,
                                       double weight_y = 1.0);

/// Worked lines from the push to the pressure.
[[nodiscard]] std::vector<Step> couple_steps(const Overlap& overlap, const WorstCouple& worst);

}  // namespace toehold::checks
