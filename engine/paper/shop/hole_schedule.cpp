#include "paper/shop/hole_schedule.h"

#include "drawing/annotation/labels.h"
#include "format/figures.h"
#include "model/capsule.h"
#include "model/placement.h"
#include "paper/cutting/plate_contours.h"

#include <algorithm>
#include <cmath>

namespace toehold::paper::shop {
namespace {

using drawing::length_figure;
using format::Phrase;
using format::phrase;

Phrase datum_words(const model::Outline& outline) {
    if (std::holds_alternative<model::CircleOutline>(outline)) return phrase("x, y from the center of the plate.");
    if (std::holds_alternative<model::RectangleOutline>(outline))
        return phrase("x, y from 0,0: the left and lower edges of the plate in plan.");
    return phrase("x, y from 0,0: the lines along the left and lower extremes of the plate in plan.");
}

}  // namespace

drawing::Point datum_in(const model::Outline& outline) {
    if (const auto* const circle = std::get_if<model::CircleOutline>(&outline))
        return {circle->center.x_in, circle->center.y_in};
    return outline_box_in(outline).low;
}

double edge_distance_in(const model::Outline& outline, const model::Hole& hole) {
    const model::Segment axis = model::capsule(hole).axis;
    if (const auto* const circle = std::get_if<model::CircleOutline>(&outline)) {
        const auto from_center = [&](const model::Position& at) {
            return std::hypot(at.x_in - circle->center.x_in, at.y_in - circle->center.y_in);
        };
        return 0.5 * circle->diameter_in - std::max(from_center(axis.from), from_center(axis.to));
    }
    double least = std::min(model::edge_distance_in(outline, axis.from), model::edge_distance_in(outline, axis.to));
    if (!std::holds_alternative<model::PolygonOutline>(outline)) return least;  // convex: an end is nearest
    for (const model::Segment& side : model::sides(model::polygon(outline)))
        least = std::min(least, model::distance_in(side, axis));
    return least;
}

Phrase size_words(const model::Hole& hole, units::System system) {
    const auto* const slot = std::get_if<model::Slot>(&hole.shape);
    if (slot == nullptr)
        return phrase("⌀ {}", length_figure(std::get<model::RoundHole>(hole.shape).diameter_in, system));
    return phrase("{} x {} at {}°", length_figure(slot->width_in, system), length_figure(slot->length_in, system),
                  format::number_text(slot->angle_deg));
}

Schedule hole_schedule(const model::Plate& plate, const format::Locale& locale, std::size_t most_rows) {
    using drawing::Across;
    const units::System system = locale.system;
    const auto say = [&locale](const Phrase& words) { return format::text(words, locale); };
    Schedule schedule{say(phrase("HOLES AND SLOTS")),
                      {{say(phrase("Hole")), 0.7, Across::middle},
                       {"x", 1.0, Across::right},
                       {"y", 1.0, Across::right},
                       {say(phrase("Size")), 1.9},
                       {say(phrase("Center to edge")), 1.15, Across::right}},
                      {},
                      {say(datum_words(plate.outline))}};
    const drawing::Point datum = datum_in(plate.outline);
    const std::size_t rows = std::min(plate.holes.size(), most_rows);
    bool slots = false;
    for (std::size_t index = 0; index < rows; ++index) {
        const model::Hole& hole = plate.holes[index];
        schedule.rows.push_back({hole.id, length_figure(hole.center.x_in - datum.x, system),
                                 length_figure(hole.center.y_in - datum.y, system), say(size_words(hole, system)),
                                 length_figure(edge_distance_in(plate.outline, hole), system)});
        slots = slots || std::holds_alternative<model::Slot>(hole.shape);
    }
    schedule.rows.push_back({say(phrase("post")), length_figure(-datum.x, system), length_figure(-datum.y, system),
                             say(phrase("center")), ""});
    if (slots) schedule.notes.push_back(say(phrase("Slots: width x overall length, angle of the long axis from x.")));
    if (rows < plate.holes.size())
        schedule.notes.push_back(say(phrase("{} more holes: see the cutting file.", plate.holes.size() - rows)));
    return schedule;
}

Schedule corner_schedule(const model::Outline& outline, const format::Locale& locale, std::size_t most_rows) {
    using drawing::Across;
    constexpr std::size_t beside = 2;
    const auto say = [&locale](const Phrase& words) { return format::text(words, locale); };
    Schedule schedule{say(phrase("CORNERS OF THE OUTLINE, joined by straight sides")), {}, {}, {}};
    for (std::size_t count = 0; count < beside; ++count) {
        schedule.columns.insert(
            schedule.columns.end(),
            {{say(phrase("No.")), 0.7, Across::middle}, {"x", 1.0, Across::right}, {"y", 1.0, Across::right}});
    }
    const auto* const polygon = std::get_if<model::PolygonOutline>(&outline);
    if (polygon == nullptr) return schedule;
    const drawing::Point datum = datum_in(outline);
    const std::size_t corners = std::min(polygon->corners.size(), beside * most_rows);
    const std::size_t rows = (corners + beside - 1) / beside;
    schedule.rows.resize(rows);
    for (std::size_t index = 0; index < beside * rows; ++index) {
        std::vector<std::string>& row = schedule.rows[index % rows];
        if (index >= corners) {
            row.insert(row.end(), {"", "", ""});
            continue;
        }
        const model::Position& corner = polygon->corners[index];
        row.insert(row.end(), {std::to_string(index + 1), length_figure(corner.x_in - datum.x, locale.system),
                               length_figure(corner.y_in - datum.y, locale.system)});
    }
    if (corners < polygon->corners.size()) {
        schedule.notes.push_back(
            say(phrase("{} more corners: see the cutting file.", polygon->corners.size() - corners)));
    }
    return schedule;
}

}  // namespace toehold::paper::shop
