#pragma once
// One factor of an adjusted value and the line that shows it: what connections and members have in common.
#include "checks/basis/result_parts.h"

#include <string>
#include <utility>

namespace toehold::checks {

inline void apply(Adjusted& adjusted, Step factor) {
    adjusted.value *= factor.value;
    adjusted.steps.push_back(std::move(factor));
}

/// A factor that the basis decides: the file's, or the default.
inline Step by_basis(std::string symbol, format::Phrase meaning, bool in_file, double value, std::string clause) {
    if (in_file) return given(std::move(symbol), std::move(meaning), value, "", std::move(clause));
    return {std::move(symbol), std::move(meaning), "default", value, "", std::move(clause), Origin::given};
}

}  // namespace toehold::checks
