#pragma once
// A list whose rows one function both measures and paints, in the panels' paper and ink.
#include "window/theme/theme.h"

#include <wx/vlbox.h>

#include <functional>
#include <vector>

namespace toehold::window {

class FlowList : public wxVListBox {
  public:
    /// Height of a row in a list as wide as `area`; painted from its upper left corner where `paint` is set.
    using Row = std::function<int(wxDC& dc, std::size_t row, const wxRect& area, bool paint)>;
    FlowList(wxWindow* parent, const wxString& name, Row row);

    void show(std::size_t count);  ///< what the rows say may have changed
    void apply_theme(const Theme& theme);
    /// Told of another current row, by pointer or key.
    std::function<void(std::size_t)> chosen;

  protected:
    void OnDrawItem(wxDC& dc, const wxRect& rect, std::size_t row) const override;
    void OnDrawBackground(wxDC& dc, const wxRect& rect, std::size_t row) const override;
    void OnDrawSeparator(wxDC& dc, wxRect& rect, std::size_t row) const override;
    wxCoord OnMeasureItem(std::size_t row) const override;

  private:
    Row row_;
    Theme theme_ = theme_of(drawing::Ground::paper);
    mutable std::vector<int> heights_;  ///< measured so far at `measured_width_`; 0: not yet
    mutable int measured_width_ = 0;
};

}  // namespace toehold::window
