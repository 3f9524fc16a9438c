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

wxString sentences(const model::Problems& problems) {
    constexpr std::size_t most = 12;
    wxString text;
    for (std::size_t number = 0; number < problems.size() && number < most; ++number) {
        text += text_of(model::sentence(problems[number])) + "\n";
    }
    if (problems.size() > most) text += wxString::FromUTF8("…");
    return text;
}

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
    if (frames().empty() && (beginning_.start_window || !files.empty())) show_start_window();
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
        prompts.tell(nullptr, _("The catalogs cannot be read."), sentences(read.problems));
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
    for (DetailFrame* frame : frames()) frame->apply_preferences();
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

DetailFrame* Application::open(const fs::path& file, DetailFrame* reuse) {
    std::error_code error;
    for (DetailFrame* frame : frames()) {
        if (!frame->file().empty() && fs::equivalent(frame->file(), file, error)) {
            frame->Raise();
            return frame;
        }
    }
    editing::Opened opened = editing::open_detail(file, catalog_);
    if (!opened.detail) {
        prompts.tell(reuse, wxString::Format(_("“%s” cannot be opened."), shown_path(file.filename())),
                     sentences(opened.problems));
        return nullptr;
    }
    const bool plates = xml::document_kind(file) == xml::DocumentKind::plates;
    remember(file);
    Document document;
    if (!plates) document = {file, opened.stamp};
    if (reuse != nullptr && reuse->untouched()) {
        reuse->show(*opened.detail, document);
        return reuse;
    }
    auto* frame = new DetailFrame(*this, next_window_++, std::move(*opened.detail), std::move(document));
    frame->Show();
    close_start_window();
    return frame;
}

DetailFrame* Application::start_on(const model::Plate& stock, DetailFrame* reuse) {
    model::BaseDetail detail = editing::starting_detail(stock, catalog_);
    if (reuse != nullptr && reuse->untouched()) {
        reuse->show(std::move(detail), {});
        return reuse;
    }
    auto* frame = new DetailFrame(*this, next_window_++, std::move(detail), {});
    frame->Show();
    close_start_window();
    return frame;
}

DetailFrame* Application::start_on_job(const job::Started& started, bool find_sizes) {
    Document document;
    document.told = true;
    auto* frame = new DetailFrame(*this, next_window_++, started.detail, std::move(document));
    frame->Show();
    frame->begin_from(started, find_sizes);
    close_start_window();
    return frame;
}

void Application::ask_and_open(wxWindow* parent, DetailFrame* reuse) {
    for (const fs::path& file : prompts.files_to_open(parent)) open(file, reuse);
}

DetailFrame* Application::open_recent(std::size_t number, DetailFrame* reuse) {
    if (number >= recent_.GetCount()) return nullptr;
    const fs::path file = path_of(recent_.GetHistoryFile(number));
    std::error_code error;
    if (fs::exists(file, error)) return open(file, reuse);
    recent_.RemoveFileFromHistory(number);
    keep_recent();
    prompts.tell(reuse, _("The file is no longer there."), shown_path(file));
    return nullptr;
}

void Application::offer_recovery() {
    const std::vector<editing::RecoveryCopy> copies = editing::left_copies(recovery_folder());
    if (copies.empty()) return;
    for (const Recovery& choice : prompts.recover(nullptr, copies)) {
        if (choice.fate == Fate::open && recover(choice.copy) == nullptr) continue;
        if (choice.fate != Fate::keep) editing::drop_copy(choice.copy);
    }
}

DetailFrame* Application::recover(const editing::RecoveryCopy& copy) {
    editing::Opened opened = editing::open_copy(copy, catalog_);
    if (!opened.detail) {
        prompts.tell(nullptr, _("The copy cannot be read."), sentences(opened.problems));
        return nullptr;
    }
    Document document;
    if (!copy.of.empty()) document = {copy.of, editing::open_detail(copy.of, catalog_).stamp};
    document.recovered = true;
    auto* frame = new DetailFrame(*this, next_window_++, std::move(*opened.detail), std::move(document));
    frame->Show();
    return frame;
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
    for (DetailFrame* frame : frames()) {
        if (!frame->Close()) return;
    }
    close_start_window();
}

std::vector<DetailFrame*> Application::frames() const {
    std::vector<DetailFrame*> found;
    for (wxWindow* window : wxTopLevelWindows) {
        auto* frame = dynamic_cast<DetailFrame*>(window);
        if (frame != nullptr && !frame->IsBeingDeleted()) found.push_back(frame);
    }
    return found;
}

Application& application() { return dynamic_cast<Application&>(*wxTheApp); }

}  // namespace toehold::window
