// Scatter of clear wood against the species of ASTM D2555, design values of shear against the means they come from, the
// Madison curve against the NDS's load duration factors.
#include "resistance/ultimate/wood.h"

#include "support/compare.h"

#include <array>
#include <stdexcept>

using namespace toehold::resistance::ultimate;
using toehold::test::prints_as;

namespace {

/// A row of ASTM D2555-06 Table 1 (green clear wood; mean and standard deviation), read in a public copy.
struct Species {
    double bending_psi, bending_deviation, shear_psi, shear_deviation, bearing_psi, bearing_deviation, gravity,
        gravity_deviation;
};
constexpr Species baldcypress{6640, 1062, 812, 114, 403, 113, 0.43, 0.043};
constexpr Species eastern_hemlock{6420, 1027, 848, 119, 359, 101, 0.39, 0.039};
constexpr Species western_hemlock{6637, 1088, 864, 105, 282, 79, 0.42, 0.053};
constexpr Species slash_pine{8692, 1127, 964, 128, 529, 148, 0.54, 0.062};
constexpr Species white_fir{5854, 949, 756, 78, 282, 79, 0.37, 0.045};

constexpr double second = 1.0, minute = 60.0 * second, day = 24.0 * 60.0 * minute, year = 365.25 * day;

/// C_D: strength after so long over that after ten years.
double duration_factor(double seconds) { return share_left_after(seconds) / share_left_after(10.0 * year); }

}  // namespace

TEST_CASE("Species not measured have the standard's round coefficients of variation", "[published]") {
    for (const Species& one : {baldcypress, eastern_hemlock}) {
        CHECK(prints_as(one.bending_deviation / one.bending_psi, clear_bending_variation, 0.01));
        CHECK(prints_as(one.shear_deviation / one.shear_psi, clear_shear_variation, 0.01));
        CHECK(prints_as(one.bearing_deviation / one.bearing_psi, clear_bearing_variation, 0.01));
        CHECK(prints_as(one.gravity_deviation / one.gravity, density_variation, 0.01));
    }
}

TEST_CASE("Species that were measured scatter about as much", "[published]") {
    for (const Species& one : {western_hemlock, slash_pine, white_fir}) {
        CHECK_CLOSE(one.bending_deviation / one.bending_psi, clear_bending_variation, 0.20, 0.0);
        CHECK_CLOSE(one.shear_deviation / one.shear_psi, clear_shear_variation, 0.30, 0.0);
        CHECK_CLOSE(one.bearing_deviation / one.bearing_psi, clear_bearing_variation, 0.02, 0.0);
        CHECK_CLOSE(one.gravity_deviation / one.gravity, density_variation, 0.30, 0.0);
    }
}

TEST_CASE("Shear without checks leads from Fv to clear wood's 5th percentile", "[published]") {
    // Fv 150 of hem-fir (white fir among its weakest), 175 of southern pine (slash pine among its strongest): NDS
    // Supplement. D2555's 5th percentile is the mean less 1.645 deviations.
    const double white = white_fir.shear_psi - 1.645 * white_fir.shear_deviation;
    const double slash = slash_pine.shear_psi - 1.645 * slash_pine.shear_deviation;
    CHECK_CLOSE(unchecked_shear_fifth_psi(150.0), white, 0.05, 0.0);
    CHECK_CLOSE(unchecked_shear_fifth_psi(175.0), slash, 0.06, 0.0);
    CHECK(shear_fifth_psi(175.0) < unchecked_shear_fifth_psi(175.0));
}

TEST_CASE("The 5th percentile of No. 2 southern pine 2x8s lies well below their measured mean", "[published]") {
    // 292 pieces (Forest Products Journal 73(4), read): means of 39.7 MPa without pith and 36.4 with it. Fb 925 psi.
    constexpr double psi_of_mpa = 145.038;
    CHECK(bending_fifth_psi(925.0) < 0.5 * 36.4 * psi_of_mpa);
    CHECK_CLOSE(bending_fifth_psi(925.0), 1942.5, 1e-12, 0.0);
}

TEST_CASE("Bearing leads from Fc-perp to the stress that presses 0.04 in", "[memory]") {
    CHECK_CLOSE(bearing_mean_psi(565.0), 943.55, 1e-12, 0.0);
}

TEST_CASE("The Madison curve gives the NDS's load duration factors", "[published]") {
    // NDS 2018 Table 2.3.2: 1.6 ten minutes, 1.25 seven days, 1.15 two months, 1.0 ten years, 0.9 permanent.
    CHECK_CLOSE(duration_factor(10.0 * minute), 1.6, 0.01, 0.0);
    CHECK_CLOSE(duration_factor(7.0 * day), 1.25, 0.015, 0.0);
    CHECK_CLOSE(duration_factor(61.0 * day), 1.15, 0.01, 0.0);
    CHECK_CLOSE(duration_factor(50.0 * year), 0.9, 0.06, 0.0);
}

TEST_CASE("A day's hold leaves about four fifths of the strength, and seconds do not add any", "[closed-form]") {
    // 18.3 + 108.4 * 86400^-0.0464 = 82.3 percent.
    CHECK_CLOSE(share_left_after(day), 0.823, 1e-3, 0.0);
    CHECK(share_left_after(second) == 1.0);
    CHECK(share_left_after(day) < share_left_after(minute));
    CHECK_THROWS_AS(share_left_after(0.0), std::invalid_argument);
}

TEST_CASE("Strength falls with moisture from its value at 12 percent to the green one", "[memory]") {
    CHECK_CLOSE(strength_at_moisture(1390.0, 860.0, 12.0), 1390.0, 1e-12, 0.0);
    CHECK_CLOSE(strength_at_moisture(1390.0, 860.0, 25.0), 860.0, 1e-12, 0.0);
    CHECK_CLOSE(strength_at_moisture(1390.0, 860.0, 40.0), 860.0, 1e-12, 0.0);
    // Halfway in moisture: the geometric mean.
    CHECK_CLOSE(strength_at_moisture(1600.0, 900.0, 18.5), 1200.0, 1e-12, 0.0);
    CHECK_CLOSE(strength_at_moisture(0.08, 0.05, 12.0), 0.08, 1e-12, 0.0);
    CHECK_THROWS_AS(strength_at_moisture(0.0, 860.0, 15.0), std::invalid_argument);
    CHECK_THROWS_AS(strength_at_moisture(1390.0, 0.0, 15.0), std::invalid_argument);
    CHECK_THROWS_AS(strength_at_moisture(1390.0, 860.0, 8.0), std::invalid_argument);
}
