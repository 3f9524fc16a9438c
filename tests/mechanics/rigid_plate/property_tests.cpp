// What must hold for every plate: equilibrium, complementarity, one answer, and the symmetries of space.
#include "mechanics/rigid_plate/rigid_plate.h"

#include "mechanics/plane/area_moments.h"
#include "mechanics/shapes.h"
#include "support/compare.h"
#include "support/random/number.h"

#include <algorithm>
#include <functional>

using namespace toehold::mechanics;
using toehold::test::close;
using toehold::test::magnitude;
using toehold::test::number;
using toehold::test::rectangle;

namespace {

struct Problem {
    std::vector<AnchorSpring> anchors;
    std::vector<BedPatch> bed;
    PlateLoad load;
};

/// A number from low to high with a resolution of a thousandth of the range.
/// A convex outline: corners in order round an ellipse.
Polygon random_outline() {
    const int corners = *rc::gen::inRange(3, 13);
    const double a = number(1.0, 6.0);
    const double b = number(1.0, 6.0);
    const double turn = number(0.0, 1.0);
    Polygon outline;
    for (int corner = 0; corner < corners; ++corner) {
        const double angle = 2.0 * std::numbers::pi * (corner + turn + number(0.0, 0.4)) / corners;
        outline.push_back({a * std::cos(angle), b * std::sin(angle)});
    }
    return outline;
}

std::vector<BedPatch> random_bed() {
    const Polygon outline = random_outline();
    std::vector<BedPatch> bed;
    if (*rc::gen::arbitrary<bool>()) return {{outline, magnitude(1e3, 1e6)}};
    const double left = number(-1.0, 0.0);
    const double right = number(0.0, 1.0);
    bed.push_back({clip_half_plane(outline, -left, 1.0, 0.0), magnitude(1e3, 1e6)});
    bed.push_back({clip_half_plane(outline, right, -1.0, 0.0), magnitude(1e3, 1e6)});
    return bed;
}

Problem random_problem() {
    Problem problem;
    problem.bed = random_bed();
    const int anchors = *rc::gen::inRange(1, 9);
    for (int index = 0; index < anchors; ++index) {
        problem.anchors.push_back({{number(-5.0, 5.0), number(-5.0, 5.0)}, magnitude(3e3, 3e5)});
    }
    problem.load = toehold::test::push(number(0.0, 10000.0), number(0.0, 6.28), number(-800.0, 400.0));
    return problem;
}

RigidPlateSolution solve(const Problem& problem, const RigidPlateSolution* start = nullptr) {
    return solve_rigid_plate(problem.anchors, problem.bed, problem.load, start);
}

double largest_force(const RigidPlateSolution& solution) {
    double largest = 0.0;
    for (const double tension : solution.tension_lb) largest = std::max(largest, tension);
    for (const PatchForce& patch : solution.patches) largest = std::max(largest, patch.force_lb);
    return largest;
}

/// A solved random problem; those that nothing can balance are passed over.
RigidPlateSolution solved(const Problem& problem) {
    RigidPlateSolution solution = solve(problem);
    RC_ASSERT(solution.status != SolveStatus::not_converged);
    RC_PRE(solution.status == SolveStatus::solved);
    return solution;
}

/// A solved problem away from the rim of balance: near it the answer turns on the input's last digits. Where contact
/// has shrunk below a hundredth of the bed, two ways of adding up the same forces differ by as much as is forgiven.
RigidPlateSolution firmly_solved(const Problem& problem) {
    RigidPlateSolution solution = solved(problem);
    const double couple = std::hypot(problem.load.mx_lb_in, problem.load.my_lb_in);
    RC_PRE(largest_force(solution) <= 100.0 * (std::abs(problem.load.fz_lb) + couple / 5.0));
    double contact = 0.0;
    for (const PatchForce& patch : solution.patches) contact += patch.contact_area_in2;
    double bed = 0.0;
    for (const BedPatch& patch : problem.bed) bed += moments(patch.outline).area;
    RC_PRE(contact > 0.01 * bed || problem.bed.empty());
    return solution;
}

/// Same forces, the second's times `scale`, to 1e-8 of the largest.
void assert_same_forces(const RigidPlateSolution& first, const RigidPlateSolution& second, double scale) {
    RC_ASSERT(first.status == SolveStatus::solved);
    const double absolute = 1e-8 * largest_force(first);
    for (std::size_t index = 0; index < first.tension_lb.size(); ++index) {
        RC_ASSERT(close(second.tension_lb[index] * scale, first.tension_lb[index], 0.0, absolute));
    }
    for (std::size_t index = 0; index < first.patches.size(); ++index) {
        RC_ASSERT(close(second.patches[index].force_lb * scale, first.patches[index].force_lb, 0.0, absolute));
    }
}

/// The problem after a rigid motion of the plan, reflection included: x' = c x - s y + dx, y' = m (s x + c y) + dy.
struct PlanMotion {
    double angle = 0.0;
    double mirror = 1.0;
    Point shift;

    [[nodiscard]] Point of(Point p) const {
        const Point turned = of_vector(p);
        return {turned.x + shift.x, turned.y + shift.y};
    }
    [[nodiscard]] Point of_vector(Point p) const {
        return {std::cos(angle) * p.x - std::sin(angle) * p.y,
                mirror * (std::sin(angle) * p.x + std::cos(angle) * p.y)};
    }
    [[nodiscard]] PlateLoad of(const PlateLoad& load) const {
        // A push h (my, -mx) turns as a vector; the vertical load then moves with the plan.
        const Point lifted = of_vector({-load.my_lb_in, load.mx_lb_in});
        return {load.fz_lb, lifted.y + load.fz_lb * shift.y, -(lifted.x + load.fz_lb * shift.x)};
    }
    [[nodiscard]] Problem of(const Problem& problem) const {
        Problem result = problem;
        for (AnchorSpring& anchor : result.anchors) anchor.at = of(anchor.at);
        for (BedPatch& patch : result.bed) {
            for (Point& corner : patch.outline) corner = of(corner);
            if (mirror < 0.0) std::reverse(patch.outline.begin(), patch.outline.end());
        }
        result.load = of(problem.load);
        return result;
    }
};

bool holds(const std::string& what, const std::function<void()>& property) { return rc::check(what, property); }

}  // namespace

TEST_CASE("Every solution balances its load and no support acts the wrong way", "[property]") {
    REQUIRE(holds("equilibrium and complementarity", [] {
        const Problem problem = random_problem();
        const RigidPlateSolution solution = solved(problem);
        const double largest = std::max(largest_force(solution), std::abs(problem.load.fz_lb));
        double up = problem.load.fz_lb;
        double about_x = problem.load.mx_lb_in;
        double about_y = problem.load.my_lb_in;
        for (std::size_t index = 0; index < problem.anchors.size(); ++index) {
            const auto& [at, stiffness] = problem.anchors[index];
            const double tension = solution.tension_lb[index];
            const double lift = solution.lift_in + solution.tilt_x_rad * at.y - solution.tilt_y_rad * at.x;
            RC_ASSERT(tension >= 0.0);
            // As close as the sum's own terms can be told apart in doubles.
            const double terms = std::abs(solution.lift_in) + std::abs(solution.tilt_x_rad * at.y) +
                                 std::abs(solution.tilt_y_rad * at.x);
            RC_ASSERT(close(tension, stiffness * std::max(0.0, lift), 0.0, 1e-14 * stiffness * terms));
            up -= tension;
            about_x -= tension * at.y;
            about_y += tension * at.x;
        }
        for (const PatchForce& patch : solution.patches) {
            RC_ASSERT(patch.force_lb >= 0.0 && patch.peak_psi >= 0.0);
            RC_ASSERT(patch.force_lb <= patch.peak_psi * patch.contact_area_in2 * (1.0 + 1e-9));
            up += patch.force_lb;
            about_x += patch.force_lb * patch.at.y;
            about_y -= patch.force_lb * patch.at.x;
        }
        RC_ASSERT(std::abs(up) <= 1e-9 * largest);
        RC_ASSERT(std::hypot(about_x, about_y) <= 1e-9 * largest * 10.0);
        RC_ASSERT(std::max({solution.residuals.force, solution.residuals.moment, solution.residuals.complementarity}) <
                  1e-9);
    }));
}

TEST_CASE("Forces grow with the load", "[property]") {
    REQUIRE(holds("homogeneity", [] {
        Problem problem = random_problem();
        const RigidPlateSolution one = firmly_solved(problem);
        const double scale = magnitude(1e-9, 1e9);
        problem.load = {problem.load.fz_lb * scale, problem.load.mx_lb_in * scale, problem.load.my_lb_in * scale};
        assert_same_forces(one, solve(problem), 1.0 / scale);
    }));
}

TEST_CASE("Forces depend on ratios of stiffness only", "[property]") {
    REQUIRE(holds("stiffness ratio", [] {
        Problem problem = random_problem();
        const RigidPlateSolution one = firmly_solved(problem);
        const double scale = magnitude(1e-3, 1e3);
        for (AnchorSpring& anchor : problem.anchors) anchor.stiffness_lb_per_in *= scale;
        for (BedPatch& patch : problem.bed) patch.stiffness_psi_per_in *= scale;
        assert_same_forces(one, solve(problem), 1.0);
    }));
}

TEST_CASE("Turning, shifting and mirroring the plan changes no force", "[property]") {
    REQUIRE(holds("rigid motions of the plan", [] {
        const Problem problem = random_problem();
        const RigidPlateSolution here = firmly_solved(problem);
        const PlanMotion motion{
            number(-3.14, 3.14), *rc::gen::arbitrary<bool>() ? 1.0 : -1.0, {number(-20.0, 20.0), number(-20.0, 20.0)}};
        const RigidPlateSolution there = solve(motion.of(problem));
        assert_same_forces(here, there, 1.0);
        for (std::size_t index = 0; index < here.patches.size(); ++index) {
            if (here.patches[index].force_lb < 1e-6 * largest_force(here)) continue;
            const Point expected = motion.of(here.patches[index].at);
            RC_ASSERT(close(there.patches[index].at.x, expected.x, 0.0, 1e-4));
            RC_ASSERT(close(there.patches[index].at.y, expected.y, 0.0, 1e-4));
        }
    }));
}

TEST_CASE("Any start leads to the same forces", "[property]") {
    REQUIRE(holds("one answer", [] {
        const Problem problem = random_problem();
        const RigidPlateSolution cold = firmly_solved(problem);
        RigidPlateSolution start;
        start.status = SolveStatus::solved;
        start.lift_in = number(-1.0, 1.0);
        start.tilt_x_rad = number(-1.0, 1.0);
        start.tilt_y_rad = number(-1.0, 1.0);
        assert_same_forces(cold, solve(problem, &start), 1.0);
    }));
}

TEST_CASE("A neighbouring direction's answer leads to the same forces in fewer steps", "[property]") {
    const toehold::test::Plate plate = toehold::test::example_plate();
    RigidPlateSolution previous;
    int warm_steps = 0;
    int cold_steps = 0;
    for (int direction = 0; direction < 720; ++direction) {
        const PlateLoad load = toehold::test::push(8400.0, direction * std::numbers::pi / 360.0);
        const RigidPlateSolution cold = solve_rigid_plate(plate.anchors, plate.bed, load);
        const RigidPlateSolution warm = solve_rigid_plate(plate.anchors, plate.bed, load, &previous);
        REQUIRE(cold.status == SolveStatus::solved);
        REQUIRE(warm.status == SolveStatus::solved);
        for (std::size_t index = 0; index < 4; ++index) {
            CHECK_CLOSE(warm.tension_lb[index], cold.tension_lb[index], 0.0, 1e-8);
        }
        warm_steps += warm.iterations;
        cold_steps += cold.iterations;
        CHECK(cold.iterations <= 12);
        previous = warm;
    }
    CHECK(warm_steps < cold_steps);
}

TEST_CASE("Cutting a patch in two changes nothing", "[property]") {
    REQUIRE(holds("partition of the bed", [] {
        Problem problem = random_problem();
        const RigidPlateSolution whole = firmly_solved(problem);
        const BedPatch patch = problem.bed.front();
        const double x = number(-0.5, 0.5);
        problem.bed.front().outline = clip_half_plane(patch.outline, -x, 1.0, 0.3);
        problem.bed.push_back({clip_half_plane(patch.outline, x, -1.0, -0.3), patch.stiffness_psi_per_in});
        const RigidPlateSolution parts = solve(problem);
        RC_ASSERT(parts.status == SolveStatus::solved);
        const double absolute = 1e-8 * largest_force(whole);
        for (std::size_t index = 0; index < problem.anchors.size(); ++index) {
            RC_ASSERT(close(parts.tension_lb[index], whole.tension_lb[index], 0.0, absolute));
        }
        RC_ASSERT(close(parts.patches.front().force_lb + parts.patches.back().force_lb, whole.patches.front().force_lb,
                        0.0, 2.0 * absolute));
    }));
}

TEST_CASE("One anchor inside the bed's outline holds a push any way", "[property]") {
    REQUIRE(holds("an anchor inside the outline always holds", [] {
        Problem problem;
        problem.bed = {{rectangle(-3.0, 3.0, -3.0, 3.0), magnitude(1e3, 1e6)}};
        problem.anchors = {{{number(-2.9, 2.9), number(-2.9, 2.9)}, magnitude(3e3, 3e5)}};
        problem.load = toehold::test::push(number(1.0, 1e5), number(0.0, 6.28));
        RC_ASSERT(solve(problem).status == SolveStatus::solved);
    }));
}
