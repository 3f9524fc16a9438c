// Checks under loads that last differently long, and how far the code's load may grow.
#include "review/run_checks.h"

#include "review/proof_factor.h"
#include "review/review.h"
#include "support/compare.h"
#include "support/example.h"

#include <algorithm>

using namespace toehold;

namespace {

const checks::CheckResult& of(const std::vector<checks::CheckResult>& results, const std::string& id) {
    const auto found =
        std::find_if(results.begin(), results.end(), [&](const auto& result) { return result.id == id; });
    REQUIRE(found != results.end());
    return *found;
}

/// Two states: the guard's load and a wind, each with this tension on every anchor.
demand::Demand pulled(const catalog::Resolved& resolved, double by_guard_lb, double by_wind_lb) {
    demand::Demand demand = test::example_demand(resolved, {by_guard_lb, 0.0, 0.0}, {});
    demand::LoadCase wind = demand.cases[0];
    wind.id = "wind";
    wind.duration = demand::LoadDuration::wind;
    demand.cases.push_back(wind);
    demand.states.push_back(demand.states[0]);
    demand.states[1].load_case = 1;
    for (demand::AnchorForce& force : demand.states[1].anchors) force.tension_lb = by_wind_lb;
    if (demand.framing) demand.framing->states.push_back(demand.framing->states.at(0));
    for (demand::State& state : demand.states) state.rigid_tension_lb.assign(state.anchors.size(), 0.0);
    return demand;
}

}  // namespace

// NDS 2018 Table 2.3.2: C_D 1.6 for ten minutes. Withdrawal of the example's lag: W' at C_D 1.0, 1.6 W' under wind.
TEST_CASE("The larger ratio decides and not the larger force", "[closed-form]") {
    const catalog::Resolved resolved = test::example_resolved();
    const double allowable =
        of(review::run_checks(resolved, test::example_demand(resolved, {100.0, 0.0, 0.0}, {})), "anchor-withdrawal")
            .capacity;
    const auto calm = of(review::run_checks(resolved, pulled(resolved, 1000.0, 1500.0)), "anchor-withdrawal");
    CHECK_CLOSE(calm.demand, 1000.0, 1e-9, 0.0);
    CHECK_CLOSE(calm.ratio, 1000.0 / allowable, 1e-9, 0.0);
    CHECK(format::english(calm.under) == "the guard's load");
    const auto windy = of(review::run_checks(resolved, pulled(resolved, 1000.0, 1700.0)), "anchor-withdrawal");
    CHECK_CLOSE(windy.demand, 1700.0, 1e-9, 0.0);
    CHECK_CLOSE(windy.capacity, 1.6 * allowable, 1e-9, 0.0);
    CHECK_CLOSE(windy.ratio, 1700.0 / (1.6 * allowable), 1e-9, 0.0);
    CHECK(format::english(windy.under) == "wind, ten minutes");
}

TEST_CASE("Loads of one duration are judged at once, and no result says under which", "[unit]") {
    const catalog::Resolved resolved = test::example_resolved();
    for (const auto& result : review::run_checks(resolved, test::example_demand(resolved, {100.0, 0.0, 0.0}, {})))
        CHECK(result.under.empty());
}

// The proof factor is held to a review under the grown load itself, which the file may state beside the code's.
TEST_CASE("Under the proof factor's load the first strength stands at its limit", "[property]") {
    catalog::Resolved resolved = test::example_resolved();
    resolved.detail.guard.occupancy = model::Occupancy::one_and_two_family;
    resolved.detail.basis.plate = model::PlateBehaviour::rigid;
    for (auto& block : resolved.detail.framing.blocks)
        block.from_end.connection = block.to_end.connection =
            model::ReportedConnector{"angle both sides", "test value", 1200.0, 1500.0, 600.0, 3.5};
    const demand::Outcome outcome = demand::find_demand(resolved);
    REQUIRE(outcome.demand);
    const auto proof = review::proof_factor(resolved, *outcome.demand, review::run_checks(resolved, *outcome.demand));
    REQUIRE(proof);
    CHECK(proof->concentrated_lb == 200.0);
    resolved.detail.loads.concentrated->push_lb = 200.0 * proof->multiple;
    // A push below 200 lb would be covered by the code's.
    if (proof->multiple > 1.0) {
        const review::Review grown = review::evaluate(resolved, "");
        double worst = 0.0;
        for (const auto& result : grown.checks) {
            if (result.unit != "in" && result.status != checks::Status::missing_evidence)
                worst = std::max(worst, result.ratio);
        }
        CHECK_CLOSE(worst, 1.0, 0.01, 0.0);
    } else {
        const review::Review now = review::evaluate(resolved, "");
        CHECK(now.verdict != review::Verdict::adequate);
    }
}

TEST_CASE("A preload leaves no proof factor", "[unit]") {
    catalog::Resolved resolved = test::example_resolved();
    on_deck(resolved.detail).anchors[0].preload_lb = 1000.0;
    CHECK_FALSE(review::proof_factor(resolved, test::example_demand(resolved, {100.0, 0.0, 0.0}, {}), {}));
}
