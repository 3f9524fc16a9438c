#include "xml/detail/parts.h"
#include "xml/detail/wood_section.h"

namespace toehold::xml {
namespace {

using units::Kind;

std::optional<model::DeckingFastening> read_fastening(ElementReader& decking) {
    std::optional<ElementReader> reader = decking.optional_child("fasteners");
    if (!reader) return std::nullopt;
    model::DeckingFastening fastening;
    fastening.diameter_in = reader->quantity("diameter", Kind::length, Sign::positive);
    fastening.length_in = reader->quantity("length", Kind::length, Sign::positive);
    fastening.per_crossing = reader->count("per-crossing");
    fastening.board_width_in = reader->quantity("board", Kind::length, Sign::positive);
    fastening.lateral_lb = reader->optional_quantity("lateral", Kind::force, Sign::positive).value_or(0.0);
    fastening.report = reader->optional_text("report");
    return fastening;
}

Element fastening_element(const model::DeckingFastening& fastening) {
    Element element("fasteners");
    element.quantity("diameter", fastening.diameter_in, Kind::length);
    element.quantity("length", fastening.length_in, Kind::length);
    element.text("per-crossing", std::to_string(fastening.per_crossing));
    element.quantity("board", fastening.board_width_in, Kind::length);
    element.given_quantity("lateral", fastening.lateral_lb, Kind::force);
    return element.optional_text("report", fastening.report);
}

}  // namespace

model::Decking read_decking(ElementReader& reader) {
    std::string size;
    const double board_in = read_board_thickness(reader, size);
    model::Decking decking{reader.id("material"), board_in, reader.optional_text("evidence"), read_fastening(reader)};
    decking.size = size;
    decking.bearing_psi = reader.optional_quantity("bearing", Kind::stress, Sign::positive).value_or(0.0);
    decking.modulus_psi = reader.optional_quantity("modulus", Kind::stress, Sign::positive).value_or(0.0);
    decking.report = reader.optional_text("report");
    return decking;
}

Element decking_element(const model::Decking& decking) {
    Element element("decking");
    element.text("material", decking.material);
    write_board_thickness(element, decking.thickness_in, decking.size);
    element.optional_text("evidence", decking.evidence);
    element.given_quantity("bearing", decking.bearing_psi, Kind::stress);
    element.given_quantity("modulus", decking.modulus_psi, Kind::stress);
    element.optional_text("report", decking.report);
    if (decking.fastening) element.child(fastening_element(*decking.fastening));
    return element;
}

}  // namespace toehold::xml
