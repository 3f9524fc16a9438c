// Names are names: a hole called `plate`, `weld` or `boards` gets every check that a hole called A gets.
#include "support/example.h"

#include "model/part.h"
#include "review/review.h"

#include <catch2/catch.hpp>

#include <algorithm>

using namespace toehold;

namespace {

catalog::Resolved with_hole_named(const std::string& id) {
    catalog::Resolved resolved = test::example_resolved();
    on_deck(resolved.detail).plate.holes[0].id = id;
    resolved.anchors[0].id = id;
    return resolved;
}

std::vector<const checks::CheckResult*> about(const review::Review& review, const std::string& id) {
    std::vector<const checks::CheckResult*> found;
    for (const checks::CheckResult& result : review.checks) {
        if (result.part == model::anchor_part(id) || result.part == model::hole_part(id)) found.push_back(&result);
    }
    return found;
}

}  // namespace

TEST_CASE("holes named like other parts keep all their checks and their ratios", "[unit][A16]") {
    const std::string plain = on_deck(test::example_resolved().detail).plate.holes[0].id;
    const review::Review as_it_is = review::evaluate(test::example_resolved(), "");
    const auto expected = about(as_it_is, plain);
    REQUIRE(expected.size() > 5);
    for (const char* odd : {"plate", "weld", "boards", "block B1", "anchors", "A at B", "post, upper end"}) {
        INFO(odd);
        const review::Review review = review::evaluate(with_hole_named(odd), "");
        CHECK(review.verdict == as_it_is.verdict);
        CHECK(review.checks.size() == as_it_is.checks.size());
        CHECK(review.load_path.size() == as_it_is.load_path.size());
        const auto found = about(review, odd);
        REQUIRE(found.size() == expected.size());
        for (const checks::CheckResult* const one : expected) {
            CHECK(std::any_of(found.begin(), found.end(), [&](const checks::CheckResult* other) {
                return other->id == one->id && other->aspect == one->aspect && other->status == one->status &&
                       other->ratio == one->ratio;
            }));
        }
    }
}
