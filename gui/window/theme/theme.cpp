#include "window/theme/theme.h"

#include "window/theme/icon_svg.h"

#include <wx/aui/aui.h>
#include <wx/bmpbndl.h>
#include <wx/dc.h>
#include <wx/iconbndl.h>
#include <wx/settings.h>
#include <wx/toplevel.h>
#include <wx/vlbox.h>

#include <cmath>

namespace toehold::window {

namespace {

unsigned char byte(double share) { return static_cast<unsigned char>(std::lround(255.0 * share)); }

}  // namespace

wxColour colour(const drawing::Colour& colour) {
    return {byte(colour.red), byte(colour.green), byte(colour.blue), byte(colour.opacity)};
}

wxColour mixed(const wxColour& over, const wxColour& under, double share) {
    const auto channel = [share](unsigned char one, unsigned char other) {
        return static_cast<unsigned char>(std::lround(share * one + (1.0 - share) * other));
    };
    return {channel(over.Red(), under.Red()), channel(over.Green(), under.Green()), channel(over.Blue(), under.Blue())};
}

Theme theme_of(drawing::Ground ground) {
    const auto pen = [ground](drawing::Pen of) { return colour(drawing::stroke(of, ground).colour); };
    const bool night = ground == drawing::Ground::night;
    Theme made;
    made.ground = ground;
    made.paper = colour(drawing::ground_colour(ground));
    made.ink = pen(drawing::Pen::outline);
    made.raised = mixed(night ? made.ink : *wxWHITE, made.paper, night ? 0.06 : 0.5);
    made.band = mixed(made.ink, made.paper, 0.07);
    made.faded = mixed(made.ink, made.paper, 0.72);
    made.line = mixed(made.ink, made.paper, 0.28);
    made.rule = mixed(made.ink, made.paper, 0.16);
    made.selection = pen(drawing::Pen::selection);
    made.selected = mixed(made.selection, made.paper, 0.16);
    made.demand = pen(drawing::Pen::demand);
    made.capacity = pen(drawing::Pen::capacity);
    return made;
}

bool desktop_is_dark() { return wxSystemSettings::GetAppearance().IsDark(); }

drawing::Ground ground(GroundChoice choice, bool dark_desktop) {
    const bool night = choice == GroundChoice::night || (choice == GroundChoice::desktop && dark_desktop);
    return night ? drawing::Ground::night : drawing::Ground::paper;
}

void apply_theme(wxAuiManager& panes, const Theme& theme) {
    wxAuiDockArt& art = *panes.GetArtProvider();
    art.SetMetric(wxAUI_DOCKART_GRADIENT_TYPE, wxAUI_GRADIENT_NONE);
    art.SetMetric(wxAUI_DOCKART_PANE_BORDER_SIZE, 1);
    art.SetMetric(wxAUI_DOCKART_SASH_SIZE, panes.GetManagedWindow()->FromDIP(5));
    art.SetMetric(wxAUI_DOCKART_CAPTION_SIZE, panes.GetManagedWindow()->FromDIP(22));
    art.SetFont(wxAUI_DOCKART_CAPTION_FONT, lettering(points::small, true));
    for (const int surface : {wxAUI_DOCKART_BACKGROUND_COLOUR, wxAUI_DOCKART_SASH_COLOUR,
                              wxAUI_DOCKART_ACTIVE_CAPTION_COLOUR, wxAUI_DOCKART_ACTIVE_CAPTION_GRADIENT_COLOUR,
                              wxAUI_DOCKART_INACTIVE_CAPTION_COLOUR, wxAUI_DOCKART_INACTIVE_CAPTION_GRADIENT_COLOUR}) {
        art.SetColour(surface, theme.paper);
    }
    art.SetColour(wxAUI_DOCKART_BORDER_COLOUR, theme.line);
    art.SetColour(wxAUI_DOCKART_GRIPPER_COLOUR, theme.line);
    art.SetColour(wxAUI_DOCKART_ACTIVE_CAPTION_TEXT_COLOUR, theme.ink);
    art.SetColour(wxAUI_DOCKART_INACTIVE_CAPTION_TEXT_COLOUR, theme.ink);
}

void apply_theme(wxWindow& control, const Theme& theme) {
    control.SetBackgroundColour(theme.paper);
    control.SetForegroundColour(theme.ink);
}

void paint_row_ground(wxDC& dc, const wxRect& area, const wxVListBox& list, std::size_t row, const Theme& theme) {
    const bool current = list.IsSelected(row);
    dc.SetPen(*wxTRANSPARENT_PEN);
    dc.SetBrush(wxBrush(current ? theme.selected : theme.paper));
    dc.DrawRectangle(area);
    if (!current || !list.HasFocus()) return;
    dc.SetBrush(*wxTRANSPARENT_BRUSH);
    dc.SetPen(wxPen(theme.selection, 1));
    dc.DrawRectangle(area);
}

void give_icon(wxTopLevelWindow& window) {
    const wxBitmapBundle drawn = wxBitmapBundle::FromSVG(icon_svg, wxSize(64, 64));
    wxIconBundle icons;
    for (const int side : {16, 32, 64, 128}) icons.AddIcon(drawn.GetIcon(wxSize(side, side)));
    window.SetIcons(icons);
}

wxFont lettering(double size, bool bold) {
    wxFontInfo info(size);
    info.FaceName("DejaVu Sans");
    if (bold) info.Bold();
    return {info};
}

}  // namespace toehold::window
