// Square plates that every handbook has, by order of convergence and not by one number alone. Deflection at the middle
// = coefficient q a^4 / D or P a^2 / D. Printed: S. Timoshenko, S. Woinowsky-Krieger, Theory of Plates and Shells, 2nd
// ed. 1959: simply supported .00406 (Table 8) and .01160 (Table 23), clamped .00126 (Table 35) and .00560 (Table 37)
// (table numbers from memory, to be confirmed). Each print is confirmed here by a series before it is used.
#include "mechanics/flexible_plate/grid.h"
#include "support/compare.h"

#include <Eigen/QR>

#include <array>
#include <cmath>
#include <complex>
#include <numbers>

using namespace toehold::mechanics;
using toehold::test::AssembledPlate;
using toehold::test::PlateGrid;
using toehold::test::rectangle_grid;

namespace {

constexpr double side = 12.0, pressure = 7.0, center_load = 300.0;
constexpr PlateMaterial steel{29e6, 0.3, 0.25};

enum class Edge { simply_supported, clamped };
enum class Load { uniform, central };

/// Deflection coefficient at the middle from a quarter of the plate with `count` x `count` squares.
double coefficient(Edge edge, Load load, int count) {
    const PlateGrid grid = rectangle_grid(0.0, 0.5 * side, 0.0, 0.5 * side, count, count);
    AssembledPlate plate(grid, steel);
    for (int j = 0; j <= count; ++j) {
        for (int i = 0; i <= count; ++i) {
            const int node = j * (count + 1) + i;
            const bool clamped = edge == Edge::clamped && (i == count || j == count);
            if (i == count || j == count) plate.prescribe(3 * node, 0.0);
            if (i == 0 || j == count || clamped) plate.prescribe(3 * node + 1, 0.0);
            if (j == 0 || i == count || clamped) plate.prescribe(3 * node + 2, 0.0);
        }
    }
    if (load == Load::uniform) {
        plate.load_evenly(pressure);
    } else {
        plate.load(0, 0.25 * center_load);
    }
    const double scale = load == Load::uniform ? pressure * std::pow(side, 4) : center_load * side * side;
    return plate.solve()(0) * flexural_rigidity(steel) / scale;
}

/// Navier's double sine series (Timoshenko and Woinowsky-Krieger, articles 28 to 34).
double navier(Load load) {
    const double pi = std::numbers::pi;
    double sum = 0.0;
    for (int m = 1; m < 1200; m += 2) {
        for (int n = 1; n < 1200; n += 2) {
            const double bending = std::pow(static_cast<double>(m * m + n * n), 2);
            const double sign = ((m + n) / 2) % 2 == 0 ? -1.0 : 1.0;
            sum += load == Load::uniform ? 16.0 * sign / (std::pow(pi, 6) * m * n * bending)
                                         : 4.0 / (std::pow(pi, 4) * bending);
        }
    }
    return sum;
}

/// Deflection coefficient at the middle by a biharmonic series that shares nothing with elements or with Navier: a
/// particular solution (q r^4 / 64 D, or P r^2 ln r / 8 pi D) and every biharmonic function with the square's symmetry
/// (Re z^4k and r^2 Re z^4k), fitted to the edge x = 1 of the square -1 .. 1 by least squares.
double biharmonic(Edge edge, Load load) {
    constexpr int terms = 12, points = 80;
    Eigen::MatrixXd edge_rows(2 * points, 2 * terms);
    Eigen::VectorXd wanted(2 * points);
    for (Eigen::Index p = 0; p < points; ++p) {
        const double y =
            std::sin(0.5 * std::numbers::pi * (static_cast<double>(p) + 0.5) / points);  // dense at the corner
        const double r2 = 1.0 + y * y;
        const std::complex<double> z(1.0, y);
        const double shrink = 1.0 / std::sqrt(2.0);      // keeps powers below one
        std::complex<double> power = 1.0, before = 0.0;  // (z shrink)^n and n shrink (z shrink)^(n - 1)
        for (Eigen::Index k = 0; k < terms; ++k) {
            const double n = 4.0 * static_cast<double>(k), value = power.real(), slope = before.real();
            // The second condition: slope across a clamped edge; del^2 w along a simply supported one.
            edge_rows(p, 2 * k) = value;
            edge_rows(p, 2 * k + 1) = r2 * value;
            edge_rows(points + p, 2 * k) = edge == Edge::clamped ? slope : 0.0;
            edge_rows(points + p, 2 * k + 1) =
                edge == Edge::clamped ? 2.0 * value + r2 * slope : 4.0 * (n + 1.0) * value;
            const std::complex<double> cube = std::pow(z * shrink, 3);
            before = (n + 4.0) * shrink * power * cube;
            power *= cube * z * shrink;
        }
        const double log = 0.5 * std::log(r2);
        const double log_scale = 1.0 / (8.0 * std::numbers::pi);
        if (load == Load::uniform) {
            wanted(p) = -r2 * r2 / 64.0;
            wanted(points + p) = edge == Edge::clamped ? -r2 / 16.0 : -r2 / 4.0;
        } else {
            wanted(p) = -log_scale * r2 * log;
            wanted(points + p) = log_scale * (edge == Edge::clamped ? -(2.0 * log + 1.0) : -(4.0 * log + 4.0));
        }
    }
    const double middle = edge_rows.colPivHouseholderQr().solve(wanted)(0);
    // Half a side is the unit of length here: q (a/2)^4 = q a^4 / 16, P (a/2)^2 = P a^2 / 4.
    return middle / (load == Load::uniform ? 16.0 : 4.0);
}

/// Errors with 2, 4, 8 and 16 squares across half a side, and the order from each to the next.
struct Convergence {
    std::array<double, 4> error{};
    std::array<double, 3> order{};
};

Convergence convergence(Edge edge, Load load) {
    const double expected = biharmonic(edge, load);
    Convergence result;
    for (std::size_t i = 0; i < 4; ++i) result.error[i] = coefficient(edge, load, 2 << i) / expected - 1.0;
    for (std::size_t i = 0; i < 3; ++i) result.order[i] = std::log2(std::abs(result.error[i] / result.error[i + 1]));
    return result;
}

}  // namespace

TEST_CASE("Series meet the printed deflections of simply supported square plates", "[published]") {
    CHECK(toehold::test::prints_as(navier(Load::uniform), 0.00406, 1e-5));
    CHECK(toehold::test::prints_as(navier(Load::central), 0.01160, 1e-5));
    CHECK_CLOSE(biharmonic(Edge::simply_supported, Load::uniform), navier(Load::uniform), 1e-7, 0.0);
    CHECK_CLOSE(biharmonic(Edge::simply_supported, Load::central), navier(Load::central), 3e-6, 0.0);
}

TEST_CASE("Series meet the remembered deflections of clamped square plates", "[memory]") {
    // The clamped prints are a little below the converged series: by 0.4 % and by 0.2 %.
    CHECK_CLOSE(biharmonic(Edge::clamped, Load::uniform), 0.00126, 0.005, 0.0);
    CHECK_CLOSE(biharmonic(Edge::clamped, Load::central), 0.00560, 0.003, 0.0);
}

TEST_CASE("Square plates under uniform load converge with order two", "[closed-form]") {
    for (const Edge edge : {Edge::simply_supported, Edge::clamped}) {
        const Convergence found = convergence(edge, Load::uniform);
        CAPTURE(edge == Edge::clamped, found.error, found.order);
        for (const double order : found.order) CHECK_CLOSE(order, 2.0, 0.0, 0.16);
        CHECK_CLOSE(found.order.back(), 2.0, 0.0, 0.04);
        // 0.07 % and 0.28 % at the finest; an error like h^2 leaves much less once extrapolated.
        CHECK(std::abs(found.error.back()) < (edge == Edge::clamped ? 0.003 : 0.0007));
        CHECK(std::abs(found.error[3] + (found.error[3] - found.error[2]) / 3.0) < 1e-4);
    }
}

TEST_CASE("Square plates under a point load converge with an order that rises toward two", "[closed-form]") {
    // Moments grow like ln r under the load, so the error falls like h^2 ln h.
    for (const Edge edge : {Edge::simply_supported, Edge::clamped}) {
        const Convergence found = convergence(edge, Load::central);
        CAPTURE(edge == Edge::clamped, found.error, found.order);
        for (const double order : found.order) CHECK(order > 1.3);
        CHECK(found.order.back() > 1.5);
        CHECK(found.order.back() < 2.1);
        CHECK(std::abs(found.error.back()) < (edge == Edge::clamped ? 0.0016 : 0.0004));
    }
}
