#pragma once
// How far an arrow key moves what is selected.
#include "units/quantity.h"

namespace toehold::window {

/// Lengths of a nudge, in.
struct NudgeSteps {
    double fine = 1.0 / 32;  ///< with Ctrl
    double plain = 1.0 / 8;  ///< the key alone
    double coarse = 1.0;     ///< with Shift
    friend bool operator==(const NudgeSteps&, const NudgeSteps&) = default;
};

/// Those of the reader's rule: 1/32, 1/8 and 1 in, or 0.5, 2 and 25 mm.
[[nodiscard]] constexpr NudgeSteps customary_nudge(units::System system) {
    constexpr double mm = 1 / 25.4;
    return system == units::System::us ? NudgeSteps{} : NudgeSteps{0.5 * mm, 2 * mm, 25 * mm};
}

}  // namespace toehold::window
