#include "resistance/steel/drilled_post.h"

#include <algorithm>
#include <cmath>

namespace toehold::resistance::steel {
namespace {

/// Integral of the distance from the axis over a hole's width, in2.
double first_moment_in2(const PostHole& hole) {
    const double at_in = std::abs(hole.across_in), half_in = 0.5 * hole.diameter_in;
    return at_in >= half_in ? hole.diameter_in * at_in : at_in * at_in + half_in * half_in;
}

double share(double lost_in3, double whole_in3) { return std::clamp(1.0 - lost_in3 / whole_in3, 0.0, 1.0); }

/// F13.1: what the tension wall leaves of F_y Z.
double at_rupture(const TubeShape& post, const TubeSection& section, double yield_psi, double ultimate_psi,
                  double drilled_in) {
    constexpr double usual_yield_ratio = 0.8, yield_factor = 1.1;
    const double left = std::max(0.0, 1.0 - drilled_in / post.width_in);
    const double factor = yield_psi / ultimate_psi <= usual_yield_ratio ? 1.0 : yield_factor;
    if (ultimate_psi * left >= factor * yield_psi) return 1.0;
    return ultimate_psi * left * section.section_x_in3 / (yield_psi * section.plastic_x_in3);
}

}  // namespace

LeftAtHoles left_at_holes(const TubeShape& post, bool solid, double wall_in, const TubeSection& section,
                          double yield_psi, double ultimate_psi, std::span<const PostHole> holes) {
    double drilled_in = 0.0, moment_in2 = 0.0;
    for (const PostHole& hole : holes) {
        drilled_in += hole.diameter_in;
        moment_in2 += first_moment_in2(hole);
    }
    if (!(drilled_in > 0.0)) return {};
    if (solid)
        return {share(drilled_in * post.depth_in * post.depth_in / 4.0, section.plastic_x_in3),
                share(moment_in2 * post.depth_in, section.plastic_y_in3)};
    const double net_x = share(drilled_in * wall_in * (post.depth_in - wall_in), section.plastic_x_in3);
    return {std::min(net_x, at_rupture(post, section, yield_psi, ultimate_psi, drilled_in)),
            share(2.0 * wall_in * moment_in2, section.plastic_y_in3)};
}

}  // namespace toehold::resistance::steel
