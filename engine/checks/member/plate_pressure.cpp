#include "checks/member/plate_pressure.h"

#include "catalog/resolve.h"
#include "checks/basis/result_parts.h"
#include "mechanics/plane/area_moments.h"
#include "mechanics/plane/symmetric_part.h"

#include <algorithm>
#include <cmath>

namespace toehold::checks {
namespace {

using format::phrase;

double apart_in(const mechanics::Point& a, const mechanics::Point& b) {
    return std::sqrt(mechanics::squared_distance(a, b));
}

/// Without most of an arc's many corners: those a pitch or more from the last, or with a long side after them, stay.
/// The polygon through them lies inside the convex outline, which is on the safe side.
mechanics::Polygon outline_of(const std::vector<model::Position>& corners) {
    mechanics::Polygon all, outline;
    for (const model::Position corner : corners) all.push_back({corner.x_in, corner.y_in});
    if (all.empty()) return outline;
    const auto along = [](const mechanics::Point& a, const mechanics::Point& b) { return a.x < b.x; };
    const auto ends = std::minmax_element(all.begin(), all.end(), along);
    const double pitch_in = (ends.second->x - ends.first->x) / 16.0;
    for (std::size_t i = 0; i < all.size(); ++i) {
        const bool far = outline.empty() || apart_in(all[i], outline.back()) >= pitch_in;
        if (far || apart_in(all[i], all[(i + 1) % all.size()]) >= pitch_in) outline.push_back(all[i]);
    }
    return outline;
}

bool asks_for_peak(const CheckInput& input) {
    return model::bearing_stress(input.resolved.detail.basis) == model::BearingStress::peak;
}

}  // namespace

PressedPatch pressed_patch(const CheckInput& input, std::size_t support, model::PlanAxis grain) {
    PressedPatch patch;
    patch.grain = grain;
    if (asks_for_peak(input)) return patch;
    mechanics::Polygon outline = outline_of(input.demand.supports.at(support).outline);
    if (mechanics::is_convex(outline)) patch.outline = std::move(outline);
    return patch;
}

PlatePressure plate_pressure(const PressedPatch& patch, const demand::SupportForce& force) {
    PlatePressure pressure;
    pressure.stress_psi = pressure.peak_psi = force.peak_psi;
    if (force.contact_area_in2 > 0.0) pressure.mean_psi = force.force_lb / force.contact_area_in2;
    if (!(force.force_lb > 0.0)) return pressure;
    const mechanics::Polygon block = mechanics::symmetric_part(patch.outline, {force.at.x_in, force.at.y_in});
    if (block.empty()) return pressure;
    pressure.area_in2 = mechanics::moments(block).area;
    if (force.contact_area_in2 > 0.0) pressure.area_in2 = std::min(pressure.area_in2, force.contact_area_in2);
    const double stress_psi = ratio(force.force_lb, pressure.area_in2);
    if (stress_psi >= force.peak_psi) return pressure;
    const auto along = [&patch](mechanics::Point point) {
        return patch.grain == model::PlanAxis::x ? point.x : point.y;
    };
    const auto ends = std::minmax_element(block.begin(), block.end(),
                                          [&](mechanics::Point a, mechanics::Point b) { return along(a) < along(b); });
    pressure.block = true;
    pressure.stress_psi = stress_psi;
    pressure.from_in = along(*ends.first);
    pressure.to_in = along(*ends.second);
    return pressure;
}

bool presses_level(const demand::Support& support) { return support.presses.z == 0.0; }

std::vector<Step> pressure_steps(const PlatePressure& pressure, const demand::SupportForce& force, bool level) {
    if (!pressure.block)
        return {demanded("f_c,perp",
                         level ? phrase("largest pressure of the post on the face")
                               : phrase("largest pressure under the plate here"),
                         pressure.stress_psi, "psi")};
    return {demanded("N", phrase("bearing force here"), force.force_lb, "lb"),
            {"A_b", phrase("area in uniform bearing about the resultant"),
             "part of the patch symmetric about it, at most the contact", pressure.area_in2, "in2", ""},
            {"f_c,perp", phrase("bearing stress"), "N/A_b", pressure.stress_psi, "psi", "NDS 2018 3.10.2"},
            demanded("p_max",
                     level ? phrase("elastic peak at the edge of the contact, for comparison")
                           : phrase("elastic peak at the plate's edge, for comparison"),
                     pressure.peak_psi, "psi"),
            demanded("p_mean", phrase("mean over the contact, for comparison"), pressure.mean_psi, "psi")};
}

format::Phrase pressure_note(const PlatePressure& pressure, bool level) {
    if (level && pressure.block)
        return phrase("A uniform stress about the resultant. The elastic peak at the edge of the contact is {}.",
                      format::Quantity{pressure.peak_psi, "psi"});
    if (level) return phrase("The largest pressure at the edge of the contact, not the mean over it.");
    if (pressure.block)
        return phrase("A uniform stress about the resultant. The elastic peak at the plate's edge is {}.",
                      format::Quantity{pressure.peak_psi, "psi"});
    return phrase("The largest pressure at the plate's edge, not the mean over the contact.");
}

}  // namespace toehold::checks
