#include "window/frame/application.h"

#include "editing/edits.h"
#include "window/dialogs/recovery_dialog.h"
#include "window/frame/detail_frame.h"
#include "window/frame/language.h"
#include "window/sheet/drag_controller.h"
#include "window/start/start_frame.h"
#include "window/text.h"
#include "xml/catalog/catalog_file.h"
#include "xml/document/file.h"

#include <wx/cmdline.h>
#include <wx/image.h>
#include <wx/printdlg.h>
#include <wx/translation.h>

#include <algorithm>
#include <system_error>
#include <utility>

namespace toehold::window {

namespace fs = std::filesystem;

namespace {

constexpr int margin_mm = 10;

}  // namespace

Application::Application() : prompts(dialog_prompts()), recent_(9) {
    SetAppName("toehold");
    SetAppDisplayName("Toehold");
}

Application::~Application() = default;

bool Application::OnInit() { return wxApp::OnInit() && begin(beginning_); }

int Application::OnExit() {
    save_preferences(beginning_.preferences, preferences_);
    return wxApp::OnExit();
}

void Application::OnInitCmdLine(wxCmdLineParser& parser) {
    wxApp::OnInitCmdLine(parser);
    parser.AddLongOption("data", "folder of the catalogs");
    parser.AddParam("FILE", wxCMD_LINE_VAL_STRING, wxCMD_LINE_PARAM_OPTIONAL | wxCMD_LINE_PARAM_MULTIPLE);
}

bool Application::OnCmdLineParsed(wxCmdLineParser& parser) {
    wxString data;
    if (parser.Found("data", &data)) beginning_.data = utf8(data);
    for (std::size_t number = 0; number < parser.GetParamCount(); ++number) {
        beginning_.files.push_back(path_of(parser.GetParam(number)));
    }
    return wxApp::OnCmdLineParsed(parser);
}

bool Application::begin(const Beginning& beginning) {
    beginning_ = beginning;
    if (beginning_.preferences.empty()) beginning_.preferences = preferences_file();
    if (beginning_.recovery.empty()) beginning_.recovery = editing::recovery_folder();
    preferences_ = load_preferences(beginning_.preferences);
    translations_ = speak(preferences_.language);
    dark_desktop_ = desktop_is_dark();
    apply_to_toolkit(theme());
    print_data_ = std::make_unique<wxPrintData>();
    print_data_->SetOrientation(wxLANDSCAPE);
    page_ = std::make_unique<wxPageSetupDialogData>(*print_data_);
    page_->SetMarginTopLeft({margin_mm, margin_mm});
    page_->SetMarginBottomRight({margin_mm, margin_mm});
    for (auto file = preferences_.recent.rbegin(); file != preferences_.recent.rend(); ++file) {
        recent_.AddFileToHistory(shown_path(*file));
    }
    if (!read_catalogs(beginning_.data)) return false;
    const std::vector<fs::path> files = beginning_.files;
    offer_recovery();
    for (const fs::path& file : files) open(file);
    if (windows().empty() && (beginning_.start_window || !files.empty())) show_start_window();
    return true;
}

bool Application::read_catalogs(const std::string& named) {
    const fs::path folder = xml::find_data_folder(named);
    if (folder.empty() || !xml::holds_catalogs(folder)) {
        prompts.tell(nullptr, _("The catalogs were not found."),
                     _("Name their folder with --data or the environment variable TOEHOLD_DATA."));
        return false;
    }
    xml::CatalogRead read = xml::read_catalog(folder);
    if (!read.problems.empty()) {
        tell_of_problems(nullptr, _("The catalogs cannot be read."), read.problems);
        return false;
    }
    catalog_ = std::move(read.catalog);
    return true;
}

const catalog::Catalog& Application::catalog() const { return catalog_; }
const Preferences& Application::preferences() const { return preferences_; }
format::Locale Application::locale() const { return {preferences_.system, translations_}; }
Theme Application::theme() const { return theme_of(ground(preferences_.ground, dark_desktop_)); }
const fs::path& Application::recovery_folder() const { return beginning_.recovery; }
wxFileHistory& Application::recent() { return recent_; }
wxPrintData& Application::print_data() { return *print_data_; }
wxPageSetupDialogData& Application::page() { return *page_; }

void Application::prefer(const Preferences& preferences) {
    preferences_ = preferences;
    apply_to_toolkit(theme());
    for (DocumentFrame* frame : windows()) frame->apply_preferences();
    save_preferences(beginning_.preferences, preferences_);
}

void Application::remember_layout(const wxString& layout, int width, int height) {
    preferences_.layout = layout;
    preferences_.width = width;
    preferences_.height = height;
    save_preferences(beginning_.preferences, preferences_);
}

void Application::remember(const fs::path& file) {
    std::error_code error;
    const fs::path whole = fs::absolute(file, error);
    recent_.AddFileToHistory(shown_path(error ? file : whole));
    keep_recent();
}

void Application::keep_recent() {
    preferences_.recent.clear();
    for (std::size_t number = 0; number < recent_.GetCount(); ++number) {
        preferences_.recent.push_back(path_of(recent_.GetHistoryFile(number)));
    }
    save_preferences(beginning_.preferences, preferences_);
}

void Application::show_start_window() {
    if (wxWindow* window = wxWindow::FindWindowByName("start")) {
        window->Raise();
        return;
    }
    (new StartFrame(*this))->Show();
}

void Application::close_start_window() {
    if (wxWindow* window = wxWindow::FindWindowByName("start")) window->Close();
}

void Application::close_all() {
    for (DocumentFrame* frame : windows()) {
        if (!frame->Close()) return;
    }
    close_start_window();
}

std::vector<DocumentFrame*> Application::windows() const {
    std::vector<DocumentFrame*> found;
    for (wxWindow* window : wxTopLevelWindows) {
        auto* frame = dynamic_cast<DocumentFrame*>(window);
        if (frame != nullptr && !frame->IsBeingDeleted()) found.push_back(frame);
    }
    return found;
}

std::vector<DetailFrame*> Application::frames() const {
    std::vector<DetailFrame*> found;
    for (DocumentFrame* window : windows()) {
        if (auto* frame = dynamic_cast<DetailFrame*>(window)) found.push_back(frame);
    }
    return found;
}

Application& application() { return dynamic_cast<Application&>(*wxTheApp); }

}  // namespace toehold::window
