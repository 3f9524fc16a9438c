#include "editing/fields/groups.h"
#include "editing/parts/outline_shape.h"
#include "editing/words.h"

#include <fmt/format.h>

#include <cmath>

namespace toehold::editing {
namespace {

const Named center_x{"x", TOEHOLD_MARK("Centre along the rail"),
                     TOEHOLD_MARK("Of the outline, from the post's centre. Empty: 0.")};
const Named center_y{"y", TOEHOLD_MARK("Centre outward"),
                     TOEHOLD_MARK("Of the outline, from the post's centre. Empty: 0.")};

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
    form.length({"width", TOEHOLD_MARK("Width"), TOEHOLD_MARK("Along the rail.")}, outline.width_in);
    form.length({"depth", TOEHOLD_MARK("Depth"), TOEHOLD_MARK("Square to the rail.")}, outline.depth_in);
    form.zero_if_empty(
        {"corner-radius", TOEHOLD_MARK("Corner radius"), TOEHOLD_MARK("Of each corner. Empty: 0, square corners.")},
        outline.corner_radius_in, units::Kind::length, Range::not_negative);
    center(form, outline.center);
}

void shape_fields(Form& form, model::CircleOutline& outline) {
    form.length({"diameter", TOEHOLD_MARK("Diameter"), TOEHOLD_MARK("Of the round plate.")}, outline.diameter_in);
    center(form, outline.center);
}

void shape_fields(Form& form, model::PolygonOutline& outline) {
    std::vector<model::Position>& corners = outline.corners;
    form.list(
        {"corner-count", TOEHOLD_MARK("Number of corners"),
         TOEHOLD_MARK("A new corner stands in the middle of the last side; a smaller number takes the last.")},
        corners.size(), {3, 400},
        [&corners] {
            const model::Position first = corners.front();
            const model::Position last = corners.back();
            corners.push_back({0.5 * (first.x_in + last.x_in), 0.5 * (first.y_in + last.y_in)});
            return std::string();
        },
        [&corners] { corners.pop_back(); });
    for (std::size_t index = 0; index < corners.size(); ++index) {
        form.at({fmt::format("plate/corner[{}]", index + 1), "plate", fmt::format("Corner {}", index + 1)});
        form.place({"x", TOEHOLD_MARK("Along the rail"), TOEHOLD_MARK("From the post's centre.")}, corners[index].x_in);
        form.place({"y", TOEHOLD_MARK("Outward"), TOEHOLD_MARK("From the post's centre; negative is inward.")},
                   corners[index].y_in);
    }
}

std::string word_for(const model::Outline& outline) {
    if (std::holds_alternative<model::RectangleOutline>(outline)) return "rectangle";
    return std::holds_alternative<model::CircleOutline>(outline) ? "circle" : "polygon";
}

}  // namespace

void outline_fields(Form& form, model::Outline& outline) {
    form.kind({"outline", TOEHOLD_MARK("Outline"),
               TOEHOLD_MARK("A rectangle begins as the box round the plate, a circle as the one round that box, a "
                            "polygon with square corners, or 24 in a circle.")},
              word_for(outline),
              {{"rectangle", TOEHOLD_MARK("Rectangle")},
               {"circle", TOEHOLD_MARK("Circle")},
               {"polygon", TOEHOLD_MARK("Free corners")}},
              [&outline](const std::string& chosen) { change_outline(outline, chosen); });
    std::visit([&](auto& shape) { shape_fields(form, shape); }, outline);
}

}  // namespace toehold::editing
