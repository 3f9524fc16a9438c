#pragma once
// Horizontal forces on the framing in one state. A block carries what crosses it to its two ends as a simple beam and
// is pressed along itself against the joist it is pushed to. Joists and rims are held by boards that are fastened to
// them; without that they carry what crosses them sideways between their supports.
#include "demand/framing/frame.h"

#include <optional>
#include <vector>

namespace toehold::demand {

/// Stress at which an end that a member presses on is taken to bear on it across the grain, in an estimate of how far
/// contact keeps the two square: below what the softest framing lumber may take when wet (common practice; 335 psi and
/// more by NDS 2018 Supplement Table 4A, times 0.67).
inline constexpr double contact_psi = 200.0;

/// A horizontal force at a place along a member, in the member's axes.
struct LateralLoad {
    std::size_t member = 0;
    double at_in = 0.0;  ///< coordinate along it
    double across_lb = 0.0;
    double along_lb = 0.0;
    double turning_lb_in = 0.0;  ///< about the vertical, counterclockwise from above, on the member
};

/// Every block after those that end at it, so that a holder has all of its load before it passes it on.
[[nodiscard]] std::vector<std::size_t> blocks_held_first(const Frame& frame);
/// Whether blocks hold each other in a ring (each ends at the next), so that no such order exists.
[[nodiscard]] bool blocks_hold_in_a_ring(const Frame& frame);

/// Adds across and along to the supports' reactions, and the horizontal moment and shear to the members' actions.
/// `on_face`: a rim or joist that a post is fastened to the side of, if any: blocks that end at it hold it too, and
/// pass what they take to their other end; and where it is pressed on the ends that hold it, that contact takes from
/// their moments what it can.
void add_lateral(FramingState& state, const Frame& frame, std::vector<LateralLoad> loads, bool boards_hold,
                 std::optional<std::size_t> on_face = std::nullopt);

}  // namespace toehold::demand
