#include "editing/parts/holes.h"
#include "editing/fields/groups.h"
#include "model/validate.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>

namespace toehold::editing {
namespace {

std::vector<std::string> ids_of(const std::vector<model::Hole>& holes) {
    std::vector<std::string> ids;
    ids.reserve(holes.size());
    for (const model::Hole& hole : holes) ids.push_back(hole.id);
    return ids;
}

double across_in(const model::Hole& hole) {
    if (const auto* const slot = std::get_if<model::Slot>(&hole.shape)) return slot->length_in;
    return std::get<model::RoundHole>(hole.shape).diameter_in;
}

/// Like the last hole and beside it, on the first of four sides where the plate has room.
void add_hole_beside(model::BaseDetail& detail) {
    std::vector<model::Hole>& holes = on_deck(detail).plate.holes;
    const model::Hole last = holes.empty() ? model::Hole{{}, {}, model::RoundHole{0.5}} : holes.back();
    const double step_in = 2.0 * across_in(last);
    const model::Position at = last.center;
    const std::array<model::Position, 4> places{{{at.x_in + step_in, at.y_in},
                                                 {at.x_in - step_in, at.y_in},
                                                 {at.x_in, at.y_in + step_in},
                                                 {at.x_in, at.y_in - step_in}}};
    add_hole_like(detail, last, last.id);
    for (const model::Position& place : places) {
        holes.back().center = place;
        if (model::validate(on_deck(detail).plate).empty()) return;
    }
    holes.back().center = places.front();
}

/// The last hole and its anchor.
void remove_last_hole(model::BaseDetail& detail) {
    const std::string id = on_deck(detail).plate.holes.back().id;
    on_deck(detail).plate.holes.pop_back();
    forget_anchors(detail, {id});
}

void rename_in_groups(model::BaseDetail& detail, const std::string& old, const std::string& fresh) {
    for (model::AnchorGroup& group : on_deck(detail).anchors)
        std::replace(group.holes.begin(), group.holes.end(), old, fresh);
}

void shape_field(Form& form, model::Hole& hole) {
    form.kind({"shape", phrase("Shape"),
               phrase("A slot begins as wide as the hole and twice as long, along the rail; a round hole as wide "
                      "as the slot.")},
              std::holds_alternative<model::Slot>(hole.shape) ? "slot" : "hole",
              {{"hole", phrase("Round hole")}, {"slot", phrase("Slot")}}, [&hole](const std::string& chosen) {
                  if (chosen == "slot") {
                      const double diameter_in = std::get<model::RoundHole>(hole.shape).diameter_in;
                      hole.shape = model::Slot{2.0 * diameter_in, diameter_in, 0.0};
                  } else {
                      hole.shape = model::RoundHole{std::get<model::Slot>(hole.shape).width_in};
                  }
              });
}

void size_fields(Form& form, model::RoundHole& hole) {
    form.length({"diameter", phrase("Diameter"), phrase("Of the hole in the plate.")}, hole.diameter_in);
}

void size_fields(Form& form, model::Slot& slot) {
    form.length({"length", phrase("Length"), phrase("From end to end, the round ends included.")}, slot.length_in);
    form.length({"width", phrase("Width"), phrase("Across the slot.")}, slot.width_in);
    form.zero_if_empty(
        {"angle", phrase("Angle"), phrase("Of the slot's length from the rail, counter-clockwise. Empty: 0.")},
        slot.angle_deg, units::Kind::angle, Range::any);
}

void one_hole(Form& form, model::BaseDetail& detail, std::size_t index) {
    model::Hole& hole = on_deck(detail).plate.holes[index];
    std::vector<std::string> others = ids_of(on_deck(detail).plate.holes);
    others.erase(others.begin() + static_cast<std::ptrdiff_t>(index));
    form.at({fmt::format("plate/hole[{}]", hole.id), model::anchor_part(hole.id), phrase("Hole {}", hole.id)});
    form.id({"id", phrase("Id"), phrase("A short name; the anchor in the hole carries it too.")}, hole.id, others,
            [&detail, &hole](const std::string& old) { rename_in_groups(detail, old, hole.id); });
    form.place({"x", phrase("Along the rail"), phrase("Of the hole's center, from the post's center.")},
               hole.center.x_in);
    form.place({"y", phrase("Outward"), phrase("Of the hole's center, from the post's center; negative is inward.")},
               hole.center.y_in);
    shape_field(form, hole);
    std::visit([&](auto& shape) { size_fields(form, shape); }, hole.shape);
}

}  // namespace

void hole_count(Form& form, model::BaseDetail& detail) {
    form.list(
        {"hole-count", phrase("Number of holes"),
         phrase("A new hole is like the last and stands beside it; a smaller number takes the last, and "
                "its anchor.")},
        on_deck(detail).plate.holes.size(), {1, 100},
        [&detail] {
            add_hole_beside(detail);
            return Phrase{};
        },
        [&detail] { remove_last_hole(detail); });
}

void hole_fields(Form& form, model::BaseDetail& detail) {
    for (std::size_t index = 0; index < on_deck(detail).plate.holes.size(); ++index) one_hole(form, detail, index);
}

}  // namespace toehold::editing
