#pragma once
// Quantities as people write them, to the engine's units and back. A unit is always written: a bare number is
// refused. Numbers never depend on the locale. Engine units: inch, pound-force, psi, lb/in, lb/ft, degree, psf,
// square foot.
#include <optional>
#include <string>
#include <string_view>

namespace toehold::units {

enum class Kind {
    length,            ///< in:      36 in, 3'-0", 3/8", 3 3/8 in, 2 ft, 914 mm, 91.4 cm, 0.914 m
    force,             ///< lb:      200 lbf, 200 lb, 1.5 kip, 890 N, 0.89 kN
    stress,            ///< psi:     900 psi, 36 ksi, 6.2 MPa, 1 GPa
    moment,            ///< lb in:   8400 lb-in, 700 lb-ft, 0.95 kN-m, 950 N-m
    force_per_length,  ///< lb/in:   246 lb/in, 50 plf, 50 lb/ft, 0.73 kN/m, 0.73 N/mm
    bed_stiffness,     ///< psi/in:  25000 psi/in, 6.8 MPa/mm, 6.8 N/mm3
    angle,             ///< degree:  45 deg, 0.785 rad
    pressure,          ///< psf:     20 psf, 0.96 kPa, 958 Pa: of wind, and of what a floor carries
    area,              ///< ft2:     20 ft2, 20 sq ft, 1.9 m2
};

enum class System { us, si };

/// Result of reading a quantity: a finite value in the engine's unit, or what would be accepted.
struct Parsed {
    std::optional<double> value;
    std::string accepted;  ///< a short phrase, for instance `a length with its unit, such as 3 3/8 in or 86 mm`
};

/// Reads the whole text or nothing: no trailing characters, no NaN or infinity, no bare number. Case of units matters
/// only where SI makes it matter. Leading and trailing blanks are ignored. A fraction of one or more (5/4 in) is
/// refused: it is the trade name of a board, not what it measures.
[[nodiscard]] Parsed parse(std::string_view text, Kind kind);
/// What `parse` would accept for this kind.
[[nodiscard]] std::string_view accepted(Kind kind);

/// A plain decimal number, for the few attributes without a dimension (factors, counts). Whole text, finite.
[[nodiscard]] std::optional<double> parse_number(std::string_view text);

/// The value with its engine unit, with the fewest digits that read back to the same double (`36 in`, `200 lbf`).
/// Throws std::invalid_argument for a value that is not finite: no file may hold one.
[[nodiscard]] std::string exact(double value, Kind kind);
/// For people: rounded to `decimals` in the chosen system, with its unit.
[[nodiscard]] std::string display(double value, Kind kind, System system, int decimals);
/// A length for people in US customary: to the nearest 1/32 in as a fraction where exact to 0.001 in, else decimals.
[[nodiscard]] std::string fraction_in(double length_in);
/// The same without its unit: `3 3/8`.
[[nodiscard]] std::string bare_fraction(double length_in);

}  // namespace toehold::units
