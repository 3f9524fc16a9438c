// A post that bends, against beams in closed form.
#include "mechanics/side_post/beam_shape.h"
#include "mechanics/side_post/posts.h"
#include "support/compare.h"

#include <Eigen/LU>

#include <algorithm>
#include <cmath>
#include <numbers>

using namespace toehold::mechanics;
using toehold::mechanics::side_post::BeamPiece;

namespace {

constexpr double bending = 1.75e7, bed_psi_per_in = 2e4, width_in = 3.5;

double lambda() { return std::pow(bed_psi_per_in * width_in / (4.0 * bending), 0.25); }

/// A post on a long bed; `both_ways`: pressed on its back as well, so that the bed pulls as it presses.
SidePost on_long_bed(double from_in, double to_in, bool both_ways) {
    SidePost post;
    post.axis_y_in = 1.75;
    post.section = {bending, bending, 2e6, 1.7e7, 0.0, 0.0};
    post.bearings = {{-1.75, 1.75, from_in, to_in, bed_psi_per_in}};
    if (both_ways) {
        post.bearings.push_back(post.bearings[0]);
        post.bearings[1].side = PostSide::back;
    }
    return post;
}

SidePostSolution solved(const SidePost& post, const std::vector<PostLoad>& loads, double fineness = 1.0) {
    SidePostSolution solution = solve_side_post(post, loads, fineness);
    REQUIRE(solution.status == SolveStatus::solved);
    return solution;
}

}  // namespace

// Held at its lower end, P = 1 at the upper: l^3/(3 E I) + l/(G A_s), slope l^2/(2 E I).
TEST_CASE("One piece of the post is Timoshenko's cantilever", "[closed-form]") {
    for (const double shear : {0.0, 2e5}) {
        const BeamPiece piece{12.0, 3e6, shear};
        const Eigen::Vector2d tip = piece.stiffness().bottomRightCorner<2, 2>().inverse() * Eigen::Vector2d(1.0, 0.0);
        CHECK_CLOSE(tip(0), 1728.0 / 9e6 + (shear > 0.0 ? 12.0 / shear : 0.0), 1e-12, 0.0);
        CHECK_CLOSE(tip(1), 144.0 / 6e6, 1e-12, 0.0);
        // Between: x^2 (3 l - x)/(6 E I) + x/(G A_s) at x = 3.
        const double expected = 9.0 * 33.0 / 18e6 + (shear > 0.0 ? 3.0 / shear : 0.0);
        CHECK_CLOSE(piece.motion(0.25).tail<2>().dot(tip), expected, 1e-12, 0.0);
        CHECK_CLOSE(piece.motion(0.3)(0) + piece.motion(0.3)(2), 1.0, 1e-14, 0.0);
    }
}

// M. Hetenyi, Beams on Elastic Foundation (1946), the half-endless beam: under P at its end y = 2 P lambda/k, turned by
// 2 P lambda^2/k; under M, 2 M lambda^2/k and 4 M lambda^3/k; largest moment under P: P/lambda e^(-pi/4) sin(pi/4).
// 14 decay lengths of 1/lambda stand for endless.
TEST_CASE("A post between two faces is Hetenyi's half-endless beam", "[closed-form]") {
    const double k = bed_psi_per_in * width_in, beta = lambda(), depth = 14.0 / beta;
    const SidePost post = on_long_bed(-depth, 0.0, true);
    const double p = 300.0, m = 4000.0;
    const SidePostSolution under_force = solved(post, {{{0.0, 1.75, 0.0}, {0.0, p, 0.0}, {}}}, 2.0);
    CHECK_CLOSE(under_force.at_loads[0].moved_in.y, 2.0 * p * beta / k, 1e-4, 0.0);
    CHECK_CLOSE(-under_force.at_loads[0].turned_rad.x, 2.0 * p * beta * beta / k, 1e-4, 0.0);
    const SidePostSolution under_couple = solved(post, {{{0.0, 1.75, 0.0}, {}, {-m, 0.0, 0.0}}}, 2.0);
    CHECK_CLOSE(under_couple.at_loads[0].moved_in.y, 2.0 * m * beta * beta / k, 1e-4, 0.0);
    CHECK_CLOSE(-under_couple.at_loads[0].turned_rad.x, 4.0 * m * beta * beta * beta / k, 1e-4, 0.0);
    double largest = 0.0;
    for (const PostStation& station : under_force.stations)
        largest = std::max(largest, std::abs(station.moment_lb_in.x));
    // Cuts stand an eighth of 1/lambda apart: the crest between two is flat to well below 1 %.
    const double crest = p / beta * std::exp(-0.25 * std::numbers::pi) * std::sin(0.25 * std::numbers::pi);
    CHECK(largest <= crest * (1.0 + 1e-4));
    CHECK_CLOSE(largest, crest, 0.01, 0.0);
}

TEST_CASE("The half-endless beam is met at the fourth order of the mesh or better", "[convergence]") {
    const double k = bed_psi_per_in * width_in, beta = lambda();
    const SidePost post = on_long_bed(-14.0 / beta, 0.0, true);
    const double exact = 2.0 * 300.0 * beta / k;
    const auto error = [&](double fineness) {
        const SidePostSolution found = solved(post, {{{0.0, 1.75, 0.0}, {0.0, 300.0, 0.0}, {}}}, fineness);
        return std::abs(found.at_loads[0].moved_in.y / exact - 1.0);
    };
    const double coarse = error(0.5), fine = error(1.0);
    CHECK(coarse < 5e-3);
    CHECK(coarse / fine > 12.0);
}

// A weightless endless beam on a bed that cannot pull, pressed in its middle, lifts off at pi/(2 lambda) from the load,
// whatever the load; there its deflection, moment and shear vanish: y'' = y''' = 0 at the ends of the part in contact.
TEST_CASE("A post pressed on a one-way bed lifts off at pi / (2 lambda) from the load, whatever the load",
          "[closed-form]") {
    const double half = std::numbers::pi / (2.0 * lambda());
    const SidePost post = on_long_bed(-4.0 * half, 4.0 * half, false);
    for (const double p : {1.0, 5000.0}) {
        const SidePostSolution found = solved(post, {{{0.0, 1.75, 0.0}, {0.0, -p, 0.0}, {}}}, 2.0);
        CHECK_CLOSE(found.bearings[0].to_z_in, half, 1e-3, 0.0);
        CHECK_CLOSE(found.bearings[0].from_z_in, -half, 1e-3, 0.0);
        CHECK_CLOSE(found.bearings[0].force_lb, p, 1e-9, 0.0);
        CHECK(found.free_to_move);  // nothing holds it along the rail, up or down
        // Whatever the length: the part in contact is a beam with free ends of length 2 half under P in its middle,
        // Hetenyi's formula for it: y = P lambda/(2 k) (cosh 2u + cos 2u + 2)/(sinh 2u + sin 2u), u = lambda half.
        const double t = std::numbers::pi;
        const double y = p * lambda() / (2.0 * bed_psi_per_in * width_in) * (std::cosh(t) + std::cos(t) + 2.0) /
                         (std::sinh(t) + std::sin(t));
        CHECK_CLOSE(-found.at_loads[0].moved_in.y, y, 1e-4, 0.0);
    }
}

// A beam over two supports L apart that overhangs by a: at its tip P a^2 (L + a)/(3 E I) + P a (L + a)/(L G A_s), and
// what the supports give: P (L + a)/(L k1) (L + a)/L at the bolt and P a/(L k0) a/L at the bed, here of a short bed.
TEST_CASE("A post over a bolt and a short bed is an overhanging beam", "[closed-form]") {
    constexpr double span = 6.0, over = 40.0, p = 200.0, bolt = 3e4, bed = 1e5, height = 1e-3;
    for (const double shear : {0.0, 4e5}) {
        SidePost post;
        post.axis_y_in = 1.75;
        post.section = {bending, 0.5 * bending, 2e6, 1.7e7, 0.0, shear};
        post.bearings = {{-1.75, 1.75, -0.5 * height, 0.5 * height, bed / (3.5 * height)}};
        post.fasteners = {{0.0, span, bolt, 0.0, 1e4, 1e4}};
        const SidePostSolution found = solved(post, {{{0.0, 1.75, span + over}, {0.0, p, 0.0}, {}}});
        const double bend = p * over * over * (span + over) / (3.0 * bending);
        const double slide = shear > 0.0 ? p * over * (span + over) / (span * shear) : 0.0;
        const double lever = (span + over) / span, other = over / span;
        CHECK_CLOSE(found.at_loads[0].moved_in.y, bend + slide + p * (lever * lever / bolt + other * other / bed), 1e-4,
                    0.0);
        CHECK_CLOSE(found.fasteners[0].tension_lb, p * lever, 1e-4, 0.0);
    }
}

// Held by two bolts L apart along the rail; the tip as above with both supports alike, k each.
TEST_CASE("Along the rail a post over two bolts is an overhanging beam", "[closed-form]") {
    SidePost post = toehold::test::four_by_four();
    post.section.bending_y_lb_in2 = 9e6;
    post.section.torsion_lb_in2 *= 1e6;
    // Bolts in the axis' own plane would leave no twist; a stiff bed and stiff pulls keep it small.
    post.axis_y_in = 1e-6;
    constexpr double span = 5.25, over = 39.0, p = 150.0, k = 3e4;
    const SidePostSolution found = solved(post, toehold::test::push(post, p, 0.0));
    const double lever = (span + over) / span, other = over / span;
    const double tip = p * over * over * (span + over) / (3.0 * 9e6) + p * (lever * lever + other * other) / k;
    CHECK_CLOSE(found.at_loads[0].moved_in.x, tip, 1e-6, 0.0);
    CHECK_CLOSE(found.fasteners[1].slip_x_lb, p * lever, 1e-6, 0.0);
    // Bending about y between the bolts and above: P times the height above the cut.
    for (const PostStation& station : found.stations)
        if (station.z_in >= 7.25) CHECK_CLOSE(station.moment_lb_in.y, p * (46.25 - station.z_in), 1e-9, 1e-6);
}
