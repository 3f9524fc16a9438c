#pragma once
// A reference value with every factor applied, and one worked line a factor.
#include "checks/result.h"

#include <vector>

namespace toehold::checks {

struct Adjusted {
    double value = 0.0;       ///< reference value times every factor
    std::vector<Step> steps;  ///< the factors, one line each, in the order of the standard's table; no product line
};

}  // namespace toehold::checks
