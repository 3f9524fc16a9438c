// Anchors of a post on a member's side, by hand: the checks of anchors see the member along them.
#include "checks/run_check.h"
#include "checks/side/side_example.h"
#include "support/compare.h"

using namespace toehold;
using checks::CheckResult;
using checks::Status;
using test::run_check;
using test::side_demand;
using test::side_example;
using test::step_value;

namespace {

CheckResult first_of(const std::string& id, const catalog::Resolved& resolved, const demand::AnchorForce& on_first) {
    const auto results = run_check(id, resolved, side_demand(resolved, {on_first}));
    REQUIRE_FALSE(results.empty());
    return results.front();
}

/// One bolt alone: no group factor.
catalog::Resolved one_bolt() {
    catalog::Resolved resolved = side_example();
    resolved.anchors.pop_back();
    on_side(resolved.detail).places.pop_back();
    return resolved;
}

}  // namespace

TEST_CASE("a bolt through post and rim carries what the table of two woods at a right angle prints", "[memory]") {
    // NDS 2018 Table 12A, 1/2 in, 3-1/2 in and 1-1/2 in members, G 0.55 (from memory: 400 lb with the thinner loaded
    // across its grain, 470 lb with the thicker), printed to 10 lb.
    const catalog::Resolved resolved = one_bolt();
    const CheckResult down = first_of("anchor-lateral", resolved, {0.0, 0.0, -300.0});
    CHECK(test::prints_as(step_value(down, "Z"), 400.0, 10.0));
    CHECK_CLOSE(step_value(down, "theta"), 90.0, 1e-9, 0.0);
    const CheckResult along = first_of("anchor-lateral", resolved, {0.0, 300.0, 0.0});
    CHECK(test::prints_as(step_value(along, "Z"), 470.0, 10.0));
    CHECK(test::link_words(along) == "anchor U > rim R1: bearing of the shank");
}

TEST_CASE("siding between post and rim is a gap, and costs", "[property]") {
    catalog::Resolved resolved = one_bolt();
    const double close_lb = step_value(first_of("anchor-lateral", resolved, {0.0, 0.0, -300.0}), "Z");
    on_side(resolved.detail).layers = {{"siding", 0.75}};
    catalog::SideFastened materials;
    materials.layers = {{"siding", "siding", catalog::DeckingKind::plastic_composite, 1e5, false, 0.0, "", {}}};
    resolved.mount = materials;
    const CheckResult apart = first_of("anchor-lateral", resolved, {0.0, 0.0, -300.0});
    CHECK(step_value(apart, "g") == 0.75);
    CHECK(step_value(apart, "Z") < 0.8 * close_lb);
}

TEST_CASE("the lower end of the post lowers the value of what pulls its bolts up", "[closed-form]") {
    // 2 in to the post's lower end: lifted, the lower bolt presses the post's wood towards it, 2/(7 x 0.5) = 0.571;
    // drawn down it presses up. Spacing 5 in and the rim's own ends are ample (NDS 2018 Table 12.5.1A).
    const catalog::Resolved resolved = side_example();
    const auto factor = [&](double up_lb) {
        const auto results =
            run_check("anchor-lateral", resolved, side_demand(resolved, {{0.0, 0.0, up_lb}, {0.0, 0.0, up_lb}}));
        return step_value(results.back(), "C_Delta");
    };
    CHECK_CLOSE(factor(100.0), 2.0 / 3.5, 1e-9, 0.0);
    CHECK(factor(-100.0) == 1.0);
}

TEST_CASE("a tube's wall next to the rim is the side member", "[closed-form]") {
    catalog::Resolved resolved = test::bracket_example();
    on_side(resolved.detail).bracket.reset();
    resolved.mount = catalog::SideFastened{};
    resolved.anchors = {test::bolt_at("U", 0.0, 2.0)};
    const CheckResult result = first_of("anchor-lateral", resolved, {0.0, 0.0, -300.0});
    CHECK(step_value(result, "l_s") == 0.1875);
    CHECK(step_value(result, "F_es") == 1.375 * 58000.0);  // under 1/4 in: NDS 2018 Appendix I
    CHECK(step_value(result, "l_m") == 1.5);
}

TEST_CASE("nut and head washers bear on the rim and on the post across their grain", "[closed-form]") {
    // Dry southern pine 565 psi. Ring of 2 in less 9/16: 2.89309 in2. On the rim 24 in from its end: C_b 2.375/2. On
    // the post the upper bolt is 7 in from the lower end, 6 in from washer to end: the same; the lower one, 2 in, has
    // none.
    const catalog::Resolved resolved = side_example();
    const demand::Demand demand = side_demand(resolved, {{1000.0, 0.0, 0.0}, {1000.0, 0.0, 0.0}});
    const auto nuts = run_check("washer-bearing", resolved, demand);
    CHECK_CLOSE(nuts.front().capacity, 565.0 * 1.1875 * 2.89309, 1e-5, 0.0);
    CHECK(test::link_words(nuts.front()) == "anchor U > rim R1: washer under the nut");
    const auto heads = run_check("side-head-bearing", resolved, demand);
    REQUIRE(heads.size() == 2);
    CHECK_CLOSE(heads.front().capacity, 565.0 * 1.1875 * 2.89309, 1e-5, 0.0);
    CHECK_CLOSE(heads.back().capacity, 565.0 * 2.89309, 1e-5, 0.0);
    CHECK(test::link_words(heads.front()) == "post > anchor U: washer under the head");
}

TEST_CASE("a plate under the head stands in place of the washer, and a bare screw is drawn through", "[closed-form]") {
    catalog::Resolved resolved = side_example();
    resolved.anchors[0].washer.reset();
    resolved.anchors[0].head_plate = model::BackingPlate{3.0, 3.0, 0.5, "steel-a36"};
    CHECK(first_of("side-head-bearing", resolved, {1000.0, 0.0, 0.0}).status == Status::missing_evidence);
    resolved.anchors[0].head_plate_metal = test::carbon_steel();
    // 1/2 in A36 spreads 1.78 in past the head: all of 3 x 3 less the hole pi/4 0.5625^2 = 0.24850.
    CHECK_CLOSE(first_of("side-head-bearing", resolved, {1000.0, 0.0, 0.0}).capacity, 565.0 * (9.0 - 0.248505), 1e-5,
                0.0);
    resolved.anchors[0].head_plate.reset();
    resolved.anchors[0].kind = catalog::FastenerKind::lag_screw;
    // 1725 pi 0.75^2 0.55^2 = 922.1; the ring of 3/4 in less the shank's 1/2: 0.245437 in2, 138.7 lb.
    const CheckResult bare = first_of("side-head-bearing", resolved, {1000.0, 0.0, 0.0});
    CHECK_CLOSE(step_value(bare, "W_H"), 922.1, 0.0, 0.2);
    CHECK_CLOSE(bare.capacity, 565.0 * 0.245437, 1e-4, 0.0);
    resolved.anchors[0].kind = catalog::FastenerKind::wood_screw;  // a round head: pull-through alone
    const CheckResult round = first_of("side-head-bearing", resolved, {1000.0, 0.0, 0.0});
    CHECK_CLOSE(round.capacity, 922.1, 0.0, 0.2);
    resolved.anchors[0].kind = catalog::FastenerKind::reported;
    CHECK(run_check("side-head-bearing", resolved, side_demand(resolved, {})).size() == 1);
}

TEST_CASE("distances are kept in rim and post, each by its own grain", "[closed-form]") {
    const catalog::Resolved resolved = side_example();
    const demand::Demand demand = side_demand(resolved, {{500.0, 0.0, -100.0}, {0.0, 0.0, -100.0}});
    // Rim: loaded across its grain, 4 D = 2 in to the edge. Post: along its grain, 1.5 D to the side, 3.5 D to the end.
    const auto in_rim = run_check("anchor-spacing", resolved, demand);
    CHECK(in_rim.front().demand == 2.0);
    CHECK(in_rim.front().capacity == 2.0);
    const auto in_post = run_check("side-post-spacing", resolved, demand);
    REQUIRE(in_post.size() == 6);
    CHECK(in_post[0].demand == 0.75);
    CHECK(in_post[0].capacity == 1.75);
    CHECK(in_post[4].aspect == "end");
    CHECK(in_post[4].demand == 1.75);
    CHECK(in_post[4].capacity == 2.0);
}

TEST_CASE("rows across the rim's grain are held apart by steel, not by a wood post", "[unit]") {
    CHECK(run_check("fastener-rows-apart", side_example(), side_demand(side_example(), {})).empty());
    const catalog::Resolved bracket = test::bracket_example();
    const auto results = run_check("fastener-rows-apart", bracket, side_demand(bracket, {}));
    REQUIRE(results.size() == 1);
    CHECK(results.front().demand == 5.0);
}

TEST_CASE("an anchor above the rim, or one too short for it, has no path and says why", "[unit]") {
    catalog::Resolved resolved = side_example();
    resolved.anchors[0].seat.reset();
    const CheckResult above = first_of("anchor-seat", resolved, {800.0, 0.0, 0.0});
    CHECK(above.status == Status::no_path);
    CHECK(test::says(above.note, "above, below or beside"));
    CHECK(test::says(above.title, "behind"));
    const auto findings = test::run_finding("decking-only", resolved);
    REQUIRE(findings.size() == 1);
    CHECK(test::says(findings.front().message, "misses the member behind the post"));
}

TEST_CASE("a bolt through the rim into a block behind shears in the rim and pulls on the block", "[closed-form]") {
    catalog::Resolved resolved = one_bolt();
    model::Block block;
    block.id = "B1";
    block.from_in = -7.25;
    block.to_in = 7.25;
    block.across_in = -4.0;
    block.width_in = 1.5;
    block.depth_in = 9.25;
    resolved.detail.framing.blocks = {block};
    resolved.blocks = {test::pine()};
    on_side(resolved.detail).anchors.front().into = "B1";
    // Members now: block B1 (0), joists (1, 2), rim R1 (3).
    resolved.anchors.front().seat = model::Seat{0, 2.0, 7.25};
    resolved.anchors.front().crossed = model::Seat{3, 2.0, 24.0};
    const CheckResult lateral = first_of("anchor-lateral", resolved, {0.0, 0.0, -300.0});
    CHECK(test::link_words(lateral) == "anchor U > rim R1: bearing of the shank");
    CHECK(step_value(lateral, "g") == 0.0);
    CHECK(test::prints_as(step_value(lateral, "Z"), 400.0, 10.0));
    CHECK(test::link_to(first_of("washer-bearing", resolved, {900.0, 0.0, 0.0})) == "block B1");
    // In the block no load across the grain: 1.5 D to its edge; in the rim 4 D.
    const auto distances = run_check("anchor-spacing", resolved, side_demand(resolved, {{900.0, 0.0, -300.0}}));
    REQUIRE(distances.size() == 4);
    CHECK(distances[0].demand == 0.75);
    CHECK(distances[2].aspect == "edge in the member crossed");
    CHECK(distances[2].demand == 2.0);
}

TEST_CASE("a bolt that hangs a tie draws on the tie, not on the rim it crosses", "[unit]") {
    catalog::Resolved resolved = one_bolt();
    model::TensionTie tie;
    tie.id = "T1";
    tie.report = "test value";
    tie.tension_lb = 1800.0;
    tie.deflection_in = 0.125;
    tie.into = "J1";
    tie.bolt = "U";
    tie.below_top_in = 2.0;
    on_side(resolved.detail).ties = {tie};
    resolved.anchors.front().tie = 0;
    demand::Demand demand = side_demand(resolved, {{1500.0, 0.0, -100.0}});
    demand.states.front().ties_lb = {1500.0};
    for (const char* id : {"washer-bearing", "head-pull-through", "member-tension-perp", "member-shear-at-anchors"})
        CHECK(run_check(id, resolved, demand).empty());
    CHECK(run_check("side-head-bearing", resolved, demand).at(0).demand == 1500.0);
    CHECK(run_check("anchor-steel-tension", resolved, demand).at(0).demand == 1500.0);
    resolved.anchors.front().washer_below.reset();
    CHECK(test::run_finding("bolt-without-washer", resolved).empty());
}
