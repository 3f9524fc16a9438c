#include "drawing/scene/view.h"

#include "support/compare.h"

using namespace toehold::drawing;

namespace {

constexpr double screen = 96.0 / 25.4;  ///< units for a millimetre at 96 to the inch

Scene plate_6_by_4() { return {"Plate", {}, {{-3.0, -2.0}, {3.0, 2.0}}, 10.0}; }

void check_same(Point actual, Point expected) {
    CHECK_CLOSE(actual.x, expected.x, 1e-12, 1e-9);
    CHECK_CLOSE(actual.y, expected.y, 1e-12, 1e-9);
}

}  // namespace

TEST_CASE("A view puts inches by its scale and paper's millimetres by its own, y down") {
    const View view{{1.0, 2.0}, {100.0, 50.0}, 20.0, 4.0};
    check_same(to_surface(view, Point{1.0, 2.0}), {100.0, 50.0});
    check_same(to_surface(view, Point{2.0, 3.0}), {120.0, 30.0});
    check_same(to_surface(view, Place{{2.0, 3.0}, {5.0, 1.0}}), {140.0, 26.0});
}

TEST_CASE("Back to the drawing undoes the way to the surface") {
    const View view{{-1.5, 0.25}, {311.0, 207.0}, 37.5, 3.0};
    for (const Point point : {Point{0.0, 0.0}, Point{4.0, -2.5}, Point{-100.0, 12.0}})
        check_same(to_drawing(view, to_surface(view, point)), point);
}

TEST_CASE("Fit shows all of the scene with its margin, and one side to the full") {
    const Area area{50.0, 20.0, 800.0, 600.0};
    const Scene scene = plate_6_by_4();
    const View view = fit(scene, area, screen);
    const double margin = scene.margin_mm * screen;
    const Point low = to_surface(view, scene.bounds.low), high = to_surface(view, scene.bounds.high);
    CHECK_CLOSE(low.x, area.left + margin, 0.0, 1e-9);  // 6 by 4 in 800 by 600 less 76: the width governs
    CHECK_CLOSE(high.x, area.left + area.width - margin, 0.0, 1e-9);
    CHECK(high.y > area.top + margin);
    CHECK(low.y < area.top + area.height - margin);
    CHECK_CLOSE(0.5 * (low.y + high.y), area.top + 0.5 * area.height, 0.0, 1e-9);
}

TEST_CASE("What has no size is shown at full size, what is a line by its length") {
    const Area area{0.0, 0.0, 300.0, 200.0};
    CHECK_CLOSE(fit({"Point", {}, {{5.0, 5.0}, {5.0, 5.0}}, 0.0}, area, screen).units_per_in, 96.0, 1e-12, 0.0);
    CHECK_CLOSE(fit({"Line", {}, {{0.0, 0.0}, {10.0, 0.0}}, 0.0}, area, screen).units_per_in, 30.0, 1e-12, 0.0);
    CHECK_CLOSE(fit({"Upright", {}, {{0.0, 0.0}, {0.0, 10.0}}, 0.0}, area, screen).units_per_in, 20.0, 1e-12, 0.0);
}

TEST_CASE("A window smaller than the margin still has a view") {
    CHECK(fit(plate_6_by_4(), {0.0, 0.0, 20.0, 20.0}, screen).units_per_in > 0.0);
}

TEST_CASE("A customary scale is the largest that fits") {
    // 6 in and 20 mm of margin on letter paper with 7.5 in to print on: 7.5 - 20/25.4 = 6.71 in, so 1:1.
    const double points = 72.0 / 25.4;
    const auto scale = [points](double width_in) {
        const Area area{0.0, 0.0, 72.0 * width_in, 1000.0};
        return fit_to_scale(plate_6_by_4(), area, points).units_per_in / 72.0;
    };
    CHECK_CLOSE(scale(7.5), 1.0, 1e-12, 0.0);
    CHECK_CLOSE(scale(6.5), 0.5, 1e-12, 0.0);
    CHECK_CLOSE(scale(3.0), 0.25, 1e-12, 0.0);
    CHECK_CLOSE(scale(6.0 + 20.0 / 25.4), 1.0, 1e-12, 0.0);  // just
    CHECK_CLOSE(fit_to_scale(plate_6_by_4(), {0.0, 0.0, 1e4, 1e4}, points).units_per_in, 144.0, 1e-12, 0.0);
}

TEST_CASE("What is larger than every customary scale is fitted") {
    const Scene bridge{"Bridge", {}, {{0.0, 0.0}, {1e5, 10.0}}, 0.0};
    const Area area{0.0, 0.0, 500.0, 500.0};
    CHECK(fit_to_scale(bridge, area, screen).units_per_in == fit(bridge, area, screen).units_per_in);
}

TEST_CASE("Zooming keeps the point under the hand") {
    const View view = fit(plate_6_by_4(), {0.0, 0.0, 400.0, 300.0}, screen);
    const Point hand{73.0, 211.0};
    const Point held = to_drawing(view, hand);
    const View nearer = zoomed(view, 1.25, hand);
    CHECK_CLOSE(nearer.units_per_in, 1.25 * view.units_per_in, 1e-12, 0.0);
    check_same(to_surface(nearer, held), hand);
}

TEST_CASE("Zooming ends at 50 times and at a 200th of full size, and holds the point even there") {
    const View view = fit(plate_6_by_4(), {0.0, 0.0, 400.0, 300.0}, screen);
    const Point hand{10.0, 20.0};
    const Point held = to_drawing(view, hand);
    const View near = zoomed(view, 1e6, hand), far = zoomed(view, 1e-6, hand);
    CHECK_CLOSE(near.units_per_in, 50.0 * 96.0, 1e-12, 0.0);
    CHECK_CLOSE(far.units_per_in, 96.0 / 200.0, 1e-12, 0.0);
    check_same(to_surface(near, held), hand);
    check_same(to_surface(far, held), hand);
}

TEST_CASE("Moving a view moves every point of it alike") {
    const View view{{0.0, 0.0}, {10.0, 10.0}, 5.0, 2.0};
    check_same(to_surface(moved(view, 7.0, -3.0), Point{1.0, 1.0}), {22.0, 2.0});
}

TEST_CASE("Words without room and a little air between their marks go aside, whatever the scale") {
    Text text;
    text.at = {{1.0, 0.0}, {0.0, 1.0}};
    text.across = Across::middle;
    text.aside = Aside{1.0, {{2.0, 0.0}, {1.6, 1.0}}, Across::left, Upright::bottom};
    // 1 in at 1:4 is 6.35 mm: words of 4.8 mm and 1.5 mm of air fit, of 4.9 mm do not.
    const View quarter{{}, {}, 25.4 / 4.0, 1.0};
    CHECK(placed(text, 4.8, quarter).across == Across::middle);
    CHECK(placed(text, 4.9, quarter).across == Across::left);
    CHECK(placed(text, 4.9, quarter).at == text.aside->at);
    CHECK_FALSE(placed(text, 4.9, quarter).aside);
    // At half size they fit.
    CHECK(placed(text, 4.9, {{}, {}, 25.4 / 2.0, 1.0}).at == text.at);
    text.aside.reset();
    CHECK(placed(text, 100.0, quarter).at == text.at);
}
