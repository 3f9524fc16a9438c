#pragma once
// What metals weigh.
#include "catalog/rows.h"

namespace toehold::catalog {

/// lb/in3: steel 490 lb/ft3 (AISC Steel Construction Manual, weights of building materials), stainless steel 0.29
/// lb/in3 (of 304 and 316), aluminum 0.098 lb/in3 (of 6061); all three from memory. For comparing details, never for a
/// load.
[[nodiscard]] constexpr double density_lb_per_in3(MetalKind kind) {
    constexpr double in3_per_ft3 = 1728.0;
    switch (kind) {
        case MetalKind::carbon_steel:
            break;
        case MetalKind::stainless_steel:
            return 0.29;
        case MetalKind::aluminum:
            return 0.098;
    }
    return 490.0 / in3_per_ft3;
}

}  // namespace toehold::catalog
