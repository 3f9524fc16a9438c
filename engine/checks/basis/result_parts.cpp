#include "checks/basis/result_parts.h"

#include <cmath>
#include <numbers>
#include <utility>

namespace toehold::checks {

double degrees(double direction_rad) {
    const double turned = std::fmod(direction_rad * 180.0 / std::numbers::pi, 360.0);
    return turned < 0.0 ? turned + 360.0 : turned;
}

void append(std::vector<Step>& steps, const std::vector<Step>& more) {
    steps.insert(steps.end(), more.begin(), more.end());
}

void lacks_evidence(CheckResult& result, std::string sentence) {
    result.status = Status::missing_evidence;
    result.note = std::move(sentence);
}

}  // namespace toehold::checks
