#include "window/frame/commands.h"

#include "window/dialogs/about.h"
#include "window/dialogs/help.h"
#include "window/frame/application.h"
#include "window/frame/detail_frame.h"
#include "window/frame/menus.h"
#include "window/sheet/raster.h"

#include <wx/textentry.h>

namespace toehold::window {

bool run_in_text(int id) {
    auto* text = dynamic_cast<wxTextEntry*>(wxWindow::FindFocus());
    if (text == nullptr) return false;
    switch (id) {
        case wxID_CUT:
            text->Cut();
            return true;
        case wxID_COPY:
            text->Copy();
            return true;
        case wxID_PASTE:
            text->Paste();
            return true;
        case wxID_SELECTALL:
            text->SelectAll();
            return true;
        case wxID_DELETE:
            return true;
        default:
            return false;
    }
}

bool run_help_command(int id, wxFrame& frame, const Application& application) {
    const auto show = [&](HelpPage page) {
        show_help(&frame, application.theme(), page);
        return true;
    };
    switch (id) {
        case command_method:
            return show(HelpPage::method);
        case command_sources:
            return show(HelpPage::sources);
        case command_keys:
            return show(HelpPage::keys);
        case wxID_ABOUT:
            show_about(&frame);
            return true;
        default:
            return false;
    }
}

bool run_command(int id, const CommandTarget& target) {
    return run_in_text(id) || run_file_command(id, target) || run_edit_command(id, target) ||
           run_view_command(id, target) || run_checks_command(id, target) || run_paper_command(id, target) ||
           run_help_command(id, target.frame, target.application);
}

}  // namespace toehold::window
