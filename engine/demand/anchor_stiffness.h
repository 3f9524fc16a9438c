#pragma once
// How stiff the bed and the anchors are, and where each value comes from: a central value, and two published ends that
// `stiffness_range.h` makes the range of.
#include "catalog/resolve.h"
#include "demand/demand.h"
#include "format/phrase.h"

namespace toehold::demand {

struct Stiffness {
    double value = 0.0;  ///< psi/in for a bed, lb/in for an anchor
    format::Phrase source;
};

/// Layers in series, each modulus through its thickness over its thickness, the load taken straight down (no spread):
/// decking and shims, then wood of this modulus of elasticity and depth. `below_modulus_psi` is along the grain; across
/// it one twentieth is taken. 0 depth: the layers alone.
[[nodiscard]] Stiffness bed_stiffness(const catalog::Resolved& resolved, double below_modulus_psi,
                                      double below_depth_in);

/// Modulus of elasticity across the grain over that along it.
///   - central: 1/20. Wood Handbook (FPL-GTR-190, 2010) Table 5-1 gives E_T/E_L of .050 for Douglas-fir.
///   - soft: 1/30. EN 338 grades its softwoods so: C24 has 370 over 11,000 N/mm2 (both seen in public copies).
///   - stiff: 1/10. Wood Handbook Table 5-1 gives ponderosa pine .083 tangential and .122 radial (seen in a public
///     table). It covers, too, that pressure spreads in the wood, which the bed leaves out.
[[nodiscard]] double across_over_along(RangeEnd end);

/// Slip of a thread in withdrawal across the grain, lb/in. `thread_in` > 0: in the wood, tip excluded.
///   - soft and stiff: the lesser and the greater of 780 d^0.2 l^0.4 and 25 d l N/mm, d and l in mm. Both stand in
///     European technical assessments of wood screws (softwood, mean density 420 kg/m3) and bound what is compared in
///     Blass and Steige, Karlsruher Berichte zum Ingenieurholzbau 34, with 234 (rho d)^0.2 l^0.4 between them (seen in
///     public accounts of both). They are read across to lag screws, for which nothing published was found.
///   - central: the geometric mean.
[[nodiscard]] double thread_stiffness_lb_per_in(double diameter_in, double thread_in, RangeEnd end);

/// Squeeze of a member between its top and a bolt's washer or plate below it, lb/in.
///   - soft: the load runs straight down from what bears, over the whole depth.
///   - stiff: it spreads 1:1 on every side, along the grain without end and across it to the member's faces (van der
///     Put's dispersion of pressure across the grain at small strain, from memory, to be confirmed).
///   - central: the geometric mean.
struct Squeezed {
    double modulus_psi = 0.0;  ///< across the grain
    double depth_in = 0.0;
    double width_in = 0.0;   ///< of the member, face to face
    double bears_in2 = 0.0;  ///< area that bears, less the hole; spreads as a square of that area
};
[[nodiscard]] double squeeze_stiffness_lb_per_in(const Squeezed& squeezed, RangeEnd end);

/// Of the anchor, center of both ranges: thread slip in the wood (or squeeze of it over the lower washer) and the
/// shank's own stretch, in series.
[[nodiscard]] Stiffness anchor_stiffness(const catalog::Resolved& resolved, const catalog::Anchor& anchor);
/// The same at other places of the ranges, lb/in: how the anchor holds in the wood, and the wood's modulus across the
/// grain, which only a bolt feels.
[[nodiscard]] double anchor_stiffness_lb_per_in(const catalog::Resolved& resolved, const catalog::Anchor& anchor,
                                                RangeEnd hold, RangeEnd across);

}  // namespace toehold::demand
