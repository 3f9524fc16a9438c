#include "window/sheet/part_menu.h"

#include "drawing/parts.h"

#include <wx/intl.h>

#include <algorithm>
#include <cmath>
#include <numbers>

namespace toehold::window {

using editing::MirrorLine;

namespace {

using Parts = std::vector<std::string>;

constexpr double copy_offset_in = 1.0;
constexpr double slot_longer_by_in = 0.25;

double width_in(const model::Hole& hole) {
    if (const auto* round = std::get_if<model::RoundHole>(&hole.shape)) return round->diameter_in;
    return std::get<model::Slot>(hole.shape).width_in;
}

const model::Hole* hole_of(const model::BaseDetail& detail, const std::string& part) {
    const auto id = drawing::id_of(part, "anchor");
    const auto& holes = detail.plate.holes;
    const auto found =
        std::find_if(holes.begin(), holes.end(), [&id](const model::Hole& hole) { return hole.id == id; });
    return found == holes.end() ? nullptr : &*found;
}

/// A slot towards the post, a quarter of an inch longer than the hole is wide.
editing::Edit slotted(const model::BaseDetail& detail, const Parts& parts, const model::Hole& hole) {
    const double angle = std::atan2(hole.center.y_in, hole.center.x_in) * 180 / std::numbers::pi;
    return editing::to_slot(detail, parts, width_in(hole) + slot_longer_by_in, std::round(angle));
}

void add_hole_entries(std::vector<MenuEntry>& entries, desk::Desk& desk, const Parts& parts, const model::Hole& hole) {
    const bool slot = std::holds_alternative<model::Slot>(hole.shape);
    const auto mirrored = [&desk, parts](MirrorLine line, bool keep) {
        return [&desk, parts, line, keep] { desk.apply(editing::mirror(desk.detail(), parts, line, keep)); };
    };
    entries.push_back({_("Copy to the other &side of the post (across y)"), mirrored(MirrorLine::y_axis, true)});
    entries.push_back({_("Copy to the other &row (across x)"), mirrored(MirrorLine::x_axis, true)});
    entries.push_back({_("&Mirror across y"), mirrored(MirrorLine::y_axis, false)});
    entries.push_back({_("M&irror across x"), mirrored(MirrorLine::x_axis, false)});
    entries.push_back({{}, {}});
    if (slot)
        entries.push_back(
            {_("Make it r&ound"), [&desk, parts] { desk.apply(editing::to_round(desk.detail(), parts)); }});
    else
        entries.push_back(
            {_("Make it a s&lot"), [&desk, parts, hole] { desk.apply(slotted(desk.detail(), parts, hole)); }});
}

void add_part_entries(std::vector<MenuEntry>& entries, desk::Desk& desk, const std::string& part, const Parts& parts) {
    const auto* hole = hole_of(desk.detail(), part);
    const bool block = !drawing::id_of(part, "block").empty();
    if (hole || block)
        entries.push_back({_("D&uplicate"), [&desk, parts] {
                               desk.apply(editing::duplicate(desk.detail(), parts, {copy_offset_in, copy_offset_in}));
                           }});
    if (hole) add_hole_entries(entries, desk, parts, *hole);
    if (hole || block || !drawing::id_of(part, "joist").empty()) {
        entries.push_back({_("&Delete"), [&desk, parts] { desk.apply(editing::erase(desk.detail(), parts)); }});
        entries.push_back({{}, {}});
    }
}

void add_push_entries(std::vector<MenuEntry>& entries, desk::Desk& desk) {
    const auto turn = [&desk](std::optional<double> direction) {
        return [&desk, direction] { desk.turn_push(direction); };
    };
    constexpr double right = std::numbers::pi / 2;
    entries.push_back({_("The push that &governs"), turn(std::nullopt)});
    entries.push_back({_("Push &outward"), turn(right)});
    entries.push_back({_("Push &inward"), turn(3 * right)});
    entries.push_back({_("Push along the rail, &right"), turn(0.0)});
    entries.push_back({_("Push along the rail, &left"), turn(2 * right)});
}

void add_place_entries(std::vector<MenuEntry>& entries, desk::Desk& desk, model::Position at) {
    entries.push_back({_("Add a &hole here"), [&desk, at] { desk.apply(editing::add_hole(desk.detail(), at)); }});
    entries.push_back({_("Add a &corner here"), [&desk, at] { desk.apply(editing::add_corner(desk.detail(), at)); }});
    entries.push_back({_("Add a &block here"), [&desk, at] { desk.apply(editing::add_block(desk.detail(), at)); }});
    if (!std::holds_alternative<model::PolygonOutline>(desk.detail().plate.outline))
        entries.push_back({_("Outline of &free corners"), [&desk] { desk.apply(editing::to_polygon(desk.detail())); }});
}

}  // namespace

std::vector<MenuEntry> part_menu(desk::Desk& desk, const std::string& part,
                                 const std::optional<model::Position>& at_in) {
    std::vector<MenuEntry> entries;
    if (part == "push") {
        add_push_entries(entries, desk);
        return entries;
    }
    if (!part.empty()) add_part_entries(entries, desk, part, desk.selection());
    if (at_in) add_place_entries(entries, desk, *at_in);
    return entries;
}

}  // namespace toehold::window
