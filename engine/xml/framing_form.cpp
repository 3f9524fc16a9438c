#include "xml/framing_form.h"

#include <array>

namespace toehold::xml {
namespace {

using units::Kind;
using FastenerKind = model::EndGrainFasteners::Kind;

constexpr std::array<Word<model::PlanAxis>, 2> axes{{{"x", model::PlanAxis::x}, {"y", model::PlanAxis::y}}};
enum class End { from, to };
constexpr std::array<Word<End>, 2> ends{{{"from", End::from}, {"to", End::to}}};
constexpr std::array<std::string_view, 3> connection_names{"nails", "screws", "connector"};

/// The section and the wood of a block or of the joists.
template <class Member>
void read_member(ElementReader& reader, Member& member) {
    member.along = reader.choice<model::PlanAxis>("along", axes);
    member.width_in = reader.quantity("width", Kind::length, Sign::positive);
    member.depth_in = reader.quantity("depth", Kind::length, Sign::positive);
    member.species = reader.id("species");
    member.grade = reader.id("grade");
}

template <class Member>
void write_member(Element& element, const Member& member) {
    element.text("along", word_for<model::PlanAxis>(member.along, axes));
    element.quantity("width", member.width_in, Kind::length).quantity("depth", member.depth_in, Kind::length);
    element.text("species", member.species).text("grade", member.grade);
}

model::Joists read_joists(ElementReader& reader) {
    model::Joists joists;
    read_member(reader, joists);
    for (ElementReader& joist : reader.children("joist")) {
        joists.members.push_back({joist.id(), joist.quantity("offset", Kind::length, Sign::any)});
    }
    return joists;
}

Element joists_element(const model::Joists& joists) {
    Element element("joists");
    write_member(element, joists);
    for (const model::Joist& joist : joists.members) {
        Element item("joist");
        element.child(item.text("id", joist.id).quantity("offset", joist.offset_in, Kind::length));
    }
    return element;
}

model::EndGrainFasteners read_end_grain(ElementReader& reader) {
    model::EndGrainFasteners fasteners;
    fasteners.kind = reader.name() == "nails" ? FastenerKind::nail : FastenerKind::wood_screw;
    fasteners.diameter_in = reader.quantity("diameter", Kind::length, Sign::positive);
    fasteners.length_in = reader.quantity("length", Kind::length, Sign::positive);
    fasteners.count = reader.count("count");
    fasteners.spread_in = reader.optional_quantity("spread", Kind::length, Sign::not_negative).value_or(0.0);
    return fasteners;
}

model::ReportedConnector read_connector(ElementReader& reader) {
    const auto allowable = [&](std::string_view attribute, Kind kind) {
        return reader.optional_quantity(attribute, kind, Sign::positive).value_or(0.0);
    };
    model::ReportedConnector connector;
    connector.name = reader.text("name");
    connector.report = reader.optional_text("report");
    connector.uplift_lb = allowable("uplift", Kind::force);
    connector.down_lb = allowable("down", Kind::force);
    connector.lateral_lb = allowable("lateral", Kind::force);
    connector.couple_arm_in = allowable("couple-arm", Kind::length);
    return connector;
}

model::BlockEnd read_end(ElementReader& reader) {
    model::BlockEnd end;
    end.joist = reader.optional_id("joist");
    std::optional<ElementReader> connection = reader.one_of(connection_names, false);
    if (!connection) return end;
    if (connection->name() == "connector") {
        end.connection = read_connector(*connection);
    } else {
        end.connection = read_end_grain(*connection);
    }
    return end;
}

model::Block read_block(ElementReader& reader) {
    model::Block block;
    block.id = reader.id();
    read_member(reader, block);
    block.from_in = reader.quantity("from", Kind::length, Sign::any);
    block.to_in = reader.quantity("to", Kind::length, Sign::any);
    block.across_in = reader.quantity("across", Kind::length, Sign::any);
    for (ElementReader& end : reader.children("end", "at")) {
        (end.choice<End>("at", ends) == End::from ? block.from_end : block.to_end) = read_end(end);
    }
    return block;
}

Element connection_element(const model::EndGrainFasteners& fasteners) {
    Element element(fasteners.kind == FastenerKind::nail ? "nails" : "screws");
    element.quantity("diameter", fasteners.diameter_in, Kind::length);
    element.quantity("length", fasteners.length_in, Kind::length).text("count", std::to_string(fasteners.count));
    return element.given_quantity("spread", fasteners.spread_in, Kind::length);
}

Element connection_element(const model::ReportedConnector& connector) {
    Element element("connector");
    element.text("name", connector.name).optional_text("report", connector.report);
    element.given_quantity("uplift", connector.uplift_lb, Kind::force);
    element.given_quantity("down", connector.down_lb, Kind::force);
    element.given_quantity("lateral", connector.lateral_lb, Kind::force);
    return element.given_quantity("couple-arm", connector.couple_arm_in, Kind::length);
}

void write_end(Element& block, End at, const model::BlockEnd& end) {
    if (end == model::BlockEnd{}) return;
    Element element("end");
    element.text("at", word_for<End>(at, ends)).optional_text("joist", end.joist);
    if (const auto* const fasteners = std::get_if<model::EndGrainFasteners>(&end.connection)) {
        element.child(connection_element(*fasteners));
    }
    if (const auto* const connector = std::get_if<model::ReportedConnector>(&end.connection)) {
        element.child(connection_element(*connector));
    }
    block.child(std::move(element));
}

Element block_element(const model::Block& block) {
    Element element("block");
    element.text("id", block.id);
    write_member(element, block);
    element.quantity("from", block.from_in, Kind::length).quantity("to", block.to_in, Kind::length);
    element.quantity("across", block.across_in, Kind::length);
    write_end(element, End::from, block.from_end);
    write_end(element, End::to, block.to_end);
    return element;
}

}  // namespace

model::Layers read_layers(ElementReader& reader) {
    const auto thickness_in = [](ElementReader& layer) {
        return layer.quantity("thickness", Kind::length, Sign::positive);
    };
    model::Layers layers;
    if (std::optional<ElementReader> decking = reader.optional_child("decking")) {
        layers.decking = {decking->id("material"), thickness_in(*decking), decking->optional_text("evidence")};
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
        element.child(decking.optional_text("evidence", layers.decking->evidence));
    }
    for (const model::Shim& shim : layers.shims) {
        Element item("shim");
        element.child(item.text("material", shim.material).quantity("thickness", shim.thickness_in, Kind::length));
    }
    return element;
}

model::Framing read_framing(ElementReader& reader) {
    model::Framing framing;
    framing.preservative_treated = reader.optional_yes_no("treated").value_or(framing.preservative_treated);
    if (std::optional<ElementReader> joists = reader.optional_child("joists")) framing.joists = read_joists(*joists);
    for (ElementReader& block : reader.children("block")) framing.blocks.push_back(read_block(block));
    return framing;
}

Element framing_element(const model::Framing& framing) {
    Element element("framing");
    element.yes_no("treated", framing.preservative_treated);
    if (framing.joists) element.child(joists_element(*framing.joists));
    for (const model::Block& block : framing.blocks) element.child(block_element(block));
    return element;
}

}  // namespace toehold::xml
