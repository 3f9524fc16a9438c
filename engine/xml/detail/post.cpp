#include "xml/detail/parts.h"

#include <array>

namespace toehold::xml {
namespace {

using units::Kind;

constexpr std::array<Word<model::Occupancy>, 2> occupancies{
    {{"one-and-two-family", model::Occupancy::one_and_two_family}, {"other", model::Occupancy::other}}};
constexpr std::array<Word<model::ShoeAttachment>, 2> attachments{
    {{"welded", model::ShoeAttachment::welded}, {"bolted", model::ShoeAttachment::bolted}}};

enum class Shape { square_tube, rectangular_tube, round_tube, wood };
constexpr std::array<Word<Shape>, 4> shapes{{{"square-tube", Shape::square_tube},
                                             {"rectangular-tube", Shape::rectangular_tube},
                                             {"round-tube", Shape::round_tube},
                                             {"wood", Shape::wood}}};

double read_size(ElementReader& reader, std::string_view attribute) {
    return reader.quantity(attribute, Kind::length, Sign::positive);
}

model::RectangularTube read_square_tube(ElementReader& reader) {
    const double width_in = read_size(reader, "width");
    return {width_in, width_in, read_size(reader, "wall"), reader.id("metal")};
}

model::RectangularTube read_rectangular_tube(ElementReader& reader) {
    return {read_size(reader, "width"), read_size(reader, "depth"), read_size(reader, "wall"), reader.id("metal")};
}

model::RoundTube read_round_tube(ElementReader& reader) {
    return {read_size(reader, "diameter"), read_size(reader, "wall"), reader.id("metal")};
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
    return shoe;
}

model::WoodPost read_wood_post(ElementReader& reader) {
    model::WoodPost post;
    post.width_in = read_size(reader, "width");
    post.depth_in = read_size(reader, "depth");
    post.species = reader.id("species");
    post.grade = reader.id("grade");
    post.notched = reader.yes_no("notched");
    if (std::optional<ElementReader> shoe = reader.child("shoe")) post.shoe = read_shoe(*shoe);
    return post;
}

Element shoe_element(const model::Shoe& shoe) {
    Element element("shoe");
    element.text("attachment", word_for<model::ShoeAttachment>(shoe.attachment, attachments));
    element.quantity("width", shoe.width_in, Kind::length).quantity("depth", shoe.depth_in, Kind::length);
    element.quantity("wall", shoe.wall_in, Kind::length).quantity("height", shoe.height_in, Kind::length);
    element.text("metal", shoe.metal);
    element.optional_quantity("allowable-moment", shoe.allowable_moment_lb_in, Kind::moment);
    return element.optional_text("moment-source", shoe.moment_source);
}

Element& shape(Element& post, Shape value) { return post.text("shape", word_for<Shape>(value, shapes)); }

void write_shape(Element& post, const model::RectangularTube& tube) {
    const bool square = tube.width_in == tube.depth_in;
    shape(post, square ? Shape::square_tube : Shape::rectangular_tube);
    post.quantity("width", tube.width_in, Kind::length);
    if (!square) post.quantity("depth", tube.depth_in, Kind::length);
    post.quantity("wall", tube.wall_in, Kind::length).text("metal", tube.metal);
}

void write_shape(Element& post, const model::RoundTube& tube) {
    shape(post, Shape::round_tube).quantity("diameter", tube.diameter_in, Kind::length);
    post.quantity("wall", tube.wall_in, Kind::length).text("metal", tube.metal);
}

void write_shape(Element& element, const model::WoodPost& post) {
    shape(element, Shape::wood).quantity("width", post.width_in, Kind::length);
    element.quantity("depth", post.depth_in, Kind::length).text("species", post.species).text("grade", post.grade);
    element.yes_no("notched", post.notched).child(shoe_element(post.shoe));
}

}  // namespace

void read_guard(ElementReader& reader, model::BaseDetail& detail) {
    model::Guard& guard = detail.guard;
    guard.height_in = read_size(reader, "height");
    on_deck(detail).plate_below_surface_in =
        reader.optional_quantity("plate-below-surface", Kind::length, Sign::not_negative).value_or(0.0);
    guard.occupancy = reader.optional_choice<model::Occupancy>("occupancy", occupancies).value_or(guard.occupancy);
}

Element guard_element(const model::BaseDetail& detail) {
    Element element("guard");
    element.quantity("height", detail.guard.height_in, Kind::length);
    element.given_quantity("plate-below-surface", on_deck(detail).plate_below_surface_in, Kind::length);
    return element.text("occupancy", word_for<model::Occupancy>(detail.guard.occupancy, occupancies));
}

model::Post read_post(ElementReader& reader) {
    const std::optional<Shape> shape = reader.required_choice<Shape>("shape", shapes);
    if (!shape) {
        // What else belongs here depends on the shape.
        reader.ignore_rest();
        return {};
    }
    switch (*shape) {
        case Shape::square_tube:
            return read_square_tube(reader);
        case Shape::rectangular_tube:
            return read_rectangular_tube(reader);
        case Shape::round_tube:
            return read_round_tube(reader);
        case Shape::wood:
            return read_wood_post(reader);
    }
    return {};
}

Element post_element(const model::Post& post) {
    Element element("post");
    std::visit([&](const auto& shape) { write_shape(element, shape); }, post);
    return element;
}

}  // namespace toehold::xml
