#pragma once
// The standards a review rests on, found in the clauses it names.
#include "format/phrase.h"

#include <string>
#include <string_view>
#include <vector>

namespace toehold::review {
struct Review;
}

namespace toehold::paper::report {

struct Standard {
    std::string_view name;      ///< with edition, as clauses begin: `NDS 2018`
    std::string_view title;     ///< in full, with who issues it
    format::Phrase used_for;    ///< here
    bool of_a_product = false;  ///< a material's or a fastener's specification, of whatever edition it was made to
};

/// Every standard, specification or handbook the engine's clauses may name, in the order they are printed.
[[nodiscard]] const std::vector<Standard>& known_standards();
/// Those that a clause, a load, a stiffness or an assumption of this review names.
[[nodiscard]] std::vector<Standard> standards_used(const review::Review& review);

/// Every clause or source this review names, each once, sorted.
[[nodiscard]] std::vector<std::string> clauses_named(const review::Review& review);

}  // namespace toehold::paper::report
