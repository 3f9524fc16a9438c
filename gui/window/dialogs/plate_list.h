#pragma once
// Stock plates as a list, each drawn to one common scale with its name and thickness.
#include "catalog/catalog.h"
#include "window/theme/theme.h"

#include <wx/vlbox.h>

#include <optional>
#include <vector>

namespace toehold::window {

class Application;

class PlateList : public wxVListBox {
  public:
    /// The catalog outlives the list.
    PlateList(wxWindow* parent, const catalog::Catalog& catalog, const Theme& theme);
    [[nodiscard]] const model::Plate* chosen() const;  ///< nullptr: none

  private:
    void OnDrawItem(wxDC& dc, const wxRect& area, std::size_t number) const override;
    void OnDrawBackground(wxDC& dc, const wxRect& area, std::size_t number) const override;
    wxCoord OnMeasureItem(std::size_t number) const override;
    void draw_plate(wxDC& dc, const wxRect& area, const model::Plate& plate) const;

    const std::vector<model::Plate>& plates_;
    const catalog::Catalog& catalog_;
    Theme theme_;
    double largest_in_ = 1.0;  ///< longest side of any plate
};

/// A stock plate picked in a dialog; absent: thought better of it.
[[nodiscard]] std::optional<model::Plate> ask_stock_plate(wxWindow* parent, const Application& application);

}  // namespace toehold::window
