#pragma once
// The standards a review rests on, by what its checks, loads, stiffnesses and assumptions cite.
#include "format/phrase.h"

#include <string>
#include <string_view>
#include <vector>

namespace toehold::review {
struct Review;
}

namespace toehold::paper::report {

struct Standard {
    enum class Kind {
        code,     ///< a building code, or the loads it rests on
        design,   ///< of a material, a connection or a test
        product,  ///< a material's or a fastener's specification, of whatever edition it was made to
    };
    std::string_view name;    ///< with edition, as citations begin: `NDS 2018`
    std::string_view title;   ///< in full, with who issues it
    format::Phrase used_for;  ///< here
    Kind kind = Kind::design;
};

/// Every standard, specification or handbook the engine may cite, in the order they are printed.
[[nodiscard]] const std::vector<Standard>& known_standards();
/// Whether one of the citations in a text, which `;` parts, begins with the standard's name.
[[nodiscard]] bool cites(std::string_view citation, const Standard& standard);
/// Those that a clause, a load, a stiffness or an assumption of this review cites.
[[nodiscard]] std::vector<Standard> standards_used(const review::Review& review);

}  // namespace toehold::paper::report
