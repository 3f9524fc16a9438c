#pragma once
// Words set in lines: in a column of a panel, broken at blanks, with the subscripts of symbols where asked; or in a few
// lines of a strip.
#include <wx/dc.h>
#include <wx/string.h>

#include <string>
#include <vector>

class wxGraphicsContext;

namespace toehold::window {

enum class Setting { plain, symbols };

struct TextStyle {
    wxFont font;
    wxColour colour;
    Setting setting = Setting::plain;
};

/// Height in pixels of the words in a column so wide; at least one line. A word wider than the column runs over.
[[nodiscard]] int flow_height(wxDC& dc, const wxString& words, int width, const TextStyle& style);
/// Sets them from the column's upper left corner and gives the same height.
int flow(wxDC& dc, const wxString& words, const wxPoint& at, int width, const TextStyle& style);
/// Width of the words in one line.
[[nodiscard]] int line_width(wxDC& dc, const wxString& words, const TextStyle& style);

/// At least one line and at most `most`; what does not fit in them ends in an ellipsis. In the context's font.
[[nodiscard]] std::vector<wxString> lines_of(wxGraphicsContext& context, const wxString& text, double width,
                                             std::size_t most);

}  // namespace toehold::window
