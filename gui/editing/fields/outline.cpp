#include "editing/edits.h"
#include "editing/fields/groups.h"
#include "editing/words.h"
#include "model/placement.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace toehold::editing {
namespace {

const Named center_x{"x", TOEHOLD_MARK("Centre along the rail"),
                     TOEHOLD_MARK("Of the outline, from the post's centre. Empty: 0.")};
const Named center_y{"y", TOEHOLD_MARK("Centre outward"),
                     TOEHOLD_MARK("Of the outline, from the post's centre. Empty: 0.")};

model::RectangleOutline box_round(const model::Outline& outline) {
    const std::vector<model::Position> corners = model::polygon(outline);
    if (corners.empty()) return {};
    model::Position low = corners.front();
    model::Position high = low;
    for (const model::Position& corner : corners) {
        low = {std::min(low.x_in, corner.x_in), std::min(low.y_in, corner.y_in)};
        high = {std::max(high.x_in, corner.x_in), std::max(high.y_in, corner.y_in)};
    }
    return {
        high.x_in - low.x_in, high.y_in - low.y_in, 0.0, {0.5 * (low.x_in + high.x_in), 0.5 * (low.y_in + high.y_in)}};
}

void change_outline(model::BaseDetail& detail, const std::string& chosen) {
    if (chosen == "polygon") {
        detail.plate.outline = to_polygon(detail).detail.plate.outline;
        return;
    }
    const model::RectangleOutline box = box_round(detail.plate.outline);
    if (chosen == "rectangle") {
        detail.plate.outline = box;
    } else {
        detail.plate.outline = model::CircleOutline{std::hypot(box.width_in, box.depth_in), box.center};
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

void outline_fields(Form& form, model::BaseDetail& detail) {
    form.kind({"outline", TOEHOLD_MARK("Outline"),
               TOEHOLD_MARK("A rectangle begins as the box round the plate, a circle as the one round that box, a "
                            "polygon on the outline as it is.")},
              word_for(detail.plate.outline),
              {{"rectangle", TOEHOLD_MARK("Rectangle")},
               {"circle", TOEHOLD_MARK("Circle")},
               {"polygon", TOEHOLD_MARK("Free corners")}},
              [&detail](const std::string& chosen) { change_outline(detail, chosen); });
    std::visit([&](auto& outline) { shape_fields(form, outline); }, detail.plate.outline);
}

}  // namespace toehold::editing
