#pragma once
#include "checks/basis/wood_basis.h"

namespace toehold::test {

/// The reference value times the value of every worked step.
inline double product(const checks::Adjusted& adjusted, double reference) {
    for (const checks::Step& step : adjusted.steps) reference *= step.value;
    return reference;
}

}  // namespace toehold::test
