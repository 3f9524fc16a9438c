// The first cause: the failure that makes others, not the one of the largest ratio.
#include "review/facts.h"

#include <catch2/catch.hpp>

#include <algorithm>

using namespace toehold;

namespace {

checks::CheckResult result(const std::string& check, const model::PartId& part, double demand, double capacity) {
    checks::CheckResult made;
    made.id = check;
    made.part = part;
    made.demand = demand;
    made.capacity = capacity;
    made.unit = "lb";
    checks::conclude(made);
    return made;
}

const model::PartId anchor_a = model::anchor_part("A"), anchor_b = model::anchor_part("B");
const model::PartId block{model::PartKind::block, "B1"};

std::vector<std::string> causes(const std::string& check) {
    if (check == "seating") return {"withdrawal", "combined"};
    if (check == "withdrawal") return {"combined"};
    return {};
}

}  // namespace

TEST_CASE("the first cause is the failure that explains most, whatever the ratios", "[unit]") {
    std::vector<checks::CheckResult> results = {
        result("bending", block, 900, 100), result("combined", anchor_a, 700, 100),
        result("withdrawal", anchor_a, 500, 100), result("seating", anchor_a, 110, 100)};
    do {
        const auto first = review::first_cause(results, causes);
        REQUIRE(first);
        CHECK(first->check == "seating");
        CHECK(first->explained == 2);
    } while (std::next_permutation(results.begin(), results.end(),
                                   [](const auto& one, const auto& other) { return one.id < other.id; }));
}

TEST_CASE("a failure explains only what it meets in the load path", "[unit]") {
    const auto first =
        review::first_cause({result("seating", anchor_b, 110, 100), result("withdrawal", anchor_a, 500, 100),
                             result("combined", anchor_a, 300, 100)},
                            causes);
    REQUIRE(first);
    CHECK(first->check == "withdrawal");
    CHECK(first->explained == 1);
}

TEST_CASE("among equals the first down the load path comes first, then the larger ratio", "[unit]") {
    const auto first = review::first_cause(
        {result("bending", block, 900, 100), result("steel", anchor_a, 120, 100), result("steel", anchor_b, 130, 100)},
        causes);
    REQUIRE(first);
    CHECK(first->part == anchor_b);
    CHECK_FALSE(review::first_cause({result("steel", anchor_a, 90, 100)}, causes));
}

TEST_CASE("failures that follow from each other in a circle still have a first", "[unit]") {
    const auto circle = [](const std::string& check) {
        return std::vector<std::string>{check == "one" ? "other" : "one"};
    };
    CHECK(review::first_cause({result("one", anchor_a, 2, 1), result("other", anchor_a, 3, 1)}, circle));
}

TEST_CASE("parts that do not go together come before any check, a broken load path before those that it breaks",
          "[unit]") {
    using checks::Cause;
    using checks::Severity;
    const auto finding = [](const std::string& id, Severity severity, Cause cause) {
        return checks::Finding{id, severity, "geometry", format::verbatim(id), anchor_a, {}, cause};
    };
    const auto first = [](const checks::Finding& gravest, double demand, double capacity) {
        const auto cause = review::first_cause({result("withdrawal", anchor_a, demand, capacity)}, causes);
        const auto found = review::first_finding({gravest}, cause);
        return found ? found->rule : std::string();
    };
    const checks::Finding washer = finding("washer", Severity::fails, Cause::geometry),
                          end = finding("end", Severity::fails, Cause::load_path),
                          zinc = finding("zinc", Severity::fails, Cause::beside);
    CHECK(first(washer, 5, 1) == "washer");
    CHECK(first(washer, 5, 0) == "washer");
    CHECK(first(end, 5, 1) == "end");
    CHECK(first(end, 5, 0).empty());  // the check says itself that there is no load path
    CHECK(first(zinc, 5, 1).empty());
    CHECK(first(zinc, 1, 5) == "zinc");  // no check fails
    CHECK(first(finding("read", Severity::caution, Cause::geometry), 5, 1).empty());
    CHECK_FALSE(review::first_finding({}, std::nullopt));
}

TEST_CASE("what a capacity lacks and by what it must grow", "[unit]") {
    const review::Shortfall some{1908.0, 346.0, "lb"}, none{10.0, 0.0, "lb"};
    CHECK(some.lacking() == 1562.0);
    CHECK(some.factor().value() == Approx(1908.0 / 346.0));
    CHECK_FALSE(none.factor());
}
