#include "window/edit_commands.h"

#include "drawing/parts.h"
#include "editing/edits.h"
#include "window/menus.h"
#include "window/paths.h"
#include "window/quantity_dialog.h"

#include <wx/clipbrd.h>
#include <wx/translation.h>

#include <string>
#include <vector>

namespace toehold::window {

namespace {

constexpr double duplicate_offset_in = 0.5;

using Parts = std::vector<std::string>;

bool copy(desk::Desk& desk) {
    const wxClipboardLocker lock;
    const std::string holes = editing::copy_holes(desk.detail(), desk.selection());
    if (!lock || holes.empty()) return false;
    return wxTheClipboard->SetData(new wxTextDataObject(shown_text(holes)));
}

void paste(desk::Desk& desk) {
    wxTextDataObject text;
    {
        const wxClipboardLocker lock;
        if (!lock || !wxTheClipboard->GetData(text)) {
            desk.say(plain_text(_("There are no holes to paste.")));
            return;
        }
    }
    desk.apply(editing::paste_holes(desk.detail(), plain_text(text.GetText())));
}

void select_all_anchors(desk::Desk& desk) {
    Parts all;
    for (const model::Hole& hole : desk.detail().plate.holes) all.push_back(drawing::anchor_part(hole.id));
    desk.select(all);
}

Row choice(const wxString& label, std::vector<wxString> choices) {
    Row row;
    row.label = label;
    row.kind = Row::Kind::choice;
    row.choices = std::move(choices);
    return row;
}
Row count(const wxString& label, int start, int least) {
    Row row;
    row.label = label;
    row.kind = Row::Kind::count;
    row.start = start;
    row.least = least;
    return row;
}
Row quantity(const wxString& label, double start, units::Kind kind) {
    Row row;
    row.label = label;
    row.start = start;
    row.quantity = kind;
    return row;
}

void mirror(wxWindow* parent, desk::Desk& desk) {
    const auto values =
        ask_quantities(parent, _("Mirror"),
                       {choice(_("&About"), {_("the x axis: front to back"), _("the y axis: side to side")}),
                        choice(_("&Originals"), {_("stay"), _("go")})},
                       desk.display().system);
    if (!values) return;
    const auto line = (*values)[0] == 0.0 ? editing::MirrorLine::x_axis : editing::MirrorLine::y_axis;
    desk.apply(editing::mirror(desk.detail(), desk.selection(), line, (*values)[1] == 0.0));
}

void array(wxWindow* parent, desk::Desk& desk) {
    const auto values = ask_quantities(
        parent, _("Array"),
        {count(_("&Columns, along the rail"), 2, 1), quantity(_("&Pitch along the rail"), 3.0, units::Kind::length),
         count(_("&Rows, outward"), 1, 1), quantity(_("P&itch outward"), 3.0, units::Kind::length)},
        desk.display().system);
    if (!values) return;
    desk.apply(editing::array(desk.detail(), desk.selection(), static_cast<int>((*values)[0]),
                              static_cast<int>((*values)[2]), (*values)[1], (*values)[3]));
}

void round_array(wxWindow* parent, desk::Desk& desk) {
    const auto values = ask_quantities(parent, _("Round array"), {count(_("&Holes in all, around the post"), 4, 2)},
                                       desk.display().system);
    if (values) desk.apply(editing::array_round(desk.detail(), desk.selection(), static_cast<int>((*values)[0])));
}

void slot(wxWindow* parent, desk::Desk& desk) {
    const auto values = ask_quantities(parent, _("Slot"),
                                       {quantity(_("&Length, end to end"), 1.0, units::Kind::length),
                                        quantity(_("&Angle from the rail"), 0.0, units::Kind::angle)},
                                       desk.display().system);
    if (values) desk.apply(editing::to_slot(desk.detail(), desk.selection(), (*values)[0], (*values)[1]));
}

bool run_asking(int id, wxWindow* parent, desk::Desk& desk) {
    switch (id) {
        case command_mirror:
            mirror(parent, desk);
            return true;
        case command_array:
            array(parent, desk);
            return true;
        case command_round_array:
            round_array(parent, desk);
            return true;
        case command_slot:
            slot(parent, desk);
            return true;
        default:
            return false;
    }
}

}  // namespace

bool run_edit_command(int id, wxWindow* parent, desk::Desk& desk) {
    const Parts parts = desk.selection();
    switch (id) {
        case wxID_UNDO:
            desk.undo();
            return true;
        case wxID_REDO:
            desk.redo();
            return true;
        case wxID_CUT:
            if (copy(desk)) desk.apply(editing::erase(desk.detail(), parts));
            return true;
        case wxID_COPY:
            desk.say(plain_text(copy(desk) ? _("Copied.") : _("Select the holes to copy first.")));
            return true;
        case wxID_PASTE:
            paste(desk);
            return true;
        case wxID_DELETE:
            desk.apply(editing::erase(desk.detail(), parts));
            return true;
        case wxID_SELECTALL:
            select_all_anchors(desk);
            return true;
        case command_duplicate:
            desk.apply(editing::duplicate(desk.detail(), parts, {duplicate_offset_in, duplicate_offset_in}));
            return true;
        case command_round:
            desk.apply(editing::to_round(desk.detail(), parts));
            return true;
        case command_polygon:
            desk.apply(editing::to_polygon(desk.detail()));
            return true;
        default:
            return run_asking(id, parent, desk);
    }
}

}  // namespace toehold::window
