#pragma once
// How much stronger metals are than their nominal strengths, and how they scatter: mean over nominal, and coefficient
// of variation, of material, size and formula together.
//
// JCSS: Probabilistic Model Code of the Joint Committee on Structural Safety, part 3, static properties of structural
// steel and model uncertainties (read in its public repository). Its yield stress scatters by 0.07 in Europe and half
// as much again in the US, its bending formula by 0.05: together 0.12.

namespace toehold::resistance::ultimate {

struct Bias {
    double mean_over_nominal = 1.0;
    double variation = 0.0;
};

/// Yield of steel plates, over Fy: AISC 341-02 Table I-6-1 (read; for plates the least of its values). JCSS scatter.
inline constexpr Bias steel_plate_yield{1.10, 0.12};
/// Yield of ASTM A500 tubes, over Fy: AISC 341-02 Table I-6-1 and, for Grade C, 341-22 (read; Grade B has 1.40 there).
/// Also their plastic moment Fy Z.
inline constexpr Bias steel_tube_yield{1.30, 0.12};
/// A bolt or threaded rod in tension, over 0.75 Fu on its nominal area. JCSS has 1.25 and 0.15 for a bolted connection
/// over EN 1993's 0.9 fub on the tensile stress area, which is three quarters of the nominal one: 0.9 x 1.25.
inline constexpr Bias bolt_tension{1.125, 0.15};
/// A fillet weld, over 0.60 FEXX on its throat. JCSS has these for a welded connection over EN 1993's strength, which
/// is higher than AISC's for the same weld: the careful end. American tests give more, 1.47 and 0.18.
inline constexpr Bias fillet_weld_shear{1.15, 0.15};
/// Aluminum, yield and bending alike: B. Ellingwood and others, NBS Special Publication 577, 1980 (from memory, to be
/// confirmed).
inline constexpr Bias aluminum_yield{1.10, 0.08};

}  // namespace toehold::resistance::ultimate
