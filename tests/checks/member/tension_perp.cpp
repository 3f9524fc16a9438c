// How deep an anchor that lifts a member by its top takes hold of it.
#include "checks/anchor/bolt_example.h"
#include "checks/member/framing_example.h"
#include "checks/run_check.h"
#include "support/compare.h"

using namespace toehold;
using checks::Status;
using test::run_check;

namespace {

constexpr const char* id = "member-tension-perp";

std::vector<checks::CheckResult> pulled(const catalog::Resolved& resolved, double pull_lb) {
    return run_check(id, resolved, test::example_demand(resolved, {pull_lb, 0.0, 0.0}, {}));
}

}  // namespace

TEST_CASE("a screw past the middle of the block's depth holds", "[closed-form]") {
    const auto results = pulled(test::example_resolved(), 900.0);
    // 5.5 in deep: 2.75 in; the 6 in screw reaches 6 - 0.375 - 1 - 7/32 = 4.40625 in
    REQUIRE(results.size() == 4);
    CHECK(results[0].demand == 2.75);
    CHECK(results[0].capacity == 4.40625);
    CHECK(results[0].unit == "in");
    CHECK(results[0].status == Status::holds);
    CHECK(results[0].note.empty());
    // 0.5.0 named 12.5.1.3.
    CHECK(results[0].clause.find("NDS 2018 Table 12.5.1C footnote 2") != std::string::npos);
    CHECK(test::link_from(results[0]) == "anchor A");
    CHECK(test::link_to(results[0]) == "block B1");
}

TEST_CASE("a screw that stops in a deep joist's upper half fails, and the note says what to do", "[closed-form][A19]") {
    catalog::Resolved resolved = test::framed_example();
    resolved.anchors[0].seat = model::Seat{2, 0.75, 12.0};
    const auto results = pulled(resolved, 900.0);
    // 9.25 in deep: 4.625 in against 4.40625
    CHECK(results.at(0).demand == 4.625);
    CHECK(results.at(0).status == Status::fails);
    CHECK(test::link_to(results.at(0)) == "joist J1");
    CHECK(test::says(results.at(0).note, "through-bolt with a washer or backing plate"));
}

TEST_CASE("a through-bolt takes hold of the whole depth, from below", "[unit]") {
    const auto results = pulled(test::bolted_example(), 900.0);
    CHECK(results.at(0).capacity == 5.5);
    CHECK(results.at(0).status == Status::holds);
}

TEST_CASE("a light load may hang anywhere", "[unit][B14]") {
    // Two anchors a block: 2 x 49.9 lb is less than 100 lb, 2 x 50 is not (NDS Commentary, light loads). 0.5.0 asked
    // from 1 lb on.
    CHECK(pulled(test::example_resolved(), 49.9).empty());
    CHECK(pulled(test::example_resolved(), 50.0).size() == 4);
    catalog::Resolved resolved = test::example_resolved();
    resolved.detail.basis.method = model::Method::lrfd;
    CHECK(pulled(resolved, 79.9).empty());
    CHECK(pulled(resolved, 80.0).size() == 4);
}

TEST_CASE("an anchor that is hardly pulled, or lands in nothing, is not asked", "[unit]") {
    CHECK(pulled(test::example_resolved(), 0.9).empty());
    catalog::Resolved resolved = test::example_resolved();
    for (catalog::Anchor& anchor : resolved.anchors) anchor.seat.reset();
    CHECK(pulled(resolved, 900.0).empty());
}
