// A run of the checks that is asked for failures alone: what it says of them is what a run asked for numbers says.
#include "demand/demand.h"
#include "review/review.h"
#include "support/shipped.h"

#include <catch2/catch.hpp>

#include <algorithm>
#include <map>
#include <string>
#include <tuple>

using namespace toehold;

namespace {

using Numbers = std::tuple<double, double, double>;

/// Those that fail, by what they are about, with their demand, capacity and ratio.
std::multimap<std::string, Numbers> failing(const review::Review& review) {
    std::multimap<std::string, Numbers> all;
    for (const checks::CheckResult& result : review.checks) {
        if (review::fails(result)) {
            all.emplace(result.id + model::key(result.part) + result.aspect,
                        Numbers{result.demand, result.capacity, result.ratio});
        }
    }
    return all;
}

void agree(const model::BaseDetail& detail) {
    const catalog::Resolved resolved = test::resolved_by_shipped(detail);
    const demand::Outcome outcome = demand::find_demand(resolved, demand::Sampling::probe());
    REQUIRE(outcome.demand);
    const review::Review numbers = review::evaluate(resolved, outcome, {});
    const review::Review failures = review::evaluate(resolved, outcome, {}, checks::Asked::failures);
    CHECK(failing(failures) == failing(numbers));
    CHECK(failures.checks.size() == numbers.checks.size());
    CHECK(failures.verdict == numbers.verdict);
    CHECK(failures.facts.first_cause.has_value() == numbers.facts.first_cause.has_value());
    if (failures.facts.first_cause && numbers.facts.first_cause)
        CHECK(failures.facts.first_cause->check == numbers.facts.first_cause->check);
}

bool fails_in_bending(const model::BaseDetail& detail) {
    const catalog::Resolved resolved = test::resolved_by_shipped(detail);
    const review::Review review =
        review::evaluate(resolved, demand::find_demand(resolved, demand::Sampling::probe()), {});
    return std::any_of(review.checks.begin(), review.checks.end(), [](const checks::CheckResult& result) {
        return result.id == "plate-bending" && review::fails(result);
    });
}

}  // namespace

TEST_CASE("Failures alone are those of the whole, with the same numbers", "[property]") {
    model::BaseDetail detail = test::demo_detail("heron-landing-public-boardwalk");
    detail.basis.plate = model::PlateBehaviour::rigid;
    on_deck(detail).plate_reference.reset();
    bool held = false, failed = false;
    // From a plate that bends too far to one that its strips alone prove.
    for (const double thickness_in : {0.1875, 0.25, 0.3125, 0.375, 0.5, 0.75}) {
        on_deck(detail).plate.thickness_in = thickness_in;
        for (const model::PlateStrength strength :
             {model::PlateStrength::lower_bound, model::PlateStrength::yield_line}) {
            detail.basis.plate_strength = strength;
            agree(detail);
        }
        (fails_in_bending(detail) ? failed : held) = true;
    }
    CHECK(held);
    CHECK(failed);
}
