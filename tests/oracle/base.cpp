#include "oracle/base.h"

#include <cmath>
#include <numbers>
#include <utility>

namespace toehold::test {
namespace {

using mechanics::Point;
using mechanics::Polygon;

/// Points on an arc, its last one left out.
void add_arc(Polygon& polygon, Point center, double radius, double from, double turn, int sides) {
    for (int i = 0; i < sides; ++i) {
        const double angle = from + turn * i / sides;
        polygon.push_back({center.x + radius * std::cos(angle), center.y + radius * std::sin(angle)});
    }
}

}  // namespace

Polygon rectangle(double width_in, double depth_in) {
    const double x = 0.5 * width_in, y = 0.5 * depth_in;
    return {{-x, -y}, {x, -y}, {x, y}, {-x, y}};
}

Polygon rounded_rectangle(double width_in, double depth_in, double corner_in) {
    constexpr double quarter = 0.5 * std::numbers::pi;
    constexpr int sides = 24;
    const double x = 0.5 * width_in - corner_in, y = 0.5 * depth_in - corner_in;
    Polygon polygon;
    double from = -2.0 * quarter;
    for (const Point center : {Point{-x, -y}, Point{x, -y}, Point{x, y}, Point{-x, y}}) {
        add_arc(polygon, center, corner_in, from, quarter, sides);
        from += quarter;
        polygon.push_back({center.x + corner_in * std::cos(from), center.y + corner_in * std::sin(from)});
    }
    return polygon;
}

Polygon circle(double diameter_in) {
    Polygon polygon;
    add_arc(polygon, {}, 0.5 * diameter_in, 0.0, 2.0 * std::numbers::pi, 360);
    return polygon;
}

Polygon ell(double width_in, double depth_in, double cut_in) {
    const double x = 0.5 * width_in, y = 0.5 * depth_in;
    return {{-x, -y}, {x, -y}, {x, y - cut_in}, {x - cut_in, y - cut_in}, {x - cut_in, y}, {-x, y}};
}

mechanics::PlateMesh mesh_of(const Base& base, double fineness) {
    std::vector<mechanics::Footprint> footprints;
    for (const mechanics::FlexibleAnchor& anchor : base.anchors) footprints.push_back(anchor.footprint);
    return mechanics::mesh_plate(base.outline, base.post, footprints, fineness);
}

mechanics::FlexiblePlateInput input_of(const Base& base, mechanics::PlateMesh mesh) {
    return {std::move(mesh), base.modulus_psi, base.poisson, base.thickness_in, base.anchors, base.bed};
}

Base square_on_two_blocks() {
    Base base{
        "8 x 8 x 1/2 in of steel on two blocks", rectangle(8.0, 8.0), rectangle(2.5, 2.5), 29e6, 0.3, 0.5, {}, {}};
    for (const Point at : {Point{-3.0, -3.0}, Point{3.0, -3.0}, Point{3.0, 3.0}, Point{-3.0, 3.0}})
        base.anchors.push_back({{at, 0.5}, 50000.0, 0.0});
    base.bed = {{-4.0, 4.0, -4.0, -0.5, 20000.0}, {-4.0, 4.0, 0.5, 4.0, 20000.0}};
    return base;
}

mechanics::PlateLoad push(double direction_deg) {
    constexpr double moment_lb_in = 200.0 * 42.0;
    const double angle = direction_deg * std::numbers::pi / 180.0;
    return {0.0, -moment_lb_in * std::sin(angle), moment_lb_in * std::cos(angle)};
}

}  // namespace toehold::test
