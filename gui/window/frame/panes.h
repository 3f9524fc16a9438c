#pragma once
// The panes of a detail's window: the sheet in the middle, properties and review beside it, the verdict below, and
// above them the line that tells of what happens to the file.
#include "window/theme/theme.h"

#include <wx/aui/framemanager.h>

#include <functional>
#include <string>

class wxFrame;
class wxInfoBar;
class wxBookCtrlEvent;
class wxNotebook;
class wxPanel;

namespace toehold::job {
struct Started;
}
namespace toehold::session {
class Session;
}

namespace toehold::window {

class AssumedPanel;
class ChartsPage;
class ChecksPanel;
class FieldsPanel;
class NotesPanel;
class PlaceBar;
class SheetCanvas;
class SizesPage;
class ToolRow;
class VerdictStrip;

/// What stands in the middle.
enum class Page { drawings, sizes, charts };

class Panes {
  public:
    /// `remembered`: a layout as `layout` gives it; empty: as first shown. `closed` is called when the reader has
    /// closed a pane. The frame owns the panes, which go with its children.
    Panes(wxFrame& frame, session::Session& session, const wxString& remembered, std::function<void()> closed);
    /// Before the frame's children go.
    void end();

    [[nodiscard]] SheetCanvas& sheet() { return *sheet_; }
    [[nodiscard]] ChecksPanel& checks() { return *checks_; }
    [[nodiscard]] FieldsPanel& fields() { return *fields_; }
    [[nodiscard]] wxInfoBar& notice() { return *notice_; }

    void apply_theme(const Theme& theme);
    [[nodiscard]] bool fields_shown();
    [[nodiscard]] bool review_shown();
    void toggle_fields();
    void toggle_review();
    void show(Page page);
    [[nodiscard]] Page page() const;
    /// Shows the sizes and begins to look for them.
    void find_sizes();
    /// A page of the review with what was assumed of a started detail.
    void list_assumed(const job::Started& started);
    /// Shows the review's pane with this page of it.
    void show_checks();
    void show_notes();
    [[nodiscard]] wxString layout();
    void reset_layout();

  private:
    wxPanel* make_sheet_pane(session::Session& session);
    wxNotebook* make_review_pane(session::Session& session);
    wxNotebook* make_pages(session::Session& session);
    void page_has_come();
    void show_field(const std::string& path);
    void add_to_board(session::Session& session);
    void arrange();
    void toggle(const wxString& name);
    void show_page(std::size_t page);

    wxPanel* board_ = nullptr;  ///< what the panes share
    wxAuiManager manager_;
    wxString first_layout_;
    wxInfoBar* notice_ = nullptr;
    session::Session& session_;
    int listening_ = 0;
    Theme theme_ = theme_of(drawing::Ground::paper);
    wxNotebook* pages_ = nullptr;
    SizesPage* sizes_ = nullptr;
    ChartsPage* charts_ = nullptr;
    AssumedPanel* assumed_ = nullptr;  ///< absent: the detail was not started from a job
    ToolRow* tools_ = nullptr;
    SheetCanvas* sheet_ = nullptr;
    PlaceBar* place_ = nullptr;
    FieldsPanel* fields_ = nullptr;
    wxNotebook* review_ = nullptr;
    ChecksPanel* checks_ = nullptr;
    NotesPanel* notes_ = nullptr;
    VerdictStrip* verdict_ = nullptr;
};

}  // namespace toehold::window
