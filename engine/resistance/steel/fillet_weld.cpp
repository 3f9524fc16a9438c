#include "resistance/steel/fillet_weld.h"

namespace toehold::resistance::steel {

double throat_in(double leg_in) { return 0.707 * leg_in; }

double weld_metal_lb_per_in(double leg_in, double electrode_psi) { return 0.60 * electrode_psi * throat_in(leg_in); }

double base_metal_lb_per_in(double thickness_in, double ultimate_psi) { return 0.60 * ultimate_psi * thickness_in; }

double minimum_leg_in(double thinner_part_in) {
    if (thinner_part_in <= 0.25) return 0.125;
    if (thinner_part_in <= 0.5) return 0.1875;
    if (thinner_part_in <= 0.75) return 0.25;
    return 0.3125;
}

}  // namespace toehold::resistance::steel
