// The rigid plate against formulas of strength of materials: transformed section, P/A +- M/S, no-tension footings.
#include "mechanics/rigid_plate/rigid_plate.h"

#include "mechanics/shapes.h"
#include "support/compare.h"

#include <algorithm>

using namespace toehold::mechanics;
using toehold::test::push;
using toehold::test::rectangle;
using toehold::test::regular_polygon;

namespace {

constexpr double outward = std::numbers::pi / 2.0;
constexpr double tight = 1e-10;

// Rectangle of width b and depth h along y, toe at y = h/2. Distances s run back from the toe. With the plate turned
// by kappa about a line c behind the toe, lift = kappa (s - c), so
//   bed        k b c^2 kappa / 2, acting at s = c/3,
//   anchor i   k_i (s_i - c) kappa where s_i > c.
// Down load P and moment M about the middle (s = h/2) give, with R(c) = k b c^2 / 2 - sum k_i (s_i - c),
//   P = kappa R,   M = kappa [k b c^2/2 (h/2 - c/3) + sum k_i (s_i - c)(s_i - h/2)] = kappa Q(c),
// and so the cubic  P Q(c) - M R(c) = 0. With one row this is the reinforced-concrete section in bending and thrust.
struct Row {
    double behind_toe = 0.0;
    double stiffness = 0.0;  ///< of the whole row
};

struct Section {
    double width = 0.0;
    double depth = 0.0;
    double bed = 0.0;
    std::vector<Row> rows;

    [[nodiscard]] double thrust(double c) const {
        double sum = bed * width * c * c / 2.0;
        for (const Row& row : rows) sum -= row.stiffness * std::max(0.0, row.behind_toe - c);
        return sum;
    }
    [[nodiscard]] double couple(double c) const {
        double sum = bed * width * c * c / 2.0 * (depth / 2.0 - c / 3.0);
        for (const Row& row : rows) {
            sum += row.stiffness * std::max(0.0, row.behind_toe - c) * (row.behind_toe - depth / 2.0);
        }
        return sum;
    }
    /// The neutral axis by bisection: P Q(c) - M R(c) falls from positive to negative once.
    [[nodiscard]] double neutral_axis(double down, double moment) const {
        double low = 0.0;
        double high = depth;
        for (int halving = 0; halving < 200; ++halving) {
            const double c = 0.5 * (low + high);
            (down * couple(c) - moment * thrust(c) > 0.0 ? low : high) = c;
        }
        return 0.5 * (low + high);
    }
};

void check_section(const Section& section, double down, double moment) {
    const double c = section.neutral_axis(down, moment);
    const double kappa = moment / section.couple(c);
    const double toe = section.depth / 2.0;
    std::vector<AnchorSpring> anchors;
    for (const Row& row : section.rows) {
        anchors.push_back({{-0.3 * section.width, toe - row.behind_toe}, row.stiffness / 2.0});
        anchors.push_back({{0.3 * section.width, toe - row.behind_toe}, row.stiffness / 2.0});
    }
    const std::vector<BedPatch> bed{{rectangle(-section.width / 2.0, section.width / 2.0, -toe, toe), section.bed}};
    const RigidPlateSolution solution = solve_rigid_plate(anchors, bed, push(moment, outward, -down));
    REQUIRE(solution.status == SolveStatus::solved);
    for (std::size_t index = 0; index < anchors.size(); ++index) {
        const Row& row = section.rows[index / 2];
        const double expected = row.stiffness / 2.0 * std::max(0.0, row.behind_toe - c) * kappa;
        CHECK_CLOSE(solution.tension_lb[index], expected, tight, tight * moment / section.depth);
    }
    const PatchForce& toe_force = solution.patches[0];
    CHECK_CLOSE(toe_force.force_lb, section.bed * section.width * c * c / 2.0 * kappa, tight, 0.0);
    CHECK_CLOSE(toe_force.at.y, toe - c / 3.0, tight, 0.0);
    CHECK_CLOSE(toe_force.peak_psi, section.bed * c * kappa, tight, 0.0);
    CHECK_CLOSE(toe_force.contact_area_in2, section.width * c, tight, 0.0);
    CHECK_CLOSE(-solution.tilt_x_rad, kappa, tight, 0.0);
}

double peak_of(const Polygon& outline, const PlateLoad& load) {
    const std::vector<BedPatch> bed{{outline, 25000.0}};
    const RigidPlateSolution solution = solve_rigid_plate({}, bed, load);
    REQUIRE(solution.status == SolveStatus::solved);
    return solution.patches[0].peak_psi;
}

}  // namespace

TEST_CASE("One row of anchors agrees with the transformed section", "[closed-form]") {
    const Section section{5.5, 7.0, 25000.0, {{6.0, 60000.0}}};
    check_section(section, 0.0, 8400.0);
    check_section(section, 150.0, 8400.0);
    check_section(section, 2000.0, 8400.0);
    check_section(section, -300.0, 8400.0);
}

TEST_CASE("Pure bending with one row needs only a quadratic", "[closed-form]") {
    // k b c^2 / 2 = K (d - c), T = M / (d - c/3): with k b = 2, K = 1 and d = 3/4, c is 1/2.
    const std::vector<AnchorSpring> anchors{{{0.0, 0.25}, 1.0}};
    const std::vector<BedPatch> bed{{rectangle(-0.5, 0.5, 0.0, 1.0), 2.0}};
    const RigidPlateSolution solution = solve_rigid_plate(anchors, bed, push(7.0, outward));
    REQUIRE(solution.status == SolveStatus::solved);
    CHECK_CLOSE(solution.patches[0].contact_area_in2, 0.5, tight, 0.0);
    CHECK_CLOSE(solution.tension_lb[0], 7.0 / (0.75 - 0.5 / 3.0), tight, 0.0);
}

TEST_CASE("Two rows agree with the transformed section, the near row pulling or slack", "[closed-form]") {
    // On a stiff bed the neutral axis lies ahead of the near row, on a soft bed behind it.
    for (const double bed : {1e6, 25000.0, 2000.0, 50.0}) {
        check_section({5.5, 7.0, bed, {{1.0, 60000.0}, {6.0, 60000.0}}}, 0.0, 8400.0);
        check_section({5.5, 7.0, bed, {{1.0, 60000.0}, {6.0, 60000.0}}}, 500.0, 8400.0);
        check_section({5.5, 7.0, bed, {{2.5, 20000.0}, {6.5, 90000.0}}}, -200.0, 8400.0);
    }
}

TEST_CASE("A load in the kern presses P/A +- M/S and pulls no anchor", "[closed-form]") {
    const double b = 5.5;
    const double h = 7.0;
    const double down = 1000.0;
    const double mx = -300.0;
    const double my = 250.0;
    const toehold::test::Plate plate = toehold::test::example_plate();
    const RigidPlateSolution solution = solve_rigid_plate(plate.anchors, plate.bed, {-down, mx, my});
    REQUIRE(solution.status == SolveStatus::solved);
    for (const double tension : solution.tension_lb) CHECK(tension == 0.0);
    CHECK_CLOSE(solution.patches[0].peak_psi, down / (b * h) + 300.0 / (b * h * h / 6.0) + 250.0 / (h * b * b / 6.0),
                tight, 0.0);
    CHECK_CLOSE(solution.patches[0].contact_area_in2, b * h, tight, 0.0);
    CHECK_CLOSE(solution.patches[0].at.x, my / down, tight, 0.0);
    CHECK_CLOSE(solution.patches[0].at.y, -mx / down, tight, 0.0);
    CHECK(solution.patches[0].peak_at == Point{b / 2.0, h / 2.0});
}

// Resultant e from the middle of a footing that cannot pull, e > h/6: a triangle of length 3 (h/2 - e) whose volume is
// P, so p = 2 P / (3 b (h/2 - e)). Standard in texts on foundations and on masonry.
TEST_CASE("A footing loaded outside its kern presses 2P/(3b(h/2 - e))", "[closed-form]") {
    for (const double e : {1.3, 2.0, 3.0, 3.4}) {
        CHECK_CLOSE(peak_of(rectangle(-2.75, 2.75, -3.5, 3.5), {-1000.0, -1000.0 * e, 0.0}),
                    2000.0 / (3.0 * 5.5 * (3.5 - e)), tight, 0.0);
    }
}

// Contact is a triangle in the corner when the resultant lies within a quarter of both sides from it: the pressure is a
// tetrahedron with its centroid a quarter of each leg from the corner, so the legs are 4u and 4v, and p = 3P/(8uv).
TEST_CASE("A footing loaded near a corner presses 3P/(8uv)", "[closed-form]") {
    const double u = 1.1;
    const double v = 0.4;
    CHECK_CLOSE(peak_of(rectangle(-2.75, 2.75, -3.5, 3.5), {-1000.0, -1000.0 * (3.5 - v), 1000.0 * (2.75 - u)}),
                3000.0 / (8.0 * u * v), tight, 0.0);
}

TEST_CASE("A round footing loaded at its kern's rim, a quarter radius out, presses twice P/A", "[closed-form]") {
    const double radius = 3.0;
    const double area = std::numbers::pi * radius * radius;
    CHECK_CLOSE(peak_of(regular_polygon(720, radius), {-1000.0, -1000.0 * radius / 4.0, 0.0}), 2000.0 / area, 5e-5,
                0.0);
}

TEST_CASE("Uplift without a moment is shared by stiffness about the stiffness centre", "[closed-form]") {
    const std::vector<AnchorSpring> anchors{{{-2.0, 0.0}, 10000.0}, {{2.0, 1.0}, 10000.0}, {{0.0, -1.0}, 20000.0}};
    const toehold::test::Plate plate = toehold::test::example_plate();
    // Lift alone is the answer when the load acts at sum(k x) / sum(k) = (0, -0.25).
    const RigidPlateSolution solution = solve_rigid_plate(anchors, plate.bed, {800.0, 800.0 * -0.25, 0.0});
    REQUIRE(solution.status == SolveStatus::solved);
    CHECK_CLOSE(solution.tension_lb[0], 200.0, tight, 0.0);
    CHECK_CLOSE(solution.tension_lb[1], 200.0, tight, 0.0);
    CHECK_CLOSE(solution.tension_lb[2], 400.0, tight, 0.0);
    CHECK(solution.patches[0].force_lb == 0.0);
}

TEST_CASE("Three anchors and no bed carry uplift by statics alone", "[closed-form]") {
    const std::vector<AnchorSpring> anchors{{{0.0, 0.0}, 1.0}, {{4.0, 0.0}, 1e6}, {{0.0, 4.0}, 1e3}};
    const RigidPlateSolution solution = solve_rigid_plate(anchors, {}, {600.0, 600.0 * 1.0, -600.0 * 2.0});
    REQUIRE(solution.status == SolveStatus::solved);
    CHECK_CLOSE(solution.tension_lb[0], 150.0, 1e-9, 0.0);
    CHECK_CLOSE(solution.tension_lb[1], 300.0, 1e-9, 0.0);
    CHECK_CLOSE(solution.tension_lb[2], 150.0, 1e-9, 0.0);
}

TEST_CASE("Two patches under a centred moment act as springs in series with the anchors' row", "[closed-form]") {
    // A stiff block under the toe and nothing between: the toe patch's force is T, at its own pressure's centroid.
    const std::vector<AnchorSpring> anchors{{{0.0, -3.0}, 40000.0}};
    const std::vector<BedPatch> bed{{rectangle(-2.0, 2.0, 2.0, 3.0), 1e9}, {rectangle(-2.0, 2.0, -3.5, -2.5), 1e9}};
    const RigidPlateSolution solution = solve_rigid_plate(anchors, bed, push(5000.0, outward));
    REQUIRE(solution.status == SolveStatus::solved);
    const double arm = solution.patches[0].at.y + 3.0;
    CHECK(arm > 5.9);
    CHECK(arm < 6.0);
    CHECK_CLOSE(solution.tension_lb[0], 5000.0 / arm, 1e-9, 0.0);
    CHECK(solution.patches[1].force_lb == 0.0);
}
