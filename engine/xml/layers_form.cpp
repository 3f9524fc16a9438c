#include "xml/layers_form.h"

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

model::Layers read_layers(ElementReader& reader) {
    const auto thickness_in = [](ElementReader& layer) {
        return layer.quantity("thickness", Kind::length, Sign::positive);
    };
    model::Layers layers;
    if (std::optional<ElementReader> decking = reader.optional_child("decking")) {
        layers.decking = model::Decking{decking->id("material"), thickness_in(*decking),
                                        decking->optional_text("evidence"), read_fastening(*decking)};
    }
    for (ElementReader& shim : reader.children("shim")) {
        layers.shims.push_back({shim.id("material"), thickness_in(shim)});
    }
    return layers;
}

Element layers_element(const model::Layers& layers) {
    Element element("layers");
    if (layers.decking) {
        Element decking("decking");
        decking.text("material", layers.decking->material);
        decking.quantity("thickness", layers.decking->thickness_in, Kind::length);
        decking.optional_text("evidence", layers.decking->evidence);
        if (layers.decking->fastening) decking.child(fastening_element(*layers.decking->fastening));
        element.child(std::move(decking));
    }
    for (const model::Shim& shim : layers.shims) {
        Element item("shim");
        element.child(item.text("material", shim.material).quantity("thickness", shim.thickness_in, Kind::length));
    }
    return element;
}

}  // namespace toehold::xml
