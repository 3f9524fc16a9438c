// The deck's own load on joists between a ledger and a beam with an overhang, by the closed form of that beam.
#include "demand/framing/deck.h"

#include "demand/framing/find_framing.h"
#include "support/compare.h"
#include "support/example.h"

using namespace toehold;

namespace {

const model::ReportedConnector hanger{"hardware", "test value", 1000.0, 1000.0, 400.0, 1.5};

/// Joists at x = -8 and 8 in, from a ledger at y = -96 over a beam at -12 to the end at 12; no load but what is given.
catalog::Resolved on_joists() {
    catalog::Resolved resolved = test::example_resolved();
    model::Framing& framing = resolved.detail.framing;
    framing.joists->from_in = -96.0;
    framing.joists->to_in = 12.0;
    framing.supports = {{"S1", model::JoistSupport::Kind::ledger, -96.0, 0.0, hanger},
                        {"S2", model::JoistSupport::Kind::beam, -12.0, 3.5, hanger}};
    framing.deck = {10.0, 40.0};
    return resolved;
}

std::size_t joist(const catalog::Resolved& resolved, const std::string& id) {
    return model::find_member(resolved.detail.framing, id).value();
}

}  // namespace

TEST_CASE("A joist carries half a bay on each side, and as much outside the last one", "[unit]") {
    model::Framing framing = on_joists().detail.framing;
    CHECK(demand::tributary_width_in(framing, 0) == 16.0);
    framing.joists->members = {{"J1", -12.0}, {"J2", 0.0}, {"J3", 20.0}};
    CHECK(demand::tributary_width_in(framing, 0) == 12.0);
    CHECK(demand::tributary_width_in(framing, 1) == 16.0);
    CHECK(demand::tributary_width_in(framing, 2) == 20.0);
    framing.joists->members = {{"J1", 0.0}};
    CHECK(demand::tributary_width_in(framing, 0) == 16.0);
}

// w = 50 psf x 16 in = 5.5556 lb/in over 84 in and 24 in beyond: R at the beam w 108 x 54/84, at the ledger the rest;
// moment over the beam w 24^2/2, in the span R^2/(2 w), at the beam's inner face a shear of w 84 - R.
TEST_CASE("The deck alone bends a joist as a beam with an overhang", "[closed-form]") {
    const catalog::Resolved resolved = on_joists();
    const demand::Demand demand = test::example_demand(resolved, {}, {});
    REQUIRE(demand.framing);
    REQUIRE(demand.framing->deck);
    const double w = 50.0 * 16.0 / 144.0;
    const double at_beam = w * 108.0 * 54.0 / 84.0, at_ledger = w * 108.0 - at_beam;
    const demand::MemberActions& actions = demand.framing->deck->members.at(joist(resolved, "J1"));
    CHECK_CLOSE(actions.vertical_moment_lb_in, at_ledger * at_ledger / (2.0 * w), 0.01, 0.0);
    CHECK_CLOSE(actions.vertical_shear_lb, w * 84.0 - at_ledger, 0.01, 0.0);
    double held_down = 0.0, pressed = 0.0;
    for (std::size_t index = 0; index < demand.framing->supports.size(); ++index) {
        if (demand.framing->supports[index].joist_support != std::size_t{1}) continue;
        held_down = demand.framing->deck->holds_down_lb.at(index);
        pressed = demand.framing->deck->most_down_lb.at(index);
    }
    CHECK_CLOSE(pressed, at_beam, 1e-3, 0.0);
    CHECK_CLOSE(held_down, 0.6 * 10.0 / 50.0 * at_beam, 1e-3, 0.0);
}

// ASCE 7-16 2.3.1: 1.2 D + 1.6 L = 76 psf against 50; 0.9 D.
TEST_CASE("Under LRFD the deck's load has the factors of its combinations", "[published]") {
    catalog::Resolved resolved = on_joists();
    const double allowable =
        test::example_demand(resolved, {}, {}).framing->deck->members.at(joist(resolved, "J1")).vertical_moment_lb_in;
    resolved.detail.basis.method = model::Method::lrfd;
    const demand::Demand factored = test::example_demand(resolved, {}, {});
    CHECK_CLOSE(factored.framing->deck->members.at(joist(resolved, "J1")).vertical_moment_lb_in,
                allowable * 76.0 / 50.0, 1e-9, 0.0);
    demand::LoadCase wind;
    wind.duration = demand::LoadDuration::wind;
    wind.wind_lb = 100.0;
    CHECK(demand::deck_factors(resolved.detail.basis, wind).live == 0.0);
    wind.push_lb = 200.0;
    CHECK(demand::deck_factors(resolved.detail.basis, wind).live == 1.0);
    resolved.detail.basis.method = model::Method::asd;
    CHECK(demand::deck_factors(resolved.detail.basis, wind).live == 0.75);
    CHECK(demand::deck_factors(resolved.detail.basis, wind).least_dead == 0.6);
}

// Straight down at the overhang's end: R is not what a sum by size would give, but what statics give.
TEST_CASE("Guard and deck act on a joist at once, where each of them acts", "[closed-form][A10]") {
    catalog::Resolved resolved = on_joists();
    demand::Demand demand =
        test::example_demand(resolved, {}, {0.0, 400.0});  // presses B2 at y = 2.5, half a joist each
    REQUIRE(demand.framing);
    const demand::FramingState& state = demand.framing->states.at(0);
    const std::size_t at = joist(resolved, "J1");
    // Over the beam: 200 lb x 14.5 in from the guard and w 24^2/2 from the deck, both hogging.
    const double guard = 200.0 * 14.5, deck = 50.0 * 16.0 / 144.0 * 288.0;
    CHECK_CLOSE(state.members.at(at).vertical_moment_lb_in, guard, 1e-3, 0.0);
    const double over_beam = guard + deck;
    const double w = 50.0 * 16.0 / 144.0;
    const double ledger = (w * 108.0 * 30.0 - guard) / 84.0;  // moments about the beam: the load's centre is 30 in off
    const double span = ledger * ledger / (2.0 * w);
    CHECK_CLOSE(state.with_deck.at(at).vertical_moment_lb_in, std::max(over_beam, span), 0.01, 0.0);
}

// IRC Table R301.5: decks 40 psf. IBC 2021 Table 1607.1 item 5: 1.5 x the area served, at most 100 psf.
TEST_CASE("Where the file gives no deck load the code's is taken and said", "[published][A10]") {
    model::BaseDetail detail = on_joists().detail;
    detail.framing.deck = {};
    CHECK(demand::deck_load(detail).dead_psf == 10.0);
    CHECK(demand::deck_load(detail).live_psf == 100.0);
    CHECK(demand::deck_load(detail).assumptions.size() == 2);
    detail.guard.occupancy = model::Occupancy::one_and_two_family;
    CHECK(demand::deck_load(detail).live_psf == 60.0);
    detail.basis.code = model::BuildingCode::irc_2018;
    CHECK(demand::deck_load(detail).live_psf == 40.0);
    detail.framing.deck = {12.0, 50.0};
    CHECK(demand::deck_load(detail).live_psf == 50.0);
    CHECK(demand::deck_load(detail).assumptions.empty());
}

TEST_CASE("Joists whose ends are not described carry no deck load in the checks", "[unit]") {
    const catalog::Resolved resolved = test::example_resolved();
    const demand::Demand demand = test::example_demand(resolved, {100.0, 0.0, 0.0}, {});
    REQUIRE(demand.framing);
    CHECK_FALSE(demand.framing->deck);
    CHECK(demand.framing->states.at(0).with_deck.empty());
}
