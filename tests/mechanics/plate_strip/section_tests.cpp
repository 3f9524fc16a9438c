// Sections and strips of plates whose chords and widths are known from drawing them.
#include "mechanics/plate_strip/strip.h"

#include "mechanics/shapes.h"
#include "support/compare.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>
#include <numbers>

using namespace toehold::mechanics;
using toehold::test::rectangle;

namespace {

const FootOutline square_foot{false, 2.0, 2.0};

/// 6 x 8 in about the post.
PlateShape plate(std::vector<PlateHole> holes = {}) { return {rectangle(-3.0, 3.0, -4.0, 4.0), std::move(holes)}; }

/// The section towards +y along the foot's face, y = 1.
PlateSection outward(const PlateShape& shape) { return tangent_sections(square_foot, shape).at(2); }

}  // namespace

TEST_CASE("Eight sections touch a square foot, four along its faces and four at its corners", "[closed-form]") {
    const std::vector<PlateSection> sections = tangent_sections(square_foot, plate());
    REQUIRE(sections.size() == 8);
    for (std::size_t eighth = 0; eighth < 8; ++eighth) {
        const bool diagonal = eighth % 2 == 1;
        CHECK_CLOSE(sections[eighth].offset_in, diagonal ? std::numbers::sqrt2 : 1.0, 1e-12, 0.0);
    }
    CHECK_CLOSE(sections[0].chord.length(), 8.0, 1e-12, 0.0);
    CHECK_CLOSE(sections[2].chord.length(), 6.0, 1e-12, 0.0);
    // x + y = 2 from (3, -1) to (-2, 4): 5 root 2.
    CHECK_CLOSE(sections[1].chord.length(), 5.0 * std::numbers::sqrt2, 1e-12, 0.0);
}

TEST_CASE("A foot that reaches over the plate's edge has no section there", "[unit]") {
    const PlateShape edge{rectangle(-0.9, 5.0, -4.0, 4.0), {}};
    for (const PlateSection& section : tangent_sections(square_foot, edge)) CHECK(section.normal_x > -0.99);
    // Nor at the two corners that stand over it: the plate is not where those diagonals touch the post.
    CHECK(tangent_sections(square_foot, edge).size() == 5);
}

TEST_CASE("Holes on a section are taken out of its width with their chords", "[closed-form]") {
    // A circle of radius 0.5 whose center is 0.3 off the line: 2 x 0.4.
    CHECK_CLOSE(outward(plate({{{1.0, 1.3}, {1.0, 1.3}, 0.5}})).width_in({-10.0, 10.0}), 6.0 - 0.8, 1e-12, 0.0);
    // A slot along x on the line: its whole length, ends included.
    CHECK_CLOSE(outward(plate({{{-1.0, 1.0}, {1.0, 1.0}, 0.25}})).width_in({-10.0, 10.0}), 6.0 - 2.5, 1e-12, 0.0);
    // A slot across it: its width only.
    CHECK_CLOSE(outward(plate({{{0.0, 0.5}, {0.0, 2.5}, 0.25}})).width_in({-10.0, 10.0}), 6.0 - 0.5, 1e-12, 0.0);
    // At 45 degrees through its middle: width times root 2.
    CHECK_CLOSE(outward(plate({{{-1.0, 0.0}, {1.0, 2.0}, 0.25}})).width_in({-10.0, 10.0}),
                6.0 - 0.5 * std::numbers::sqrt2, 1e-12, 0.0);
    // Half a hole at the span's end.
    CHECK_CLOSE(outward(plate({{{0.0, 1.0}, {0.0, 1.0}, 0.5}})).width_in({0.0, 2.0}), 1.5, 1e-12, 0.0);
}

TEST_CASE("A section through an anchor that would cross the foot is left out", "[unit]") {
    const std::array<Point, 1> beside{{{2.0, 0.5}}};
    const std::vector<PlateSection> sections = anchor_sections(square_foot, plate(), beside);
    // Parallel to y and square to the line from the axis; the one at y = 0.5 would cut the foot.
    REQUIRE(sections.size() == 2);
    CHECK_CLOSE(sections[0].offset_in, 2.0, 1e-12, 0.0);
    CHECK_CLOSE(sections[1].offset_in, std::hypot(2.0, 0.5), 1e-12, 0.0);
    CHECK(sections[0].anchor == std::optional<std::size_t>(0));
}

TEST_CASE("Anchors spread at 45 degrees and share a strip where they overlap", "[closed-form]") {
    const PlateSection section = outward(plate());
    const std::array<AnchorFootprint, 3> anchors{{{{-2.0, 3.0}, 0.5}, {{2.0, 3.0}, 0.5}, {{0.0, -3.0}, 0.5}}};
    // Arms of 2 in: spreads of 4 in about t = 2 and t = -2 (t runs towards -x), which just touch and are one strip.
    const std::array<double, 3> tension{{100.0, 300.0, 500.0}};
    const std::vector<PlateStrip> strips = anchor_strips(section, tension, anchors);
    REQUIRE(strips.size() == 1);
    CHECK_CLOSE(strips[0].moment_lb_in, 800.0, 1e-12, 0.0);
    CHECK_CLOSE(strips[0].width_in, 6.0, 1e-12, 0.0);
    CHECK(strips[0].anchors.size() == 2);
    CHECK_CLOSE(strips[0].intensity_lb(), 800.0 / 6.0, 1e-12, 0.0);
    PlateStrip nothing_left;
    nothing_left.moment_lb_in = 1.0;
    CHECK(nothing_left.intensity_lb() == std::numeric_limits<double>::infinity());
}

// The mean over a rim against 100,000 points of it.
TEST_CASE("A rim that a section crosses counts with what lies beyond", "[closed-form]") {
    constexpr int points = 100000;
    for (const double beyond : {-0.6, -0.3, 0.0, 0.2, 0.49, 0.5, 2.0}) {
        double sum = 0.0;
        for (int index = 0; index < points; ++index)
            sum += std::max(0.0, beyond + 0.5 * std::cos(2.0 * std::numbers::pi * (index + 0.5) / points));
        CHECK_CLOSE(mean_distance_beyond_in(beyond, 0.5), sum / points, 1e-8, 1e-9);
    }
    CHECK_CLOSE(mean_distance_beyond_in(0.0, 0.5), 0.5 / std::numbers::pi, 1e-12, 0.0);
    CHECK(mean_distance_beyond_in(-0.5, 0.5) == 0.0);
}

// 0.5.0 spread from the center alone: a hole whose center lay on the section left no metal, and the plate "no load
// path". An 11/16 in hole under a 1 1/4 in washer, its center 0.01 in past the section: the washer covers 1.25 in of
// the line, of which the hole takes 0.687.
TEST_CASE("A plate whose section passes through a hole carries what its washer spreads", "[closed-form][B6]") {
    const PlateHole hole{{0.0, 1.01}, {0.0, 1.01}, 0.34375};
    const PlateSection section = outward(plate({hole}));
    const std::array<AnchorFootprint, 1> anchor{{{{0.0, 1.01}, 0.625}}};
    const std::array<double, 1> tension{{1000.0}};
    const std::vector<PlateStrip> strips = anchor_strips(section, tension, anchor);
    REQUIRE(strips.size() == 1);
    CHECK_CLOSE(strips[0].width_in, 2.0 * 0.635 - 2.0 * std::sqrt(0.34375 * 0.34375 - 0.0001), 1e-12, 0.0);
    // Half of the rim lies beyond, 2/pi of its radius away: 1000 x 0.625/pi, and 5 lb in for the 0.01 in.
    CHECK_CLOSE(strips[0].moment_lb_in, 1000.0 * 0.625 / std::numbers::pi + 5.0, 1e-3, 0.0);
    CHECK(strips[0].anchors[0].across);
}

TEST_CASE("A strip changes by little when its anchor moves by little", "[property]") {
    const PlateSection section = outward(plate());
    const std::array<double, 1> tension{{1000.0}};
    double before_width = 0.0, before_moment = 0.0;
    for (double beyond = -0.5; beyond < 3.0; beyond += 0.001) {
        const std::array<AnchorFootprint, 1> anchor{{{{0.0, 1.0 + beyond}, 0.5}}};
        const std::vector<PlateStrip> strips = anchor_strips(section, tension, anchor);
        if (strips.empty()) continue;
        if (before_width > 0.0) {
            CHECK(std::abs(strips[0].width_in - before_width) <= 0.0021);
            CHECK(std::abs(strips[0].moment_lb_in - before_moment) <= 1.001);
        }
        before_width = strips[0].width_in;
        before_moment = strips[0].moment_lb_in;
    }
}
