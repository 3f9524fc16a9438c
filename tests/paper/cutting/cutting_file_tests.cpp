// The cutting file as an independent reader finds it, against the model and against areas in closed form.
#include "catalog/catalog.h"
#include "dxf_reading.h"
#include "paper/papers.h"
#include "support/compare.h"
#include "support/shipped.h"

#include <algorithm>
#include <numbers>

using namespace toehold;
using test::on_layer;
using test::read_dxf;
using test::ReadContour;
using test::ReadDxf;

namespace {

constexpr double pi = std::numbers::pi;

const std::vector<model::Plate>& stock_plates() { return test::shipped_catalog().stock_plates; }

/// Closed forms of the two outlines stock plates have, in2.
double outline_area(const model::Plate& plate) {
    if (const auto* const circle = std::get_if<model::CircleOutline>(&plate.outline))
        return 0.25 * pi * circle->diameter_in * circle->diameter_in;
    const auto& rectangle = std::get<model::RectangleOutline>(plate.outline);
    const double radius = rectangle.corner_radius_in;
    return rectangle.width_in * rectangle.depth_in - (4.0 - pi) * radius * radius;
}

model::Plate plate_with(model::Outline outline, std::vector<model::Hole> holes = {}) {
    model::Plate plate;
    plate.id = "sample";
    plate.name = "Sample plate, invented";
    plate.metal = "steel-a36";
    plate.thickness_in = 0.375;
    plate.outline = std::move(outline);
    plate.holes = std::move(holes);
    return plate;
}

ReadDxf cut(const model::Plate& plate, units::System system = units::System::us) {
    return read_dxf(paper::cutting_file(plate, {system}));
}

ReadContour outline_of(const ReadDxf& file) {
    const std::vector<ReadContour> outlines = on_layer(file, "OUTLINE");
    REQUIRE(outlines.size() == 1);
    CHECK(outlines.front().kind != "OPEN");
    return outlines.front();
}

void check_sound(const ReadDxf& file) {
    CHECK(file.version == "AC1009");
    CHECK(file.errors == 0);
    CHECK(file.fixes == 0);
    CHECK(file.unknown == 0);
    const std::vector<std::pair<std::string, int>> cut_layers = {{"OUTLINE", 3}, {"HOLES", 1}, {"SLOTS", 2}};
    for (const auto& [name, color] : cut_layers) {
        const auto found = std::find_if(file.layers.begin(), file.layers.end(),
                                        [layer = name](const auto& one) { return one.name == layer; });
        REQUIRE(found != file.layers.end());
        CHECK(found->color == color);
    }
    for (const ReadContour& contour : file.contours) CHECK(contour.kind != "OPEN");
}

void check_round_holes(const ReadDxf& file, const model::Plate& plate, double scale) {
    const std::vector<ReadContour> holes = on_layer(file, "HOLES");
    REQUIRE(holes.size() == plate.holes.size());
    for (std::size_t index = 0; index < holes.size(); ++index) {
        const model::Hole& hole = plate.holes[index];
        CHECK(holes[index].kind == "CIRCLE");
        CHECK_CLOSE(holes[index].x, scale * hole.center.x_in, 0.0, 1e-5);
        CHECK_CLOSE(holes[index].y, scale * hole.center.y_in, 0.0, 1e-5);
        CHECK_CLOSE(holes[index].diameter_or_arcs, scale * std::get<model::RoundHole>(hole.shape).diameter_in, 0.0,
                    1e-5);
    }
}

bool says(const ReadDxf& file, const std::string& words) {
    return std::any_of(file.texts.begin(), file.texts.end(), [&](const test::ReadText& text) {
        return text.layer == "NOTES" && text.words.find(words) != std::string::npos;
    });
}

}  // namespace

TEST_CASE("Every stock plate's cutting file is the plate at net size, in inches and in mm", "[oracle]") {
    REQUIRE(stock_plates().size() >= 10);
    for (const model::Plate& plate : stock_plates()) {
        for (const units::System system : {units::System::us, units::System::si}) {
            INFO(plate.id);
            const double scale = system == units::System::si ? 25.4 : 1.0;
            const ReadDxf file = cut(plate, system);
            check_sound(file);
            CHECK_CLOSE(outline_of(file).area, scale * scale * outline_area(plate), 1e-6, 0.0);
            check_round_holes(file, plate, scale);
            CHECK(on_layer(file, "SLOTS").empty());
            CHECK(file.lines == 2);
            CHECK(says(file, system == units::System::si ? "UNITS: MILLIMETERS" : "UNITS: INCHES"));
            CHECK(says(file, "KERF BY THE SHOP"));
        }
    }
}

TEST_CASE("Round corners are cut as true arcs", "[oracle][closed-form]") {
    // 6 x 8 in, corners 1/2 in, off the origin: 48 - (4 - pi) / 4 = 47.7854 in2, four arcs.
    model::RectangleOutline rectangle{6.0, 8.0, 0.5, {0.25, -0.5}};
    const ReadDxf file = cut(plate_with(rectangle));
    check_sound(file);
    const ReadContour outline = outline_of(file);
    CHECK_CLOSE(outline.area, 48.0 - (4.0 - pi) * 0.25, 1e-7, 0.0);
    CHECK_CLOSE(outline.diameter_or_arcs, 4.0, 0.0, 0.0);
    CHECK_CLOSE(outline.x, 0.25, 0.0, 1e-6);
    CHECK_CLOSE(outline.y, -0.5, 0.0, 1e-6);
    CHECK_CLOSE(file.low_x, -2.75, 0.0, 1e-6);
    CHECK_CLOSE(file.low_y, -4.5, 0.0, 1e-6);
    CHECK_CLOSE(file.high_x, 3.25, 0.0, 1e-6);
    CHECK_CLOSE(file.high_y, 3.5, 0.0, 1e-6);
}

TEST_CASE("Corners as round as they can be leave no side without length", "[oracle][closed-form]") {
    // 4 x 6 in with 2 in corners: a circle of 4 in and a strip of 4 x 2 in. 4 x 4 with 2 in corners: the circle alone.
    CHECK_CLOSE(outline_of(cut(plate_with(model::RectangleOutline{4.0, 6.0, 2.0, {}}))).area, 4.0 * pi + 8.0, 1e-7,
                0.0);
    const ReadDxf round = cut(plate_with(model::RectangleOutline{4.0, 4.0, 2.0, {}}));
    check_sound(round);
    CHECK_CLOSE(outline_of(round).area, 4.0 * pi, 1e-6, 0.0);
}

TEST_CASE("A polygon is cut counter-clockwise whatever its sense", "[oracle][closed-form]") {
    // An L of 6 x 6 in with a leg of 2 in: 36 - 16 = 20 in2.
    std::vector<model::Position> corners = {{-1, -1}, {5, -1}, {5, 1}, {1, 1}, {1, 5}, {-1, 5}};
    const ReadContour one = outline_of(cut(plate_with(model::PolygonOutline{corners})));
    std::reverse(corners.begin(), corners.end());
    const ReadContour other = outline_of(cut(plate_with(model::PolygonOutline{corners})));
    CHECK_CLOSE(one.area, 20.0, 1e-9, 0.0);
    CHECK_CLOSE(other.area, 20.0, 1e-9, 0.0);
    CHECK_CLOSE(one.diameter_or_arcs, 0.0, 0.0, 0.0);
}

TEST_CASE("A slot aslant keeps its area, its middle and its two round ends", "[oracle][closed-form]") {
    // 1 1/2 x 7/16 in: 17/16 x 7/16 + pi (7/32)^2 = 0.61514 in2.
    for (const double angle_deg : {0.0, 30.0, 90.0, -45.0, 135.0}) {
        INFO(angle_deg);
        const model::Plate plate = plate_with(model::RectangleOutline{6.0, 6.0, 0.0, {}},
                                              {{"A", {1.25, -0.75}, model::Slot{1.5, 0.4375, angle_deg}}});
        const ReadDxf file = cut(plate);
        check_sound(file);
        CHECK(on_layer(file, "HOLES").empty());
        const std::vector<ReadContour> slots = on_layer(file, "SLOTS");
        REQUIRE(slots.size() == 1);
        CHECK_CLOSE(slots.front().area, 1.0625 * 0.4375 + pi * 0.21875 * 0.21875, 1e-5, 0.0);
        CHECK_CLOSE(slots.front().x, 1.25, 0.0, 1e-6);
        CHECK_CLOSE(slots.front().y, -0.75, 0.0, 1e-6);
        CHECK_CLOSE(slots.front().diameter_or_arcs, 2.0, 0.0, 0.0);
    }
}

TEST_CASE("Words of the cutting file stand clear of the part, ids in their holes", "[oracle]") {
    model::Plate plate =
        plate_with(model::RectangleOutline{6.0, 6.0, 0.0, {}},
                   {{"A1", {-2.0, -2.0}, model::RoundHole{0.4375}}, {"B", {2.0, 2.0}, model::RoundHole{0.5625}}});
    plate.name = "Plaque 100 %% d\xC3\xA9tail\nof two lines";
    const ReadDxf file = cut(plate);
    check_sound(file);
    for (const test::ReadText& text : file.texts) UNSCOPED_INFO(text.words);
    CHECK(says(file, "Plaque 100 % % d\xC3\xA9tail of two lines"));
    int marks = 0;
    for (const test::ReadText& text : file.texts) {
        if (text.layer == "NOTES") CHECK(text.y < file.low_y - 0.1);
        if (text.layer == "MARK") ++marks;
    }
    CHECK(marks == 2);
}

TEST_CASE("Nothing in the cutting file depends on when or where it is made", "[property]") {
    const model::Plate& plate = stock_plates().front();
    const std::string bytes = paper::cutting_file(plate, {units::System::us});
    CHECK(bytes == paper::cutting_file(plate, {units::System::us}));
    CHECK(bytes.find("nan") == std::string::npos);
    CHECK(bytes.find("-0.000000\r\n") == std::string::npos);
}
