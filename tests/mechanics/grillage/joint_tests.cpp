// Joints that stand beside the axes they join, by statics, and what a grid refuses.
#include "mechanics/grillage/grillage.h"

#include "support/compare.h"

#include <cmath>
#include <limits>
#include <stdexcept>
#include <vector>

namespace {

using namespace toehold::mechanics;

constexpr double bending = 1.2e7, torsion = 3.4e6;
constexpr double fixed = 1e15;
constexpr double bar_in = 60.0, beam_in = 30.0, arm_in = 0.75, load_lb = 100.0;

/// A bar along x, clamped at its ends; from its face at the middle hangs a beam along y, which a support holds up at
/// its far end. `beam_from_y`: where that beam's node is; the joint is at the face.
Grillage hung_beam(double spring_lb_per_in, double about_x_lb_in, double beam_from_y) {
    return {{{0, 0}, {0.5 * bar_in, 0}, {bar_in, 0}, {0.5 * bar_in, beam_from_y}, {0.5 * bar_in, arm_in + beam_in}},
            {{0, 1, bending, torsion, 0}, {1, 2, bending, torsion, 0}, {3, 4, bending, torsion, 0}},
            {{1, 3, spring_lb_per_in, about_x_lb_in, 0, Point{0.5 * bar_in, arm_in}}},
            {{0, fixed, fixed, fixed}, {2, fixed, fixed, fixed}, {4, fixed, 0, fixed}}};
}

const std::vector<Point> two_nodes = {{0, 0}, {10, 0}};
const std::vector<GridMember> one_member = {{0, 1, bending, torsion, 0}};
const std::vector<GridSupport> clamped = {{0, fixed, fixed, fixed}};

}  // namespace

TEST_CASE("a beam hung from the face of a bar twists it by R e and drops by R/k", "[closed-form]") {
    const double k = 4000.0, at = 12.0;
    const Grillage grid = hung_beam(k, 0.0, arm_in);
    const std::vector<MemberLoad> loads = {{2, at, -load_lb, 0, 0}};
    const GridSolution s = grid.solve({}, loads);
    REQUIRE(s.stable);
    CHECK(s.residual < 1e-9);
    const double reaction = load_lb * (beam_in - at) / beam_in, torque = -reaction * arm_in;
    CHECK_CLOSE(s.joints[0].up_lb, reaction, 1e-8, 0.0);
    CHECK_CLOSE(s.joints[0].about_x_lb_in, 0.0, 0.0, 1e-9);
    CHECK(s.joints[0].node == 3);
    CHECK_CLOSE(s.supports[2].up_lb, load_lb * at / beam_in, 1e-8, 0.0);
    for (const int half : {0, 1}) {
        CHECK_CLOSE(grid.extremes(s, half, loads).torque_lb_in, -0.5 * torque, 1e-7, 0.0);
        CHECK_CLOSE(grid.extremes(s, half, loads).moment_lb_in, reaction * bar_in / 8.0, 1e-8, 0.0);
    }
    const double sunk = -reaction * std::pow(bar_in, 3) / (192.0 * bending);
    const double twist = torque * bar_in / (4.0 * torsion);
    CHECK_CLOSE(s.motions[1].w_in, sunk, 1e-8, 0.0);
    CHECK_CLOSE(s.motions[1].rx_rad, twist, 1e-7, 0.0);
    CHECK_CLOSE(s.motions[3].w_in, sunk + twist * arm_in - reaction / k, 1e-7, 0.0);
    CHECK_CLOSE(grid.extremes(s, 2, loads).moment_lb_in, reaction * at, 1e-8, 0.0);
}

TEST_CASE("a joint's couple reaches a node as it is, its force with its arm", "[closed-form]") {
    // The beam's node stands on the bar's axis, so that both nodes carry the joint at an arm.
    // Stiff, but not as a support: the force of a joint is a difference of motions, which must keep its digits.
    constexpr double stiff = 1e10;
    const Grillage grid = hung_beam(stiff, stiff, 0.0);
    const GridSolution s = grid.solve({}, std::vector<MemberLoad>{{2, 20.0, -load_lb, 0, 0}});
    REQUIRE(s.stable);
    CHECK(s.residual < 1e-9);
    // Stiff springs move both nodes as one but for their stretch, wherever the joint is.
    CHECK_CLOSE(s.motions[3].w_in, s.motions[1].w_in, 1e-4, 0.0);
    CHECK_CLOSE(s.motions[3].rx_rad, s.motions[1].rx_rad, 1e-4, 0.0);
    // What the joint gives at its place, carried to the beam's node, is what the beam has there.
    CHECK_CLOSE(s.joints[0].up_lb, s.members[2].at_from.shear_lb, 1e-6, 0.0);
    CHECK_CLOSE(s.joints[0].about_x_lb_in + s.joints[0].up_lb * arm_in, -s.members[2].at_from.moment_lb_in, 1e-5, 0.0);
}

TEST_CASE("a joint beside the axis in x turns a bar along y", "[closed-form]") {
    // A bar along y clamped at its start; a joint to the ground's node at x = e pulls its tip by k times its motion.
    const double e = 2.0, k = 500.0, length = 20.0;
    const Grillage grid({{0, 0}, {0, length}, {e, length}, {e + 10.0, length}},
                        {{0, 1, bending, torsion, 0}, {2, 3, bending, torsion, 0}}, {{1, 2, k, 0, 0, Point{e, length}}},
                        {{0, fixed, fixed, fixed}, {2, fixed, fixed, fixed}});
    const GridSolution s = grid.solve(std::vector<GridLoad>{{1, -load_lb, 0, 0}}, {});
    REQUIRE(s.stable);
    CHECK(s.residual < 1e-9);
    // The place moves by w - ry e. A force F there gives the tip F L^3/3 E I and ry = -F e L/G J.
    const double by_bending = std::pow(length, 3) / (3.0 * bending), by_twist = e * e * length / torsion;
    const double held = load_lb * by_bending / (1.0 / k + by_bending + by_twist);
    CHECK_CLOSE(-s.joints[0].up_lb, held, 1e-7, 0.0);
    CHECK_CLOSE(s.motions[1].ry_rad, -held * e * length / torsion, 1e-7, 0.0);
}

TEST_CASE("a grid that cannot be is refused when it is made", "[bad-input]") {
    const double endless = std::numeric_limits<double>::infinity();
    CHECK_THROWS_AS(Grillage({{0, 0}, {0, 0}}, one_member, {}, {}), std::invalid_argument);
    CHECK_THROWS_AS(Grillage(two_nodes, {{0, 2, bending, torsion, 0}}, {}, {}), std::invalid_argument);
    CHECK_THROWS_AS(Grillage(two_nodes, {{0, 1, 0.0, torsion, 0}}, {}, {}), std::invalid_argument);
    CHECK_THROWS_AS(Grillage(two_nodes, {{0, 1, bending, endless, 0}}, {}, {}), std::invalid_argument);
    CHECK_THROWS_AS(Grillage(two_nodes, one_member, {{0, 1, -1.0, 0, 0, Point{}}}, {}), std::invalid_argument);
    CHECK_THROWS_AS(Grillage(two_nodes, one_member, {{0, -1, 1.0, 0, 0}}, {}), std::invalid_argument);
    CHECK_THROWS_AS(Grillage(two_nodes, one_member, {}, {{7, 1.0, 0, 0}}), std::invalid_argument);
    CHECK_THROWS_AS(Grillage({{0, 0}, {endless, 0}}, {}, {}, {}), std::invalid_argument);
    // Springs "at the nodes" have no place when the nodes stand apart.
    CHECK_THROWS_AS(Grillage(two_nodes, one_member, {{0, 1, 1.0, 0, 0}}, {}), std::invalid_argument);
}

TEST_CASE("a load that is nowhere on the grid is refused", "[bad-input]") {
    const Grillage grid(two_nodes, one_member, {}, clamped);
    const auto solve = [&](const MemberLoad& load) { return grid.solve({}, std::vector<MemberLoad>{load}); };
    const double nothing = std::numeric_limits<double>::quiet_NaN();
    CHECK_THROWS_AS(solve({1, 2.0, 1.0, 0, 0}), std::invalid_argument);
    CHECK_THROWS_AS(solve({-1, 2.0, 1.0, 0, 0}), std::invalid_argument);
    CHECK_THROWS_AS(solve({0, -0.1, 1.0, 0, 0}), std::invalid_argument);
    CHECK_THROWS_AS(solve({0, 10.001, 1.0, 0, 0}), std::invalid_argument);
    CHECK_THROWS_AS(solve({0, nothing, 1.0, 0, 0}), std::invalid_argument);
    CHECK_THROWS_AS(solve({0, 2.0, nothing, 0, 0}), std::invalid_argument);
    CHECK_THROWS_AS(grid.solve(std::vector<GridLoad>{{2, 1.0, 0, 0}}, {}), std::invalid_argument);
    // Rounding is not a mistake: such a load stands at the end.
    const GridSolution at_end = solve({0, 10.0, 1.0, 0, 0}), beyond = solve({0, 10.0 + 1e-9, 1.0, 0, 0});
    CHECK_CLOSE(beyond.motions[1].w_in, at_end.motions[1].w_in, 1e-14, 0.0);
}

TEST_CASE("a place or a solution that is not the grid's is refused", "[bad-input]") {
    const Grillage grid(two_nodes, one_member, {}, clamped);
    const std::vector<MemberLoad> loads = {{0, 4.0, -load_lb, 0, 0}};
    const GridSolution s = grid.solve({}, loads);
    CHECK_THROWS_AS(grid.motion_at(s, 1, 1.0, loads), std::invalid_argument);
    CHECK_THROWS_AS(grid.motion_at(s, 0, 11.0, loads), std::invalid_argument);
    CHECK_THROWS_AS(grid.extremes(s, -1, loads), std::invalid_argument);
    CHECK_THROWS_AS(grid.extremes(GridSolution{}, 0, loads), std::invalid_argument);
    const std::vector<MemberLoad> elsewhere = {{3, 4.0, -load_lb, 0, 0}};
    CHECK_THROWS_AS(grid.extremes(s, 0, elsewhere), std::invalid_argument);
}

TEST_CASE("a grid with a free part says so and gives nothing", "[bad-input]") {
    const Grillage loose(two_nodes, one_member, {}, {{0, 1e6, 0, 0}});
    CHECK_FALSE(loose.stable());
    const GridSolution s = loose.solve({}, std::vector<MemberLoad>{{0, 4.0, -load_lb, 0, 0}});
    CHECK_FALSE(s.stable);
    CHECK(s.motions.empty());
    CHECK_FALSE(Grillage({}, {}, {}, {}).stable());
    // A joint with a force alone leaves the beam it hangs to turn about it.
    CHECK_FALSE(Grillage({{0, 0}, {10, 0}, {10, 1}, {10, 9}},
                         {{0, 1, bending, torsion, 0}, {2, 3, bending, torsion, 0}}, {{1, 2, 1e4, 0, 0, Point{10, 1}}},
                         clamped)
                    .stable());
}
