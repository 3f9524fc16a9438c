#include "window/sheet/context_menu.h"

#include "editing/edits.h"
#include "editing/hand_tools.h"
#include "editing/picked.h"
#include "model/placement.h"
#include "window/sheet/canvas.h"
#include "window/text.h"

#include <wx/intl.h>
#include <wx/menu.h>

#include <algorithm>
#include <cmath>
#include <functional>
#include <numbers>
#include <vector>

namespace toehold::window {

using editing::MirrorLine;

namespace {

using Parts = std::vector<model::PartId>;

struct MenuEntry {
    wxString label;  ///< with its mnemonic; empty: a line between groups
    std::function<void()> act;
};

constexpr double copy_offset_in = 1.0;
constexpr double slot_longer_by_in = 0.25;

double width_in(const model::Hole& hole) {
    if (const auto* round = std::get_if<model::RoundHole>(&hole.shape)) return round->diameter_in;
    return std::get<model::Slot>(hole.shape).width_in;
}

/// A slot toward the post, a quarter of an inch longer than the hole is wide.
editing::Edit slotted(const model::BaseDetail& detail, const Parts& parts, const model::Hole& hole) {
    const double angle = std::atan2(hole.center.y_in, hole.center.x_in) * 180 / std::numbers::pi;
    return editing::to_slot(detail, parts, width_in(hole) + slot_longer_by_in, std::round(angle));
}

/// About the post's axis; of a plate, whose drawing has two, about the other too.
void add_mirror_entries(std::vector<MenuEntry>& entries, session::Session& session, const Parts& parts, bool in_plan) {
    const auto mirrored = [&session, parts](MirrorLine line, bool keep) {
        return [&session, parts, line, keep] { session.apply(editing::mirror(session.detail(), parts, line, keep)); };
    };
    if (!in_plan) {
        entries.push_back({_("Copy to the other &side of the post"), mirrored(MirrorLine::y_axis, true)});
        entries.push_back({_("&Mirror about the post's axis"), mirrored(MirrorLine::y_axis, false)});
        return;
    }
    entries.push_back({_("Copy to the other &side of the post (across y)"), mirrored(MirrorLine::y_axis, true)});
    entries.push_back({_("Copy to the other &row (across x)"), mirrored(MirrorLine::x_axis, true)});
    entries.push_back({_("&Mirror across y"), mirrored(MirrorLine::y_axis, false)});
    entries.push_back({_("M&irror across x"), mirrored(MirrorLine::x_axis, false)});
}

void add_hole_entries(std::vector<MenuEntry>& entries, session::Session& session, const Parts& parts,
                      const model::Hole& hole) {
    const bool slot = std::holds_alternative<model::Slot>(hole.shape);
    entries.push_back({{}, {}});
    if (slot)
        entries.push_back(
            {_("R&ound hole"), [&session, parts] { session.apply(editing::to_round(session.detail(), parts)); }});
    else
        entries.push_back(
            {_("S&lot"), [&session, parts, hole] { session.apply(slotted(session.detail(), parts, hole)); }});
}

void add_part_entries(std::vector<MenuEntry>& entries, session::Session& session, const model::PartId& part,
                      const Parts& parts) {
    const auto hole = editing::hole_at(session.detail(), part);
    const bool anchor = part.kind == model::PartKind::anchor, block = part.kind == model::PartKind::block;
    if (anchor || block)
        entries.push_back(
            {_("D&uplicate"), [&session, parts] {
                 session.apply(editing::duplicate(session.detail(), parts, {copy_offset_in, copy_offset_in}));
             }});
    if (anchor) add_mirror_entries(entries, session, parts, hole.has_value());
    if (hole) add_hole_entries(entries, session, parts, *hole);
    if (anchor || block || part.kind == model::PartKind::joist || part.kind == model::PartKind::tie) {
        entries.push_back(
            {_("&Delete"), [&session, parts] { session.apply(editing::erase(session.detail(), parts)); }});
        entries.push_back({{}, {}});
    }
}

void add_push_entries(std::vector<MenuEntry>& entries, session::Session& session) {
    const auto turn = [&session](std::optional<double> direction) {
        return [&session, direction] { session.turn_push(direction); };
    };
    constexpr double right = std::numbers::pi / 2;
    entries.push_back({_("The push that &governs"), turn(std::nullopt)});
    entries.push_back({_("Push &outward"), turn(right)});
    entries.push_back({_("Push &inward"), turn(3 * right)});
    entries.push_back({_("Push along the rail, &right"), turn(0.0)});
    entries.push_back({_("Push along the rail, &left"), turn(2 * right)});
}

void add_place_entries(std::vector<MenuEntry>& entries, session::Session& session, model::Position at) {
    const editing::HandTools tools = editing::hand_tools(session.detail());
    entries.push_back({text_of(tools.add_anchor, session.locale()),
                       [&session, at] { session.apply(editing::add_hole(session.detail(), at)); }});
    if (tools.shapes)
        entries.push_back(
            {_("Add a &corner here"), [&session, at] { session.apply(editing::add_corner(session.detail(), at)); }});
    if (tools.framing)
        entries.push_back(
            {_("Add a &block here"), [&session, at] { session.apply(editing::add_block(session.detail(), at)); }});
    if (editing::corners_can_be_freed(session.detail()))
        entries.push_back(
            {_("Outline of &free corners"), [&session] { session.apply(editing::to_polygon(session.detail())); }});
}

std::vector<MenuEntry> part_entries(session::Session& session, const MenuSubject& subject) {
    std::vector<MenuEntry> entries;
    if (subject.part.kind == model::PartKind::push) {
        add_push_entries(entries, session);
        return entries;
    }
    if (subject.part.kind != model::PartKind::none)
        add_part_entries(entries, session, subject.part, session.selection());
    if (subject.at_in) add_place_entries(entries, session, *subject.at_in);
    return entries;
}

void add_drawing_entries(std::vector<MenuEntry>& entries, SheetCanvas& canvas, const SheetState& sheet) {
    if (!entries.empty()) entries.push_back({{}, {}});
    entries.push_back({_("&Fit this drawing\t0"), [&canvas] { canvas.fit_active(); }});
    entries.push_back({sheet.view.alone() ? _("Show &all drawings\tM") : _("This drawing &alone\tM"),
                       [&canvas, &sheet] { canvas.toggle_alone(sheet.active); }});
}

void choose(SheetCanvas& canvas, const std::vector<MenuEntry>& entries) {
    constexpr int first = wxID_HIGHEST + 1000;
    wxMenu menu;
    for (std::size_t i = 0; i < entries.size(); ++i) {
        if (entries[i].label.empty())
            menu.AppendSeparator();
        else
            menu.Append(first + static_cast<int>(i), entries[i].label);
    }
    const int chosen = canvas.GetPopupMenuSelectionFromUser(menu);
    const auto index = static_cast<std::size_t>(chosen - first);
    if (chosen != wxID_NONE && index < entries.size() && entries[index].act) entries[index].act();
}

}  // namespace

MenuSubject menu_of_selection(const SheetState& sheet) {
    const auto& selection = sheet.session.selection();
    return {selection.empty() ? model::PartId{} : selection.back(), std::nullopt};
}

MenuSubject menu_at(SheetState& sheet, CellKind cell, drawing::Point on_sheet) {
    MenuSubject subject;
    if (!contains(sheet.view.areas(cell).title, on_sheet)) subject.part = sheet.view.part_at(cell, on_sheet);
    if (cell != CellKind::plan) return subject;
    const auto at =
        editing::snap(sheet.view.to_drawing(cell, on_sheet), sheet.session.detail(), snap_rules(sheet, cell)).at;
    subject.at_in = model::Position{at.x, at.y};
    return subject;
}

void show_context_menu(SheetCanvas& canvas, SheetState& sheet, const MenuSubject& subject) {
    auto& session = sheet.session;
    const auto& part = subject.part;
    if (part.kind != model::PartKind::none && part.kind != model::PartKind::push &&
        !model::contains(session.selection(), part))
        session.select({part});
    auto entries = part_entries(session, subject);
    if (editing::place_of(session.detail(), part))
        entries.push_back({_("&Place at..."), [&canvas] { focus_place_entry(canvas); }});
    add_drawing_entries(entries, canvas, sheet);
    choose(canvas, entries);
}

void focus_place_entry(wxWindow& window) {
    if (auto* entry = wxWindow::FindWindowByName("place-x", wxGetTopLevelParent(&window))) entry->SetFocus();
}

}  // namespace toehold::window
