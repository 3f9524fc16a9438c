#pragma once
// A dowel through two members bends and crushes its way to yield; the least of the modes is the reference lateral
// design value Z. NDS 2018 12.3.1, Tables 12.3.1A (equations) and 12.3.1B (reduction terms). The equations are from
// memory and reproduce every readable entry of Table 12K (tests).
//   m: main member, the one that holds the point (or the middle one); s: side member.
#include <array>
#include <span>
#include <vector>

namespace toehold::resistance {

enum class YieldMode { Im, Is, II, IIIm, IIIs, IV };
/// `I_m`, `II` and so on.
[[nodiscard]] const char* name(YieldMode mode);

/// The connection as the equations see it.
struct DowelConnection {
    double diameter_in = 0.0;  ///< D of the equations: root diameter where threads lie in the shear plane (12.3.7)
    double bending_yield_psi = 0.0;  ///< Fyb
    double main_bearing_in = 0.0;    ///< lm: less half the tapered tip where the tip lies in it (12.3.5.3)
    double side_bearing_in = 0.0;    ///< ls
    double main_bearing_psi = 0.0;   ///< Fem
    double side_bearing_psi = 0.0;   ///< Fes
    double gap_in = 0.0;             ///< between the members, for the general dowel equations
};

/// Rd, by which each mode's yield load is divided.
struct ReductionTerms {
    double mode_I = 1.0, mode_II = 1.0, mode_III_IV = 1.0;
    [[nodiscard]] double of(YieldMode mode) const;
};

/// `nominal_in`: outside diameter; `used_in`: D of the equations; `angle_rad`: the largest angle from the grain to the
/// force in either member, 0 to pi/2 (0 in a metal member).
///   D >= 1/4 in: 4, 3.6, 3.2 times Ktheta; but where only the root is thinner than 1/4 in, KD Ktheta (note 1)
///   D < 1/4 in: KD = 2.2 to 0.17 in, then 10 D + 0.5, by the diameter the equations use (12.3.7)
[[nodiscard]] ReductionTerms reduction_terms(double nominal_in, double used_in, double angle_rad);

struct ModeValue {
    YieldMode mode = YieldMode::IV;
    double value_lb = 0.0;
};

/// One shear plane: Im, Is, II, IIIm, IIIs, IV. `gap_in` must be 0. Throws std::invalid_argument for a gap or for any
/// dimension or strength not above 0.
[[nodiscard]] std::vector<ModeValue> single_shear(const DowelConnection& connection, const ReductionTerms& reduction);
/// Two shear planes, equal side members: Im, Is, IIIs, IV, the value of the whole fastener.
[[nodiscard]] std::vector<ModeValue> double_shear(const DowelConnection& connection, const ReductionTerms& reduction);
/// The least; the first of equals. Throws std::invalid_argument on none.
[[nodiscard]] ModeValue governing(std::span<const ModeValue> modes);

/// std::invalid_argument where a yield equation would have no meaning.
void require_sound(const DowelConnection& connection);

// A dowel whose members do not touch: the general dowel equations of AWC Technical Report 12 for solid members (from
// memory, to be confirmed; without a gap they are the NDS equations to the last digit, tests). A gap lengthens the
// dowel's lever and costs much: decking under a plate is such a gap unless it counts as wood around the shank. Each
// mode solves A P^2 + B P + C = 0 for P >= 0, with bearing resistances q = Fe D (lb/in) in each member and the dowel's
// plastic moment M = Fyb D^3 / 6 (lb in).

/// One shear plane, `gap_in` >= 0: Im, Is, II, IIIm, IIIs, IV. Throws std::invalid_argument as `single_shear`.
[[nodiscard]] std::array<ModeValue, 6> single_shear_with_gap(const DowelConnection& connection,
                                                             const ReductionTerms& reduction);

}  // namespace toehold::resistance
