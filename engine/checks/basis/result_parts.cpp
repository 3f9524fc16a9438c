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

void lacks_evidence(CheckResult& result, format::Phrase sentence) {
    result.status = Status::missing_evidence;
    result.note = std::move(sentence);
}

void nothing_resists(CheckResult& result, double demand, std::string unit, format::Phrase why) {
    result.demand = demand;
    result.capacity = 0.0;
    result.unit = std::move(unit);
    result.ratio = std::numeric_limits<double>::infinity();
    result.status = Status::no_path;
    result.note = std::move(why);
}

Link link_between(model::PartId from, model::PartId to, format::Phrase by) {
    Link link;
    link.from = std::move(from);
    link.to = std::move(to);
    link.by = std::move(by);
    return link;
}

Finding finding_on(model::PartId part, Severity severity, format::Phrase message, std::string clause) {
    Finding finding;
    finding.part = std::move(part);
    finding.severity = severity;
    finding.message = std::move(message);
    finding.clause = std::move(clause);
    return finding;
}

format::Phrase sentences(format::Phrase first, format::Phrase second) {
    if (first.empty()) return second;
    if (second.empty()) return first;
    return format::phrase("{} {}", std::move(first), std::move(second));
}

}  // namespace toehold::checks
