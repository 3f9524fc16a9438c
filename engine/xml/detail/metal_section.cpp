#include "xml/detail/metal_section.h"

#include <optional>

namespace toehold::xml {
namespace {

using units::Kind;

double read_side(ElementReader& reader, std::string_view attribute) {
    return reader.quantity(attribute, Kind::length, Sign::positive);
}

std::optional<model::Certificate> read_certificate(ElementReader& reader) {
    std::optional<ElementReader> item = reader.optional_child("certificate");
    if (!item) return std::nullopt;
    return model::Certificate{item->quantity("yield", Kind::stress, Sign::positive),
                              item->quantity("ultimate", Kind::stress, Sign::positive), item->text("source")};
}

void write_certificate(Element& element, const std::optional<model::Certificate>& certificate) {
    if (!certificate) return;
    Element item("certificate");
    item.quantity("yield", certificate->yield_psi, Kind::stress);
    item.quantity("ultimate", certificate->ultimate_psi, Kind::stress);
    element.child(item.text("source", certificate->source));
}

}  // namespace

model::RectangularTube read_square_tube(ElementReader& reader) {
    const double width_in = read_side(reader, "width");
    return {width_in, width_in, read_side(reader, "wall"), reader.id("metal"), read_certificate(reader)};
}

model::RectangularTube read_rectangular_tube(ElementReader& reader) {
    return {read_side(reader, "width"), read_side(reader, "depth"), read_side(reader, "wall"), reader.id("metal"),
            read_certificate(reader)};
}

model::RoundTube read_round_tube(ElementReader& reader) {
    return {read_side(reader, "diameter"), read_side(reader, "wall"), reader.id("metal"), read_certificate(reader)};
}

model::SolidBar read_bar(ElementReader& reader) {
    return {read_side(reader, "width"), read_side(reader, "depth"), false, reader.id("metal")};
}

model::SolidBar read_round_bar(ElementReader& reader) {
    const double diameter_in = read_side(reader, "diameter");
    return {diameter_in, diameter_in, true, reader.id("metal")};
}

void write_tube(Element& element, const model::RectangularTube& tube) {
    element.quantity("width", tube.width_in, Kind::length);
    if (tube.width_in != tube.depth_in) element.quantity("depth", tube.depth_in, Kind::length);
    element.quantity("wall", tube.wall_in, Kind::length).text("metal", tube.metal);
    write_certificate(element, tube.certificate);
}

void write_tube(Element& element, const model::RoundTube& tube) {
    element.quantity("diameter", tube.diameter_in, Kind::length);
    element.quantity("wall", tube.wall_in, Kind::length).text("metal", tube.metal);
    write_certificate(element, tube.certificate);
}

void write_bar(Element& element, const model::SolidBar& bar) {
    element.quantity(bar.round ? "diameter" : "width", bar.width_in, Kind::length);
    if (!bar.round) element.quantity("depth", bar.depth_in, Kind::length);
    element.text("metal", bar.metal);
}

}  // namespace toehold::xml
