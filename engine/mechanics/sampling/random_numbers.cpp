#include "mechanics/sampling/random_numbers.h"

#include "mechanics/sampling/normal_distribution.h"

namespace toehold::mechanics {

double RandomNumbers::uniform() {
    // So many that the middle of every cell is a double, exactly.
    constexpr int dropped_bits = 12;
    constexpr double cell = 0x1.0p-52;
    return (static_cast<double>(bits_() >> dropped_bits) + 0.5) * cell;
}

double RandomNumbers::normal() { return normal_quantile(uniform()); }

}  // namespace toehold::mechanics
