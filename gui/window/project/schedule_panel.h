#pragma once
// The posts of a project: a row for each with its ratio in the frame of its verdict, its mark and mount, the first
// cause, the largest tension and its share of a push on the rail. In the project's order or by first cause.
#include "session/project_session.h"
#include "window/theme/theme.h"

#include <wx/panel.h>

#include <functional>
#include <vector>

class wxChoice;
class wxStaticText;

namespace toehold::window {

class FlowList;

class SchedulePanel : public wxPanel {
  public:
    /// The session outlives the panel. `open` opens the base of the post selected.
    SchedulePanel(wxWindow* parent, session::ProjectSession& session, std::function<format::Locale()> locale,
                  const std::function<void()>& open);

    void refresh();            ///< posts, results or their order have changed
    void refresh_selection();  ///< another post is selected
    void apply_theme(const Theme& theme);
    void focus();
    [[nodiscard]] const std::vector<session::ScheduleEntry>& shown() const { return entries_; }

  private:
    wxSizer* head();
    void paint_columns();
    int draw_row(wxDC& dc, std::size_t row, const wxRect& area, bool paint) const;

    session::ProjectSession& session_;
    std::function<format::Locale()> locale_;
    Theme theme_ = theme_of(drawing::Ground::paper);
    std::vector<session::ScheduleEntry> entries_;
    wxStaticText* totals_ = nullptr;
    wxChoice* order_ = nullptr;
    wxPanel* columns_ = nullptr;
    FlowList* list_ = nullptr;
};

}  // namespace toehold::window
