// One leg of a steel angle on southern pine, G 0.55, dry and under C_D 1.0 as the file states.
#include "checks/connection/side_angle_leg.h"

#include "checks/run_check.h"
#include "support/compare.h"
#include "support/example.h"

#include <algorithm>

using namespace toehold;
using checks::AngleLeg;
using checks::LegValue;

namespace {

using Kind = model::SideAngles::Kind;

AngleLeg leg(double end_in) { return {format::verbatim("leg"), "m", 0.55, 1.4e6, 3.5, 2.0, end_in}; }

/// Two 3/8 x 3 in lag screws 1 3/4 in apart in 1/8 in of steel.
model::SideAngles lag_screws() { return {2, 0.125, "steel-a36", Kind::lag_screw, 0.375, 3.0, 2, 1.75, 1.25}; }

LegValue lateral(double end_in) {
    const catalog::Resolved resolved = test::example_resolved();
    return checks::leg_lateral(lag_screws(), on_deck(resolved).plate_metal, leg(end_in), resolved.detail.basis);
}

bool tells_of_the_end(const LegValue& value) {
    return std::any_of(value.steps.begin(), value.steps.end(),
                       [](const checks::Step& step) { return step.symbol == "e_m"; });
}

}  // namespace

TEST_CASE("Near the wood's end a force towards it counts more, and the steps say how much", "[published]") {
    // NDS 2018 Table 12.5.1A: across the grain 4 D = 1.5 in suffice, towards the end 7 D = 2.625 in.
    CHECK_CLOSE(lateral(2.55).towards_end, 2.625 / 2.55, 1e-9, 0.0);
    CHECK(tells_of_the_end(lateral(2.55)));
    CHECK_CLOSE(lateral(2.625).towards_end, 1.0, 1e-12, 0.0);
    CHECK_FALSE(tells_of_the_end(lateral(2.625)));
}

TEST_CASE("A 3/8 in lag screw in an angle's leg counts with its root", "[memory][closed-form]") {
    // D_r = 0.69 x 3/8 = 0.25875 (from memory), F_yb 45,000, across the grain F_em = 6100 x 0.55^1.45/sqrt(3/8) = 4186,
    // 4200 rounded; F_es 1.375 x 58,000 = 79,750 on 1/8 in; R_d 3.2 x 1.25 = 4. Mode IIIs: Re 0.05266, k3 = -1 +
    // sqrt(39.98 + 62.83) = 9.139, Z = 9.139 x 0.25875 x 0.125 x 4200/(2.05266 x 4) = 151.2 lb.
    for (const checks::Step& step : lateral(0.0).steps) {
        if (step.symbol == "Z_m") CHECK_CLOSE(step.value, 151.2, 0.005, 0.0);
    }
}

TEST_CASE("Two lag screws of a leg share by the stiffness of steel and wood", "[closed-form]") {
    // NDS 2018 Eq. 11.3-1, by a script of its own: gamma = 270,000 (3/8)^1.5 = 62,003, s 1.75; wood 1.4e6 x 3.5 x 3 D,
    // steel 29e6 x 1/8 x 1 1/4.
    double group_factor = 0.0;
    for (const checks::Step& step : lateral(0.0).steps) {
        if (step.symbol == "C_g") group_factor = step.value;
    }
    CHECK_CLOSE(group_factor, 0.997919, 0.0, 1e-5);
}

TEST_CASE("A leg that holds against withdrawal gives no reason why not", "[unit]") {
    const LegValue held = checks::leg_withdrawal(lag_screws(), leg(0.0), test::example_resolved().detail.basis);
    CHECK(held.value_lb > 0.0);
    CHECK(held.why.empty());
}
