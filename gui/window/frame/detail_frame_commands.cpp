// What the menus of a detail's window do.
#include "editing/words.h"
#include "paper/paper_file.h"
#include "window/dialogs/about.h"
#include "window/dialogs/help.h"
#include "window/dialogs/preferences_dialog.h"
#include "window/frame/application.h"
#include "window/frame/detail_frame.h"
#include "window/frame/edit_commands.h"
#include "window/frame/menus.h"
#include "window/frame/paper_commands.h"
#include "window/frame/printout.h"
#include "window/frame/start_frame.h"
#include "window/panels/checks/checks_panel.h"
#include "window/paths.h"
#include "window/sheet/canvas.h"

#include <wx/filehistory.h>
#include <wx/notebook.h>
#include <wx/textentry.h>

namespace toehold::window {

namespace {

constexpr double push_step_deg = 5.0;

}  // namespace

void DetailFrame::on_command(wxCommandEvent& event) {
    const int id = event.GetId();
    if (run_in_text(id) || run_file_command(id) || run_sheet_command(id) || run_display_command(id) ||
        run_pane_command(id) || run_checks_command(id) || run_help_command(id) ||
        run_edit_command(id, this, session_) || run_paper_command(id, this, application_, session_, document_.file)) {
        return;
    }
    event.Skip();
}

/// Where words are being typed, the customary commands mean the words.
bool DetailFrame::run_in_text(int id) {
    auto* text = dynamic_cast<wxTextEntry*>(FindFocus());
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

bool DetailFrame::run_file_command(int id) {
    if (id >= wxID_FILE1 && id <= wxID_FILE9) {
        application_.open_recent(static_cast<std::size_t>(id - wxID_FILE1), this);
        return true;
    }
    switch (id) {
        case command_new:
            if (const auto plate = ask_stock_plate(this, application_)) application_.start_on(*plate, this);
            return true;
        case wxID_OPEN:
            application_.ask_and_open(this, this);
            return true;
        case wxID_SAVE:
            save();
            return true;
        case wxID_SAVEAS:
            save_as();
            return true;
        case command_revert:
            revert();
            return true;
        case wxID_PAGE_SETUP:
            set_up_page(this, application_);
            return true;
        case wxID_PREVIEW:
            preview(this, application_, session_);
            return true;
        case wxID_PRINT:
            print(this, application_, session_);
            return true;
        case wxID_CLOSE:
            Close();
            return true;
        case wxID_EXIT:
            application_.close_all();
            return true;
        case wxID_PREFERENCES:
            ask_preferences(this, application_);
            return true;
        default:
            return false;
    }
}

bool DetailFrame::run_sheet_command(int id) {
    switch (id) {
        case wxID_ZOOM_FIT:
            sheet_->fit_all();
            return true;
        case wxID_ZOOM_IN:
            sheet_->zoom_in();
            return true;
        case wxID_ZOOM_OUT:
            sheet_->zoom_out();
            return true;
        case command_tool_select:
            sheet_->set_tool(Tool::select);
            return true;
        case command_tool_pan:
            sheet_->set_tool(Tool::pan);
            return true;
        case command_add_hole:
            sheet_->set_tool(Tool::hole);
            break;
        case command_add_corner:
            sheet_->set_tool(Tool::corner);
            break;
        case command_add_block:
            sheet_->set_tool(Tool::block);
            break;
        case command_push_governing:
            session_.turn_push(std::nullopt);
            return true;
        case command_push_left:
            sheet_->turn_push_by(push_step_deg);
            return true;
        case command_push_right:
            sheet_->turn_push_by(-push_step_deg);
            return true;
        case command_stock_plate:
            use_other_plate();
            return true;
        default:
            return false;
    }
    sheet_->SetFocus();
    return true;
}

bool DetailFrame::run_display_command(int id) {
    session::Display display = session_.display();
    switch (id) {
        case command_pressure:
            display.pressure = !display.pressure;
            break;
        case command_bent:
            display.bent = !display.bent;
            break;
        case command_marks:
            display.marks = !display.marks;
            break;
        case command_dimensions:
            display.dimensions = !display.dimensions;
            break;
        case command_framing:
            display.framing = !display.framing;
            break;
        case command_hand:
            display.method = drawing::Method::hand;
            break;
        case command_rigid:
            display.method = drawing::Method::rigid;
            break;
        case command_flexible:
            display.method = drawing::Method::flexible;
            break;
        case command_us:
            prefer_units(units::System::us);
            return true;
        case command_si:
            prefer_units(units::System::si);
            return true;
        case command_ground_desktop:
        case command_ground_paper:
        case command_ground_night:
            prefer_ground(id - command_ground_desktop);
            return true;
        default:
            return false;
    }
    session_.show(display);
    return true;
}

bool DetailFrame::run_pane_command(int id) {
    switch (id) {
        case command_show_fields:
            toggle_pane("fields");
            return true;
        case command_show_review:
            toggle_pane("review");
            return true;
        case command_reset_layout:
            panes_.LoadPerspective(first_layout_, false);
            arrange();
            refresh_menus();
            return true;
        default:
            return false;
    }
}

bool DetailFrame::run_checks_command(int id) {
    const auto show_page = [this](std::size_t page) {
        panes_.GetPane("review").Show();
        panes_.Update();
        refresh_menus();
        review_->ChangeSelection(page);
    };
    switch (id) {
        case command_next_failing:
            show_page(0);
            checks_->next_failing();
            return true;
        case command_explain:
            show_page(0);
            checks_->explain();
            return true;
        case command_remark:
            remark();
            return true;
        case command_findings:
            show_page(1);
            review_->GetPage(1)->SetFocus();
            return true;
        default:
            return false;
    }
}

bool DetailFrame::run_help_command(int id) {
    switch (id) {
        case command_method:
            show_help(this, application_.ground(), HelpPage::method);
            return true;
        case command_sources:
            show_help(this, application_.ground(), HelpPage::sources);
            return true;
        case command_keys:
            show_help(this, application_.ground(), HelpPage::keys);
            return true;
        case wxID_ABOUT:
            show_about(this);
            return true;
        default:
            return false;
    }
}

/// On the selected result, or on the whole detail where none is.
void DetailFrame::remark() {
    const checks::CheckResult* result = checks_->current_result();
    model::Remark remark;
    if (result != nullptr) remark = {result->id, result->subject, {}, {}, {}, model::Remark::State::open};
    const wxString about = result == nullptr ? wxString(_("On the whole detail:"))
                                             : shown_text(result->title + ", " + result->subject + ":");
    const std::optional<std::string> words = application_.prompts.remark(this, about);
    if (!words || words->empty()) return;
    remark.words = *words;
    remark.date = paper::today();
    model::BaseDetail next = session_.detail();
    next.remarks.push_back(std::move(remark));
    session_.change(TOEHOLD_MARK("Remark"), std::move(next));
    session_.rest();
}

void DetailFrame::use_other_plate() {
    if (const auto plate = ask_stock_plate(this, application_)) {
        session_.apply(editing::use_plate(session_.detail(), *plate));
    }
}

void DetailFrame::prefer_units(units::System system) {
    Preferences preferences = application_.preferences();
    preferences.system = system;
    application_.prefer(preferences);
}

void DetailFrame::prefer_ground(int choice) {
    Preferences preferences = application_.preferences();
    preferences.ground = static_cast<GroundChoice>(choice);
    application_.prefer(preferences);
}

void DetailFrame::toggle_pane(const wxString& name) {
    wxAuiPaneInfo& pane = panes_.GetPane(name);
    pane.Show(!pane.IsShown());
    panes_.Update();
    refresh_menus();
}

}  // namespace toehold::window
