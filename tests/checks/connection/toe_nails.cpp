// Toe-nails: 16d common, 0.162 x 3.5 in, G 0.55, wet, C_D 1.0. Example: a 3.5 x 5.5 in block at a 1.5 in joist.
#include "checks/connection/end_example.h"

#include "support/compare.h"

#include <cmath>

using namespace toehold;
using checks::CheckResult;
using checks::Status;
using test::block_support;
using test::end_result;
using test::step_value;

namespace {

const model::ToeNails four{0.162, 3.5, 4, 3.0};

// Z: D 0.162, Fyb 90,000 psi, Fe 5550 psi, ls 1.167, lm 1.5 - 0.162: mode IV, 0.162^2/2.2 sqrt(2 x 5550 x 90000/6) =
// 153.9 lb (Table 12N prints 154 for a 1-1/2 in side member, from memory). Z' = 153.9 x 0.83 x 0.7 = 89.43 lb
constexpr double lateral_lb = 89.43;
// W' = 1380 x 0.55^2.5 x 0.162 x 1.5 in (through the joist) x 0.67 x 0.7 = 50.15 x 1.5 x 0.469 = 35.28 lb
constexpr double withdrawal_lb = 35.28;

CheckResult nails(const model::ToeNails& given, const demand::SupportReaction& forces) {
    return end_result(test::example_resolved(), block_support(given), forces);
}

}  // namespace

TEST_CASE("toe-nails take 0.83 of their lateral value", "[closed-form]") {
    const CheckResult result = nails(four, {200.0, 0.0, 0.0, 0.0, 0.0});
    CHECK(test::prints_as(step_value(result, "Z"), 154.0, 1.0));
    CHECK_CLOSE(step_value(result, "p"), 1.5, 1e-12, 0.0);
    CHECK_CLOSE(result.capacity, lateral_lb, 0.0, 0.05);
    CHECK_CLOSE(result.demand, 50.0, 1e-12, 0.0);
    CHECK(result.status == Status::holds);
}

TEST_CASE("toe-nails share a torque by their distance from the middle of the end", "[closed-form]") {
    // They cross the joist's face 1.75 - 0.6736 = 1.0764 in beside the middle, 1.5 in above and below it:
    // sum r^2 = 4 (1.0764^2 + 1.5^2) = 13.635, r_max = 1.8463: 0.13541 per lb in. 400/4 + 100 x 0.13541 = 113.54
    CHECK_CLOSE(nails(four, {400.0, 0.0, 0.0, 100.0, 0.0}).demand, 113.54, 0.0, 0.005);
}

TEST_CASE("toe-nails drawn away take 0.67 of their withdrawal value, added to the shear", "[closed-form]") {
    const CheckResult drawn = nails(four, {0.0, 0.0, 60.0, 0.0, 0.0});
    CHECK_CLOSE(drawn.demand, 15.0, 1e-12, 0.0);
    CHECK_CLOSE(drawn.capacity, withdrawal_lb, 0.0, 0.01);
    CHECK_CLOSE(nails(four, {200.0, 0.0, 60.0, 0.0, 0.0}).ratio, 50.0 / lateral_lb + 15.0 / withdrawal_lb, 1e-3, 0.0);
}

TEST_CASE("toe-nails keep no members square, and a single one resists no couple", "[unit]") {
    CHECK(nails(four, {0.0, 0.0, 0.0, 0.0, 90.0}).status == Status::no_path);
    model::ToeNails one = four;
    one.count = 1;
    CHECK(nails(one, {20.0, 0.0, 0.0, 50.0, 0.0}).status == Status::no_path);
    CHECK(nails(one, {20.0, 0.0, 0.0, 0.0, 0.0}).status == Status::holds);
}

TEST_CASE("two toe-nails that cross at a thin member's middle resist no couple", "[unit]") {
    catalog::Resolved resolved = test::example_resolved();
    resolved.detail.framing.blocks[0].width_in = 1.5;  // 0.75 - 0.67 = 0.08 in beside the middle
    const model::ToeNails one_a_side{0.162, 3.5, 2, 0.0};
    CHECK(end_result(resolved, block_support(one_a_side), {20.0, 0.0, 0.0, 50.0, 0.0}).status == Status::no_path);
    CHECK(end_result(resolved, block_support(four), {20.0, 0.0, 0.0, 50.0, 0.0}).status == Status::holds);
}

TEST_CASE("toe-nails too short, too thick or spread past the member give no number", "[bad-input]") {
    model::ToeNails given = four;
    given.length_in = 1.75;  // 1.75 (0.866 - 0.333) = 0.93 in, under 6 D = 0.97
    CHECK(nails(given, {20.0, 0.0, 0.0, 0.0, 0.0}).status == Status::no_path);
    given = four;
    given.spread_in = 6.0;
    CHECK(nails(given, {20.0, 0.0, 0.0, 0.0, 0.0}).status == Status::no_path);
    given = four;
    given.diameter_in = 0.25;
    CHECK(nails(given, {20.0, 0.0, 0.0, 0.0, 0.0}).status == Status::missing_evidence);
}

TEST_CASE("on a beam uplift draws the toe-nails and rolling draws those of one side", "[closed-form]") {
    catalog::Resolved resolved = test::example_resolved();
    const demand::MemberSupport support = test::joist_support(resolved, model::JoistSupport::Kind::beam, four);
    // p = 3.5 x 0.866 - 1.1667 = 1.8644: W' = 50.15 x 1.8644 x 0.469 = 43.85
    const CheckResult lifted = end_result(resolved, support, {80.0, 0.0, 0.0, 0.0, 0.0});
    CHECK_CLOSE(lifted.capacity, 43.85, 0.0, 0.01);
    CHECK_CLOSE(lifted.demand, 20.0, 1e-12, 0.0);
    // 30 lb in over half of 1.5 in on two nails: 20 more
    CHECK_CLOSE(end_result(resolved, support, {80.0, 0.0, 0.0, 30.0, 0.0}).demand, 40.0, 1e-12, 0.0);
    CHECK_CLOSE(end_result(resolved, support, {-80.0, 30.0, 40.0, 0.0, 0.0}).demand, 12.5, 1e-12, 0.0);
}
