// The weld as a line: section properties and forces by hand and by adding small pieces, and J4 beside it.
#include "resistance/steel/weld_line.h"
#include "resistance/steel/connecting_element.h"
#include "support/compare.h"

#include <algorithm>
#include <cmath>
#include <numbers>

using namespace toehold;
using namespace toehold::resistance;
using mechanics::Point;
using steel::WeldIntensity;
using steel::WeldSegment;

namespace {

/// b along x, d along y, about the origin.
std::vector<WeldSegment> all_round(double b, double d) {
    return {{{-0.5 * b, 0.5 * d}, {0.5 * b, 0.5 * d}},
            {{-0.5 * b, -0.5 * d}, {0.5 * b, -0.5 * d}},
            {{0.5 * b, -0.5 * d}, {0.5 * b, 0.5 * d}},
            {{-0.5 * b, -0.5 * d}, {-0.5 * b, 0.5 * d}}};
}

/// Integrals of x^2, x y, y^2 about the centroid by small pieces: nothing of the formula in it.
struct Sums {
    double length = 0.0, x = 0.0, y = 0.0, xx = 0.0, xy = 0.0, yy = 0.0;
};
Sums sums_of(const std::vector<WeldSegment>& segments) {
    constexpr int pieces = 4000;
    Sums sums;
    for (int round = 0; round < 2; ++round) {
        for (const WeldSegment& s : segments) {
            const double length = std::hypot(s.to.x - s.from.x, s.to.y - s.from.y) / pieces;
            for (int i = 0; i < pieces; ++i) {
                const double share = (i + 0.5) / pieces;
                const double x = s.from.x + share * (s.to.x - s.from.x), y = s.from.y + share * (s.to.y - s.from.y);
                if (round == 0) {
                    sums.length += length;
                    sums.x += length * x;
                    sums.y += length * y;
                } else {
                    sums.xx += length * (x - sums.x) * (x - sums.x);
                    sums.xy += length * (x - sums.x) * (y - sums.y);
                    sums.yy += length * (y - sums.y) * (y - sums.y);
                }
            }
        }
        if (round == 0) {
            sums.x /= sums.length;
            sums.y /= sums.length;
        }
    }
    return sums;
}

WeldIntensity worst(const steel::WeldLine& line, const steel::WeldForces& forces) {
    const std::vector<WeldIntensity> all = steel::intensities(line, forces);
    return *std::max_element(all.begin(), all.end(), [](const WeldIntensity& a, const WeldIntensity& b) {
        return a.resultant() < b.resultant();
    });
}

constexpr double quarter = std::numbers::pi / 2.0;

}  // namespace

TEST_CASE("Second moments of a weld line are those of its pieces, whatever sides it runs along", "[closed-form]") {
    const std::vector<WeldSegment> whole = all_round(2.5, 4.0);
    for (const std::vector<WeldSegment>& segments : {whole,
                                                     {whole[0], whole[1]},
                                                     {whole[2], whole[3]},
                                                     {whole[0], whole[2]},
                                                     {whole[0], whole[2], whole[3]},
                                                     {{{0.0, 0.0}, {3.0, 4.0}}, {{1.0, -1.0}, {4.0, 0.0}}}}) {
        const steel::WeldLine line = steel::weld_line(segments);
        const Sums sums = sums_of(segments);
        CHECK_CLOSE(line.length_in, sums.length, 1e-9, 0.0);
        CHECK_CLOSE(line.center.x, sums.x, 0.0, 1e-9);
        CHECK_CLOSE(line.center.y, sums.y, 0.0, 1e-9);
        CHECK_CLOSE(line.xx_in3, sums.xx, 1e-6, 0.0);
        CHECK_CLOSE(line.xy_in3, sums.xy, 1e-6, 1e-9);
        CHECK_CLOSE(line.yy_in3, sums.yy, 1e-6, 0.0);
    }
    // All round, the tables of weld design: S_x = b d + d^2/3 = 10 + 16/3, here I_x over d/2.
    CHECK_CLOSE(steel::weld_line(whole).yy_in3 / 2.0, 10.0 + 16.0 / 3.0, 1e-12, 0.0);
    // A ring: integral of (r sin a)^2 r da = pi r^3.
    const steel::WeldLine ring = steel::circular_weld(3.0);
    CHECK_CLOSE(ring.yy_in3, std::numbers::pi * 1.5 * 1.5 * 1.5, 1e-12, 0.0);
    CHECK_CLOSE(ring.length_in, std::numbers::pi * 3.0, 1e-12, 0.0);
}

TEST_CASE("Corners of a rectangle add their bending, a ring feels the resultant", "[closed-form]") {
    const steel::WeldLine square = steel::weld_line(all_round(2.0, 2.0));  // S = 4 + 4/3
    CHECK_CLOSE(worst(square, {8400.0, quarter, 0.0, 0.0}).bending, 1575.0, 1e-12, 0.0);
    CHECK_CLOSE(worst(square, {8400.0, quarter / 2.0, 0.0, 0.0}).bending, 1575.0 * std::numbers::sqrt2, 1e-12, 0.0);
    const steel::WeldLine ring = steel::circular_weld(2.0);  // S = pi
    CHECK_CLOSE(worst(ring, {500.0, 0.7, 0.0, 0.0}).bending, 500.0 / std::numbers::pi, 1e-12, 0.0);
    // 1575 + 80/8 along the post, 200/8 across it.
    CHECK_CLOSE(worst(square, {8400.0, quarter, 200.0, 80.0}).resultant(), std::hypot(1585.0, 25.0), 1e-12, 0.0);
}

TEST_CASE("A weld on two sides bends by hand's arithmetic", "[closed-form]") {
    // Front and back of a 2 x 2: pushed across them S = b d = 4 in2, along them 2 b^2/6 = 1.333 in2.
    const std::vector<WeldSegment> whole = all_round(2.0, 2.0);
    const steel::WeldLine line = steel::weld_line(std::vector{whole[0], whole[1]});
    CHECK_CLOSE(worst(line, {8400.0, quarter, 0.0, 0.0}).bending, 2100.0, 1e-12, 0.0);
    CHECK_CLOSE(worst(line, {8400.0, 0.0, 0.0, 0.0}).bending, 6300.0, 1e-12, 0.0);
    CHECK_CLOSE(worst(line, {0.0, 0.0, 200.0, 0.0}).shear, 50.0, 1e-12, 0.0);
}

TEST_CASE("A weld on two sides that meet turns about its centroid, and twists", "[closed-form]") {
    // Top (y = 1) and right (x = 1) of a 2 x 2: centroid (0.5, 0.5). I_x = 2 x 0.25 + (2^3/12 + 2 x 0.25) = 1.6667 =
    // I_y; I_xy = 2 (-0.5)(0.5) + 2 (0.5)(-0.5) = -1. A moment that tips along x: gradient M (I_x, -I_xy)/(I_x I_y -
    // I_xy^2) = M (1.6667, 1)/1.7778; at (1, 1), 0.5 and 0.5 off: 0.75 M. At the ends (-1, 1) and (1, -1): -1.125 M and
    // -0.375 M. Shear of 100 lb along x: 25, and torsion 100 x 0.5 = 50 about J = 3.3333: 15 an inch from the centroid;
    // at (-1, 1): (25 - 7.5, -22.5).
    const std::vector<WeldSegment> whole = all_round(2.0, 2.0);
    const steel::WeldLine line = steel::weld_line(std::vector{whole[0], whole[2]});
    CHECK_CLOSE(line.xy_in3, -1.0, 1e-12, 0.0);
    const std::vector<WeldIntensity> all = steel::intensities(line, {1000.0, 0.0, 100.0, 0.0});
    CHECK_CLOSE(all.at(0).bending, 1125.0, 1e-9, 0.0);
    CHECK_CLOSE(all.at(1).bending, 750.0, 1e-9, 0.0);
    CHECK_CLOSE(all.at(2).bending, 375.0, 1e-9, 0.0);
    CHECK_CLOSE(all.at(0).shear, std::hypot(17.5, 22.5), 1e-9, 0.0);
    // Tipped along y: gradient M (-I_xy, I_x)/1.7778 = (562.5, 937.5): at (-1, 1), -1.5 and 0.5 off, -843.75 + 468.75;
    // at (1, -1), 281.25 - 1406.25. Shear along y: torsion -50, twist -15: at (-1, 1) 7.5 along x and 25 + 22.5 along
    // y.
    const std::vector<WeldIntensity> across = steel::intensities(line, {1000.0, quarter, 100.0, 0.0});
    CHECK_CLOSE(across.at(0).bending, 375.0, 1e-9, 0.0);
    CHECK_CLOSE(across.at(1).bending, 750.0, 1e-9, 0.0);
    CHECK_CLOSE(across.at(2).bending, 1125.0, 1e-9, 0.0);
    CHECK_CLOSE(across.at(0).shear, std::hypot(7.5, 47.5), 1e-9, 0.0);
    // 80 lb down the post: 20 an inch, and a moment of 40 about both axes: gradient (40 x 1.6667 + 40)/1.7778 = 60 both
    // ways; at (-1, 1) 60 (-1.5 + 0.5), at (1, 1) 60 (0.5 + 0.5): 60 more at every end.
    for (const WeldIntensity& one : steel::intensities(line, {0.0, 0.0, 0.0, 80.0}))
        CHECK_CLOSE(one.axial, 80.0, 1e-9, 0.0);
}

TEST_CASE("Spread over its length a square line carries more than its elastic peak, most on the diagonal",
          "[closed-form]") {
    // What the argument on thin plates rests on: integral of the distance from the axis, over the elastic modulus.
    // Square on: 2 x 2 x 1 + 4 x 1 x 0.5 = 6 against 5.3333; on the diagonal 8 x 0.7071 = 5.657 against 5.3333/1.4142.
    constexpr double elastic = 16.0 / 3.0;
    CHECK_CLOSE(6.0 / elastic, 9.0 / 8.0, 1e-12, 0.0);
    CHECK_CLOSE(4.0 * std::numbers::sqrt2 / (elastic / std::numbers::sqrt2), 1.5, 1e-12, 0.0);
    // 1.70, the largest peak seen in solids, stays under the nominal strength that omega is taken of.
    CHECK(steel::groove_peak < steel::element_rupture_safety.omega);
}

TEST_CASE("Metal beside a weld yields and breaks by J4", "[published]") {
    // AISC 360-16 J4.1, J4.2; the factors of J4.1 are D2's, held against the published example D.1 of the AISC Design
    // Examples: 50 ksi x 6.16 in2 x 0.90 = 277 kip.
    CHECK(test::prints_as(steel::tension_yield_safety.phi * steel::tension_yield_lb_per_in(6.16, 50.0), 277.0, 1.0));
    CHECK_CLOSE(steel::tension_yield_lb_per_in(6.16, 50.0) / steel::tension_yield_safety.omega, 184.4, 0.0, 0.05);
    // The wall of a 2 x 2 x 1/8 post of A500 B: 46,000 x 0.93 x 0.125 / 1.67 = 3,202 lb/in along it; across it the
    // lesser of 0.60 x 46,000 x 0.11625/1.50 = 2,139 and 0.60 x 58,000 x 0.11625/2.00 = 2,023.
    CHECK_CLOSE(steel::tension_yield_lb_per_in(0.11625, 46e3) / 1.67, 3202.1, 0.0, 0.05);
    CHECK_CLOSE(steel::tension_rupture_lb_per_in(0.11625, 58e3) / 2.00, 3371.25, 1e-9, 0.0);
    CHECK_CLOSE(steel::shear_yield_lb_per_in(0.11625, 46e3) / 1.50, 2139.0, 0.0, 0.05);
    CHECK_CLOSE(steel::shear_rupture_lb_per_in(0.11625, 58e3) / 2.00, 2022.8, 0.0, 0.05);
}

TEST_CASE("what is square to the plate at a place is made of shares that no force changes", "[property]") {
    std::vector<WeldSegment> three = all_round(2.0, 3.0);
    three.pop_back();
    const steel::WeldLine line = steel::weld_line(three);
    const std::vector<steel::NormalShare> shares = steel::normal_shares(line);
    REQUIRE(shares.size() == line.places.size());
    for (const double direction : {0.0, 0.7, 2.5, 4.0}) {
        for (const double axial : {0.0, -350.0, 500.0}) {
            const steel::WeldForces forces{8400.0, direction, 200.0, axial};
            const std::vector<WeldIntensity> all = steel::intensities(line, forces);
            for (std::size_t at = 0; at < all.size(); ++at)
                CHECK_CLOSE(steel::normal(shares[at], forces), all[at].normal(), 1e-12, 0.0);
        }
    }
}
