#pragma once
// The wood a new detail begins with.
#include "catalog/catalog.h"

#include <string>
#include <vector>

namespace toehold::editing {

struct StartingWood {
    std::string species, grade;
};

/// No. 2 southern pine where the catalog has it, else its first grade, that is listed for pieces of this width in all
/// of these depths. Empty where none is.
[[nodiscard]] StartingWood starting_wood(const catalog::Catalog& catalog, double width_in,
                                         const std::vector<double>& depths_in);

}  // namespace toehold::editing
