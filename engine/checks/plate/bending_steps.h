#pragma once
// The worked lines of a plate section, as a reviewer follows them: where it lies, the moment on it, the width that
// carries it, and what that width may carry.
#include "checks/basis/metal_basis.h"
#include "checks/plate/needs.h"
#include "checks/registry.h"
#include "mechanics/plate_strip/strip.h"

namespace toehold::checks {

/// Where the section lies.
[[nodiscard]] std::vector<Step> section_steps(const CheckInput& input, const mechanics::PlateSection& section);
/// From the tensions beyond it to the moment and the width that carries it.
[[nodiscard]] std::vector<Step> tension_steps(const CheckInput& input, const mechanics::PlateStrip& strip);
/// The same from the bearing beyond it.
[[nodiscard]] std::vector<Step> bearing_steps(const CheckInput& input, const mechanics::PlateStrip& strip);
/// The elastic stress on that width; none where no metal is left.
[[nodiscard]] std::vector<Step> stress_steps(const mechanics::PlateStrip& strip, double thickness_in);
/// How sections of this kind are chosen, in one sentence.
[[nodiscard]] format::Phrase section_rule(const mechanics::PlateSection& section);

/// What the verdict's choice rests on, in one sentence.
[[nodiscard]] format::Phrase strength_rule(const model::Basis& basis);
struct BoundValues {
    const mechanics::PlateStrip& strip;
    const PlateBounds& bounds;
    double per_width_lb = 0.0;    ///< usable moment per unit of width
    double capacity_lb_in = 0.0;  ///< the result's
};
/// Both bounds and what comes of them.
[[nodiscard]] std::vector<Step> bound_steps(const BoundValues& values, const model::Basis& basis);

/// Usable moment over a width of plate of the welding's thickness, lb in. Where the section lies beside a weld, which
/// softens aluminum, the whole width is taken as softened. Steel: AISC 360-16 F11; aluminum: Aluminum Design Manual
/// 2020 F.2 (from memory).
[[nodiscard]] Capacity plate_moment(const catalog::Metal& metal, double width_in, const Welding& welding,
                                    const model::Basis& basis);

}  // namespace toehold::checks
