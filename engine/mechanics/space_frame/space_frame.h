#pragma once
// A frame in space: beams that stretch, bend about two axes, shear and twist. Plain arrays; in, lb, rad.
//
// Six freedoms a node: the motions along x, y, z and the rotations about them (right-hand rule), in the frame's own
// axes. A member is a uniform Timoshenko beam with Saint-Venant torsion between two nodes; small motions, so axial
// force does not change bending. A joint ties two nodes by springs at one place, which makes hinged, sliding and
// semi-rigid ends; a support is springs from a node to the ground. Loads stand on nodes or along members, and what they
// do there is exact.
#include "mechanics/space_frame/space_vector.h"

#include <array>
#include <cstddef>
#include <functional>
#include <memory>
#include <optional>
#include <span>
#include <vector>

namespace toehold::mechanics {

namespace space_frame {
struct PreparedFrame;
}

/// The member's own axes: x from `from` to `to`, z the part of `toward_z` that is square to x, y = z cross x.
struct SpaceMember {
    int from = 0, to = 0;           ///< nodes at different places
    SpaceVector toward_z;           ///< in the frame's axes, any length, not along the member
    double axial_lb = 0.0;          ///< E A, > 0
    double torsion_lb_in2 = 0.0;    ///< G J, > 0
    double bending_y_lb_in2 = 0.0;  ///< E I about the member's y axis: it then moves along z; > 0
    double bending_z_lb_in2 = 0.0;  ///< E I about z: moves along y; > 0
    double shear_y_lb = 0.0;        ///< G A_s for shear along y; 0: no shear deformation
    double shear_z_lb = 0.0;
};

/// Along x, y, z (lb/in), then about x, y, z (lb in per rad).
using SixStiffnesses = std::array<double, 6>;

/// Between the six motions of a base and the six forces on it; symmetric, and no motion gives energy away.
using BaseStiffness = std::array<std::array<double, 6>, 6>;

/// Springs that do not couple.
[[nodiscard]] BaseStiffness uncoupled(const SixStiffnesses& springs);

/// Springs between two nodes; a value of 0 leaves that motion free between them.
struct SpaceJoint {
    int first = 0, second = 0;
    SixStiffnesses stiffness = {};  ///< each >= 0, along and about `axes`; 1e10 is stiff and keeps its digits
    SpaceAxes axes = {};
    /// Where the springs are; each node is carried rigidly to this place (a rail lies beside or above its post's axis).
    /// Absent: at the nodes, which then stand at one place.
    std::optional<SpaceVector> at = std::nullopt;
};

/// Springs from a node to the ground, along and about `axes`, at the node.
struct SpaceSupport {
    int node = 0;
    BaseStiffness stiffness = {};
    SpaceAxes axes = {};
};

/// A force and a couple. What each is in and on, its owner says.
struct SpaceForce {
    SpaceVector force_lb = {}, couple_lb_in = {};
};

/// All loads in the frame's axes.
struct SpaceNodeLoad {
    int node = 0;
    SpaceVector force_lb = {}, couple_lb_in = {};
};
struct SpacePointLoad {
    int member = 0;
    double at_in = 0.0;  ///< from the member's `from` node, 0 to its length
    SpaceVector force_lb = {}, couple_lb_in = {};
};
/// Even over a stretch of a member.
struct SpaceLineLoad {
    int member = 0;
    double from_in = 0.0, to_in = 0.0;  ///< from <= to, as `at_in`
    SpaceVector force_lb_per_in;        ///< per inch along the member
};
struct SpaceLoads {
    std::vector<SpaceNodeLoad> nodes;
    std::vector<SpacePointLoad> points;
    std::vector<SpaceLineLoad> lines;
};

struct SpaceMotion {
    SpaceVector move_in, turn_rad;
};

/// What passes through a cut, in the member's axes: of the part toward `to` on the part toward `from`. Force x > 0 is
/// tension; couple x is torque; couples y and z are bending moments about y and z.
using SpaceSection = SpaceForce;

/// At the member's ends, between the node and whatever load stands on the member there.
struct SpaceMemberForces {
    SpaceSection at_from, at_to;
};

/// Least and largest of each of the six along a member, on both sides of every load.
struct SpaceExtremes {
    SpaceSection least, most;
};

struct SpaceSolution {
    bool stable = false;               ///< false: a part can move without resistance; then nothing else is given
    std::vector<SpaceMotion> motions;  ///< one for every node, in the frame's axes
    std::vector<SpaceMemberForces> members;
    std::vector<SpaceForce> joints;    ///< what each joint puts on its second node, at its place and in its axes
    std::vector<SpaceForce> supports;  ///< what each support puts on its node, in its axes
    /// Largest lack of balance at a node over the largest load, moments over the frame's size.
    double residual = 0.0;
};

enum class BesideLoad { before, after };

/// A frame whose stiffness is factored once, to be loaded many times. Copies share what was factored; nothing in it
/// changes, so threads may share it too.
class SpaceFrame {
  public:
    /// Throws std::invalid_argument for an index out of range, a member without length or with `toward_z` along it,
    /// axes that are not square, a stiffness out of range, or a joint without a place of its own between nodes that
    /// stand apart.
    SpaceFrame(std::vector<SpaceVector> nodes, std::vector<SpaceMember> members, std::vector<SpaceJoint> joints,
               std::vector<SpaceSupport> supports);

    /// False: a part can move without resistance, and every solution says so and gives nothing else.
    [[nodiscard]] bool stable() const;

    [[nodiscard]] std::span<const SpaceVector> nodes() const;
    /// In inches. Throws as `motion_at`.
    [[nodiscard]] double length_of(int member) const;

    /// Throws std::invalid_argument for an index or a station out of range, or a load that is not finite. A station
    /// beyond an end by no more than 1e-9 of the length is taken at the end.
    [[nodiscard]] SpaceSolution solve(const SpaceLoads& loads) const;

    /// Solves many, some at a time with one pass through the factor; `take` gets each one's number and solution in
    /// order. Errors as of `solve`.
    void solve_each(std::span<const SpaceLoads> loads,
                    const std::function<void(std::size_t, SpaceSolution&&)>& take) const;

    /// Exact at any station of a member. `loads` are those the solution was found for. Throws std::invalid_argument as
    /// `solve` does, and for a solution that is not stable or not of this frame's size.
    [[nodiscard]] SpaceMotion motion_at(const SpaceSolution& solution, int member, double at_in,
                                        const SpaceLoads& loads) const;
    /// `loads` and errors as of `motion_at`, here and below. `side` decides where a point load stands at the station.
    [[nodiscard]] SpaceSection section_at(const SpaceSolution& solution, int member, double at_in,
                                          const SpaceLoads& loads, BesideLoad side) const;
    [[nodiscard]] SpaceExtremes extremes(const SpaceSolution& solution, int member, const SpaceLoads& loads) const;

  private:
    std::shared_ptr<const space_frame::PreparedFrame> prepared_;
};

}  // namespace toehold::mechanics
