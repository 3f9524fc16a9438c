#include "resistance/aluminum/connection.h"

#include <algorithm>

namespace toehold::resistance::aluminum {

double weld_filler_lb_per_in(double leg_in, double filler_shear_psi) { return 0.707 * leg_in * filler_shear_psi; }

double weld_base_metal_lb_per_in(double leg_in, double thickness_in, double welded_ultimate_psi) {
    return 0.6 * welded_ultimate_psi * std::min(leg_in, thickness_in);
}

double minimum_edge_distance_in(double diameter_in) { return 1.5 * diameter_in; }

double hole_bearing_lb(double edge_in, double diameter_in, double thickness_in, double ultimate_psi) {
    return std::min(edge_in, 2.0 * diameter_in) * thickness_in * ultimate_psi;
}

}  // namespace toehold::resistance::aluminum
