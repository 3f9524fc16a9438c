#pragma once
// The worked lines of a plate section, as a reviewer follows them.
#include "checks/plate/plate_strip.h"
#include "checks/registry.h"

namespace toehold::checks {

/// Where the section lies.
[[nodiscard]] std::vector<Step> section_steps(const CheckInput& input, const PlateSection& section);
/// From the pulls beyond it to the moment and the width that carries it.
[[nodiscard]] std::vector<Step> pull_steps(const CheckInput& input, const Strip& strip);
/// The same from the bearing beyond it.
[[nodiscard]] std::vector<Step> bearing_steps(const CheckInput& input, const Strip& strip);
/// The elastic stress on that width; none where no metal is left.
[[nodiscard]] std::vector<Step> stress_steps(const Strip& strip, double thickness_in);
/// How sections of this kind are chosen, in one sentence.
[[nodiscard]] std::string section_rule(const PlateSection& section);

}  // namespace toehold::checks
