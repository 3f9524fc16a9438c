#pragma once
// Column buckling: AISC 360-16 E3. psi.

namespace toehold::resistance::steel {

/// Fcr of a member without slender walls, Eq. E3-2 to E3-4. `slenderness`: effective length over radius of gyration,
/// > 0. The safety is that of flexure, 1.67 and 0.90 (E1).
[[nodiscard]] double buckling_stress_psi(double slenderness, double yield_psi, double modulus_psi);

}  // namespace toehold::resistance::steel
