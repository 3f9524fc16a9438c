#pragma once
// Words of the site sheet: lengths as a tape shows them, lumber and nails by the names a yard sells them under.
#include "format/phrase.h"
#include "model/member.h"
#include "units/quantity.h"

#include <string>
#include <vector>

namespace toehold::paper::site {

/// To the nearest 1/16 in, as a fraction, or to the nearest millimeter; without its unit. `-` where not finite.
[[nodiscard]] std::string tape_figure(double length_in, units::System system);
/// `5 1/2 in`, `140 mm`.
[[nodiscard]] std::string tape_words(double length_in, units::System system);

/// A hole of one diameter, in: `7/16 in`, `11.1 mm`.
[[nodiscard]] std::string hole_words(double diameter_in, units::System system);

/// `4x8` for a piece that measures 3 1/2 by 7 1/4 in; empty where no nominal size has these dressed sizes. Dressed
/// sizes of NDS Supplement 2018 Tables 1A and 1B (from memory): dimension lumber, and timbers from nominal 5 in up.
[[nodiscard]] std::string nominal_size(double thickness_in, double face_in);
/// `4x8 on edge`, `two 2x8 nailed together, on edge`, `2x6 laid flat`; the actual size where there is no nominal one.
[[nodiscard]] format::Phrase lumber_words(const model::Member& member, units::System system);
/// `3 1/2 wide x 7 1/4 in deep`, all pieces together.
[[nodiscard]] format::Phrase actual_words(const model::Member& member, units::System system);

/// `16d`, common, for 0.162 by 3 1/2 in; empty for a size that is no common nail's. NDS 2018 Appendix L, Table L4 (from
/// memory).
[[nodiscard]] std::string penny_size(double diameter_in, double length_in);

}  // namespace toehold::paper::site
