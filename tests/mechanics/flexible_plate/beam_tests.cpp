// A long narrow strip with nu = 0 is a beam: M. Hetenyi, Beams on Elastic Foundation (1946), infinite beam under a
// force and under a couple; and the same weightless beam on a bed that cannot pull, which lifts off at pi / (2 lambda)
// from the load: up to there it is Hetenyi's finite beam of length pi / lambda, whose ends neither sink nor rise.
// lambda = (k / 4 E I)^(1/4), k the bed's stiffness per length of beam.
//
// The post's foot shrinks to a row of nodes across the strip, so that no part of the beam is rigid.
#include "mechanics/flexible_plate/flexible_plate.h"
#include "mechanics/flexible_plate/full_system.h"
#include "mechanics/flexible_plate/grid.h"
#include "support/compare.h"

#include <algorithm>
#include <cmath>
#include <numbers>

using namespace toehold::mechanics;
using toehold::test::PlateGrid;

namespace {

constexpr double width = 0.5, modulus = 29e6, thickness = 0.25, bed_stiffness = 40000.0, force = 500.0, couple = 800.0;
constexpr double per_length = bed_stiffness * width;

double lambda() { return std::pow(per_length / (4.0 * modulus * width * std::pow(thickness, 3) / 12.0), 0.25); }

/// From -reach to +reach (in 1 / lambda), `per_unit` columns of elements in each 1 / lambda and a quarter of that
/// across; ring: the row of nodes across the middle.
PlateMesh strip(double reach, int per_unit) {
    const int half = static_cast<int>(std::lround(reach * per_unit));
    const int rows = per_unit / 4;
    const double length = half / (per_unit * lambda());
    const PlateGrid grid = toehold::test::rectangle_grid(-length, length, -0.5 * width, 0.5 * width, 2 * half, rows);
    PlateMesh mesh{grid.nodes, grid.triangles, {}};
    for (int row = 0; row <= rows; ++row) mesh.ring.push_back(row * (2 * half + 1) + half);
    return mesh;
}

const std::vector<BedRectangle> whole_bed{{-1e3, 1e3, -1.0, 1.0, bed_stiffness}};

/// The bed pulling as well as pressing: every spring works.
class TwoWayBeam {
  public:
    TwoWayBeam(int per_unit, const PlateLoad& load)
        : assembly_(strip(8.0, per_unit), {modulus, 0.0, thickness}), springs_(assembly_, {}, whole_bed) {
        const ScaledSprings scaled = springs_.scaled({});
        const FullSystem system(assembly_, springs_, scaled, {load.fz_lb, load.mx_lb_in, load.my_lb_in});
        state_ = system.equilibrium(ActiveSet(springs_.size(), 1), Eigen::Vector3d::Zero()).value();
    }
    /// Downward, at lambda x.
    [[nodiscard]] double settlement(double at) const {
        return -lift_of(assembly_.row(Point{at / lambda(), 0.1 * width}), state_.rigid, state_.elastic);
    }
    /// dy/dx under the load, y downward.
    [[nodiscard]] double slope() const { return state_.rigid(2); }

  private:
    PlateAssembly assembly_;
    OneWaySprings springs_;
    PlateState state_;
};

/// The weightless beam on a bed that cannot pull: settlement under the load, and where it lifts off.
struct Contact {
    double settlement = 0.0;
    double by_area = 0.0;      ///< half length of the springs that work
    double by_crossing = 0.0;  ///< where the strip's edge passes zero lift
};

Contact contact(int per_unit, double load) {
    const FlexiblePlate plate({strip(5.0, per_unit), modulus, 0.0, thickness, {}, whole_bed});
    PlateField field;
    const FlexiblePlateSolution solution = plate.solve_on_full_mesh({-load, 0.0, 0.0}, {}, &field);
    REQUIRE(solution.status == SolveStatus::solved);
    Contact found{-solution.lift_in, 0.5 * solution.patches[0].contact_area_in2 / width, 0.0};
    const int columns = 10 * per_unit;
    for (std::size_t node = static_cast<std::size_t>(columns / 2); found.by_crossing == 0.0; ++node) {
        REQUIRE(node + 1 <= static_cast<std::size_t>(columns));
        const double here = field.lift_in[node], next = field.lift_in[node + 1];
        const double x = field.nodes[node].x, step = field.nodes[node + 1].x - x;
        if (here <= 0.0 && next > 0.0) found.by_crossing = x + step * here / (here - next);
    }
    return found;
}

double a_of(double x) { return std::exp(-x) * (std::cos(x) + std::sin(x)); }
double b_of(double x) { return std::exp(-x) * std::sin(x); }

}  // namespace

TEST_CASE("A strip on a bed that also pulls meets Hetenyi's infinite beam with order two", "[closed-form]") {
    // y = P lambda / 2k A(lambda x); y = M lambda^2 / k B(lambda x) with slope M lambda^3 / k under the couple. Errors
    // are parts of the largest settlement: 6e-4, 1.5e-4 and 4e-5 under the force.
    const double of_force = force * lambda() / (2.0 * per_length);
    const double of_couple = couple * lambda() * lambda() / per_length;
    double last_force = 0.0, last_couple = 0.0;
    for (const int per_unit : {8, 16, 32}) {
        const TwoWayBeam pressed(per_unit, {-force, 0.0, 0.0}), turned(per_unit, {0.0, 0.0, couple});
        double by_force = 0.0, by_couple = 0.0;
        for (const double x : {0.0, 0.25, 0.5, 1.0, 1.5, 2.0, 3.0, 4.0}) {
            by_force = std::max(by_force, std::abs(pressed.settlement(x) / of_force - a_of(x)));
            by_couple = std::max(by_couple, std::abs(turned.settlement(x) / of_couple - b_of(x)));
            CHECK_CLOSE(turned.settlement(-x), -turned.settlement(x), 0.0, 1e-3 * of_couple);
        }
        CAPTURE(per_unit, by_force, by_couple);
        CHECK(by_force < 0.05 / (per_unit * per_unit));
        CHECK(by_couple < 0.05 / (per_unit * per_unit));
        CHECK_CLOSE(turned.slope(), of_couple * lambda(), 0.05 / (per_unit * per_unit), 0.0);
        if (last_force > 0.0) {
            CHECK(std::log2(last_force / by_force) > 1.8);
            CHECK(std::log2(last_couple / by_couple) > 1.8);
        }
        last_force = by_force;
        last_couple = by_couple;
    }
}

TEST_CASE("A weightless strip lifts off its bed at pi / (2 lambda) from the load, whatever the load", "[closed-form]") {
    const double half = std::numbers::pi / (2.0 * lambda());
    // Hetenyi's finite beam of length pi / lambda, loaded in the middle.
    const double settlement =
        force * lambda() / (2.0 * per_length) * (std::cosh(std::numbers::pi) + 1.0) / std::sinh(std::numbers::pi);
    for (const int per_unit : {8, 16, 32}) {
        const Contact found = contact(per_unit, force);
        CAPTURE(per_unit, found.by_area / half - 1.0, found.by_crossing / half - 1.0);
        CHECK_CLOSE(found.settlement, settlement, 0.05 / (per_unit * per_unit), 0.0);
        // A spring works or does not, so length by working springs is known to half an element (4, 2, 1 % of it).
        CHECK_CLOSE(found.by_area, half, 0.0, 0.5 / (per_unit * lambda()));
        // The zero of the lift is not held to whole springs.
        CHECK_CLOSE(found.by_crossing, half, 1.0 / (per_unit * per_unit), 0.0);
        const Contact tenfold = contact(per_unit, 10.0 * force);
        CHECK_CLOSE(tenfold.by_area, found.by_area, 1e-12, 0.0);
        CHECK_CLOSE(tenfold.by_crossing, found.by_crossing, 1e-9, 0.0);
    }
}
