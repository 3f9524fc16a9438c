// The most that bearing can do beyond a section, against pressures chosen beforehand: none may turn more.
#include "mechanics/plate_strip/bearing_bound.h"

#include "support/compare.h"

#include <algorithm>
#include <cmath>
#include <random>

using namespace toehold;
using namespace toehold::mechanics;

namespace {

const Shape patch({{-2.0, 0.0}, {2.0, 0.0}, {2.0, 3.0}, {-2.0, 3.0}});

PlateSection section_towards(double angle_rad, double offset_in) {
    PlateSection section;
    section.normal_rad = angle_rad;
    section.normal_x = std::cos(angle_rad);
    section.normal_y = std::sin(angle_rad);
    section.offset_in = offset_in;
    return section;
}

PlateSection along_x(double offset_in) {
    PlateSection section;
    section.normal_y = 1.0;
    section.offset_in = offset_in;
    return section;
}

PatchForce force(double force_lb, Point at, double peak_psi) { return {force_lb, at, peak_psi, at, 1.0}; }

double bound(const PlateSection& section, const PatchForce& on_patch) {
    return greatest_bearing(section, area_at_section(section, patch), on_patch).moment_lb_in;
}

/// Point forces on a fine grid over the patch, each square of it under its own pressure.
struct Field {
    double force_lb = 0.0, force_x = 0.0, force_y = 0.0, peak_psi = 0.0, moment_lb_in = 0.0;

    void add(const PlateSection& section, Point at, double area_in2, double psi) {
        force_lb += psi * area_in2;
        force_x += psi * area_in2 * at.x;
        force_y += psi * area_in2 * at.y;
        peak_psi = std::max(peak_psi, psi);
        moment_lb_in += psi * area_in2 * std::max(0.0, section.beyond_in(at));
    }
    [[nodiscard]] PatchForce resultant() const {
        return force(force_lb, {force_x / force_lb, force_y / force_lb}, peak_psi);
    }
};

template <class Psi>
Field field(const PlateSection& section, Psi&& psi) {
    constexpr double side = 0.05;
    Field all;
    for (int column = 0; column < 80; ++column) {
        for (int line = 0; line < 60; ++line) {
            const Point at{-2.0 + side * (column + 0.5), side * (line + 0.5)};
            all.add(section, at, side * side, std::max(0.0, psi(at)));
        }
    }
    return all;
}

}  // namespace

TEST_CASE("A support wholly beyond the section turns by its resultant", "[closed-form]") {
    CHECK_CLOSE(bound(along_x(-1.0), force(600.0, {0.3, 2.0}, 400.0)), 600.0 * 3.0, 1e-12, 0.0);
    CHECK(bound(along_x(3.5), force(600.0, {0.3, 2.0}, 400.0)) == 0.0);
}

TEST_CASE("Pressure packed to both ends is the most a resultant and a peak allow", "[closed-form]") {
    // 648 lb at y = 2.4, at most 180 psi on 4 in: 0.9 in of length in two bands at the ends, l at the far one, with
    // l (3 - l/2) + (0.9 - l)^2/2 = 0.9 x 2.4: l = 0.8357. About y = 2: 180 x 4 x l (1 - l/2) = 350.3 lb in. The bound
    // cannot be less, and at most 180 psi all over the area beyond: 180 x 4/2 = 360.
    const double most = bound(along_x(2.0), force(648.0, {0.0, 2.4}, 180.0));
    CHECK(most >= 350.3);
    CHECK(most <= 360.0);
    // The triangular pressure with this resultant and peak turns 293.3 only.
    CHECK(most >= 293.3);
}

TEST_CASE("A force of unlimited pressure may stand at the support's two ends", "[closed-form]") {
    // 100 lb at y = 1.5 as 50 lb at y = 0 and 50 lb at y = 3: 50 x 1 about y = 2.
    CHECK_CLOSE(bound(along_x(2.0), force(100.0, {0.0, 1.5}, 1e9)), 50.0, 1e-9, 0.0);
}

TEST_CASE("The resultant alone counts where little of a support lies short of the section", "[closed-form]") {
    // About y = 0.1: F s = 500 x 1.9, and 200 psi on what lies short of it, 4 x 0.1^2/2 = 0.02 in3: 4 lb in more.
    const double most = bound(along_x(0.1), force(500.0, {0.0, 2.0}, 200.0));
    CHECK(most >= 950.0);
    CHECK(most <= 954.0 + 1e-9);
}

TEST_CASE("Prying at the heel does not hide the toe's bearing on one support", "[closed-form]") {
    // 160 psi on the last half inch at the toe, and the same on a quarter inch at the heel: 320 and 160 lb. About y = 2
    // the toe turns 320 x 0.75 = 240 lb in. Of one plane pressure with that resultant (y = 1.875) far less would.
    const PlateSection section = along_x(2.0);
    const Field pressed = field(section, [](Point at) { return at.y > 2.5 || at.y < 0.25 ? 160.0 : 0.0; });
    CHECK_CLOSE(pressed.moment_lb_in, 240.0, 1e-9, 0.0);
    const PatchForce resultant = pressed.resultant();
    CHECK(bound(section, resultant) >= 240.0 * (1.0 - 1e-12));
    CHECK(bound(section, resultant) <= 1.1 * 240.0);
    const std::vector<PlanePressure> plane = plane_pressures({&resultant, 1}, {&patch, 1});
    CHECK(bearing_beyond(section, plane).moment_lb_in < 0.7 * 240.0);
}

TEST_CASE("No pressure turns more about any section than the bound", "[property]") {
    std::mt19937 random(1847);
    std::uniform_real_distribution<double> angle(0.0, 6.28), offset(-0.5, 2.5), place_x(-2.0, 2.0), place_y(0.0, 3.0),
        size(20.0, 600.0), width(0.1, 1.5);
    for (int trial = 0; trial < 200; ++trial) {
        const PlateSection section = section_towards(angle(random), offset(random));
        const Point first{place_x(random), place_y(random)}, second{place_x(random), place_y(random)};
        const double peak = size(random), other = size(random), spread = width(random);
        const Field pressed = field(section, [&](Point at) {
            const double a = std::hypot(at.x - first.x, at.y - first.y) / spread;
            const double b = std::hypot(at.x - second.x, at.y - second.y) / spread;
            return std::max(peak * (1.0 - a), b < 1.0 ? other : 0.0);
        });
        // A square's own lever arm, taken at its middle, is at most its mean over the square: no slack is needed.
        CHECK(bound(section, pressed.resultant()) >= pressed.moment_lb_in * (1.0 - 1e-9));
    }
}

TEST_CASE("The highest pressure on all of the area beyond a corner's section", "[closed-form]") {
    // Across the corner (2, 3), 1 in from it: a right triangle of height 1, area 1, centroid 1/3 in beyond the section:
    // 300 psi turn 100 lb in, over 2 in of the section.
    const double root = std::sqrt(0.5);
    PlateSection section;
    section.normal_x = section.normal_y = root;
    section.offset_in = 5.0 * root - 1.0;
    const auto even = even_bearing(area_at_section(section, patch), force(900.0, {1.0, 2.0}, 300.0));
    CHECK_CLOSE(even.moment_lb_in, 100.0, 1e-9, 0.0);
    CHECK_CLOSE(even.beyond_lb, 300.0, 1e-9, 0.0);
    CHECK_CLOSE(even.pressed.extent.length(), 2.0, 1e-9, 0.0);
}
