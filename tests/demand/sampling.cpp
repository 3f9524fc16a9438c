#include "demand/sampling.h"

#include "demand/demand.h"
#include "demand/framing/together.h"
#include "demand/uniform_bed.h"
#include "support/shipped.h"

#include <catch2/catch.hpp>

#include <algorithm>

using namespace toehold;

namespace {

using demand::Demand;

/// Every state of the probe is under a case, a stiffness and a direction that the whole was solved for.
void check_subset(const Demand& probe, const Demand& whole) {
    REQUIRE(probe.cases.size() == whole.cases.size());
    CHECK(probe.states.size() < whole.states.size());
    for (const demand::State& one : probe.states) {
        const bool found = std::any_of(whole.states.begin(), whole.states.end(), [&](const demand::State& other) {
            return one.load_case == other.load_case && one.scenario == other.scenario &&
                   one.direction_rad == other.direction_rad;
        });
        REQUIRE(found);
    }
}

void check_anchors(const Demand& probe, const Demand& whole) {
    for (std::size_t i = 0; i < whole.anchors.size(); ++i) {
        constexpr double more = 1.0 + demand::probe_margin;
        CHECK(probe.anchors[i].tension_lb <= more * whole.anchors[i].tension_lb + 1e-6);
        CHECK(probe.anchors[i].shear_lb <= more * whole.anchors[i].shear_lb + 1e-6);
        CHECK(probe.anchors[i].tension_lb >= 0.5 * whole.anchors[i].tension_lb - 1e-6);
    }
}

void check_members(const Demand& probe, const Demand& whole) {
    const auto few = demand::largest_actions(probe), all = demand::largest_actions(whole);
    REQUIRE(few.size() == all.size());
    for (std::size_t i = 0; i < few.size(); ++i) {
        for (const auto action : demand::actions_of_a_member)
            CHECK(few[i].*action <= (1.0 + demand::probe_margin) * all[i].*action + 1e-6);
    }
}

}  // namespace

TEST_CASE("a probe never exceeds the whole demand by more than its margin", "[property]") {
    std::size_t compared = 0;
    for (const std::string& name : test::demo_names()) {
        INFO(name);
        const catalog::Resolved resolved = test::shipped_detail(name);
        const demand::Outcome probe = demand::find_demand(resolved, demand::Sampling::probe());
        const demand::Outcome whole = demand::find_demand(resolved);
        CHECK(probe.demand.has_value() == whole.demand.has_value());
        if (!probe.demand || !whole.demand) continue;
        ++compared;
        check_subset(*probe.demand, *whole.demand);
        check_anchors(*probe.demand, *whole.demand);
        check_members(*probe.demand, *whole.demand);
        CHECK(probe.demand->peak_bearing_psi <=
              (1.0 + demand::probe_margin) * (1.0 + demand::probe_margin) * whole.demand->peak_bearing_psi);
    }
    CHECK(compared >= 12);
}

TEST_CASE("a probe of a rigid plate is a part of the whole to the last digit, and has no shape to draw", "[property]") {
    catalog::Resolved resolved = test::uniform_bed(28000.0, 80000.0);
    resolved.detail.basis.plate = model::PlateBehaviour::rigid;
    const demand::Outcome probe = demand::find_demand(resolved, demand::Sampling::probe());
    REQUIRE(probe.demand);
    CHECK(probe.demand->scenarios.size() == 1);
    CHECK(probe.demand->states.size() == 12);
    CHECK_FALSE(probe.demand->field);
    const demand::Outcome whole = demand::find_demand(resolved);
    REQUIRE(whole.demand);
    CHECK(probe.demand->states[1].anchors[0].tension_lb ==
          Approx(whole.demand->states[6].anchors[0].tension_lb).epsilon(1e-9));
}
