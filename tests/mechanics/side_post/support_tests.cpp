// What stands behind the post: gaps, bodies that give, blocks at its back; what nothing can balance; what moves freely.
#include "mechanics/side_post/posts.h"
#include "support/compare.h"

#include <cmath>

using namespace toehold::mechanics;
using toehold::test::four_by_four;
using toehold::test::one_body;
using toehold::test::push;
using toehold::test::rigid;
using toehold::test::top_in;
using toehold::test::two_columns;

namespace {

/// A rigid post whose forces are known by statics alone: one bolt 7 in above a short pad at the bottom. Under H at h
/// above the pad: T = H h/7, C = T - H.
SidePost on_pad_and_bolt() {
    SidePost post = rigid(four_by_four());
    post.bearings = {{-1.75, 1.75, -5e-4, 5e-4, 1e8}};
    post.fasteners = {{-1.0, 7.0, 2e4, 0.0, 1e4, 1e4}, {1.0, 7.0, 2e4, 0.0, 1e4, 1e4}};
    return post;
}

constexpr double pad_lb_per_in = 1e8 * 3.5 * 1e-3;

SidePostSolution solved(const SidePost& post, const std::vector<PostLoad>& loads) {
    SidePostSolution solution = solve_side_post(post, loads);
    REQUIRE(solution.status == SolveStatus::solved);
    return solution;
}

}  // namespace

// Lift at the bolts T/k + gap; at the pad -(C/k + gap); the post turns by their sum over 7, and its top follows.
TEST_CASE("Gaps at bolts and bed let the post lean by their sum before it is held", "[closed-form]") {
    SidePost post = on_pad_and_bolt();
    for (PostFastener& fastener : post.fasteners) fastener.gap_in = 0.0625;
    post.bearings[0].gap_in = 0.03125;
    const SidePostSolution found = solved(post, push(post, 0.0, 100.0));
    const double tension = 100.0 * top_in / 7.0, at_bolt = tension / 4e4 + 0.0625,
                 at_pad = -((tension - 100.0) / pad_lb_per_in + 0.03125);
    CHECK_CLOSE(found.fasteners[0].tension_lb + found.fasteners[1].tension_lb, tension, 1e-6, 0.0);
    CHECK_CLOSE(found.fasteners[0].opening_in, at_bolt, 1e-6, 0.0);
    CHECK_CLOSE(found.at_loads[0].moved_in.y, at_pad + (at_bolt - at_pad) * top_in / 7.0, 1e-5, 0.0);
}

// A body holds bolts and pad: on it act T towards the post at 7 in and C away at 0: force H along y and the moment of
// the push about its place at 3: H (h - 3), about -x. It moves H/ky and turns by the moment over kr.
TEST_CASE("A member that moves and rolls carries the push with its moment, and the top follows it", "[closed-form]") {
    SidePost post = on_pad_and_bolt();
    const SpaceVector place{0.0, -0.75, 3.0};
    post.bodies = one_body(place, {1e5, 5e4, 1e5, 4e6, 3e6, 2e6});
    const SidePostSolution still = solved(post, push(post, 0.0, 100.0));
    post.bearings[0].body = 0;
    for (PostFastener& fastener : post.fasteners) fastener.body = 0;
    const SidePostSolution found = solved(post, push(post, 0.0, 100.0));
    CHECK_CLOSE(found.bodies[0].force_lb.y, 100.0, 1e-9, 0.0);
    CHECK_CLOSE(found.bodies[0].moment_lb_in.x, -100.0 * (top_in - 3.0), 1e-9, 0.0);
    CHECK_CLOSE(found.bodies[0].motion.moved_in.y, 100.0 / 5e4, 1e-9, 0.0);
    const double roll = -100.0 * (top_in - 3.0) / 4e6;
    CHECK_CLOSE(found.bodies[0].motion.turned_rad.x, roll, 1e-9, 0.0);
    CHECK_CLOSE(found.at_loads[0].moved_in.y - still.at_loads[0].moved_in.y, 100.0 / 5e4 - roll * (top_in - 3.0), 1e-6,
                0.0);
    CHECK_CLOSE(still.bodies[0].force_lb.y, 0.0, 0.0, 1e-12);
}

// Down and along the rail through the body, off its place: force and moment about the place are the load's own.
TEST_CASE("A body carries any load with its moment about its place", "[closed-form]") {
    SidePost post = two_columns();
    const SpaceVector place{1.5, -0.75, 4.0};
    post.bodies = one_body(place, {1e5, 5e4, 1e5, 4e6, 3e6, 2e6});
    post.bearings[0].body = 0;
    for (PostFastener& fastener : post.fasteners) fastener.body = 0;
    const SidePostSolution found = solved(post, {{{0.4, 1.0, top_in}, {60.0, 150.0, -90.0}, {10.0, -20.0, 30.0}}});
    const SpaceVector arm{0.4 - 1.5, 1.0 + 0.75, top_in - 4.0};
    const BodyForce& body = found.bodies[0];
    CHECK_CLOSE(body.force_lb.x, 60.0, 1e-8, 0.0);
    CHECK_CLOSE(body.force_lb.y, 150.0, 1e-8, 0.0);
    CHECK_CLOSE(body.force_lb.z, -90.0, 1e-8, 0.0);
    CHECK_CLOSE(body.moment_lb_in.x, arm.y * -90.0 - arm.z * 150.0 + 10.0, 1e-8, 0.0);
    CHECK_CLOSE(body.moment_lb_in.y, arm.z * 60.0 - arm.x * -90.0 - 20.0, 1e-8, 0.0);
    CHECK_CLOSE(body.moment_lb_in.z, arm.x * 150.0 - arm.y * 60.0 + 30.0, 1e-8, 0.0);
    CHECK_CLOSE(body.motion.turned_rad.y, body.moment_lb_in.y / 3e6, 1e-8, 0.0);
}

TEST_CASE("A body that hardly gives is ground", "[property]") {
    SidePost post = two_columns();
    const std::vector<PostLoad> loads = push(post, 80.0, 150.0);
    const SidePostSolution on_ground = solved(post, loads);
    post.bodies = one_body({0.0, 0.0, 4.0}, {1e12, 1e12, 1e12, 1e13, 1e13, 1e13});
    post.bearings[0].body = 0;
    for (PostFastener& fastener : post.fasteners) fastener.body = 0;
    const SidePostSolution on_body = solved(post, loads);
    for (std::size_t i = 0; i < 4; ++i)
        CHECK_CLOSE(on_body.fasteners[i].tension_lb, on_ground.fasteners[i].tension_lb, 1e-5, 1e-3);
}

// A tie to a joist of its own stiffness: tie and joist in series hold as one spring of k1 k2/(k1 + k2).
TEST_CASE("A tie that goes back to a joist that gives is two springs in series", "[closed-form]") {
    SidePost post = on_pad_and_bolt();
    post.fasteners = {{0.0, 7.0, 4e4, 0.0, 1e4, 1e4}};
    const SidePostSolution apart = solved(post, push(post, 0.0, 100.0));
    post.bodies = one_body({0.0, -20.0, 7.0}, {1e9, 6e4, 1e9, 1e12, 1e12, 1e12});
    post.fasteners[0].body = 0;
    const SidePostSolution series = solved(post, push(post, 0.0, 100.0));
    CHECK_CLOSE(series.fasteners[0].opening_in, apart.fasteners[0].opening_in, 1e-6, 0.0);
    CHECK_CLOSE(series.at_loads[0].moved_in.y - apart.at_loads[0].moved_in.y, 100.0 * top_in / 7.0 / 6e4 * top_in / 7.0,
                1e-5, 0.0);
}

// Between a rim in front and a block behind, without one bolt that pulls: outward it presses the block above and the
// rim below; the two short pads are 7 in apart: C_block = H h/7.
TEST_CASE("A block behind the post holds it as the rim's face does", "[closed-form]") {
    SidePost post = on_pad_and_bolt();
    post.fasteners = {{0.0, 0.0, 0.0, 0.0, 1e4, 1e4}, {0.0, 7.0, 0.0, 0.0, 1e4, 1e4}};
    post.bearings.push_back({-1.75, 1.75, 7.0 - 5e-4, 7.0 + 5e-4, 1e8, 0.0, PostSide::back, std::nullopt});
    const SidePostSolution found = solved(post, push(post, 0.0, 100.0));
    CHECK_CLOSE(found.bearings[1].force_lb, 100.0 * top_in / 7.0, 1e-4, 0.0);
    CHECK_CLOSE(found.bearings[0].force_lb, 100.0 * (top_in / 7.0 - 1.0), 1e-4, 0.0);
    CHECK(found.fasteners[1].tension_lb == 0.0);
}

TEST_CASE("What nothing can balance has no answer, and the way the post goes is named", "[bad-input]") {
    SidePost post = four_by_four();
    const auto refused = [](const SidePost& of, const std::vector<PostLoad>& loads) {
        const SidePostSolution solution = solve_side_post(of, loads);
        CHECK(solution.status == SolveStatus::no_equilibrium);
        CHECK(solution.fasteners.empty());
        REQUIRE(solution.unresisted.has_value());
        return *solution.unresisted;
    };
    SECTION("inward with nothing to bear against") {
        post.bearings.clear();
        CHECK(refused(post, push(post, 0.0, -200.0)).turned.x > 0.0);
    }
    SECTION("outward on one bolt and nothing else") {
        post.bearings.clear();
        post.fasteners.erase(post.fasteners.begin());
        CHECK(refused(post, push(post, 0.0, 200.0)).turned.x < 0.0);
    }
    SECTION("outward where no bolt pulls") {
        for (PostFastener& fastener : post.fasteners) fastener.tension_lb_per_in = 0.0;
        refused(post, push(post, 0.0, 200.0));
    }
    SECTION("along the rail on one bolt") {
        post.fasteners.erase(post.fasteners.begin());
        CHECK(std::abs(refused(post, push(post, 200.0, 0.0)).turned.y) == 1.0);
    }
    SECTION("down where nothing holds it up") {
        for (PostFastener& fastener : post.fasteners) fastener.slip_z_lb_per_in = 0.0;
        CHECK(refused(post, push(post, 0.0, 0.0, -100.0)).moved.z == -1.0);
    }
    SECTION("pulled straight off its bed") {
        post.fasteners.clear();
        refused(post, push(post, 0.0, 50.0, 0.0, 4.0));
    }
}

// At the very edge: the push's line passes through the bed's lower edge, so that only an endless pressure there could
// balance it.
TEST_CASE("A contact shrunk to a line is no equilibrium either", "[bad-input]") {
    SidePost post = four_by_four();
    post.fasteners.clear();
    const SidePostSolution solution = solve_side_post(post, push(post, 0.0, -50.0, 0.0, 0.0));
    CHECK(solution.status != SolveStatus::solved);
    CHECK(solution.fasteners.empty());
    CHECK(solve_side_post(post, push(post, 0.0, -50.0, 0.0, 0.5)).status == SolveStatus::solved);
}

TEST_CASE("A motion that nothing resists and nothing drives leaves the forces known", "[property]") {
    SidePost post = four_by_four();
    post.fasteners.erase(post.fasteners.begin());  // one bolt: free to swing in the plane of the face
    const SidePostSolution found = solved(post, push(post, 0.0, 200.0));
    CHECK(found.free_to_move);
    CHECK_CLOSE(found.at_loads[0].moved_in.x, 0.0, 0.0, 1e-6);
    CHECK(found.fasteners[0].tension_lb > 1275.0);
    CHECK_FALSE(solved(four_by_four(), push(post, 0.0, 200.0)).free_to_move);
}

TEST_CASE("No load puts no force anywhere, with gaps and without", "[property]") {
    SidePost post = four_by_four();
    for (const double gap : {0.0, 0.1}) {
        post.bearings[0].gap_in = post.fasteners[1].gap_in = gap;
        const SidePostSolution found = solved(post, push(post, 0.0, 0.0));
        CHECK(found.fasteners[1].tension_lb == 0.0);
        CHECK(found.bearings[0].force_lb == 0.0);
        CHECK(solved(post, {}).bearings[0].area_in2 == 0.0);
    }
}

TEST_CASE("Numbers that make no post are refused", "[bad-input]") {
    const auto refused = [](auto change) {
        SidePost post = four_by_four();
        std::vector<PostLoad> loads = push(post, 0.0, 200.0);
        post.bodies = one_body({0.0, 0.0, 4.0}, {1e5, 1e5, 1e5, 1e6, 1e6, 1e6});
        change(post, loads);
        CHECK_THROWS_AS(solve_side_post(post, loads), std::invalid_argument);
    };
    refused([](SidePost& post, auto&) { post.axis_y_in = 0.0; });
    refused([](SidePost& post, auto&) { post.section.torsion_lb_in2 = 0.0; });
    refused([](SidePost& post, auto&) { post.section.shear_x_lb = -1.0; });
    refused([](SidePost& post, auto&) { post.bearings[0].z_max_in = post.bearings[0].z_min_in; });
    refused([](SidePost& post, auto&) { post.bearings[0].stiffness_psi_per_in = 0.0; });
    refused([](SidePost& post, auto&) { post.bearings[0].gap_in = -0.1; });
    refused([](SidePost& post, auto&) { post.fasteners[0].tension_lb_per_in = NAN; });
    refused([](SidePost& post, auto&) { post.fasteners[0].body = 1; });
    refused([](SidePost& post, auto&) { post.bodies.stiffness[1] = 1.0; });
    refused([](SidePost& post, auto&) { post.bodies.stiffness[0] = 0.0; });
    refused([](SidePost& post, auto&) { post.bodies.stiffness.pop_back(); });
    refused([](SidePost&, auto& loads) { loads[0].force_lb.y = INFINITY; });
    refused([](SidePost& post, auto&) {
        post.bearings.clear();
        post.fasteners.clear();
    });
    CHECK_THROWS_AS(solve_side_post(four_by_four(), {}, 0.0), std::invalid_argument);
}
