// What holds the joists: against rolling, on their beams, and sideways by the boards.
#include "checks/connection/end_example.h"

#include "support/compare.h"

#include <cmath>

using namespace toehold;
using checks::CheckResult;
using checks::Status;
using test::step_value;

namespace {

using SupportKind = model::JoistSupport::Kind;

const model::EndGrainFasteners four_nails{model::EndGrainFasteners::Kind::nail, 0.162, 3.5, 4, 4.0};
const demand::SupportReaction rolled{0.0, 0.0, 0.0, 90.0, 0.0};

model::DeckingFastening two_screws() { return {0.164, 2.5, 2, 5.5, 0.0, {}}; }

/// Block B1's lower end presses on joist J1 and drags along it.
demand::Demand pushed(const catalog::Resolved& resolved) {
    demand::SupportReaction reaction;
    reaction.along_lb = -150.0;
    reaction.across_lb = 50.0;
    return test::held(resolved, test::block_support(std::monostate{}), reaction);
}

std::vector<CheckResult> sideways(catalog::Resolved resolved, const model::DeckingFastening& fastening) {
    on_deck(resolved.detail).layers.decking->fastening = fastening;
    return test::run_check("deck-sideways", resolved, pushed(resolved));
}

}  // namespace

TEST_CASE("an upright line of nails takes the couple of its outermost nail", "[closed-form]") {
    catalog::Resolved resolved = test::example_resolved();
    const demand::MemberSupport support = test::joist_support(resolved, SupportKind::ledger, four_nails);
    const CheckResult result = test::run_held("joist-roll", resolved, support, rolled).at(0);
    // Z' = 153.9 x 0.7 x 0.67 = 72.18 lb; r_max/sum r^2 = 0.225 (4 nails over 4 in): 72.18/0.225 = 320.8 lb in
    CHECK_CLOSE(result.capacity, 320.8, 1e-3, 0.0);
    CHECK_CLOSE(result.demand, 90.0, 1e-12, 0.0);
    CHECK(result.unit == "lb in");
    CHECK(test::about(result) == "joist J1 at ledger S1");
}

TEST_CASE("a connector takes the couple of its weaker line", "[closed-form]") {
    catalog::Resolved resolved = test::example_resolved();
    const model::ReportedConnector hanger{"hanger", "test value", 400.0, 1500.0, 300.0, 1.5};
    const demand::MemberSupport support = test::joist_support(resolved, SupportKind::ledger, hanger);
    // 400/2 x 1.5
    CHECK_CLOSE(test::run_held("joist-roll", resolved, support, rolled).at(0).capacity, 300.0, 1e-9, 0.0);
}

TEST_CASE("nothing keeps a bare joist on a beam from rolling", "[unit]") {
    catalog::Resolved resolved = test::example_resolved();
    const demand::MemberSupport support = test::joist_support(resolved, SupportKind::beam, std::monostate{});
    const CheckResult result = test::run_held("joist-roll", resolved, support, rolled).at(0);
    CHECK(result.status == Status::no_path);
    CHECK_CLOSE(result.demand, 90.0, 1e-12, 0.0);
    CHECK(test::run_held("joist-roll", resolved, support, {}).empty());
}

TEST_CASE("a rim is kept from rolling by what ties it to the joists", "[closed-form]") {
    catalog::Resolved resolved = test::example_resolved();
    resolved.detail.framing.rims = {{"R1", 0.0, -20.0, 20.0, 1.5, 9.25, "southern-pine", "no-2", 1, {}}};
    resolved.rims = {*resolved.joists};
    demand::MemberSupport support;
    support.kind = demand::MemberSupportKind::joist_to_rim;
    support.member = 2;
    support.holder = 4;
    support.holder_part = {model::PartKind::rim, "R1"};
    model::ReportedConnector tie{"tie", "test value", 400.0, 400.0, 300.0, 1.5};
    tie.pull_lb = 500.0;
    tie.height_in = 4.0;
    support.connection = tie;
    const CheckResult result = test::run_held("joist-roll", resolved, support, {0.0, 0.0, 0.0, 0.0, 900.0}).at(0);
    CHECK_CLOSE(result.capacity, 2000.0, 1e-9, 0.0);
    CHECK(test::about(result) == "rim R1 at joist J1");
    CHECK(test::link_words(result) == "rim R1 > joist J1: tie");
    support.connection = four_nails;
    CHECK(test::run_held("joist-roll", resolved, support, {0.0, 0.0, 0.0, 0.0, 900.0}).at(0).status == Status::no_path);
}

TEST_CASE("framing that can move without resistance has no path", "[unit]") {
    const catalog::Resolved resolved = test::example_resolved();
    demand::Demand demand = test::example_demand(resolved, {}, {});
    demand.framing = demand::FramingDemand{};
    demand.framing->unstable = format::phrase("joist J1 can roll");
    const auto results = test::run_check("joist-roll", resolved, demand);
    REQUIRE(results.size() == 1);
    CHECK(results[0].status == Status::no_path);
    CHECK(test::says(results[0].note, "joist J1 can roll"));
    CHECK(test::run_check(test::end_check, resolved, demand).empty());
}

TEST_CASE("a joist bears on its beam across the grain", "[closed-form]") {
    catalog::Resolved resolved = test::example_resolved();
    const demand::MemberSupport support = test::joist_support(resolved, SupportKind::beam, std::monostate{});
    // 900/(1.5 x 1.5) = 400 psi on 565 x 0.67 (wet) = 378.55
    const CheckResult result = test::run_held("support-bearing", resolved, support, {-900.0, 0.0, 0.0, 0.0, 0.0}).at(0);
    CHECK_CLOSE(result.demand, 400.0, 1e-12, 0.0);
    CHECK_CLOSE(result.capacity, 378.55, 1e-12, 0.0);
    CHECK(result.status == Status::fails);
    CHECK(test::link_words(result) == "joist J1 > beam S1: bearing");
    CHECK(test::run_held("support-bearing", resolved, support, {900.0, 0.0, 0.0, 0.0, 0.0}).empty());
}

TEST_CASE("a joist on its beam has C_b only 3 in from its end", "[published]") {
    // NDS 2018 3.10.4: (1.5 + 3/8)/1.5 = 1.25. The beam stands at y = -90, 1.5 in wide; beyond it the joist reaches
    // 2.75 or 3.05 in.
    for (const auto& [from_in, factor] : {std::pair{-93.5, 1.0}, std::pair{-93.8, 1.25}}) {
        catalog::Resolved resolved = test::example_resolved();
        resolved.detail.framing.joists->from_in = from_in;
        resolved.detail.framing.joists->to_in = 90.0;
        const demand::MemberSupport support = test::joist_support(resolved, SupportKind::beam, std::monostate{});
        const demand::SupportReaction pressed{-900.0, 0.0, 0.0, 0.0, 0.0};
        CHECK_CLOSE(test::run_held("support-bearing", resolved, support, pressed).at(0).capacity, 378.55 * factor, 1e-9,
                    0.0);
    }
}

TEST_CASE("each joist's boards share what its block ends and anchors put on it", "[closed-form][B1]") {
    // B1's lower end presses 150 lb on J1 and drags 50 lb along it: 158.1 lb at one place. A foot each side holds four
    // 5.5 in boards, eight screws. One: root 0.78 x 0.164 = 0.1279, Fyb 90,000, Fe 5550, mode IV: 0.1279^2/2.2 sqrt(2 x
    // 5550 x 90000/6) = 95.97 lb; wet 0.7: 67.18. Eight: 537.4.
    const auto results = sideways(test::example_resolved(), two_screws());
    REQUIRE(results.size() == 1);
    CHECK_CLOSE(results[0].demand, 158.114, 1e-5, 0.0);
    CHECK_CLOSE(step_value(results[0], "F_x"), 150.0, 1e-12, 0.0);
    CHECK_CLOSE(step_value(results[0], "s"), 24.0, 1e-12, 0.0);
    CHECK_CLOSE(results[0].capacity, 537.4, 1e-3, 0.0);
    CHECK(results[0].status == Status::holds);
    CHECK(test::link_words(results[0]) == "joist J1 > boards: deck-board fasteners");
    // The joist bends flat under 150 lb over 24 in: 150 x 24/8 = 450 lb in; 6 x 450/(9.25 x 1.5^2) = 129.7 psi.
    CHECK_CLOSE(step_value(results[0], "f_b"), 129.73, 1e-4, 0.0);
    model::DeckingFastening narrow = two_screws();
    narrow.board_width_in = 3.5;  // six boards
    CHECK_CLOSE(sideways(test::example_resolved(), narrow).at(0).capacity, 806.1, 1e-3, 0.0);
    narrow.board_width_in = 0.0;  // not stated: one board, two screws
    CHECK_CLOSE(sideways(test::example_resolved(), narrow).at(0).capacity, 134.4, 1e-3, 0.0);
}

TEST_CASE("a joist of two pieces bends flat in both", "[closed-form]") {
    catalog::Resolved resolved = test::example_resolved();
    resolved.detail.framing.joists->members[0].plies = 2;
    // 450 lb in on two of 9.25 x 1.5^2/6 = 3.469 in3.
    CHECK_CLOSE(step_value(sideways(resolved, two_screws()).at(0), "f_b"), 64.865, 1e-4, 0.0);
}

TEST_CASE("boards beyond a joist's end do not help, nor do those that make the rest uneven", "[closed-form]") {
    catalog::Resolved resolved = test::example_resolved();
    resolved.detail.framing.joists->from_in = -90.0;
    resolved.detail.framing.joists->to_in = 1.0;  // 3.5 in beyond the block at y = -2.5: 7 in about it, one board
    CHECK_CLOSE(sideways(resolved, two_screws()).at(0).capacity, 134.4, 1e-3, 0.0);
    resolved.detail.framing.joists->from_in = -6.0;  // as far on the other side
    resolved.detail.framing.joists->to_in = 90.0;
    CHECK_CLOSE(sideways(resolved, two_screws()).at(0).capacity, 134.4, 1e-3, 0.0);
}

TEST_CASE("boards that are not wood without a value are a finding with the force on one fastener", "[unit][B1]") {
    catalog::Resolved resolved = test::example_resolved();
    on_deck(resolved).decking->kind = catalog::DeckingKind::plastic_composite;
    CHECK(sideways(resolved, two_screws()).empty());
    on_deck(resolved.detail).layers.decking->fastening = two_screws();
    const auto findings = test::run_finding("deck-boards-lateral", resolved, pushed(resolved));
    REQUIRE(findings.size() == 1);
    CHECK(findings[0].severity == checks::Severity::caution);
    INFO(format::english(findings[0].message));
    CHECK(test::says(findings[0].message, "carries 19.76 lb at most, where 4 boards share 158.1 lb"));  // over eight
    model::DeckingFastening single = two_screws();
    single.per_crossing = 1;
    on_deck(resolved.detail).layers.decking->fastening = single;
    CHECK(test::says(test::run_finding("deck-boards-lateral", resolved, pushed(resolved)).at(0).message,
                     "carries 39.53 lb"));  // over four
    model::DeckingFastening reported = two_screws();
    reported.lateral_lb = 120.0;
    CHECK_CLOSE(sideways(resolved, reported).at(0).capacity, 960.0, 1e-12, 0.0);
    on_deck(resolved.detail).layers.decking->fastening = reported;
    CHECK(test::run_finding("deck-boards-lateral", resolved, pushed(resolved)).empty());
}

TEST_CASE("boards that lie loose are not looked at", "[unit]") {
    const catalog::Resolved resolved = test::example_resolved();
    CHECK(test::run_check("deck-sideways", resolved, pushed(resolved)).empty());
}
