// The plate as the post holds it: inner edge tied to a rigid boss, outer edge free. An annulus under a line load along
// its outer edge has closed forms: deflection R(r) cos(n theta), with R from r^2 ln r, r^2, ln r, 1 for n = 0 and from
// r^3, r ln r, r, 1/r for n = 1 (Timoshenko and Woinowsky-Krieger, 2nd ed., chapter 9; Clebsch's solution). n = 0 is a
// boss pulled straight up, n = 1 a boss turned by a moment, which is what a guard post does.
#include "mechanics/flexible_plate/plate_assembly.h"

#include "mechanics/shapes.h"
#include "support/compare.h"

#include <Eigen/LU>
#include <Eigen/SparseCholesky>

#include <algorithm>

using namespace toehold::mechanics;
using toehold::test::regular_polygon;

namespace {

constexpr double inner = 1.0, outer = 4.0;
constexpr PlateMaterial steel{29e6, 0.3, 0.25};

/// R = a r^power (ln r if `log`), with its first three derivatives by r at r.
Eigen::Vector4d term(int power, bool log, double r) {
    Eigen::Vector4d result;
    double factor = 1.0, added = 0.0;  // derivative: r^(power - k) (factor ln r + added)
    for (int k = 0; k < 4; ++k) {
        result(k) = std::pow(r, power - k) * (log ? factor * std::log(r) + added : factor);
        added = added * (power - k) + factor;
        factor *= power - k;
    }
    return result;
}

/// Deflection at the outer edge, relative to the boss, under the upward line load cos(n theta) lb/in along it.
double edge_deflection(int n) {
    const double nu = steel.poisson, d = flexural_rigidity(steel);
    const std::array<std::pair<int, bool>, 4> terms =
        n == 0 ? std::array<std::pair<int, bool>, 4>{{{2, true}, {2, false}, {0, true}, {0, false}}}
               : std::array<std::pair<int, bool>, 4>{{{3, false}, {1, true}, {1, false}, {-1, false}}};
    Eigen::Matrix4d conditions;
    Eigen::RowVector4d edge;
    for (int column = 0; column < 4; ++column) {
        const auto [power, log] = terms[static_cast<std::size_t>(column)];
        const Eigen::Vector4d at_boss = term(power, log, inner), at_edge = term(power, log, outer);
        const double r = outer, n2 = n * n;
        conditions(0, column) = at_boss(0);
        conditions(1, column) = at_boss(1);
        // At the free edge M_r = 0, and Kirchhoff's force Q_r + 1/r dM_rt/dt (moments as in dkt_element.h) against the
        // load.
        conditions(2, column) = at_edge(2) + nu * (at_edge(1) / r - n2 * at_edge(0) / (r * r));
        const double laplacian_slope = at_edge(3) + at_edge(2) / r - at_edge(1) / (r * r) -
                                       n2 * (at_edge(1) / (r * r) - 2.0 * at_edge(0) / (r * r * r));
        const double twist_slope = -(1.0 - nu) * n2 / r * (at_edge(1) / r - at_edge(0) / (r * r));
        conditions(3, column) = -d * (laplacian_slope + twist_slope);
        edge(column) = at_edge(0);
    }
    return edge * conditions.partialPivLu().solve(Eigen::Vector4d(0.0, 0.0, 0.0, 1.0));
}

/// The same amplitude through the engine's mesh and assembly: the load on the edge's nodes, its amplitude by least
/// squares.
double assembled(int n, double fineness) {
    const PlateMesh mesh = mesh_plate(regular_polygon(720, outer), regular_polygon(720, inner), {}, fineness);
    const PlateAssembly assembly(mesh, steel);
    std::vector<std::pair<double, int>> edge;  // angle, node
    for (int node = 0; node < static_cast<int>(mesh.nodes.size()); ++node) {
        const Point p = mesh.nodes[static_cast<std::size_t>(node)];
        if (std::hypot(p.x, p.y) > outer - 1e-3) edge.emplace_back(std::atan2(p.y, p.x), node);
    }
    std::sort(edge.begin(), edge.end());
    Eigen::VectorXd force = Eigen::VectorXd::Zero(assembly.freedoms());
    for (std::size_t i = 0; i < edge.size(); ++i) {
        const double before = edge[(i + edge.size() - 1) % edge.size()].first,
                     after = edge[(i + 1) % edge.size()].first;
        const double arc = std::remainder(after - before, 2.0 * std::numbers::pi) * 0.5 * outer;
        force(assembly.freedom(edge[i].second)) += arc * std::cos(n * edge[i].first);
    }
    const Eigen::VectorXd found = Eigen::SimplicialLDLT<Eigen::SparseMatrix<double>>(assembly.stiffness()).solve(force);
    double product = 0.0, norm = 0.0;
    for (const auto& [angle, node] : edge) {
        product += std::cos(n * angle) * found(assembly.freedom(node));
        norm += std::cos(n * angle) * std::cos(n * angle);
    }
    return product / norm;
}

}  // namespace

TEST_CASE("A plate tied to a rigid boss gives way as the closed form says", "[closed-form]") {
    // n = 0: 0.7 % high at fineness 1, 0.12 % at 2; n = 1: 0.9 % and 0.18 %. The mesh's polygons keep the circles'
    // area.
    for (const int n : {0, 1}) {
        const double expected = edge_deflection(n);
        const double coarse = assembled(n, 1.0) / expected - 1.0, fine = assembled(n, 2.0) / expected - 1.0;
        CAPTURE(n, coarse, fine, std::log2(coarse / fine));
        CHECK(std::abs(coarse) < 0.01);
        CHECK(std::abs(fine) < 0.002);
        CHECK(std::log2(std::abs(coarse / fine)) > 1.8);
    }
}

TEST_CASE("Rigid motion of the boss carries the whole plate with it", "[closed-form]") {
    const PlateMesh mesh = mesh_plate(regular_polygon(720, outer), regular_polygon(720, inner), {}, 1.0);
    const PlateAssembly assembly(mesh, steel);
    const Eigen::Vector3d motion(0.02, 0.003, -0.004);
    const Eigen::VectorXd unbent = Eigen::VectorXd::Zero(assembly.freedoms());
    for (const Point at : {Point{0.0, 0.0}, Point{2.5, -1.0}, Point{-1.0, 3.5}}) {
        CHECK_CLOSE(lift_of(assembly.row(at), motion, unbent), 0.02 + 0.003 * at.y + 0.004 * at.x, 1e-13, 0.0);
        CHECK_CLOSE(lift_of(assembly.mean_row({at, 0.3}), motion, unbent), 0.02 + 0.003 * at.y + 0.004 * at.x, 1e-13,
                    0.0);
    }
}
