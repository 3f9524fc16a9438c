#include "checks/basis/result_parts.h"

#include <cmath>
#include <limits>
#include <numbers>
#include <utility>

namespace toehold::checks {

double degrees(double direction_rad) {
    const double turned = std::fmod(direction_rad * 180.0 / std::numbers::pi, 360.0);
    return turned < 0.0 ? turned + 360.0 : turned;
}

double ratio(double demand, double capacity) {
    constexpr double nothing = 1e-9;
    if (capacity > 0.0) return demand / capacity;
    return demand > nothing ? std::numeric_limits<double>::infinity() : 0.0;
}

void append(std::vector<Step>& steps, const std::vector<Step>& more) {
    steps.insert(steps.end(), more.begin(), more.end());
}

void lacks_evidence(CheckResult& result, std::string sentence) {
    result.status = Status::missing_evidence;
    result.note = std::move(sentence);
}

void nothing_resists(CheckResult& result, double demand, std::string unit, std::string why) {
    result.demand = demand;
    result.capacity = 0.0;
    result.unit = std::move(unit);
    result.ratio = std::numeric_limits<double>::infinity();
    result.status = Status::no_path;
    result.note = std::move(why);
}

}  // namespace toehold::checks
