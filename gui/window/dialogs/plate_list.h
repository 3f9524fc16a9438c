#pragma once
// Stock plates as a list, each drawn to one common scale with its name and thickness.
#include "catalog/catalog.h"
#include "window/theme/theme.h"

#include <wx/vlbox.h>

#include <vector>

namespace toehold::window {

class PlateList : public wxVListBox {
  public:
    /// The catalog outlives the list.
    PlateList(wxWindow* parent, const catalog::Catalog& catalog, drawing::Ground ground);
    [[nodiscard]] const model::Plate* chosen() const;  ///< nullptr: none

  private:
    void OnDrawItem(wxDC& dc, const wxRect& area, std::size_t number) const override;
    void OnDrawBackground(wxDC& dc, const wxRect& area, std::size_t number) const override;
    wxCoord OnMeasureItem(std::size_t number) const override;
    void draw_plate(wxDC& dc, const wxRect& area, const model::Plate& plate) const;

    const std::vector<model::Plate>& plates_;
    const catalog::Catalog& catalog_;
    Look look_;
    double largest_in_ = 1.0;  ///< longest side of any plate
};

}  // namespace toehold::window
