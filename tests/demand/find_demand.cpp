#include "demand/demand.h"
#include "demand/demand_of.h"
#include "demand/uniform_bed.h"
#include "support/compare.h"
#include "support/example.h"
#include "support/two_row_closed_form.h"

#include <algorithm>
#include <cmath>
#include <numbers>

using namespace toehold;
using test::demand_of;

TEST_CASE("an outward push on a uniform bed meets the transformed-section cubic", "[closed-form]") {
    for (const double bed : {2000.0, 28000.0, 400000.0}) {
        catalog::Resolved resolved = test::uniform_bed(bed, 80000.0);
        test::push_outward_alone(resolved.detail);
        resolved.detail.basis.plate = model::PlateBehaviour::rigid;
        const demand::Demand demand = demand_of(resolved);
        // Plate 5.5 wide, 7 deep; rows of two anchors 1.0 in and 6.0 in from the toe edge; 200 lb at 42 in.
        const test::TwoRows rows{5.5, 7.0, 1.0, 6.0, 2 * 80000.0, bed};
        const test::RowForces expected = test::two_row_tensions(rows, 8400.0);
        CHECK_CLOSE(demand.anchors[0].tension_lb, expected.heel_lb / 2.0, 1e-9, 0.0);
        CHECK_CLOSE(demand.anchors[2].tension_lb, expected.toe_lb / 2.0, 1e-9, 1e-9);
    }
}

TEST_CASE("every state balances the push by itself", "[property]") {
    const catalog::Resolved resolved = test::example_resolved();
    const demand::Demand demand = demand_of(resolved);
    CHECK(demand.states.size() >= 7 * 72);
    for (const demand::State& state : demand.states) {
        double up = 0.0, about_x = 0.0, about_y = 0.0, shear_x = 0.0, shear_y = 0.0;
        for (std::size_t i = 0; i < state.anchors.size(); ++i) {
            const double tension = state.anchors[i].tension_lb;
            up -= tension;
            about_x -= tension * resolved.anchors[i].at.y_in;
            about_y += tension * resolved.anchors[i].at.x_in;
            shear_x += state.anchors[i].shear_x_lb;
            shear_y += state.anchors[i].shear_y_lb;
        }
        for (const demand::SupportForce& support : state.supports) {
            up += support.force_lb;
            about_x += support.force_lb * support.at.y_in;
            about_y -= support.force_lb * support.at.x_in;
        }
        const double x = std::cos(state.direction_rad), y = std::sin(state.direction_rad);
        REQUIRE(std::abs(up) < 1e-6);
        REQUIRE(std::abs(about_x - 8400.0 * y) < 1e-5);
        REQUIRE(std::abs(about_y + 8400.0 * x) < 1e-5);
        REQUIRE(std::abs(shear_x - 200.0 * x) < 1e-9);
        REQUIRE(std::abs(shear_y - 200.0 * y) < 1e-9);
    }
    CHECK(demand.proof.force_residual < 1e-8);
    CHECK(demand.proof.moment_residual < 1e-8);
}

TEST_CASE("a symmetric base gives its four anchors the same envelope, in mirrored directions", "[property]") {
    catalog::Resolved resolved = test::example_resolved();
    // Framing that gives is a part of the demand, so it must be symmetric too.
    for (model::Block& block : resolved.detail.framing.blocks) block.to_end.connection = block.from_end.connection;
    for (const auto plate : {model::PlateBehaviour::rigid, model::PlateBehaviour::flexible}) {
        resolved.detail.basis.plate = plate;
        const demand::Demand demand = demand_of(resolved);
        // The triangle mesh of a symmetric plate is not itself symmetric; its error is of this order.
        const double tolerance = plate == model::PlateBehaviour::rigid ? 1e-6 : 2e-3;
        for (std::size_t i = 1; i < 4; ++i) {
            CHECK_CLOSE(demand.anchors[i].tension_lb, demand.anchors[0].tension_lb, tolerance, 0.0);
            CHECK(demand.anchors[i].tension_low_lb <= demand.anchors[i].tension_lb);
        }
        const double turn = demand.anchors[2].direction_rad - demand.anchors[0].direction_rad;
        CHECK_CLOSE(std::abs(std::remainder(turn, 2.0 * std::numbers::pi)), std::numbers::pi, 50.0 * tolerance, 0.0);
    }
}

TEST_CASE("the flexible plate is the default, says how accurate it is, and stands beside the rigid one", "[unit]") {
    catalog::Resolved resolved = test::example_resolved();
    const demand::Demand demand = demand_of(resolved);
    REQUIRE(demand.proof.plate);
    CHECK(demand.proof.plate->mesh_error < 0.01);
    CHECK(demand.proof.plate->reduction_error < 1e-4);
    REQUIRE(demand.bending);
    CHECK(demand.bending->softest_lb_in_per_rad < demand.bending->rigid_softest_lb_in_per_rad);
    REQUIRE(demand.field);
    double largest_pressure = 0.0;
    for (const auto& node : demand.field->nodes) largest_pressure = std::max(largest_pressure, node.pressure_psi);
    CHECK(largest_pressure > 0.0);
    CHECK(largest_pressure <= 1.001 * demand.peak_bearing_psi);
    resolved.detail.basis.plate = model::PlateBehaviour::rigid;
    const demand::Demand rigid = demand_of(resolved);
    CHECK_FALSE(rigid.proof.plate);
    CHECK_FALSE(rigid.field);
    CHECK_FALSE(rigid.bending);
    CHECK_FALSE(rigid.anchors[0].flexible_tension_lb);
    CHECK_CLOSE(demand.anchors[0].rigid_tension_lb, rigid.anchors[0].rigid_tension_lb, 2e-3, 0.0);
}

TEST_CASE("a flexible plate a hundred thousand times as stiff meets the transformed-section cubic", "[closed-form]") {
    for (const double bed : {2000.0, 28000.0, 400000.0}) {
        catalog::Resolved resolved = test::uniform_bed(bed, 80000.0);
        test::push_outward_alone(resolved.detail);
        resolved.detail.basis.plate = model::PlateBehaviour::flexible;
        on_deck(resolved).plate_metal.modulus_psi *= 1e5;
        const demand::Demand demand = demand_of(resolved);
        const test::RowForces expected = test::two_row_tensions({5.5, 7.0, 1.0, 6.0, 2 * 80000.0, bed}, 8400.0);
        // What is left is the bed's quadrature where contact ends inside an element.
        CHECK_CLOSE(demand.anchors[0].flexible_tension_lb.value(), expected.heel_lb / 2.0, 2e-3, 0.0);
        CHECK_CLOSE(demand.anchors[2].flexible_tension_lb.value(), expected.toe_lb / 2.0, 2e-3,
                    1e-3 * expected.heel_lb);
    }
}

TEST_CASE("preload presses the plate down and adds to what the anchors pull", "[property]") {
    catalog::Resolved resolved = test::example_resolved();
    const double without = demand_of(resolved).anchors[0].tension_lb;
    on_deck(resolved.detail).anchors[0].preload_lb = 1000.0;
    const demand::Demand preloaded = demand_of(resolved);
    CHECK(preloaded.anchors[0].tension_lb > without);
    CHECK(std::any_of(preloaded.assumptions.begin(), preloaded.assumptions.end(), [](const format::Phrase& one) {
        return format::english(one).find("preload") != std::string::npos;
    }));
}

TEST_CASE("the maximum between the sampled directions is found", "[unit]") {
    catalog::Resolved resolved = test::uniform_bed(28000.0, 80000.0);
    resolved.detail.basis.plate = model::PlateBehaviour::rigid;
    const demand::Demand demand = demand_of(resolved);
    double sampled = 0.0;
    for (std::size_t i = 0; i < 72; ++i) sampled = std::max(sampled, demand.states[i].anchors[0].tension_lb);
    CHECK(demand.anchors[0].tension_lb >= sampled);
}

TEST_CASE("forces grow in proportion to the push, and LRFD factors them by 1.6", "[property]") {
    catalog::Resolved resolved = test::example_resolved();
    const double tension = demand_of(resolved).anchors[0].tension_lb;
    resolved.detail.loads.concentrated->push_lb = 600.0;
    CHECK_CLOSE(demand_of(resolved).anchors[0].tension_lb, 3.0 * tension, 1e-9, 0.0);
    resolved.detail.loads.concentrated->push_lb = 200.0;
    resolved.detail.basis.method = model::Method::lrfd;
    const demand::Demand factored = demand_of(resolved);
    CHECK_CLOSE(factored.anchors[0].tension_lb, 1.6 * tension, 1e-9, 0.0);
    CHECK_CLOSE(factored.anchors[0].proof_tension_lb, 2.5 * tension, 1e-9, 0.0);
}

TEST_CASE("a downward force adds a case and never hides the push alone", "[unit]") {
    catalog::Resolved resolved = test::example_resolved();
    const double tension = demand_of(resolved).anchors[0].tension_lb;
    resolved.detail.loads.concentrated->down_lb = 200.0;
    const demand::Demand with_down = demand_of(resolved);
    CHECK(with_down.cases.size() == 2);
    CHECK_CLOSE(with_down.anchors[0].tension_lb, tension, 1e-9, 0.0);
    resolved.detail.loads.concentrated->down_lb = -200.0;
    CHECK(demand_of(resolved).anchors[0].tension_lb > tension);
}

TEST_CASE("a file without loads is given the code's 200 lb, and 50 plf over 6 ft is 300 lb", "[unit]") {
    catalog::Resolved resolved = test::example_resolved();
    resolved.detail.loads = {};
    CHECK(demand_of(resolved).cases.at(0).push_lb == 200.0);
    resolved.detail.loads.stated = true;
    resolved.detail.loads.line = model::LineLoad{50.0, 6.0, 0.0};
    CHECK_CLOSE(demand_of(resolved).cases.at(1).push_lb, 300.0, 1e-12, 0.0);
}

TEST_CASE("a plate with no framing under it bears on its layers, and says so", "[unit]") {
    catalog::Resolved resolved = test::example_resolved();
    resolved.detail.framing.blocks.clear();
    resolved.blocks.clear();
    for (catalog::Anchor& anchor : resolved.anchors) {
        anchor.seat.reset();
        anchor.thread_in_block_in = 0.0;
    }
    const demand::Demand demand = demand_of(resolved);
    CHECK(demand.supports.at(0).kind == demand::SupportKind::open_bed);
    CHECK(std::any_of(demand.assumptions.begin(), demand.assumptions.end(), [](const format::Phrase& one) {
        return format::english(one).find("No block or joist") != std::string::npos;
    }));
}

TEST_CASE("a base that nothing can balance is said to turn over, without a number", "[bad-input]") {
    catalog::Resolved resolved = test::example_resolved();
    resolved.anchors.resize(2);                // heel row only ...
    resolved.detail.framing.blocks.resize(1);  // ... and bearing only under that row
    resolved.blocks.resize(1);
    resolved.detail.framing.blocks[0].across_in = -4.0;
    resolved.detail.framing.blocks[0].width_in = 2.0;
    const demand::Outcome outcome = demand::find_demand(resolved);
    CHECK_FALSE(outcome.demand);
    CHECK(outcome.overturns);
    CHECK(format::english(outcome.failure).find("turn over") != std::string::npos);
}

TEST_CASE("rotational stiffness is moment over the rotation of the foot, in every direction looked at",
          "[closed-form]") {
    catalog::Resolved resolved = test::uniform_bed(28000.0, 80000.0);
    resolved.detail.basis.plate = model::PlateBehaviour::rigid;  // a mesh is not alike on both sides to six digits
    const demand::Demand demand = demand_of(resolved);
    const demand::RotationalStiffness& stiffness = demand.rotational_stiffness;
    CHECK(stiffness.samples().size() >= 72);
    for (const demand::State& state : demand.states) {
        const demand::LoadCase& load = demand.cases[state.load_case];
        CHECK_CLOSE(stiffness.at(state.direction_rad), load.push_lb * load.height_in / state.rotation_rad, 1e-9, 0.0);
    }
    // Plate and anchors are alike on both sides of the outward axis: 20 and 160 degrees were both looked at.
    const double twenty = std::numbers::pi / 9.0;
    CHECK_CLOSE(stiffness.at(twenty), stiffness.at(std::numbers::pi - twenty), 1e-6, 0.0);
    CHECK_CLOSE(stiffness.at(-0.3), stiffness.at(2.0 * std::numbers::pi - 0.3), 1e-12, 0.0);
    const double low = stiffness.samples()[3].lb_in_per_rad, high = stiffness.samples()[4].lb_in_per_rad;
    const double half = 0.5 * (stiffness.samples()[3].direction_rad + stiffness.samples()[4].direction_rad);
    CHECK_CLOSE(stiffness.at(half), 0.5 * (low + high), 1e-12, 0.0);
}

TEST_CASE("rotational stiffness keeps the smaller of two values in one direction, and goes round", "[unit]") {
    demand::RotationalStiffness stiffness;
    CHECK_THROWS_AS(stiffness.at(0.0), std::logic_error);
    stiffness.add({3.0, 300.0});
    CHECK(stiffness.at(1.0) == 300.0);
    stiffness.add({1.0, 100.0});
    stiffness.add({1.0, 200.0});
    CHECK(stiffness.samples().size() == 2);
    CHECK(stiffness.at(1.0) == 100.0);
    CHECK_CLOSE(stiffness.at(2.0), 200.0, 1e-12, 0.0);
    const double turn = 2.0 * std::numbers::pi;
    CHECK_CLOSE(stiffness.at(0.0), 300.0 - 200.0 * (turn - 3.0) / (turn - 2.0), 1e-12, 0.0);
}
