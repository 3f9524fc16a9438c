#pragma once
// The drawings' colours for the panels beside them, and the drawings' marks on a panel's own surface.
#include "drawing/render/palette.h"

#include <wx/colour.h>
#include <wx/gdicmn.h>

class wxDC;
class wxWindow;

namespace toehold::window {

struct Ink {
    wxColour ground;
    wxColour text;
    wxColour faint;     ///< text that stands back: 4.5:1 against the ground at the least
    wxColour rule;      ///< thin lines between rows
    wxColour raised;    ///< ground of headings
    wxColour selected;  ///< ground under what is selected
    wxColour demand;
    wxColour capacity;
    wxColour selection;  ///< the drawings' selection line
};
[[nodiscard]] Ink ink(drawing::Ground ground);

/// `share` of `over` on `under`, from 0 to 1.
[[nodiscard]] wxColour blended(const wxColour& under, const wxColour& over, double share);

/// Paints a scene that is measured in millimetres of paper alone, its origin at the middle of `area`.
void paint_mark(wxDC& dc, const drawing::Scene& mark, const wxRect& area, drawing::Ground ground);
/// Logical pixels for a millimetre of paper on the screen.
[[nodiscard]] double pixels_per_mm();

}  // namespace toehold::window
