// Beams in a plane against closed forms of beam theory (any textbook on the strength of materials), and against
// themselves turned and mirrored.
#include "mechanics/grillage/grillage.h"

#include "support/compare.h"

#include <cmath>
#include <stdexcept>
#include <vector>

namespace {

using namespace toehold::mechanics;

constexpr double bending = 1.2e7, torsion = 3.4e6, length_in = 48.0, load_lb = 100.0;
constexpr double fixed = 1e15;

GridSolution solve(const std::vector<Point>& nodes, const std::vector<GridMember>& members,
                   const std::vector<GridJoint>& joints, const std::vector<GridSupport>& supports,
                   const std::vector<GridLoad>& loads) {
    GridSolution solution = solve_grillage(nodes, members, joints, supports, loads);
    REQUIRE(solution.stable);
    CHECK(solution.residual < 1e-9);
    return solution;
}

}  // namespace

TEST_CASE("a simple beam under a load at its middle: P L^3/48 E I, P L/4, P/2", "[closed-form]") {
    const std::vector<Point> nodes = {{0, 0}, {length_in / 2, 0}, {length_in, 0}};
    const std::vector<GridMember> members = {{0, 1, bending, torsion, 0}, {1, 2, bending, torsion, 0}};
    const GridSolution s =
        solve(nodes, members, {}, {{0, fixed, fixed, 0}, {2, fixed, fixed, 0}}, {{1, -load_lb, 0, 0}});
    CHECK_CLOSE(s.motions[1].w_in, -load_lb * std::pow(length_in, 3) / 48 / bending, 1e-8, 0.0);
    CHECK_CLOSE(s.members[0].at_to.moment_lb_in, load_lb * length_in / 4, 1e-8, 0.0);
    CHECK_CLOSE(s.members[0].at_from.shear_lb, load_lb / 2, 1e-8, 0.0);
    CHECK_CLOSE(s.supports[0].up_lb, load_lb / 2, 1e-8, 0.0);
}

TEST_CASE("a cantilever with shear and twist: P L^3/3 E I + P L/G A_s, T L/G J", "[closed-form]") {
    const double shear = 5e5, torque = 50.0;
    const GridSolution s = solve({{0, 0}, {0, length_in}}, {{0, 1, bending, torsion, shear}}, {},
                                 {{0, fixed, fixed, fixed}}, {{1, -load_lb, 0, torque}});
    CHECK_CLOSE(s.motions[1].w_in, -load_lb * std::pow(length_in, 3) / 3 / bending - load_lb * length_in / shear, 1e-8,
                0.0);
    CHECK_CLOSE(s.motions[1].rx_rad, -load_lb * length_in * length_in / 2 / bending, 1e-8, 0.0);
    CHECK_CLOSE(s.motions[1].ry_rad, torque * length_in / torsion, 1e-8, 0.0);
    CHECK_CLOSE(s.members[0].at_from.moment_lb_in, -load_lb * length_in, 1e-8, 0.0);
    CHECK_CLOSE(std::abs(s.members[0].at_from.torque_lb_in), torque, 1e-8, 0.0);
}

TEST_CASE("a torque along a bar held at both ends is shared by distance", "[closed-form]") {
    const double at = 12.0, torque = 700.0;
    const GridSolution s =
        solve({{0, 0}, {at, 0}, {length_in, 0}}, {{0, 1, bending, torsion, 0}, {1, 2, bending, torsion, 0}}, {},
              {{0, fixed, fixed, 0}, {2, fixed, fixed, 0}}, {{1, 0, torque, 0}});
    CHECK_CLOSE(s.supports[0].about_x_lb_in, -torque * (length_in - at) / length_in, 1e-8, 0.0);
    CHECK_CLOSE(s.supports[1].about_x_lb_in, -torque * at / length_in, 1e-8, 0.0);
}

TEST_CASE("two simple beams crossing at their middles share a load as E I/L^3", "[closed-form]") {
    const double other_length = 72.0, other_bending = 2.5e7;
    const std::vector<Point> nodes = {
        {-length_in / 2, 0}, {0, 0}, {length_in / 2, 0}, {0, -other_length / 2}, {0, other_length / 2}};
    // Torsion next to nothing, so that the beams meet as on a point.
    const std::vector<GridMember> members = {{0, 1, bending, 1e-3, 0},
                                             {1, 2, bending, 1e-3, 0},
                                             {3, 1, other_bending, 1e-3, 0},
                                             {1, 4, other_bending, 1e-3, 0}};
    const std::vector<GridSupport> supports = {
        {0, fixed, 1e3, 0}, {2, fixed, 1e3, 0}, {3, fixed, 0, 1e3}, {4, fixed, 0, 1e3}};
    const GridSolution s = solve(nodes, members, {}, supports, {{1, -load_lb, 0, 0}});
    const double first = bending / std::pow(length_in, 3), second = other_bending / std::pow(other_length, 3);
    CHECK_CLOSE(2.0 * s.supports[0].up_lb, load_lb * first / (first + second), 1e-6, 0.0);
    CHECK_CLOSE(2.0 * s.supports[2].up_lb, load_lb * second / (first + second), 1e-6, 0.0);
}

TEST_CASE("a cantilever propped by a spring: the spring takes P/(1 + 3 E I/k L^3)", "[closed-form]") {
    const double spring = 900.0;
    const GridSolution s = solve({{0, 0}, {length_in, 0}}, {{0, 1, bending, torsion, 0}}, {},
                                 {{0, fixed, fixed, fixed}, {1, spring, 0, 0}}, {{1, -load_lb, 0, 0}});
    CHECK_CLOSE(s.supports[1].up_lb, load_lb / (1.0 + 3.0 * bending / (spring * std::pow(length_in, 3))), 1e-8, 0.0);
}

TEST_CASE("a joint's springs stand in series with the beams they join", "[closed-form]") {
    const double vertical = 4000.0;
    const std::vector<Point> nodes = {{0, 0}, {length_in, 0}, {length_in, 0}, {2 * length_in, 0}};
    const std::vector<GridMember> members = {{0, 1, bending, torsion, 0}, {2, 3, bending, torsion, 0}};
    const GridSolution s = solve(nodes, members, {{1, 2, vertical, 0, 0}},
                                 {{0, fixed, fixed, fixed}, {3, fixed, fixed, fixed}}, {{1, -load_lb, 0, 0}});
    // Two cantilevers of stiffness c = 3 E I/L^3; the second is reached through the spring: k' = 1/(1/vertical + 1/c).
    const double c = 3.0 * bending / std::pow(length_in, 3);
    const double through = 1.0 / (1.0 / vertical + 1.0 / c);
    CHECK_CLOSE(s.motions[1].w_in, -load_lb / (c + through), 1e-8, 0.0);
    CHECK_CLOSE(-s.joints[0].up_lb, load_lb * through / (c + through), 1e-8, 0.0);
}

TEST_CASE("a grid turned in plan turns its answer", "[property]") {
    const double angle = 0.7;
    const auto turned = [&](Point p) {
        return Point{p.x * std::cos(angle) - p.y * std::sin(angle), p.x * std::sin(angle) + p.y * std::cos(angle)};
    };
    const std::vector<Point> nodes = {{0, 0}, {30, 5}, {50, -20}, {10, 40}};
    std::vector<Point> other;
    for (const Point node : nodes) other.push_back(turned(node));
    const std::vector<GridMember> members = {
        {0, 1, bending, torsion, 1e6}, {1, 2, bending / 3, torsion, 0}, {1, 3, bending * 2, torsion / 5, 2e5}};
    const std::vector<GridSupport> supports = {{0, 1e5, 1e6, 1e6}, {2, 3e4, 0, 0}, {3, 1e3, 0, 0}};
    const GridSolution a = solve(nodes, members, {}, supports, {{1, -load_lb, 300.0, -120.0}});
    const double c = std::cos(angle), s = std::sin(angle);
    const GridSolution b =
        solve(other, members, {}, supports, {{1, -load_lb, 300.0 * c + 120.0 * s, 300.0 * s - 120.0 * c}});
    for (std::size_t node = 0; node < nodes.size(); ++node)
        CHECK_CLOSE(b.motions[node].w_in, a.motions[node].w_in, 1e-9, 1e-12);
    for (std::size_t m = 0; m < members.size(); ++m) {
        CHECK_CLOSE(b.members[m].at_from.moment_lb_in, a.members[m].at_from.moment_lb_in, 1e-9, 1e-7);
        CHECK_CLOSE(b.members[m].at_to.torque_lb_in, a.members[m].at_to.torque_lb_in, 1e-9, 1e-7);
    }
}

TEST_CASE("a part that can move freely is said to be unstable", "[bad-input]") {
    const std::vector<Point> nodes = {{0, 0}, {length_in, 0}};
    const std::vector<GridMember> members = {{0, 1, bending, torsion, 0}};
    const std::vector<GridLoad> loads = {{1, -load_lb, 0, 0}};
    const std::vector<GridSupport> hinge = {{0, 1e6, 0, 0}};
    CHECK_FALSE(solve_grillage(nodes, members, {}, hinge, loads).stable);
    CHECK_FALSE(solve_grillage(nodes, {}, {}, hinge, loads).stable);
}

TEST_CASE("a grid that cannot be is refused", "[bad-input]") {
    const std::vector<Point> nodes = {{0, 0}, {0, 0}};
    const std::vector<GridMember> without_length = {{0, 1, bending, torsion, 0}};
    CHECK_THROWS_AS(solve_grillage(nodes, without_length, {}, {}, {}), std::invalid_argument);
    const std::vector<GridLoad> nowhere = {{5, 1.0, 0, 0}};
    CHECK_THROWS_AS(solve_grillage(nodes, {}, {}, {}, nowhere), std::invalid_argument);
}
