#pragma once
// The quick answer while a hand is still on the detail, and the plate under one push, for drawing. Nominal stiffness
// only: the range of stiffness that the checks use, and the framing's give, are `find_demand`'s. No check may use it.
#include "demand/demand.h"

#include <memory>
#include <optional>
#include <string>
#include <vector>

namespace toehold::demand {

/// The anchors and the bed under one push at nominal stiffness, by each method.
struct PushResult {
    std::size_t load_case = 0;  ///< index of `Preview::cases`
    double direction_rad = 0.0;
    std::vector<AnchorForce> rigid;              ///< same order as resolved.anchors
    std::vector<AnchorForce> flexible;           ///< empty where the plate cannot be taken as flexible
    std::vector<std::optional<double>> hand_lb;  ///< tension, lever arm to the toe edge; absent for a push aslant to
                                                 ///< the plate's sides by more than half a degree, and without an arm
    DeflectedShape rigid_field;  ///< plane lift, pressure of the bed; a grid of its own, cut to plate and supports
    std::optional<DeflectedShape> flexible_field;
    // Of a mount whose bearing no field shows: a post on a member's side, as it bends.
    std::vector<Support> supports = {};             ///< what presses on it
    std::vector<SupportForce> support_forces = {};  ///< how hard; same order
    std::vector<double> ties_lb = {};               ///< pull of its ties, in the mount's order
};

/// Envelope of tension at nominal stiffness: what turns with the push in the rose. Where the loads ask for outward
/// pushes alone, every other direction is 0.
struct PolarEnvelope {
    std::vector<std::vector<double>> rigid_lb;     ///< [anchor][direction], directions at equal steps from 0
    std::vector<std::vector<double>> flexible_lb;  ///< the same; empty where the plate cannot be taken as flexible
    double largest_lb = 0.0;                       ///< of the method the basis asks for
    std::size_t largest_anchor = 0;
    double largest_direction_rad = 0.0;
    std::vector<double> hand_lb = {};  ///< [anchor] largest over pushes square to the plate's sides
};

class MountPreview;

/// One detail prepared. Not for use from two threads at once; may be moved between them.
class Preview {
  public:
    /// Copies what it needs. Throws Overturns or NoDemand as `find_demand` would fail.
    explicit Preview(const catalog::Resolved& resolved);
    ~Preview();
    Preview(Preview&&) noexcept;
    Preview& operator=(Preview&&) noexcept;

    [[nodiscard]] const std::vector<LoadCase>& cases() const;
    /// Over all load cases, the largest in each of `directions` equal steps. Throws Overturns, and
    /// std::invalid_argument for fewer than 4 steps.
    [[nodiscard]] PolarEnvelope polar_envelope(int directions);
    /// The load case under which an anchor pulls most for a push in this direction, by the method the basis asks for.
    [[nodiscard]] std::size_t worst_case(double direction_rad);
    /// Throws Overturns, or NoDemand when a residual exceeds its limit.
    [[nodiscard]] PushResult push(std::size_t load_case, double direction_rad);

  private:
    std::unique_ptr<MountPreview> mount_;
};

}  // namespace toehold::demand
