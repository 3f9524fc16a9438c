#include "resistance/aluminum/member.h"

#include <algorithm>

namespace toehold::resistance::aluminum {

Moment plate_moment(double width_in, double thickness_in, const Strengths& strengths) {
    const double square = width_in * thickness_in * thickness_in;
    return section_moment(square / 6.0, square / 4.0, strengths);
}

Moment section_moment(double section_in3, double plastic_in3, const Strengths& strengths) {
    return {strengths.yield_psi * std::min(plastic_in3, 1.5 * section_in3), strengths.ultimate_psi * plastic_in3};
}

double flagpole_axial_lb(const steel::TubeSection& section, double height_in, double welded_yield_psi,
                         double modulus_psi) {
    constexpr double straightness = 0.85;
    return straightness * steel::flagpole_axial_lb(section, height_in, welded_yield_psi, modulus_psi);
}

}  // namespace toehold::resistance::aluminum
