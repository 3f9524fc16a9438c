#include "xml/detail/parts.h"
#include "xml/detail/wood_section.h"

#include <array>

namespace toehold::xml {
namespace {

using units::Kind;
using SupportKind = model::JoistSupport::Kind;

constexpr std::array<Word<model::PlanAxis>, 2> axes{{{"x", model::PlanAxis::x}, {"y", model::PlanAxis::y}}};
enum class End { from, to };
constexpr std::array<Word<End>, 2> ends{{{"from", End::from}, {"to", End::to}}};
constexpr std::array<Word<SupportKind>, 2> support_kinds{
    {{"ledger", SupportKind::ledger}, {"beam", SupportKind::beam}}};

/// The section of one piece, and its wood.
template <class Member>
void read_section(ElementReader& reader, Member& member) {
    set_section(member, read_framing_section(reader));
}

template <class Member>
void write_section(Element& element, const Member& member) {
    write_framing_section(element, section_of(member));
}

/// One piece where the file says nothing.
int read_plies(ElementReader& reader) { return reader.has("plies") ? reader.count("plies") : 1; }

void write_plies(Element& element, int plies) {
    if (plies != 1) element.text("plies", std::to_string(plies));
}

void write_axis(Element& element, model::PlanAxis along) {
    element.text("along", word_for<model::PlanAxis>(along, axes));
}

model::Joists read_joists(ElementReader& reader) {
    model::Joists joists;
    joists.along = reader.choice<model::PlanAxis>("along", axes);
    read_section(reader, joists);
    joists.from_in = reader.optional_quantity("from", Kind::length, Sign::any);
    joists.to_in = reader.optional_quantity("to", Kind::length, Sign::any);
    for (ElementReader& joist : reader.children("joist")) {
        joists.members.push_back({joist.id(), joist.quantity("offset", Kind::length, Sign::any), read_plies(joist)});
    }
    return joists;
}

Element joists_element(const model::Joists& joists) {
    Element element("joists");
    write_axis(element, joists.along);
    write_section(element, joists);
    element.optional_quantity("from", joists.from_in, Kind::length);
    element.optional_quantity("to", joists.to_in, Kind::length);
    for (const model::Joist& joist : joists.members) {
        Element item("joist");
        item.text("id", joist.id).quantity("offset", joist.offset_in, Kind::length);
        write_plies(item, joist.plies);
        element.child(std::move(item));
    }
    return element;
}

model::Rim read_rim(ElementReader& reader) {
    model::Rim rim;
    rim.id = reader.id();
    rim.at_in = reader.quantity("at", Kind::length, Sign::any);
    rim.from_in = reader.quantity("from", Kind::length, Sign::any);
    rim.to_in = reader.quantity("to", Kind::length, Sign::any);
    read_section(reader, rim);
    rim.plies = read_plies(reader);
    rim.connection = read_connection(reader);
    return rim;
}

Element rim_element(const model::Rim& rim) {
    Element element("rim");
    element.text("id", rim.id).quantity("at", rim.at_in, Kind::length);
    element.quantity("from", rim.from_in, Kind::length).quantity("to", rim.to_in, Kind::length);
    write_section(element, rim);
    write_plies(element, rim.plies);
    add_connection(element, rim.connection);
    return element;
}

model::JoistSupport read_support(ElementReader& reader) {
    model::JoistSupport support;
    support.id = reader.id();
    support.kind = reader.choice<SupportKind>("kind", support_kinds);
    support.at_in = reader.quantity("at", Kind::length, Sign::any);
    support.bearing_in = reader.optional_quantity("bearing", Kind::length, Sign::positive).value_or(0.0);
    support.connection = read_connection(reader);
    return support;
}

Element support_element(const model::JoistSupport& support) {
    Element element("support");
    element.text("id", support.id).text("kind", word_for<SupportKind>(support.kind, support_kinds));
    element.quantity("at", support.at_in, Kind::length);
    element.given_quantity("bearing", support.bearing_in, Kind::length);
    add_connection(element, support.connection);
    return element;
}

model::BlockEnd read_end(ElementReader& reader) {
    model::BlockEnd end;
    end.joist = reader.optional_id("joist");
    end.connection = read_connection(reader);
    return end;
}

model::Block read_block(ElementReader& reader) {
    model::Block block;
    block.id = reader.id();
    block.along = reader.choice<model::PlanAxis>("along", axes);
    read_section(reader, block);
    block.from_in = reader.quantity("from", Kind::length, Sign::any);
    block.to_in = reader.quantity("to", Kind::length, Sign::any);
    block.across_in = reader.quantity("across", Kind::length, Sign::any);
    block.plies = read_plies(reader);
    if (reader.has("stack")) {
        block.stack = reader.count("stack");
        block.stack_fastened = reader.optional_yes_no("stack-fastened").value_or(false);
    }
    for (ElementReader& end : reader.children("end", "at")) {
        (end.choice<End>("at", ends) == End::from ? block.from_end : block.to_end) = read_end(end);
    }
    return block;
}

void write_end(Element& block, End at, const model::BlockEnd& end) {
    if (end == model::BlockEnd{}) return;
    Element element("end");
    element.text("at", word_for<End>(at, ends)).optional_text("joist", end.joist);
    add_connection(element, end.connection);
    block.child(std::move(element));
}

Element block_element(const model::Block& block) {
    Element element("block");
    element.text("id", block.id);
    write_axis(element, block.along);
    write_section(element, block);
    element.quantity("from", block.from_in, Kind::length).quantity("to", block.to_in, Kind::length);
    element.quantity("across", block.across_in, Kind::length);
    write_plies(element, block.plies);
    if (block.stack != 1) {
        element.text("stack", std::to_string(block.stack));
        if (block.stack_fastened) element.yes_no("stack-fastened", true);
    }
    write_end(element, End::from, block.from_end);
    write_end(element, End::to, block.to_end);
    return element;
}

model::DeckLoad read_deck(ElementReader& reader) {
    return {reader.optional_quantity("dead", Kind::pressure, Sign::not_negative),
            reader.optional_quantity("live", Kind::pressure, Sign::not_negative)};
}

Element deck_element(const model::DeckLoad& deck) {
    Element element("deck");
    element.optional_quantity("dead", deck.dead_psf, Kind::pressure);
    return element.optional_quantity("live", deck.live_psf, Kind::pressure);
}

}  // namespace

model::Framing read_framing(ElementReader& reader) {
    model::Framing framing;
    framing.preservative_treated = reader.optional_yes_no("treated").value_or(framing.preservative_treated);
    for (ElementReader& wood : reader.children("material")) framing.materials.push_back(read_material(wood));
    if (std::optional<ElementReader> joists = reader.optional_child("joists")) framing.joists = read_joists(*joists);
    for (ElementReader& rim : reader.children("rim")) framing.rims.push_back(read_rim(rim));
    for (ElementReader& support : reader.children("support")) framing.supports.push_back(read_support(support));
    for (ElementReader& block : reader.children("block")) framing.blocks.push_back(read_block(block));
    if (std::optional<ElementReader> deck = reader.optional_child("deck")) framing.deck = read_deck(*deck);
    return framing;
}

Element framing_element(const model::Framing& framing) {
    Element element("framing");
    element.yes_no("treated", framing.preservative_treated);
    for (const model::OwnWood& wood : framing.materials) element.child(material_element(wood));
    if (framing.joists) element.child(joists_element(*framing.joists));
    for (const model::Rim& rim : framing.rims) element.child(rim_element(rim));
    for (const model::JoistSupport& support : framing.supports) element.child(support_element(support));
    for (const model::Block& block : framing.blocks) element.child(block_element(block));
    if (framing.deck != model::DeckLoad{}) element.child(deck_element(framing.deck));
    return element;
}

}  // namespace toehold::xml
