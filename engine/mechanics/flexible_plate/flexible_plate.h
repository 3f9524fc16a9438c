#pragma once
// A thin elastic plate, its post's foot tied to one rigid body, on a bed that cannot pull and held by anchors that
// cannot push. Plain arrays; in, lb, rad. Signs, loads and residuals as in rigid_plate.h.
//
// The plate is discrete Kirchhoff triangles on a graded mesh. Every node on the post's foot outline moves with the
// rigid body: lift and two tilts. The bed is springs at the middles of the triangles' sides (exact for a quadratic
// pressure), cut to each rectangle; an anchor pulls on the mean lift of its footprint. Holes are not modelled.
//
// The energy is convex: with lift w_i at each spring it is the plate's own plus k/2 max(0, s w_i)^2, piecewise
// quadratic, so a state whose set of working springs reproduces itself is the answer. Both solves below end with that
// set.
//   - `solve` works in a small space of the plate's responses to each anchor's pull and to polynomial pressures, made
//     once from one sparse factorisation; made for envelopes of many directions.
//   - `solve_on_full_mesh` uses every freedom of the mesh and factorises at each step: the reference for the other.
// Both begin with the springs that worked in the solve before. Where one begins changes how many steps it takes, not
// where it ends.
#include "mechanics/flexible_plate/plate_mesh.h"
#include "mechanics/rigid_plate/rigid_plate.h"

#include <memory>
#include <optional>
#include <span>
#include <vector>

namespace toehold::mechanics {

struct FlexibleAnchor {
    Footprint footprint;
    double stiffness_lb_per_in = 0.0;                   ///< > 0
    double preload_lb = 0.0;                            ///< pull with the plate flat on its bed, >= 0
    std::optional<std::size_t> support = std::nullopt;  ///< rectangle it is fastened into; absent: ground
};

/// A support under the plate, wherever the plate covers it; sides parallel to x and y. Rectangles do not overlap.
struct BedRectangle {
    double x_min = 0.0, x_max = 0.0, y_min = 0.0, y_max = 0.0;
    double stiffness_psi_per_in = 0.0;  ///< > 0
    friend bool operator==(const BedRectangle&, const BedRectangle&) = default;
};

/// Framing under a plate that moves under load: each support of the bed moves as one rigid piece, by a lift and two
/// tilts about its own place, and so do the anchors that are fastened into it.
struct CompliantSupports {
    std::vector<Point> places;  ///< one for every rectangle of the bed
    /// Forces on the framing from its motions, both in the order lift, tilt_x, tilt_y of each place: lb and lb in from
    /// in and rad. 3n x 3n row by row, symmetric and positive definite.
    std::vector<double> stiffness;
};

struct FlexiblePlateInput {
    PlateMesh mesh;
    double modulus_psi = 0.0;
    double poisson = 0.3;
    double thickness_in = 0.0;
    std::vector<FlexibleAnchor> anchors;
    std::vector<BedRectangle> bed;
};

/// Multipliers on the stiffness of all anchors and of all the bed.
struct StiffnessScale {
    double anchors = 1.0;
    double bed = 1.0;
};

/// `solved` means that force and moment balance to 1e-9; without it every lift and force is zero.
struct FlexiblePlateSolution {
    SolveStatus status = SolveStatus::not_converged;
    double lift_in = 0.0, tilt_x_rad = 0.0, tilt_y_rad = 0.0;  ///< of the post's foot
    std::vector<double> tension_lb;                            ///< one for every anchor
    std::vector<PatchForce> patches;                           ///< one for every rectangle of the bed
    Residuals residuals;
    int iterations = 0;
};

/// What the plate does under the bed's springs in one solution, for drawing and for sections.
struct PlateField {
    std::vector<Point> nodes;
    std::vector<Triangle> triangles;
    std::vector<double> lift_in;       ///< at each node
    std::vector<double> pressure_psi;  ///< of the bed, from the lift above its support, >= 0; 0 where nothing backs it
};

class FlexiblePlate {
  public:
    /// On supports that do not move. Throws std::invalid_argument when the mesh is empty or has no ring.
    explicit FlexiblePlate(FlexiblePlateInput input);
    /// The same plate where its supports give. It shares mesh, springs and responses, so that it costs little. Throws
    /// std::invalid_argument when the supports' stiffness is not square, symmetric and positive definite. One thread at
    /// a time for all plates that share.
    [[nodiscard]] FlexiblePlate on(const CompliantSupports& supports) const;
    /// The same plate on the same bed, which stands still, with other anchors in the same footprints: of other
    /// stiffness, preload or support. Shares as `on` does, and begins afresh. Throws std::invalid_argument for other
    /// footprints.
    [[nodiscard]] FlexiblePlate with(std::vector<FlexibleAnchor> anchors) const;
    /// Begins the next solve with the springs that worked in the other's last one, which is of the same bed and anchors
    /// on another mesh.
    void begin_like(const FlexiblePlate& other);

    ~FlexiblePlate();
    FlexiblePlate(FlexiblePlate&&) noexcept;
    FlexiblePlate& operator=(FlexiblePlate&&) noexcept;
    FlexiblePlate(const FlexiblePlate&) = delete;
    FlexiblePlate& operator=(const FlexiblePlate&) = delete;

    [[nodiscard]] FlexiblePlateSolution solve(const PlateLoad& load, const StiffnessScale& scale);
    [[nodiscard]] FlexiblePlateSolution solve_on_full_mesh(const PlateLoad& load, const StiffnessScale& scale,
                                                           PlateField* field = nullptr) const;

    [[nodiscard]] int unknowns() const;          ///< freedoms of the mesh, the rigid body's three included
    [[nodiscard]] int reduced_unknowns() const;  ///< of the small space, which the first `solve` makes; 0 before it

  private:
    struct Prepared;
    explicit FlexiblePlate(std::unique_ptr<Prepared> prepared);
    std::unique_ptr<Prepared> prepared_;
};

}  // namespace toehold::mechanics
