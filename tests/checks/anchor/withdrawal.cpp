// Withdrawal of the example's 3/8 x 6 in lag screws from southern pine, and of other screws, by hand.
#include "checks/run_check.h"
#include "support/compare.h"
#include "support/example.h"

using namespace toehold;
using catalog::FastenerKind;
using checks::Status;
using test::run_check;
using test::step_value;

namespace {

constexpr demand::AnchorForce pull{800.0, 0.0, 50.0};

checks::CheckResult first(const catalog::Resolved& resolved) {
    const auto results = run_check("anchor-withdrawal", resolved, test::example_demand(resolved, pull, {}));
    REQUIRE_FALSE(results.empty());
    return results[0];
}

void make_reported(catalog::Anchor& anchor, double withdrawal_lb_per_in, double tension_lb) {
    anchor.kind = FastenerKind::reported;
    anchor.reported = model::ReportedFastener{};
    anchor.reported->report = "test report, table 1";
    anchor.reported->withdrawal_lb_per_in = withdrawal_lb_per_in;
    anchor.reported->tension_lb = tension_lb;
}

}  // namespace

TEST_CASE("A lag screw in wet southern pine holds its tabulated value times thread and factors", "[published]") {
    // NDS Table 12.2A: G 0.55, 3/8 in: 352 lb/in. Thread 3.5 - 7/32 = 3.28125 in. CD 1.0, CM 0.7, Ct 1.0:
    // 352 x 3.28125 x 0.7 = 808.5 lb; the table's rounding of 0.5 lb/in is worth 1.15 lb.
    const auto result = first(test::example_resolved());
    CHECK_CLOSE(result.capacity, 808.5, 0.0, 1.15);
    CHECK(result.demand == 800.0);
    CHECK(result.status == Status::holds);
    CHECK_CLOSE(step_value(result, "W"), 352.0, 0.0, 0.5);
    CHECK(step_value(result, "L_t") == 3.28125);
    CHECK(step_value(result, "C_M") == 0.7);
    CHECK(test::link_words(result) == "anchor A > block B1: lag screw thread");
}

TEST_CASE("The worked steps multiply to the capacity", "[property]") {
    const auto result = first(test::example_resolved());
    const double product = step_value(result, "W") * step_value(result, "L_t") * step_value(result, "C_eg") *
                           step_value(result, "C_D") * step_value(result, "C_M") * step_value(result, "C_t");
    CHECK_CLOSE(result.capacity, product, 1e-12, 0.0);
    // 6 - 3/8 - 1 = 4.625
    CHECK_CLOSE(step_value(result, "L") - step_value(result, "t_p") - step_value(result, "t_l"),
                step_value(result, "p_e"), 1e-12, 0.0);
}

TEST_CASE("Dry wood and a ten-minute load raise the allowable withdrawal", "[unit]") {
    auto resolved = test::example_resolved();
    resolved.detail.basis.moisture = model::Moisture::dry;
    resolved.detail.basis.load_duration = 1.6;
    // 352 x 3.28125 x 1.6 = 1848 lb; rounding worth 2.7 lb.
    CHECK_CLOSE(first(resolved).capacity, 1848.0, 0.0, 2.7);
}

TEST_CASE("LRFD takes the format conversion, resistance and time effect factors", "[unit]") {
    auto resolved = test::example_resolved();
    resolved.detail.basis.method = model::Method::lrfd;
    // 352 x 3.28125 x 3.32 x 0.65 x 0.8 x 0.7 = 1395.8 lb; rounding worth 2.0 lb.
    CHECK_CLOSE(first(resolved).capacity, 1395.8, 0.0, 2.0);
}

TEST_CASE("Thicker decking does not change a lag screw whose thread lies wholly in the block", "[property]") {
    auto resolved = test::example_resolved();
    const double before_lb = first(resolved).capacity;
    on_deck(resolved.detail).layers.decking->thickness_in = 1.5;
    resolved.anchors[0].embedment_in = 4.125;
    CHECK(first(resolved).capacity == before_lb);
}

TEST_CASE("A wood screw holds by its own equation", "[closed-form]") {
    auto resolved = test::example_resolved();
    catalog::Anchor& anchor = resolved.anchors[0];
    anchor.kind = FastenerKind::wood_screw;
    anchor.diameter_in = 0.242;
    anchor.thread_in_block_in = 2.0;
    // NDS Eq. 12.2-2, No. 14 in G 0.55: 209 lb/in (computed table); x 2 x 0.7 = 292.6 lb; rounding worth 0.7 lb.
    const auto result = first(resolved);
    CHECK_CLOSE(result.capacity, 292.6, 0.0, 0.7);
    CHECK(result.status == Status::fails);
    CHECK(format::english(result.link->by) == "wood screw thread");
}

TEST_CASE("A reported fastener uses its own value and no factor of ours", "[unit]") {
    auto resolved = test::example_resolved();
    make_reported(resolved.anchors[0], 250.0, 1500.0);
    // 250 x 3.28125 = 820.3125, wet or not.
    auto result = first(resolved);
    CHECK(result.capacity == 820.3125);
    CHECK(result.clause == "report: test report, table 1");
    CHECK(result.status == Status::holds);
    resolved.detail.basis.method = model::Method::lrfd;  // x 1.6
    CHECK_CLOSE(first(resolved).capacity, 1312.5, 1e-12, 0.0);
}

TEST_CASE("A report without a withdrawal value leaves the evidence missing", "[bad-input]") {
    auto resolved = test::example_resolved();
    for (const double tension_lb : {0.0, 1500.0}) {
        make_reported(resolved.anchors[0], 0.0, tension_lb);
        const auto result = first(resolved);
        CHECK(result.status == Status::missing_evidence);
        CHECK(result.capacity == 0.0);
        CHECK_FALSE(result.note.empty());
    }
}

TEST_CASE("A screw with only shank or tip in the block has no path", "[bad-input]") {
    auto resolved = test::example_resolved();
    resolved.anchors[0].thread_in_block_in = 0.0;
    const auto result = first(resolved);
    CHECK(result.status == Status::no_path);
    CHECK_FALSE(result.note.empty());
}

TEST_CASE("Through-bolts and anchors that miss are not this check's", "[unit]") {
    auto resolved = test::example_resolved();
    resolved.anchors[0].kind = FastenerKind::through_bolt;
    resolved.anchors[1].seat.reset();
    const auto results = run_check("anchor-withdrawal", resolved, test::example_demand(resolved, pull, {}));
    REQUIRE(results.size() == 2);
    CHECK(test::about(results[0]) == "anchor C");
    CHECK(test::link_to(results[1]) == "block B2");
}
