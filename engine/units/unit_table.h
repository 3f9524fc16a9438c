#pragma once
// Every unit that is read, and what it is in the engine's unit of its kind.
//
// Exact by definition: 1 in = 25.4 mm; 1 lbf = 0.45359237 kg x 9.80665 m/s2 = 4.4482216152605 N
// (NIST SP 811, 2008 edition, Appendix B). The others follow from these two.
#include "units/quantity.h"

#include <optional>
#include <string_view>

namespace toehold::units {

inline constexpr double mm_per_in = 25.4;
inline constexpr double newton_per_lb = 4.4482216152605;
inline constexpr double mpa_per_psi = newton_per_lb / (mm_per_in * mm_per_in);
inline constexpr double newton_metre_per_lb_in = newton_per_lb * mm_per_in / 1000.0;
inline constexpr double newton_per_mm_per_lb_per_in = newton_per_lb / mm_per_in;
inline constexpr double mpa_per_mm_per_psi_per_in = mpa_per_psi / mm_per_in;
inline constexpr double m2_per_ft2 = 0.3048 * 0.3048;
inline constexpr double kpa_per_psf = newton_per_lb / 1000.0 / m2_per_ft2;

/// A value in this unit, times `multiply`, divided by `divide`, is the value in the engine's unit. Two factors, so
/// that 25.4 mm is 1 in to the last bit.
struct Unit {
    double multiply = 1.0;
    double divide = 1.0;
    [[nodiscard]] double to_engine(double value) const { return value * multiply / divide; }
};

/// The unit with this whole name; blanks, `*` and the middle dot between the parts of a name count as a hyphen.
[[nodiscard]] std::optional<Unit> find_unit(std::string_view name, Kind kind);

}  // namespace toehold::units
