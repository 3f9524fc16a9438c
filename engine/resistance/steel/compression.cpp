#include "resistance/steel/compression.h"

#include <cmath>
#include <numbers>

namespace toehold::resistance::steel {

double buckling_stress_psi(double slenderness, double yield_psi, double modulus_psi) {
    const double elastic_psi = std::numbers::pi * std::numbers::pi * modulus_psi / (slenderness * slenderness);
    if (yield_psi / elastic_psi <= 2.25) return std::pow(0.658, yield_psi / elastic_psi) * yield_psi;
    return 0.877 * elastic_psi;
}

}  // namespace toehold::resistance::steel
