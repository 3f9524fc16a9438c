#include "xml/detail/parts.h"

#include <algorithm>
#include <array>

namespace toehold::xml {
namespace {

using format::phrase;

using units::Kind;

constexpr std::array<std::string_view, 3> outline_names{"rectangle", "circle", "polygon"};
constexpr std::array<std::string_view, 2> hole_names{"hole", "slot"};

model::Position read_position(ElementReader& reader) {
    return {reader.quantity("x", Kind::length, Sign::any), reader.quantity("y", Kind::length, Sign::any)};
}

/// An outline stands round the post's centroid unless the file says otherwise.
model::Position read_center(ElementReader& reader) {
    return {reader.optional_quantity("x", Kind::length, Sign::any).value_or(0.0),
            reader.optional_quantity("y", Kind::length, Sign::any).value_or(0.0)};
}

Element& position(Element& element, model::Position at) {
    return element.quantity("x", at.x_in, Kind::length).quantity("y", at.y_in, Kind::length);
}

Element& center(Element& element, model::Position at) {
    return at == model::Position{} ? element : position(element, at);
}

model::Outline read_rectangle(ElementReader& reader) {
    model::RectangleOutline outline;
    outline.width_in = reader.quantity("width", Kind::length, Sign::positive);
    outline.depth_in = reader.quantity("depth", Kind::length, Sign::positive);
    outline.corner_radius_in =
        reader.optional_quantity("corner-radius", Kind::length, Sign::not_negative).value_or(0.0);
    outline.center = read_center(reader);
    return outline;
}

model::Outline read_polygon(ElementReader& reader) {
    model::PolygonOutline outline;
    for (ElementReader& corner : reader.children("corner")) outline.corners.push_back(read_position(corner));
    return outline;
}

model::Outline read_outline(ElementReader& plate) {
    std::optional<ElementReader> reader = plate.one_of(outline_names);
    if (!reader || reader->name() == "rectangle") return reader ? read_rectangle(*reader) : model::Outline{};
    if (reader->name() == "polygon") return read_polygon(*reader);
    return model::CircleOutline{reader->quantity("diameter", Kind::length, Sign::positive), read_center(*reader)};
}

model::Slot read_slot(ElementReader& reader) {
    model::Slot slot;
    slot.length_in = reader.quantity("length", Kind::length, Sign::positive);
    slot.width_in = reader.quantity("width", Kind::length, Sign::positive);
    slot.angle_deg = reader.optional_quantity("angle", Kind::angle, Sign::any).value_or(0.0);
    return slot;
}

model::Hole read_hole(ElementReader& reader) {
    model::Hole hole;
    hole.id = reader.id();
    hole.center = read_position(reader);
    if (reader.name() == "slot") {
        hole.shape = read_slot(reader);
    } else {
        hole.shape = model::RoundHole{reader.quantity("diameter", Kind::length, Sign::positive)};
    }
    return hole;
}

Element outline_element(const model::RectangleOutline& outline) {
    Element element("rectangle");
    element.quantity("width", outline.width_in, Kind::length).quantity("depth", outline.depth_in, Kind::length);
    element.given_quantity("corner-radius", outline.corner_radius_in, Kind::length);
    return center(element, outline.center);
}

Element outline_element(const model::CircleOutline& outline) {
    Element element("circle");
    element.quantity("diameter", outline.diameter_in, Kind::length);
    return center(element, outline.center);
}

Element outline_element(const model::PolygonOutline& outline) {
    Element element("polygon");
    for (const model::Position& corner : outline.corners) {
        Element item("corner");
        element.child(position(item, corner));
    }
    return element;
}

Element hole_element(const model::Hole& hole) {
    const auto* const slot = std::get_if<model::Slot>(&hole.shape);
    Element element(slot == nullptr ? "hole" : "slot");
    position(element.text("id", hole.id), hole.center);
    if (slot == nullptr) {
        return element.quantity("diameter", std::get<model::RoundHole>(hole.shape).diameter_in, Kind::length);
    }
    element.quantity("length", slot->length_in, Kind::length).quantity("width", slot->width_in, Kind::length);
    return element.given_quantity("angle", slot->angle_deg, Kind::angle);
}

bool is_digest(const std::string& text) {
    const auto is_digit = [](char c) { return (c >= '0' && c <= '9') || (c >= 'a' && c <= 'f'); };
    return text.size() == 64 && std::all_of(text.begin(), text.end(), is_digit);
}

}  // namespace

model::Plate read_plate(ElementReader& reader, bool id_required) {
    model::Plate plate;
    plate.id = id_required ? reader.id() : reader.optional_id("id");
    plate.name = reader.optional_text("name");
    plate.metal = reader.id("metal");
    plate.thickness_in = reader.quantity("thickness", Kind::length, Sign::positive);
    plate.outline = read_outline(reader);
    for (ElementReader& hole : reader.children(hole_names)) plate.holes.push_back(read_hole(hole));
    return plate;
}

Element plate_element(const model::Plate& plate) {
    Element element("plate");
    element.optional_text("id", plate.id).optional_text("name", plate.name).text("metal", plate.metal);
    element.quantity("thickness", plate.thickness_in, Kind::length);
    element.child(std::visit([](const auto& outline) { return outline_element(outline); }, plate.outline));
    for (const model::Hole& hole : plate.holes) element.child(hole_element(hole));
    return element;
}

model::PlateReference read_plate_reference(ElementReader& reader) {
    model::PlateReference reference;
    reference.file = reader.text("file");
    reference.id = reader.id();
    reference.sha256 = reader.optional_text("sha256");
    if (reader.has("sha256") && !is_digest(reference.sha256)) {
        reader.report(phrase("sha256 is not a SHA-256 digest"), "sha256",
                      phrase("64 hexadecimal digits in lower case"));
    }
    return reference;
}

Element plate_reference_element(const model::PlateReference& reference) {
    Element element("plate-from");
    return element.text("file", reference.file).text("id", reference.id).optional_text("sha256", reference.sha256);
}

}  // namespace toehold::xml
