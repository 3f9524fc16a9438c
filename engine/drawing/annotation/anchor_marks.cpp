#include "drawing/annotation/anchor_marks.h"

#include "drawing/marked_parts.h"
#include "review/verdict.h"

#include <algorithm>
#include <cmath>

namespace toehold::drawing {
namespace {

/// About this anchor or its hole, and no other.
bool is_about(const checks::CheckResult& check, const model::PartId& anchor, const model::BaseDetail& detail) {
    return check.part.at_kind == model::PartKind::none && marked_parts(check.part, detail) == std::vector{anchor};
}

/// A check that holds a capacity against the anchor's largest tension itself is one of its tension.
bool is_of_tension(const checks::CheckResult& check, double tension_lb) {
    constexpr double same = 1e-9;
    return check.unit == "lb" && check.status != checks::Status::missing_evidence &&
           std::abs(check.demand - tension_lb) <= same * tension_lb;
}

void add_checks(AnchorMark& mark, const review::Review& review) {
    const demand::AnchorEnvelope* envelope = envelope_of(review, mark.part.id);
    // They stand worst first, and so the first of them that is about the anchor is its worst.
    double worst_in_tension = -1.0;
    for (const checks::CheckResult& check : review.checks) {
        if (!is_about(check, mark.part, review.resolved.detail)) continue;
        if (review::is_dimension(check) && check.status == checks::Status::holds) continue;
        if (!mark.status) {
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

}  // namespace

AnchorMark anchor_mark(const std::string& id, const ShownForce& force, const review::Review* review) {
    AnchorMark mark;
    mark.part = model::anchor_part(id);
    mark.tension_lb = force.tension_lb;
    mark.shear_lb = std::hypot(force.shear_x_lb, force.shear_y_lb);
    mark.shear_direction_rad = std::atan2(force.shear_y_lb, force.shear_x_lb);
    mark.largest_tension_lb = force.largest_tension_lb;
    if (review != nullptr) add_checks(mark, *review);
    return mark;
}

const demand::AnchorEnvelope* envelope_of(const review::Review& review, const std::string& id) {
    if (!review.demand) return nullptr;
    for (std::size_t i = 0; i < review.resolved.anchors.size(); ++i) {
        if (review.resolved.anchors[i].id == id) return &review.demand->anchors[i];
    }
    return nullptr;
}

}  // namespace toehold::drawing
