#pragma once
// Values of the input beside each other, for people.
#include "units/quantity.h"

#include <string>
#include <utility>

namespace toehold::output {

/// Both texts with every quantity in the reader's system and rounded as the reader would write it; as they stand where
/// that would make them look alike. `-` stands for what is not there.
[[nodiscard]] std::pair<std::string, std::string> shown_values(const std::string& first, const std::string& second,
                                                               units::System system);

}  // namespace toehold::output
