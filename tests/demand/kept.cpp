// What a worker keeps from detail to detail changes no force, to the last digit.
#include "demand/kept.h"

#include "demand/demand.h"
#include "demand/plate_on_deck/kept_plates.h"
#include "support/shipped.h"

#include <catch2/catch.hpp>

#include <functional>
#include <stdexcept>

using namespace toehold;

namespace {

catalog::Resolved changed(const std::function<void(model::BaseDetail&)>& change) {
    model::BaseDetail detail = test::demo_detail("heron-landing-lags-in-deep-blocks");
    change(detail);
    return test::resolved_by_shipped(detail);
}

/// Neighbors in a search: alike in plate, in washers, in all but the framing, in nothing; one of them twice.
std::vector<catalog::Resolved> neighbors() {
    const auto screws = [](model::BaseDetail& detail) -> model::LagScrew& {
        return std::get<model::LagScrew>(on_deck(detail).anchors.front().fastener);
    };
    return {changed([](model::BaseDetail&) {}),
            changed([&](model::BaseDetail& detail) { screws(detail).length_in = 7.0; }),
            changed([](model::BaseDetail& detail) {
                for (model::Block& block : detail.framing.blocks) block.width_in = 5.5;
            }),
            changed([](model::BaseDetail& detail) { on_deck(detail).plate.thickness_in = 0.5; }),
            changed([](model::BaseDetail& detail) {
                on_deck(detail).anchors.front().washer = model::Washer{"washer-narrow-7/16"};
            }),
            changed([](model::BaseDetail&) {})};
}

void check_same(const demand::Demand& one, const demand::Demand& other) {
    REQUIRE(one.states.size() == other.states.size());
    for (std::size_t state = 0; state < one.states.size(); ++state) {
        const demand::State &a = one.states[state], &b = other.states[state];
        CHECK(a.direction_rad == b.direction_rad);
        CHECK(a.rotation_rad == b.rotation_rad);
        for (std::size_t anchor = 0; anchor < a.anchors.size(); ++anchor)
            CHECK(a.anchors[anchor].tension_lb == b.anchors[anchor].tension_lb);
        for (std::size_t support = 0; support < a.supports.size(); ++support) {
            CHECK(a.supports[support].force_lb == b.supports[support].force_lb);
            CHECK(a.supports[support].peak_psi == b.supports[support].peak_psi);
        }
    }
}

}  // namespace

TEST_CASE("forces are the same whatever was solved before", "[property]") {
    demand::Kept kept;
    for (const catalog::Resolved& resolved : neighbors()) {
        const auto afresh = demand::find_demand(resolved, demand::Sampling::probe());
        const auto after_others = demand::find_demand(resolved, demand::Sampling::probe(), &kept);
        REQUIRE(afresh.demand);
        REQUIRE(after_others.demand);
        check_same(*afresh.demand, *after_others.demand);
    }
}

TEST_CASE("the whole demand is the same after a probe of the same detail", "[property]") {
    const catalog::Resolved resolved = neighbors().front();
    demand::Kept kept;
    REQUIRE(demand::find_demand(resolved, demand::Sampling::probe(), &kept).demand);
    const auto after_probe = demand::find_demand(resolved, demand::Sampling::whole(), &kept);
    const auto afresh = demand::find_demand(resolved);
    REQUIRE(after_probe.demand);
    check_same(*afresh.demand, *after_probe.demand);
    CHECK(afresh.demand->proof.plate.value().mesh_error == after_probe.demand->proof.plate.value().mesh_error);
}

TEST_CASE("a plate takes other anchors in the same footprints only", "[bad-input]") {
    const catalog::Resolved resolved = neighbors().front();
    const demand::Bed bed = demand::find_bed(resolved);
    const std::vector<demand::Stiffness> stiffness(resolved.anchors.size(), {1e5, {}});
    mechanics::FlexiblePlateInput input = demand::plate_input(resolved, bed, stiffness, 1.0);
    std::vector<mechanics::FlexibleAnchor> anchors = input.anchors;
    const mechanics::FlexiblePlate plate(std::move(input));
    anchors.front().stiffness_lb_per_in = 2e5;
    CHECK_NOTHROW(plate.with(anchors));
    anchors.front().footprint.radius *= 2.0;
    CHECK_THROWS_AS(plate.with(anchors), std::invalid_argument);
    anchors.pop_back();
    CHECK_THROWS_AS(plate.with(anchors), std::invalid_argument);
}
