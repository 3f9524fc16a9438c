#pragma once
// How strong the steel of an anchor is by itself, in tension and in shear: what the three checks of it share.
#include "checks/basis/metal_basis.h"
#include "checks/registry.h"

namespace toehold::checks {

/// Usable tension of one anchor's steel, lb. A through-bolt on its nominal area; a lag or wood screw on the section at
/// its thread's root, with the same nominal stress. That stress already allows for a bolt's thread on the nominal area,
/// so for screws it is on the safe side; full Fu on the root section would give a third more. A reported fastener has
/// what its report says.
[[nodiscard]] Capacity anchor_tension(const catalog::Anchor& anchor, const model::Basis& basis);

/// Usable shear, lb, threads in the shear plane. Not for a reported fastener: its lateral value covers the steel. The
/// reduction of A307 bolts for a long grip between steel plates is not taken: here the bolt bears in wood, whose yield
/// limit equations cover its bending.
[[nodiscard]] Capacity anchor_shear(const catalog::Anchor& anchor, const model::Basis& basis);

/// Subject and link of an anchor's steel: from the plate to the anchor.
[[nodiscard]] CheckResult anchor_steel_result(const CheckInput& input, std::size_t anchor, const std::string& by);

}  // namespace toehold::checks
