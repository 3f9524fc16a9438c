#include "resistance/wood/gap_yield.h"

#include <cmath>

namespace toehold::resistance {
namespace {

struct Quadratic {
    double a = 0.0, b = 0.0, c = 0.0;
};

/// The root that is not negative; a > 0, c <= 0. Written so that nothing cancels where b is large (a wide gap).
double positive_root(const Quadratic& q) { return -2.0 * q.c / (q.b + std::sqrt(q.b * q.b - 4.0 * q.a * q.c)); }

}  // namespace

std::vector<ModeValue> single_shear_with_gap(const DowelConnection& connection, const ReductionTerms& reduction) {
    require_sound(connection);
    const DowelConnection& c = connection;
    const double main = c.main_bearing_psi * c.diameter_in;
    const double side = c.side_bearing_psi * c.diameter_in;
    const double moment = c.bending_yield_psi * c.diameter_in * c.diameter_in * c.diameter_in / 6.0;
    const double lm = c.main_bearing_in;
    const double ls = c.side_bearing_in;
    // A member in which the dowel turns stiff gives 1/(4q), l/2 and q l^2/4; one in which it yields 1/(2q), 0 and M.
    const Quadratic two{0.25 / side + 0.25 / main, 0.5 * ls + c.gap_in + 0.5 * lm,
                        -0.25 * side * ls * ls - 0.25 * main * lm * lm};
    const Quadratic three_main{0.5 / side + 0.25 / main, c.gap_in + 0.5 * lm, -moment - 0.25 * main * lm * lm};
    const Quadratic three_side{0.25 / side + 0.5 / main, 0.5 * ls + c.gap_in, -0.25 * side * ls * ls - moment};
    const Quadratic four{0.5 / side + 0.5 / main, c.gap_in, -2.0 * moment};
    return {{YieldMode::Im, main * lm / reduction.mode_I},
            {YieldMode::Is, side * ls / reduction.mode_I},
            {YieldMode::II, positive_root(two) / reduction.mode_II},
            {YieldMode::IIIm, positive_root(three_main) / reduction.mode_III_IV},
            {YieldMode::IIIs, positive_root(three_side) / reduction.mode_III_IV},
            {YieldMode::IV, positive_root(four) / reduction.mode_III_IV}};
}

}  // namespace toehold::resistance
