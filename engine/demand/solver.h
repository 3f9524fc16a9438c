#pragma once
// One detail prepared for many solves: the mechanics' plain arrays, and a state for any case, scenario and direction.
#include "demand/bed.h"
#include "demand/demand.h"
#include "demand/stiffness.h"
#include "mechanics/rigid_plate.h"

#include <optional>
#include <stdexcept>
#include <string>
#include <vector>

namespace toehold::demand {

/// Nothing described can balance the push: a fact about the detail, to be reported as such.
struct Overturns : std::runtime_error {
    Overturns(const std::string& message, double direction) : std::runtime_error(message), direction_rad(direction) {}
    double direction_rad;
};

class Solver {
  public:
    explicit Solver(const catalog::Resolved& resolved);

    /// Throws Overturns, or std::runtime_error when a residual exceeds its limit.
    [[nodiscard]] State solve(const std::vector<LoadCase>& cases, std::size_t load_case,
                              const std::vector<StiffnessScenario>& scenarios, std::size_t scenario,
                              double direction_rad);

    [[nodiscard]] const Bed& bed() const { return bed_; }
    [[nodiscard]] const std::vector<Stiffness>& anchor_stiffnesses() const { return anchor_stiffness_; }
    [[nodiscard]] const std::vector<mechanics::Point>& anchor_points() const { return anchor_points_; }
    [[nodiscard]] const Proof& proof() const { return proof_; }

  private:
    void scale(const StiffnessScenario& scenario);
    void record(const mechanics::Residuals& residuals);

    Bed bed_;
    std::vector<Stiffness> anchor_stiffness_;
    std::vector<mechanics::Point> anchor_points_;
    std::vector<mechanics::AnchorSpring> scaled_anchors_;
    std::vector<mechanics::BedPatch> scaled_patches_;
    std::optional<mechanics::RigidPlateSolution> previous_;
    Proof proof_;
};

}  // namespace toehold::demand
