// The deck writer against closed forms, so that the plates held against its results are held against something known.
#include "oracle/ccx/deck.h"
#include "oracle/ccx/run.h"
#include "oracle/solid_solution.h"
#include "support/compare.h"

#include <cmath>

namespace {

using namespace toehold;
using mechanics::Point;

constexpr double length_in = 10.0, width_in = 1.0, thickness_in = 0.5, modulus_psi = 10e6;
constexpr double moment_of_inertia_in4 = width_in * thickness_in * thickness_in * thickness_in / 12.0;
constexpr double bending_stiffness_lb_per_in =
    3.0 * modulus_psi * moment_of_inertia_in4 / (length_in * length_in * length_in);

/// Squares along the strip, two across, each cut into two triangles.
mechanics::PlateMesh strip_mesh() {
    constexpr int along = 20, across = 2;
    mechanics::PlateMesh mesh;
    for (int i = 0; i <= along; ++i)
        for (int j = 0; j <= across; ++j) mesh.nodes.push_back({length_in * i / along, width_in * j / across});
    for (int i = 0; i < along; ++i) {
        for (int j = 0; j < across; ++j) {
            const int a = i * (across + 1) + j, b = a + across + 1;
            mesh.triangles.push_back({a, b, b + 1});
            mesh.triangles.push_back({a, b + 1, a + 1});
        }
    }
    return mesh;
}

/// A strip clamped at x = 0 without Poisson's effect, which would keep the clamped end from being a beam's.
test::Deck cantilever(double tip_lb) {
    test::Deck deck{test::SolidPlate(strip_mesh(), thickness_in), modulus_psi, 0.0, 1.0, false, {}, {}, {}, {}};
    std::size_t at_tip = 0;
    for (std::size_t i = 0; i < deck.plate.nodes().size(); ++i) {
        const test::SolidNode& node = deck.plate.nodes()[i];
        if (node.x == 0.0) deck.fixed.push_back(i);
        if (node.x == length_in && node.y == 0.5 * width_in && node.z == 0.0) at_tip = i;
    }
    deck.forces = {{at_tip, tip_lb}};
    return deck;
}

double tip_lift_in(const test::Deck& deck) {
    const test::CcxRun run = test::run_ccx(test::text_of(deck));
    return run.displacements.at(test::number_of_node(deck.forces[0].node))[2] / test::load_in_deck;
}

test::SolidSpring prop_at_tip(const test::Deck& deck, double gap_in) {
    const Point tip{length_in, 0.5 * width_in};
    return {deck.plate.row(test::Face::under, tip), bending_stiffness_lb_per_in, 1.0, gap_in, 1.0};
}

}  // namespace

TEST_CASE("a cantilever of solid elements sinks by P L^3 / 3 E I and its shear", "[oracle][closed-form]") {
    constexpr double tip_lb = -50.0;
    // Timoshenko's beam: P L / (k G A) on top, with k = 5/6 for a rectangle and G = E / 2 without Poisson's effect.
    constexpr double by_shear_in = tip_lb * length_in / (5.0 / 6.0 * 0.5 * modulus_psi * width_in * thickness_in);
    CHECK_CLOSE(tip_lift_in(cantilever(tip_lb)), tip_lb / bending_stiffness_lb_per_in + by_shear_in, 0.002, 0.0);
}

TEST_CASE("a prop that only pulls shares an upward load and leaves a downward one alone", "[oracle][closed-form]") {
    test::Deck up = cantilever(50.0);
    const double alone = tip_lift_in(up);
    const double beam = 50.0 / alone;
    up.springs = {prop_at_tip(up, 0.0)};
    CHECK_CLOSE(tip_lift_in(up), 50.0 / (beam + bending_stiffness_lb_per_in), 0.001, 0.0);

    test::Deck down = cantilever(-50.0);
    down.springs = {prop_at_tip(down, 0.0)};
    CHECK_CLOSE(tip_lift_in(down), -alone, 1e-5, 0.0);

    // Tightened by a stretch of 0.1 in, it pulls before anything is lifted: P = beam w + k (w + 0.1).
    test::Deck tightened = cantilever(50.0);
    tightened.springs = {prop_at_tip(tightened, 0.1)};
    const double k = bending_stiffness_lb_per_in;
    CHECK_CLOSE(tip_lift_in(tightened), (50.0 - 0.1 * k) / (beam + k), 0.001, 1e-6);
}

TEST_CASE("four anchors on a stiff plate share a pull and a moment as rigid statics say", "[oracle][closed-form]") {
    test::Base base = test::square_on_two_blocks();
    base.bed.clear();
    base.modulus_psi *= 1e4;
    constexpr double pull_lb = 4000.0, moment_lb_in = 6000.0, arm_in = 3.0, stiffness_lb_per_in = 50000.0;
    const test::SolidSolution solid =
        test::solve_with_ccx(base, test::mesh_of(base, 1.0), {pull_lb, moment_lb_in, 0.5 * moment_lb_in});
    // A moment about +x lifts +y; about +y it lifts -x. Four anchors at an arm of 3 in: M / (4 arm) each.
    constexpr double by_x = moment_lb_in / (4.0 * arm_in), by_y = 0.5 * by_x;
    const double expected[] = {1000.0 - by_x + by_y, 1000.0 - by_x - by_y, 1000.0 + by_x - by_y, 1000.0 + by_x + by_y};
    for (std::size_t i = 0; i < 4; ++i) CHECK_CLOSE(solid.tension_lb[i], expected[i], 1e-4, 0.0);
    CHECK_CLOSE(solid.lift_in, pull_lb / (4.0 * stiffness_lb_per_in), 1e-4, 0.0);
    CHECK_CLOSE(solid.tilt_x_rad, moment_lb_in / (4.0 * stiffness_lb_per_in * arm_in * arm_in), 1e-4, 0.0);
    CHECK_CLOSE(solid.tilt_y_rad, 0.5 * moment_lb_in / (4.0 * stiffness_lb_per_in * arm_in * arm_in), 1e-4, 0.0);
}

TEST_CASE("the solid plate's mean over a disc is exact for a quadratic lift", "[oracle][unit]") {
    const test::Base base = test::square_on_two_blocks();
    const test::SolidPlate plate(test::mesh_of(base, 1.0), base.thickness_in);
    const mechanics::Footprint disc{{3.0, -3.0}, 0.5};
    const auto lift = [](const test::SolidNode& n) { return 1.0 + n.x - 2.0 * n.y + n.x * n.x + n.x * n.y; };
    double mean = 0.0;
    for (const auto& [node, weight] : plate.mean_row(test::Face::over, disc))
        mean += weight * lift(plate.nodes()[node]);
    // The mean of x^2 over a disc is that of its centre and a quarter of the radius squared.
    CHECK_CLOSE(mean, 1.0 + 3.0 + 6.0 + 9.0 + 0.25 * 0.25 - 9.0, 1e-12, 0.0);
}
