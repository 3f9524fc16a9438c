#pragma once
// What a search for sizes found: a row for each, its ratio in a frame, what was chosen, and its numbers in columns.
#include "session/sizes.h"
#include "window/theme/theme.h"

#include <wx/panel.h>

#include <functional>
#include <vector>

namespace toehold::window {

class FlowList;

class ResultsList : public wxPanel {
  public:
    /// `sizes` outlives the list.
    ResultsList(wxWindow* parent, session::Sizes& sizes, std::function<format::Locale()> locale);

    void refresh();  ///< the results, or their order, have changed
    void apply_theme(const Theme& theme);

  private:
    void paint_head();
    int draw_row(wxDC& dc, std::size_t row, const wxRect& area, bool paint) const;

    session::Sizes& sizes_;
    std::function<format::Locale()> locale_;
    Theme theme_ = theme_of(drawing::Ground::paper);
    wxPanel* head_ = nullptr;
    FlowList* list_ = nullptr;
    std::vector<const search::Result*> shown_;
};

}  // namespace toehold::window
