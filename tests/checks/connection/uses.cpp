// What forces come to with numbers alone, against the same uses put into words.
#include "checks/connection/connection.h"

#include "checks/connection/end_example.h"
#include "support/compare.h"

#include <algorithm>
#include <array>
#include <random>

using namespace toehold;
using checks::EndUse;
using checks::UseGroup;

namespace {

double slow_together(const std::vector<EndUse>& uses) {
    std::array<double, 3> largest{};
    for (const EndUse& use : uses) {
        double& group = largest.at(static_cast<std::size_t>(use.group));
        group = std::max(group, checks::ratio(use));
    }
    return largest[0] + largest[1] + largest[2];
}

/// One of every kind.
std::vector<model::EndConnection> connections() {
    using model::EndGrainFasteners;
    using model::SideAngles;
    EndGrainFasteners nails;
    nails.count = 4;
    nails.diameter_in = 0.162;
    nails.length_in = 3.5;
    nails.spread_in = 4.0;
    EndGrainFasteners screws = nails;
    screws.kind = EndGrainFasteners::Kind::structural_screw;
    screws.reported.lateral_lb = 200.0;
    screws.reported.withdrawal_lb = 150.0;
    EndGrainFasteners one = screws;
    one.count = 1;
    model::ToeNails toe;
    toe.count = 4;
    toe.diameter_in = 0.131;
    toe.length_in = 2.5;
    toe.spread_in = 3.0;
    const SideAngles both{2, 0.125, "steel-a36", SideAngles::Kind::wood_screw, 0.190, 1.5, 3, 1.5, 1.25};
    SideAngles single = both;
    single.sides = 1;
    single.per_leg = 1;
    SideAngles near_end{2, 0.25, "steel-a36", SideAngles::Kind::bolt, 0.5, 6.0, 2, 2.5, 1.25};
    model::ReportedConnector reported;
    reported.uplift_lb = 500.0;
    reported.down_lb = 900.0;
    reported.lateral_lb = 300.0;
    return {std::monostate{}, nails, screws, one, toe, both, single, near_end, reported};
}

}  // namespace

TEST_CASE("numbers alone come to what the uses in words come to", "[second-method]") {
    catalog::Resolved resolved = test::example_resolved();
    resolved.angle_metals["steel-a36"] = on_deck(resolved).plate_metal;
    std::mt19937 random(1937);
    std::uniform_real_distribution<double> force(-400.0, 400.0), couple(-900.0, 900.0);
    for (const model::EndConnection& connection : connections()) {
        const demand::Demand demand = test::held(resolved, test::block_support(connection), {});
        const std::vector<checks::EndPlace> places = checks::end_places({resolved, demand});
        const checks::EndStrength strength = checks::end_strength(resolved, places.at(0));
        INFO(connection.index());
        REQUIRE(strength.missing.empty());
        for (int trial = 0; trial < 30; ++trial) {
            demand::SupportReaction forces{force(random), force(random), force(random), couple(random), couple(random)};
            if (trial % 3 == 0) forces.torque_lb_in = forces.moment_lb_in = 0.0;
            forces.down_lb = std::max(0.0, -forces.up_lb);
            const std::vector<EndUse> uses = checks::uses_in_words(strength, forces);
            REQUIRE_FALSE(uses.empty());
            CHECK(checks::together(strength, forces) == slow_together(uses));
            for (const EndUse& use : uses) CHECK_FALSE(use.meaning.empty());
        }
    }
}

TEST_CASE("words are made only where somebody reads them", "[unit]") {
    int made = 0;
    const auto words = [&made] { return ++made, checks::UseWords{"P", format::phrase("force"), ""}; };
    checks::Uses numbers;
    numbers.add(UseGroup::shear, 30.0, 60.0, words);
    numbers.add(UseGroup::shear, 20.0, 60.0, words);
    numbers.add(UseGroup::lateral, 10.0, 40.0, words);
    numbers.add_unresisted_couple(UseGroup::withdrawal, 0.5, words);  // no more than the solver's noise
    CHECK(numbers.together() == 0.75);
    CHECK(made == 0);
    std::vector<EndUse> in_words;
    checks::Uses read(&in_words);
    read.add(UseGroup::shear, 30.0, 60.0, words);
    read.explain(format::phrase("why"));
    REQUIRE(in_words.size() == 1);
    CHECK(format::english(in_words[0].why) == "why");
    CHECK(made == 1);
}

TEST_CASE("The deck's load is told of where it presses more than the guard does", "[unit]") {
    // 100 lb down of the guard alone; with the deck's load 250.
    CHECK(checks::force_steps({-100.0, 0.0, 0.0, 0.0, 0.0, 100.0}).size() == 5);
    const auto steps = checks::force_steps({-100.0, 0.0, 0.0, 0.0, 0.0, 250.0});
    REQUIRE(steps.size() == 6);
    CHECK(steps.back().symbol == "R_g");
    CHECK(steps.back().value == 250.0);
}

TEST_CASE("What a connection carries of one force alone is what its report says", "[unit]") {
    model::ReportedConnector tie{"tie", "test value", 1200.0, 1500.0, 600.0, 3.5};
    tie.pull_lb = 400.0;
    const catalog::Resolved resolved = test::example_resolved();
    const demand::Demand demand = test::held(resolved, test::block_support(tie), {});
    const std::vector<checks::EndPlace> places = checks::end_places({resolved, demand});
    const checks::EndStrength strength = checks::end_strength(resolved, places.at(0));
    CHECK_CLOSE(checks::capacity_alone(strength, {0.0, 0.0, 1.0, 0.0, 0.0}), 400.0, 1e-9, 0.0);
    CHECK_CLOSE(checks::capacity_alone(strength, {1.0, 0.0, 0.0, 0.0, 0.0}), 1200.0, 1e-9, 0.0);
    CHECK_CLOSE(checks::capacity_alone(strength, {0.0, 1.0, 0.0, 0.0, 0.0}), 600.0, 1e-9, 0.0);
}
