#pragma once
// The window of a project: the schedule of its posts, the guard line drawn, its checks and its fields, and below them
// the verdict. A post's base opens from here in a window of its own.
#include "editing/document/project_document.h"
#include "session/project_session.h"
#include "solving/projects.h"
#include "window/frame/document_file.h"
#include "window/frame/document_frame.h"
#include "window/panels/verdict_words.h"

#include <memory>
#include <string>
#include <vector>

class wxButton;
class wxInfoBar;
class wxMenu;
class wxNotebook;
class wxPanel;
class wxStaticText;

namespace toehold::window {

class Application;
class DetailFrame;
class FieldsPanel;
class LineChecks;
class LinePane;
class ProgressLine;
class SchedulePanel;
class VerdictStrip;

class ProjectFrame : public DocumentFrame {
  public:
    /// `number` tells the windows of one process apart.
    ProjectFrame(Application& application, int number, model::Project project, Document document);
    ~ProjectFrame() override;
    ProjectFrame(const ProjectFrame&) = delete;
    ProjectFrame& operator=(const ProjectFrame&) = delete;

    [[nodiscard]] session::ProjectSession& session() { return session_; }
    [[nodiscard]] const std::filesystem::path& file() const override { return file_->path(); }
    [[nodiscard]] bool unsaved() const { return file_->unsaved(); }
    void apply_preferences() override;
    /// The base of the post selected, in its place and the project's framing, as a copy in a window of its own.
    void open_base();

  private:
    void build();
    wxPanel* left(wxWindow* parent);
    wxNotebook* book(wxWindow* parent);
    [[nodiscard]] Held held();
    [[nodiscard]] format::Locale locale() const;
    [[nodiscard]] model::BaseDetail base_of(const model::PlacedPost& post) const;
    [[nodiscard]] std::vector<wxString> milder_than_project(const model::BaseDetail& base) const;
    void put_back(const std::string& post, const model::BaseDetail& before, DetailFrame& base);
    void on_change(session::ProjectSession::Change change);
    void on_command(wxCommandEvent& event);
    bool run_project_command(int id);
    void on_close(wxCloseEvent& event);
    void refresh_results_soon();
    void refresh_results();
    void refresh();

    Application& application_;
    std::shared_ptr<ProjectFrame*> alive_;  ///< results that come after the window has gone find nobody
    std::unique_ptr<solving::Projects> service_;
    session::ProjectSession session_;
    std::unique_ptr<DocumentFile> file_;
    bool built_ = false, results_wait_ = false;
    wxMenu* recent_ = nullptr;
    wxInfoBar* notice_ = nullptr;
    wxPanel* board_ = nullptr;
    SchedulePanel* schedule_ = nullptr;
    LinePane* line_ = nullptr;
    wxNotebook* book_ = nullptr;
    LineChecks* checks_ = nullptr;
    FieldsPanel* fields_ = nullptr;
    wxStaticText* far_ = nullptr;
    ProgressLine* progress_ = nullptr;
    wxButton* stop_ = nullptr;
    VerdictStrip* verdict_ = nullptr;
};

}  // namespace toehold::window
