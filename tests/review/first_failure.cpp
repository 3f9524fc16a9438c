// What fails under a part of the demand's states fails under all of them: the claim on which a search rests when it
// throws a candidate away after a few pushes.
#include "review/first_failure.h"

#include "checks/at_least.h"
#include "demand/by_duration.h"
#include "demand/envelope.h"
#include "demand/sampling.h"
#include "review/run_checks.h"
#include "support/example.h"
#include "support/shipped.h"

#include <catch2/catch.hpp>

#include <algorithm>
#include <map>
#include <random>
#include <tuple>

namespace demand = toehold::demand;
namespace checks = toehold::checks;
namespace model = toehold::model;

using toehold::catalog::Resolved;
using toehold::review::first_failure;
using toehold::review::States;

namespace {

/// A rigid plate, which has every check and is quickly solved.
Resolved rigid(const std::string& name) {
    model::BaseDetail detail = toehold::test::demo_detail(name);
    detail.basis.plate = model::PlateBehaviour::rigid;
    return toehold::test::resolved_by_shipped(detail);
}

/// The demand of these states alone, in their order.
demand::Demand part_of(const demand::Demand& whole, const std::vector<std::size_t>& states) {
    demand::Demand part = whole;
    part.states.clear();
    if (part.framing) part.framing->states.clear();
    for (const std::size_t state : states) {
        part.states.push_back(whole.states[state]);
        if (part.framing) part.framing->states.push_back(whole.framing->states[state]);
    }
    demand::find_envelopes_again(part);
    return part;
}

using Name = std::tuple<std::string, std::string, std::string, std::size_t>;

/// Ratio of every result that the whole demand or a part of it bounds from below.
std::map<Name, double> bounds(const Resolved& resolved, const demand::Demand& demand, bool at_least) {
    std::map<Name, double> ratios;
    std::map<std::tuple<std::string, std::string, std::string>, std::size_t> seen;
    for (const checks::Check& check : checks::registered_checks()) {
        const checks::CheckInput input{resolved, demand};
        for (const checks::CheckResult& result :
             at_least ? checks::run_at_least(check, input) : checks::run(check, input)) {
            const auto number = seen[{result.id, model::key(result.part), result.aspect}]++;
            ratios[{result.id, model::key(result.part), result.aspect, number}] = result.ratio;
        }
    }
    return ratios;
}

}  // namespace

TEST_CASE("no check asks for less under more states", "[property]") {
    for (const char* name : {"heron-landing-lags-in-deep-blocks", "heron-landing-through-bolts"}) {
        const Resolved resolved = rigid(name);
        const demand::Outcome outcome = demand::find_demand(resolved);
        REQUIRE(outcome.demand);
        const demand::Demand& whole = *outcome.demand;
        const std::map<Name, double> all = bounds(resolved, whole, false);
        std::mt19937 chance(20261125);
        for (int trial = 0; trial < 6; ++trial) {
            std::vector<std::size_t> states;
            for (std::size_t state = 0; state < whole.states.size(); ++state) {
                if (chance() % 12 == 0) states.push_back(state);
            }
            if (states.empty()) states.push_back(0);
            for (const auto& [result, ratio] : bounds(resolved, part_of(whole, states), true)) {
                INFO(name << ": " << std::get<0>(result) << ", " << std::get<1>(result));
                const auto of_all = all.find(result);
                REQUIRE(of_all != all.end());
                CHECK(ratio <= of_all->second * (1.0 + 1e-9) + 1e-12);
            }
        }
    }
}

TEST_CASE("the first failure of the whole demand is one of the review's", "[property]") {
    for (const char* name : {"heron-landing-short-lags-in-flat-block", "heron-landing-lags-in-deep-blocks"}) {
        const Resolved resolved = rigid(name);
        const demand::Demand whole = demand::find_demand(resolved).demand.value();
        const std::vector<checks::CheckResult> results = toehold::review::run_checks(resolved, whole);
        const auto first = first_failure(resolved, whole);
        const bool any = std::any_of(results.begin(), results.end(), [](const checks::CheckResult& result) {
            return result.status != checks::Status::holds;
        });
        INFO(name);
        REQUIRE(first.has_value() == any);
        if (!first) continue;
        CHECK(std::any_of(results.begin(), results.end(), [&](const checks::CheckResult& result) {
            return result.id == first->check && result.part == first->part && result.status == first->status &&
                   result.ratio == first->ratio;
        }));
    }
}

TEST_CASE("a part of the states speaks only where its margin allows", "[unit]") {
    using toehold::test::example_demand;
    const Resolved resolved = toehold::test::example_resolved();
    // The steel of the anchors alone is looked at: its capacity does not depend on the demand.
    const auto steel = [&](double tension_lb) {
        const demand::Demand pulled = example_demand(resolved, {tension_lb, 0.0, 0.0}, {0.0, 0.0});
        for (const checks::Check& check : checks::registered_checks()) {
            if (check.id == "anchor-steel-tension") return checks::run(check, {resolved, pulled}).front();
        }
        return checks::CheckResult{};
    };
    const double capacity_lb = steel(1.0).capacity;
    REQUIRE(capacity_lb > 0.0);
    const double least = toehold::review::least_sampled_ratio;
    for (const double ratio : {1.0 + 0.5 * (least - 1.0), least + 0.01}) {
        const demand::Demand pulled = example_demand(resolved, {ratio * capacity_lb, 0.0, 0.0}, {0.0, 0.0});
        CHECK(steel(ratio * capacity_lb).status == checks::Status::fails);
        const auto first = first_failure(resolved, pulled, States::sampled);
        // Much else fails under such a pull: the wood is weaker than the steel.
        REQUIRE(first);
        CHECK((first->ratio > least || first->status == checks::Status::missing_evidence));
    }
}

TEST_CASE("a check that is no bound of itself is asked for what is one", "[unit]") {
    const Resolved resolved = rigid("heron-landing-lags-in-deep-blocks");
    const demand::Demand whole = demand::find_demand(resolved).demand.value();
    for (const checks::Check& check : checks::registered_checks()) {
        const checks::CheckInput input{resolved, whole};
        if (check.id == "plate-bending") {
            CHECK_FALSE(checks::run(check, input).empty());
            for (const checks::CheckResult& bound : checks::run_at_least(check, input)) CHECK(bound.id == check.id);
        }
        if (check.id == "anchor-withdrawal")
            CHECK(checks::run_at_least(check, input).size() == checks::run(check, input).size());
    }
    CHECK_THROWS_AS(checks::RegisterAtLeast("plate-bending", checks::nothing_at_least), std::logic_error);
}
