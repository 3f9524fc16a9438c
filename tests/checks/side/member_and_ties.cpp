// The member a post hangs on, and the ties that go past it, by hand.
#include "checks/run_check.h"
#include "checks/side/side_example.h"
#include "support/compare.h"

using namespace toehold;
using checks::Status;
using test::run_check;
using test::side_demand;
using test::side_example;
using test::step_value;

TEST_CASE("a rim that the bolts press down is taken hold of from its lower edge to the highest", "[closed-form]") {
    // d_e = 9.25 - 2 = 7.25, less than 5 d from the end: 2/3 x 175 x 1.5 x 7.25 x (7.25/9.25)^2 = 779.42 lb. Lifted,
    // from the top down to the lowest: d_e 7, 701.55 lb.
    const catalog::Resolved resolved = side_example();
    const auto of = [&](double up_lb) {
        demand::Demand demand = side_demand(resolved, {{0.0, 0.0, up_lb}, {0.0, 0.0, up_lb}});
        test::act_on_rim(demand, {0.0, 0.0, 150.0, 0.0, 0.0});
        return run_check("member-shear-at-post", resolved, demand).at(0);
    };
    const auto down = of(-100.0), up = of(100.0);
    CHECK(down.demand == 150.0);  // no more than acts in the rim
    CHECK_CLOSE(down.capacity, 779.419, 1e-5, 0.0);
    CHECK_CLOSE(up.capacity, 701.534, 1e-4, 0.0);
}

TEST_CASE("anchors that pull the rim's face must reach the middle of its width", "[closed-form]") {
    catalog::Resolved resolved = side_example();
    const demand::Demand demand = side_demand(resolved, {{900.0, 0.0, 0.0}, {0.0, 0.0, 0.0}});
    auto reach = run_check("member-tension-perp", resolved, demand).at(0);
    CHECK(reach.demand == 0.75);
    CHECK(reach.capacity == 1.5);
    for (catalog::Anchor& anchor : resolved.anchors) {
        anchor.kind = catalog::FastenerKind::lag_screw;
        anchor.length_in = 4.375;
        anchor.tip_length_in = 0.3125;
        anchor.embedment_in = 4.375 - 3.5 - 0.1875;
    }
    reach = run_check("member-tension-perp", resolved, demand).at(0);
    CHECK_CLOSE(reach.capacity, 0.6875 - 0.3125, 1e-9, 0.0);
    CHECK(reach.status == Status::fails);
    CHECK(test::says(reach.note, "far side"));
}

TEST_CASE("the shear a pull brings across the rim is horizontal", "[unit]") {
    const catalog::Resolved resolved = side_example();
    demand::Demand demand = side_demand(resolved, {{900.0, 0.0, 0.0}, {0.0, 0.0, 0.0}});
    test::act_on_rim(demand, {0.0, 0.0, 5000.0, 450.0, 0.0});
    const auto result = run_check("member-shear-at-anchors", resolved, demand).at(0);
    CHECK(result.demand == 450.0);
    // b = 9.25 in, d = d_e = 1.5 in, 5 d or more from the ends: 2/3 x 175 x 9.25 x 1.5 = 1618.75 lb.
    CHECK_CLOSE(result.capacity, 1618.75, 1e-9, 0.0);
}

TEST_CASE("a tie is held to its report, and bends its joist by its eccentricity", "[closed-form]") {
    catalog::Resolved resolved = side_example();
    model::TensionTie tie;
    tie.id = "T1";
    tie.name = "tie";
    tie.report = "test value";
    tie.below_top_in = 2.0;
    tie.tension_lb = 900.0;
    tie.deflection_in = 0.125;
    tie.into = "J1";
    tie.eccentricity_in = 1.5;
    on_side(resolved.detail).ties = {tie};
    demand::Demand demand = side_demand(resolved, {});
    demand.states.front().ties_lb = {1000.0};
    const auto pull = run_check("tie-by-report", resolved, demand).at(0);
    CHECK_CLOSE(pull.ratio, 1000.0 / 900.0, 1e-12, 0.0);
    CHECK(pull.clause == "report: test value");
    CHECK(test::link_words(pull) == "post > joist J1: tie T1");
    // 1000 x 1.5 = 1500 lb in on 9.25 x 1.5^2/6 = 3.46875 in3: 432.4 psi.
    const auto bent = run_check("tie-eccentricity", resolved, demand).at(0);
    CHECK_CLOSE(bent.demand, 1500.0 / 3.46875, 1e-9, 0.0);
    CHECK(test::link_words(bent) == "tie T1 > joist J1: pull beside the member");
    on_side(resolved.detail).ties.front().eccentricity_in = 0.0;
    CHECK(run_check("tie-eccentricity", resolved, demand).empty());
}
