// Yield-line patterns by hand.
#include "mechanics/shapes.h"
#include "mechanics/yield_line/yield_line.h"
#include "support/compare.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <random>

namespace {

using namespace toehold;
using mechanics::FootOutline;
using mechanics::PlateHole;
using mechanics::PlateShape;
using mechanics::PointLoad;
using mechanics::YieldPattern;
using mechanics::YieldShape;

mechanics::Polygon centered(double width, double depth) {
    return test::rectangle(-0.5 * width, 0.5 * width, -0.5 * depth, 0.5 * depth);
}

YieldPattern across(const FootOutline& foot, const PlateShape& plate, const std::vector<PointLoad>& loads) {
    return mechanics::worst_pattern({mechanics::yield_lines(foot, plate), {}}, loads);
}

const FootOutline two_inches{false, 2.0, 2.0};

/// Lift of a point when the plate tilts outside the band, each load by itself: what work on a band is summed from.
double lift_at(const mechanics::YieldBand& band, mechanics::Point at) {
    const FootOutline& foot = band.foot;
    const auto tilt = [&](mechanics::Point p) { return band.way.x * p.x + band.way.y * p.y - band.offset_in; };
    const double shrink = std::min(1.0, 0.5 * foot.width_in / std::hypot(at.x, at.y));
    const mechanics::Point near = foot.round
                                      ? mechanics::Point{at.x * shrink, at.y * shrink}
                                      : mechanics::Point{std::clamp(at.x, -0.5 * foot.width_in, 0.5 * foot.width_in),
                                                         std::clamp(at.y, -0.5 * foot.depth_in, 0.5 * foot.depth_in)};
    const double away = std::hypot(at.x - near.x, at.y - near.y);
    if (away >= band.width_in) return tilt(at);
    if (!(away > 0.0)) return 0.0;
    const double reach = band.width_in / away;
    return tilt({near.x + (at.x - near.x) * reach, near.y + (at.y - near.y) * reach}) / reach;
}

/// One pattern after the other.
double slow_worst_lb(const mechanics::YieldPatterns& patterns, const std::vector<PointLoad>& loads) {
    double worst = 0.0;
    for (const mechanics::YieldLine& line : patterns.lines)
        worst = std::max(worst, mechanics::moment_needed_lb(line, loads));
    for (const mechanics::YieldBand& band : patterns.bands) {
        double work = 0.0;
        for (const PointLoad& load : loads) work += load.force_lb * lift_at(band, load.at);
        worst = std::max(worst, std::abs(work) / band.taken_in);
    }
    return worst;
}

}  // namespace

TEST_CASE("The weakest line across a square plate's corner touches the post's corner", "[closed-form]") {
    // 8 x 8, 2 in post, anchor at (2.75, 2.75). At 45 degrees the line through (1, 1) runs from (-2, 4) to (4, -2): 6
    // sqrt(2) = 8.485 in; the anchor lies (5.5 - 2)/sqrt(2) = 2.475 in past it. 1/2 in of A36: 36,000 x 0.5^2/4 = 2,250
    // lb in an inch: 2,250 x 8.485/2.475 = 7,714 lb.
    const YieldPattern pattern = across(two_inches, {centered(8.0, 8.0), {}}, {{{2.75, 2.75}, 1.0}});
    CHECK_CLOSE(pattern.moment_needed_lb, 2.475 / 8.485, 1e-3, 0.0);
    CHECK_CLOSE(2250.0 / pattern.moment_needed_lb, 7714.0, 0.0, 1.0);
    CHECK_CLOSE(pattern.normal_rad, std::numbers::pi / 4.0, 1e-9, 0.0);
    CHECK_CLOSE(pattern.length_in, 8.485, 1e-3, 0.0);
}

TEST_CASE("Both anchors of a side bend the plate along the post's face", "[closed-form]") {
    // 8 in at x = 1, 1.75 in from both: 2,250 x 8/(2 x 1.75) = 5,143 lb each.
    const YieldPattern pattern =
        across(two_inches, {centered(8.0, 8.0), {}}, {{{2.75, 2.75}, 1.0}, {{2.75, -2.75}, 1.0}});
    CHECK_CLOSE(2250.0 / pattern.moment_needed_lb, 5143.0, 0.0, 1.0);
    CHECK_CLOSE(pattern.normal_rad, 0.0, 0.0, 1e-12);
    CHECK_CLOSE(pattern.offset_in, 1.0, 1e-12, 0.0);
}

TEST_CASE("A round flange bends along its chord at the tube", "[closed-form]") {
    mechanics::Polygon circle;
    for (int i = 0; i < 720; ++i)
        circle.push_back({2.0 * std::cos(std::numbers::pi * i / 360.0), 2.0 * std::sin(std::numbers::pi * i / 360.0)});
    // 3.708 in of metal at 0.75 in, the anchor 0.625 in past it.
    const YieldPattern pattern = across({true, 1.5, 1.5}, {circle, {}}, {{{0.0, 1.375}, 1.0}});
    CHECK_CLOSE(pattern.moment_needed_lb, 0.625 / 3.7081, 1e-3, 0.0);
    CHECK_CLOSE(pattern.length_in, 3.708, 0.0, 0.002);
}

TEST_CASE("Lines run through holes and lose their length", "[closed-form]") {
    // A slot 5.4 in long and 0.4 in wide along y at x = 2 leaves 2.6 in of 8: 1 lb at x = 3.5: 1.5/2.6 = 0.577 lb,
    // where the line at the post's face needs 2.5/8.
    const PlateShape plate{centered(8.0, 8.0), {{{2.0, -2.5}, {2.0, 2.5}, 0.2}}};
    const YieldPattern pattern = across(two_inches, plate, {{{3.5, 0.0}, 1.0}});
    CHECK_CLOSE(pattern.moment_needed_lb, 1.5 / 2.6, 1e-6, 0.0);
    CHECK_CLOSE(pattern.offset_in, 2.0, 1e-9, 0.0);
    CHECK(across(two_inches, {centered(8.0, 8.0), {}}, {{{3.5, 0.0}, 1.0}}).moment_needed_lb < 0.35);
}

TEST_CASE("Forces past a line that oppose each other count against each other", "[unit]") {
    const mechanics::YieldLine line{0.0, 1.0, 0.0, 1.0, 4.0};
    const std::vector<PointLoad> loads{{{3.0, 0.0}, 10.0}, {{2.0, 1.0}, -12.0}, {{-3.0, 0.0}, 50.0}};
    CHECK_CLOSE(mechanics::moment_needed_lb(line, loads), (20.0 - 12.0) / 4.0, 1e-12, 0.0);
    CHECK(std::isinf(mechanics::moment_needed_lb(mechanics::YieldLine{0.0, 1.0, 0.0, 1.0, 0.0}, loads)));
}

TEST_CASE("A ring about a round post takes what its hinges and its twist take", "[closed-form]") {
    // Tilt 1 about the axis, radius r at the post, R at the band's edge, s = R - r. The lift R cos a (rho - r)/s has
    // slope R cos a/s at the post and turns by r cos a/s at the edge: 4 r R/s + 4 R r/s. In the band the curvature
    // round is R r cos a/(s rho^2) and the twist R r sin a/(s rho^2), the sum of whose principal curvatures is
    // sqrt(cos^2 + 4 sin^2) R r/(s rho^2), 9.6884 round the circle: 9.6884 (R r/s) ln(R/r). r = 1, R = 4: 4/3 (8
    // + 9.6884 x 1.38629) = 28.576; 1 lb at 9 in.
    const PlateShape plate{centered(40.0, 40.0), {}};
    const FootOutline foot{true, 2.0, 2.0};
    const YieldPattern pattern =
        mechanics::worst_pattern({{}, mechanics::yield_bands(foot, plate)}, std::vector<PointLoad>{{{9.0, 0.0}, 1.0}});
    CHECK(pattern.shape == YieldShape::around);
    const double r = 1.0, big = 1.0 + pattern.spread_in, band = pattern.spread_in;
    const double taken = r * big / band * (8.0 + 9.6884 * std::log(big / r));
    if (pattern.offset_in == 0.0) CHECK_CLOSE(pattern.moment_needed_lb, 9.0 / taken, 0.02, 0.0);
    // It is weaker than any line across so large a plate: 40 in against 8 in of arm.
    CHECK(pattern.moment_needed_lb > across(foot, plate, {{{9.0, 0.0}, 1.0}}).moment_needed_lb);
    CHECK(pattern.moment_needed_lb >= 9.0 / 28.58);
}

TEST_CASE("A quarter turn turns the pattern", "[property]") {
    const PlateShape plate{centered(9.0, 6.0), {}}, turned{centered(6.0, 9.0), {}};
    const double before = across({false, 2.0, 1.0}, plate, {{{3.0, 2.0}, 1.0}}).moment_needed_lb;
    CHECK_CLOSE(across({false, 1.0, 2.0}, turned, {{{-2.0, 3.0}, 1.0}}).moment_needed_lb, before, 1e-9, 0.0);
}

TEST_CASE("The worst pattern is the worst of all, each worked out by itself", "[second-method]") {
    const PlateShape rounded{test::regular_polygon(40, 4.0), {{{2.5, 2.5}, {2.5, 2.5}, 0.25}}};
    const PlateShape notched{test::l_shape(), {}};
    std::mt19937 random(1943);
    std::uniform_real_distribution<double> place(-3.5, 3.5), force(-200.0, 500.0);
    for (const FootOutline& foot : {FootOutline{true, 2.0, 2.0}, FootOutline{false, 1.0, 0.8}}) {
        for (const PlateShape& plate : {rounded, notched}) {
            const mechanics::YieldPatterns patterns = mechanics::yield_patterns(foot, plate);
            for (int trial = 0; trial < 12; ++trial) {
                std::vector<PointLoad> loads;
                for (int i = 0; i < 1 + 3 * trial; ++i)
                    loads.push_back({{place(random), place(random)}, force(random)});
                CHECK_CLOSE(mechanics::worst_pattern(patterns, loads).moment_needed_lb, slow_worst_lb(patterns, loads),
                            1e-9, 0.0);
            }
        }
    }
}

TEST_CASE("A line's metal is what the plate leaves of it, whatever the outline", "[unit]") {
    // As a polygon of many corners, and the same with a corner more that makes it no longer convex by a hair.
    mechanics::Polygon round = test::regular_polygon(90, 4.0), dented = round;
    dented[7] = {dented[7].x * 0.9999, dented[7].y * 0.9999};
    const auto lines = mechanics::yield_lines(two_inches, {round, {}});
    const auto other = mechanics::yield_lines(two_inches, {dented, {}});
    REQUIRE(lines.size() == other.size());
    for (std::size_t i = 0; i < lines.size(); ++i) CHECK_CLOSE(lines[i].metal_in, other[i].metal_in, 0.0, 0.02);
}
