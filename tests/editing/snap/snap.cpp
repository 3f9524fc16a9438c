// What a point catches on, held to places worked by hand.
#include "editing/snap.h"
#include "editing/edits.h"

#include "editing/samples.h"
#include "support/compare.h"

#include <cmath>
#include <limits>

using namespace toehold;
using editing::Snapped;
using editing::SnapRules;

TEST_CASE("a length goes to the nearest step", "[unit]") {
    CHECK_CLOSE(editing::to_step(1.30, 0.125), 1.25, 0.0, 1e-12);
    CHECK_CLOSE(editing::to_step(-1.32, 0.125), -1.375, 0.0, 1e-12);
    CHECK_CLOSE(editing::to_step(1.3, 0.0), 1.3, 0.0, 0.0);
    CHECK(std::isfinite(editing::to_step(1e300, 1e-300)));
}

TEST_CASE("each direction catches for itself", "[unit]") {
    const model::Plate plate = on_deck(test::square_base()).plate;
    const Snapped snapped = editing::snap({3.93, 1.07}, plate, "A", {});
    CHECK(snapped.at == drawing::Point{4.0, 1.125});  // x in line with B; y to the step of 1/8
    REQUIRE(snapped.lines.size() == 1);
    CHECK(format::english(snapped.lines[0].why) == "in line with hole B");
    CHECK(snapped.lines[0].from == drawing::Point{4.0, -4.0});
    CHECK(snapped.lines[0].to == snapped.at);
}

TEST_CASE("the mirror image of another hole catches", "[unit]") {
    model::Plate plate = on_deck(test::square_base()).plate;
    plate.holes = {{"A", {1.3, 2.7}, model::RoundHole{0.5}}};
    const Snapped snapped = editing::snap({-1.25, 2.65}, plate, "B", {});
    CHECK(snapped.at == drawing::Point{-1.3, 2.7});
    REQUIRE(snapped.lines.size() == 2);
    CHECK(format::english(snapped.lines[0].why) == "mirror of hole A");
    CHECK(format::english(snapped.lines[1].why) == "in line with hole A");
    // Met exactly, the line comes from the hole itself, across the axis.
    CHECK(snapped.lines[0].from == drawing::Point{1.3, 2.7});
}

TEST_CASE("the post's axes catch, and the hole under the hand does not", "[unit]") {
    model::Plate plate = on_deck(test::square_base()).plate;
    plate.holes = {{"A", {0.05, 1.3}, model::RoundHole{0.5}}};
    const Snapped snapped = editing::snap({0.06, 1.31}, plate, "A", {});
    CHECK(snapped.at == drawing::Point{0.0, 1.25});
    REQUIRE(snapped.lines.size() == 1);
    CHECK(format::english(snapped.lines[0].why) == "post's axis");
}

TEST_CASE("another hole's edge distance catches last", "[unit]") {
    model::Plate plate = on_deck(test::square_base()).plate;
    plate.outline = model::RectangleOutline{10.0, 8.0, 0.0, {}};  // y from -4 to 4
    plate.holes = {{"A", {-3.7, 0.3}, model::RoundHole{0.5}}};    // 1.3 in from the edge at -5
    const Snapped snapped = editing::snap({2.0, -2.72}, plate, {}, {});
    CHECK_CLOSE(snapped.at.y, -2.7, 0.0, 1e-12);  // -4 + 1.3
    REQUIRE(snapped.lines.size() == 1);
    CHECK(format::english(snapped.lines[0].why) == "1.3 in from the edge");
    CHECK(snapped.lines[0].from == drawing::Point{2.0, -4.0});
}

TEST_CASE("out of reach, and with the rules off, only the step counts", "[unit]") {
    const model::Plate plate = on_deck(test::square_base()).plate;
    CHECK(editing::snap({3.81, 0.0}, plate, "A", {}).at.x == 3.75);
    CHECK(editing::snap({3.97, 0.02}, plate, "A", {false, 0.0, 0.1}).at == drawing::Point{3.97, 0.02});
    CHECK(editing::snap({3.93, 0.02}, plate, "A", {false, 0.25, 0.1}).at == drawing::Point{4.0, 0.0});
}

TEST_CASE("what is no point does not become one that is none", "[bad-input]") {
    const double nan = std::numeric_limits<double>::quiet_NaN();
    const Snapped snapped = editing::snap({nan, 1e300}, on_deck(test::square_base()).plate, "A", {});
    CHECK(std::isfinite(snapped.at.x));
    CHECK(std::isfinite(snapped.at.y));
}
