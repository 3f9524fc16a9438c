#pragma once
// The window's dress: the drawings' ink and paper for everything around them.
#include "drawing/render/palette.h"

#include <wx/aui/framemanager.h>
#include <wx/colour.h>
#include <wx/font.h>

class wxTopLevelWindow;

namespace toehold::window {

/// The reader's wish; `desktop` takes paper on a light desktop and night on a dark one.
enum class GroundChoice { desktop, paper, night };

[[nodiscard]] wxColour colour(const drawing::Colour& colour);
/// `share` of the first over the second, 0 to 1.
[[nodiscard]] wxColour mixed(const wxColour& over, const wxColour& under, double share);

struct Look {
    drawing::Ground ground = drawing::Ground::paper;
    wxColour paper;   ///< of every surface
    wxColour raised;  ///< of fields and lists, a little off the paper
    wxColour ink;     ///< words and frames
    wxColour faded;   ///< words of second rank; still legible
    wxColour line;    ///< hair lines between things
    wxColour demand;
    wxColour capacity;
};
[[nodiscard]] Look look(drawing::Ground ground);

/// Whether the desktop is dark. Ask before `dress_toolkit`, which changes what the toolkit answers.
[[nodiscard]] bool desktop_is_dark();
[[nodiscard]] drawing::Ground ground(GroundChoice choice, bool dark_desktop);

/// Gives the toolkit's own controls (menus, fields, buttons, lists) the look. Where the toolkit cannot, nothing
/// happens.
void dress_toolkit(const Look& look);
/// Captions, sashes and borders of the panes.
void dress(wxAuiManager& panes, const Look& look);

/// The program's own mark, for a window's frame.
void give_icon(wxTopLevelWindow& window);

/// The lettering of the drawings at a size in points.
[[nodiscard]] wxFont lettering(double points, bool bold = false);

}  // namespace toehold::window
