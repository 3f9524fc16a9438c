#pragma once
// What a check's results come to at least where only some of the states are known (demand/sampling.h). Nearly every
// check takes the largest of one quantity over the states, so that its ratio only grows with more of them, and its own
// results are that bound. A check that chooses a state by one measure and then judges it by another may fail under some
// states and hold under more: it registers here what can be said of it all the same, which may be nothing.
//
//     const RegisterAtLeast at_least{"plate-bending", plate_bending_at_least};
#include "checks/registry.h"

#include <functional>
#include <string>
#include <vector>

namespace toehold::checks {

/// Results whose ratios are no larger than those of the check under any larger set of states.
using AtLeast = std::function<std::vector<CheckResult>(const CheckInput&)>;

struct RegisterAtLeast {
    /// Throws std::logic_error for a second one of the same check.
    RegisterAtLeast(std::string check, AtLeast function);
};

/// As `run`, of what is registered for the check, else of the check itself.
[[nodiscard]] std::vector<CheckResult> run_at_least(const Check& check, const CheckInput& input);

/// What says nothing where a check is no bound of itself.
[[nodiscard]] std::vector<CheckResult> nothing_at_least(const CheckInput& input);

}  // namespace toehold::checks
