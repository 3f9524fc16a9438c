// Symbols, formulas and units as they are written by hand in the standards' own notation.
#include "paper/layout/symbols.h"

#include "support/compare.h"

using toehold::paper::layout::written_math;
using toehold::paper::layout::written_number;
using toehold::paper::layout::written_unit;

TEST_CASE("Spelled Greek becomes Greek where it is a word of its own", "[unit]") {
    CHECK(written_math("phi") == "φ");
    CHECK(written_math("tau") == "τ");
    CHECK(written_math("theta") == "θ");
    CHECK(written_math("Omega") == "Ω");
    CHECK(written_math("C_Delta") == "C_Δ");
    CHECK(written_math("Z'_alpha") == "Z'_α");
    CHECK(written_math("M_n / Omega") == "M_n / Ω");
    CHECK(written_math("2 lambda sigma") == "2 λ σ");
    CHECK(written_math("eta + mu beta gamma") == "η + μ β γ");
    // Inside other words nothing changes.
    CHECK(written_math("pitch") == "pitch");
    CHECK(written_math("beta2plates") == "β2plates");
    CHECK(written_math("muse, eta's") == "muse, η's");
    CHECK(written_math("R_phil") == "R_phil");
}

TEST_CASE("Formulas of the checks are written with signs and powers", "[unit]") {
    // NDS 2018 Eq. 12.4-1, as the check of combined force spells it.
    CHECK(written_math("W'p Z' / (W'p cos^2 alpha + Z' sin^2 alpha)") == "W'p Z' / (W'p cos² α + Z' sin² α)");
    CHECK(written_math("sqrt(T^2 + V^2)") == "√(T² + V²)");
    CHECK(written_math("0.60 F_EXX x 0.707 l") == "0.60 F_EXX × 0.707 l");
    CHECK(written_math("2.5 D <= (5 l + 10 D)/8 <= 5 D") == "2.5 D ≤ (5 l + 10 D)/8 ≤ 5 D");
    CHECK(written_math("a >= 4 D") == "a ≥ 4 D");
    CHECK(written_math("L_e - d_h/2") == "L_e − d_h/2");
    CHECK(written_math("a * b") == "a · b");
    CHECK(written_math("P h^3/(3 E I)") == "P h³/(3 E I)");
}

TEST_CASE("A power after a subscript stays out of it", "[unit]") {
    // Area of the root, AISC 360 Table J3.2's A_b for a threaded part.
    CHECK(written_math("pi D_r^2/4") == "π D_{r}²/4");
    CHECK(written_math("(f_b + f_a)^2 + f_v^2") == "(f_b + f_a)² + f_{v}²");
    CHECK(written_math("x_{max}^2") == "x_{max}²");
    CHECK(written_math("L_c,min") == "L_c,min");
}

TEST_CASE("What could mean something else is left alone", "[unit]") {
    CHECK(written_math("1800 G^1.5 D^0.75") == "1800 G^1.5 D^0.75");  // NDS 2018 Eq. 12.2-1
    CHECK(written_math("F = F_bE/F_b* = 814/800") == "F = F_bE/F_b* = 814/800");
    CHECK(written_math("moment about x and y") == "moment about x and y");
    CHECK(written_math("H h, its part along x") == "H h, its part along x");
    CHECK(written_math("10^23") == "10^23");
    CHECK(written_math("square root of a sqrt") == "square root of a sqrt");
    CHECK(written_math("").empty());
    CHECK(written_math("a_") == "a_");
    CHECK(written_math("^") == "^");
    CHECK(written_math("Wood Handbook, \u2264 5 µm") == "Wood Handbook, ≤ 5 µm");
}

TEST_CASE("Units and powers of ten are written as on paper", "[unit]") {
    CHECK(written_unit("in2") == "in²");
    CHECK(written_unit("in4") == "in⁴");
    CHECK(written_unit("ft2") == "ft²");
    CHECK(written_unit("lb in") == "lb·in");
    CHECK(written_unit("N-m") == "N·m");
    CHECK(written_unit("psi") == "psi");
    CHECK(written_unit("").empty());
    CHECK(written_number("2.90e+07") == "2.90·10⁷");
    CHECK(written_number("3.61e-14") == "3.61·10⁻¹⁴");
    CHECK(written_number("1.00e+10") == "1.00·10¹⁰");
    CHECK(written_number("1166") == "1166");
    CHECK(written_number("-") == "-");
}
