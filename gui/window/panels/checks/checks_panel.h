#pragma once
// Every check of the detail, worst first, each opening to its worked steps. Choosing a row selects what it is about on
// the drawings; what is selected there marks its rows here.
#include "session/session.h"
#include "window/panels/checks/check_rows.h"
#include "window/theme/theme.h"

#include <wx/panel.h>
#include <wx/radiobut.h>
#include <wx/stattext.h>

#include <array>
#include <set>

namespace toehold::window {

class ChecksList;

class ChecksPanel : public wxPanel {
  public:
    ChecksPanel(wxWindow* parent, session::Session& session);
    ~ChecksPanel() override;

    void apply_theme(const Theme& theme);
    void set_filter(CheckFilter filter);
    /// The next result that does not hold becomes the current row, whatever the filter; a word in the status line where
    /// there is none.
    void next_failing();
    /// Opens the steps of the current row (of the first, where none is current), or closes them.
    void explain();
    /// The current result with its steps as plain text; empty: none is current.
    [[nodiscard]] std::string steps_text() const;
    void copy_steps() const;
    [[nodiscard]] const checks::CheckResult* current_result() const;  ///< nullptr: none is current

  private:
    void on_change(session::Change change);
    void rebuild();
    void refresh_style();
    void open_or_close(std::size_t result);
    void row_chosen();
    void show_menu();
    [[nodiscard]] std::vector<std::string> messages() const;
    [[nodiscard]] std::string state() const;
    [[nodiscard]] std::string key(const CheckRow& row) const;
    [[nodiscard]] std::string current_key() const;
    void add_controls();
    void label_filters();

    session::Session& session_;
    int listening_ = 0;
    Theme theme_ = theme_of(drawing::Ground::paper);
    std::array<wxRadioButton*, 3> filters_{};
    wxStaticText* freshness_ = nullptr;
    ChecksList* list_ = nullptr;
    CheckFilter filter_ = CheckFilter::all;
    CheckIndex index_;
    std::set<std::string> open_;  ///< keys of results whose steps are shown
    std::string shown_state_;     ///< what the rows were last built from
    bool choosing_ = false;       ///< the selection is being changed from here
};

}  // namespace toehold::window
