#pragma once
// A plate on the deck prepared for many solves: the mechanics' plain arrays, and a state for any case, scenario and
// direction.
#include "demand/mount.h"
#include "demand/plate_on_deck/bed.h"
#include "mechanics/flexible_plate/flexible_plate.h"
#include "mechanics/rigid_plate/rigid_plate.h"

#include <array>
#include <map>
#include <optional>
#include <string>
#include <utility>
#include <vector>

namespace toehold::demand {

/// What a solver makes ready besides the rigid plate. Each costs as much as a few dozen solves.
struct Preparation {
    bool flexible_framing = true;  ///< the flexible plate a second time, on framing that gives
    bool always_flexible = false;  ///< the flexible plate also where the basis asks for a rigid one
    bool bent_shape = true;        ///< `complete` finds the shape of the governing state
    bool in_proportion = false;    ///< a solve like an earlier one but for the size of its push is taken from that one,
                                   ///< and `last_rigid` is not to be asked for
};

/// As the mechanics has them.
[[nodiscard]] mechanics::PlateLoad plate_load(const Push& push);
[[nodiscard]] mechanics::StiffnessScale scale(const StiffnessScenario& scenario);

class PlateSolver final : public MountSolver {
  public:
    explicit PlateSolver(const catalog::Resolved& resolved, const Preparation& preparation = {}, Kept* kept = nullptr);
    /// `kept` may be nullptr.
    PlateSolver(const catalog::Resolved& resolved, const Sampling& sampling, Kept* kept);

    /// The rigid plate, and the flexible one where the basis asks for it. The state's case and scenario are left to the
    /// caller. Throws Overturns, or NoDemand when a residual exceeds its limit.
    [[nodiscard]] State solve(const Push& push) override;

    /// The largest tension under the push, held against the full mesh and a finer one. Flexible plates only.
    [[nodiscard]] MeshAccuracy measure(const Push& push);
    /// The bent plate under the push, on its full mesh. Flexible plates only.
    [[nodiscard]] DeflectedShape field(const Push& push);
    /// Whether framing bears that can give, so that a scenario may ask for it. Flexible plates only.
    [[nodiscard]] bool framing_can_flex() const override { return plate_on_flexible_framing_.has_value(); }
    [[nodiscard]] const std::vector<Support>& supports() const override { return bed_.supports; }
    /// The flexible plate's mesh is refined until the largest tension is within 1 % of a finer mesh's.
    [[nodiscard]] bool accurate(const Push& governing) override;
    void complete(Demand& demand, const Push& governing) override;

    [[nodiscard]] bool flexible() const override { return plate_.has_value(); }
    /// Why a rigid plate is used although a flexible one is asked for; empty where it is not so.
    [[nodiscard]] const format::Phrase& why_rigid() const { return why_rigid_; }
    [[nodiscard]] const Bed& bed() const { return bed_; }
    [[nodiscard]] const std::vector<Stiffness>& anchor_stiffnesses() const override { return anchor_stiffness_; }
    [[nodiscard]] const std::vector<mechanics::Point>& anchor_points() const { return anchor_points_; }
    [[nodiscard]] const Proof& proof() const { return proof_; }
    /// Of the last solve at nominal stiffness, or of any without a flexible plate.
    [[nodiscard]] const std::optional<mechanics::RigidPlateSolution>& last_rigid() const { return previous_; }

  private:
    [[nodiscard]] State solve_anew(const Push& push);
    [[nodiscard]] State solve_in_proportion(const Push& push);
    [[nodiscard]] mechanics::RigidPlateSolution solve_rigid(const Push& push);
    [[nodiscard]] mechanics::FlexiblePlate plate_at(double fineness) const;
    /// The prepared plate that stands on what the scenario asks for. Flexible plates only.
    [[nodiscard]] mechanics::FlexiblePlate& plate_for(const StiffnessScenario& scenario);
    void make_plates();
    /// Meshes the plate again, half again as fine.
    void refine_mesh();
    void record(const mechanics::Residuals& residuals, const Push& push);

    const catalog::Resolved& resolved_;
    Preparation preparation_;
    Kept* kept_;
    Bed bed_;
    std::vector<Stiffness> anchor_stiffness_;
    std::vector<mechanics::Point> anchor_points_;
    std::optional<mechanics::RigidPlateSolution> previous_;
    double fineness_ = 1.5;  ///< about 1,000 unknowns on a common base
    std::optional<mechanics::CompliantSupports> framing_;
    std::optional<mechanics::FlexiblePlate> plate_;
    std::optional<mechanics::FlexiblePlate> plate_on_flexible_framing_;  ///< the same plate on framing that gives
    format::Phrase why_rigid_;
    std::optional<MeshAccuracy> accuracy_;
    std::optional<DeflectedShape> measured_shape_;  ///< of the push `accuracy_` was measured under
    Proof proof_;
    using DirectionAndStiffness = std::array<double, 4>;
    [[nodiscard]] static DirectionAndStiffness key(const Push& push);
    std::map<DirectionAndStiffness, std::pair<ActingLoad, State>> solved_;  ///< under pushes alone
};

}  // namespace toehold::demand
