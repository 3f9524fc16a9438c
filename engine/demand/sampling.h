#pragma once
// Which part of the demand's states is solved: all of them for a verdict, a few where only a failure is looked for.
#include <cstddef>

namespace toehold::demand {

struct Sampling {
    /// Of the directions all round, the first and each that lies this many on; >= 1. A load that asks for fewer than
    /// eight directions keeps them all.
    std::size_t every = 1;
    bool all_stiffnesses = true;  ///< false: the center of both ranges, on framing that stands still
    bool peaks = true;            ///< looks between the sampled directions for each anchor's largest tension
    bool measured = true;         ///< measures the mesh's error, refines the mesh while it is too large, and finds the
                                  ///< bent shape for drawing

    [[nodiscard]] static constexpr Sampling whole() { return {}; }
    /// Each of its states is one of the whole demand's, on the mesh the whole begins with. So what fails under a probe
    /// fails under the whole, but for what refining that mesh may change: `probe_margin`. What holds under a probe
    /// proves nothing. It has no `DeflectedShape` and no `MeshAccuracy`; `Bending::framing_change`, an anchor's
    /// `tension_low_lb` and the samples of rotational stiffness are of the few states alone.
    [[nodiscard]] static constexpr Sampling probe() { return {6, false, false, false}; }
};

/// How far a force of a probe may exceed the whole demand's largest, relative to it. A ratio grows at most with the
/// square of the forces: a probe's ratio above (1 + probe_margin)^2 is a failure of the whole.
inline constexpr double probe_margin = 0.02;

}  // namespace toehold::demand
