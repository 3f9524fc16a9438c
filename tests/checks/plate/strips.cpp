// The worst strips, against every strip of every state.
#include "checks/plate/strips.h"

#include "checks/run_check.h"
#include "demand/plate_on_deck/bed.h"
#include "support/compare.h"
#include "support/example.h"

#include <random>

using namespace toehold;
using checks::GoverningStrip;

namespace {

/// A bed of the detail's own, and forces of no pattern.
demand::Demand random_demand(const catalog::Resolved& resolved, unsigned seed) {
    demand::Demand demand = test::example_demand(resolved, {}, {});
    demand.supports = demand::find_bed(resolved).supports;
    std::mt19937 random(seed);
    std::uniform_real_distribution<double> part(0.0, 1.0);
    const demand::State still = demand.states.at(0);
    demand.states.clear();
    for (int number = 0; number < 25; ++number) {
        demand::State state = still;
        for (demand::AnchorForce& anchor : state.anchors)
            anchor.tension_lb = std::max(0.0, 900.0 * part(random) - 300.0);
        for (const demand::Support& support : demand.supports) {
            const model::Position a = support.outline.at(0), b = support.outline.at(support.outline.size() / 2);
            const double x = part(random), y = part(random);
            const model::Position at{a.x_in + x * (b.x_in - a.x_in), a.y_in + y * (b.y_in - a.y_in)};
            const double force = 1200.0 * part(random);
            state.supports.push_back({number % 5 == 0 ? 0.0 : force, at, force * (0.2 + part(random)), at, 4.0});
        }
        demand.states.push_back(state);
    }
    return demand;
}

struct Slow {
    double intensity_lb = 0.0;
    std::size_t state = 0;
    double normal_rad = 0.0;
};

void consider(Slow& worst, const mechanics::PlateStrip& strip, const mechanics::PlateSection& section,
              std::size_t state) {
    if (strip.moment_lb_in > 0.0 && strip.intensity_lb() > worst.intensity_lb)
        worst = {strip.intensity_lb(), state, section.normal_rad};
}

void check_same(const GoverningStrip& found, const Slow& slow) {
    REQUIRE(found.section.has_value() == (slow.intensity_lb > 0.0));
    if (!found.section) return;
    CHECK(found.strip.intensity_lb() == slow.intensity_lb);
    CHECK(found.state == slow.state);
    CHECK(found.section->normal_rad == slow.normal_rad);
}

void check_against_all(const catalog::Resolved& resolved, const demand::Demand& demand) {
    const checks::PlateStrips strips =
        checks::plate_strips({resolved, demand}, checks::post_foot(resolved.detail.post));
    REQUIRE(strips.patches.size() == demand.supports.size());
    Slow anchors, bearing, beyond;
    for (std::size_t index = 0; index < demand.states.size(); ++index) {
        const auto forces = checks::bearing_of(demand.states[index]);
        const auto plane = mechanics::plane_pressures(forces, strips.patches);
        const auto tension = checks::tensions_of(demand.states[index]);
        for (const checks::StripPlace& place : strips.places) {
            const mechanics::PlateSection& section = place.section;
            consider(section.anchor ? beyond : bearing, mechanics::bearing_strip(section, place.areas, forces, plane),
                     section, index);
            if (section.anchor) continue;
            for (const auto& strip : mechanics::anchor_strips(section, tension, strips.geometry.anchors))
                consider(anchors, strip, section, index);
        }
    }
    const checks::WorstStrips worst = checks::worst_strips(demand, strips);
    check_same(worst.anchors, anchors);
    check_same(worst.bearing, bearing);
    check_same(worst.beyond_anchors, beyond);
    CHECK(checks::worst_anchor_strip(demand, strips, anchors.state).strip.intensity_lb() == anchors.intensity_lb);
}

}  // namespace

TEST_CASE("the worst strips are the worst of every section in every state", "[second-method]") {
    for (const unsigned seed : {3U, 8U, 21U, 55U}) {
        INFO(seed);
        const catalog::Resolved resolved = test::example_resolved();
        check_against_all(resolved, random_demand(resolved, seed));
    }
}

TEST_CASE("an anchor close to the post, whose strip is narrow, is not passed over", "[second-method]") {
    // Anchor C, its head small, 0.3 in past two faces has strips of 0.6 in: half its pull to the inch, 575 lb; anchor
    // A's 800 lb need 533.
    catalog::Resolved resolved = test::example_resolved();
    resolved.anchors[2].at = {1.3, 1.3, 0.0};
    resolved.anchors[2].head_width_in = 0.2;
    on_deck(resolved.detail).plate.holes[2].center = {1.3, 1.3};
    demand::Demand demand = random_demand(resolved, 3U);
    demand.states.resize(2);
    for (demand::State& state : demand.states) {
        for (demand::AnchorForce& anchor : state.anchors) anchor.tension_lb = 0.0;
    }
    demand.states[0].anchors[0].tension_lb = 800.0;
    demand.states[1].anchors[2].tension_lb = 1150.0;
    check_against_all(resolved, demand);
    const auto post = checks::post_foot(resolved.detail.post);
    CHECK_CLOSE(
        checks::worst_strips(demand, checks::plate_strips({resolved, demand}, post)).anchors.strip.intensity_lb(),
        575.0, 1e-9, 0.0);
}
