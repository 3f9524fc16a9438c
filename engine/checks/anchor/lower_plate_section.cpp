#include "checks/anchor/lower_plate_section.h"

#include "resistance/aluminum/member.h"
#include "resistance/steel/member.h"

#include <algorithm>
#include <cmath>

namespace toehold::checks {
namespace {

using catalog::Metal;
using catalog::MetalKind;
using format::phrase;
namespace aluminum = resistance::aluminum;
namespace steel = resistance::steel;

double face_in(const model::LowerPlate& plate, model::PlanAxis run) {
    return run == model::PlanAxis::x ? plate.depth_in : plate.width_in;
}

Capacity flat(const model::LowerPlate& plate, double net_in, const Metal& metal, const model::Basis& basis) {
    Capacity capacity;
    const double plastic_in3 = 0.25 * net_in * plate.thickness_in * plate.thickness_in;
    capacity.steps = {
        from_file("t", phrase("thickness"), plate.thickness_in, "in"),
        {"b_n", phrase("width across the bolts' line, net of a hole"), "b - (D + 1/16)", net_in, "in", ""},
        {"Z", phrase("plastic modulus"), "b_n t^2/4", plastic_in3, "in3", ""},
        given("F_y", phrase("yield strength of {}", metal.name), metal.yield_psi, "psi", metal.source.text)};
    if (metal.kind == MetalKind::aluminum) {
        capacity.clause = "ADM 2015 F.2 (from memory)";
        const Adjusted yields =
            available(metal.yield_psi * plastic_in3, aluminum::yield_safety, basis, capacity.clause);
        const Adjusted breaks =
            available(metal.ultimate_psi * plastic_in3, aluminum::rupture_safety, basis, capacity.clause);
        const Adjusted& least = yields.value <= breaks.value ? yields : breaks;
        append(capacity.steps, least.steps);
        capacity.value = least.value;
        return capacity;
    }
    capacity.clause = steel_clause(metal, "AISC 360-16 F11.1");
    const Adjusted usable = available(steel::plate_moment_lb_in(net_in, plate.thickness_in, metal.yield_psi),
                                      steel::flexure_safety, basis, capacity.clause);
    append(capacity.steps, usable.steps);
    capacity.value = usable.value;
    return capacity;
}

/// Noncompact limits of AISC 360-16 Table B4.1b: legs of single angles 0.91 sqrt(E/Fy), flanges of channels 1.0
/// sqrt(E/Fy). Up to them the section reaches Fy S.
bool slender(const model::LowerPlate& plate, const Metal& metal) {
    const double limit = plate.shape == model::LowerShape::angle ? 0.91 : 1.0;
    return plate.leg_in / plate.thickness_in > limit * std::sqrt(metal.modulus_psi / metal.yield_psi);
}

Capacity legged(const model::LowerPlate& plate, double face, double hole_in, const Metal& metal,
                const model::Basis& basis) {
    Capacity capacity;
    capacity.clause = steel_clause(metal, "AISC 360-16 F1, Table B4.1b");
    if (metal.kind == MetalKind::aluminum || slender(plate, metal)) {
        capacity.missing =
            metal.kind == MetalKind::aluminum
                ? phrase(
                      "Angles and channels of aluminum below the wood are not covered. Use a flat plate, "
                      "or steel.")
                : phrase(
                      "The legs of the lower plate are slender, which is not covered. Use thicker or "
                      "shorter legs.");
        return capacity;
    }
    const int legs = plate.shape == model::LowerShape::channel ? 2 : 1;
    const double section_in3 = legged_section_in3(face, plate.leg_in, plate.thickness_in, legs, hole_in);
    capacity.steps = {
        from_file("h", phrase("leg, overall"), plate.leg_in, "in"),
        from_file("t", phrase("thickness"), plate.thickness_in, "in"),
        {"S", phrase("section modulus about the axis along its face, net of a hole"), "I/c", section_in3, "in3", ""},
        given("F_y", phrase("yield strength of {}", metal.name), metal.yield_psi, "psi", metal.source.text)};
    const Adjusted usable = available(metal.yield_psi * section_in3, steel::flexure_safety, basis, capacity.clause);
    append(capacity.steps, usable.steps);
    capacity.value = usable.value;
    return capacity;
}

}  // namespace

double legged_section_in3(double face_in, double leg_in, double thickness_in, int legs, double hole_in) {
    const double face_area = (face_in - hole_in) * thickness_in;
    const double stands_in = leg_in - thickness_in;
    const double leg_area = legs * stands_in * thickness_in;
    // From the face's outside down.
    const double face_at = 0.5 * thickness_in, leg_at = thickness_in + 0.5 * stands_in;
    const double axis = (face_area * face_at + leg_area * leg_at) / (face_area + leg_area);
    const double inertia = face_area * (thickness_in * thickness_in / 12.0 + (axis - face_at) * (axis - face_at)) +
                           leg_area * (stands_in * stands_in / 12.0 + (leg_at - axis) * (leg_at - axis));
    return inertia / std::max(axis, leg_in - axis);
}

double available_yield_psi(const Metal& metal, const model::Basis& basis) {
    const bool soft = metal.kind == MetalKind::aluminum;
    return available(metal.yield_psi, soft ? aluminum::yield_safety : steel::flexure_safety, basis, {}).value;
}

Capacity lower_plate_moment(const model::LowerPlate& plate, model::PlanAxis run, double hole_in, const Metal& metal,
                            const model::Basis& basis) {
    const double face = face_in(plate, run);
    if (plate.shape != model::LowerShape::plate) return legged(plate, face, hole_in, metal, basis);
    return flat(plate, std::max(face - hole_in, 0.0), metal, basis);
}

}  // namespace toehold::checks
