#pragma once
// How far the guard's top should move under a push, between the soft and the stiff end of what is known, part by part;
// and whether what was measured on the built guard agrees.
#include "format/phrase.h"
#include "mechanics/sampling/straight_line.h"

#include <optional>
#include <vector>

namespace toehold::catalog {
struct Resolved;
}

namespace toehold::study {

/// At the height of the push, in/lb, along an outward push.
struct MovementParts {
    double post = 0.0;     ///< its bending
    double base = 0.0;     ///< the plate's turning on its bed and anchors
    double framing = 0.0;  ///< below the plate; 0 at the stiff end, where it stands still
    [[nodiscard]] double total() const { return post + base + framing; }
};

struct ComputedMovement {
    double height_in = 0.0;  ///< of push and gauge above the bearing plane
    MovementParts soft, central, stiff;
    double play_in = 0.0;          ///< of the post in what holds it, before anything is pressed
    format::Phrase framing_lacks;  ///< why the framing's part is not whole; empty: it is
    /// Moment over turn of base and framing together, lb in/rad.
    [[nodiscard]] double rotational_stiffness(const MovementParts& parts) const;
};

struct ComputedMovementOutcome {
    std::optional<ComputedMovement> movement;  ///< absent: `failure` says why
    format::Phrase failure;
};
[[nodiscard]] ComputedMovementOutcome computed_movement(const catalog::Resolved& resolved);

enum class Agreement { agrees, softer, stiffer };

struct Measured {
    std::vector<mechanics::Reading> readings;  ///< movement in, push lb
    mechanics::StraightLine line;              ///< through the origin of two readings or fewer, else with its play
    bool with_play = false;
};

struct Compared {
    Measured measured;
    Agreement agreement = Agreement::agrees;
    /// Movement for a pound over that of the end of the range it lies beyond; 1 where it agrees.
    double times = 1.0;
    /// Of base and framing, lb in/rad, once the post's computed bending is taken off; absent: it moves less than the
    /// post alone should.
    std::optional<double> rotational_stiffness;
};

struct MeasuredOutcome {
    std::optional<Measured> measured;  ///< absent: `failure` says what is wrong with the readings
    format::Phrase failure;
};
/// Of three readings or more the line has a play. Refuses readings through which no such line goes.
[[nodiscard]] MeasuredOutcome fit(std::vector<mechanics::Reading> readings);
[[nodiscard]] Compared compare(const ComputedMovement& computed, Measured measured);

}  // namespace toehold::study
