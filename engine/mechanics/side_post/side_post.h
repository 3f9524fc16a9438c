#pragma once
// A post fastened to the side of a member: a beam that bends, shears and twists, pressed on the member's face by
// one-way contact and held to it by fasteners that only pull. Plain arrays; in, lb, psi, rad.
//
// Axes: x along the rail, y from the member's face into the post (outward for a post outside the rim, inward for one
// inside it: turn the frame half a turn about z), z up. The contact face is y = 0; any place serves as x = z = 0, but x
// is measured from the post's axis. Motions and forces follow these axes, rotations the right-hand rule.
//
// At a place (x, z) of the face the post moves away from what is behind it by
//   u(x, z) = uy(z) + x * twist(z) - (motion of the backing body there).
// A fastener pulls T = k max(0, u - gap) and, in the plane of the face, holds by two-way slip springs. A bearing on the
// face presses p = k max(0, -u - gap), one on the post's back p = k max(0, u - gap). Friction carries nothing, motions
// are small, the post's length does not change how it bends (no P-delta), its section keeps its shape.
//
// The energy is convex and once differentiable: one set of forces. The edge of contact is found where it is, by the
// roots of the motion, and pressure is integrated across it; only the post's own shape is approximated (cubic between
// nodes), which `fineness` tells. Newton's method with a line search goes downhill at every step and ends.
#include "mechanics/rigid_plate/rigid_plate.h"
#include "mechanics/space_frame/space_vector.h"

#include <cstddef>
#include <optional>
#include <span>
#include <vector>

namespace toehold::mechanics {

/// Of the post's uniform cross-section about its own axis.
struct PostSection {
    double bending_x_lb_in2 = 0.0;  ///< E I about x, for bending away from the face, > 0
    double bending_y_lb_in2 = 0.0;  ///< E I about y, for bending along the rail, > 0
    double torsion_lb_in2 = 0.0;    ///< G J, > 0
    double axial_lb = 0.0;          ///< E A, > 0
    double shear_x_lb = 0.0;        ///< G A_s for shear along x; 0: no shear deformation
    double shear_y_lb = 0.0;        ///< for shear along y
};

enum class PostSide {
    face,  ///< towards the member: presses the post along +y
    back,  ///< away from it, on a block behind the post: presses it along -y
};

/// A rectangle of the post's side that something bears on. Rectangles on one side do not overlap.
struct PostBearing {
    double x_min_in = 0.0, x_max_in = 0.0;  ///< x_min < x_max
    double z_min_in = 0.0, z_max_in = 0.0;  ///< z_min < z_max
    double stiffness_psi_per_in = 0.0;      ///< of post, packing and member in series, > 0
    double gap_in = 0.0;                    ///< to be closed before it presses (loose packing, a warped face), >= 0
    PostSide side = PostSide::face;
    std::optional<std::size_t> body = std::nullopt;  ///< what it bears on; absent: ground
};

/// A bolt, screw, rod or tie at a place of the face.
struct PostFastener {
    double x_in = 0.0, z_in = 0.0;
    /// Head, washer, wood, shank and thread in series, >= 0; 0: it never pulls (a seat, a dowel).
    double tension_lb_per_in = 0.0;
    double gap_in = 0.0;                             ///< play before it pulls, >= 0; its slip springs have none
    double slip_x_lb_per_in = 0.0;                   ///< along the rail, two-way, >= 0; 0: free
    double slip_z_lb_per_in = 0.0;                   ///< up and down
    std::optional<std::size_t> body = std::nullopt;  ///< what it is fastened into; absent: ground
};

/// The member behind, and whatever else gives under load (a joist a tie goes back to): each moves as one rigid body at
/// its own place.
struct BackingBodies {
    std::vector<SpaceVector> places;  ///< in this file's axes
    /// Forces on the bodies from their motions, both in the order ux, uy, uz, rx, ry, rz of each: lb and lb in from in
    /// and rad. 6n x 6n row by row, symmetric and positive definite: a motion that nothing holds takes a nominal value.
    std::vector<double> stiffness;
};

struct SidePost {
    double axis_y_in = 0.0;  ///< of the post's axis from the face: half its depth, > 0
    PostSection section;
    std::vector<PostBearing> bearings;
    std::vector<PostFastener> fasteners;
    BackingBodies bodies;  ///< empty: everything stands on ground that does not move
};

/// Acting on the post at a height of its axis, at the arm from the axis that `at` says: at.x along the rail, at.y from
/// the face (the axis itself is y = axis_y_in), at.z the height.
struct PostLoad {
    SpaceVector at;
    SpaceVector force_lb;
    SpaceVector moment_lb_in = {};
};

struct PostFastenerForce {
    double tension_lb = 0.0;                  ///< >= 0
    double opening_in = 0.0;                  ///< of the joint there: > 0 away from what it is fastened into
    double slip_x_lb = 0.0, slip_z_lb = 0.0;  ///< of the post on the fastener
};

struct PostBearingForce {
    double force_lb = 0.0;                    ///< >= 0
    double at_x_in = 0.0, at_z_in = 0.0;      ///< its center; the rectangle's own when there is no force
    double peak_psi = 0.0;                    ///< >= 0
    double peak_x_in = 0.0, peak_z_in = 0.0;  ///< the rectangle's center when there is no force
    double from_z_in = 0.0, to_z_in = 0.0;    ///< lowest and highest pressed place; both the center without force
    double area_in2 = 0.0;                    ///< pressed
};

/// What passes through a cut square to the post's axis: of the part above on the part below, at the axis. Bending
/// outward is moment_lb_in.x, along the rail moment_lb_in.y, twist moment_lb_in.z; shear is force_lb.x and .y.
struct PostStation {
    double z_in = 0.0;
    SpaceVector force_lb, moment_lb_in;
};

struct PostMotion {
    SpaceVector moved_in, turned_rad;
};

/// What the post and its fasteners put on a body, at its place, and how it moves there.
struct BodyForce {
    SpaceVector force_lb, moment_lb_in;
    PostMotion motion;
};

/// A rigid motion that the load drives and nothing resists, its largest component 1 or -1. Rotations are about the
/// axis at the middle of what holds the post, times the height of what holds it.
struct UnresistedMotion {
    SpaceVector moved, turned;
};

struct SidePostSolution {
    /// `no_equilibrium`: nothing can balance the load; `unresisted` says which way the post goes where that is sure
    /// beforehand, and is absent where only a contact shrunk to a line or a point, or forces with next to no arm,
    /// could.
    SolveStatus status = SolveStatus::not_converged;
    std::optional<UnresistedMotion> unresisted;
    std::vector<PostFastenerForce> fasteners;  ///< in the input's order, like the next two; all empty unless solved
    std::vector<PostBearingForce> bearings;
    std::vector<BodyForce> bodies;
    std::vector<PostStation> stations;  ///< upward; at each height first just below it, then just above
    std::vector<PostMotion> at_loads;   ///< of the post's axis at each load's height
    /// Nothing resists some motion that the load does not drive either: forces are unique, motions one choice of many.
    bool free_to_move = false;
    /// Worked from the returned forces and their places, as of the rigid plate. In `moment`, about the middle of what
    /// holds the post.
    Residuals residuals;
    double elastic_residual = 0.0;  ///< lack of balance of the post's bending and of the bodies over the largest force
    int iterations = 0;
    int nodes = 0;  ///< of the post's mesh
};

/// All loads together. `fineness`: pieces of the post along a bearing for each quarter of the length over which its
/// bending, shear or twist dies out; at 1.0 a force of a usual post is within 3e-4 of the largest, of any within 1e-2
/// (2,000 random posts, half of them within 1e-4). `solved` means that every residual is at most 1e-9 and the elastic
/// one at most 1e-7. Throws std::invalid_argument for a number out of the ranges above or not finite, a body that is
/// not there, a body's stiffness that is not positive definite, or a post that nothing holds at all.
[[nodiscard]] SidePostSolution solve_side_post(const SidePost& post, std::span<const PostLoad> loads,
                                               double fineness = 1.0);

}  // namespace toehold::mechanics
