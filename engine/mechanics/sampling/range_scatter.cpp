#include "mechanics/sampling/range_scatter.h"

#include <array>
#include <cstddef>
#include <stdexcept>

namespace toehold::mechanics {

double deviation_of_range(double range, int results) {
    constexpr int fewest = 2;
    // d2 of 2 to 10 results.
    constexpr std::array<double, 9> mean_range{1.12838, 1.69257, 2.05875, 2.32593, 2.53441,
                                               2.70436, 2.84720, 2.97003, 3.07751};
    const auto row = static_cast<std::size_t>(results - fewest);
    if (results < fewest || row >= mean_range.size() || !(range >= 0.0))
        throw std::invalid_argument("a scatter is found from the range of 2 to 10 results");
    return range / mean_range[row];
}

}  // namespace toehold::mechanics
