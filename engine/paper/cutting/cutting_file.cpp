#include "paper/cutting/plate_contours.h"
#include "paper/papers.h"

#include "drawing/annotation/labels.h"
#include "format/figures.h"

#include <algorithm>

namespace toehold::paper {
namespace {

constexpr const char* outline_layer = "OUTLINE";
constexpr const char* holes_layer = "HOLES";
constexpr const char* slots_layer = "SLOTS";
constexpr const char* mark_layer = "MARK";
constexpr const char* notes_layer = "NOTES";

/// Cut inside before outside: a nesting program sorts by color, red, yellow, green; the other two are not cut.
std::vector<dxf::Layer> layers() {
    return {{outline_layer, 3}, {holes_layer, 1}, {slots_layer, 2}, {mark_layer, 5}, {notes_layer, 7}};
}

std::vector<std::string> notes(const model::Plate& plate, const format::Locale& locale) {
    using format::phrase;
    const bool si = locale.system == units::System::si;
    const auto say = [&locale](const format::Phrase& words) { return format::text(words, locale); };
    return {
        say(si ? phrase("UNITS: MILLIMETERS") : phrase("UNITS: INCHES")),
        plate.name.empty() ? say(phrase("PLATE {}", plate.id)) : plate.name,
        say(phrase("THICKNESS {}, METAL {}", drawing::length_words(plate.thickness_in, locale.system), plate.metal)),
        say(phrase("CUT OUTLINE, HOLES AND SLOTS AT NET SIZE: KERF BY THE SHOP")),
        say(phrase("DO NOT CUT MARK AND NOTES. SEEN FROM ABOVE; 0,0 IS THE CENTER OF THE POST"))};
}

/// The hole's id where it is cut away, as large as the hole lets it be.
dxf::Words id_of(const model::Hole& hole, double scale) {
    constexpr double of_width = 0.5, character = 0.8;
    const auto* const slot = std::get_if<model::Slot>(&hole.shape);
    const double width_in = slot != nullptr ? slot->width_in : std::get<model::RoundHole>(hole.shape).diameter_in;
    const double characters = std::max(1.0, static_cast<double>(hole.id.size()));
    const double height_in = std::min(of_width * width_in, character * width_in / characters);
    return {mark_layer, {scale * hole.center.x_in, scale * hole.center.y_in}, scale * height_in, hole.id, true};
}

void add_origin(dxf::Drawing& file, double scale) {
    const double half = 0.25 * scale;
    file.entities.emplace_back(dxf::Line{mark_layer, {-half, 0.0}, {half, 0.0}});
    file.entities.emplace_back(dxf::Line{mark_layer, {0.0, -half}, {0.0, half}});
}

void add_notes(dxf::Drawing& file, const std::vector<std::string>& lines, double scale) {
    constexpr double height_in = 0.125, line_in = 0.22, below_in = 0.5;
    double down = scale * below_in;
    for (const std::string& words : lines) {
        const drawing::Point at{file.extents.low.x, file.extents.low.y - down};
        file.entities.emplace_back(dxf::Words{notes_layer, at, scale * height_in, words});
        down += scale * line_in;
    }
}

}  // namespace

std::string cutting_file(const model::Plate& plate, const format::Locale& locale,
                         const std::vector<std::string>& order) {
    constexpr int decimals_in = 6, decimals_mm = 5;
    const bool si = locale.system == units::System::si;
    const double scale = format::in_system(1.0, "in", locale.system).value;
    dxf::Drawing file;
    file.comments = notes(plate, locale);
    file.comments.insert(file.comments.end(), order.begin(), order.end());
    file.layers = layers();
    file.decimals = si ? decimals_mm : decimals_in;
    const drawing::Box box = outline_box_in(plate.outline);
    file.extents = {{scale * box.low.x, scale * box.low.y}, {scale * box.high.x, scale * box.high.y}};
    for (const model::Hole& hole : plate.holes) {
        const bool slot = std::holds_alternative<model::Slot>(hole.shape);
        file.entities.push_back(hole_contour(hole, scale, slot ? slots_layer : holes_layer));
    }
    file.entities.push_back(outline_contour(plate.outline, scale, outline_layer));
    for (const model::Hole& hole : plate.holes) file.entities.emplace_back(id_of(hole, scale));
    add_origin(file, scale);
    add_notes(file, file.comments, scale);
    return dxf::bytes(file);
}

}  // namespace toehold::paper
