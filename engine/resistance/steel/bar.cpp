#include "resistance/steel/bar.h"

#include <algorithm>

namespace toehold::resistance::steel {

double flat_bar_moment_lb_in(double thickness_in, double depth_in, double unbraced_in, double yield_psi,
                             double modulus_psi) {
    const double square = thickness_in * depth_in * depth_in;
    const double section_in3 = square / 6.0;
    const double plastic = stocky_bar_moment_lb_in(section_in3, square / 4.0, yield_psi);
    const double slenderness = unbraced_in * depth_in / (thickness_in * thickness_in);
    if (slenderness <= 0.08 * modulus_psi / yield_psi) return plastic;
    const double yielding = yield_psi * section_in3;
    if (slenderness <= 1.9 * modulus_psi / yield_psi)
        return std::min(plastic, (1.52 - 0.274 * slenderness * yield_psi / modulus_psi) * yielding);
    return std::min(plastic, 1.9 * modulus_psi / slenderness * section_in3);
}

double stocky_bar_moment_lb_in(double section_in3, double plastic_in3, double yield_psi) {
    return yield_psi * std::min(plastic_in3, 1.6 * section_in3);
}

}  // namespace toehold::resistance::steel
