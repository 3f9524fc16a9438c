#include "resistance/steel/connecting_element.h"

namespace toehold::resistance::steel {

double tension_yield_lb_per_in(double thickness_in, double yield_psi) { return yield_psi * thickness_in; }

double tension_rupture_lb_per_in(double thickness_in, double ultimate_psi) { return ultimate_psi * thickness_in; }

double shear_yield_lb_per_in(double thickness_in, double yield_psi) { return 0.60 * yield_psi * thickness_in; }

double shear_rupture_lb_per_in(double thickness_in, double ultimate_psi) { return 0.60 * ultimate_psi * thickness_in; }

}  // namespace toehold::resistance::steel
