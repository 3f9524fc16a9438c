// The base plate and its outline.
#include "editing/fields/choices.h"
#include "editing/fields/groups.h"
#include "editing/parts/outline_shape.h"

#include <fmt/format.h>

#include <cmath>

namespace toehold::editing {
namespace {

/// The document the plate is from: naming one refers to it, naming none puts the plate into the detail.
void document_field(Form& form, model::BaseDetail& detail) {
    Field field = form.fresh(
        {"file", phrase("Plate document"),
         phrase(
             "The plate document, named from the detail's folder, that holds this plate. Kept only while it "
             "gives the plate as drawn. Empty, and once the plate is changed: the plate stands in the detail itself.")},
        FieldKind::text);
    field.may_be_empty = true;
    if (on_deck(detail).plate_reference) field.value = on_deck(detail).plate_reference->file;
    form.add(std::move(field), [&detail](const std::string& text) -> Outcome {
        const Reading<std::string> read = read_words(phrase("Plate document"), text);
        if (!read.value) return {read.refusal};
        if (read.value->empty()) {
            on_deck(detail).plate_reference.reset();
            return {};
        }
        if (!on_deck(detail).plate_reference && on_deck(detail).plate.id.empty()) {
            return {phrase("Plate document takes a plate by its id: give the plate an id first.")};
        }
        if (!on_deck(detail).plate_reference)
            on_deck(detail).plate_reference = model::PlateReference{{}, on_deck(detail).plate.id, {}, {}};
        on_deck(detail).plate_reference->file = *read.value;
        return {};
    });
}

void pin_field(Form& form, model::PlateReference& reference) {
    Field field = form.fresh({"sha256", phrase("Pinned to"),
                              phrase("SHA-256 of the plate this detail was made with, 64 digits; listed is that of "
                                     "the plate as found. Empty: not pinned, and a change of it goes unseen.")},
                             FieldKind::text);
    field.value = reference.sha256;
    field.may_be_empty = true;
    if (!reference.found_sha256.empty()) field.choices = id_choices({reference.found_sha256});
    form.add(std::move(field), [&reference](const std::string& text) -> Outcome {
        const std::string digest = trimmed(text);
        constexpr std::size_t digits = 64;
        const bool all = digest.find_first_not_of("0123456789abcdef") == std::string::npos;
        if (!digest.empty() && (digest.size() != digits || !all)) {
            return {phrase("Pinned to takes 64 hexadecimal digits in lower case.")};
        }
        reference.sha256 = digest;
        return {};
    });
}

void reference_fields(Form& form, model::BaseDetail& detail) {
    form.at({"plate/from", {model::PartKind::plate}, phrase("Plate")});
    document_field(form, detail);
    if (!on_deck(detail).plate_reference) return;
    form.id({"id", phrase("Plate in the document"), phrase("Id of the plate in its document.")},
            on_deck(detail).plate_reference->id, {});
    pin_field(form, *on_deck(detail).plate_reference);
}

void optional_id(Form& form, std::string& id) {
    Field field = form.fresh(
        {"id", phrase("Id"), phrase("A short name, unique in a plate document. Empty: it has none.")}, FieldKind::text);
    field.value = id;
    field.may_be_empty = true;
    form.add(std::move(field), [&id](const std::string& text) -> Outcome {
        if (trimmed(text).empty()) {
            id.clear();
            return {};
        }
        const Reading<std::string> read = read_id(phrase("Id"), text, {});
        if (!read.value) return {read.refusal};
        id = *read.value;
        return {};
    });
}

const Named center_x{"x", phrase("Center along the rail"), phrase("Of the outline, from the post's center. Empty: 0.")};
const Named center_y{"y", phrase("Center outward"), phrase("Of the outline, from the post's center. Empty: 0.")};

model::RectangleOutline box_round(const model::Outline& outline) {
    const Extent extent = extent_of(outline);
    return {extent.high.x - extent.low.x,
            extent.high.y - extent.low.y,
            0.0,
            {0.5 * (extent.low.x + extent.high.x), 0.5 * (extent.low.y + extent.high.y)}};
}

void change_outline(model::Outline& outline, const std::string& chosen) {
    if (chosen == "polygon") {
        outline = as_polygon(outline);
        return;
    }
    const model::RectangleOutline box = box_round(outline);
    if (chosen == "rectangle") {
        outline = box;
    } else {
        outline = model::CircleOutline{std::hypot(box.width_in, box.depth_in), box.center};
    }
}

void center(Form& form, model::Position& at) {
    form.zero_if_empty(center_x, at.x_in, units::Kind::length, Range::any);
    form.zero_if_empty(center_y, at.y_in, units::Kind::length, Range::any);
}

void shape_fields(Form& form, model::RectangleOutline& outline) {
    form.length({"width", phrase("Width"), phrase("Along the rail.")}, outline.width_in);
    form.length({"depth", phrase("Depth"), phrase("Square to the rail.")}, outline.depth_in);
    form.zero_if_empty({"corner-radius", phrase("Corner radius"), phrase("Of each corner. Empty: 0, square corners.")},
                       outline.corner_radius_in, units::Kind::length, Range::not_negative);
    center(form, outline.center);
}

void shape_fields(Form& form, model::CircleOutline& outline) {
    form.length({"diameter", phrase("Diameter"), phrase("Of the round plate.")}, outline.diameter_in);
    center(form, outline.center);
}

void shape_fields(Form& form, model::PolygonOutline& outline) {
    std::vector<model::Position>& corners = outline.corners;
    form.list(
        {"corner-count", phrase("Number of corners"),
         phrase("A new corner stands in the middle of the last side; a smaller number takes the last.")},
        corners.size(), {3, 400},
        [&corners] {
            const model::Position first = corners.front();
            const model::Position last = corners.back();
            corners.push_back({0.5 * (first.x_in + last.x_in), 0.5 * (first.y_in + last.y_in)});
            return Phrase{};
        },
        [&corners] { corners.pop_back(); });
    for (std::size_t index = 0; index < corners.size(); ++index) {
        form.at({fmt::format("plate/corner[{}]", index + 1), {model::PartKind::plate}, phrase("Corner {}", index + 1)});
        form.place({"x", phrase("Along the rail"), phrase("From the post's center.")}, corners[index].x_in);
        form.place({"y", phrase("Outward"), phrase("From the post's center; negative is inward.")},
                   corners[index].y_in);
    }
}

std::string word_for(const model::Outline& outline) {
    if (std::holds_alternative<model::RectangleOutline>(outline)) return "rectangle";
    return std::holds_alternative<model::CircleOutline>(outline) ? "circle" : "polygon";
}

}  // namespace

void plate_fields(Form& form, model::BaseDetail& detail) {
    reference_fields(form, detail);
    model::Plate& plate = on_deck(detail).plate;
    form.at({"plate", {model::PartKind::plate}, phrase("Plate")});
    optional_id(form, plate.id);
    form.text({"name", phrase("Name"), phrase("What the plate is called. Empty: it has no name.")}, plate.name);
    form.pick({"metal", phrase("Metal"), phrase("Its strength is looked up in the catalogs.")}, plate.metal,
              row_choices(form.catalog().metals));
    form.length({"thickness", phrase("Thickness"), phrase("Of the plate.")}, plate.thickness_in);
    hole_count(form, detail);
    outline_fields(form, plate.outline);
    hole_fields(form, detail);
}

void outline_fields(Form& form, model::Outline& outline) {
    form.kind({"outline", phrase("Outline"),
               phrase("A rectangle begins as the box round the plate, a circle as the one round that box, a "
                      "polygon with square corners, or 24 in a circle.")},
              word_for(outline),
              {{"rectangle", phrase("Rectangle")}, {"circle", phrase("Circle")}, {"polygon", phrase("Free corners")}},
              [&outline](const std::string& chosen) { change_outline(outline, chosen); });
    std::visit([&](auto& shape) { shape_fields(form, shape); }, outline);
}

}  // namespace toehold::editing
