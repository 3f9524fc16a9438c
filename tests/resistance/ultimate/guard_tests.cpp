// The guard posts of 2005 against the means used here, as far as statics goes, and no farther: these posts stood at the
// side of a band, which splits, pries and rolls; none of that is in a mean of screws pulled straight.
#include "resistance/ultimate/guard_tests.h"

#include "resistance/ultimate/withdrawal.h"
#include "resistance/wood/connection_factors.h"
#include "support/compare.h"

using namespace toehold::resistance;
using namespace toehold::resistance::ultimate;

namespace {

double wet_lb_per_in() {
    return screw_withdrawal_wet_service(ConnectionMoisture::wet) *
           lag_mean_lb_per_in(guard_test_gravity, guard_test_screw_in);
}

}  // namespace

TEST_CASE("Two screws of a post that turns about the band's edge come out at a push by hand", "[closed-form]") {
    // 8100 (0.95 x 0.55)^1.5 0.5^0.75 = 1,819 lb/in; 0.7 of it on 1.5 in: 1,910 lb. Moment of both screws about the
    // edge when the upper one lets go: 1,910 (5.25 + 2^2/5.25) = 11,484 lb in, over 44.25 in.
    CHECK_CLOSE(1.5 * wet_lb_per_in(), 1910.0, 2e-3, 0.0);
    CHECK_CLOSE(push_by_withdrawal_lb(wet_lb_per_in()), 11484.0 / 44.25, 2e-3, 0.0);
    CHECK_CLOSE(push_by_withdrawal_lb(100.0, {4.0, 0.0, 1.0, 40.0}), 10.0, 1e-12, 0.0);
}

TEST_CASE("The lag screws of 2005 carried two thirds of what their mean withdrawal would give", "[published]") {
    // No agreement is claimed: where the screws stood was not seen. The tests' mean lies below the statics of the mean,
    // by less than the factor of 4.17 that lies between that mean and the design value, and so does their weakest.
    const GuardPostTest& lags = guard_post_tests().front();
    const double foretold_lb = push_by_withdrawal_lb(wet_lb_per_in());
    CHECK_CLOSE(lags.mean_lb / foretold_lb, 0.69, 0.01, 0.0);
    CHECK(lags.most_lb < foretold_lb);
    CHECK(lags.least_lb > foretold_lb / 4.17);
    // Screws nearer each other explain it as well: 3.8 and 1 in above the edge, both agree.
    AssumedScrews low;
    low.upper_in = 3.8;
    low.lower_in = 1.0;
    CHECK_CLOSE(push_by_withdrawal_lb(wet_lb_per_in(), low), lags.mean_lb, 0.03, 0.0);
}
