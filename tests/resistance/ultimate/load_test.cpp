// A load test by IBC 2018 1709.3.1 (its text read in public copies), its steps as a table, and the tests of 2005.
#include "resistance/ultimate/load_test.h"

#include "resistance/ultimate/guard_tests.h"
#include "resistance/ultimate/protocol.h"
#include "support/compare.h"

#include <stdexcept>

using namespace toehold::resistance::ultimate;

TEST_CASE("Three quarters of the movement must go, and exactly that is enough", "[published]") {
    CHECK_CLOSE(recovered_share(2.0, 0.3), 0.85, 1e-12, 0.0);
    CHECK(recovers(2.0, 0.5));
    CHECK(recovers(0.3, 0.075));
    CHECK_FALSE(recovers(2.0, 0.51));
    CHECK_CLOSE(recovered_share(0.05, 0.01), 0.8, 1e-12, 0.0);
    CHECK(recovered_share(1.5, 0.0) == 1.0);
    CHECK(recovered_share(1.5, 1.5) == 0.0);
    CHECK_FALSE(recovers(2.0, 0.500001));
    CHECK_THROWS_AS(recovered_share(0.0, 0.0), std::invalid_argument);
    CHECK_THROWS_AS(recovered_share(1.0, 1.1), std::invalid_argument);
    CHECK_THROWS_AS(recovered_share(1.0, -0.1), std::invalid_argument);
}

TEST_CASE("A guard of 200 lb is loaded again to 500 lb, or to 2.5 times what moves it too far", "[published]") {
    CHECK_CLOSE(reload_lb(200.0), 500.0, 1e-12, 0.0);
    CHECK_CLOSE(reload_lb(200.0, 150.0), 375.0, 1e-12, 0.0);
    CHECK_CLOSE(reload_lb(200.0, 260.0), 500.0, 1e-12, 0.0);
    CHECK_THROWS_AS(reload_lb(0.0), std::invalid_argument);
    CHECK_THROWS_AS(reload_lb(200.0, 0.0), std::invalid_argument);
}

TEST_CASE("The least of three loads is what a tested guard may be used for", "[published]") {
    CHECK_CLOSE(allowable_lb({500.0}), 200.0, 1e-12, 0.0);
    CHECK_CLOSE(allowable_lb({500.0, 450.0}), 180.0, 1e-12, 0.0);
    CHECK_CLOSE(allowable_lb({500.0, 490.0, 170.0}), 170.0, 1e-12, 0.0);
    CHECK_THROWS_AS(allowable_lb({0.0}), std::invalid_argument);
    CHECK_THROWS_AS(allowable_lb({500.0, -1.0}), std::invalid_argument);
    CHECK_THROWS_AS(allowable_lb({500.0, std::nullopt, 0.0}), std::invalid_argument);
}

TEST_CASE("The building code's steps run from twice the load for a day to what may be used", "[published]") {
    const Protocol& code = protocols().front();
    REQUIRE(code.procedure == Procedure::building_code);
    REQUIRE(code.steps.size() == 6);
    CHECK(code.steps[0].times_design == 2.0);
    CHECK(code.steps[1].action == Action::hold);
    CHECK(code.steps[1].least_seconds == 86400.0);
    CHECK(code.steps[3].least_recovered == 0.75);
    CHECK(code.steps[4].times_design == 2.5);
    CHECK(code.steps[5].action == Action::find_allowable);
}

TEST_CASE("A guard's acceptance test takes ten seconds to its load and a minute on it", "[published]") {
    // A laboratory's report of 2015, by AC273 4.2.1.
    const Protocol& guards = protocols()[1];
    REQUIRE(guards.procedure == Procedure::guard_acceptance);
    REQUIRE(guards.steps.size() == 3);
    CHECK(guards.steps[0].action == Action::take_zero);
    CHECK(guards.steps[1].least_seconds == 10.0);
    CHECK(guards.steps[2].least_seconds == 60.0);
    CHECK(guards.steps[2].times_design == 2.5);
}

TEST_CASE("Of the standards tested by, one was withdrawn, in 2015", "[published]") {
    for (const Protocol& protocol : protocols())
        CHECK(protocol.withdrawn_year == (protocol.procedure == Procedure::metal_railings ? 2015 : 0));
}

TEST_CASE("Every procedure has its row in order, and steps only where they were read", "[property]") {
    for (std::size_t row = 0; row < protocols().size(); ++row) {
        const Protocol& protocol = protocols()[row];
        CHECK(static_cast<std::size_t>(protocol.procedure) == row);
        CHECK(protocol.steps.empty() == protocol.seen_in.empty());
        for (const ProtocolStep& step : protocol.steps) {
            CHECK_FALSE(step.clause.empty());
            CHECK(step.seen == Seen::in_text);
        }
    }
    CHECK(protocols().back().procedure == Procedure::metal_railing_anchorage);
}

TEST_CASE("The posts of 2005 carried 35 and 47 percent of the 500 lb aimed at", "[published]") {
    // The percentages are printed beside the means (35 and 47, cut off); none of the posts would have passed.
    REQUIRE(guard_post_tests().size() == 2);
    CHECK_CLOSE(100.0 * guard_post_tests()[0].mean_lb / guard_test_aim_lb, 35.0, 0.0, 1.0);
    CHECK_CLOSE(100.0 * guard_post_tests()[1].mean_lb / guard_test_aim_lb, 47.0, 0.0, 1.0);
    for (const GuardPostTest& test : guard_post_tests()) {
        CHECK(test.specimens == 5);
        CHECK(test.least_lb < test.mean_lb);
        CHECK(test.mean_lb < test.most_lb);
        CHECK(allowable_lb({test.mean_lb, test.mean_lb}) < 200.0);
    }
    CHECK(guard_post_tests()[0].least_lb == 146.0);
    CHECK(guard_post_tests()[0].most_lb == 211.0);
    CHECK(guard_post_tests()[1].least_lb == 217.0);
    CHECK(guard_post_tests()[1].most_lb == 248.0);
    CHECK(guard_post_tests()[1].movement_at_200_lb_in == 4.4);
    // 4.4 in at 200 lb is more than a twelfth of the height.
    CHECK(guard_post_tests()[1].movement_at_200_lb_in.value_or(0.0) > guard_test_height_in / 12.0);
}
