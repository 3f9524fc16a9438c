#include "mechanics/overlap/overlap_couple.h"

#include <cmath>

namespace toehold::mechanics {

OverlapCouple overlap_couple(double push_lb, double above_bottom_in, double overlap_in) {
    // Forces: w (L - 2 a) = H. Moments about the bottom: w (L^2/2 - a^2) = H h. The two give a and w.
    const double arm = above_bottom_in;
    const double lower = arm - std::sqrt(arm * arm - arm * overlap_in + 0.5 * overlap_in * overlap_in);
    OverlapCouple couple;
    couple.lower_in = lower;
    couple.upper_in = overlap_in - lower;
    couple.line_lb_per_in = push_lb / (overlap_in - 2.0 * lower);
    couple.upper_lb = couple.line_lb_per_in * couple.upper_in;
    couple.lower_lb = couple.line_lb_per_in * couple.lower_in;
    const double about_middle = push_lb * (arm - 0.5 * overlap_in);
    couple.elastic_peak_lb_per_in = push_lb / overlap_in + 6.0 * about_middle / (overlap_in * overlap_in);
    return couple;
}

}  // namespace toehold::mechanics
