// Shear where anchors stop part way down a member.
#include "checks/member/framing_example.h"
#include "checks/run_check.h"
#include "support/compare.h"

using namespace toehold;
using test::actions;
using test::run_check;
using test::with_actions;

namespace {

constexpr const char* id = "member-shear-at-anchors";

}  // namespace

TEST_CASE("screws part way down the block leave it a reduced shear strength", "[closed-form]") {
    const catalog::Resolved resolved = test::example_resolved();
    const auto results = run_check(id, resolved, test::example_demand(resolved, {500.0, 0.0, 0.0}, {}));
    REQUIRE(results.size() == 2);
    // 6 in screw less 0.375 plate and 1 in decking: 4.625 in, less the 7/32 in tip: d_e 4.40625 of 5.5
    // 2/3 x 135.8 x 3.5 x 4.40625 x (0.80114)^2 = 896.1 lb; shear 500
    CHECK_CLOSE(test::step_value(results[0], "d_e"), 4.40625, 1e-12, 0.0);
    CHECK_CLOSE(results[0].capacity, 896.1, 0.0, 0.2);
    CHECK_CLOSE(results[0].demand, 500.0, 1e-6, 0.0);
    CHECK(results[0].status == checks::Status::holds);
}

TEST_CASE("anchors bring no more shear than they pull, however hard the plate presses", "[unit]") {
    const catalog::Resolved resolved = test::example_resolved();
    const demand::AnchorForce pull{30.0, 0.0, 0.0};  // on A and B
    const auto results = run_check(id, resolved, with_actions(resolved, 0, {actions(0, 0, 1200.0, 0, 0)}, pull));
    CHECK_CLOSE(results.at(0).demand, 60.0, 1e-12, 0.0);
}

TEST_CASE("a through-bolt takes hold of the whole depth", "[unit]") {
    catalog::Resolved resolved = test::example_resolved();
    for (catalog::Anchor& anchor : resolved.anchors) anchor.kind = catalog::FastenerKind::through_bolt;
    const auto results = run_check(id, resolved, test::example_demand(resolved, {500.0, 0.0, 0.0}, {}));
    CHECK_CLOSE(results.at(0).capacity, 135.8 * 19.25 / 1.5, 1e-12, 0.0);
}

TEST_CASE("the shortest anchor of a block decides", "[unit]") {
    catalog::Resolved resolved = test::example_resolved();
    resolved.anchors[1].length_in = 4.0;
    resolved.anchors[1].embedment_in = 2.625;
    const auto results = run_check(id, resolved, test::example_demand(resolved, {500.0, 0.0, 0.0}, {}));
    CHECK_CLOSE(test::step_value(results.at(0), "d_e"), 2.625 - 0.21875, 1e-12, 0.0);
    CHECK(results.at(0).status == checks::Status::fails);
}

TEST_CASE("of a doubled joist only the piece the anchor stands in counts", "[closed-form]") {
    catalog::Resolved resolved = test::framed_example();
    resolved.detail.framing.joists->members[0].plies = 2;  // J1 from x = -9.5 to -6.5, its seam at -8
    resolved.anchors[0].at = {-7.25, 0.0};
    resolved.anchors[0].seat = model::Seat{2, 0.75, 12.0};
    const auto of = [&] {
        return run_check(id, resolved, with_actions(resolved, 2, {actions(0, 0, 300.0, 0, 0)}, {500.0, 0.0, 0.0}))
            .at(0);
    };
    CHECK(test::about(of()) == "joist J1");
    CHECK_CLOSE(test::step_value(of(), "b"), 1.5, 1e-12, 0.0);
    // 2/3 x 135.8 x 1.5 x 4.40625 x (4.40625/9.25)^2 = 135.8 lb
    CHECK_CLOSE(of().capacity, 135.8, 0.0, 0.1);
    resolved.anchors[1].at = {-8.75, 0.0};
    resolved.anchors[1].seat = model::Seat{2, 0.75, 12.0};
    CHECK_CLOSE(test::step_value(of(), "b"), 3.0, 1e-12, 0.0);
}

TEST_CASE("a block no anchor stands in is not asked", "[unit]") {
    catalog::Resolved resolved = test::example_resolved();
    for (const std::size_t index : {std::size_t{2}, std::size_t{3}}) resolved.anchors[index].seat.reset();
    const auto results = run_check(id, resolved, test::example_demand(resolved, {500.0, 0.0, 0.0}, {0.0, 900.0}));
    REQUIRE(results.size() == 1);
    CHECK(test::about(results[0]) == "block B1");
}
