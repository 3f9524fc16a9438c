#include "demand/preview.h"

#include "demand/uniform_bed.h"
#include "support/compare.h"
#include "support/example.h"
#include "support/two_row_closed_form.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <stdexcept>

namespace {

using namespace toehold;

constexpr double degree = std::numbers::pi / 180.0;
constexpr double outward = 90.0 * degree;

/// Force and moments about x and y of what presses up and what pulls down.
struct Balance {
    double up_lb = 0.0, about_x_lb_in = 0.0, about_y_lb_in = 0.0;
    void add(double force_up_lb, model::Position at) {
        up_lb += force_up_lb;
        about_x_lb_in += force_up_lb * at.y_in;
        about_y_lb_in -= force_up_lb * at.x_in;
    }
};

/// A triangle's pressure, linear between its corners, put at the middles of its sides with a third of its area each:
/// exact for force and moment of a linear pressure (three-point rule, exact to the second degree).
void add_pressure(Balance& balance, const demand::DeflectedShape& field) {
    for (const auto& corners : field.triangles) {
        const auto node = [&](std::size_t i) { return field.nodes[static_cast<std::size_t>(corners.at(i))]; };
        const model::Position a = node(0).at, b = node(1).at, c = node(2).at;
        const double area = 0.5 * ((b.x_in - a.x_in) * (c.y_in - a.y_in) - (c.x_in - a.x_in) * (b.y_in - a.y_in));
        CHECK(area >= -1e-12);
        for (std::size_t i = 0; i < 3; ++i) {
            const demand::DeflectedShape::Node one = node(i), other = node((i + 1) % 3);
            balance.add(area / 3.0 * 0.5 * (one.pressure_psi + other.pressure_psi),
                        {0.5 * (one.at.x_in + other.at.x_in), 0.5 * (one.at.y_in + other.at.y_in)});
        }
    }
}

Balance balance_of(const std::vector<demand::AnchorForce>& forces, const demand::DeflectedShape& field,
                   const catalog::Resolved& resolved) {
    Balance balance;
    for (std::size_t i = 0; i < forces.size(); ++i) balance.add(-forces[i].tension_lb, in_plan(resolved.anchors[i].at));
    add_pressure(balance, field);
    return balance;
}

/// `tolerance` is relative to the overturning moment, and for the force to that moment over the plate's 7 in.
void check_balance(const Balance& balance, double direction_rad, double down_lb, double tolerance) {
    constexpr double moment = 200.0 * 42.0;
    INFO("push towards " << direction_rad / degree << " degrees");
    CHECK_CLOSE(balance.up_lb, down_lb, 0.0, tolerance * moment / 7.0);
    CHECK_CLOSE(balance.about_x_lb_in, moment * std::sin(direction_rad), 0.0, tolerance * moment);
    CHECK_CLOSE(balance.about_y_lb_in, -moment * std::cos(direction_rad), 0.0, tolerance * moment);
}

double area_of(const demand::DeflectedShape& field) {
    double area = 0.0;
    for (const auto& [a, b, c] : field.triangles) {
        const model::Position p = field.nodes[static_cast<std::size_t>(a)].at,
                              q = field.nodes[static_cast<std::size_t>(b)].at,
                              r = field.nodes[static_cast<std::size_t>(c)].at;
        area += 0.5 * ((q.x_in - p.x_in) * (r.y_in - p.y_in) - (r.x_in - p.x_in) * (q.y_in - p.y_in));
    }
    return area;
}

}  // namespace

TEST_CASE("preview: a rigid plate pushed outward meets the transformed-section cubic", "[closed-form]") {
    for (const double bed : {2000.0, 28000.0, 400000.0}) {
        demand::Preview preview(test::uniform_bed(bed, 80000.0));
        const demand::PushResult push = preview.push(0, outward);
        const demand::PolarEnvelope polar = preview.polar_envelope(8);
        // Plate 5.5 wide, 7 deep; rows of two anchors 1.0 in and 6.0 in from the toe edge; 200 lb at 42 in.
        const test::TwoRows rows{5.5, 7.0, 1.0, 6.0, 2 * 80000.0, bed};
        const test::RowForces expected = test::two_row_tensions(rows, 8400.0);
        CHECK_CLOSE(push.rigid[0].tension_lb, expected.heel_lb / 2.0, 1e-9, 0.0);
        CHECK_CLOSE(push.rigid[2].tension_lb, expected.toe_lb / 2.0, 1e-9, 1e-9);
        CHECK_CLOSE(polar.rigid_lb[1][2], expected.heel_lb / 2.0, 1e-9, 0.0);
        // The whole push, in equal parts: the pattern is symmetric about it.
        CHECK_CLOSE(push.rigid[3].shear_y_lb, 50.0, 1e-12, 0.0);
    }
}

TEST_CASE("preview: what is drawn under the plate balances the push and the anchors", "[closed-form]") {
    catalog::Resolved resolved = test::uniform_bed(28000.0, 80000.0);
    demand::Preview preview(resolved);
    for (const double direction : {0.0, 30.0, 90.0, 215.0, 300.0}) {
        const demand::PushResult push = preview.push(0, direction * degree);
        REQUIRE(push.flexible_field);
        check_balance(balance_of(push.rigid, push.rigid_field, resolved), direction * degree, 0.0, 1e-9);
        // Springs at the middles of the sides carry it; between the nodes the pressure is curved.
        check_balance(balance_of(push.flexible, *push.flexible_field, resolved), direction * degree, 0.0, 0.03);
    }
}

TEST_CASE("preview: a downward force presses the plate down by itself", "[closed-form]") {
    catalog::Resolved resolved = test::uniform_bed(28000.0, 80000.0);
    resolved.detail.loads.concentrated->down_lb = 300.0;
    demand::Preview preview(resolved);
    REQUIRE(preview.cases().size() == 2);
    const demand::PushResult push = preview.push(1, 90.0 * degree);
    check_balance(balance_of(push.rigid, push.rigid_field, resolved), 90.0 * degree, 300.0, 1e-9);
    check_balance(balance_of(push.flexible, *push.flexible_field, resolved), 90.0 * degree, 300.0, 0.03);
    // It presses on the heel too, so that the push alone pulls more.
    CHECK(preview.worst_case(90.0 * degree) == 0);
}

TEST_CASE("preview: the rigid plate's grid covers plate and supports and nothing else", "[closed-form]") {
    catalog::Resolved resolved = test::example_resolved();
    const auto covered = [&resolved](const model::Outline& outline) {
        on_deck(resolved.detail).plate.outline = outline;
        return area_of(demand::Preview(resolved).push(0, 1.0).rigid_field);
    };
    CHECK_CLOSE(covered(model::RectangleOutline{5.5, 7.0, 0.0, {}}), 38.5, 1e-12, 0.0);
    // Corners of radius 1 take (4 - pi) from it.
    CHECK_CLOSE(covered(model::RectangleOutline{5.5, 7.0, 1.0, {}}), 38.5 - (4.0 - std::numbers::pi), 1e-5, 0.0);
    CHECK_CLOSE(covered(model::CircleOutline{8.0, {}}), 16.0 * std::numbers::pi, 1e-5, 0.0);
    // An L: 7 x 7 less 3 x 3.
    CHECK_CLOSE(
        covered(model::PolygonOutline{{{-3.5, -3.5}, {3.5, -3.5}, {3.5, 3.5}, {0.5, 3.5}, {0.5, 0.5}, {-3.5, 0.5}}}),
        49.0 - 4.0 * 3.0, 1e-12, 0.0);
}

TEST_CASE("preview: pressure stands on the blocks alone", "[unit]") {
    const catalog::Resolved resolved = test::example_resolved();
    const demand::PushResult push = demand::Preview(resolved).push(0, outward);
    // Blocks 3.5 in wide at y = -2.5 and +2.5: nothing bears between y = -0.75 and +0.75.
    for (const auto& node : push.rigid_field.nodes) {
        if (std::abs(node.at.y_in) < 0.75 - 1e-9) CHECK(node.pressure_psi == 0.0);
        CHECK(node.pressure_psi >= 0.0);
    }
    check_balance(balance_of(push.rigid, push.rigid_field, resolved), outward, 0.0, 1e-9);
}

TEST_CASE("preview: polar are the states of the full demand at nominal stiffness", "[unit]") {
    const catalog::Resolved resolved = test::example_resolved();
    const demand::PolarEnvelope polar = demand::Preview(resolved).polar_envelope(72);
    const demand::Outcome outcome = demand::find_demand(resolved);
    REQUIRE(outcome.demand);
    std::size_t compared = 0;
    double largest = 0.0;
    for (const demand::State& state : outcome.demand->states) {
        if (!outcome.demand->scenarios[state.scenario].nominal()) continue;
        const double step = state.direction_rad / (5.0 * degree);
        if (std::abs(step - std::round(step)) > 1e-9) continue;
        const auto index = static_cast<std::size_t>(std::lround(step));
        for (std::size_t i = 0; i < state.anchors.size(); ++i) {
            CHECK_CLOSE(polar.rigid_lb[i][index], state.rigid_tension_lb[i], 1e-9, 1e-6);
            CHECK_CLOSE(polar.flexible_lb[i][index], state.anchors[i].tension_lb, 1e-9, 1e-6);
            largest = std::max(largest, state.anchors[i].tension_lb);
            ++compared;
        }
    }
    CHECK(compared >= std::size_t{4} * 72);
    CHECK_CLOSE(polar.largest_lb, largest, 1e-9, 0.0);
}

TEST_CASE("preview: the hand calculation is moment over arm, and none for a push aslant", "[closed-form]") {
    demand::Preview preview(test::example_resolved());
    // Outward: heel row of two, 6 in from the toe edge: 8400 / 6 / 2. Along the rail: 4.75 in.
    const demand::PushResult straight = preview.push(0, outward);
    CHECK_CLOSE(straight.hand_lb[0].value(), 700.0, 1e-12, 0.0);
    CHECK_CLOSE(straight.hand_lb[2].value(), 0.0, 0.0, 1e-12);
    CHECK_CLOSE(preview.push(0, 0.0).hand_lb[0].value(), 8400.0 / 4.75 / 2.0, 1e-12, 0.0);
    for (const auto& tension : preview.push(0, 60.0 * degree).hand_lb) CHECK_FALSE(tension);
    // Nearly square counts as square, for a hand that drags.
    CHECK_CLOSE(preview.push(0, 90.4 * degree).hand_lb[0].value(), 700.0, 1e-12, 0.0);
    CHECK_FALSE(preview.push(0, 91.0 * degree).hand_lb[0]);
    CHECK_CLOSE(preview.polar_envelope(4).hand_lb[0], 8400.0 / 4.75 / 2.0, 1e-12, 0.0);
}

TEST_CASE("preview: both plates are offered whatever the basis asks for, and the largest is the basis's", "[unit]") {
    catalog::Resolved resolved = test::example_resolved();
    for (const auto plate : {model::PlateBehaviour::rigid, model::PlateBehaviour::flexible}) {
        resolved.detail.basis.plate = plate;
        demand::Preview preview(resolved);
        const demand::PolarEnvelope polar = preview.polar_envelope(24);
        const auto& asked_for = plate == model::PlateBehaviour::rigid ? polar.rigid_lb : polar.flexible_lb;
        REQUIRE(polar.flexible_lb.size() == 4);
        CHECK(polar.largest_lb ==
              *std::max_element(asked_for[polar.largest_anchor].begin(), asked_for[polar.largest_anchor].end()));
        const demand::PushResult push = preview.push(0, polar.largest_direction_rad);
        const auto& forces = plate == model::PlateBehaviour::rigid ? push.rigid : push.flexible;
        CHECK_CLOSE(forces[polar.largest_anchor].tension_lb, polar.largest_lb, 1e-9, 0.0);
    }
}

TEST_CASE("preview: only what the loads ask for counts", "[unit]") {
    catalog::Resolved resolved = test::example_resolved();
    test::push_outward_alone(resolved.detail);
    demand::Preview preview(resolved);
    const demand::PolarEnvelope polar = preview.polar_envelope(72);
    CHECK(polar.largest_direction_rad == outward);
    for (std::size_t i = 0; i < 72; ++i) CHECK((polar.rigid_lb[0][i] > 0.0) == (i == 18));
    // A push that was not asked for can be looked at all the same.
    CHECK(preview.push(0, -outward).rigid[2].tension_lb > 0.0);
}

TEST_CASE("preview: of pushes without company the largest moment counts, and leaving out the others changes nothing",
          "[property]") {
    catalog::Resolved resolved = test::example_resolved();
    const demand::PolarEnvelope alone = demand::Preview(resolved).polar_envelope(12);
    resolved.detail.loads.line = model::LineLoad{};
    resolved.detail.loads.line->push_lb_per_ft = 50.0;
    resolved.detail.loads.line->spacing_ft = 6.0;
    demand::Preview preview(resolved);
    CHECK(preview.worst_case(0.3) == 1);
    // 50 lb/ft over 6 ft is 300 lb: half as much again.
    const demand::PolarEnvelope both = preview.polar_envelope(12);
    for (std::size_t i = 0; i < 12; ++i) {
        CHECK_CLOSE(both.rigid_lb[0][i], 1.5 * alone.rigid_lb[0][i], 1e-9, 1e-6);
        CHECK_CLOSE(both.flexible_lb[0][i], 1.5 * alone.flexible_lb[0][i], 1e-9, 1e-6);
    }
}

TEST_CASE("preview: what cannot balance is said, and too few directions are refused", "[bad-input]") {
    catalog::Resolved resolved = test::example_resolved();
    CHECK_THROWS_AS(demand::Preview(resolved).polar_envelope(3), std::invalid_argument);
    // Anchors in one row at the heel over the only block: pushed inward, nothing on the other side pulls.
    resolved.anchors.resize(2);
    on_deck(resolved.detail).plate.holes.resize(2);
    resolved.detail.framing.blocks.resize(1);
    resolved.blocks.resize(1);
    resolved.anchors[0].at = {-2.0, -3.4};
    resolved.anchors[1].at = {2.0, -3.4};
    resolved.detail.framing.blocks[0].across_in = -2.5;
    demand::Preview preview(resolved);
    CHECK_THROWS_AS(preview.push(0, -outward), std::runtime_error);
}
