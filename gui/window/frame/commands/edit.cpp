// The Edit menu.
#include "editing/edits.h"
#include "editing/hand_tools.h"
#include "editing/picked.h"
#include "window/dialogs/plate_list.h"
#include "window/dialogs/quantity_dialog.h"
#include "window/frame/application.h"
#include "window/frame/commands.h"
#include "window/frame/detail_frame.h"
#include "window/frame/menus.h"
#include "window/sheet/canvas.h"
#include "window/text.h"

#include <wx/clipbrd.h>
#include <wx/translation.h>

#include <string>
#include <vector>

namespace toehold::window {

namespace {

constexpr double duplicate_offset_in = 0.5;

using Parts = std::vector<model::PartId>;

bool copy(session::Session& session) {
    const wxClipboardLocker lock;
    const std::string holes = editing::copy_holes(session.detail(), session.selection());
    if (!lock || holes.empty()) return false;
    return wxTheClipboard->SetData(new wxTextDataObject(text_of(holes)));
}

void paste(session::Session& session) {
    wxTextDataObject text;
    {
        const wxClipboardLocker lock;
        if (!lock || !wxTheClipboard->GetData(text)) {
            session.say(said(_("There are no holes to paste.")));
            return;
        }
    }
    session.apply(editing::paste_holes(session.detail(), utf8(text.GetText())));
}

void select_all_anchors(session::Session& session) { session.select(editing::all_anchors(session.detail())); }

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

void mirror(wxWindow* parent, session::Session& session) {
    std::vector<wxString> axes{_("the y axis: side to side")};
    if (editing::hand_tools(session.detail()).framing) axes.insert(axes.begin(), _("the x axis: front to back"));
    const std::size_t last = axes.size() - 1;
    const auto values = ask_quantities(
        parent, _("Mirror"), {choice(_("&About"), std::move(axes)), choice(_("&Originals"), {_("keep"), _("remove")})},
        session.display().system);
    if (!values) return;
    const bool about_y = (*values)[0] == static_cast<double>(last);
    const auto line = about_y ? editing::MirrorLine::y_axis : editing::MirrorLine::x_axis;
    session.apply(editing::mirror(session.detail(), session.selection(), line, (*values)[1] == 0.0));
}

void array(wxWindow* parent, session::Session& session) {
    const editing::HandTools tools = editing::hand_tools(session.detail());
    const wxString rows = text_of(tools.rows, session.locale()), pitch = text_of(tools.row_pitch, session.locale());
    const auto values = ask_quantities(
        parent, _("Array"),
        {count(_("&Columns, along the rail"), 2, 1), quantity(_("&Pitch along the rail"), 3.0, units::Kind::length),
         count(rows, 1, 1), quantity(pitch, 3.0, units::Kind::length)},
        session.display().system);
    if (!values) return;
    session.apply(editing::array(session.detail(), session.selection(), static_cast<int>((*values)[0]),
                                 static_cast<int>((*values)[2]), (*values)[1], (*values)[3]));
}

void round_array(wxWindow* parent, session::Session& session) {
    const auto values = ask_quantities(parent, _("Round array"), {count(_("&Total holes around the post"), 4, 2)},
                                       session.display().system);
    if (values)
        session.apply(editing::array_round(session.detail(), session.selection(), static_cast<int>((*values)[0])));
}

void slot(wxWindow* parent, session::Session& session) {
    const auto values = ask_quantities(parent, _("Slot"),
                                       {quantity(_("&Length, end to end"), 1.0, units::Kind::length),
                                        quantity(_("&Angle from the rail"), 0.0, units::Kind::angle)},
                                       session.display().system);
    if (values) session.apply(editing::to_slot(session.detail(), session.selection(), (*values)[0], (*values)[1]));
}

bool run_asking(int id, wxWindow* parent, session::Session& session) {
    switch (id) {
        case command_mirror:
            mirror(parent, session);
            return true;
        case command_array:
            array(parent, session);
            return true;
        case command_round_array:
            round_array(parent, session);
            return true;
        case command_slot:
            slot(parent, session);
            return true;
        default:
            return false;
    }
}

/// Tools that add something to the plan: the next press there says where.
bool run_adding(int id, SheetCanvas& sheet) {
    switch (id) {
        case command_add_hole:
            sheet.set_tool(Tool::hole);
            break;
        case command_add_corner:
            sheet.set_tool(Tool::corner);
            break;
        case command_add_block:
            sheet.set_tool(Tool::block);
            break;
        default:
            return false;
    }
    sheet.SetFocus();
    return true;
}

void use_other_plate(const CommandTarget& target) {
    const auto plate = ask_stock_plate(&target.frame, target.application);
    if (plate) target.session.apply(editing::use_plate(target.session.detail(), *plate));
}

}  // namespace

bool run_edit_command(int id, const CommandTarget& target) {
    session::Session& session = target.session;
    const Parts parts = session.selection();
    switch (id) {
        case wxID_UNDO:
            session.undo();
            return true;
        case wxID_REDO:
            session.redo();
            return true;
        case wxID_CUT:
            if (copy(session)) session.apply(editing::erase(session.detail(), parts));
            return true;
        case wxID_COPY:
            session.say(copy(session) ? said(_("Copied.")) : editing::hand_tools(session.detail()).select_to_copy);
            return true;
        case wxID_PASTE:
            paste(session);
            return true;
        case wxID_DELETE:
            session.apply(editing::erase(session.detail(), parts));
            return true;
        case wxID_SELECTALL:
            select_all_anchors(session);
            return true;
        case command_duplicate:
            session.apply(editing::duplicate(session.detail(), parts, {duplicate_offset_in, duplicate_offset_in}));
            return true;
        case command_round:
            session.apply(editing::to_round(session.detail(), parts));
            return true;
        case command_polygon:
            session.apply(editing::to_polygon(session.detail()));
            return true;
        case command_stock_plate:
            use_other_plate(target);
            return true;
        default:
            return run_adding(id, target.panes.sheet()) || run_asking(id, &target.frame, session);
    }
}

}  // namespace toehold::window
