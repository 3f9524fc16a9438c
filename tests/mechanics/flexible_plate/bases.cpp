#include "mechanics/flexible_plate/bases.h"

#include "mechanics/shapes.h"
#include "support/random/number.h"

#include <algorithm>

namespace toehold::test {
namespace {

using mechanics::Footprint;

constexpr double washer = 0.5, everywhere = 100.0;

Polygon square(double half, Point center = {}) {
    return rectangle(center.x - half, center.x + half, center.y - half, center.y + half);
}

/// A place inside the outline at least `clear` from its edge; the origin if none is found.
Point random_place(const Polygon& outline, double clear) {
    const Point found{number(-6.0, 6.0), number(-6.0, 6.0)};
    Point at = found;
    // Drawn toward the post until it is inside: no rejection, so that shrinking stays cheap.
    for (int step = 0; step < 20; ++step, at = {0.85 * at.x, 0.85 * at.y}) {
        bool clear_of_edge = true;
        for (int i = 0; i < 8; ++i) {
            const double angle = std::numbers::pi * i / 4.0;
            const Point rim{at.x + clear * std::cos(angle), at.y + clear * std::sin(angle)};
            bool inside = false;
            for (std::size_t a = 0, b = outline.size() - 1; a < outline.size(); b = a++) {
                const Point p = outline[a], q = outline[b];
                if ((p.y > rim.y) != (q.y > rim.y) && rim.x < p.x + (rim.y - p.y) / (q.y - p.y) * (q.x - p.x))
                    inside = !inside;
            }
            clear_of_edge = clear_of_edge && inside;
        }
        if (clear_of_edge) return at;
    }
    return {0.0, 0.0};
}

Polygon random_outline() {
    switch (*rc::gen::inRange(0, 4)) {
        case 0:
            return rounded_rectangle(number(5.0, 11.0), number(5.0, 11.0), number(0.1, 1.0));
        case 1:
            return regular_polygon(720, number(2.8, 5.5));
        case 2: {
            const double arm = number(1.6, 2.5), x = number(3.5, 6.0), y = number(3.5, 6.0);
            return {{-arm, -arm}, {x, -arm}, {x, arm}, {arm, arm}, {arm, y}, {-arm, y}};
        }
        default:
            return rectangle(-number(2.0, 5.0), number(2.0, 5.0), -number(2.0, 5.0), number(2.0, 5.0));
    }
}

std::vector<mechanics::BedRectangle> random_bed() {
    const double stiffness = magnitude(3e3, 1e5);
    if (*rc::gen::arbitrary<bool>()) return {{-everywhere, everywhere, -everywhere, everywhere, stiffness}};
    const double gap = number(0.0, 1.0);
    return {{-everywhere, everywhere, -everywhere, -gap, stiffness},
            {-everywhere, everywhere, gap, everywhere, magnitude(3e3, 1e5)}};
}

}  // namespace

Polygon rounded_rectangle(double width, double height, double radius) {
    constexpr int chords = 180;
    Polygon result;
    for (int corner = 0; corner < 4; ++corner) {
        const double x = (corner == 0 || corner == 3 ? 0.5 : -0.5) * (width - 2.0 * radius);
        const double y = (corner < 2 ? 0.5 : -0.5) * (height - 2.0 * radius);
        for (int chord = 0; chord <= chords; ++chord) {
            const double angle = std::numbers::pi / 2.0 * (corner + static_cast<double>(chord) / chords);
            result.push_back({x + radius * std::cos(angle), y + radius * std::sin(angle)});
        }
    }
    return result;
}

Polygon t_shape(double flange, double depth, double thickness) {
    const double half = 0.5 * flange, stem = 0.5 * thickness;
    return {{-stem, stem - depth}, {stem, stem - depth}, {stem, -stem},  {half, -stem},
            {half, stem},          {-half, stem},        {-half, -stem}, {-stem, -stem}};
}

FlexibleBase square_base() {
    FlexibleBase base{"square", rounded_rectangle(8.0, 8.0, 0.5), square(1.25), {}, {}};
    for (const Point at : {Point{-3.0, -3.0}, {3.0, -3.0}, {3.0, 3.0}, {-3.0, 3.0}})
        base.anchors.push_back({{at, washer}, 30000.0, 0.0});
    base.bed = {{-everywhere, everywhere, -4.0, -0.5, 25000.0}, {-everywhere, everywhere, 0.5, 4.0, 25000.0}};
    return base;
}

FlexibleBase round_base() {
    FlexibleBase base{"round", regular_polygon(720, 4.0), regular_polygon(72, 1.2), {}, {}};
    base.thickness_in = 0.25;
    for (int i = 0; i < 5; ++i) {
        const double angle = 0.3 + 2.0 * std::numbers::pi * i / 5.0;
        base.anchors.push_back({{{3.0 * std::cos(angle), 3.0 * std::sin(angle)}, 0.45}, 40000.0, 0.0});
    }
    base.bed = {{-everywhere, everywhere, -everywhere, everywhere, 20000.0}};
    return base;
}

FlexibleBase l_base() {
    FlexibleBase base{
        "L", {{-2.0, -2.0}, {6.0, -2.0}, {6.0, 2.0}, {2.0, 2.0}, {2.0, 6.0}, {-2.0, 6.0}}, square(1.0), {}, {}};
    base.thickness_in = 0.5;
    for (const Point at : {Point{-1.4, -1.4}, {5.2, -1.2}, {5.2, 1.2}, {1.2, 5.2}, {-1.2, 5.2}})
        base.anchors.push_back({{at, 0.4}, 35000.0, 0.0});
    base.bed = {{-everywhere, everywhere, -everywhere, everywhere, 30000.0}};
    return base;
}

FlexibleBase lopsided_base() {
    FlexibleBase base{"lopsided", rectangle(-3.5, 4.0, -1.6, 6.0), rectangle(-1.2, 1.2, -1.4, 1.0), {}, {}};
    base.modulus_psi = 10e6;
    base.poisson = 0.33;
    base.thickness_in = 0.5;
    base.anchors = {{{{-2.8, -0.9}, 0.5}, 20000.0, 0.0},
                    {{{3.2, -0.8}, 0.7}, 45000.0, 300.0},
                    {{{-2.6, 5.1}, 0.25}, 60000.0, 0.0},
                    {{{3.0, 4.4}, 0.5}, 30000.0, 150.0},
                    {{{0.3, 3.0}, 0.5}, 25000.0, 0.0}};
    base.bed = {{-everywhere, everywhere, -everywhere, 1.9, 12000.0},
                {-everywhere, everywhere, 2.6, everywhere, 50000.0}};
    return base;
}

std::vector<FlexibleBase> common_bases() { return {square_base(), round_base(), l_base(), lopsided_base()}; }

FlexibleBase random_base() {
    FlexibleBase base;
    base.name = "random";
    base.outline = random_outline();
    const double half = number(0.6, 1.4);
    base.ring = *rc::gen::arbitrary<bool>() ? square(half) : regular_polygon(72, half);
    const int anchors = *rc::gen::inRange(2, 8);
    for (int i = 0; i < anchors; ++i) {
        const double radius = number(0.2, 0.8);
        base.anchors.push_back({{random_place(base.outline, radius), radius},
                                magnitude(5e3, 1.5e5),
                                *rc::gen::arbitrary<bool>() ? 0.0 : number(0.0, 500.0)});
    }
    base.bed = random_bed();
    const bool aluminum = *rc::gen::arbitrary<bool>();
    base.modulus_psi = aluminum ? 10e6 : 29e6;
    base.poisson = aluminum ? 0.33 : 0.3;
    base.thickness_in = magnitude(0.1875, 0.75);
    return base;
}

mechanics::PlateMesh mesh_of(const FlexibleBase& base, double fineness) {
    std::vector<Footprint> footprints;
    for (const mechanics::FlexibleAnchor& anchor : base.anchors) footprints.push_back(anchor.footprint);
    return mechanics::mesh_plate(base.outline, base.ring, footprints, fineness);
}

mechanics::FlexiblePlateInput input_of(const FlexibleBase& base, double fineness) {
    return {mesh_of(base, fineness), base.modulus_psi, base.poisson, base.thickness_in, base.anchors, base.bed};
}

double largest_tension(const mechanics::FlexiblePlateSolution& solution) {
    double largest = 0.0;
    for (const double tension : solution.tension_lb) largest = std::max(largest, tension);
    return largest;
}

double largest_force(const mechanics::FlexiblePlateSolution& solution) {
    double largest = largest_tension(solution);
    for (const mechanics::PatchForce& patch : solution.patches) largest = std::max(largest, patch.force_lb);
    return largest;
}

}  // namespace toehold::test
