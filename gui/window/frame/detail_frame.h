#pragma once
// The window of one detail: its session, the solves beside it, the panes that show it, and its file.
#include "editing/document.h"
#include "session/session.h"
#include "solving/solve_service.h"

#include <wx/aui/framemanager.h>
#include <wx/frame.h>
#include <wx/timer.h>

#include <filesystem>
#include <memory>

class wxInfoBar;
class wxMenu;
class wxNotebook;
class wxPanel;

namespace toehold::window {

class Application;
class ChecksPanel;
class FieldsPanel;
class NotesPanel;
class PlaceBar;
class SheetCanvas;
class ToolRow;
class VerdictStrip;

/// Where a window's detail comes from and goes to.
struct Document {
    std::filesystem::path file;  ///< empty: never saved
    editing::FileStamp stamp;
    bool recovered = false;  ///< a copy kept against a crash: unsaved, though nothing has been changed here
};

class DetailFrame : public wxFrame {
  public:
    /// `number` tells the windows of one process apart.
    DetailFrame(Application& application, int number, model::BaseDetail detail, Document document);
    ~DetailFrame() override;
    DetailFrame(const DetailFrame&) = delete;
    DetailFrame& operator=(const DetailFrame&) = delete;

    [[nodiscard]] session::Session& session();
    [[nodiscard]] SheetCanvas& sheet();
    [[nodiscard]] ChecksPanel& checks();
    [[nodiscard]] const std::filesystem::path& file() const;
    [[nodiscard]] bool unsaved() const;
    [[nodiscard]] bool untouched() const;  ///< neither of a file nor changed: may give its place to another detail
    /// Another detail in this one's place.
    void show(model::BaseDetail detail, Document document);
    /// By the preferences in force.
    void dress();

    // --- its file: detail_frame_file.cpp ---
    bool save();  ///< false: not saved; the reader has been told, or thought better of it
    bool save_as();
    bool revert();
    void look_for_changes_outside();
    void keep_copy();

  private:
    // detail_frame.cpp
    void make_panes();
    wxPanel* make_sheet_pane(wxWindow* parent);
    wxNotebook* make_review_pane(wxWindow* parent);
    void arrange();
    void on_change(session::Change change);
    void refresh_title();
    void refresh_menus();
    void on_close(wxCloseEvent& event);
    void accept_drops();

    // detail_frame_commands.cpp
    void on_command(wxCommandEvent& event);
    bool run_in_text(int id);
    bool run_file_command(int id);
    bool run_sheet_command(int id);
    bool run_display_command(int id);
    bool run_pane_command(int id);
    bool run_checks_command(int id);
    bool run_help_command(int id);
    void use_other_plate();
    void remark();
    void prefer_units(units::System system);
    void prefer_ground(int choice);
    void toggle_pane(const wxString& name);

    // detail_frame_file.cpp
    void start_timers();
    bool may_close();
    bool save_to(const std::filesystem::path& file);
    void read_again();
    void tell_of_change(const wxString& words, bool can_reload);
    [[nodiscard]] std::filesystem::path suggested_file() const;

    Application& application_;
    int number_;
    Document document_;
    std::shared_ptr<DetailFrame*> alive_;  ///< results that come after the window has gone find nobody
    solving::SolveService solver_;
    session::Session session_;
    int listener_ = 0;

    wxMenu* recent_ = nullptr;
    wxPanel* board_ = nullptr;  ///< what the panes share
    wxAuiManager panes_;
    wxString first_layout_;
    wxInfoBar* notice_ = nullptr;
    ToolRow* tools_ = nullptr;
    SheetCanvas* sheet_ = nullptr;
    PlaceBar* place_ = nullptr;
    FieldsPanel* fields_ = nullptr;
    wxNotebook* review_ = nullptr;
    ChecksPanel* checks_ = nullptr;
    NotesPanel* notes_ = nullptr;
    VerdictStrip* verdict_ = nullptr;

    wxTimer watch_;               ///< of the file on disk, and of the copy
    wxTimer rest_;                ///< since the last edit
    int watches_ = 0;             ///< since the last copy
    bool copied_ = false;         ///< a copy is there
    editing::FileStamp told_of_;  ///< the last outside change the reader was told of
    bool told_ = false;
};

}  // namespace toehold::window
