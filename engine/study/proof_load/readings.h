#pragma once
// Readings of a load test as people write them: `50 lb=0.21 in, 100 lb=0.43 in`.
#include "format/phrase.h"
#include "mechanics/sampling/straight_line.h"

#include <optional>
#include <string_view>
#include <vector>

namespace toehold::study {

struct ReadingsRead {
    std::optional<std::vector<mechanics::Reading>> readings;  ///< movement in, push lb; at least one
    format::Phrase refusal;                                   ///< what is wrong, and what would be accepted
};

/// Push and movement each with its unit, neither below 0.
[[nodiscard]] ReadingsRead read_readings(std::string_view text);

}  // namespace toehold::study
