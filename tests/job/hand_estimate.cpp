// The hand estimate a detail is begun with, by hand.
#include "job/design.h"
#include "job/layout.h"
#include "model/member.h"
#include "support/shipped.h"

#include <catch2/catch.hpp>

using namespace toehold;
using test::shipped_catalog;

TEST_CASE("the push is the code's", "[published]") {
    // IRC 2021 Table R301.5: 200 lb. IBC 2021 1607.9.1: 200 lb, or 50 plf of rail, 20 plf where access is limited.
    job::Job asked;
    CHECK(job::code_push_lb(asked) == 200.0);
    asked.occupancy = model::Occupancy::other;
    asked.tributary_length_in = 72.0;
    CHECK(job::code_push_lb(asked) == Approx(300.0));
    asked.tributary_length_in = 36.0;
    CHECK(job::code_push_lb(asked) == 200.0);
    asked.occupancy = model::Occupancy::limited;
    asked.tributary_length_in = 144.0;
    CHECK(job::code_push_lb(asked) == Approx(240.0));
}

TEST_CASE("the corner anchor's tension is the moment over its arm", "[closed-form]") {
    // 200 lb x 36 in = 7,200 lb in; anchors at 2.5 in: 3.54 in out; the pressed corner at 3.5 in, half way: 2.47 in.
    const job::Design design = job::design_for({}, shipped_catalog());
    CHECK(design.moment_lb_in == Approx(7200.0));
    CHECK(design.row_x_in == 2.5);
    CHECK(design.row_y_in == 2.5);
    CHECK(design.tension_lb == Approx(7200.0 / (3.5355 + 2.4749)).epsilon(1e-3));
}

TEST_CASE("a higher guard or a longer rail never gets a smaller base", "[property]") {
    for (const job::Place place : {job::Place::between_joists, job::Place::over_a_joist, job::Place::corner}) {
        double plate_in2 = 0.0, hardware_lb = 0.0;
        for (const double length_in : {36.0, 60.0, 72.0, 96.0}) {
            job::Job asked;
            asked.place = place;
            asked.occupancy = model::Occupancy::other;
            asked.guard_height_in = 42.0;
            asked.tributary_length_in = length_in;
            const job::Started started = job::start(asked, shipped_catalog());
            const auto& outline = std::get<model::RectangleOutline>(model::on_deck(started.detail).plate.outline);
            const auto& end =
                std::get<model::ReportedConnector>(started.detail.framing.blocks.front().from_end.connection);
            CHECK(outline.width_in * outline.depth_in >= plate_in2);
            CHECK(end.uplift_lb >= hardware_lb);
            plate_in2 = outline.width_in * outline.depth_in;
            hardware_lb = end.uplift_lb;
        }
    }
}

TEST_CASE("the beam stands clear of the nuts under both rows", "[property]") {
    for (const job::Place place : {job::Place::between_joists, job::Place::over_a_joist, job::Place::beside_the_rim,
                                   job::Place::corner, job::Place::cantilever}) {
        for (const double span_in : {48.0, 96.0, 180.0}) {
            job::Job asked;
            asked.place = place;
            const job::Design design = job::design_for(asked, shipped_catalog());
            const job::Layout layout = job::lay_out(asked, design, span_in);
            constexpr double half_backing_in = 1.5;
            for (const double row_in : {-design.row_y_in, design.row_y_in}) {
                const double away_in = std::abs(layout.beam_at_in - row_in) - 0.5 * job::beam_bearing_in;
                INFO(static_cast<int>(place) << " span " << span_in);
                CHECK(away_in > half_backing_in);
            }
            CHECK(layout.joists_end_in > layout.beam_at_in);
        }
    }
}

TEST_CASE("joists reach past their beam by no more than a quarter of their span", "[property]") {
    for (const job::Place place : {job::Place::between_joists, job::Place::over_a_joist, job::Place::beside_the_rim,
                                   job::Place::corner, job::Place::cantilever}) {
        job::Job asked;
        asked.place = place;
        const job::Started started = job::start(asked, shipped_catalog());
        const auto& supports = started.detail.framing.supports;
        const double span_in = supports[1].at_in - supports[0].at_in;
        CHECK(*started.detail.framing.joists->to_in - supports[1].at_in <= 0.25 * span_in + 1e-9);
    }
}
