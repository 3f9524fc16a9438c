#include "drawing/render/painter.h"

#include "drawing/drawings.h"
#include "drawing/render/contour.h"
#include "drawing/render/sample_sheet.h"
#include "drawing/render/subscripts.h"
#include "drawing/render/surface.h"
#include "support/compare.h"
#include "support/parts.h"
#include "support/temporary_folder.h"

#include <cairo-pdf.h>
#include <cairo-svg.h>

#include <algorithm>
#include <filesystem>
#include <utility>

using namespace toehold;
namespace parts = toehold::test::parts;
using namespace toehold::drawing;
using toehold::test::Picture;
using toehold::test::rectangle;

namespace {

constexpr Ground grounds[] = {Ground::paper, Ground::night, Ground::print};
constexpr double screen = 96.0 / 25.4;
/// 20 units an inch, the origin in the middle of a picture of 200 by 200.
const View middle{{0.0, 0.0}, {100.0, 100.0}, 20.0, screen};

Scene scene_of(std::vector<Item> items) { return {"", std::move(items), {{-5.0, -5.0}, {5.0, 5.0}}, 0.0}; }

Picture painted(const Scene& scene, Ground ground, const Emphasis& emphasis = {}) {
    Picture picture(200, 200);
    paint_ground(picture.cairo(), {0.0, 0.0, 200.0, 200.0}, ground);
    paint(picture.cairo(), scene, middle, ground, emphasis);
    return picture;
}

/// Colours on eight bits, so equal to half a step.
bool same(const Colour& one, const Colour& other, double tolerance = 0.6 / 255.0) {
    return std::abs(one.red - other.red) <= tolerance && std::abs(one.green - other.green) <= tolerance &&
           std::abs(one.blue - other.blue) <= tolerance;
}

/// How many pixels of the column or row differ from the ground.
int inked_along(const Picture& picture, Ground ground, int x_from, int x_to, int y) {
    int inked = 0;
    for (int x = x_from; x < x_to; ++x) inked += same(picture.at(x, y), ground_colour(ground)) ? 0 : 1;
    return inked;
}

int runs_of_ink(const Picture& picture, Ground ground, int x_from, int x_to, int y) {
    int runs = 0;
    bool before = false;
    for (int x = x_from; x < x_to; ++x) {
        const bool ink = !same(picture.at(x, y), ground_colour(ground));
        if (ink && !before) ++runs;
        before = ink;
    }
    return runs;
}

Path line(double x_from, double y_from, double x_to, double y_to, Pen pen, model::PartId part = {}) {
    return {{{{{x_from, y_from}, {}}, {{x_to, y_to}, {}}}}, false, pen, Fill::none, std::move(part)};
}

Text text_at(double x, double y, std::string words) {
    Text text;
    text.at = {{x, y}, {}};
    text.words = std::move(words);
    return text;
}

}  // namespace

TEST_CASE("The ground is the palette's, and an area its fill's") {
    for (const Ground ground : grounds) {
        const Picture picture = painted(scene_of({rectangle(-2, -2, 2, 2, Pen::none, Fill::plate)}), ground);
        CHECK(same(picture.at(3, 3), ground_colour(ground)));
        CHECK(same(picture.at(100, 100), fill_colour(Fill::plate, ground)));
    }
}

TEST_CASE("A thick line is its ink in its middle, and as wide as its millimetres") {
    for (const Ground ground : grounds) {
        const Picture picture = painted(scene_of({line(0, -4, 0, 4, Pen::fails)}), ground);
        // Two lines of 0.6 mm, 2.27 pixels each, centres 0.8 of that to either side of 100.5: ink at 98.7 and 102.3.
        CHECK(same(picture.at(98, 100), stroke(Pen::fails, ground).colour, 0.2));
        CHECK(same(picture.at(102, 100), stroke(Pen::fails, ground).colour, 0.2));
        CHECK(runs_of_ink(picture, ground, 80, 120, 100) <= 2);
        CHECK(inked_along(picture, ground, 80, 120, 100) <= 8);
    }
}

TEST_CASE("A frame that fails has two lines on every side, one that holds has one") {
    const Ground ground = Ground::print;
    const auto frame = [](Pen pen) { return scene_of({rectangle(-3, -3, 3, 3, pen, Fill::none)}); };
    Picture wide(800, 800);
    const View large{{0.0, 0.0}, {400.0, 400.0}, 80.0, 4.0 * screen};
    paint_ground(wide.cairo(), {0, 0, 800, 800}, ground);
    paint(wide.cairo(), frame(Pen::fails), large, ground);
    CHECK(runs_of_ink(wide, ground, 0, 800, 400) == 4);
    CHECK(runs_of_ink(painted(frame(Pen::holds), ground), ground, 0, 200, 100) == 2);
}

TEST_CASE("Broken and dotted lines are broken") {
    const Ground ground = Ground::print;
    for (const Pen pen : {Pen::hidden, Pen::center, Pen::no_path, Pen::missing, Pen::snap}) {
        const Picture picture = painted(scene_of({line(-4.5, 0.0, 4.5, 0.0, pen)}), ground);
        CHECK(runs_of_ink(picture, ground, 5, 195, 100) >= 5);
    }
    CHECK(runs_of_ink(painted(scene_of({line(-4.5, 0.0, 4.5, 0.0, Pen::outline)}), ground), ground, 5, 195, 100) == 1);
}

TEST_CASE("A hole in an area shows what lies below") {
    Path ring = rectangle(-4, -4, 4, 4, Pen::none, Fill::demand);
    ring.contours.push_back(rectangle(-1, -1, 1, 1, Pen::none, Fill::none).contours.front());
    const Picture picture = painted(scene_of({ring}), Ground::paper);
    CHECK(same(picture.at(100, 100), ground_colour(Ground::paper)));
    CHECK(same(picture.at(50, 100), fill_colour(Fill::demand, Ground::paper)));
}

TEST_CASE("Hatching stays inside its shape and leaves the area to be seen") {
    const Ground ground = Ground::paper;
    for (const Fill fill : {Fill::metal_cut, Fill::wood_side, Fill::wood_end, Fill::wood_cut, Fill::decking}) {
        Path triangle{{{{{-4, -4}, {}}, {{4, -4}, {}}, {{-4, 4}, {}}}}, true, Pen::none, fill, {}};
        const Picture picture = painted(scene_of({triangle}), ground);
        int lines = 0, plain = 0;
        for (int x = 25; x < 100; ++x) {
            for (int y = 105; y < 175; ++y) (same(picture.at(x, y), fill_colour(fill, ground)) ? plain : lines) += 1;
        }
        CHECK(lines > 100);
        CHECK(plain > 1000);
        for (int i = 22; i < 178; ++i) CHECK(same(picture.at(i + 3, i - 3), ground_colour(ground)));  // the slant
    }
}

TEST_CASE("A shading is linear in its levels") {
    const Ground ground = Ground::print;
    Shading shading{{{-4, -4}, {4, -4}, {4, 4}, {-4, 4}}, {0.0, 1.0, 1.0, 0.0}, {{0, 1, 2}, {0, 2, 3}}};
    const Picture picture = painted(scene_of({shading}), ground);
    for (const int x : {30, 65, 100, 140, 170}) {
        const double level = (x + 0.5 - 20.0) / 160.0;
        const Colour ink = level_colour(level, ground);
        const Colour expected{1 + ink.opacity * (ink.red - 1), 1 + ink.opacity * (ink.green - 1),
                              1 + ink.opacity * (ink.blue - 1), 1};
        CHECK(same(picture.at(x, 60), expected, 2.5 / 255.0));
        CHECK(same(picture.at(x, 140), expected, 2.5 / 255.0));
    }
    CHECK(same(picture.at(10, 100), ground_colour(ground)));
}

TEST_CASE("Triangles side by side leave no gap and no seam") {
    const Picture picture = painted(scene_of({test::sloping(-4, -4, 8, 23)}), Ground::print);
    for (int i = 25; i < 175; ++i) {
        const double one = picture.at(i, 100).green, next = picture.at(i + 1, 100).green;
        CHECK(std::abs(one - next) < 0.02);
    }
}

TEST_CASE("Words stand where they are told, by their capitals") {
    const Ground ground = Ground::print;
    Text text = text_at(0, 0, "HHHH");
    text.size = TextSize::title;
    const double capital = 0.729 * text_height_mm(text.size) * screen;  // DejaVu Sans, OS/2 table: 1493/2048
    const auto top_and_bottom = [&](Upright upright) {
        text.upright = upright;
        const Picture picture = painted(scene_of({text}), ground);
        std::pair<int, int> rows{-1, -1};
        for (int y = 0; y < 200; ++y) {
            if (inked_along(picture, ground, 0, 200, y) == 0) continue;
            if (rows.first < 0) rows.first = y;
            rows.second = y + 1;
        }
        return rows;
    };
    CHECK_CLOSE(top_and_bottom(Upright::bottom).second, 100.0, 0.0, 1.1);
    CHECK_CLOSE(top_and_bottom(Upright::bottom).first, 100.0 - capital, 0.0, 1.1);
    CHECK_CLOSE(top_and_bottom(Upright::top).first, 100.0, 0.0, 1.1);
    CHECK_CLOSE(top_and_bottom(Upright::middle).first, 100.0 - 0.5 * capital, 0.0, 1.1);
}

TEST_CASE("A patch of paper hides the line under words") {
    Text text = text_at(0, 0, "i i");
    text.across = Across::middle;
    text.upright = Upright::middle;
    const auto ink_beside_letters = [&text](bool on_paper) {
        text.on_paper = on_paper;
        const Picture picture = painted(scene_of({line(-4, 0, 4, 0, Pen::cut), text}), Ground::print);
        return 1.0 - picture.at(100, 100).green;  // between the letters, on the line
    };
    CHECK(ink_beside_letters(false) > 0.6);
    CHECK(ink_beside_letters(true) < 0.2);
}

TEST_CASE("Symbols become subscripts, and nothing in them is taken for markup") {
    CHECK(math_markup("F_c,perp'") == "F<sub>c,perp</sub>&apos;");
    CHECK(math_markup("W_{2 & 3} < T_1") == "W<sub>2 &amp; 3</sub> &lt; T_1");
    CHECK(math_markup("C_M C_t") == "C<sub>M</sub> C<sub>t</sub>");
    CHECK(math_markup("x_{open") == "x_{open");
    CHECK(math_markup("ends in _") == "ends in _");
    CHECK(math_markup("t_a, then") == "t<sub>a</sub>, then");
    CHECK(math_markup("") == "");
}

TEST_CASE("What is selected stands in a halo, what is pointed at is heavier") {
    const Ground ground = Ground::print;
    const Scene scene = scene_of({Circle{{}, 2.0, 0.0, Pen::outline, Fill::paper, parts::anchor("A")}});
    const Picture plain = painted(scene, ground);
    const Picture selected = painted(scene, ground, {{parts::anchor("A")}, {}});
    const Picture pointed = painted(scene, ground, {{}, parts::anchor("A")});
    CHECK(same(plain.at(100 + 43, 100), ground_colour(ground)));
    CHECK(!same(selected.at(100 + 43, 100), ground_colour(ground), 0.1));
    CHECK(same(selected.at(100, 100), ground_colour(ground)));
    const auto ink = [&](const Picture& picture) {
        double sum = 0.0;
        for (int x = 130; x < 150; ++x) sum += 1.0 - picture.at(x, 100).green;
        return sum;
    };
    CHECK(ink(pointed) > 1.4 * ink(plain));
}

TEST_CASE("What runs on far beyond the window is painted and costs nothing") {
    const Scene scene = scene_of({rectangle(-1.0, -1e4, 1.0, 1e4, Pen::hidden, Fill::wood_side)});
    const View near{{0.0, 0.0}, {100.0, 100.0}, 4000.0, screen};
    Picture picture(200, 200);
    paint_ground(picture.cairo(), {0, 0, 200, 200}, Ground::paper);
    paint(picture.cairo(), scene, near, Ground::paper);
    CHECK(same(picture.at(100, 100), fill_colour(Fill::wood_side, Ground::paper), 0.4));
    CHECK(same(painted(scene, Ground::paper).at(10, 100), ground_colour(Ground::paper)));
}

TEST_CASE("A surface in error is said, not painted on") {
    cairo_t* const broken = cairo_create(cairo_image_surface_create(CAIRO_FORMAT_ARGB32, -1, -1));
    CHECK_THROWS_AS(paint(broken, scene_of({}), middle, Ground::paper), std::runtime_error);
    CHECK_THROWS_AS(paint_ground(broken, {0, 0, 1, 1}, Ground::paper), std::runtime_error);
    cairo_destroy(broken);
}

TEST_CASE("Painting leaves the surface's state as it was") {
    const Picture picture(50, 50);
    cairo_set_line_width(picture.cairo(), 7.25);
    cairo_translate(picture.cairo(), 3.0, 4.0);
    paint(picture.cairo(), test::sample_sheet(), middle, Ground::night);
    cairo_matrix_t matrix;
    cairo_get_matrix(picture.cairo(), &matrix);
    CHECK(cairo_get_line_width(picture.cairo()) == 7.25);
    CHECK(matrix.x0 == 3.0);
    CHECK(matrix.xx == 1.0);
}

TEST_CASE("The sheet of samples and the polar envelope are painted on every ground and every kind of surface") {
    const test::TemporaryFolder folder;
    const Scene scene = test::sample_sheet();
    const Area area{0.0, 0.0, 900.0, 700.0};
    for (const Ground ground : grounds) {
        Picture picture(900, 700);
        paint_ground(picture.cairo(), area, ground);
        paint(picture.cairo(), scene, fit(scene, area, screen), ground, {{parts::anchor("A")}, parts::anchor("B")});
        CHECK(same(picture.at(2, 2), ground_colour(ground)));
        const auto file = folder.path() / ("samples-" + std::to_string(static_cast<int>(ground)) + ".png");
        picture.write(file);
        CHECK(std::filesystem::file_size(file) > 10000);
    }
    const auto pdf = folder.path() / "samples.pdf", svg = folder.path() / "samples.svg";
    for (cairo_surface_t* surface :
         {cairo_pdf_surface_create(pdf.c_str(), 900, 700), cairo_svg_surface_create(svg.c_str(), 900, 700)}) {
        cairo_t* const cairo = cairo_create(surface);
        CHECK_NOTHROW(paint(cairo, scene, fit(scene, area, 72.0 / 25.4), Ground::print));
        cairo_destroy(cairo);
        cairo_surface_finish(surface);
        CHECK(cairo_surface_status(surface) == CAIRO_STATUS_SUCCESS);
        cairo_surface_destroy(surface);
    }
    CHECK(std::filesystem::file_size(pdf) > 5000);
    CHECK(std::filesystem::file_size(svg) > 5000);
}

TEST_CASE("The part under a point is the last painted there") {
    const Scene scene = scene_of({rectangle(-4, -4, 4, 4, Pen::outline, Fill::plate, parts::plate),
                                  Circle{{{-2, 2}, {}}, 0.5, 0.0, Pen::outline, Fill::none, parts::anchor("A")},
                                  rectangle(-3, -3, 3, -1, Pen::hidden, Fill::none, parts::block("B1")),
                                  line(0, 0, 4, 0, Pen::demand, parts::push)});
    const auto at = [&scene](double x, double y) {
        return part_at(scene, middle, to_surface(middle, Point{x, y}), 3.0);
    };
    CHECK(at(0, 3) == parts::plate);
    CHECK(at(-2, 2) == parts::anchor("A"));    // in the middle, though it is not filled
    CHECK(at(-2.6, 2) == parts::anchor("A"));  // two units off its line
    CHECK(at(-2.7, 2) == parts::plate);        // four
    CHECK(at(0, -2) == parts::plate);          // inside a shape that is not filled
    CHECK(at(0, -1.1) == parts::block("B1"));  // on its line
    CHECK(at(2, 0.1) == parts::push);
    CHECK(at(4.1, 3) == parts::plate);  // within reach of its edge
    CHECK(at(4.5, 3) == model::PartId{});
}

TEST_CASE("A hole in an area is not the area; nothing is hit without a part or without ink") {
    Path ring = rectangle(-4, -4, 4, 4, Pen::none, Fill::plate, parts::plate);
    ring.contours.push_back(rectangle(-2, -2, 2, 2, Pen::none, Fill::none).contours.front());
    const Scene scene = scene_of({ring, rectangle(-1, -1, 1, 1, Pen::outline, Fill::paper),
                                  rectangle(-4, -4, 4, 4, Pen::none, Fill::none, parts::anchor("ghost"))});
    CHECK(part_at(scene, middle, to_surface(middle, Point{0, 0}), 2.0) == model::PartId{});
    CHECK(part_at(scene, middle, to_surface(middle, Point{3, 3}), 2.0) == parts::plate);
}

TEST_CASE("Words are hit where they stand, aslant too") {
    Text text = text_at(0, 0, "300 lb");
    text.part = parts::anchor("C");
    const auto hit = [&text](double right, double up) {
        return part_at(scene_of({text}), middle, {100.0 + right, 100.0 - up}, 1.0) == parts::anchor("C");
    };
    CHECK(hit(20, 4));
    CHECK(!hit(-5, 4));
    CHECK(!hit(20, -6));
    text.angle_deg = 90.0;
    CHECK(hit(-4, 20));
    CHECK(!hit(20, 4));
    text.angle_deg = 0.0;
    text.across = Across::right;
    CHECK(hit(-20, 4));
    CHECK(!hit(20, 4));
}

TEST_CASE("The line beside a square is a square, larger on one side and smaller on the other") {
    const render::Contour square = {{0, 0}, {10, 0}, {10, 10}, {0, 10}};
    const Box one = render::bounds({render::beside(square, true, 1.0)}),
              other = render::bounds({render::beside(square, true, -1.0)});
    const Box outer = one.low.x < other.low.x ? one : other, inner = one.low.x < other.low.x ? other : one;
    CHECK_CLOSE(outer.low.x, -1.0, 0.0, 1e-12);
    CHECK_CLOSE(outer.high.y, 11.0, 0.0, 1e-12);
    CHECK_CLOSE(inner.low.y, 1.0, 0.0, 1e-12);
    CHECK_CLOSE(inner.high.x, 9.0, 0.0, 1e-12);
}

TEST_CASE("Distances to a line and insides of areas are those of plain geometry") {
    const render::Contour triangle = {{0, 0}, {4, 0}, {0, 3}};
    CHECK_CLOSE(render::distance({2, -1}, triangle, false), 1.0, 1e-12, 0.0);
    CHECK_CLOSE(render::distance({0, 0}, {{4, 0}, {0, 3}}, false), 2.4, 1e-12, 0.0);  // legs 3 and 4: height 12/5
    CHECK_CLOSE(render::distance({7, 4}, triangle, false), 5.0, 1e-12, 0.0);
    CHECK_CLOSE(render::distance({-1, 1}, triangle, false), std::sqrt(2.0), 1e-12, 0.0);  // open: no third side
    CHECK_CLOSE(render::distance({-1, 1}, triangle, true), 1.0, 1e-12, 0.0);
    CHECK(render::inside({1, 1}, {triangle}));
    CHECK(!render::inside({3, 2}, {triangle}));
}
