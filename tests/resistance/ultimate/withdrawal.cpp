// Mean withdrawal loads against printed examples, the handbook's own second units, its rule for the penetration that
// breaks a lag screw, and the NDS values that are a fifth of them.
#include "resistance/ultimate/withdrawal.h"

#include "resistance/wood/withdrawal.h"
#include "support/compare.h"

#include <cmath>
#include <numbers>

using namespace toehold::resistance;
using toehold::test::prints_as;

namespace {

/// The NDS's G of a wood of this G at 12 percent moisture.
double assigned(double gravity_at_12) { return gravity_at_12 / ultimate::gravity_at_12_percent(1.0); }

constexpr double newtons = 4.4482216, millimetres = 25.4;

double tensile_lb(double root_in) { return ultimate::lag_tensile_psi * 0.25 * std::numbers::pi * root_in * root_in; }

}  // namespace

TEST_CASE("G at 12 percent moisture is 0.95 of the assigned one", "[published]") {
    // Wood Handbook 2010, chapter 8, and FPL-093: 7850 and 6900 for one nail.
    CHECK(prints_as(ultimate::gravity_at_12_percent(1.0), 0.95, 0.01));
    CHECK_CLOSE(7850.0 * std::pow(ultimate::gravity_at_12_percent(0.5), 2.5), 6900.0 * std::pow(0.5, 2.5), 1e-12, 0.0);
}

TEST_CASE("A No. 8 wood screw in G 0.70 comes out at 1262 lb per inch", "[published]") {
    // A public woodworking page that works the handbook's equation out.
    CHECK(prints_as(ultimate::wood_screw_mean_lb_per_in(assigned(0.70), 0.164), 1262.0, 1.0));
}

TEST_CASE("The lag screw's and the nail's equations in newtons and millimetres say the same", "[published]") {
    // 125.4 G^(3/2) D^(3/4) L and 54.12 G^(5/2) D L, printed beside 8100 and 7850 on public pages.
    const double lag = ultimate::lag_mean_lb_per_in(assigned(1.0), 1.0) * newtons / std::pow(millimetres, 1.75);
    CHECK(prints_as(lag, 125.4, 0.1));
    const double nail = ultimate::nail_mean_lb_per_in(assigned(1.0), 1.0) * newtons / (millimetres * millimetres);
    CHECK_CLOSE(nail, 54.12, 2e-4, 0.0);
}

TEST_CASE("A lag screw breaks in tension at about the penetrations the handbook gives", "[published]") {
    // Chapter 8 (read in a public copy): about 7 diameters of thread over G 0.61, 10 to 12 under G 0.42 develop
    // approximately its tensile strength. That is for the middle sizes: a 1/4 in screw needs a quarter less, one of
    // 5/8 in a quarter more. Root diameters by ASME B18.2.1.
    struct Size {
        double diameter_in, root_in;
    };
    for (const Size& size : {Size{0.3125, 0.227}, Size{0.375, 0.265}, Size{0.5, 0.371}}) {
        INFO("diameter " << size.diameter_in);
        const double dense = tensile_lb(size.root_in) / ultimate::lag_mean_lb_per_in(assigned(0.61), size.diameter_in) /
                             size.diameter_in;
        const double light = tensile_lb(size.root_in) / ultimate::lag_mean_lb_per_in(assigned(0.42), size.diameter_in) /
                             size.diameter_in;
        CHECK_CLOSE(dense, 7.0, 0.2, 0.0);
        CHECK_CLOSE(light, 11.0, 0.2, 0.0);
    }
}

TEST_CASE("The mean of a nail is five times its NDS value, as public notes say", "[published]") {
    for (const double gravity : {0.42, 0.50, 0.55})
        CHECK_CLOSE(ultimate::nail_mean_lb_per_in(gravity, 0.162), 5.0 * nail_withdrawal_lb_per_in(gravity, 0.162),
                    1e-12, 0.0);
}

TEST_CASE("The means of lag and wood screws are 4.17 and 4.97 times their NDS values", "[property]") {
    for (const double gravity : {0.36, 0.55}) {
        CHECK_CLOSE(ultimate::lag_mean_lb_per_in(gravity, 0.5) / lag_withdrawal_lb_per_in(gravity, 0.5), 4.165, 1e-3,
                    0.0);
        CHECK_CLOSE(ultimate::wood_screw_mean_lb_per_in(gravity, 0.19) / wood_screw_withdrawal_lb_per_in(gravity, 0.19),
                    4.969, 1e-3, 0.0);
    }
}

TEST_CASE("Each mean grows with the power of density that it states", "[property]") {
    const double up = 1.1;
    CHECK_CLOSE(ultimate::lag_mean_lb_per_in(0.5 * up, 0.5) / ultimate::lag_mean_lb_per_in(0.5, 0.5),
                std::pow(up, ultimate::lag_density_power), 1e-12, 0.0);
    CHECK_CLOSE(ultimate::wood_screw_mean_lb_per_in(0.5 * up, 0.2) / ultimate::wood_screw_mean_lb_per_in(0.5, 0.2),
                std::pow(up, ultimate::wood_screw_density_power), 1e-12, 0.0);
    CHECK_CLOSE(ultimate::nail_mean_lb_per_in(0.5 * up, 0.2) / ultimate::nail_mean_lb_per_in(0.5, 0.2),
                std::pow(up, ultimate::nail_density_power), 1e-12, 0.0);
}
