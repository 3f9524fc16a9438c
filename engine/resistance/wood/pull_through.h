#pragma once
// A fastener's head drawn through the wood it bears on: NDS 2018 12.2.5. That the clause exists, and that it is for
// round heads, was read in the publisher's summary of changes; the equation is from memory, to be confirmed. It is
// not for a head or nut that bears on a washer or a metal plate.

namespace toehold::resistance {

/// WH, lb: 690 pi DH G^2 t where t <= 2.5 DH, and 1725 pi DH^2 G^2 beyond (2.5 x 690 = 1725, so that the two meet).
/// `head_diameter_in`: of the round head; `net_thickness_in`: of the wood under it. All > 0.
[[nodiscard]] double head_pull_through_lb(double specific_gravity, double head_diameter_in, double net_thickness_in);

}  // namespace toehold::resistance
