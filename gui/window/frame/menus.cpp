#include "window/frame/menus.h"

#include "editing/hand_tools.h"
#include "editing/sheet_words.h"
#include "window/frame/menu_items.h"
#include "window/text.h"

#include <wx/control.h>
#include <wx/frame.h>
#include <wx/translation.h>

#include <algorithm>
#include <array>
#include <initializer_list>
#include <string>
#include <string_view>

namespace toehold::window {

namespace {

wxMenu* papers_menu() {
    auto* menu = new wxMenu;
    append(
        *menu,
        {{command_report, _("Calculation &report...\tCtrl+R"), _("Every check with its worked steps, for a reviewer")},
         {command_letter, _("&Comment letter..."), _("The remarks kept with the detail, as a letter")},
         separator,
         {command_shop_drawing, _("&Shop drawing..."), _("The plate with dimensions, holes, weld and anchors")},
         {command_cutting_file, _("C&utting file..."), _("The plate's outline and holes for a cutting table (DXF)")},
         {command_site_sheet, _("Site s&heet..."), _("One page for the crew installing the blocking")},
         separator,
         {command_plan, _("&Plan alone..."), _("One drawing as a picture")},
         {command_section, _("S&ection alone..."), _("One drawing as a picture")},
         {command_elevation, _("E&levation alone..."), _("One drawing as a picture")},
         separator,
         {command_anchors_table, _("Table of &anchors..."), _("Forces on every anchor, for a spreadsheet (CSV)")},
         {command_checks_table, _("&Table of checks..."), _("Every result, for a spreadsheet (CSV)")}});
    return menu;
}

wxMenu* file_menu(wxMenu*& recent) {
    auto* menu = new wxMenu;
    append(*menu,
           {{command_new, _("&New from the job...\tCtrl+N"), _("A new detail from a few answers about the job")},
            {command_new_on_plate, _("New from s&tock plate..."), _("A new detail on a plate of the stock list")},
            {command_new_side_post, _("New on the s&ide"),
             _("A new detail of a wood post bolted to the side of a rim, as an example to change")},
            {wxID_OPEN, _("&Open...\tCtrl+O"), _("Open a base detail, a project, or a plate to start a detail on")}});
    recent = new wxMenu;
    menu->AppendSubMenu(recent, _("Open &recent"), _("Files opened before"));
    append(*menu, {separator,
                   {wxID_SAVE, _("&Save\tCtrl+S"), _("Save the detail to its file")},
                   {wxID_SAVEAS, _("Save &as...\tCtrl+Shift+S"), _("Save the detail to another file")},
                   {command_put_back, _("Put into the pro&ject"),
                    _("Give the project this post and mount in place of its own")},
                   {command_revert, _("Re&vert to saved"), _("Reload the file and discard every change since")},
                   separator});
    menu->AppendSubMenu(papers_menu(), _("Pap&ers"), _("Report, shop drawing, site sheet and other files"));
    append(*menu, {{wxID_PAGE_SETUP, _("Page set&up..."), _("Paper size, orientation and margins")},
                   {wxID_PREVIEW, _("Print previe&w\tCtrl+Shift+P"), _("The sheet as it will be printed")},
                   {wxID_PRINT, _("&Print...\tCtrl+P"), _("Print the sheet")},
                   separator,
                   {wxID_CLOSE, _("&Close\tCtrl+W"), _("Close this window")},
                   {wxID_EXIT, _("&Quit\tCtrl+Q"), _("Close every window")}});
    return menu;
}

wxMenu* edit_menu() {
    auto* menu = new wxMenu;
    append(*menu, {{wxID_UNDO, _("&Undo\tCtrl+Z"), _("Undo the last step")},
                   {wxID_REDO, _("&Redo\tCtrl+Shift+Z"), _("Redo the step undone")},
                   separator,
                   {wxID_CUT, _("Cu&t\tCtrl+X"), _("Cut the selected holes")},
                   {wxID_COPY, _("&Copy\tCtrl+C"), _("Copy the selected holes")},
                   {wxID_PASTE, _("&Paste\tCtrl+V"), _("Paste holes copied here or in another window")},
                   {command_duplicate, _("Dupl&icate\tCtrl+D"), _("Copies of the selected parts beside them")},
                   {wxID_DELETE, _("&Delete\tDel"), _("Delete the selected parts")},
                   {wxID_SELECTALL, _("Select &all anchors\tCtrl+A"), _("Select every anchor of the plate")},
                   separator,
                   {command_mirror, _("&Mirror...\tCtrl+M"), _("Mirror the selected parts about an axis of the post")},
                   {command_array, _("Arra&y...\tCtrl+Shift+A"), _("The selected holes in rows and columns")},
                   {command_round_array, _("R&ound array..."), _("The selected holes around the post")},
                   {command_slot, _("&Slot..."), _("Turn the selected holes into slots")},
                   {command_round, _("Round &hole"), _("Turn the selected slots into round holes")},
                   separator,
                   {command_add_hole, _("Add ho&le\tCtrl+H"), _("Then click where the hole goes")},
                   {command_add_corner, _("Add cor&ner"), _("Then click the side that gets a corner")},
                   {command_add_block, _("Add &block\tCtrl+B"), _("Then click where the block goes")},
                   {command_polygon, _("Outline of &free corners"), _("Make every corner of the outline free")},
                   {command_stock_plate, _("Other stoc&k plate..."), _("Replace the plate with a stock plate")},
                   separator,
                   {wxID_PREFERENCES, _("Pr&eferences...\tCtrl+,"), _("Units, background, language and nudge")}});
    return menu;
}

wxMenu* view_menu() {
    auto* menu = new wxMenu;
    append(*menu,
           {{command_page_drawings, _("Drawings\tF2"), _("Plan, section, elevation and rose")},
            {command_page_sizes, _("Sizes\tF7"), _("Find plates, anchors and blocks that pass every check")},
            {command_page_charts, _("Charts\tF9"), _("What holds over one input or two")},
            separator,
            {wxID_ZOOM_FIT, _("&Fit\tCtrl+0"), _("Show each drawing whole")},
            {wxID_ZOOM_IN, _("Zoom &in\tCtrl++"), _("Larger")},
            {wxID_ZOOM_OUT, _("Zoom &out\tCtrl+-"), _("Smaller")},
            {command_tool_select, _("&Select and move"), _("Select parts and move them")},
            {command_tool_pan, _("Move the sheet"), _("Pan a drawing")},
            separator,
            {command_pressure, _("Bearing &pressure\tCtrl+1"), _("Show where the plate bears, and how hard"),
             wxITEM_CHECK},
            {command_bent, _("&Bent plate\tCtrl+2"), _("Draw the plate's deflection, exaggerated"), wxITEM_CHECK},
            {command_marks, _("Anchor &marks\tCtrl+3"), _("Numbers and bars of demand at the anchors"), wxITEM_CHECK},
            {command_dimensions, _("&Dimensions\tCtrl+4"), _("Distances to edges and between holes"), wxITEM_CHECK},
            {command_framing, _("F&raming below\tCtrl+5"), _("Blocks and joists under the plate"), wxITEM_CHECK},
            {command_holds, _("Where it holds\tCtrl+6"),
             _("Shade where the selected anchor or block may stand so that every check passes"), wxITEM_CHECK},
            separator,
            {command_hand, _("By &hand\tCtrl+Alt+1"), _("Lever arm to the plate's edge, pushes square to the plate"),
             wxITEM_RADIO},
            {command_rigid, _("Ri&gid plate\tCtrl+Alt+2"), _("Plate taken as rigid"), wxITEM_RADIO},
            {command_flexible, _("F&lexible plate\tCtrl+Alt+3"), _("Plate bending included"), wxITEM_RADIO},
            separator,
            {command_push_governing, _("Go&verning push\tCtrl+G"), _("The push that governs anchor tension")},
            {command_push_left, _("Turn push &counter-clockwise\t]"), _("Turn the push by 5 degrees")},
            {command_push_right, _("Turn push cloc&kwise\t["), _("Turn the push by 5 degrees")},
            separator,
            {command_us, _("&US units"), _("Inches and pounds"), wxITEM_RADIO},
            {command_si, _("SI u&nits"), _("Millimeters and newtons"), wxITEM_RADIO},
            separator,
            {command_ground_desktop, _("Background as the d&esktop"),
             _("Paper on a light desktop, night on a dark one"), wxITEM_RADIO},
            {command_ground_paper, _("Drafting p&aper"), _("Ink on paper"), wxITEM_RADIO},
            {command_ground_night, _("Nigh&t negative"), _("Pale lines on a dark sheet"), wxITEM_RADIO},
            separator,
            {command_show_fields, _("Properties pane\tF4"), _("Show or hide the detail's properties"), wxITEM_CHECK},
            {command_show_review, _("Checks pane\tF6"), _("Show or hide checks and notes"), wxITEM_CHECK},
            {command_reset_layout, _("Reset the la&yout"), _("Restore the original panes")}});
    return menu;
}

wxMenu* checks_menu() {
    auto* menu = new wxMenu;
    append(*menu, {{command_next_failing, _("&Next failing check\tF8"), _("Select the next check that does not pass")},
                   {command_explain, _("&Explain\tCtrl+E"), _("Show the worked steps of the selected check")},
                   {command_find_sizes, _("Find &sizes that hold\tCtrl+F7"),
                    _("Look for plates, anchors and blocks that pass every check")},
                   {command_remark, _("&Remark...\tCtrl+Shift+R"),
                    _("Add a remark on the selected result, saved with the detail")},
                   {command_findings, _("&Findings, remedies and cautions\tCtrl+F"),
                    _("Other findings, what would help, and what was assumed")}});
    return menu;
}

}  // namespace

wxMenu* help_menu() {
    auto* menu = new wxMenu;
    append(*menu, {{command_method, _("&Method in brief\tF1"), _("How the forces on the anchors are found")},
                   {command_sources, _("&Sources and editions"), _("The standards the checks follow")},
                   {command_keys, _("&Keys"), _("Keyboard shortcuts")},
                   separator,
                   {wxID_ABOUT, _("&About Toehold"), _("What this program is")}});
    return menu;
}

namespace {

bool has_part(const session::Session& session, model::PartKind kind) {
    const auto& parts = session.selection();
    return std::any_of(parts.begin(), parts.end(), [kind](const model::PartId& part) { return part.kind == kind; });
}

void refresh_edits(wxMenuBar& bar, const MenuState& state) {
    const editing::History& history = state.session.history();
    enable(bar, wxID_UNDO, history.can_undo());
    enable(bar, wxID_REDO, history.can_redo());
    label(bar, wxID_UNDO, with_step(_("&Undo"), history.undo_name(), "Ctrl+Z", state.session.locale()));
    label(bar, wxID_REDO, with_step(_("&Redo"), history.redo_name(), "Ctrl+Shift+Z", state.session.locale()));
    const editing::HandTools tools = editing::hand_tools(state.session.detail());
    const bool anchor = has_part(state.session, model::PartKind::anchor);
    constexpr std::array of_holes{int{wxID_CUT}, int{wxID_COPY}, int{command_round_array}, int{command_slot},
                                  int{command_round}};
    for (const int id : of_holes) {
        enable(bar, id, anchor && tools.shapes);
    }
    for (const int id : {int{wxID_PASTE}, int{command_add_corner}, int{command_polygon}, int{command_stock_plate}}) {
        enable(bar, id, tools.shapes);
    }
    const bool part = anchor || has_part(state.session, model::PartKind::block);
    enable(bar, command_array, anchor);
    enable(bar, command_duplicate, part);
    enable(bar, command_mirror, part);
    enable(bar, wxID_DELETE, !state.session.selection().empty());
    enable(bar, command_add_block, tools.framing);
    const format::Locale locale = state.session.locale();
    label(bar, command_add_hole, text_of(tools.anchor_here, locale));
    bar.FindItem(wxID_SELECTALL)->SetHelp(text_of(tools.all_anchors, locale));
}

/// What the drawings' layers and methods are called under this mount.
void refresh_sheet_words(wxMenuBar& bar, const session::Session& session) {
    const format::Locale locale = session.locale();
    const editing::SheetWords words = editing::sheet_words(session.detail());
    const auto name = [&](int id, const format::Phrase& menu, const format::Phrase& help) {
        label(bar, id, text_of(menu, locale));
        bar.FindItem(id)->SetHelp(text_of(help, locale));
    };
    name(command_pressure, words.pressure.menu, words.pressure.help);
    name(command_bent, words.bent.menu, words.bent.help);
    name(command_framing, words.framing.menu, words.framing.help);
    enable(bar, command_bent, words.can_bend);
    enable(bar, command_holds, words.can_shade);
    for (const auto method : {drawing::Method::hand, drawing::Method::rigid, drawing::Method::flexible}) {
        const editing::MethodWords of = editing::method_words(session.detail(), method);
        name(command_hand + static_cast<int>(method), of.menu, of.help);
    }
}

void refresh_view(wxMenuBar& bar, const MenuState& state) {
    const session::Display& display = state.session.display();
    check(bar, command_pressure, display.pressure);
    check(bar, command_bent, display.bent);
    check(bar, command_marks, display.marks);
    check(bar, command_dimensions, display.dimensions);
    check(bar, command_framing, display.framing);
    check(bar, command_holds, display.holds);
    check(bar, command_hand + static_cast<int>(display.method), true);
    check(bar, display.system == units::System::si ? command_si : command_us, true);
    check(bar, command_ground_desktop + static_cast<int>(state.ground), true);
    enable(bar, command_push_governing, display.direction_rad.has_value());
    check(bar, command_show_fields, state.fields_shown);
    check(bar, command_show_review, state.review_shown);
}

}  // namespace

wxMenu* give_menu_bar(wxFrame& frame) {
    wxMenu* recent = nullptr;
    auto* bar = new wxMenuBar;
    bar->Append(file_menu(recent), _("&File"));
    bar->Append(edit_menu(), _("&Edit"));
    bar->Append(view_menu(), _("&View"));
    bar->Append(checks_menu(), _("&Checks"));
    bar->Append(help_menu(), _("&Help"));
    frame.SetMenuBar(bar);
    return recent;
}

void refresh_menu_bar(wxMenuBar& bar, const MenuState& state) {
    enable(bar, wxID_SAVE, state.unsaved || !state.has_file);
    enable(bar, command_revert, state.has_file && state.unsaved);
    enable(bar, command_put_back, state.of_project);
    refresh_edits(bar, state);
    refresh_view(bar, state);
    refresh_sheet_words(bar, state.session);
}

}  // namespace toehold::window
