// A plate, angle or channel under several bolts that does not cover their nuts, does not lie flat, or runs into a
// deeper member.
#include "catalog/resolve.h"
#include "checks/basis/result_parts.h"
#include "checks/findings/buildable/fit.h"
#include "checks/registry.h"
#include "model/placement.h"
#include "units/limit.h"

#include <algorithm>
#include <cmath>

namespace toehold::checks {
namespace {

using catalog::Anchor;
using format::Dimension;
using format::phrase;
using model::PlanAxis;

constexpr double level_in = 1.0 / 32.0;  // what a plate drawn up tight makes up for

double depth_in(const catalog::Resolved& resolved, std::size_t member) {
    return model::member(resolved.detail.framing, member).depth_in;
}

/// From the anchor to the nearer edge of the face across the axis, less the legs that may stand there.
double room_in(const model::LowerPlate& plate, const Anchor& anchor, PlanAxis axis) {
    const double half_in = 0.5 * (axis == PlanAxis::x ? plate.width_in : plate.depth_in);
    const double off_in =
        std::abs(model::coordinate_in(model::in_plan(anchor.at), axis) - model::coordinate_in(plate.center, axis));
    if (axis == model::runs_along(plate) || plate.shape == model::LowerShape::plate) return half_in - off_in;
    // An angle may be turned so that its leg stands on the bolt's far side.
    if (plate.shape == model::LowerShape::channel) return half_in - plate.thickness_in - off_in;
    return std::min(half_in - off_in, half_in - plate.thickness_in + off_in);
}

void look_at_nut(std::vector<Finding>& findings, const catalog::Resolved& resolved, const Anchor& anchor) {
    const model::LowerPlate& plate = anchor.lower.value();
    const double needs_in = 0.5 * across_corners_in(anchor);
    const double has_in = std::min(room_in(plate, anchor, PlanAxis::x), room_in(plate, anchor, PlanAxis::y));
    if (units::at_least(has_in, needs_in)) return;
    findings.push_back(finding_on(
        model::anchor_part(anchor.id), Severity::fails,
        phrase("The nut of anchor {} does not lie on the face of {}: its center has {} to the edge or leg and "
               "needs {}. Make the lower plate larger, or move it.",
               anchor.id, model::part_name(model::lower_plate_part(resolved.detail, anchor.group)), Dimension{has_in},
               Dimension{needs_in})));
}

model::PlanRectangle plan(const model::LowerPlate& plate) {
    return {{},
            plate.center.x_in - 0.5 * plate.width_in,
            plate.center.x_in + 0.5 * plate.width_in,
            plate.center.y_in - 0.5 * plate.depth_in,
            plate.center.y_in + 0.5 * plate.depth_in};
}

bool meet(const model::PlanRectangle& one, const model::PlanRectangle& other) {
    const auto overlap = [](double end_in, double begin_in) { return !units::at_most(end_in, begin_in); };
    return overlap(std::min(one.x_max_in, other.x_max_in), std::max(one.x_min_in, other.x_min_in)) &&
           overlap(std::min(one.y_max_in, other.y_max_in), std::max(one.y_min_in, other.y_min_in));
}

/// Members whose undersides lie lower than where the plate lies.
void look_at_members(std::vector<Finding>& findings, const catalog::Resolved& resolved, const Anchor& first) {
    const model::PlanRectangle place = plan(first.lower.value());
    const double at_in = depth_in(resolved, first.seat.value().member);
    for (const model::Member& member : model::members(resolved.detail.framing)) {
        if (units::at_most(member.depth_in, at_in + level_in) || !meet(place, model::plan(member))) continue;
        findings.push_back(
            finding_on(model::lower_plate_part(resolved.detail, first.group), Severity::fails,
                       phrase("The lower plate runs into {}, which is {} deep where the plate lies {} below the tops. "
                              "Shorten or move the plate.",
                              model::part_name(model::part_of(member)), Dimension{member.depth_in}, Dimension{at_in})));
    }
}

void look_at_level(std::vector<Finding>& findings, const catalog::Resolved& resolved, const Anchor& first,
                   const Anchor& anchor) {
    const double one_in = depth_in(resolved, first.seat.value().member);
    const double other_in = depth_in(resolved, anchor.seat.value().member);
    if (units::at_most(std::abs(one_in - other_in), level_in)) return;
    findings.push_back(
        finding_on(model::anchor_part(anchor.id), Severity::fails,
                   phrase("The lower plate cannot lie flat: anchors {} and {} stand in members {} and {} "
                          "deep. Use one plate for each, or members of one depth.",
                          first.id, anchor.id, Dimension{one_in}, Dimension{other_in})));
}

std::vector<Finding> lower_plate_fit(const catalog::Resolved& resolved) {
    std::vector<Finding> findings;
    std::vector<const Anchor*> firsts;
    for (const Anchor& anchor : resolved.anchors) {
        if (!anchor.lower) continue;
        look_at_nut(findings, resolved, anchor);
        if (!anchor.seat) continue;
        const auto same =
            std::find_if(firsts.begin(), firsts.end(), [&](const Anchor* one) { return one->group == anchor.group; });
        if (same == firsts.end()) {
            firsts.push_back(&anchor);
            look_at_members(findings, resolved, anchor);
        } else {
            look_at_level(findings, resolved, **same, anchor);
        }
    }
    return findings;
}

const RegisterFinding registered{
    {"lower-plate-fit", phrase("Lower plate that does not fit"), "geometry", lower_plate_fit},
    {model::MountKind::plate_on_deck},
    Cause::geometry};

}  // namespace
}  // namespace toehold::checks
