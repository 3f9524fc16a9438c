#include "drawing/annotation/anchor_marks.h"

#include "drawing/parts.h"
#include "review/verdict.h"

#include <algorithm>
#include <cmath>

namespace toehold::drawing {
namespace {

bool speaks_of(const checks::CheckResult& check, const std::string& part, const model::BaseDetail& detail) {
    const std::vector<std::string> parts = parts_of_subject(check.subject, detail);
    return parts.size() == 1 && parts.front() == part;
}

/// A check that holds a capacity against the anchor's largest tension itself is one of its tension.
bool is_of_tension(const checks::CheckResult& check, double tension_lb) {
    constexpr double same = 1e-9;
    return check.unit == "lb" && check.status != checks::Status::missing_evidence &&
           std::abs(check.demand - tension_lb) <= same * tension_lb;
}

}  // namespace

const demand::AnchorEnvelope* envelope_of(const review::Review& review, const std::string& id) {
    if (!review.demand) return nullptr;
    for (std::size_t i = 0; i < review.resolved.anchors.size(); ++i) {
        if (review.resolved.anchors[i].id == id) return &review.demand->anchors[i];
    }
    return nullptr;
}

void add_checks(AnchorMark& mark, const review::Review& review) {
    const demand::AnchorEnvelope* envelope = envelope_of(review, mark.id);
    const std::string part = anchor_part(mark.id);
    // They stand worst first, and so the first of them that speaks of the anchor is its worst.
    double worst_in_tension = -1.0;
    for (const checks::CheckResult& check : review.checks) {
        if (!speaks_of(check, part, review.resolved.detail)) continue;
        if (review::is_dimension(check) && check.status == checks::Status::holds) continue;
        if (mark.worst_check.empty()) {
            mark.worst_check = check.title;
            mark.status = check.status;
        }
        if (check.status != checks::Status::missing_evidence)
            mark.ratio = std::max(mark.ratio.value_or(0.0), check.ratio);
        if (envelope == nullptr || !is_of_tension(check, envelope->tension_lb) || check.ratio <= worst_in_tension)
            continue;
        worst_in_tension = check.ratio;
        mark.capacity_lb = check.capacity;
    }
}

}  // namespace toehold::drawing
