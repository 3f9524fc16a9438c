// What the least of the deck's load holds down of an uplift, and what all of it adds to a downward force.
#include "checks/connection/connection.h"
#include "checks/member/framing_example.h"
#include "checks/run_check.h"
#include "support/compare.h"

using namespace toehold;

// ASCE 7-16 2.4.1: 0.6 D counters an uplift; D + L presses down. No published example exists; by hand.
TEST_CASE("Six tenths of the dead load counters an uplift at a joist's support", "[closed-form]") {
    const catalog::Resolved resolved = test::framed_example();
    demand::Demand demand = test::with_actions(resolved, 2, {test::actions(1.0, 0.0, 0.0, 0.0, 0.0)});
    demand.framing->deck.emplace();
    demand.framing->deck->holds_down_lb.assign(demand.framing->supports.size(), 60.0);
    demand.framing->deck->most_down_lb.assign(demand.framing->supports.size(), 500.0);
    const checks::CheckInput input{resolved, demand};
    const checks::EndPlace place = checks::end_places(input).front();
    demand::SupportReaction& reaction = demand.framing->states[0].reactions.at(place.index);
    reaction.up_lb = 200.0;
    CHECK_CLOSE(checks::forces_at(input, place, 0).up_lb, 140.0, 1e-12, 0.0);
    CHECK_CLOSE(checks::forces_at(input, place, 0).down_lb, 300.0, 1e-12, 0.0);
    reaction.up_lb = 40.0;
    CHECK(checks::forces_at(input, place, 0).up_lb == 0.0);
    reaction.up_lb = -100.0;
    CHECK(checks::forces_at(input, place, 0).up_lb == -100.0);
    CHECK_CLOSE(checks::forces_at(input, place, 0).down_lb, 600.0, 1e-12, 0.0);
    demand.framing->deck.reset();
    CHECK(checks::forces_at(input, place, 0).down_lb == 100.0);
}

TEST_CASE("A joist's checks read its actions with the deck's load where there is one", "[unit]") {
    catalog::Resolved resolved = test::framed_example();
    on_deck(resolved.detail).layers.decking.reset();  // under boards the joist is held otherwise
    demand::Demand demand = test::with_actions(resolved, 2, {test::actions(1000.0, 0.0, 50.0, 0.0, 0.0)});
    const double alone = test::run_check("member-bending", resolved, demand).at(0).ratio;
    demand.framing->states[0].with_deck = demand.framing->states[0].members;
    demand.framing->states[0].with_deck.at(2).vertical_moment_lb_in = 3000.0;
    CHECK_CLOSE(test::run_check("member-bending", resolved, demand).at(0).ratio, 3.0 * alone, 1e-9, 0.0);
}
