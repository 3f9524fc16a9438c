// Loads along a member against closed forms of beam theory (any textbook on the strength of materials), with and
// without shear, on beams that lie anywhere in plan.
#include "mechanics/grillage/grillage.h"

#include "support/compare.h"

#include <algorithm>
#include <cmath>
#include <vector>

namespace {

using namespace toehold::mechanics;

constexpr double bending = 1.2e7, torsion = 3.4e6, shear = 5e5;
constexpr double fixed = 1e15;
constexpr double length_in = 48.0, a_in = 13.0, b_in = length_in - a_in;
constexpr double load_lb = 100.0, couple_lb_in = 900.0;

/// A beam in a direction from +x, and what is along it in the plan's own axes.
struct Beam {
    double angle = 0.0;
    double shear_lb = 0.0;

    [[nodiscard]] Grillage on(GridSupport at_from, GridSupport at_to) const {
        at_from.node = 0;
        at_to.node = 1;
        const Point start{3.0, -2.0};
        return {{start, {start.x + length_in * std::cos(angle), start.y + length_in * std::sin(angle)}},
                {{0, 1, bending, torsion, shear_lb}},
                {},
                {at_from, at_to}};
    }
    /// `turn` raises the slope from `from` to `to`; `torque` is about the axis.
    [[nodiscard]] MemberLoad load(double at, double up, double turn = 0.0, double torque = 0.0) const {
        const double c = std::cos(angle), s = std::sin(angle);
        return {0, at, up, torque * c + turn * s, torque * s - turn * c};
    }
    [[nodiscard]] double slope(const GridMotion& m) const {
        return std::sin(angle) * m.rx_rad - std::cos(angle) * m.ry_rad;
    }
    [[nodiscard]] double twist(const GridMotion& m) const {
        return std::cos(angle) * m.rx_rad + std::sin(angle) * m.ry_rad;
    }
    [[nodiscard]] double give_by_shear() const { return shear_lb > 0.0 ? 1.0 / shear_lb : 0.0; }
};

constexpr GridSupport clamp = {0, fixed, fixed, fixed};
constexpr GridSupport none = {};

/// Holds up, and in roll only as much as the beam's torsion needs: its ends turn freely where no torque is about.
/// For beams along x or y.
GridSupport pin(const Beam& beam) {
    return beam.angle == 0.0 ? GridSupport{0, fixed, fixed, 0.0} : GridSupport{0, fixed, 0.0, fixed};
}

const double quarter = std::acos(0.0);
const std::vector<Beam> beams = {{0.0, 0.0}, {0.0, shear}, {quarter, 0.0}, {quarter, shear}};
const std::vector<Beam> skew_beams = {{0.0, shear}, {0.6, 0.0}, {2.5, shear}, {-1.9, shear}};

GridSolution solve(const Grillage& grid, const std::vector<MemberLoad>& loads) {
    REQUIRE(grid.stable());
    GridSolution solution = grid.solve({}, loads);
    REQUIRE(solution.stable);
    CHECK(solution.residual < 1e-9);
    return solution;
}

}  // namespace

TEST_CASE("a simple beam under a load off its middle: P a b/L, P a^2 b^2/3 E I L and its shear", "[closed-form]") {
    for (const Beam& beam : beams) {
        const Grillage grid = beam.on(pin(beam), pin(beam));
        const std::vector<MemberLoad> loads = {beam.load(a_in, -load_lb)};
        const GridSolution s = solve(grid, loads);
        CHECK_CLOSE(s.supports[0].up_lb, load_lb * b_in / length_in, 1e-8, 0.0);
        CHECK_CLOSE(s.members[0].at_from.moment_lb_in, 0.0, 0.0, 1e-6);
        const double at_load =
            load_lb * a_in * b_in * (a_in * b_in / (3.0 * bending) + beam.give_by_shear()) / length_in;
        CHECK_CLOSE(grid.motion_at(s, 0, a_in, loads).w_in, -at_load, 1e-8, 0.0);
        for (const double x : {0.0, 4.0, 11.0, 13.0}) {
            const double sunk =
                load_lb * b_in * x *
                ((length_in * length_in - b_in * b_in - x * x) / (6.0 * bending) + beam.give_by_shear()) / length_in;
            CHECK_CLOSE(grid.motion_at(s, 0, x, loads).w_in, -sunk, 1e-8, 1e-11);
        }
        CHECK_CLOSE(grid.motion_at(s, 0, length_in, loads).w_in, 0.0, 0.0, 1e-11);
        const GridExtremes most = grid.extremes(s, 0, loads);
        CHECK_CLOSE(most.moment_lb_in, load_lb * a_in * b_in / length_in, 1e-8, 0.0);
        CHECK_CLOSE(most.shear_lb, load_lb * std::max(a_in, b_in) / length_in, 1e-8, 0.0);
        CHECK_CLOSE(most.torque_lb_in, 0.0, 0.0, 1e-6);
    }
}

TEST_CASE("a simple beam turned by a couple inside: C/L at its ends, C (a^3 + b^3)/3 E I L^2 there", "[closed-form]") {
    for (const Beam& beam : beams) {
        const Grillage grid = beam.on(pin(beam), pin(beam));
        const std::vector<MemberLoad> loads = {beam.load(a_in, 0.0, couple_lb_in)};
        const GridSolution s = solve(grid, loads);
        CHECK_CLOSE(s.supports[0].up_lb, couple_lb_in / length_in, 1e-8, 0.0);
        CHECK_CLOSE(s.supports[1].up_lb, -couple_lb_in / length_in, 1e-8, 0.0);
        const GridMotion there = grid.motion_at(s, 0, a_in, loads);
        CHECK_CLOSE(there.w_in, couple_lb_in * a_in * b_in * (b_in - a_in) / (3.0 * bending * length_in), 1e-8, 0.0);
        // The even shear C/L tilts the axis against the sections, which turn by C/L G A_s more.
        CHECK_CLOSE(beam.slope(there),
                    couple_lb_in * (std::pow(a_in, 3) + std::pow(b_in, 3)) / (3.0 * bending * length_in * length_in) +
                        couple_lb_in * beam.give_by_shear() / length_in,
                    1e-8, 0.0);
        const GridExtremes most = grid.extremes(s, 0, loads);
        CHECK_CLOSE(most.moment_lb_in, couple_lb_in * std::max(a_in, b_in) / length_in, 1e-8, 0.0);
        CHECK_CLOSE(most.shear_lb, couple_lb_in / length_in, 1e-8, 0.0);
    }
}

TEST_CASE("what stands on a beam's very end goes into its support and through none of the beam", "[closed-form]") {
    for (const Beam& beam : beams) {
        const Grillage grid = beam.on(pin(beam), pin(beam));
        for (const double at_in : {0.0, length_in}) {
            const std::vector<MemberLoad> loads = {beam.load(at_in, -load_lb)};
            const GridExtremes most = grid.extremes(solve(grid, loads), 0, loads);
            CHECK_CLOSE(most.shear_lb, 0.0, 0.0, 1e-6);
            CHECK_CLOSE(most.moment_lb_in, 0.0, 0.0, 1e-5);
        }
    }
}

TEST_CASE("a cantilever loaded inside: straight beyond the load, P a^2 (3 L - a)/6 E I at its tip", "[closed-form]") {
    for (const Beam& beam : skew_beams) {
        const Grillage grid = beam.on(clamp, none);
        const std::vector<MemberLoad> loads = {beam.load(a_in, -load_lb)};
        const GridSolution s = solve(grid, loads);
        const double by_shear = load_lb * a_in * beam.give_by_shear();
        CHECK_CLOSE(s.motions[1].w_in, -load_lb * a_in * a_in * (3.0 * length_in - a_in) / (6.0 * bending) - by_shear,
                    1e-8, 0.0);
        CHECK_CLOSE(grid.motion_at(s, 0, a_in, loads).w_in, -load_lb * std::pow(a_in, 3) / (3.0 * bending) - by_shear,
                    1e-8, 0.0);
        CHECK_CLOSE(beam.slope(grid.motion_at(s, 0, 30.0, loads)), -load_lb * a_in * a_in / (2.0 * bending), 1e-8, 0.0);
        CHECK_CLOSE(s.members[0].at_from.moment_lb_in, -load_lb * a_in, 1e-8, 0.0);
        CHECK_CLOSE(s.members[0].at_to.moment_lb_in, 0.0, 0.0, 1e-6);
        CHECK_CLOSE(s.members[0].at_to.shear_lb, 0.0, 0.0, 1e-7);
        CHECK_CLOSE(grid.extremes(s, 0, loads).moment_lb_in, load_lb * a_in, 1e-8, 0.0);
    }
}

TEST_CASE("a cantilever turned inside by a couple bends as far as the couple: C a/E I", "[closed-form]") {
    for (const Beam& beam : skew_beams) {
        const Grillage grid = beam.on(clamp, none);
        const std::vector<MemberLoad> loads = {beam.load(a_in, 0.0, couple_lb_in)};
        const GridSolution s = solve(grid, loads);
        CHECK_CLOSE(beam.slope(s.motions[1]), couple_lb_in * a_in / bending, 1e-8, 0.0);
        CHECK_CLOSE(s.motions[1].w_in, couple_lb_in * a_in * (length_in - 0.5 * a_in) / bending, 1e-8, 0.0);
        CHECK_CLOSE(grid.motion_at(s, 0, a_in, loads).w_in, couple_lb_in * a_in * a_in / (2.0 * bending), 1e-8, 0.0);
        CHECK_CLOSE(s.members[0].at_from.moment_lb_in, couple_lb_in, 1e-8, 0.0);
    }
}

TEST_CASE("loads apart by rounding alone act at one place: of opposite torques the member meets their sum",
          "[closed-form]") {
    for (const Beam& beam : skew_beams) {
        const Grillage grid = beam.on(clamp, clamp);
        const std::vector<MemberLoad> loads = {beam.load(a_in, 0.0, 0.0, -8000.0),
                                               beam.load(a_in + 1e-12, 0.0, 0.0, 8700.0)};
        const GridSolution s = solve(grid, loads);
        CHECK_CLOSE(grid.extremes(s, 0, loads).torque_lb_in, 700.0 * std::max(a_in, b_in) / length_in, 1e-8, 0.0);
    }
}

TEST_CASE("a torque inside a bar held at both ends: T b/L and T a/L, T a b/G J L there", "[closed-form]") {
    const double torque = 700.0;
    for (const Beam& beam : skew_beams) {
        const Grillage grid = beam.on(clamp, clamp);
        const std::vector<MemberLoad> loads = {beam.load(a_in, 0.0, 0.0, torque)};
        const GridSolution s = solve(grid, loads);
        CHECK_CLOSE(s.members[0].at_from.torque_lb_in, -torque * b_in / length_in, 1e-8, 0.0);
        CHECK_CLOSE(s.members[0].at_to.torque_lb_in, torque * a_in / length_in, 1e-8, 0.0);
        CHECK_CLOSE(beam.twist(grid.motion_at(s, 0, a_in, loads)), torque * a_in * b_in / (torsion * length_in), 1e-8,
                    0.0);
        CHECK_CLOSE(grid.motion_at(s, 0, 20.0, loads).w_in, 0.0, 0.0, 1e-12);
        CHECK_CLOSE(grid.extremes(s, 0, loads).torque_lb_in, torque * std::max(a_in, b_in) / length_in, 1e-8, 0.0);
    }
}

TEST_CASE("a beam fixed at both ends: P a b^2/L^2, P b^2 (3 a + b)/L^3, P a^3 b^3/3 E I L^3", "[closed-form]") {
    for (const double angle : {0.0, 0.6, -1.9}) {
        const Beam beam{angle, 0.0};
        const Grillage grid = beam.on(clamp, clamp);
        const std::vector<MemberLoad> loads = {beam.load(a_in, -load_lb)};
        const GridSolution s = solve(grid, loads);
        const double l2 = length_in * length_in, l3 = l2 * length_in;
        CHECK_CLOSE(s.members[0].at_from.moment_lb_in, -load_lb * a_in * b_in * b_in / l2, 1e-8, 0.0);
        CHECK_CLOSE(s.members[0].at_to.moment_lb_in, -load_lb * a_in * a_in * b_in / l2, 1e-8, 0.0);
        CHECK_CLOSE(s.supports[0].up_lb, load_lb * b_in * b_in * (3.0 * a_in + b_in) / l3, 1e-8, 0.0);
        CHECK_CLOSE(grid.motion_at(s, 0, a_in, loads).w_in, -load_lb * std::pow(a_in * b_in, 3) / (3.0 * bending * l3),
                    1e-8, 0.0);

        const std::vector<MemberLoad> turned = {beam.load(a_in, 0.0, couple_lb_in)};
        const GridSolution t = solve(grid, turned);
        CHECK_CLOSE(t.supports[0].up_lb, 6.0 * couple_lb_in * a_in * b_in / l3, 1e-8, 0.0);
        CHECK_CLOSE(std::abs(t.members[0].at_from.moment_lb_in), couple_lb_in * b_in * std::abs(2.0 * a_in - b_in) / l2,
                    1e-8, 0.0);
    }
}

TEST_CASE("a beam fixed at both ends that shears, by the force method", "[closed-form]") {
    for (const double angle : {0.0, 2.5}) {
        const Beam beam{angle, shear};
        const Grillage grid = beam.on(clamp, clamp);
        const std::vector<MemberLoad> loads = {beam.load(a_in, -load_lb)};
        const GridSolution s = solve(grid, loads);
        // Cut free at `to` the tip sinks by d and turns by t; a force R and a couple M there take both back:
        // R (L^3/3 E I + L/G A_s) + M L^2/2 E I = d, R L^2/2 E I + M L/E I = t.
        const double d = load_lb * a_in * a_in * (3.0 * length_in - a_in) / (6.0 * bending) + load_lb * a_in / shear;
        const double t = load_lb * a_in * a_in / (2.0 * bending);
        const double r = (d - 0.5 * t * length_in) / (std::pow(length_in, 3) / (12.0 * bending) + length_in / shear);
        const double m = t * bending / length_in - 0.5 * r * length_in;
        CHECK_CLOSE(s.supports[1].up_lb, r, 1e-8, 0.0);
        CHECK_CLOSE(s.members[0].at_to.moment_lb_in, m, 1e-8, 0.0);
    }
}

TEST_CASE("a load at a member's end is a load on the node", "[closed-form]") {
    const Beam beam{0.6, shear};
    const Grillage grid = beam.on(clamp, none);
    const MemberLoad at_end = beam.load(length_in, -load_lb, couple_lb_in, 70.0);
    const std::vector<GridLoad> on_node = {{1, at_end.up_lb, at_end.about_x_lb_in, at_end.about_y_lb_in}};
    const GridSolution s = solve(grid, {at_end}), t = grid.solve(on_node, {});
    CHECK_CLOSE(s.motions[1].w_in, t.motions[1].w_in, 1e-12, 0.0);
    CHECK_CLOSE(s.motions[1].rx_rad, t.motions[1].rx_rad, 1e-12, 0.0);
    // Between the node and the load nothing is left, before the load all of it.
    CHECK_CLOSE(s.members[0].at_to.shear_lb, 0.0, 0.0, 1e-9);
    CHECK_CLOSE(t.members[0].at_to.shear_lb, load_lb, 1e-9, 0.0);
    CHECK_CLOSE(grid.extremes(s, 0, std::vector<MemberLoad>{at_end}).torque_lb_in, 70.0, 1e-9, 0.0);
}
