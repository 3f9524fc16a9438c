// Sections and strips of plates whose chords and widths are known from drawing them.
#include "mechanics/plate_strip/strip.h"

#include "mechanics/shapes.h"
#include "support/compare.h"

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
    const std::array<Point, 3> anchors{{{-2.0, 3.0}, {2.0, 3.0}, {0.0, -3.0}}};
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
