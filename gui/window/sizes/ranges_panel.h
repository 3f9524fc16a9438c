#pragma once
// What a search for sizes may vary: the things at the left with what is asked of each, the current one's list to tick
// and its measures to type beside them.
#include "session/sizes.h"
#include "window/theme/theme.h"

#include <wx/panel.h>

#include <functional>
#include <vector>

class wxCheckListBox;
class wxBoxSizer;
class wxStaticText;
class wxTextCtrl;

namespace toehold::window {

class FlowList;

class RangesPanel : public wxPanel {
  public:
    /// Both outlive the panel.
    RangesPanel(wxWindow* parent, session::Sizes& sizes, std::function<format::Locale()> locale);

    void refresh();  ///< the ranges have changed
    void apply_theme(const Theme& theme);
    /// Columns beside each other, or the list above the editor.
    void stand(bool beside);

  private:
    wxSizer* editor();
    void show_row(std::size_t row);
    void fill_list();
    void fill_ticks();
    void fill_entries();
    int draw_row(wxDC& dc, std::size_t row, const wxRect& area, bool paint);
    [[nodiscard]] const editing::RangeRow* current();

    session::Sizes& sizes_;
    std::function<format::Locale()> locale_;
    Theme theme_ = theme_of(drawing::Ground::paper);
    std::size_t row_ = 0;
    wxBoxSizer* sides_ = nullptr;
    FlowList* list_ = nullptr;
    wxStaticText* title_ = nullptr;
    wxStaticText* help_ = nullptr;
    wxStaticText* refusal_ = nullptr;
    wxCheckListBox* ticks_ = nullptr;
    wxPanel* entries_ = nullptr;
    wxPanel* all_or_none_ = nullptr;
    std::vector<wxTextCtrl*> typed_;
    std::vector<std::string> shown_ticks_;  ///< words of those in the list box
    wxString shown_rows_;                   ///< all that the list says
};

}  // namespace toehold::window
