// The mesh of every outline a detail may have: it covers the plate once, keeps the post's foot and the outline as sides
// of its triangles, has no needles where the shape does not force them, and is the same every time.
#include "mechanics/flexible_plate/bases.h"
#include "mechanics/flexible_plate/dkt_element.h"
#include "mechanics/flexible_plate/element_size.h"
#include "mechanics/plane/area_moments.h"
#include "mechanics/shapes.h"
#include "support/compare.h"

#include <rapidcheck.h>

#include <algorithm>
#include <chrono>
#include <map>
#include <set>
#include <sstream>
#include <stdexcept>

using namespace toehold::mechanics;
using namespace toehold::test;

namespace {

struct MeshFacts {
    double area = 0.0;
    double least_area = 1e300;
    double least_angle_deg = 180.0;
    int used_nodes = 0;
    int euler = 0;                      ///< nodes - sides + triangles: 1 for a disc
    bool sides_shared_by_two = true;    ///< at most
    double boundary_length = 0.0;       ///< of sides with one triangle
    double boundary_off_outline = 0.0;  ///< the farthest of their middles from the outline
    double ring_node_off_ring = 0.0;
    double across_ring = 0.0;  ///< how far the triangle that crosses the ring most reaches to both sides
};

double angle_deg(Point at, Point a, Point b) {
    const double ax = a.x - at.x, ay = a.y - at.y, bx = b.x - at.x, by = b.y - at.y;
    return std::abs(std::atan2(ax * by - ay * bx, ax * bx + ay * by)) * 180.0 / std::numbers::pi;
}

/// Positive outside the ring.
double away(Point at, const Polygon& ring) {
    return (inside_polygon(at, ring) ? -1.0 : 1.0) * distance_to_polygon(at, ring);
}

void add_triangle(MeshFacts& facts, const std::array<Point, 3>& p, const Polygon& ring) {
    const double signed_area = toehold::mechanics::area(p);
    facts.area += signed_area;
    facts.least_area = std::min(facts.least_area, signed_area);
    double inmost = 0.0, outmost = 0.0;
    for (std::size_t i = 0; i < 3; ++i) {
        facts.least_angle_deg = std::min(facts.least_angle_deg, angle_deg(p[i], p[(i + 1) % 3], p[(i + 2) % 3]));
        inmost = std::max(inmost, -away(p[i], ring));
        outmost = std::max(outmost, away(p[i], ring));
    }
    facts.across_ring = std::max(facts.across_ring, std::min(inmost, outmost));
}

MeshFacts facts_of(const PlateMesh& mesh, const Polygon& outline, const Polygon& ring) {
    MeshFacts facts;
    const auto at = [&](int node) { return mesh.nodes[static_cast<std::size_t>(node)]; };
    std::map<std::pair<int, int>, int> sides;
    std::set<int> used;
    for (const Triangle& t : mesh.triangles) {
        add_triangle(facts, {at(t[0]), at(t[1]), at(t[2])}, ring);
        for (std::size_t i = 0; i < 3; ++i) {
            ++sides[std::minmax(t[i], t[(i + 1) % 3])];
            used.insert(t[i]);
        }
    }
    facts.used_nodes = static_cast<int>(used.size());
    facts.euler = facts.used_nodes - static_cast<int>(sides.size()) + static_cast<int>(mesh.triangles.size());
    for (const auto& [side, triangles] : sides) {
        facts.sides_shared_by_two = facts.sides_shared_by_two && triangles <= 2;
        if (triangles != 1) continue;
        const Point a = at(side.first), b = at(side.second);
        facts.boundary_length += std::hypot(b.x - a.x, b.y - a.y);
        const double off = distance_to_polygon({0.5 * (a.x + b.x), 0.5 * (a.y + b.y)}, outline);
        facts.boundary_off_outline = std::max(facts.boundary_off_outline, off);
    }
    for (const int node : mesh.ring)
        facts.ring_node_off_ring = std::max(facts.ring_node_off_ring, distance_to_polygon(at(node), ring));
    return facts;
}

double perimeter(const Polygon& polygon) {
    double length = 0.0;
    for (std::size_t i = 0; i < polygon.size(); ++i) {
        const Point a = polygon[i], b = polygon[(i + 1) % polygon.size()];
        length += std::hypot(b.x - a.x, b.y - a.y);
    }
    return length;
}

struct Shape {
    std::string name;
    Polygon outline, ring;
    std::vector<Footprint> footprints;
};

std::vector<Shape> shapes() {
    const Polygon post = rectangle(-1.25, 1.25, -1.25, 1.25);
    const Polygon round_post = regular_polygon(72, 1.0);
    const std::vector<Footprint> corners = {
        {{-3.4, -3.4}, 0.5}, {{3.4, -3.4}, 0.5}, {{3.4, 3.4}, 0.5}, {{-3.4, 3.4}, 0.5}};
    std::vector<Shape> all;
    for (const FlexibleBase& base : common_bases()) {
        std::vector<Footprint> footprints;
        for (const FlexibleAnchor& anchor : base.anchors) footprints.push_back(anchor.footprint);
        all.push_back({base.name, base.outline, base.ring, footprints});
    }
    all.push_back({"rounded, round post", rounded_rectangle(8.0, 8.0, 1.5), round_post, corners});
    all.push_back({"small radius", rounded_rectangle(8.0, 8.0, 0.05), post, corners});
    all.push_back({"plain square", rectangle(-4.0, 4.0, -4.0, 4.0), post, corners});
    all.push_back({"circle", regular_polygon(720, 5.0), post, corners});
    all.push_back({"thin T",
                   t_shape(9.0, 6.0, 1.5),
                   rectangle(-0.6, 0.6, -0.6, 0.6),
                   {{{-4.0, 0.0}, 0.3}, {{4.0, 0.0}, 0.3}, {{0.0, -4.5}, 0.3}}});
    all.push_back(
        {"post 0.1 in from an edge", rectangle(-4.0, 4.0, -1.35, 6.0), post, {{{-3.0, 5.0}, 0.5}, {{3.0, 5.0}, 0.5}}});
    all.push_back(
        {"tiny footprints", rectangle(-4.0, 4.0, -4.0, 4.0), post, {{{-3.0, -3.0}, 0.02}, {{3.0, 3.0}, 0.02}}});
    all.push_back({"huge footprints", rectangle(-4.0, 4.0, -4.0, 4.0), post, {{{-2.0, -2.0}, 2.0}, {{2.0, 2.0}, 2.0}}});
    all.push_back(
        {"anchors in the corners", rectangle(-4.0, 4.0, -4.0, 4.0), post, {{{-3.9, -3.9}, 0.1}, {{3.95, 3.95}, 0.5}}});
    all.push_back({"anchor at the post",
                   rectangle(-4.0, 4.0, -4.0, 4.0),
                   post,
                   {{{1.3, 0.0}, 0.4}, {{0.0, 0.0}, 0.4}, {{1.25, 1.25}, 0.4}}});
    all.push_back({"long", rectangle(-20.0, 20.0, -2.0, 2.0), post, {{{-19.0, 0.0}, 0.5}, {{19.0, 0.0}, 0.5}}});
    all.push_back({"large",
                   rectangle(-24.0, 24.0, -24.0, 24.0),
                   rectangle(-0.5, 0.5, -0.5, 0.5),
                   {{{-20.0, -20.0}, 0.2}, {{20.0, 20.0}, 0.2}}});
    return all;
}

bool is_sound(const MeshFacts& facts, const PlateMesh& mesh, const Polygon& outline, const Polygon& ring) {
    // Chords stand off a curve so that they enclose its area: where one turns by 0.6 rad, by up to 3 % of the radius,
    // which is at most an inch where a chord turns as much.
    constexpr double off_curve = 0.035;
    const double whole = moments(outline).area, size = std::sqrt(moments(ring).area);
    return close(facts.area, whole, 0.005, 0.0) && facts.least_area > 0.0 && facts.euler == 1 &&
           facts.used_nodes == static_cast<int>(mesh.nodes.size()) && facts.sides_shared_by_two &&
           close(facts.boundary_length, perimeter(outline), 0.005, 0.0) && facts.boundary_off_outline < off_curve &&
           facts.ring_node_off_ring < off_curve * size && facts.across_ring < off_curve * size && mesh.ring.size() >= 4;
}

std::string said(const MeshFacts& facts) {
    std::ostringstream text;
    text << "area " << facts.area << ", least area " << facts.least_area << ", least angle " << facts.least_angle_deg
         << ", nodes in use " << facts.used_nodes << ", Euler " << facts.euler << ", boundary " << facts.boundary_length
         << ", off outline " << facts.boundary_off_outline << ", off ring " << facts.ring_node_off_ring
         << ", across ring " << facts.across_ring;
    return text.str();
}

}  // namespace

TEST_CASE("The mesh of every outline covers it once and keeps its sides and the post's", "[property]") {
    // Where each unused node, gap, overlap or lost side would show: Euler's number, the area, the boundary's length and
    // place, and no triangle on both sides of the post's foot.
    for (const Shape& shape : shapes()) {
        for (const double fineness : {1.0, 1.5}) {
            const PlateMesh mesh = mesh_plate(shape.outline, shape.ring, shape.footprints, fineness);
            const MeshFacts facts = facts_of(mesh, shape.outline, shape.ring);
            CAPTURE(shape.name, fineness, mesh.nodes.size(), said(facts));
            CHECK(is_sound(facts, mesh, shape.outline, shape.ring));
            // Only a corner rounded to a hundredth of the plate forces needles: 3 degrees.
            CHECK(facts.least_angle_deg > (shape.name == "small radius" ? 3.0 : 8.0));
        }
    }
}

TEST_CASE("Straight outlines keep their area, and corners stay corners", "[closed-form]") {
    for (const Shape& shape : shapes()) {
        if (shape.outline.size() > 12) continue;
        const PlateMesh mesh = mesh_plate(shape.outline, shape.ring, shape.footprints, 1.0);
        CAPTURE(shape.name);
        CHECK_CLOSE(facts_of(mesh, shape.outline, shape.ring).area, moments(shape.outline).area, 1e-12, 0.0);
        for (const Point corner : shape.outline) CHECK(std::count(mesh.nodes.begin(), mesh.nodes.end(), corner) == 1);
    }
}

TEST_CASE("Random bases have sound meshes", "[property]") {
    double least_angle_deg = 180.0;
    std::size_t most_nodes = 0;
    REQUIRE(rc::check("sound mesh", [&] {
        const FlexibleBase base = random_base();
        const PlateMesh mesh = mesh_of(base, 1.0);
        const MeshFacts facts = facts_of(mesh, base.outline, base.ring);
        RC_LOG(said(facts));
        RC_ASSERT(is_sound(facts, mesh, base.outline, base.ring));
        RC_ASSERT(facts.least_angle_deg > 1.0);
        least_angle_deg = std::min(least_angle_deg, facts.least_angle_deg);
        most_nodes = std::max(most_nodes, mesh.nodes.size());
        RC_ASSERT(mesh.nodes.size() < 700U);
    }));
    INFO("least angle " << least_angle_deg << " degrees, most nodes " << most_nodes);
    CHECK(least_angle_deg > 5.0);
}

TEST_CASE("The same input gives the same mesh", "[property]") {
    for (const FlexibleBase& base : common_bases()) {
        const PlateMesh first = mesh_of(base, 1.0), second = mesh_of(base, 1.0);
        CHECK(first.nodes == second.nodes);
        CHECK(first.triangles == second.triangles);
        CHECK(first.ring == second.ring);
    }
}

TEST_CASE("Twice the fineness gives about four times the nodes, in bounded time", "[property]") {
    for (const Shape& shape : shapes()) {
        const auto start = std::chrono::steady_clock::now();
        const std::size_t coarse = mesh_plate(shape.outline, shape.ring, shape.footprints, 1.0).nodes.size();
        const std::size_t fine = mesh_plate(shape.outline, shape.ring, shape.footprints, 2.0).nodes.size();
        const double seconds = std::chrono::duration<double>(std::chrono::steady_clock::now() - start).count();
        CAPTURE(shape.name, coarse, fine, seconds);
        CHECK(fine > 3U * coarse);
        CHECK(fine < 5U * coarse);
        CHECK(coarse < 500U);
        CHECK(seconds < 5.0);
    }
}

TEST_CASE("An outline or a ring of fewer than three corners is refused", "[bad-input]") {
    const Polygon square = rectangle(-4.0, 4.0, -4.0, 4.0), line = {{0.0, 0.0}, {1.0, 0.0}};
    CHECK_THROWS_AS(mesh_plate(line, square, {}, 1.0), std::invalid_argument);
    CHECK_THROWS_AS(mesh_plate(square, line, {}, 1.0), std::invalid_argument);
    CHECK(delaunay({}).empty());
    CHECK(delaunay(line).empty());
}
