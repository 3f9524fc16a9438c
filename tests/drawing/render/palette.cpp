#include "drawing/render/palette.h"

#include "drawing/render/surface.h"
#include "support/compare.h"

#include <algorithm>

using namespace toehold::drawing;
using toehold::test::contrast;
using toehold::test::luminance;

namespace {

constexpr Ground grounds[] = {Ground::paper, Ground::night, Ground::print};
constexpr Pen pens[] = {Pen::outline,   Pen::cut,    Pen::thin,     Pen::hidden, Pen::center, Pen::dimension,
                        Pen::grid,      Pen::demand, Pen::capacity, Pen::handle, Pen::snap,   Pen::holds,
                        Pen::selection, Pen::fails,  Pen::no_path,  Pen::missing};

Colour over(const Colour& colour, const Colour& ground) {
    const double t = colour.opacity;
    return {t * colour.red + (1 - t) * ground.red, t * colour.green + (1 - t) * ground.green,
            t * colour.blue + (1 - t) * ground.blue, 1.0};
}

}  // namespace

TEST_CASE("The measure of contrast is WCAG's own: 21 to 1 for black on white, 4.48 for #777777 on white") {
    CHECK_CLOSE(contrast({0, 0, 0, 1}, {1, 1, 1, 1}), 21.0, 1e-12, 0.0);
    const double grey = 0x77 / 255.0;
    CHECK_CLOSE(contrast({grey, grey, grey, 1}, {1, 1, 1, 1}), 4.48, 0.0, 0.005);
}

// WCAG 2.1, success criteria 1.4.6 (7:1, enhanced) for words, 1.4.3 (4.5:1) for demand, whose figures are words too,
// and 1.4.11 (3:1) for graphical objects.
TEST_CASE("Ink stands out from every ground, and from the areas it is written on") {
    for (const Ground ground : grounds) {
        for (const Pen pen : {Pen::outline, Pen::cut, Pen::thin, Pen::hidden, Pen::center, Pen::dimension, Pen::holds,
                              Pen::fails, Pen::no_path, Pen::missing}) {
            CHECK(contrast(stroke(pen, ground).colour, ground_colour(ground)) >= 7.0);
        }
        for (const Fill fill : {Fill::plate, Fill::metal_cut, Fill::wood_side, Fill::wood_end, Fill::wood_cut,
                                Fill::decking, Fill::demand_pale}) {
            const Colour area = over(fill_colour(fill, ground), ground_colour(ground));
            CHECK(contrast(stroke(Pen::outline, ground).colour, area) >= 7.0);
            CHECK(contrast(stroke(Pen::demand, ground).colour, area) >= 4.5);
        }
    }
}

TEST_CASE("Demand and what can be taken are read on every ground, capacity is seen on it") {
    for (const Ground ground : grounds) {
        CHECK(contrast(stroke(Pen::demand, ground).colour, ground_colour(ground)) >= 4.5);
        CHECK(contrast(stroke(Pen::handle, ground).colour, ground_colour(ground)) >= 4.5);
        CHECK(contrast(stroke(Pen::capacity, ground).colour, ground_colour(ground)) >= 3.0);
    }
}

TEST_CASE("In grey, demand and capacity still differ") {
    for (const Ground ground : grounds)
        CHECK(contrast(fill_colour(Fill::demand, ground), fill_colour(Fill::capacity, ground)) >= 1.5);
}

TEST_CASE("A status is told by its line and not by its colour") {
    for (const Ground ground : grounds) {
        const Stroke holds = stroke(Pen::holds, ground), fails = stroke(Pen::fails, ground);
        const Stroke no_path = stroke(Pen::no_path, ground), missing = stroke(Pen::missing, ground);
        CHECK(fails.colour == holds.colour);
        CHECK(no_path.colour == holds.colour);
        CHECK(missing.colour == holds.colour);
        CHECK((holds.dashes_mm.empty() && !holds.doubled));
        CHECK((fails.dashes_mm.empty() && fails.doubled && fails.width_mm > 2.0 * holds.width_mm));
        CHECK((!no_path.dashes_mm.empty() && no_path.dashes_mm.front() > 0.0));
        CHECK((!missing.dashes_mm.empty() && missing.dashes_mm.front() == 0.0));
    }
}

TEST_CASE("Every line has a width, and dashes that Cairo accepts") {
    for (const Ground ground : grounds) {
        for (const Pen pen : pens) {
            const Stroke line = stroke(pen, ground);
            CHECK(line.width_mm > 0.0);
            CHECK(line.colour.opacity > 0.0);
            CHECK(std::all_of(line.dashes_mm.begin(), line.dashes_mm.end(), [](double mm) { return mm >= 0.0; }));
            const bool some =
                std::any_of(line.dashes_mm.begin(), line.dashes_mm.end(), [](double mm) { return mm > 0.0; });
            CHECK((line.dashes_mm.empty() || some));
        }
    }
}

TEST_CASE("A cut edge is the heaviest of the plain lines, thin ones the lightest") {
    const auto width = [](Pen pen) { return stroke(pen, Ground::paper).width_mm; };
    CHECK(width(Pen::cut) > width(Pen::outline));
    CHECK(width(Pen::outline) > width(Pen::hidden));
    CHECK(width(Pen::hidden) > width(Pen::dimension));
}

TEST_CASE("Night is dark, paper and print are light, print is black on white") {
    CHECK(luminance(ground_colour(Ground::night)) < 0.02);
    CHECK(luminance(ground_colour(Ground::paper)) > 0.80);
    CHECK(ground_colour(Ground::print) == Colour{1, 1, 1, 1});
    CHECK(stroke(Pen::outline, Ground::print).colour == Colour{0, 0, 0, 1});
}

TEST_CASE("A level deepens steadily from nothing to demand, and no further") {
    for (const Ground ground : grounds) {
        CHECK(level_colour(0.0, ground).opacity == 0.0);
        CHECK_CLOSE(level_colour(0.5, ground).opacity, 0.5 * level_colour(1.0, ground).opacity, 1e-12, 0.0);
        CHECK(level_colour(7.0, ground) == level_colour(1.0, ground));
        CHECK(level_colour(-1.0, ground) == level_colour(0.0, ground));
    }
}

TEST_CASE("Larger words are larger") {
    CHECK(text_height_mm(TextSize::fine) < text_height_mm(TextSize::small));
    CHECK(text_height_mm(TextSize::small) < text_height_mm(TextSize::normal));
    CHECK(text_height_mm(TextSize::normal) < text_height_mm(TextSize::large));
    CHECK(text_height_mm(TextSize::large) < text_height_mm(TextSize::title));
}
