// The couple of an overlap against statics written out.
#include "mechanics/overlap/overlap_couple.h"

#include "support/compare.h"

using namespace toehold;

// H 200 lb at 36 in above the bottom of 6 in: a = 36 - root(1296 - 216 + 18) = 2.86392, w = 200/(6 - 5.72783) =
// 734.845, R_u = w 3.13608 = 2304.54, R_l = 2104.54. Moments about the bottom: R_u (6 - 1.56804) - R_l 1.43196 = 7200 =
// 200 x 36.
TEST_CASE("An overlap's two forces balance the push and its moment", "[closed-form]") {
    const mechanics::OverlapCouple couple = mechanics::overlap_couple(200.0, 36.0, 6.0);
    CHECK_CLOSE(couple.lower_in, 2.86392, 1e-5, 0.0);
    CHECK_CLOSE(couple.line_lb_per_in, 734.845, 1e-5, 0.0);
    CHECK_CLOSE(couple.upper_lb - couple.lower_lb, 200.0, 1e-9, 0.0);
    CHECK_CLOSE(couple.upper_in + couple.lower_in, 6.0, 1e-12, 0.0);
    const double moment = couple.upper_lb * (6.0 - 0.5 * couple.upper_in) - couple.lower_lb * 0.5 * couple.lower_in;
    CHECK_CLOSE(moment, 7200.0, 1e-9, 0.0);
    // Elastic: 200/6 + 6 x 200 x 33/36 = 1133.3 lb/in.
    CHECK_CLOSE(couple.elastic_peak_lb_per_in, 1133.333, 1e-6, 0.0);
}

TEST_CASE("A push at the top of the overlap and one far above it", "[closed-form]") {
    // At the top: h = L: a = L (1 - root(1/2)), w = H/(L (root 2 - 1)).
    const mechanics::OverlapCouple low = mechanics::overlap_couple(100.0, 5.0, 5.0);
    CHECK_CLOSE(low.lower_in, 5.0 * (1.0 - 0.70710678), 1e-7, 0.0);
    CHECK_CLOSE(low.line_lb_per_in, 100.0 / (5.0 * 0.41421356), 1e-7, 0.0);
    // Far above: 4 M/L^2 and the elastic 6 M/L^2.
    const mechanics::OverlapCouple far = mechanics::overlap_couple(1.0, 1e5, 4.0);
    CHECK_CLOSE(far.line_lb_per_in, 4.0 * 1e5 / 16.0, 1e-4, 0.0);
    CHECK_CLOSE(far.elastic_peak_lb_per_in, 6.0 * 1e5 / 16.0, 1e-4, 0.0);
}
