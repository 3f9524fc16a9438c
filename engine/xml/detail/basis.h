#pragma once
// Another basis from words: attributes of the file's <basis> set one by one, each read as the file's own would be.
#include "model/basis.h"
#include "model/problem.h"

#include <optional>
#include <string>
#include <vector>

namespace toehold::xml {

struct BasisSetting {
    std::string attribute;  ///< as the file calls it: `method`, `load-duration`
    std::string value;      ///< as the file writes it; empty: left out, so that the default holds
};

struct BasisRead {
    std::optional<model::Basis> basis;  ///< absent when there are problems
    model::Problems problems;           ///< of form alone, without a file; `model::validate` looks at the numbers
};

[[nodiscard]] BasisRead change_basis(const model::Basis& basis, const std::vector<BasisSetting>& settings);

}  // namespace toehold::xml
