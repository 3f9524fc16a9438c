// What of the checks of a post in its shoe or over its stub only grows with more states. Both choose the push by the
// pressure over the overlap: the results of that pressure are bounds of themselves, the shears and the shoe's wall that
// are then found under that push are not.
#include "checks/at_least.h"

#include <algorithm>
#include <iterator>

namespace toehold::checks {
namespace {

/// The results of the check with one of these aspects.
std::vector<CheckResult> results_of_pressure(const std::string& check, const std::vector<std::string>& aspects,
                                             const CheckInput& input) {
    std::vector<CheckResult> bounds;
    for (const Check& one : registered_checks()) {
        if (one.id != check) continue;
        std::vector<CheckResult> results = run(one, input);
        std::copy_if(std::make_move_iterator(results.begin()), std::make_move_iterator(results.end()),
                     std::back_inserter(bounds), [&](const CheckResult& result) {
                         return std::find(aspects.begin(), aspects.end(), result.aspect) != aspects.end();
                     });
    }
    return bounds;
}

const RegisterAtLeast shoe_at_least{"post-shoe", [](const CheckInput& input) {
                                        return results_of_pressure("post-shoe", {"", "bearing"}, input);
                                    }};
const RegisterAtLeast overlap_at_least{
    "post-overlap", [](const CheckInput& input) {
        return results_of_pressure("post-overlap", {"", "post-walls", "stub-walls"}, input);
    }};

}  // namespace
}  // namespace toehold::checks
