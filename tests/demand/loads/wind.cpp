// Wind on the infill: its force and its factors by ASCE 7, and push and wind together held against every push there is.
#include "demand/loads/wind.h"

#include "demand/by_duration.h"
#include "demand/loads/load_cases.h"
#include "support/compare.h"
#include "support/example.h"

#include <cmath>
#include <numbers>

using namespace toehold;
using demand::LoadCase;

namespace {

constexpr double degree = std::numbers::pi / 180.0;

model::BaseDetail windy() {
    model::BaseDetail detail = test::example_detail();
    detail.guard.occupancy = model::Occupancy::one_and_two_family;
    detail.guard.tributary_length_in = 60.0;
    detail.loads.wind.emplace();
    detail.loads.wind->pressure_psf = 30.0;
    return detail;
}

const LoadCase& of(const std::vector<LoadCase>& cases, const std::string& id) {
    for (const LoadCase& load : cases) {
        if (load.id == id) return load;
    }
    throw std::logic_error("no case " + id);
}

}  // namespace

TEST_CASE("The area is the file's, or the infill's height times tributary length times solid ratio", "[closed-form]") {
    model::BaseDetail detail = windy();
    CHECK_CLOSE(demand::wind_area_ft2(detail).value(), 42.0 * 60.0 / 144.0, 1e-12, 0.0);
    detail.loads.wind->infill_height_in = 36.0;
    detail.loads.wind->solid_ratio = 0.4;
    CHECK_CLOSE(demand::wind_area_ft2(detail).value(), 36.0 * 60.0 / 144.0 * 0.4, 1e-12, 0.0);
    detail.loads.wind->area_ft2 = 9.0;
    CHECK(demand::wind_area_ft2(detail) == 9.0);
    detail.loads.wind->area_ft2.reset();
    detail.guard.tributary_length_in.reset();
    CHECK_FALSE(demand::wind_area_ft2(detail));
    CHECK(demand::load_cases(detail).size() == 1);
}

// ASCE 7-16 2.4.1: 0.6 W, and 0.75 L + 0.75 (0.6 W); 2.3.1: 1.0 W, and 1.0 W + 1.0 L. 30 psf on 17.5 sq ft is 525 lb.
TEST_CASE("Wind has factors of its own, and a duration of its own", "[published][A13]") {
    model::BaseDetail detail = windy();
    auto cases = demand::load_cases(detail);
    CHECK_CLOSE(of(cases, "wind").wind_lb, 0.6 * 525.0, 1e-12, 0.0);
    CHECK(of(cases, "wind").push_lb == 0.0);
    CHECK(of(cases, "wind").wind_height_in == 21.0);
    CHECK(of(cases, "wind").directions_rad.size() == 2);
    CHECK(of(cases, "wind").duration == demand::LoadDuration::wind);
    CHECK_CLOSE(of(cases, "wind-with-live").wind_lb, 0.45 * 525.0, 1e-12, 0.0);
    CHECK_CLOSE(of(cases, "wind-with-live").push_lb, 150.0, 1e-12, 0.0);
    detail.loads.wind->service_level = true;
    CHECK_CLOSE(of(demand::load_cases(detail), "wind").wind_lb, 525.0, 1e-12, 0.0);
    CHECK_CLOSE(of(demand::load_cases(detail), "wind-with-live").wind_lb, 0.75 * 525.0, 1e-12, 0.0);
    detail.loads.wind->service_level = false;
    detail.basis.method = model::Method::lrfd;
    cases = demand::load_cases(detail);
    CHECK_CLOSE(of(cases, "wind").wind_lb, 525.0, 1e-12, 0.0);
    CHECK_CLOSE(of(cases, "wind-with-live").wind_lb, 525.0, 1e-12, 0.0);
    CHECK_CLOSE(of(cases, "wind-with-live").push_lb, 200.0, 1e-12, 0.0);
    detail.loads.wind->with_live_load = false;
    CHECK(demand::load_cases(detail).size() == 2);
}

// Every push of A lb in in any direction with a wind of B lb in either way, added as vectors, against the one push that
// stands for the direction of their sum: never less, and met by some push.
TEST_CASE("A push and a wind together are one push, the largest for the direction of its moment", "[closed-form]") {
    for (const double wind_lb : {100.0, 500.0}) {  // less and more moment than the push's
        LoadCase load;
        load.push_lb = 150.0;
        load.height_in = 42.0;
        load.wind_lb = wind_lb;
        load.wind_height_in = 21.0;
        double nearest = 1e9;
        for (int step = 0; step < 3600; ++step) {
            const double angle = 0.1 * step * degree;
            const double x = 150.0 * 42.0 * std::cos(angle), y = 150.0 * 42.0 * std::sin(angle) + wind_lb * 21.0;
            const demand::ActingLoad one = demand::acting_load(load, std::atan2(y, x));
            const double sum = std::hypot(x, y), taken = one.push_lb * one.height_in;
            REQUIRE(taken >= sum * (1.0 - 1e-9));
            if (std::abs(angle - 80.0 * degree) < 1e-6) {
                nearest = taken - sum;
                CHECK_CLOSE(one.push_lb, std::hypot(150.0 * std::cos(angle), 150.0 * std::sin(angle) + wind_lb), 1e-9,
                            0.0);
            }
        }
        CHECK(std::abs(nearest) < 1e-6);
        const demand::ActingLoad outward = demand::acting_load(load, 90.0 * degree),
                                 inward = demand::acting_load(load, 270.0 * degree);
        CHECK_CLOSE(outward.push_lb, 150.0 + wind_lb, 1e-12, 0.0);
        CHECK_CLOSE(outward.push_lb * outward.height_in, 150.0 * 42.0 + wind_lb * 21.0, 1e-12, 0.0);
        CHECK_CLOSE(inward.push_lb, outward.push_lb, 1e-12, 0.0);
        // Along the rail the wind's moment must be leaned against; no push does where the wind's is the larger.
        const double root = 6300.0 * 6300.0 - std::pow(wind_lb * 21.0, 2);
        const demand::ActingLoad along = demand::acting_load(load, 0.0);
        CHECK_CLOSE(along.push_lb * along.height_in, root > 0.0 ? std::sqrt(root) : 0.0, 1e-9, 0.0);
    }
}

TEST_CASE("A load without wind acts as it is", "[unit]") {
    LoadCase load;
    load.push_lb = 200.0;
    load.height_in = 42.0;
    CHECK(demand::acting_load(load, 1.0).push_lb == 200.0);
    CHECK(demand::acting_load(load, 1.0).height_in == 42.0);
}

// NDS 2018 Table 2.3.2: ten minutes 1.6; Table N3: 1.0 for what is not L alone.
TEST_CASE("Wood is judged by the ten minutes of a wind, and by the basis under the guard's load", "[published]") {
    model::Basis basis;
    CHECK(model::load_duration(demand::for_duration(basis, demand::LoadDuration::guard_live)) == 1.0);
    CHECK(model::load_duration(demand::for_duration(basis, demand::LoadDuration::wind)) == 1.6);
    CHECK(model::time_effect(demand::for_duration(basis, demand::LoadDuration::proof_test)) == 1.0);
}

TEST_CASE("The demand of one duration has its own envelopes", "[unit]") {
    catalog::Resolved resolved = test::example_resolved();
    resolved.detail.guard.occupancy = model::Occupancy::one_and_two_family;
    resolved.detail.basis.plate = model::PlateBehaviour::rigid;
    const double live = demand::find_demand(resolved).demand->anchors[0].tension_lb;
    resolved.detail.loads.wind.emplace();
    resolved.detail.loads.wind->pressure_psf = 100.0;
    resolved.detail.loads.wind->area_ft2 = 20.0;
    const demand::Outcome outcome = demand::find_demand(resolved);
    REQUIRE(outcome.demand);
    REQUIRE(demand::durations(*outcome.demand).size() == 2);
    const demand::Demand of_live = demand::of_duration(*outcome.demand, demand::LoadDuration::guard_live);
    const demand::Demand of_wind = demand::of_duration(*outcome.demand, demand::LoadDuration::wind);
    CHECK_CLOSE(of_live.anchors[0].tension_lb, live, 1e-9, 0.0);
    CHECK(of_wind.anchors[0].tension_lb > live);
    CHECK(outcome.demand->anchors[0].tension_lb == of_wind.anchors[0].tension_lb);
    CHECK(of_live.states.size() + of_wind.states.size() == outcome.demand->states.size());
    CHECK(of_live.peak_bearing_psi < of_wind.peak_bearing_psi);
}

TEST_CASE("At a corner wind blows along both axes, each with its own combination", "[closed-form]") {
    model::BaseDetail detail = windy();
    detail.loads.wind->both_axes = true;
    const std::vector<demand::LoadCase> cases = demand::load_cases(detail);
    const demand::LoadCase &across = of(cases, "wind"), &along = of(cases, "wind-along");
    CHECK(along.wind_lb == across.wind_lb);
    for (const double toward : {0.0, std::numbers::pi}) {
        // Alone it is a push of that size at its own height, along its axis and nowhere else.
        CHECK_CLOSE(demand::acting_load(along, toward).push_lb, along.wind_lb, 1e-12, 0.0);
        CHECK_CLOSE(demand::acting_load(along, toward).height_in, along.wind_height_in, 1e-12, 0.0);
        CHECK_CLOSE(demand::acting_load(along, toward + 0.5 * std::numbers::pi).push_lb, 0.0, 0.0, 1e-6);
    }
    const demand::LoadCase &both = of(cases, "wind-with-live"), &both_along = of(cases, "wind-with-live-along");
    for (const double toward : {0.0, 0.4, 1.2, 2.5}) {
        const demand::ActingLoad one = demand::acting_load(both, toward + 0.5 * std::numbers::pi);
        const demand::ActingLoad other = demand::acting_load(both_along, toward);
        CHECK_CLOSE(one.push_lb, other.push_lb, 1e-12, 1e-12);
        CHECK_CLOSE(one.height_in, other.height_in, 1e-12, 1e-12);
    }
}
