#pragma once
// A metal section of the post under every push: what the checks of a metal post, of its stub and of a shoe's wall
// share.
#include "checks/post/metal_strength.h"
#include "checks/registry.h"

namespace toehold::checks {

/// The worst push on the section, whichever way it acts. Bending and axial force add by AISC 360-16 H1.1; bending about
/// two axes by the section's plastic moment in that direction where it has one, else linearly. `above_in`: height of
/// the section above the bearing plane. Subject and link are the caller's.
[[nodiscard]] CheckResult metal_bending(const CheckInput& input, const MetalSection& section, double above_in = 0.0);

}  // namespace toehold::checks
