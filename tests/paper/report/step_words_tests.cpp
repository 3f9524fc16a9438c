// A check's steps sorted for the report: by what each says of its origin, whatever its words are.
#include "paper/report/step_words.h"

#include "paper/report/report_sample.h"
#include "paper/report/sources.h"
#include "review/review.h"

#include <catch2/catch.hpp>

using namespace toehold;
using checks::Origin;
using checks::Step;
using format::phrase;

namespace {

const review::Review& none() {
    static const review::Review review;
    return review;
}

paper::report::SortedSteps sorted(const checks::CheckResult& result) {
    paper::report::SteppedBefore before;
    static_cast<void>(before.next_number());
    return before.sorted(result, paper::report::LongSources(none()), format::Locale{});
}

}  // namespace

TEST_CASE("A step stands where its origin puts it", "[unit]") {
    checks::CheckResult result;
    result.steps = {checks::from_file("L", phrase("length"), 8.0, "in"),
                    checks::given("G", phrase("specific gravity"), 0.5, "", "NDS 2018 Table 12.3.3A"),
                    checks::demanded("T", phrase("tension"), 900.0, "lb"),
                    {"W", phrase("withdrawal"), "1800 G^1.5", 300.0, "lb/in", "NDS 2018 Eq. 12.2-1"}};
    const paper::report::SortedSteps steps = sorted(result);
    CHECK(steps.given == "Given: L = 8 in, length; G = 0.5, specific gravity [NDS 2018 Table 12.3.3A].");
    CHECK(steps.demand == "Demand: T = 900 lb, tension.");
    REQUIRE(steps.arithmetic.size() == 1);
    CHECK(steps.arithmetic.front()->symbol == "W");
}

TEST_CASE("The words of a step's formula and clause move it nowhere", "[unit]") {
    checks::CheckResult result;
    result.steps = {{"a", phrase("one"), "given", 1.0, "in", "input"},
                    {"b", phrase("two"), "demand", 2.0, "lb", "demand"},
                    {"c", phrase("three"), "2 a", 3.0, "in", "input", Origin::file},
                    {"d", phrase("four"), "a + b", 4.0, "lb", "statics", Origin::demanded},
                    {"C_D", phrase("five"), "default", 1.0, "", "demand"},
                    {"e", phrase("six"), "1.5 D", 6.0, "in", "input", Origin::given}};
    const paper::report::SortedSteps steps = sorted(result);
    CHECK(steps.arithmetic == std::vector<const Step*>{&result.steps[0], &result.steps[1], &result.steps[4]});
    CHECK(steps.demand == "Demand: d = 4 lb, four.");
    CHECK(steps.given == "Given: c = 3 in, three, 2 a; e = 6 in, six, 1.5 D [input].");
}

TEST_CASE("A step worked out before is named with its check's number, and one of another origin is not", "[unit]") {
    checks::CheckResult result;
    result.steps = {checks::from_file("L", phrase("length"), 8.0, "in")};
    paper::report::SteppedBefore before;
    const paper::report::LongSources sources(none());
    static_cast<void>(before.next_number());
    static_cast<void>(before.sorted(result, sources, format::Locale{}));
    static_cast<void>(before.next_number());
    CHECK(before.sorted(result, sources, format::Locale{}).as_before == "As in 6.1: L = 8 in.");
    checks::CheckResult other = result;
    other.steps.front().origin = Origin::derived;
    static_cast<void>(before.next_number());
    CHECK(before.sorted(other, sources, format::Locale{}).arithmetic.size() == 1);
}

TEST_CASE("No check shows as worked out what its formula says is given or the demand's", "[unit]") {
    for (const char* name : {"lags-in-deep-blocks", "short-lags-in-flat-block", "decking-only"}) {
        for (const checks::CheckResult& result : test::reported(name).checks) {
            for (const Step& step : result.steps) {
                INFO(name << ", " << result.id << ": " << step.symbol);
                if (step.formula == "given") CHECK((step.origin == Origin::file || step.origin == Origin::given));
                if (step.formula == "demand") CHECK(step.origin == Origin::demanded);
                if (step.as_is) CHECK((step.formula.empty() || step.formula == "given" || step.formula == "demand"));
            }
        }
    }
}
