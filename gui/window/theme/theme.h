#pragma once
// The window's theme: the drawings' ink and paper, and one set of sizes, for everything around the drawings.
#include "drawing/render/palette.h"

#include <wx/colour.h>
#include <wx/font.h>

#include <cstddef>

class wxAuiManager;
class wxDC;
class wxRect;
class wxTopLevelWindow;
class wxVListBox;
class wxWindow;

namespace toehold::window {

/// The reader's wish; `desktop` takes paper on a light desktop and night on a dark one.
enum class GroundChoice { desktop, paper, night };

/// Colors by what they are for.
struct Theme {
    drawing::Ground ground = drawing::Ground::paper;
    wxColour paper;      ///< of every surface
    wxColour raised;     ///< of entries and lists, a little off the paper
    wxColour band;       ///< under headings
    wxColour ink;        ///< words and frames
    wxColour faded;      ///< words of second rank: 4.5:1 against the paper at the least
    wxColour line;       ///< hair lines between things
    wxColour rule;       ///< fainter ones, between rows
    wxColour selection;  ///< the drawings' selection line
    wxColour selected;   ///< under what is selected
    wxColour demand;
    wxColour capacity;
    friend bool operator==(const Theme& one, const Theme& other) { return one.ground == other.ground; }
};
[[nodiscard]] Theme theme_of(drawing::Ground ground);

/// Sizes of lettering, points.
namespace points {
inline constexpr double display = 26.0;
inline constexpr double verdict = 15.0;
inline constexpr double lead = 10.5;
inline constexpr double body = 9.0;
inline constexpr double small = 8.5;
inline constexpr double fine = 8.0;
}  // namespace points

/// Distances between things, device-independent pixels.
namespace gap {
inline constexpr int hair = 3;
inline constexpr int small = 6;
inline constexpr int normal = 8;
inline constexpr int wide = 14;
inline constexpr int page = 22;
}  // namespace gap

/// `share` of the first over the second, 0 to 1.
[[nodiscard]] wxColour mixed(const wxColour& over, const wxColour& under, double share);
[[nodiscard]] wxColour colour(const drawing::Colour& colour);

/// Whether the desktop is dark. Ask before `apply_to_toolkit`, which changes what the toolkit answers.
[[nodiscard]] bool desktop_is_dark();
[[nodiscard]] drawing::Ground ground(GroundChoice choice, bool dark_desktop);

/// To the toolkit's own controls (menus, entries, buttons, lists). Where the toolkit cannot, nothing happens.
void apply_to_toolkit(const Theme& theme);
/// To captions, sashes and borders of the panes.
void apply_theme(wxAuiManager& panes, const Theme& theme);
/// To one control: paper and ink.
void apply_theme(wxWindow& control, const Theme& theme);

/// What lies under a row of a list: paper; under the current one its color, with a frame where the keys go to the list.
void paint_row_ground(wxDC& dc, const wxRect& area, const wxVListBox& list, std::size_t row, const Theme& theme);

/// The program's own icon, for a window's frame.
void give_icon(wxTopLevelWindow& window);

/// The lettering of the drawings at a size in points.
[[nodiscard]] wxFont lettering(double size, bool bold = false);

}  // namespace toehold::window
