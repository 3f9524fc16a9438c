#include "checks/at_least.h"

#include <map>
#include <stdexcept>
#include <utility>

namespace toehold::checks {
namespace {

// Function-local, so that one may register during the start of the program in any order.
std::map<std::string, AtLeast>& at_least_by_check() {
    static std::map<std::string, AtLeast> all;
    return all;
}

}  // namespace

RegisterAtLeast::RegisterAtLeast(std::string check, AtLeast function) {
    if (!at_least_by_check().emplace(check, std::move(function)).second)
        throw std::logic_error("registered twice, at least of: " + check);
}

std::vector<CheckResult> run_at_least(const Check& check, const CheckInput& input) {
    const auto bound = at_least_by_check().find(check.id);
    if (bound == at_least_by_check().end()) return run(check, input);
    Check other = check;
    other.function = bound->second;
    return run(other, input);
}

std::vector<CheckResult> nothing_at_least(const CheckInput&) { return {}; }

}  // namespace toehold::checks
