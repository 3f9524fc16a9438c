#include "search/changes/plate.h"

#include "model/placement.h"
#include "model/validate.h"
#include "units/quantity.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <set>

namespace toehold::search {
namespace {

using format::phrase;
using model::BaseDetail;
using model::Hole;
using model::Plate;
using model::Position;
using units::bare_fraction;

std::string without_blanks(std::string text) {
    std::replace(text.begin(), text.end(), ' ', '-');
    return text;
}

/// A plate of a file or a library is no longer that one once it is changed.
void name_as_cut(BaseDetail& detail) {
    Plate& plate = on_deck(detail).plate;
    const std::string width = bare_fraction(extent_in(plate.outline, model::PlanAxis::x));
    const std::string depth = bare_fraction(extent_in(plate.outline, model::PlanAxis::y));
    const std::string thickness = bare_fraction(plate.thickness_in);
    plate.id = without_blanks(fmt::format("{}x{}-{}", width, depth, thickness));
    plate.name = fmt::format("{} x {} in plate, {} in", width, depth, thickness);
    on_deck(detail).plate_reference.reset();
}

Position center_of(const model::Outline& outline) {
    double low_x = 1e9, high_x = -1e9, low_y = 1e9, high_y = -1e9;
    for (const Position corner : model::polygon(outline)) {
        low_x = std::min(low_x, corner.x_in);
        high_x = std::max(high_x, corner.x_in);
        low_y = std::min(low_y, corner.y_in);
        high_y = std::max(high_y, corner.y_in);
    }
    return {0.5 * (low_x + high_x), 0.5 * (low_y + high_y)};
}

/// A hole's place once an edge on its side has moved by `grown_in`; one in the middle stays.
double with_its_edge(double place_in, double middle_in, double grown_in) {
    constexpr double in_the_middle_in = 0.05;
    const double off_in = place_in - middle_in;
    if (std::abs(off_in) < in_the_middle_in) return place_in;
    return place_in + std::copysign(grown_in, off_in);
}

/// What lies under all bolts grows with the plate.
void grow_lower_plates(BaseDetail& detail, double wider_in, double deeper_in) {
    for (model::AnchorGroup& group : anchor_groups(detail)) {
        auto* const bolt = std::get_if<model::ThroughBolt>(&group.fastener);
        if (bolt == nullptr) continue;
        if (auto* const lower = std::get_if<model::LowerPlate>(&bolt->below)) {
            lower->width_in += wider_in;
            lower->depth_in += deeper_in;
        }
    }
}

/// Packing whose places were given stands about the anchors, wherever they are now.
void packing_follows(BaseDetail& detail) {
    if (on_deck(detail).layers.packing) on_deck(detail).layers.packing->places.clear();
}

Applied foot_on_plate(const BaseDetail& detail) {
    const model::Footprint foot = model::footprint(detail.post);
    const double reach = foot.round ? std::sqrt(0.5) : 1.0;
    for (const double x : {-0.5, 0.5}) {
        for (const double y : {-0.5, 0.5}) {
            const Position corner{reach * x * foot.width_in, reach * y * foot.depth_in};
            if (model::edge_distance_in(on_deck(detail).plate.outline, corner) < 0.0)
                return refused(phrase("the post's foot hangs over the plate's edge"));
        }
    }
    return {};
}

/// Its sizes, and its holes clear of its edges and of one another.
Applied sound_plate(const Plate& plate) {
    const model::Problems problems = model::validate(plate);
    return problems.empty() ? Applied{} : refused(problems.front().message);
}

Applied differing_anchors() { return refused(phrase("the detail's anchors are not all alike")); }

/// All anchors alike in the first group, which then fills every hole; false where they differ.
bool one_group(BaseDetail& detail) {
    std::vector<model::AnchorGroup>& groups = anchor_groups(detail);
    if (groups.empty()) return false;
    for (model::AnchorGroup& group : groups) group.holes.clear();
    if (std::any_of(groups.begin(), groups.end(), [&](const auto& group) { return group != groups.front(); }))
        return false;
    groups.resize(1);
    return true;
}

bool has_every_hole(const Plate& plate, const std::vector<model::AnchorGroup>& groups) {
    std::set<std::string> ids;
    for (const Hole& hole : plate.holes) ids.insert(hole.id);
    return std::all_of(groups.begin(), groups.end(), [&](const model::AnchorGroup& group) {
        return std::all_of(group.holes.begin(), group.holes.end(),
                           [&](const std::string& hole) { return ids.count(hole) == 1; });
    });
}

/// Places of `count` holes on a line about the middle.
std::vector<double> places_on_line(int count, double between_in, double middle_in) {
    std::vector<double> places;
    places.reserve(static_cast<std::size_t>(std::max(count, 0)));
    for (int hole = 0; hole < count; ++hole) places.push_back(middle_in + (hole - 0.5 * (count - 1)) * between_in);
    return places;
}

double between_in(int count, double extent_in, double edge_in, const std::optional<double>& spacing_in) {
    if (count < 2) return 0.0;
    return spacing_in.value_or((extent_in - 2.0 * edge_in) / (count - 1));
}

/// Whether holes at this distance from both edges would have passed one another.
bool past_middle(int count, double extent_in, double edge_in, const std::optional<double>& spacing_in) {
    return count > 1 && !spacing_in && 2.0 * edge_in >= extent_in;
}

/// A, B ... Z, then A2, B2 ...
std::string letter(std::size_t index) {
    constexpr std::size_t letters = 26;
    std::string id(1, static_cast<char>('A' + index % letters));
    if (index >= letters) id += std::to_string(1 + index / letters);
    return id;
}

}  // namespace

double hole_width_in(const Hole& hole) {
    if (const auto* const slot = std::get_if<model::Slot>(&hole.shape)) return slot->width_in;
    return std::get<model::RoundHole>(hole.shape).diameter_in;
}

Applied resize_plate(BaseDetail& detail, double width_in, double depth_in, Holes holes) {
    Plate& plate = on_deck(detail).plate;
    const Position center = center_of(plate.outline);
    const double wider_in = width_in - extent_in(plate.outline, model::PlanAxis::x);
    const double deeper_in = depth_in - extent_in(plate.outline, model::PlanAxis::y);
    double radius_in = 0.0;
    if (const auto* const before = std::get_if<model::RectangleOutline>(&plate.outline))
        radius_in = std::min(before->corner_radius_in, 0.5 * std::min(width_in, depth_in));
    plate.outline = model::RectangleOutline{width_in, depth_in, radius_in, center};
    for (Hole& hole : plate.holes) {
        hole.center.x_in = with_its_edge(hole.center.x_in, center.x_in, 0.5 * wider_in);
        hole.center.y_in = with_its_edge(hole.center.y_in, center.y_in, 0.5 * deeper_in);
    }
    grow_lower_plates(detail, wider_in, deeper_in);
    packing_follows(detail);
    name_as_cut(detail);
    if (Applied foot = foot_on_plate(detail); !foot) return foot;
    return holes == Holes::laid_out_next ? Applied{} : sound_plate(plate);
}

Applied take_plate(BaseDetail& detail, const Plate& plate) {
    if (!has_every_hole(plate, anchor_groups(detail)) && !one_group(detail)) return differing_anchors();
    const Plate& before = on_deck(detail).plate;
    grow_lower_plates(detail,
                      extent_in(plate.outline, model::PlanAxis::x) - extent_in(before.outline, model::PlanAxis::x),
                      extent_in(plate.outline, model::PlanAxis::y) - extent_in(before.outline, model::PlanAxis::y));
    on_deck(detail).plate = plate;
    on_deck(detail).plate_reference.reset();
    packing_follows(detail);
    return foot_on_plate(detail);
}

Applied set_plate_thickness(BaseDetail& detail, double thickness_in) {
    if (on_deck(detail).plate.thickness_in == thickness_in) return {};
    on_deck(detail).plate.thickness_in = thickness_in;
    name_as_cut(detail);
    return {};
}

Applied set_plate_metal(BaseDetail& detail, const std::string& metal) {
    if (on_deck(detail).plate.metal == metal) return {};
    on_deck(detail).plate.metal = metal;
    name_as_cut(detail);
    return {};
}

Applied lay_out_holes(BaseDetail& detail, const Pattern& pattern) {
    Plate& plate = on_deck(detail).plate;
    if (plate.holes.empty()) return refused(phrase("the plate has no hole for an anchor"));
    if (!one_group(detail)) return differing_anchors();
    const double hole_in = hole_width_in(plate.holes.front());
    const Position center = center_of(plate.outline);
    const double width_in = extent_in(plate.outline, model::PlanAxis::x);
    const double depth_in = extent_in(plate.outline, model::PlanAxis::y);
    if (past_middle(pattern.across, width_in, pattern.edge_in, pattern.spacing_x_in) ||
        past_middle(pattern.deep, depth_in, pattern.edge_in, pattern.spacing_y_in))
        return refused(phrase("the plate is too small for holes at that distance from its edges"));
    const std::vector<double> columns = places_on_line(
        pattern.across, between_in(pattern.across, width_in, pattern.edge_in, pattern.spacing_x_in), center.x_in);
    const std::vector<double> rows = places_on_line(
        pattern.deep, between_in(pattern.deep, depth_in, pattern.edge_in, pattern.spacing_y_in), center.y_in);
    plate.holes.clear();
    // Lettered up the first column, down the next: clockwise in plan from the heel's left.
    for (std::size_t column = 0; column < columns.size(); ++column) {
        for (std::size_t step = 0; step < rows.size(); ++step) {
            const std::size_t row = column % 2 == 0 ? step : rows.size() - 1 - step;
            plate.holes.push_back(
                {letter(plate.holes.size()), {columns[column], rows[row]}, model::RoundHole{hole_in}});
        }
    }
    packing_follows(detail);
    name_as_cut(detail);
    return sound_plate(plate);
}

Applied drill_holes(BaseDetail& detail, double hole_in, Holes holes) {
    Plate& plate = on_deck(detail).plate;
    bool changes = false;
    for (Hole& hole : plate.holes) {
        const std::variant<model::RoundHole, model::Slot> drilled = model::RoundHole{hole_in};
        changes = changes || hole.shape != drilled;
        hole.shape = drilled;
    }
    if (changes) name_as_cut(detail);
    return holes == Holes::laid_out_next ? Applied{} : sound_plate(plate);
}

}  // namespace toehold::search
