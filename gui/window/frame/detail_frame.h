#pragma once
// The window of one detail: its session, the solves beside it, the panes that show it, and its file.
#include "job/job.h"
#include "session/session.h"
#include "solving/solve_service.h"
#include "window/frame/document_file.h"
#include "window/frame/document_frame.h"
#include "window/frame/panes.h"

#include <filesystem>
#include <memory>
#include <optional>

class wxMenu;

namespace toehold::window {

class Application;

class DetailFrame : public DocumentFrame {
  public:
    /// `number` tells the windows of one process apart.
    DetailFrame(Application& application, int number, model::BaseDetail detail, Document document);
    ~DetailFrame() override;
    DetailFrame(const DetailFrame&) = delete;
    DetailFrame& operator=(const DetailFrame&) = delete;

    [[nodiscard]] session::Session& session() { return session_; }
    [[nodiscard]] SheetCanvas& sheet() { return panes_.sheet(); }
    [[nodiscard]] ChecksPanel& checks() { return panes_.checks(); }
    [[nodiscard]] const std::filesystem::path& file() const override { return file_.path(); }
    [[nodiscard]] bool unsaved() const { return file_.unsaved(); }
    /// Neither of a file nor changed: may give its place to another detail.
    [[nodiscard]] bool untouched() const { return file().empty() && !unsaved() && !file_.is_copy(); }
    /// Another detail in this one's place.
    void show(model::BaseDetail detail, Document document);
    /// Lists what was assumed of a detail that was started from its job; where wished, looks for sizes at once.
    void begin_from(const job::Started& started, bool find_sizes);
    /// Units, theme and nudge by the preferences in force.
    void apply_preferences() override;
    /// A copy of part of a project, which it says above the panes; `put_back` puts the detail as it then stands back.
    void be_copy(const wxString& words, std::function<void(DetailFrame&)> put_back);
    void put_back();  ///< nothing where it is no copy
    /// Title and menus, after the file or what is shown has changed.
    void refresh();

  private:
    [[nodiscard]] Held held();
    void on_change(session::Change change);
    void on_command(wxCommandEvent& event);
    void on_close(wxCloseEvent& event);
    void refresh_title();
    void refresh_menus();

    Application& application_;
    std::shared_ptr<DetailFrame*> alive_;  ///< results that come after the window has gone find nobody
    solving::SolveService solver_;
    session::Session session_;
    wxMenu* recent_ = nullptr;
    Panes panes_;
    DocumentFile file_;
    std::optional<job::Started> started_;  ///< what was assumed is marked where the detail is saved
    std::function<void(DetailFrame&)> put_back_;
    int listener_ = 0;
};

}  // namespace toehold::window
