// Reported connectors, fasteners in end grain, and ends of which nothing is described.
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

const model::ReportedConnector angle{"angle both sides", "test value", 1200.0, 1500.0, 600.0, 3.5};
const model::EndGrainFasteners four_nails{model::EndGrainFasteners::Kind::nail, 0.162, 3.5, 4, 4.0};
/// 1000 lb up, 50 lb across and 50 x 2.75 lb in of torque.
const demand::SupportReaction pulled{1000.0, 50.0, 0.0, 137.5, 0.0};

CheckResult connector(const model::ReportedConnector& given, const demand::SupportReaction& forces) {
    return end_result(test::example_resolved(), block_support(given), forces);
}

CheckResult fasteners(const model::EndGrainFasteners& given, const demand::SupportReaction& forces) {
    return end_result(test::example_resolved(), block_support(given), forces);
}

}  // namespace

TEST_CASE("a reported connector's line takes half the uplift and its share of the couple", "[closed-form]") {
    const CheckResult result = connector(angle, pulled);
    // Arm 3.5: up on one line 500 + 39.29 = 539.29 of 1200/2; down on the other: none, 39.29 < 500. Across: 50 of 600.
    // 0.8988 + 0.0833 = 0.9821
    CHECK_CLOSE(step_value(result, "R_u"), 539.29, 0.0, 0.005);
    CHECK_CLOSE(step_value(result, "R_d"), 0.0, 0.0, 1e-12);
    CHECK_CLOSE(result.ratio, 0.98214, 0.0, 1e-5);
    CHECK(result.status == Status::holds);
    CHECK(test::about(result) == "block B1 at joist J1");
    CHECK(test::link_words(result) == "block B1 > joist J1: angle both sides");
    CHECK(result.clause == "report: test value");
}

TEST_CASE("a connector pressed down answers with its download value", "[closed-form]") {
    const CheckResult result = connector(angle, {-1000.0, 0.0, 0.0, 0.0, 0.0});
    CHECK_CLOSE(result.demand, 500.0, 1e-12, 0.0);
    CHECK_CLOSE(result.capacity, 750.0, 1e-12, 0.0);
}

TEST_CASE("a couple larger than the uplift presses the other line down", "[closed-form]") {
    model::ReportedConnector narrow = angle;
    narrow.couple_arm_in = 1.0;
    // up 500 + 750 = 1250 of 600; down 750 - 500 = 250 of 750
    const CheckResult result = connector(narrow, {1000.0, 0.0, 0.0, 750.0, 0.0});
    CHECK_CLOSE(step_value(result, "R_u"), 1250.0, 1e-12, 0.0);
    CHECK_CLOSE(step_value(result, "R_d"), 250.0, 1e-12, 0.0);
    CHECK_CLOSE(result.ratio, 1250.0 / 600.0, 1e-12, 0.0);
    CHECK(result.status == Status::fails);
}

TEST_CASE("a pull and a moment over the connector's height add up against its pull", "[closed-form]") {
    model::ReportedConnector tied = angle;
    tied.pull_lb = 400.0;
    tied.height_in = 3.0;
    // 100 + 600/3 = 300 of 400
    const CheckResult result = connector(tied, {0.0, 0.0, 100.0, 0.0, -600.0});
    CHECK_CLOSE(result.demand, 300.0, 1e-12, 0.0);
    CHECK_CLOSE(result.ratio, 0.75, 1e-12, 0.0);
    // Together with half of the uplift's line: 300/600 + 0.75
    CHECK_CLOSE(connector(tied, {600.0, 0.0, 100.0, 0.0, -600.0}).ratio, 1.25, 1e-12, 0.0);
    // Pressed against the joist, it takes none of the force along the block.
    CHECK_CLOSE(connector(tied, {600.0, 0.0, -100.0, 0.0, 0.0}).ratio, 0.5, 1e-12, 0.0);
}

TEST_CASE("a connector without a value for what is asked of it has no path", "[unit]") {
    CHECK(connector(angle, {0.0, 0.0, 100.0, 0.0, 0.0}).status == Status::no_path);
    const CheckResult turned = connector(angle, {0.0, 0.0, 0.0, 0.0, 500.0});
    CHECK(turned.status == Status::no_path);
    CHECK(test::says(turned.note, "moment"));
    model::ReportedConnector given = angle;
    given.couple_arm_in = 0.0;
    const CheckResult twisted = connector(given, pulled);
    CHECK(twisted.status == Status::no_path);
    CHECK(twisted.unit == "lb in");
    CHECK_CLOSE(twisted.demand, 137.5, 1e-12, 0.0);
    CHECK(test::says(twisted.note, "does not resist torque"));
    CHECK_CLOSE(connector(given, {1000.0, 0.0, 0.0, 0.0, 0.0}).ratio, 500.0 / 600.0, 1e-12, 0.0);
    given = angle;
    given.uplift_lb = 0.0;
    const CheckResult uplift = connector(given, pulled);
    CHECK(uplift.status == Status::no_path);
    CHECK(uplift.capacity == 0.0);
    given = angle;
    given.lateral_lb = 0.0;
    const CheckResult across = connector(given, pulled);
    CHECK(across.status == Status::no_path);
    CHECK_CLOSE(across.demand, 50.0, 1e-12, 0.0);
}

TEST_CASE("reported values meet a factored demand 1.6 times as large", "[unit]") {
    catalog::Resolved resolved = test::example_resolved();
    resolved.detail.basis.method = model::Method::lrfd;
    CHECK_CLOSE(end_result(resolved, block_support(angle), {1600.0, 80.0, 0.0, 220.0, 0.0}).ratio, 0.98214, 0.0, 1e-5);
}

TEST_CASE("nails in end grain take two thirds of their side grain value, wet", "[memory]") {
    const CheckResult result = fasteners(four_nails, pulled);
    // NDS 2018 Table 12N, 16d common (0.162 x 3.5), 1-1/2 in side member, G 0.55: 154 lb (from memory, to be confirmed)
    CHECK(test::prints_as(step_value(result, "Z"), 154.0, 1.0));
    // C_D 1.0, C_M 0.7, C_eg 0.67
    CHECK_CLOSE(result.capacity, step_value(result, "Z") * 0.7 * 0.67, 1e-12, 0.0);
    // 4 nails over 4 in: sum r^2 = 2 (2^2 + 0.667^2) = 8.889, r_max/sum = 0.225
    // sqrt(1000^2 + 50^2)/4 + 137.5 x 0.225 = 250.31 + 30.94 = 281.25
    CHECK_CLOSE(result.demand, 281.25, 0.0, 0.005);
    CHECK(result.status == Status::fails);
    CHECK(test::says(result.note, "no withdrawal"));
}

TEST_CASE("fasteners in end grain hold nothing that draws the end away or turns it", "[unit]") {
    const CheckResult drawn = fasteners(four_nails, {10.0, 0.0, 40.0, 0.0, 0.0});
    CHECK(drawn.status == Status::no_path);
    CHECK_CLOSE(drawn.demand, 40.0, 1e-12, 0.0);
    CHECK(fasteners(four_nails, {10.0, 0.0, -40.0, 0.0, 0.0}).status == Status::holds);
    CHECK(fasteners(four_nails, {0.0, 0.0, 0.0, 0.0, 90.0}).status == Status::no_path);
}

TEST_CASE("one nail resists no couple", "[unit]") {
    model::EndGrainFasteners one = four_nails;
    one.count = 1;
    CHECK(fasteners(one, pulled).status == Status::no_path);
    const CheckResult straight = fasteners(one, {30.0, 0.0, 0.0, 0.0, 0.0});
    CHECK_CLOSE(straight.demand, 30.0, 1e-12, 0.0);
    CHECK(straight.status == Status::holds);
}

TEST_CASE("fasteners too short, too thick or spread past the block give no number", "[bad-input]") {
    model::EndGrainFasteners given = four_nails;
    given.length_in = 2.0;  // 0.5 in into the block, under 6 D = 0.97
    CHECK(fasteners(given, pulled).status == Status::no_path);
    given = four_nails;
    given.spread_in = 6.0;
    CHECK(fasteners(given, pulled).status == Status::no_path);
    given = four_nails;
    given.diameter_in = 0.25;
    CHECK(fasteners(given, pulled).status == Status::missing_evidence);
}

TEST_CASE("nails through a doubled joist go through both pieces", "[unit]") {
    catalog::Resolved resolved = test::example_resolved();
    resolved.detail.framing.joists->members[0].plies = 2;
    // 3.5 - 3.0 = 0.5 in, under 6 D
    CHECK(end_result(resolved, block_support(four_nails), pulled).status == Status::no_path);
}

TEST_CASE("a screw's thinner root gives it less than a nail of its diameter", "[property]") {
    model::EndGrainFasteners screws = four_nails;
    screws.kind = model::EndGrainFasteners::Kind::wood_screw;
    CHECK(fasteners(screws, pulled).capacity < fasteners(four_nails, pulled).capacity);
}

TEST_CASE("an end without a holder or without a connection passes nothing", "[unit]") {
    const catalog::Resolved resolved = test::example_resolved();
    const CheckResult bare = end_result(resolved, block_support(std::monostate{}), pulled);
    CHECK(bare.status == Status::no_path);
    CHECK(std::isinf(bare.ratio));
    CHECK_CLOSE(bare.demand, std::hypot(1000.0, 50.0), 1e-12, 0.0);
    // Drawn away it passes nothing; pressed, it needs nothing.
    CHECK_CLOSE(end_result(resolved, block_support(std::monostate{}), {0.0, 0.0, 60.0, 0.0, 0.0}).demand, 60.0, 1e-12,
                0.0);
    CHECK(end_result(resolved, block_support(std::monostate{}), {0.0, 0.0, -60.0, 0.0, 0.0}).ratio == 0.0);
    demand::MemberSupport nowhere = block_support(std::monostate{});
    nowhere.holder.reset();
    nowhere.upper = true;
    nowhere.holder_part = {model::PartKind::joist, {}, model::PartPiece::not_described};
    const CheckResult alone = end_result(resolved, nowhere, pulled);
    CHECK(alone.status == Status::no_path);
    CHECK(test::link_to(alone) == "joist not described");
    CHECK(test::about(alone) == "block B1, upper end");
}

TEST_CASE("a joist on a beam bears down by itself and needs a connection only for the rest", "[unit]") {
    catalog::Resolved resolved = test::example_resolved();
    const demand::MemberSupport bare = test::joist_support(resolved, model::JoistSupport::Kind::beam, std::monostate{});
    CHECK(test::run_held(test::end_check, resolved, bare, {-500.0, 0.0, 0.0, 0.0, 0.0}).empty());
    CHECK(end_result(resolved, bare, {100.0, 0.0, 0.0, 0.0, 0.0}).status == Status::no_path);
    CHECK(end_result(resolved, bare, {-500.0, 20.0, 0.0, 0.0, 0.0}).status == Status::no_path);
    model::ReportedConnector tie = angle;
    tie.down_lb = 0.0;
    const demand::MemberSupport tied = test::joist_support(resolved, model::JoistSupport::Kind::beam, tie);
    // 600 up: 300 of 600 on a line; down nothing is asked of it.
    CHECK_CLOSE(end_result(resolved, tied, {600.0, 0.0, 0.0, 0.0, 0.0}).ratio, 0.5, 1e-12, 0.0);
    CHECK(test::run_held(test::end_check, resolved, tied, {-500.0, 0.0, 0.0, 0.0, 0.0}).empty());
    const demand::MemberSupport nailed = test::joist_support(resolved, model::JoistSupport::Kind::beam, four_nails);
    CHECK(end_result(resolved, nailed, {100.0, 0.0, 0.0, 0.0, 0.0}).status == Status::no_path);
}

TEST_CASE("a ledger's wood is taken as the joists' and the result says so", "[unit]") {
    catalog::Resolved resolved = test::example_resolved();
    const demand::MemberSupport support = test::joist_support(resolved, model::JoistSupport::Kind::ledger, four_nails);
    const CheckResult result = end_result(resolved, support, {100.0, 0.0, 0.0, 0.0, 0.0});
    CHECK(test::link_words(result) == "joist J1 > ledger S1: 4 nails 0.162 in x 3 1/2 in, into end grain");
    CHECK(test::says(result.note, "not specified"));
}

TEST_CASE("a place that carries nothing is not reported", "[unit]") {
    CHECK(test::run_held(test::end_check, test::example_resolved(), block_support(std::monostate{}), {}).empty());
    // Nor is a couple of no more than 1 lb in, which is the solver's noise.
    const auto turned = [](double torque_lb_in) {
        return test::run_held(test::end_check, test::example_resolved(), block_support(std::monostate{}),
                              {0.0, 0.0, 0.0, torque_lb_in, 0.0});
    };
    CHECK(turned(0.9).empty());
    CHECK(turned(1.1).size() == 1);
}

TEST_CASE("every end of every loaded block is looked at", "[unit]") {
    const catalog::Resolved resolved = test::example_resolved();
    const demand::Demand demand = test::example_demand(resolved, {1000.0, 0.0, 50.0}, {});
    CHECK(test::run_check(test::end_check, resolved, demand).size() == 4);
}
