#pragma once
// The quick answer for a post on a member's side: at nominal stiffness, the post as it bends and as though it did not.
#include "demand/side_fastened/side_solver.h"

#include <vector>

namespace toehold::demand {

class SidePreview final : public MountPreview {
  public:
    explicit SidePreview(const catalog::Resolved& of);

    [[nodiscard]] const std::vector<LoadCase>& cases() const override { return cases_; }
    [[nodiscard]] PolarEnvelope polar_envelope(int directions) override;
    [[nodiscard]] std::size_t worst_case(double direction_rad) override;
    [[nodiscard]] PushResult push(std::size_t load_case, double direction_rad) override;

  private:
    [[nodiscard]] State state(std::size_t load_case, double direction_rad);
    [[nodiscard]] std::vector<std::optional<double>> hand_lb(const LoadCase& load, double direction_rad) const;
    void add_pushes(PolarEnvelope& polar, std::size_t load_case, std::size_t count);

    catalog::Resolved resolved_;
    std::vector<LoadCase> cases_;
    std::vector<std::size_t> counting_cases_;
    SideSolver solver_;
};

}  // namespace toehold::demand
