#pragma once
// A post on a member's side prepared for many solves: the mechanics' plain arrays, and a state for any case, scenario
// and direction.
#include "demand/mount.h"
#include "demand/side_fastened/joint.h"
#include "mechanics/side_post/side_post.h"

#include <array>
#include <map>
#include <utility>
#include <vector>

namespace toehold::demand {

class SideSolver final : public MountSolver {
  public:
    explicit SideSolver(const catalog::Resolved& resolved, bool flexible_framing = true);
    /// `kept` holds nothing of this mount.
    SideSolver(const catalog::Resolved& resolved, const Sampling& sampling, Kept* kept);

    /// Throws Overturns, or NoDemand when a residual exceeds its limit. Beside the post that bends, at nominal
    /// stiffness, one that does not gives the rigid tensions.
    [[nodiscard]] State solve(const Push& push) override;
    [[nodiscard]] const std::vector<Support>& supports() const override { return supports_; }
    [[nodiscard]] const std::vector<Stiffness>& anchor_stiffnesses() const override { return anchor_stiffness_; }
    [[nodiscard]] bool framing_can_flex() const override { return !bodies_.places.empty(); }
    [[nodiscard]] bool flexible() const override { return true; }
    /// The post's mesh is refined until the largest tension is within 1 % of one twice as fine.
    [[nodiscard]] bool accurate(const Push& governing) override;
    void complete(Demand& demand, const Push& governing) override;

    [[nodiscard]] const SideContact& contact() const { return contact_; }

  private:
    /// Of the bolt that hangs the tie; 0: it has none.
    [[nodiscard]] double bolt_of_tie_lb_per_in(std::size_t tie) const;
    [[nodiscard]] mechanics::SidePost post_for(const StiffnessScenario& scenario, bool rigid) const;
    [[nodiscard]] mechanics::SidePostSolution solve_post(const Push& push, bool rigid, double fineness) const;
    [[nodiscard]] State solve_anew(const Push& push);
    [[nodiscard]] State state_of(const mechanics::SidePostSolution& solution, const Push& push) const;
    void record(const mechanics::SidePostSolution& solution, const Push& push);

    const catalog::Resolved& resolved_;
    SideContact contact_;
    double turned_ = 1.0;  ///< 1: the mechanics' x and y are the plan's; -1: half a turn about z
    double axis_y_in_ = 0.0;
    std::vector<Stiffness> anchor_stiffness_, slip_;
    std::vector<std::size_t> members_;  ///< behind the joint
    mechanics::BackingBodies bodies_;   ///< empty: none gives
    std::vector<Support> supports_;
    double fineness_ = 1.0;
    Proof proof_;
    /// Direction, height, bed, anchors, framing.
    using Like = std::array<double, 5>;
    [[nodiscard]] static Like like(const Push& push);
    std::map<Like, std::pair<double, State>> solved_;  ///< under pushes alone, with the push
};

}  // namespace toehold::demand
