#pragma once
// The section of a plate, angle or channel under the wood, bent about the axis along its face.
#include "checks/basis/metal_basis.h"
#include "model/anchor.h"

namespace toehold::checks {

/// Moment it can carry along `run`, net of one bolt hole; lb in. An angle or a channel must run that way. `missing` for
/// one of aluminum and for slender legs, which are not covered.
[[nodiscard]] Capacity lower_plate_moment(const model::LowerPlate& plate, model::PlanAxis run, double hole_in,
                                          const catalog::Metal& metal, const model::Basis& basis);

/// Section modulus about the axis along its face, at the tip or the face, whichever is less; in3. A face of `face_in`
/// with one standing leg of the overall height `leg_in`, or two of a channel, all of one thickness; `hole_in` out of
/// the face.
[[nodiscard]] double legged_section_in3(double face_in, double leg_in, double thickness_in, int legs, double hole_in);

/// The metal's yield stress by the method, for bending of a plate: Omega 1.67, phi 0.90 (AISC 360-16 F1),
/// aluminum 1.65.
[[nodiscard]] double available_yield_psi(const catalog::Metal& metal, const model::Basis& basis);

}  // namespace toehold::checks
