// What cannot be balanced, what is barely balanced, and input that means nothing.
#include "mechanics/rigid_plate/rigid_plate.h"

#include "mechanics/shapes.h"
#include "support/compare.h"

#include <limits>
#include <stdexcept>

using namespace toehold::mechanics;
using toehold::test::example_plate;
using toehold::test::l_shape;
using toehold::test::push;
using toehold::test::rectangle;

namespace {

constexpr double outward = std::numbers::pi / 2.0;
constexpr double infinity = std::numeric_limits<double>::infinity();

const std::vector<BedPatch> footing{{rectangle(-2.0, 2.0, -3.0, 3.0), 20000.0}};

SolveStatus status(const std::vector<AnchorSpring>& anchors, const std::vector<BedPatch>& bed, const PlateLoad& load) {
    return solve_rigid_plate(anchors, bed, load).status;
}

/// A load of 1000 lb down through a point.
PlateLoad weight_at(double x, double y) { return {-1000.0, -1000.0 * y, 1000.0 * x}; }

}  // namespace

TEST_CASE("A plate without anchors turns over under a moment and lifts off under uplift", "[unit]") {
    CHECK(status({}, footing, push(1.0, outward)) == SolveStatus::no_equilibrium);
    CHECK(status({}, footing, {1.0, 0.0, 0.0}) == SolveStatus::no_equilibrium);
}

TEST_CASE("A weight on the bare bed stands inside its outline and falls outside it", "[unit]") {
    CHECK(status({}, footing, weight_at(0.0, 2.9)) == SolveStatus::solved);
    CHECK(status({}, footing, weight_at(0.0, 2.9999)) == SolveStatus::solved);
    CHECK(status({}, footing, weight_at(0.0, 3.0)) == SolveStatus::no_equilibrium);
    CHECK(status({}, footing, weight_at(0.0, 3.0001)) == SolveStatus::no_equilibrium);
    CHECK(status({}, footing, weight_at(2.0, 3.0)) == SolveStatus::no_equilibrium);
}

TEST_CASE("Contact that shrinks to a line gives a true answer or none, never a wrong one", "[unit]") {
    for (int power = 2; power <= 13; ++power) {
        const double inside = std::pow(10.0, -power);
        const RigidPlateSolution solution = solve_rigid_plate({}, footing, weight_at(0.0, 3.0 - inside));
        CAPTURE(inside);
        if (power < 5) REQUIRE(solution.status == SolveStatus::solved);
        if (solution.status == SolveStatus::solved) {
            // A triangle three times as long as the weight stands inside, 4 in wide: p = 2 P / (3 b inside).
            CHECK_CLOSE(solution.patches[0].peak_psi, 2000.0 / (3.0 * 4.0 * inside), 1e-8, 0.0);
        } else {
            CHECK(solution.status == SolveStatus::no_equilibrium);
            CHECK(solution.patches.empty());
        }
    }
}

TEST_CASE("A weight in the notch of an L stands while it is inside the hull", "[unit]") {
    // The hull's edge runs from (6, 3) to (2.5, 6): 6 x + 7 y = 57.
    const std::vector<BedPatch> bed{{l_shape(), 20000.0}};
    CHECK(status({}, bed, weight_at(4.0, 32.9 / 7.0)) == SolveStatus::solved);
    CHECK(status({}, bed, weight_at(4.0, 33.1 / 7.0)) == SolveStatus::no_equilibrium);
}

TEST_CASE("Anchors alone hold uplift inside their hull, rim included, and no moment", "[unit]") {
    const std::vector<AnchorSpring> anchors = example_plate().anchors;
    CHECK(status(anchors, {}, {100.0, 0.0, 0.0}) == SolveStatus::solved);
    CHECK(status(anchors, {}, {100.0, 250.0, 0.0}) == SolveStatus::solved);
    CHECK(status(anchors, {}, {100.0, 250.1, 0.0}) == SolveStatus::no_equilibrium);
    CHECK(status(anchors, {}, push(1.0, outward)) == SolveStatus::no_equilibrium);
    CHECK(status(anchors, {}, {-1.0, 0.0, 0.0}) == SolveStatus::no_equilibrium);
}

TEST_CASE("A single anchor holds a pull on its own line", "[unit]") {
    const std::vector<AnchorSpring> anchor{{{1.0, 2.0}, 500.0}};
    const RigidPlateSolution solution = solve_rigid_plate(anchor, {}, {100.0, 200.0, -100.0});
    REQUIRE(solution.status == SolveStatus::solved);
    CHECK_CLOSE(solution.tension_lb[0], 100.0, 1e-12, 0.0);
    CHECK(status(anchor, {}, {100.0, 200.0, 0.0}) == SolveStatus::no_equilibrium);
}

TEST_CASE("Anchors ahead of the toe cannot hold a plate down at its heel", "[unit]") {
    // All that can turn it back lies on the wrong side: pull ahead of every point that bears.
    const std::vector<AnchorSpring> ahead{{{-1.0, 4.0}, 30000.0}, {{1.0, 4.0}, 30000.0}};
    CHECK(status(ahead, footing, push(5000.0, outward)) == SolveStatus::no_equilibrium);
    CHECK(status(ahead, footing, push(5000.0, -outward)) == SolveStatus::solved);
}

TEST_CASE("Anchors in one line with a bed hold moments both ways", "[unit]") {
    const std::vector<AnchorSpring> line{{{-1.0, 0.0}, 30000.0}, {{0.0, 0.0}, 30000.0}, {{1.0, 0.0}, 30000.0}};
    for (int direction = 0; direction < 360; direction += 10) {
        const RigidPlateSolution solution =
            solve_rigid_plate(line, footing, push(5000.0, direction * std::numbers::pi / 180.0));
        CAPTURE(direction);
        REQUIRE(solution.status == SolveStatus::solved);
        CHECK(solution.residuals.moment < 1e-11);
    }
}

TEST_CASE("A plate drawn straight up on a line of anchors is held though it could tilt", "[unit]") {
    const std::vector<AnchorSpring> line{{{-1.0, 0.0}, 1000.0}, {{0.0, 0.0}, 1000.0}, {{1.0, 0.0}, 1000.0}};
    const RigidPlateSolution solution = solve_rigid_plate(line, {}, {300.0, 0.0, 0.0});
    REQUIRE(solution.status == SolveStatus::solved);
    for (const double tension : solution.tension_lb) CHECK_CLOSE(tension, 100.0, 1e-12, 0.0);
    CHECK(status(line, {}, {300.0, 1.0, 0.0}) == SolveStatus::no_equilibrium);
}

TEST_CASE("No load needs no support and moves nothing", "[unit]") {
    const toehold::test::Plate plate = example_plate();
    const RigidPlateSolution solution = solve_rigid_plate(plate.anchors, plate.bed, {});
    REQUIRE(solution.status == SolveStatus::solved);
    CHECK(solution.tension_lb == std::vector<double>(4, 0.0));
    CHECK(solution.patches[0].force_lb == 0.0);
    CHECK(solution.lift_in == 0.0);
    CHECK(status({}, {}, {}) == SolveStatus::solved);
    CHECK(status({}, {}, {1.0, 0.0, 0.0}) == SolveStatus::no_equilibrium);
}

TEST_CASE("A start that lifts everything off, or came to nothing, does no harm", "[unit]") {
    const toehold::test::Plate plate = example_plate();
    const PlateLoad load = push(8400.0, 0.7);
    const RigidPlateSolution cold = solve_rigid_plate(plate.anchors, plate.bed, load);
    RigidPlateSolution start;
    start.status = SolveStatus::solved;
    for (const double lift : {0.0, 1e9, -1e9, 1e-300, infinity, std::nan("")}) {
        start.lift_in = lift;
        const RigidPlateSolution warm = solve_rigid_plate(plate.anchors, plate.bed, load, &start);
        CAPTURE(lift);
        REQUIRE(warm.status == SolveStatus::solved);
        for (std::size_t index = 0; index < 4; ++index) {
            CHECK_CLOSE(warm.tension_lb[index], cold.tension_lb[index], 1e-10, 1e-8);
        }
    }
}

TEST_CASE("A patch without area carries nothing", "[unit]") {
    toehold::test::Plate plate = example_plate();
    plate.bed.push_back({{{0.0, 0.0}, {1.0, 1.0}, {2.0, 2.0}}, 25000.0});
    plate.bed.push_back({{}, 25000.0});
    const RigidPlateSolution solution = solve_rigid_plate(plate.anchors, plate.bed, push(8400.0, outward));
    REQUIRE(solution.status == SolveStatus::solved);
    CHECK(solution.patches[1].force_lb == 0.0);
    CHECK(solution.patches[2].force_lb == 0.0);
    CHECK(status({}, {plate.bed[1]}, {-1.0, 0.0, 0.0}) == SolveStatus::no_equilibrium);
}

TEST_CASE("Input that means nothing is refused", "[bad-input]") {
    const toehold::test::Plate plate = example_plate();
    const PlateLoad load = push(8400.0, outward);
    for (const double stiffness : {0.0, -1.0, infinity, std::nan("")}) {
        toehold::test::Plate bad = plate;
        bad.anchors[2].stiffness_lb_per_in = stiffness;
        CHECK_THROWS_AS(solve_rigid_plate(bad.anchors, plate.bed, load), std::invalid_argument);
        bad.bed[0].stiffness_psi_per_in = stiffness;
        CHECK_THROWS_AS(solve_rigid_plate(plate.anchors, bad.bed, load), std::invalid_argument);
    }
    toehold::test::Plate far = plate;
    far.anchors[0].at.x = infinity;
    CHECK_THROWS_AS(solve_rigid_plate(far.anchors, plate.bed, load), std::invalid_argument);
    far.bed[0].outline[1].y = std::nan("");
    CHECK_THROWS_AS(solve_rigid_plate(plate.anchors, far.bed, load), std::invalid_argument);
    CHECK_THROWS_AS(solve_rigid_plate(plate.anchors, plate.bed, {infinity, 0.0, 0.0}), std::invalid_argument);
    const std::vector<BedPatch> clockwise{{{{-1.0, -1.0}, {-1.0, 1.0}, {1.0, 1.0}, {1.0, -1.0}}, 25000.0}};
    CHECK_THROWS_AS(solve_rigid_plate(plate.anchors, clockwise, load), std::invalid_argument);
}
