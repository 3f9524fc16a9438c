#pragma once
// The steps' plain symbols, formulas and units as they are written on paper: Greek letters, signs, powers. Only what
// can mean one thing is changed; the steps themselves stay as they are.
#include <string>
#include <string_view>

namespace toehold::paper::layout {

/// A symbol or a formula: spelled Greek (`phi`, `C_Delta`), `sqrt(`, `<=`, `>=`, `^2`, `^3`, and ` x `, ` * `, ` - `
/// between two terms. Words, stars of a name (`F_b*`) and other powers (`G^1.5`) stay. A subscript whose symbol has a
/// power is put in braces, so that the power does not sink into it: `D_r^2` gives `D_{r}²`.
[[nodiscard]] std::string written_math(std::string_view plain);

/// A unit of the engine or of its SI counterpart: `in2` gives `in²`, `lb in` gives `lb·in`, `N-m` gives `N·m`.
[[nodiscard]] std::string written_unit(std::string_view plain);

/// A number with an exponent as it is written by hand: `2.90e+07` gives `2.90·10⁷`; others as they are.
[[nodiscard]] std::string written_number(std::string_view plain);

}  // namespace toehold::paper::layout
