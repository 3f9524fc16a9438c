// Shear where fasteners hold a member's end: NDS 2018 3.4.3.3. No published worked example of the clause was found; the
// numbers are worked by hand.
#include "checks/connection/end_example.h"
#include "checks/connection/fastener_reach.h"

#include "checks/member/framing_example.h"
#include "support/compare.h"

using namespace toehold;
using checks::CheckResult;
using checks::Status;
using test::block_support;
using test::run_held;
using test::step_value;

namespace {

constexpr const char* id = "member-end-shear";

/// Two 3/8 in bolts a leg, 1 3/4 in apart.
model::SideAngles bolts() { return {2, 0.25, "steel-a36", model::SideAngles::Kind::bolt, 0.375, 0.0, 2, 1.75, 1.5}; }

/// Block B1 as a 4x8.
catalog::Resolved four_by_eight() {
    catalog::Resolved resolved = test::example_resolved();
    for (model::Block& block : resolved.detail.framing.blocks) block.depth_in = 7.25;
    return resolved;
}

std::vector<CheckResult> drawn(const catalog::Resolved& resolved, const model::EndConnection& connection,
                               double up_lb) {
    return run_held(id, resolved, block_support(connection), {up_lb, 0.0, 0.0, 0.0, 0.0});
}

}  // namespace

TEST_CASE("bolts at mid-depth of a 4x8 leave a quarter of its shear strength", "[closed-form][A6]") {
    const catalog::Resolved resolved = four_by_eight();
    // d_e = (7.25 + 1.75)/2 = 4.5 in. F_v' = 175 x 0.97 x 0.8 = 135.8 psi (incised).
    // V_r' = 2/3 x 135.8 x 3.5 x 4.5 x (4.5/7.25)^2 = 1425.9 x 0.38526 = 549.3 lb, where the whole section has
    // 2/3 x 135.8 x 3.5 x 7.25 = 2297.3 lb: a shear of 0.244 of it is 1.02 here. 0.5.0 reported the 0.24.
    const auto results = drawn(resolved, bolts(), 0.244 * 2297.3);
    REQUIRE(results.size() == 1);
    CHECK_CLOSE(results[0].capacity, 549.3, 0.0, 0.1);
    CHECK_CLOSE(step_value(results[0], "d_e"), 4.5, 1e-12, 0.0);
    CHECK_CLOSE(results[0].ratio, 1.02, 0.0, 0.005);
    CHECK(results[0].status == Status::fails);
    CHECK(results[0].aspect == "held end");
    CHECK(test::says(results[0].note, "1 3/4 in"));
}

TEST_CASE("pressed down, a member hangs on its lowest fastener", "[closed-form]") {
    // As far from the top as the highest is from the bottom: the same 549.3 lb.
    const auto results = drawn(four_by_eight(), bolts(), -500.0);
    REQUIRE(results.size() == 1);
    CHECK_CLOSE(results[0].capacity, 549.3, 0.0, 0.1);
    CHECK_CLOSE(step_value(results[0], "d_e"), 4.5, 1e-12, 0.0);
}

TEST_CASE("nails across the end grain are read the same way", "[closed-form]") {
    // Four nails over 4 in of 5.5: d_e = 4.75; 2/3 x 135.8 x 3.5 x 4.75 x (4.75/5.5)^2 = 1122.6 lb
    const model::EndGrainFasteners nails{model::EndGrainFasteners::Kind::nail, 0.162, 3.5, 4, 4.0};
    CHECK_CLOSE(drawn(test::example_resolved(), nails, 100.0).at(0).capacity, 1122.6, 0.0, 0.1);
}

TEST_CASE("one toe-nail a side holds at mid-depth: an eighth", "[closed-form]") {
    // 2/3 x 135.8 x 3.5 x 5.5/8 = 217.8 lb
    const model::ToeNails nails{0.131, 2.5, 2, 0.0};
    CHECK_CLOSE(drawn(test::example_resolved(), nails, 100.0).at(0).capacity, 217.8, 0.0, 0.1);
}

TEST_CASE("the side that counts turns with the force", "[closed-form]") {
    model::ReportedConnector hanger{"hanger", "test value", 1200.0, 1500.0, 600.0, 3.5};
    hanger.from_top_in = 1.0;
    hanger.from_bottom_in = 0.0;
    const catalog::Resolved resolved = test::example_resolved();
    // Pressed down, on its seat: the whole section, 2/3 x 135.8 x 3.5 x 5.5 = 1742.8 lb.
    CHECK_CLOSE(drawn(resolved, hanger, -100.0).at(0).capacity, 1742.8, 0.0, 0.1);
    // Drawn up, held by fasteners 1 in and more below the top: d_e = 4.5. 1742.8 x (4.5/5.5)^3 = 954.5 lb
    CHECK_CLOSE(drawn(resolved, hanger, 100.0).at(0).capacity, 954.5, 0.0, 0.1);
}

TEST_CASE("hardware that does not say where its fasteners stand is taken to reach mid-depth, and asked beyond",
          "[closed-form][A6]") {
    const model::ReportedConnector hanger{"hanger", "test value", 1200.0, 1500.0, 600.0, 3.5};
    const catalog::Resolved resolved = test::example_resolved();
    // An eighth of 1742.8 is 217.8 lb.
    const CheckResult little = drawn(resolved, hanger, 200.0).at(0);
    CHECK(little.status == Status::holds);
    CHECK_CLOSE(little.capacity, 217.8, 0.0, 0.1);
    CHECK(test::says(little.note, "not specified"));
    // 600 lb need 5.5 (600/1742.8)^(1/3) = 3.85 in: nothing fails for what is not known.
    const CheckResult much = drawn(resolved, hanger, 600.0).at(0);
    CHECK(much.status == Status::missing_evidence);
    CHECK(test::says(much.note, "from-top"));
    CHECK(test::says(drawn(resolved, hanger, -600.0).at(0).note, "from-bottom"));
}

TEST_CASE("toe-nails that hold a joist down to its beam are left to the nailing schedule", "[unit]") {
    catalog::Resolved resolved = test::framed_example();
    const model::ToeNails nails{0.131, 2.5, 2, 0.0};
    const demand::MemberSupport support = test::joist_support(resolved, model::JoistSupport::Kind::beam, nails);
    CHECK(run_held(id, resolved, support, {100.0, 0.0, 0.0, 0.0, 0.0}).empty());
}

TEST_CASE("five depths from the end the square falls away", "[closed-form]") {
    catalog::Resolved resolved = test::framed_example();
    model::ReportedConnector tie{"tie", "test value", 800.0, 0.0, 0.0, 0.0};
    tie.from_top_in = 4.25;
    demand::MemberSupport support = test::joist_support(resolved, model::JoistSupport::Kind::beam, tie);
    // The joist from -120 to 12 in, 9.25 deep, five depths 46.25 in; drawn up: d_e = 9.25 - 4.25 = 5.
    // At -90, 30 in from the end: 2/3 x 135.8 x 1.5 x 5 x (5/9.25)^2 = 679.0 x 0.29218 = 198.4 lb.
    CHECK_CLOSE(run_held(id, resolved, support, {100.0, 0.0, 0.0, 0.0, 0.0}).at(0).capacity, 198.4, 0.0, 0.1);
    resolved.detail.framing.supports[0].at_in = -60.0;
    CHECK_CLOSE(run_held(id, resolved, support, {100.0, 0.0, 0.0, 0.0, 0.0}).at(0).capacity, 679.0, 0.0, 0.1);
}

TEST_CASE("what hangs on a joist's face shears the joist too", "[closed-form]") {
    const catalog::Resolved resolved = test::framed_example();
    demand::Demand demand = test::held(resolved, block_support(bolts()), {-400.0, 0.0, 0.0, 0.0, 0.0});
    demand.framing->states[0].members.resize(5);
    demand.framing->states[0].members[2].vertical_shear_lb = 300.0;
    const auto results = test::run_check(id, resolved, demand);
    REQUIRE(results.size() == 2);
    CHECK(results[1].aspect == "holder");
    CHECK(test::about(results[1]) == "joist J1 at block B1");
    CHECK(results[1].demand == 300.0);
    // Tops flush: bolts (5.5 -+ 1.75)/2 = 1.875 and 3.625 in down. Pressed down they press towards the joist's bottom:
    // d_e = 9.25 - 1.875 = 7.375. The block meets it 14.5 in from its end, less than 46.25:
    // 2/3 x 135.8 x 1.5 x 7.375 x (7.375/9.25)^2 = 636.6 lb
    CHECK_CLOSE(step_value(results[1], "d_e"), 7.375, 1e-12, 0.0);
    CHECK_CLOSE(results[1].capacity, 636.6, 0.0, 0.1);
    // The clause speaks of bolts and lag screws; nails through the joist hold its face all over.
    const model::EndGrainFasteners nails{model::EndGrainFasteners::Kind::nail, 0.162, 3.5, 4, 4.0};
    demand.framing->supports = {block_support(nails)};
    CHECK(test::run_check(id, resolved, demand).size() == 1);
}

TEST_CASE("screws of angles go through a member's pieces from both sides, those of one angle do not", "[unit]") {
    const auto goes_through = [](model::SideAngles angles, int sides) {
        angles.sides = sides;
        const catalog::Resolved resolved = test::example_resolved();
        const demand::Demand demand = test::held(resolved, block_support(angles), {});
        return checks::fastener_reach(checks::end_places({resolved, demand}).at(0)).value().through;
    };
    model::SideAngles screws = bolts();
    screws.kind = model::SideAngles::Kind::wood_screw;
    CHECK(goes_through(screws, 2));
    CHECK_FALSE(goes_through(screws, 1));
    CHECK(goes_through(bolts(), 1));
}

TEST_CASE("toe-nails go through both pieces of a member where there are two of them, one a side", "[unit]") {
    catalog::Resolved resolved = test::example_resolved();
    resolved.detail.framing.blocks[0].plies = 2;
    for (const int count : {1, 2}) {
        const demand::Demand demand = test::held(resolved, block_support(model::ToeNails{0.131, 2.5, count, 0.0}), {});
        CHECK(checks::fastener_reach(checks::end_places({resolved, demand}).at(0)).value().through == (count == 2));
    }
}

TEST_CASE("where one way lacks evidence the other is told of only if it fails", "[unit]") {
    // Hardware that says how far it is from the top, so that a pull upward has a depth and a push down has none.
    const catalog::Resolved resolved = test::example_resolved();
    model::ReportedConnector hanger{"hanger", "test value", 1200.0, 1500.0, 600.0, 3.5};
    hanger.from_top_in = 1.5;
    const auto both_ways = [&](double up_lb) {
        demand::Demand demand = test::held(resolved, block_support(hanger), {up_lb, 0.0, 0.0, 0.0, 0.0});
        demand.states.push_back(demand.states[0]);
        demand.framing->states.push_back(demand.framing->states[0]);
        demand.framing->states[1].reactions[0].up_lb = -600.0;  // more than mid-depth carries
        return test::run_check(id, resolved, demand).at(0).status;
    };
    CHECK(both_ways(50.0) == Status::missing_evidence);
    CHECK(both_ways(1500.0) == Status::fails);  // 2.2 of its 670 lb
}
