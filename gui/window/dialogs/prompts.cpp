#include "window/dialogs/prompts.h"

#include "window/dialogs/recovery_dialog.h"
#include "window/text.h"

#include <wx/filedlg.h>
#include <wx/msgdlg.h>
#include <wx/textdlg.h>
#include <wx/translation.h>

#include <algorithm>

namespace toehold::window {

namespace fs = std::filesystem;

namespace {

wxString kinds_of_file() { return _("Base details, projects and plates (*.xml)") + "|*.xml|" + _("All files") + "|*"; }

std::vector<fs::path> ask_files_to_open(wxWindow* parent) {
    wxFileDialog dialog(parent, _("Open"), "", "", kinds_of_file(), wxFD_OPEN | wxFD_FILE_MUST_EXIST | wxFD_MULTIPLE);
    std::vector<fs::path> files;
    if (dialog.ShowModal() != wxID_OK) return files;
    wxArrayString chosen;
    dialog.GetPaths(chosen);
    for (const wxString& file : chosen) files.push_back(path_of(file));
    return files;
}

std::optional<fs::path> ask_file_to_save(wxWindow* parent, const fs::path& suggested) {
    wxFileDialog dialog(parent, _("Save as"), shown_path(suggested.parent_path()), shown_path(suggested.filename()),
                        kinds_of_file(), wxFD_SAVE | wxFD_OVERWRITE_PROMPT);
    if (dialog.ShowModal() != wxID_OK) return std::nullopt;
    fs::path file = path_of(dialog.GetPath());
    if (!file.has_extension()) file += ".xml";
    return file;
}

/// The ending that was typed, or that of the kind chosen in the dialog.
std::optional<fs::path> ask_paper_to_save(wxWindow* parent, const fs::path& suggested,
                                          const std::vector<std::string>& endings) {
    wxString kinds;
    for (const std::string& ending : endings) {
        const wxString pattern = "*." + text_of(ending);
        kinds +=
            (kinds.empty() ? wxString() : wxString("|")) + text_of(ending).Upper() + " (" + pattern + ")|" + pattern;
    }
    wxFileDialog dialog(parent, _("Save document as"), shown_path(suggested.parent_path()),
                        shown_path(suggested.filename()), kinds, wxFD_SAVE | wxFD_OVERWRITE_PROMPT);
    if (dialog.ShowModal() != wxID_OK) return std::nullopt;
    fs::path file = path_of(dialog.GetPath());
    const bool known = file.has_extension() &&
                       std::find(endings.begin(), endings.end(), file.extension().string().substr(1)) != endings.end();
    if (!known) file += "." + endings.at(static_cast<std::size_t>(std::max(0, dialog.GetFilterIndex())));
    return file;
}

std::optional<std::string> ask_remark(wxWindow* parent, const wxString& about) {
    wxTextEntryDialog dialog(parent, about, _("Remark"), "", wxOK | wxCANCEL);
    if (dialog.ShowModal() != wxID_OK) return std::nullopt;
    return utf8(dialog.GetValue());
}

Unsaved ask_unsaved(wxWindow* parent, const wxString& name) {
    wxMessageDialog dialog(parent, wxString::Format(_("Save the changes to “%s”?"), name), "Toehold",
                           wxYES_NO | wxCANCEL | wxICON_QUESTION);
    dialog.SetExtendedMessage(_("Changes since the last save are lost if you do not save."));
    dialog.SetYesNoCancelLabels(_("&Save"), _("&Discard"), _("&Cancel"));
    switch (dialog.ShowModal()) {
        case wxID_YES:
            return Unsaved::save;
        case wxID_NO:
            return Unsaved::discard;
        default:
            return Unsaved::cancel;
    }
}

bool ask_to_confirm(wxWindow* parent, const wxString& question, const wxString& detail, const wxString& yes) {
    wxMessageDialog dialog(parent, question, "Toehold", wxYES_NO | wxNO_DEFAULT | wxICON_QUESTION);
    dialog.SetExtendedMessage(detail);
    dialog.SetYesNoLabels(yes, _("&Cancel"));
    return dialog.ShowModal() == wxID_YES;
}

void show_message(wxWindow* parent, const wxString& headline, const wxString& detail) {
    wxMessageDialog dialog(parent, headline, "Toehold", wxOK | wxICON_INFORMATION);
    dialog.SetExtendedMessage(detail);
    dialog.ShowModal();
}

}  // namespace

Prompts dialog_prompts() {
    return {ask_files_to_open, ask_file_to_save, ask_unsaved,       ask_to_confirm,
            show_message,      ask_recovery,     ask_paper_to_save, ask_remark};
}

}  // namespace toehold::window
