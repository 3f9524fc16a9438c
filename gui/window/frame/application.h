#pragma once
// The program with its windows: what they share, and opening one for each detail.
#include "catalog/catalog.h"
#include "editing/document.h"
#include "format/phrase.h"
#include "job/job.h"
#include "window/dialogs/prompts.h"
#include "window/frame/preferences.h"

#include <wx/app.h>
#include <wx/filehistory.h>

#include <filesystem>
#include <functional>
#include <memory>
#include <string>
#include <thread>
#include <vector>

class wxPageSetupDialogData;
class wxPrintData;

namespace toehold::solving {
class Projects;
}

namespace toehold::window {

class DetailFrame;
class DocumentFrame;
class ProjectFrame;

/// How the program is begun; a test gives its own folders.
struct Beginning {
    std::string data;                          ///< folder of the catalogs; empty: where they are usually found
    std::vector<std::filesystem::path> files;  ///< one window each
    std::filesystem::path preferences;         ///< empty: the reader's own
    std::filesystem::path recovery;            ///< folder of copies of unsaved work; empty: the reader's own
    bool start_window = true;                  ///< without files: the window to start from
};

class Application : public wxApp {
  public:
    Application();
    ~Application() override;
    Application(const Application&) = delete;
    Application& operator=(const Application&) = delete;

    bool OnInit() override;  ///< reads the command line and begins
    int OnExit() override;
    void OnInitCmdLine(wxCmdLineParser& parser) override;
    bool OnCmdLineParsed(wxCmdLineParser& parser) override;

    /// False where the catalogs cannot be read; the reader has been told.
    bool begin(const Beginning& beginning);

    Prompts prompts;

    [[nodiscard]] const catalog::Catalog& catalog() const;
    [[nodiscard]] const Preferences& preferences() const;
    /// Keeps them, and shows every window by them.
    void prefer(const Preferences& preferences);
    /// Keeps what a window remembers of itself, and changes no window.
    void remember_layout(const wxString& layout, int width, int height);
    [[nodiscard]] Theme theme() const;
    /// The reader's units and language, for the engine's sentences.
    [[nodiscard]] format::Locale locale() const;
    [[nodiscard]] const std::filesystem::path& recovery_folder() const;
    [[nodiscard]] wxFileHistory& recent();
    [[nodiscard]] wxPrintData& print_data();
    [[nodiscard]] wxPageSetupDialogData& page();

    /// A detail in `reuse` where it is given and untouched, else in a new window; a project in a window of its own.
    /// nullptr: the file cannot be opened; the reader has been told.
    DocumentFrame* open(const std::filesystem::path& file, DetailFrame* reuse = nullptr);
    /// A detail that is a copy of part of a project: unsaved, without a file, and its window says so in these words.
    /// `put_back` puts it as it then stands back into the project.
    DetailFrame* open_copy(model::BaseDetail detail, const wxString& words, std::function<void(DetailFrame&)> put_back);
    DetailFrame* start_on(const model::Plate& stock, DetailFrame* reuse = nullptr);
    /// The example of a post fastened by its side.
    DetailFrame* start_side_post(DetailFrame* reuse = nullptr);
    /// In a new window, with its assumed values listed; where wished, looking for sizes that hold at once.
    DetailFrame* start_on_job(const job::Started& started, bool find_sizes);
    void ask_and_open(wxWindow* parent, DetailFrame* reuse = nullptr);
    /// A recent file that is no longer there is forgotten.
    DocumentFrame* open_recent(std::size_t number, DetailFrame* reuse = nullptr);
    void remember(const std::filesystem::path& file);  ///< among the recent ones
    void show_start_window();
    void close_all();
    /// The solves of a window that has closed: they end on a thread of their own, since one post's may take a while.
    void see_off(std::unique_ptr<solving::Projects> service);
    [[nodiscard]] std::vector<DetailFrame*> frames() const;     ///< of details, oldest first
    [[nodiscard]] std::vector<DocumentFrame*> windows() const;  ///< of details and projects, oldest first

  private:
    bool read_catalogs(const std::string& named);
    void offer_recovery();
    DetailFrame* open_detail(const std::filesystem::path& file, DetailFrame* reuse);
    DetailFrame* start(model::BaseDetail detail, DetailFrame* reuse);
    ProjectFrame* open_project(const std::filesystem::path& file);
    DocumentFrame* recover(const editing::RecoveryCopy& copy);
    ProjectFrame* recover_project(const editing::RecoveryCopy& copy);
    void tell_of_problems(wxWindow* parent, const wxString& headline, const model::Problems& problems);
    void keep_recent();
    void close_start_window();

    Beginning beginning_;
    catalog::Catalog catalog_;
    Preferences preferences_;
    std::shared_ptr<const format::Catalogue> translations_;
    bool dark_desktop_ = false;
    wxFileHistory recent_;
    std::unique_ptr<wxPrintData> print_data_;
    std::unique_ptr<wxPageSetupDialogData> page_;
    int next_window_ = 1;
    std::vector<std::jthread> leaving_;  ///< last, so that the catalog outlives what ends there
};

/// The application that runs.
[[nodiscard]] Application& application();

}  // namespace toehold::window
