// What must hold for every post: equilibrium, one-way forces, one answer, an energy that falls, symmetry, scale.
#include "mechanics/side_post/post_newton.h"
#include "mechanics/side_post/posts.h"
#include "support/compare.h"
#include "support/random/number.h"

#include <algorithm>
#include <cmath>

using namespace toehold::mechanics;
using toehold::test::close;
using toehold::test::magnitude;
using toehold::test::number;

namespace {

struct Problem {
    SidePost post;
    std::vector<PostLoad> loads;
};

BackingBodies random_body() {
    BackingBodies bodies = toehold::test::one_body({number(-1.0, 1.0), number(-2.0, 0.0), number(2.0, 7.0)},
                                                   {magnitude(1e4, 1e6), magnitude(1e4, 1e6), magnitude(1e4, 1e6),
                                                    magnitude(1e5, 1e8), magnitude(1e5, 1e8), magnitude(1e5, 1e8)});
    // Motion outward and roll couple, as of a rim held by its top; less than would make them one.
    const double most = std::sqrt(bodies.stiffness[7] * bodies.stiffness[21]);
    bodies.stiffness[1 * 6 + 3] = bodies.stiffness[3 * 6 + 1] = number(-0.9, 0.9) * most;
    return bodies;
}

Problem random_problem(bool with_gaps) {
    Problem problem;
    SidePost& post = problem.post;
    const auto gap = [&] { return with_gaps && *rc::gen::arbitrary<bool>() ? number(0.0, 0.125) : 0.0; };
    post.axis_y_in = number(0.5, 3.0);
    post.section = {magnitude(3e6, 1e9),
                    magnitude(3e6, 1e9),
                    magnitude(1e6, 1e8),
                    1e7,
                    *rc::gen::arbitrary<bool>() ? magnitude(1e5, 1e7) : 0.0,
                    *rc::gen::arbitrary<bool>() ? magnitude(1e5, 1e7) : 0.0};
    if (*rc::gen::arbitrary<bool>()) post.bodies = random_body();
    const std::optional<std::size_t> body = post.bodies.places.empty() ? std::nullopt : std::optional<std::size_t>(0);
    const double half = number(0.5, 3.0), depth = number(3.0, 12.0), from = number(-1.0, 1.0);
    post.bearings = {{-half, half, from, from + depth, magnitude(1e3, 1e5), gap(), PostSide::face, body}};
    if (*rc::gen::arbitrary<bool>())
        post.bearings.push_back({-half, 0.3 * half, from - 3.0, from - 0.5, magnitude(1e3, 1e5), gap()});
    const int fasteners = *rc::gen::inRange(2, 7);
    for (int i = 0; i < fasteners; ++i)
        post.fasteners.push_back({number(-half, half), from + depth * number(0.05, 0.95), magnitude(3e3, 3e5), gap(),
                                  magnitude(3e3, 3e5), magnitude(3e3, 3e5), i % 2 == 0 ? body : std::nullopt});
    problem.loads = {{{number(-1.0, 1.0), post.axis_y_in, from + depth + number(10.0, 45.0)},
                      {number(-300.0, 300.0), number(-300.0, 300.0), number(-300.0, 100.0)},
                      {}}};
    if (*rc::gen::arbitrary<bool>())
        problem.loads.push_back({{0.0, 0.0, from + number(-3.0, 30.0)}, {50.0, number(-50.0, 50.0), 0.0}, {}});
    return problem;
}

double largest_force(const SidePostSolution& solution) {
    double largest = 0.0;
    for (const PostFastenerForce& force : solution.fasteners)
        largest = std::max({largest, force.tension_lb, std::abs(force.slip_x_lb), std::abs(force.slip_z_lb)});
    for (const PostBearingForce& force : solution.bearings) largest = std::max(largest, force.force_lb);
    return largest;
}

/// A solved random problem; those that nothing can balance are passed over.
SidePostSolution solved(const Problem& problem, double fineness = 1.0) {
    const SidePostSolution solution = solve_side_post(problem.post, problem.loads, fineness);
    RC_PRE(solution.status != SolveStatus::no_equilibrium);
    RC_ASSERT(solution.status == SolveStatus::solved);
    return solution;
}

void check_same(const SidePostSolution& one, const SidePostSolution& other, double factor, double relative) {
    const double absolute = relative * largest_force(one);
    for (std::size_t i = 0; i < one.fasteners.size(); ++i)
        RC_ASSERT(close(other.fasteners[i].tension_lb, factor * one.fasteners[i].tension_lb, 0.0, factor * absolute));
    for (std::size_t i = 0; i < one.bearings.size(); ++i)
        RC_ASSERT(close(other.bearings[i].force_lb, factor * one.bearings[i].force_lb, 0.0, factor * absolute));
}

}  // namespace

TEST_CASE("Random posts are in equilibrium, and nothing acts the wrong way", "[property]") {
    CHECK(rc::check([] {
        const Problem problem = random_problem(true);
        const SidePostSolution found = solved(problem);
        RC_ASSERT(found.residuals.force <= 1e-9);
        RC_ASSERT(found.residuals.moment <= 1e-9);
        SpaceVector sum{};
        for (const PostLoad& load : problem.loads) sum = sum + load.force_lb;
        for (std::size_t i = 0; i < found.fasteners.size(); ++i) {
            const PostFastenerForce& force = found.fasteners[i];
            const PostFastener& of = problem.post.fasteners[i];
            RC_ASSERT(force.tension_lb >= 0.0);
            RC_ASSERT((force.tension_lb > 0.0) == (force.opening_in > of.gap_in && of.tension_lb_per_in > 0.0));
            sum = sum - SpaceVector{force.slip_x_lb, force.tension_lb, force.slip_z_lb};
        }
        for (std::size_t i = 0; i < found.bearings.size(); ++i) {
            const PostBearingForce& force = found.bearings[i];
            const PostBearing& of = problem.post.bearings[i];
            RC_ASSERT(force.force_lb >= 0.0);
            RC_ASSERT(force.at_x_in >= of.x_min_in && force.at_x_in <= of.x_max_in);
            RC_ASSERT(force.from_z_in >= of.z_min_in - 1e-9 && force.to_z_in <= of.z_max_in + 1e-9);
            RC_ASSERT(force.at_z_in >= force.from_z_in - 1e-9 && force.at_z_in <= force.to_z_in + 1e-9);
            RC_ASSERT(force.peak_psi * force.area_in2 >= force.force_lb * (1.0 - 1e-6));
            sum.y += force.force_lb;
        }
        const double largest = largest_force(found);
        RC_ASSERT(std::abs(sum.x) + std::abs(sum.y) + std::abs(sum.z) <= 1e-8 * largest);
        // Nothing passes the free ends.
        RC_ASSERT(std::abs(found.stations.front().moment_lb_in.x) <= 1e-7 * largest);
        RC_ASSERT(std::abs(found.stations.back().moment_lb_in.x) <= 1e-7 * largest);
    }));
}

TEST_CASE("The energy falls at every step, and any start ends at the same energy", "[property]") {
    CHECK(rc::check([] {
        const Problem problem = random_problem(true);
        solved(problem);
        const side_post::PostModel model(problem.post, problem.loads, 1.0);
        const side_post::PostMinimum found = side_post::minimize_energy(model);
        const double lowest = found.energies_lb_in.back(), size = std::abs(lowest) + 1e-6;
        for (std::size_t i = 1; i < found.energies_lb_in.size(); ++i)
            RC_ASSERT(found.energies_lb_in[i] <= found.energies_lb_in[i - 1] + 1e-9 * size);
        side_post::Unknowns start = side_post::Unknowns::Zero(model.unknowns());
        for (int i = 0; i < 6; ++i) start(i) = number(-2.0, 2.0);
        const side_post::PostMinimum other = side_post::minimize_energy_from(model, start);
        RC_ASSERT(close(other.energies_lb_in.back(), lowest, 0.0, 1e-8 * size));
        RC_ASSERT(other.error <= 1e-8);
    }));
}

TEST_CASE("Twice the load is twice every force where there is no gap", "[property]") {
    CHECK(rc::check([] {
        Problem problem = random_problem(false);
        const SidePostSolution once = solved(problem);
        const double factor = magnitude(0.01, 100.0);
        for (PostLoad& load : problem.loads) load.force_lb = factor * load.force_lb;
        check_same(once, solved(problem), factor, 1e-7);
    }));
}

TEST_CASE("Left and right trade places in a mirror, and heights may be measured from anywhere", "[property]") {
    CHECK(rc::check([] {
        Problem problem = random_problem(true);
        problem.post.bodies = {};
        const double up = number(-20.0, 20.0);
        for (PostFastener& fastener : problem.post.fasteners) fastener.body.reset();
        for (PostBearing& bearing : problem.post.bearings) bearing.body.reset();
        const SidePostSolution seen = solved(problem);
        for (PostFastener& fastener : problem.post.fasteners) {
            fastener.x_in = -fastener.x_in;
            fastener.z_in += up;
        }
        for (PostBearing& bearing : problem.post.bearings) {
            const double right = -bearing.x_min_in;
            bearing.x_min_in = -bearing.x_max_in;
            bearing.x_max_in = right;
            bearing.z_min_in += up;
            bearing.z_max_in += up;
        }
        for (PostLoad& load : problem.loads) {
            load.at = {-load.at.x, load.at.y, load.at.z + up};
            load.force_lb.x = -load.force_lb.x;
        }
        check_same(seen, solved(problem), 1.0, 1e-6);
    }));
}

TEST_CASE("A mesh twice as fine changes no force by more than a hundredth of the largest", "[convergence]") {
    CHECK(rc::check([] {
        const Problem problem = random_problem(true);
        const SidePostSolution coarse = solved(problem);
        const SidePostSolution fine = solved(problem, 2.0);
        check_same(coarse, fine, 1.0, 1e-2);
    }));
}
