#include "mechanics/sampling/normal_distribution.h"

#include <array>
#include <cmath>
#include <numbers>
#include <stdexcept>

namespace toehold::mechanics {
namespace {

/// Of a polynomial of the seventh degree, the highest power first.
using Coefficients = std::array<double, 8>;

// Numerators and denominators of AS 241: about the middle, in the tails, and far out.
constexpr Coefficients near_above{2.5090809287301226727e+3, 3.3430575583588128105e+4, 6.7265770927008700853e+4,
                                  4.5921953931549871457e+4, 1.3731693765509461125e+4, 1.9715909503065514427e+3,
                                  1.3314166789178437745e+2, 3.3871328727963666080e+0};
constexpr Coefficients near_below{
    5.2264952788528545610e+3, 2.8729085735721942674e+4, 3.9307895800092710610e+4, 2.1213794301586595867e+4,
    5.3941960214247511077e+3, 6.8718700749205790830e+2, 4.2313330701600911252e+1, 1.0};
constexpr Coefficients tail_above{7.74545014278341407640e-4, 2.27238449892691845833e-2, 2.41780725177450611770e-1,
                                  1.27045825245236838258e+0, 3.64784832476320460504e+0, 5.76949722146069140550e+0,
                                  4.63033784615654529590e+0, 1.42343711074968357734e+0};
constexpr Coefficients tail_below{
    1.05075007164441684324e-9, 5.47593808499534494600e-4, 1.51986665636164571966e-2, 1.48103976427480074590e-1,
    6.89767334985100004550e-1, 1.67638483018380384940e+0, 2.05319162663775882187e+0, 1.0};
constexpr Coefficients far_above{2.01033439929228813265e-7, 2.71155556874348757815e-5, 1.24266094738807843860e-3,
                                 2.65321895265761230930e-2, 2.96560571828504891230e-1, 1.78482653991729133580e+0,
                                 5.46378491116411436990e+0, 6.65790464350110377720e+0};
constexpr Coefficients far_below{
    2.04426310338993978564e-15, 1.42151175831644588870e-7, 1.84631831751005468180e-5, 7.86869131145613259100e-4,
    1.48753612908506148525e-2,  1.36929880922735805310e-1, 5.99832206555887937690e-1, 1.0};

double polynomial(const Coefficients& coefficients, double x) {
    double value = 0.0;
    for (const double coefficient : coefficients) value = value * x + coefficient;
    return value;
}

double ratio(const Coefficients& above, const Coefficients& below, double x) {
    return polynomial(above, x) / polynomial(below, x);
}

}  // namespace

double normal_probability(double z) { return 0.5 * std::erfc(-z / std::numbers::sqrt2); }

double normal_quantile(double probability) {
    if (!(probability > 0.0 && probability < 1.0))
        throw std::invalid_argument("a normal quantile needs a probability between 0 and 1");
    constexpr double middle = 0.425, tail_begins = 1.6, far_out = 5.0;
    const double from_half = probability - 0.5;
    if (std::abs(from_half) <= middle)
        return from_half * ratio(near_above, near_below, middle * middle - from_half * from_half);
    const double outside = from_half < 0.0 ? probability : 1.0 - probability;
    const double depth = std::sqrt(-std::log(outside));
    const double size = depth <= far_out ? ratio(tail_above, tail_below, depth - tail_begins)
                                         : ratio(far_above, far_below, depth - far_out);
    return std::copysign(size, from_half);
}

}  // namespace toehold::mechanics
