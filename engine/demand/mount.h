#pragma once
// What every kind of mount brings to the demand. The rest of the room (load cases, directions, the range of stiffness,
// envelopes, the framing's part, the choice of the governing push) asks a mount only this and never its kind.
//
// A mount stands with its bearing plane at z = 0, the post's centroid at x = y = 0. A push comes at the height of its
// load case above that plane, from a direction in plan. The mount answers with
//   - the force on every anchor: tension along its axis and shear square to it, in the order of `resolved.anchors`;
//   - the force on every member it bears on, with its place: in the order of `supports()`;
//   - the rotation of the post's foot, from which comes the rotational stiffness by direction.
// Forces lb, lengths in, rotations rad.
//
// A second kind of mount is a folder beside `plate_on_deck` with a solver and a preview, and a line each in
// `mount.cpp`.
#include "demand/anchor_stiffness.h"
#include "demand/kept.h"
#include "demand/preview.h"

#include <memory>
#include <stdexcept>
#include <utility>
#include <vector>

namespace toehold::demand {

/// No number can be given: `why` says it to people.
struct NoDemand : std::runtime_error {
    explicit NoDemand(format::Phrase reason) : std::runtime_error(format::english(reason)), why(std::move(reason)) {}
    format::Phrase why;
};

/// Nothing described can balance the push: a fact about the detail, to be reported as such.
struct Overturns : NoDemand {
    Overturns(format::Phrase reason, double direction) : NoDemand(std::move(reason)), direction_rad(direction) {}
    double direction_rad;
};

/// A push under one stiffness: what a solve is asked for.
struct Push {
    ActingLoad load;
    StiffnessScenario scenario;
    double direction_rad = 0.0;
};

/// One detail prepared for many solves.
class MountSolver {
  public:
    MountSolver() = default;
    MountSolver(const MountSolver&) = delete;
    MountSolver& operator=(const MountSolver&) = delete;
    virtual ~MountSolver() = default;

    /// The state's case and scenario are left to the caller. Throws Overturns, or NoDemand when a residual
    /// exceeds its limit.
    [[nodiscard]] virtual State solve(const Push& push) = 0;
    /// What the mount bears on.
    [[nodiscard]] virtual const std::vector<Support>& supports() const = 0;
    /// Nominal, in the order of `resolved.anchors`.
    [[nodiscard]] virtual const std::vector<Stiffness>& anchor_stiffnesses() const = 0;
    /// Whether a scenario may ask for framing that gives.
    [[nodiscard]] virtual bool framing_can_flex() const = 0;
    /// Whether tensions count as those of the mount as it bends, beside a rigid one's.
    [[nodiscard]] virtual bool flexible() const = 0;
    /// Measures the numerical error under the push. False: it was too large, the solver has refined itself, and every
    /// state must be found again.
    [[nodiscard]] virtual bool accurate(const Push& governing) = 0;
    /// Adds what only this mount knows: hand values, bearing, bending, its deflected shape, proof and assumptions.
    /// Cases, scenarios, states and anchors are there already.
    virtual void complete(Demand& demand, const Push& governing) = 0;
};

/// The solver of the detail's mount, ready for what `sampling` asks of it. Keeps a reference to `resolved`.
/// `kept`: from the details before; outlives the solver; nullptr: nothing is.
[[nodiscard]] std::unique_ptr<MountSolver> make_mount_solver(const catalog::Resolved& resolved,
                                                             const Sampling& sampling = {}, Kept* kept = nullptr);

/// What stands behind `Preview`: the same questions, of one kind of mount.
class MountPreview {
  public:
    MountPreview() = default;
    MountPreview(const MountPreview&) = delete;
    MountPreview& operator=(const MountPreview&) = delete;
    virtual ~MountPreview() = default;

    [[nodiscard]] virtual const std::vector<LoadCase>& cases() const = 0;
    [[nodiscard]] virtual PolarEnvelope polar_envelope(int directions) = 0;
    [[nodiscard]] virtual std::size_t worst_case(double direction_rad) = 0;
    [[nodiscard]] virtual PushResult push(std::size_t load_case, double direction_rad) = 0;
};

/// Copies what it needs.
[[nodiscard]] std::unique_ptr<MountPreview> make_mount_preview(const catalog::Resolved& resolved);

}  // namespace toehold::demand
