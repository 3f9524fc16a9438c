#include "window/project/project_menus.h"

#include "window/frame/menu_items.h"
#include "window/frame/menus.h"

#include <wx/frame.h>
#include <wx/translation.h>

namespace toehold::window {
namespace {

wxMenu* file_menu(wxMenu*& recent) {
    auto* menu = new wxMenu;
    append(*menu,
           {{command_new, _("&New from the job...\tCtrl+N"), _("A new detail from a few answers about the job")},
            {wxID_OPEN, _("&Open...\tCtrl+O"), _("Open a base detail, a project, or a plate to start a detail on")}});
    recent = new wxMenu;
    menu->AppendSubMenu(recent, _("Open &recent"), _("Files opened before"));
    append(*menu, {separator,
                   {wxID_SAVE, _("&Save\tCtrl+S"), _("Save the project to its file")},
                   {wxID_SAVEAS, _("Save &as...\tCtrl+Shift+S"), _("Save the project to another file")},
                   {command_revert, _("Re&vert to saved"), _("Reload the file and discard every change since")},
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
                   {wxID_PREFERENCES, _("Pr&eferences...\tCtrl+,"), _("Units, background, language and nudge")}});
    return menu;
}

wxMenu* view_menu() {
    auto* menu = new wxMenu;
    append(*menu, {{command_us, _("&US units"), _("Inches and pounds"), wxITEM_RADIO},
                   {command_si, _("SI u&nits"), _("Millimeters and newtons"), wxITEM_RADIO},
                   separator,
                   {command_ground_desktop, _("Background as the d&esktop"),
                    _("Paper on a light desktop, night on a dark one"), wxITEM_RADIO},
                   {command_ground_paper, _("Drafting p&aper"), _("Ink on paper"), wxITEM_RADIO},
                   {command_ground_night, _("Nigh&t negative"), _("Pale lines on a dark sheet"), wxITEM_RADIO}});
    return menu;
}

wxMenu* project_menu() {
    auto* menu = new wxMenu;
    append(*menu, {{command_open_base, _("&Open base of post\tCtrl+E"),
                    _("The base of the post selected, as a copy in a window of its own")},
                   separator,
                   {command_review_project, _("&Review again\tF5"), _("Solve the guard lines and check every post")},
                   {command_stop_review, _("&Stop the review\tShift+F5"), _("Give up the review that is running")}});
    return menu;
}

}  // namespace

wxMenu* give_project_menu_bar(wxFrame& frame) {
    wxMenu* recent = nullptr;
    auto* bar = new wxMenuBar;
    bar->Append(file_menu(recent), _("&File"));
    bar->Append(edit_menu(), _("&Edit"));
    bar->Append(view_menu(), _("&View"));
    bar->Append(project_menu(), _("&Project"));
    bar->Append(help_menu(), _("&Help"));
    frame.SetMenuBar(bar);
    return recent;
}

void refresh_project_menu_bar(wxMenuBar& bar, const ProjectMenuState& state) {
    const editing::ProjectHistory& history = state.session.history();
    const bool running = state.session.state() == session::ProjectSession::State::running;
    enable(bar, wxID_SAVE, state.unsaved || !state.has_file);
    enable(bar, command_revert, state.has_file && state.unsaved);
    enable(bar, wxID_UNDO, history.can_undo());
    enable(bar, wxID_REDO, history.can_redo());
    label(bar, wxID_UNDO, with_step(_("&Undo"), history.undo_name(), "Ctrl+Z", state.locale));
    label(bar, wxID_REDO, with_step(_("&Redo"), history.redo_name(), "Ctrl+Shift+Z", state.locale));
    enable(bar, command_open_base, !state.session.selected().empty());
    enable(bar, command_review_project, !running);
    enable(bar, command_stop_review, running);
    check(bar, state.session.system() == units::System::si ? command_si : command_us, true);
    check(bar, command_ground_desktop + static_cast<int>(state.ground), true);
}

}  // namespace toehold::window
