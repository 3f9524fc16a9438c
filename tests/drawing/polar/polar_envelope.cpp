#include "drawing/annotation/overlay.h"
#include "drawing/drawings.h"

#include "support/compare.h"
#include "support/parts.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <set>

using namespace toehold::drawing;
namespace parts = toehold::test::parts;
namespace model = toehold::model;

namespace {

constexpr double degree = std::numbers::pi / 180.0;

/// Tension as the cosine of the angle to the direction that pulls most: 400 lb at `peak_deg`.
PolarCurve cosine_curve(const std::string& id, double peak_deg, double largest_lb = 400.0) {
    PolarCurve curve{parts::anchor(id), {}};
    for (int i = 0; i < 72; ++i)
        curve.tension_lb.push_back(std::max(0.0, largest_lb * std::cos((5.0 * i - peak_deg) * degree)));
    return curve;
}

std::vector<PolarCurve> four() {
    return {cosine_curve("A", 45), cosine_curve("B", 135), cosine_curve("C", 225, 300.0), cosine_curve("D", 315)};
}

Overlay pushed(double direction_deg) {
    Overlay overlay;
    overlay.push = PushShown{direction_deg * degree, 200.0, 0.0, 42.0, false};
    return overlay;
}

std::vector<Path> curves(const Scene& scene, const model::PartId& part) {
    std::vector<Path> found;
    for (const Item& item : scene.items) {
        const auto* path = std::get_if<Path>(&item);
        if (path && path->part == part && path->closed) found.push_back(*path);
    }
    return found;
}

std::set<std::string> words(const Scene& scene) {
    std::set<std::string> found;
    for (const Item& item : scene.items) {
        if (const auto* text = std::get_if<Text>(&item)) found.insert(text->words);
    }
    return found;
}

}  // namespace

TEST_CASE("A curve stands in each direction as far out as its tension over the largest of all") {
    const Scene scene = polar_envelope(four(), pushed(90), {});
    const std::vector<Path> curve = curves(scene, parts::anchor("C"));
    REQUIRE(curve.size() == 1);
    const std::vector<Place>& line = curve.front().contours.at(0);
    REQUIRE(line.size() == 72);
    CHECK_CLOSE(line[45].at.x, 0.75 * std::cos(225 * degree), 1e-12, 1e-12);  // 300 of 400 lb
    CHECK_CLOSE(line[45].at.y, 0.75 * std::sin(225 * degree), 1e-12, 1e-12);
    CHECK_CLOSE(std::hypot(line[57].at.x, line[57].at.y), 0.375, 1e-12, 1e-12);  // 60 degrees off: half of it
    CHECK_CLOSE(std::hypot(line[0].at.x, line[0].at.y), 0.0, 0.0, 1e-12);
}

TEST_CASE("Curves differ in their lines and carry their letters, and one alone is selected") {
    const Scene scene = polar_envelope(four(), pushed(90), parts::anchor("B"));
    std::set<Pen> pens;
    for (const model::PartId& part : {parts::anchor("A"), parts::anchor("B"), parts::anchor("C"), parts::anchor("D")}) {
        REQUIRE(curves(scene, part).size() == 1);
        pens.insert(curves(scene, part).front().pen);
    }
    CHECK(pens.size() == 4);
    CHECK(curves(scene, parts::anchor("B")).front().pen == Pen::demand);
    CHECK(curves(scene, parts::anchor("B")).front().fill == Fill::demand_pale);
    CHECK(curves(scene, parts::anchor("A")).front().fill == Fill::none);
    for (const char* letter : {"A", "B", "C", "D"}) CHECK(words(scene).count(letter) == 1);
}

TEST_CASE("Letters of equal curves do not stand on each other") {
    const Scene scene =
        polar_envelope({cosine_curve("A", 90), cosine_curve("B", 90), cosine_curve("C", 90)}, pushed(90), {});
    std::vector<Point> places;
    for (const Item& item : scene.items) {
        const auto* text = std::get_if<Text>(&item);
        if (text && text->part.kind == model::PartKind::anchor) places.push_back(text->at.at);
    }
    REQUIRE(places.size() == 3);
    for (std::size_t i = 0; i < 3; ++i) {
        const Point one = places[i], next = places[(i + 1) % 3];
        CHECK(std::hypot(one.x - next.x, one.y - next.y) > 0.1);
        CHECK(std::abs(one.x) > 0.05);  // nor on the pointer
    }
}

TEST_CASE("Circles stand at even figures, in the reader's units") {
    CHECK(words(polar_envelope(four(), pushed(90), {})).count("100") == 1);
    CHECK(words(polar_envelope(four(), pushed(90), {})).count("400 lb") == 1);
    Overlay metric = pushed(90);
    metric.locale.system = toehold::units::System::si;
    CHECK(words(polar_envelope(four(), metric, {})).count("500") == 1);  // 400 lb are 1779 N
    CHECK(words(polar_envelope(four(), metric, {})).count("1779 N") == 1);
}

TEST_CASE("The pointer lies in the push's direction, says its degrees and can be taken") {
    for (const double direction : {0.0, 90.0, 137.0, 359.8}) {
        const Scene scene = polar_envelope(four(), pushed(direction), {});
        bool knob = false;
        for (const Item& item : scene.items) {
            const auto* circle = std::get_if<Circle>(&item);
            if (!circle || circle->part != parts::push) continue;
            knob = true;
            CHECK_CLOSE(circle->center.at.x, std::cos(direction * degree), 1e-12, 1e-12);
            CHECK_CLOSE(circle->center.at.y, std::sin(direction * degree), 1e-12, 1e-12);
        }
        CHECK(knob);
    }
    CHECK(words(polar_envelope(four(), pushed(137), {})).count("137\u00b0") == 1);
    CHECK(words(polar_envelope(four(), pushed(359.8), {})).count("0\u00b0") == 1);
    CHECK(words(polar_envelope(four(), pushed(-45), {})).count("315\u00b0") == 1);
}

TEST_CASE("The pointer crosses each curve at the tension under that push") {
    const Scene scene = polar_envelope(four(), pushed(90), {});
    int met = 0;
    for (const Item& item : scene.items) {
        const auto* circle = std::get_if<Circle>(&item);
        if (!circle || circle->part.kind != model::PartKind::anchor) continue;
        CHECK_CLOSE(circle->center.at.y, std::cos(45 * degree), 1e-12, 1e-12);
        ++met;
    }
    CHECK(met == 2);
}

TEST_CASE("Without curves, or with nothing pulled, there is the circle and the pointer") {
    PolarCurve slack{parts::anchor("A"), std::vector<double>(72, 0.0)};
    for (const std::vector<PolarCurve>& curves : {std::vector<PolarCurve>{}, std::vector<PolarCurve>{slack},
                                                  std::vector<PolarCurve>{{parts::anchor("A"), {}}}}) {
        const Scene scene = polar_envelope(curves, pushed(45), parts::anchor("A"));
        CHECK(words(scene) == std::set<std::string>{"OUTWARD", "along the rail", "45\u00b0"});
        CHECK(std::any_of(scene.items.begin(), scene.items.end(), [](const Item& item) {
            const auto* circle = std::get_if<Circle>(&item);
            return circle && circle->radius_in == 1.0;
        }));
    }
}

TEST_CASE("Without a push there is no pointer") {
    const Scene scene = polar_envelope(four(), {}, {});
    for (const Item& item : scene.items) {
        const auto* circle = std::get_if<Circle>(&item);
        CHECK((!circle || circle->part != parts::push));
    }
}
