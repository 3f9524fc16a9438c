#pragma once
// The framing as a grillage: every member a beam, every member support its springs; and the loads of a state where they
// land.
#include "demand/demand.h"
#include "demand/framing_demand.h"
#include "mechanics/grillage/grillage.h"
#include "model/member.h"

#include <optional>
#include <vector>

namespace toehold::demand {

/// Place of a station along a member in the grillage.
struct GridPlace {
    int beam = 0;
    double at_in = 0.0;
};

struct Frame {
    std::vector<model::Member> members;
    std::vector<MemberSupport> supports;
    std::vector<std::vector<int>> beams;              ///< of each member, in order along it; none where it is left out
    std::vector<std::vector<double>> stations_in;     ///< of each member: where its beams begin and end
    std::vector<double> held_at_in;                   ///< of each support: its place along the member it holds
    std::vector<std::optional<int>> grid_joint_of;    ///< of each support: index among the grillage's joints
    std::vector<std::optional<int>> grid_support_of;  ///< of each: among the grillage's supports
    std::optional<mechanics::Grillage> grillage;

    /// Whether the member bends in this frame. Joists and rims do where the joists are described.
    [[nodiscard]] bool holds_member(std::size_t member) const { return !beams[member].empty(); }
};

[[nodiscard]] Frame make_frame(const catalog::Resolved& resolved);

/// The member must be in the frame. Beyond its ends: the end.
[[nodiscard]] GridPlace place_on(const Frame& frame, std::size_t member, double along_in);

/// A force up at a point of the plan, onto the member's axis: the force and the couples of its distance.
[[nodiscard]] mechanics::MemberLoad load_at(const Frame& frame, std::size_t member, model::Position at, double up_lb);

/// Coordinates along and across the member.
[[nodiscard]] double along(const model::Member& member, double x, double y);
[[nodiscard]] double across(const model::Member& member, double x, double y);

}  // namespace toehold::demand
