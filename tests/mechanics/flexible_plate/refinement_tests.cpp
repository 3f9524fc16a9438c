// What refinement must show: anchor tension and the post's rotation settle; a plate too stiff to bend tends to the
// rigid plate, which is integrated exactly and shares no code with this one, and to the textbook's transformed section;
// a round plate on a ring of anchors tends to the closed form of an annulus.
#include "mechanics/flexible_plate/bases.h"
#include "mechanics/shapes.h"
#include "support/compare.h"
#include "support/two_row_closed_form.h"

#include <algorithm>
#include <array>

using namespace toehold::mechanics;
using namespace toehold::test;

namespace {

constexpr double moment_lb_in = 8400.0;  // 200 lb at 42 in
constexpr std::array<double, 4> directions = {0.0, 0.5 * std::numbers::pi, 0.7, 4.0};

/// Of one base, in every direction.
struct Answers {
    std::array<double, directions.size()> tension_lb{}, rotation_rad{};
};

Answers answers(const FlexibleBase& base, double fineness) {
    FlexiblePlate plate(input_of(base, fineness));
    Answers result;
    for (std::size_t i = 0; i < directions.size(); ++i) {
        const FlexiblePlateSolution solution = plate.solve(push(moment_lb_in, directions[i]), {});
        REQUIRE(solution.status == SolveStatus::solved);
        result.tension_lb[i] = largest_tension(solution);
        result.rotation_rad[i] = std::hypot(solution.tilt_x_rad, solution.tilt_y_rad);
    }
    return result;
}

/// The largest relative difference over the directions.
double difference(const std::array<double, directions.size()>& a, const std::array<double, directions.size()>& b) {
    double largest = 0.0;
    for (std::size_t i = 0; i < a.size(); ++i) largest = std::max(largest, std::abs(a[i] / b[i] - 1.0));
    return largest;
}

/// `coarse_tension`: what fineness 1 may miss of the finest largest tension.
void check_refinement(const FlexibleBase& base, double coarse_tension) {
    const Answers finest = answers(base, 4.0);
    std::vector<double> tension, rotation;
    for (const double fineness : {1.0, 1.5, 2.0, 3.0}) {
        const Answers found = answers(base, fineness);
        tension.push_back(difference(found.tension_lb, finest.tension_lb));
        rotation.push_back(difference(found.rotation_rad, finest.rotation_rad));
    }
    CAPTURE(base.name, tension, rotation);
    CHECK(tension[0] < coarse_tension);
    CHECK(tension[2] < 0.0012);
    CHECK(tension[3] < 0.0008);
    CHECK(rotation[0] < 0.01);
    CHECK(rotation[2] < 0.004);
    CHECK(rotation[3] < 0.001);
    // Meshes without structure do not approach step by step, but two steps always bring the answer nearer.
    CHECK(std::max(tension[2], tension[3]) < tension[0]);
    CHECK(rotation[2] < rotation[0]);
    CHECK(rotation[3] < rotation[1]);
}

double rigid_difference(FlexibleBase base, double fineness, double direction) {
    base.modulus_psi *= 1e5;
    std::vector<AnchorSpring> anchors;
    for (FlexibleAnchor& anchor : base.anchors) {
        anchor.preload_lb = 0.0;
        anchors.push_back({anchor.footprint.center, anchor.stiffness_lb_per_in});
    }
    std::vector<BedPatch> bed;
    for (const BedRectangle& r : base.bed)
        bed.push_back({clip_rectangle(base.outline, r.x_min, r.x_max, r.y_min, r.y_max), r.stiffness_psi_per_in});
    const PlateLoad load = push(moment_lb_in, direction, -150.0);
    const RigidPlateSolution rigid = solve_rigid_plate(anchors, bed, load);
    const FlexiblePlateSolution stiff = FlexiblePlate(input_of(base, fineness)).solve_on_full_mesh(load, {});
    REQUIRE(rigid.status == SolveStatus::solved);
    REQUIRE(stiff.status == SolveStatus::solved);
    const double largest = largest_tension(stiff);
    double worst = 0.0;
    for (std::size_t i = 0; i < anchors.size(); ++i)
        worst = std::max(worst, std::abs(stiff.tension_lb[i] - rigid.tension_lb[i]) / largest);
    const double turn = std::hypot(rigid.tilt_x_rad, rigid.tilt_y_rad);
    worst = std::max(worst, std::abs(stiff.tilt_x_rad - rigid.tilt_x_rad) / turn);
    worst = std::max(worst, std::abs(stiff.tilt_y_rad - rigid.tilt_y_rad) / turn);
    for (std::size_t i = 0; i < bed.size(); ++i)
        worst = std::max(worst, std::abs(stiff.patches[i].force_lb - rigid.patches[i].force_lb) / largest_force(stiff));
    return worst;
}

}  // namespace

TEST_CASE("Refining a square base settles its tension and rotation", "[convergence]") {
    check_refinement(square_base(), 0.001);
}
TEST_CASE("Refining a round base settles its tension and rotation", "[convergence]") {
    check_refinement(round_base(), 0.001);
}
TEST_CASE("Refining an L-shaped base settles its tension and rotation", "[convergence]") {
    check_refinement(l_base(), 0.001);
}
TEST_CASE("Refining a base with its post at an edge settles its tension and rotation", "[convergence]") {
    // Elements between the post and the edge 0.2 in from it cost four times the error of the others.
    check_refinement(lopsided_base(), 0.005);
}

TEST_CASE("A plate too stiff to bend pulls as the transformed section says", "[closed-form]") {
    // 6 x 8 in, two rows of two anchors 1 in and 7 in from the toe edge, on one bed.
    for (const double bed : {3000.0, 25000.0, 200000.0}) {
        FlexibleBase base{"stiff", rectangle(-3.0, 3.0, -4.0, 4.0), rectangle(-1.0, 1.0, -1.0, 1.0), {}, {}};
        for (const Point at : {Point{-2.0, -3.0}, {2.0, -3.0}, {2.0, 3.0}, {-2.0, 3.0}})
            base.anchors.push_back({{at, 0.4}, 30000.0, 0.0});
        base.bed = {{-10.0, 10.0, -10.0, 10.0, bed}};
        base.modulus_psi = 29e11;
        const RowForces expected = two_row_tensions({6.0, 8.0, 1.0, 7.0, 2 * 30000.0, bed}, moment_lb_in);
        for (const double fineness : {1.0, 2.0}) {
            FlexiblePlate plate(input_of(base, fineness));
            const FlexiblePlateSolution stiff = plate.solve(push(moment_lb_in, 0.5 * std::numbers::pi), {});
            REQUIRE(stiff.status == SolveStatus::solved);
            CAPTURE(bed, fineness);
            const double allowed = 1e-3 * expected.heel_lb / fineness;
            CHECK_CLOSE(stiff.tension_lb[0] + stiff.tension_lb[1], expected.heel_lb, 0.0, allowed);
            CHECK_CLOSE(stiff.tension_lb[2] + stiff.tension_lb[3], expected.toe_lb, 0.0, allowed);
        }
    }
}

TEST_CASE("A plate too stiff to bend tends to the rigid plate as its bed is integrated more finely", "[cross-solver]") {
    // Tensions, bed forces and tilts, all relative to the largest. What is left is the bed's quadrature where contact
    // ends inside an element: at most 1.0e-3 at fineness 1, 3e-4 at 2 (and 1.2e-4 at 3).
    for (const FlexibleBase& base : common_bases()) {
        double coarse = 0.0, fine = 0.0;
        for (const double direction : {0.7, 4.0}) {
            coarse = std::max(coarse, rigid_difference(base, 1.0, direction));
            fine = std::max(fine, rigid_difference(base, 2.0, direction));
        }
        CAPTURE(base.name, coarse, fine);
        CHECK(coarse < 1.5e-3);
        CHECK(fine < 4e-4);
        CHECK(fine < 0.6 * coarse);
    }
}
