#include "xml/detail/metal_section.h"
#include "xml/detail/parts.h"
#include "xml/detail/wood_section.h"

#include <array>

namespace toehold::xml {
namespace {

using units::Kind;

constexpr std::array<Word<model::Occupancy>, 3> occupancies{
    {{"one-and-two-family", model::Occupancy::one_and_two_family},
     {"limited", model::Occupancy::limited},
     {"other", model::Occupancy::other}}};
constexpr std::array<Word<model::ShoeAttachment>, 2> attachments{
    {{"welded", model::ShoeAttachment::welded}, {"bolted", model::ShoeAttachment::bolted}}};

constexpr std::array<Word<model::ShoeForm>, 1> shoe_forms{{{"closed", model::ShoeForm::closed}}};
constexpr std::array<Word<model::StubFixing>, 3> fixings{{{"none", model::StubFixing::none},
                                                          {"set-screws", model::StubFixing::set_screws},
                                                          {"through-bolt", model::StubFixing::through_bolt}}};
constexpr std::array<Word<model::PlanAxis>, 2> axes{{{"x", model::PlanAxis::x}, {"y", model::PlanAxis::y}}};

enum class Shape { square_tube, rectangular_tube, round_tube, wood, bar, round_bar, twin_bars };
constexpr std::array<Word<Shape>, 7> shapes{{{"square-tube", Shape::square_tube},
                                             {"rectangular-tube", Shape::rectangular_tube},
                                             {"round-tube", Shape::round_tube},
                                             {"wood", Shape::wood},
                                             {"bar", Shape::bar},
                                             {"round-bar", Shape::round_bar},
                                             {"twin-bars", Shape::twin_bars}}};

double read_size(ElementReader& reader, std::string_view attribute) {
    return reader.quantity(attribute, Kind::length, Sign::positive);
}

std::optional<model::Stub> read_stub(ElementReader& reader, bool round) {
    std::optional<ElementReader> item = reader.optional_child("stub");
    if (!item) return std::nullopt;
    model::Stub stub;
    stub.width_in = read_size(*item, round ? "diameter" : "width");
    stub.depth_in = round ? stub.width_in : read_size(*item, "depth");
    stub.wall_in = item->optional_quantity("wall", Kind::length, Sign::positive).value_or(0.0);
    stub.height_in = read_size(*item, "height");
    stub.metal = item->id("metal");
    stub.fixing = item->optional_choice<model::StubFixing>("fixing", fixings).value_or(stub.fixing);
    return stub;
}

/// With the stub it slides over.
template <class Tube>
Tube with_stub(Tube tube, ElementReader& reader, bool round) {
    tube.stub = read_stub(reader, round);
    return tube;
}

model::TwinBars read_twin_bars(ElementReader& reader) {
    return {read_size(reader, "width"), read_size(reader, "depth"), read_size(reader, "gap"),
            reader.choice<model::PlanAxis>("apart", axes), reader.id("metal")};
}

model::Shoe read_shoe(ElementReader& reader) {
    model::Shoe shoe;
    shoe.attachment = reader.choice<model::ShoeAttachment>("attachment", attachments);
    shoe.width_in = read_size(reader, "width");
    shoe.depth_in = read_size(reader, "depth");
    shoe.wall_in = read_size(reader, "wall");
    shoe.height_in = read_size(reader, "height");
    shoe.metal = reader.id("metal");
    shoe.allowable_moment_lb_in = reader.optional_quantity("allowable-moment", Kind::moment, Sign::positive);
    shoe.moment_source = reader.optional_text("moment-source");
    shoe.form = reader.optional_choice<model::ShoeForm>("form", shoe_forms).value_or(shoe.form);
    return shoe;
}

model::WoodPost read_wood_post(ElementReader& reader, model::MountKind mount) {
    model::WoodPost post;
    set_section(post, read_post_section(reader));
    post.notched = reader.yes_no("notched");
    const bool needs_shoe = mount == model::MountKind::plate_on_deck;
    std::optional<ElementReader> shoe = needs_shoe ? reader.child("shoe") : reader.optional_child("shoe");
    if (shoe) post.shoe = read_shoe(*shoe);
    return post;
}

Element shoe_element(const model::Shoe& shoe) {
    Element element("shoe");
    element.text("attachment", word_for<model::ShoeAttachment>(shoe.attachment, attachments));
    element.quantity("width", shoe.width_in, Kind::length).quantity("depth", shoe.depth_in, Kind::length);
    element.quantity("wall", shoe.wall_in, Kind::length).quantity("height", shoe.height_in, Kind::length);
    element.text("metal", shoe.metal);
    element.optional_quantity("allowable-moment", shoe.allowable_moment_lb_in, Kind::moment);
    element.optional_text("moment-source", shoe.moment_source);
    if (shoe.form != model::ShoeForm::not_stated)
        element.text("form", word_for<model::ShoeForm>(shoe.form, shoe_forms));
    return element;
}

Element stub_element(const model::Stub& stub, bool round) {
    Element element("stub");
    element.quantity(round ? "diameter" : "width", stub.width_in, Kind::length);
    if (!round) element.quantity("depth", stub.depth_in, Kind::length);
    element.given_quantity("wall", stub.wall_in, Kind::length).quantity("height", stub.height_in, Kind::length);
    return element.text("metal", stub.metal).text("fixing", word_for<model::StubFixing>(stub.fixing, fixings));
}

Element& shape(Element& post, Shape value) { return post.text("shape", word_for<Shape>(value, shapes)); }

void write_shape(Element& post, const model::RectangularTube& tube) {
    write_tube(shape(post, tube.width_in == tube.depth_in ? Shape::square_tube : Shape::rectangular_tube), tube);
    if (tube.stub) post.child(stub_element(*tube.stub, false));
}

void write_shape(Element& post, const model::RoundTube& tube) {
    write_tube(shape(post, Shape::round_tube), tube);
    if (tube.stub) post.child(stub_element(*tube.stub, true));
}

void write_shape(Element& post, const model::SolidBar& bar) {
    write_bar(shape(post, bar.round ? Shape::round_bar : Shape::bar), bar);
}

void write_shape(Element& post, const model::TwinBars& bars) {
    shape(post, Shape::twin_bars).quantity("width", bars.width_in, Kind::length);
    post.quantity("depth", bars.depth_in, Kind::length).quantity("gap", bars.gap_in, Kind::length);
    post.text("apart", word_for<model::PlanAxis>(bars.apart, axes)).text("metal", bars.metal);
}

void write_shape(Element& element, const model::WoodPost& post) {
    write_post_section(shape(element, Shape::wood), section_of(post));
    element.yes_no("notched", post.notched);
    if (model::is_described(post.shoe)) element.child(shoe_element(post.shoe));
}

}  // namespace

void read_guard(ElementReader& reader, model::BaseDetail& detail) {
    model::Guard& guard = detail.guard;
    guard.height_in = read_size(reader, "height");
    if (auto* const deck = std::get_if<model::PlateOnDeck>(&detail.mount)) {
        deck->plate_below_surface_in =
            reader.optional_quantity("plate-below-surface", Kind::length, Sign::not_negative).value_or(0.0);
    }
    guard.occupancy = reader.optional_choice<model::Occupancy>("occupancy", occupancies).value_or(guard.occupancy);
    guard.tributary_length_in = reader.optional_quantity("tributary-length", Kind::length, Sign::positive);
    guard.handrail = reader.optional_yes_no("handrail");
}

Element guard_element(const model::BaseDetail& detail) {
    Element element("guard");
    element.quantity("height", detail.guard.height_in, Kind::length);
    if (const auto* const deck = std::get_if<model::PlateOnDeck>(&detail.mount))
        element.given_quantity("plate-below-surface", deck->plate_below_surface_in, Kind::length);
    element.text("occupancy", word_for<model::Occupancy>(detail.guard.occupancy, occupancies));
    element.optional_quantity("tributary-length", detail.guard.tributary_length_in, Kind::length);
    if (detail.guard.handrail) element.yes_no("handrail", *detail.guard.handrail);
    return element;
}

model::Post read_post(ElementReader& reader, model::MountKind mount) {
    const std::optional<Shape> shape = reader.required_choice<Shape>("shape", shapes);
    if (!shape) {
        // What else belongs here depends on the shape.
        reader.ignore_rest();
        return {};
    }
    switch (*shape) {
        case Shape::square_tube:
            return with_stub(read_square_tube(reader), reader, false);
        case Shape::rectangular_tube:
            return with_stub(read_rectangular_tube(reader), reader, false);
        case Shape::round_tube:
            return with_stub(read_round_tube(reader), reader, true);
        case Shape::wood:
            return read_wood_post(reader, mount);
        case Shape::bar:
            return read_bar(reader);
        case Shape::round_bar:
            return read_round_bar(reader);
        case Shape::twin_bars:
            return read_twin_bars(reader);
    }
    return {};
}

Element post_element(const model::Post& post) {
    Element element("post");
    std::visit([&](const auto& shape) { write_shape(element, shape); }, post);
    return element;
}

}  // namespace toehold::xml
