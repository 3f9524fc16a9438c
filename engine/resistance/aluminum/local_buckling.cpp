#include "resistance/aluminum/local_buckling.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>

namespace toehold::resistance::aluminum {
namespace {

/// A line from yield down to the point where the elastic curve takes over.
struct Line {
    double intercept_psi = 0.0;  ///< B
    double slope_psi = 0.0;      ///< D
    double until = 0.0;          ///< k1
    double beyond = 0.0;         ///< k2
};

/// Bp, Dp of Tables B.4.1 and B.4.2; k1 and k2 of Table B.4.3 for flat walls in compression.
Line compressed(double yield_psi, double modulus_psi, Temper temper) {
    if (temper == Temper::aged) {
        const double intercept = yield_psi * (1.0 + std::cbrt(yield_psi / 1.5e6));
        return {intercept, intercept / 10.0 * std::sqrt(intercept / modulus_psi), 0.35, 2.27};
    }
    const double intercept = yield_psi * (1.0 + std::cbrt(yield_psi / 4.4e5));
    return {intercept, intercept / 20.0 * std::sqrt(6.0 * intercept / modulus_psi), 0.50, 2.04};
}

/// Bbr, Dbr; k1 0.5 and k2 2.04 for flat walls in bending, whatever the temper.
Line bent(double yield_psi, double modulus_psi) {
    const double intercept = 1.3 * yield_psi * (1.0 + std::cbrt(yield_psi / 3.4e5));
    return {intercept, intercept / 20.0 * std::sqrt(6.0 * intercept / modulus_psi), 0.50, 2.04};
}

/// The three parts of the curve; `equivalent`: slenderness times the factor of its support.
double on_curve(const Line& line, double equivalent, double most_psi, double modulus_psi) {
    const double first = (line.intercept_psi - most_psi) / line.slope_psi;
    if (equivalent <= first) return most_psi;
    const double second = line.until * line.intercept_psi / line.slope_psi;
    if (equivalent < second) return line.intercept_psi - line.slope_psi * equivalent;
    return std::min(most_psi, line.beyond * std::sqrt(line.intercept_psi * modulus_psi) / equivalent);
}

}  // namespace

double flat_wall_psi(double slenderness, double yield_psi, double modulus_psi, Temper temper) {
    return on_curve(compressed(yield_psi, modulus_psi, temper), 1.6 * slenderness, yield_psi, modulus_psi);
}

double bent_wall_psi(double slenderness, double yield_psi, double modulus_psi) {
    return on_curve(bent(yield_psi, modulus_psi), 0.65 * slenderness, 1.5 * yield_psi, modulus_psi);
}

double round_wall_psi(double slenderness, double yield_psi, double modulus_psi, Temper temper) {
    // Bt = Fy (1 + (Fy/50,000 ksi)^(1/5)), Dt = Bt/4.5 (Bt/E)^(1/3); softened 6,500 ksi and 3.7.
    const bool aged = temper == Temper::aged;
    const double intercept = yield_psi * (1.0 + std::pow(yield_psi / (aged ? 5.0e7 : 6.5e6), 0.2));
    const double slope = intercept / (aged ? 4.5 : 3.7) * std::cbrt(intercept / modulus_psi);
    const double root = std::sqrt(slenderness);
    // The elastic curve takes over where it falls below the line.
    const double spread = 1.0 + root / 35.0;
    const double elastic = std::numbers::pi * std::numbers::pi * modulus_psi / (16.0 * slenderness * spread * spread);
    return std::clamp(std::min(intercept - slope * root, elastic), 0.0, yield_psi);
}

double tube_local_moment_lb_in(const steel::TubeShape& tube, steel::BentAbout axis, double yield_psi,
                               double modulus_psi, Temper temper) {
    const steel::TubeSection section = steel::section_as_drawn(tube);
    if (tube.round) {
        const double psi =
            round_wall_psi(0.5 * (tube.width_in - tube.wall_in) / tube.wall_in, yield_psi, modulus_psi, temper);
        return psi < yield_psi ? psi * section.section_x_in3 : std::numeric_limits<double>::infinity();
    }
    const bool about_x = axis == steel::BentAbout::x;
    const double across_in = about_x ? tube.width_in : tube.depth_in;  // the wall in compression
    const double along_in = about_x ? tube.depth_in : tube.width_in;   // the walls along the load
    const double flat_across_in = across_in - 2.0 * tube.wall_in;
    const double flat_along_in = along_in - 2.0 * tube.wall_in;
    const double web_in4 = 2.0 * tube.wall_in * std::pow(flat_along_in, 3) / 12.0;
    const double whole_in4 = about_x ? section.inertia_x_in4 : section.inertia_y_in4;
    const double flange_psi = flat_wall_psi(flat_across_in / tube.wall_in, yield_psi, modulus_psi, temper);
    const double web_psi = bent_wall_psi(flat_along_in / tube.wall_in, yield_psi, modulus_psi);
    const double to_flange_in = 0.5 * (along_in - tube.wall_in);
    const double to_web_in = 0.5 * flat_along_in;
    return flange_psi * (whole_in4 - web_in4) / to_flange_in + web_psi * web_in4 / to_web_in;
}

}  // namespace toehold::resistance::aluminum
