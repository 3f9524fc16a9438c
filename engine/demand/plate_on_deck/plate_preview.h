#pragma once
// The quick answer for a plate on the deck: rigid and flexible plate at nominal stiffness, and the hand's lever arm.
#include "demand/plate_on_deck/plate_solver.h"
#include "mechanics/rigid_plate/anchor_group.h"

#include <optional>
#include <vector>

namespace toehold::demand {

class PlatePreview final : public MountPreview {
  public:
    explicit PlatePreview(const catalog::Resolved& of);

    [[nodiscard]] const std::vector<LoadCase>& cases() const override { return cases_; }
    [[nodiscard]] PolarEnvelope polar_envelope(int directions) override;
    [[nodiscard]] std::size_t worst_case(double direction_rad) override;
    [[nodiscard]] PushResult push(std::size_t load_case, double direction_rad) override;

  private:
    /// Forces of every anchor in a state are the flexible plate's where there is one.
    [[nodiscard]] State state(std::size_t load_case, double direction_rad);
    [[nodiscard]] double asked_for_lb(const State& state, std::size_t anchor) const;
    [[nodiscard]] mechanics::HandTension hand(const LoadCase& load, double direction_rad) const;
    void add_pushes(PolarEnvelope& polar, std::size_t load_case, std::size_t count);
    void add_hand(PolarEnvelope& polar, std::size_t load_case) const;

    catalog::Resolved resolved_;
    std::vector<LoadCase> cases_;
    std::vector<std::size_t> counting_cases_;
    bool flexible_asked_for_;
    std::optional<PlateSolver> solver_;
};

}  // namespace toehold::demand
