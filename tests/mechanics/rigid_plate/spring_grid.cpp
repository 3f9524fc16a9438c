#include "mechanics/rigid_plate/spring_grid.h"

#include <algorithm>
#include <cmath>

namespace toehold::test {
namespace {

using mechanics::AnchorSpring;
using mechanics::PlateLoad;
using mechanics::Point;

using Motion = std::array<double, 3>;  ///< lift, tilt about x, tilt about y

struct Spring {
    Motion lever;  ///< lift at the spring for a unit of each unknown
    double stiffness = 0.0;
    double way = 1.0;  ///< 1: acts when the plate rises; -1: when it sinks
};

double along(const Motion& a, const Motion& b) { return a[0] * b[0] + a[1] * b[1] + a[2] * b[2]; }

Spring spring_at(Point point, double stiffness, double way) { return {{1.0, point.y, -point.x}, stiffness, way}; }

Point middle(Point a, Point b) { return {(a.x + b.x) / 2.0, (a.y + b.y) / 2.0}; }

void add_triangle(std::vector<Spring>& springs, const Triangle& triangle, double stiffness, int halvings) {
    const auto& [a, b, c] = triangle;
    if (halvings > 0) {
        const Point ab = middle(a, b);
        const Point bc = middle(b, c);
        const Point ca = middle(c, a);
        for (const Triangle& part :
             {Triangle{a, ab, ca}, Triangle{ab, b, bc}, Triangle{ca, bc, c}, Triangle{ab, bc, ca}}) {
            add_triangle(springs, part, stiffness, halvings - 1);
        }
        return;
    }
    const double area = 0.5 * ((b.x - a.x) * (c.y - a.y) - (c.x - a.x) * (b.y - a.y));
    springs.push_back(spring_at({(a.x + b.x + c.x) / 3.0, (a.y + b.y + c.y) / 3.0}, stiffness * area, -1.0));
}

double slope(const std::vector<Spring>& springs, const Motion& load, const Motion& at, const Motion& direction) {
    double sum = -along(load, direction);
    for (const Spring& spring : springs) {
        const double lift = along(spring.lever, at);
        if (spring.way * lift > 0.0) sum += spring.stiffness * lift * along(spring.lever, direction);
    }
    return sum;
}

Motion moved(const Motion& from, double step, const Motion& direction) {
    return {from[0] + step * direction[0], from[1] + step * direction[1], from[2] + step * direction[2]};
}

/// To the lowest point of the line, by doubling and bisection of its slope.
Motion lowest_on_line(const std::vector<Spring>& springs, const Motion& load, const Motion& from, Motion direction) {
    const double there = slope(springs, load, from, direction);
    if (there == 0.0) return from;
    if (there > 0.0) direction = {-direction[0], -direction[1], -direction[2]};
    double high = 1.0;
    while (slope(springs, load, moved(from, high, direction), direction) < 0.0) high *= 2.0;
    while (high > 1e-30 && slope(springs, load, moved(from, high / 2.0, direction), direction) > 0.0) high /= 2.0;
    double low = high / 2.0;
    if (slope(springs, load, moved(from, low, direction), direction) > 0.0) low = 0.0;
    for (int halving = 0; halving < 40; ++halving) {
        const double half = 0.5 * (low + high);
        (slope(springs, load, moved(from, half, direction), direction) < 0.0 ? low : high) = half;
    }
    return moved(from, 0.5 * (low + high), direction);
}

/// Powell's method (Computer Journal 7, 1964): one unknown at a time, then along the whole round's movement, which
/// takes the place of the direction it came from.
Motion lowest(const std::vector<Spring>& springs, const Motion& load) {
    Motion at{0.0, 0.0, 0.0};
    std::array<Motion, 3> directions{Motion{1.0, 0.0, 0.0}, Motion{0.0, 1.0, 0.0}, Motion{0.0, 0.0, 1.0}};
    for (int round = 0; round < 60; ++round) {
        // From time to time afresh, lest the directions fall into one plane.
        if (round % 12 == 0) directions = {Motion{1.0, 0.0, 0.0}, Motion{0.0, 1.0, 0.0}, Motion{0.0, 0.0, 1.0}};
        const Motion before = at;
        for (const Motion& direction : directions) at = lowest_on_line(springs, load, at, direction);
        const Motion whole = moved(at, -1.0, before);
        const double size = std::sqrt(along(whole, whole));
        if (size <= 1e-9 * std::sqrt(along(at, at))) {
            if (round % 12 == 0) break;
            continue;
        }
        directions = {directions[1], directions[2], moved({0.0, 0.0, 0.0}, 1.0 / size, whole)};
        at = lowest_on_line(springs, load, at, directions[2]);
    }
    return at;
}

}  // namespace

std::vector<Triangle> fan(const mechanics::Polygon& outline) {
    std::vector<Triangle> triangles;
    for (std::size_t index = 2; index < outline.size(); ++index) {
        triangles.push_back({outline[0], outline[index - 1], outline[index]});
    }
    return triangles;
}

std::vector<double> spring_grid_tensions(const std::vector<AnchorSpring>& anchors,
                                         const std::vector<TriangulatedPatch>& bed, const PlateLoad& load,
                                         int halvings) {
    std::vector<Spring> springs;
    springs.reserve(anchors.size());
    for (const AnchorSpring& anchor : anchors) springs.push_back(spring_at(anchor.at, anchor.stiffness_lb_per_in, 1.0));
    for (const TriangulatedPatch& patch : bed) {
        for (const Triangle& triangle : patch.triangles) {
            add_triangle(springs, triangle, patch.stiffness_psi_per_in, halvings);
        }
    }
    const Motion motion = lowest(springs, {load.fz_lb, load.mx_lb_in, load.my_lb_in});
    std::vector<double> tensions;
    for (std::size_t index = 0; index < anchors.size(); ++index) {
        tensions.push_back(std::max(0.0, springs[index].stiffness * along(springs[index].lever, motion)));
    }
    return tensions;
}

}  // namespace toehold::test
