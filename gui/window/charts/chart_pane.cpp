#include "window/charts/chart_pane.h"

#include "drawing/scene/shapes.h"
#include "window/text.h"
#include "window/theme/status_marks.h"

#include <wx/dcbuffer.h>
#include <wx/graphics.h>

#include <algorithm>
#include <cmath>
#include <limits>
#include <memory>
#include <utility>

namespace toehold::window {
namespace {

constexpr double mm_per_in = 25.4;

drawing::Point middle_mm(const drawing::Spot& spot) {
    return {0.5 * (spot.low_mm.x + spot.high_mm.x), 0.5 * (spot.low_mm.y + spot.high_mm.y)};
}

drawing::Point pixel(const wxPoint& at) { return {static_cast<double>(at.x), static_cast<double>(at.y)}; }

}  // namespace

ChartPane::ChartPane(wxWindow* parent, const wxString& name, std::function<void(const drawing::Spot&)> picked)
    : picked_(std::move(picked)) {
    SetBackgroundStyle(wxBG_STYLE_PAINT);
    Create(parent, wxID_ANY, wxDefaultPosition, wxDefaultSize, wxBORDER_NONE | wxWANTS_CHARS | wxFULL_REPAINT_ON_RESIZE,
           name);
    SetMinSize(FromDIP(wxSize(240, 180)));
    Bind(wxEVT_PAINT, [this](wxPaintEvent&) { paint(); });
    Bind(wxEVT_SIZE, [this](wxSizeEvent& event) {
        remake();
        event.Skip();
    });
    Bind(wxEVT_LEFT_DOWN, [this](wxMouseEvent& event) { on_press(event); });
    Bind(wxEVT_LEFT_DCLICK, [this](wxMouseEvent&) {
        // Wherever the chart has moved to make room for what the first press showed.
        if (twice && pressed_spot_) twice();
    });
    Bind(wxEVT_MOTION, [this](wxMouseEvent& event) { on_motion(event); });
    Bind(wxEVT_KEY_DOWN, &ChartPane::on_key, this);
    const auto focus = [this](wxFocusEvent& event) {
        Refresh(false);
        event.Skip();
    };
    Bind(wxEVT_SET_FOCUS, focus);
    Bind(wxEVT_KILL_FOCUS, focus);
}

wxSize ChartPane::DoGetBestClientSize() const { return FromDIP(wxSize(560, 380)); }

void ChartPane::show(Make make) {
    make_ = std::move(make);
    current_.reset();
    UnsetToolTip();
    remake();
}

void ChartPane::apply_theme(const Theme& theme) {
    theme_ = theme;
    Refresh(false);
}

void ChartPane::set_stale(bool stale) {
    if (stale == stale_) return;
    stale_ = stale;
    Refresh(false);
}

/// The chart is made for its room; where that is less than it needs, it is shown smaller.
void ChartPane::remake() {
    chart_ = {};
    const wxSize room = GetClientSize();
    if (make_ && room.x > 0 && room.y > 0) {
        const double wanted = pixels_per_mm * FromDIP(1000) / 1000.0;
        chart_ = make_(room.x / wanted, room.y / wanted);
        const double width_mm = mm_per_in * drawing::width(chart_.scene.bounds),
                     height_mm = mm_per_in * drawing::height(chart_.scene.bounds);
        const double fits = std::min(room.x / std::max(width_mm, 1.0), room.y / std::max(height_mm, 1.0));
        view_.units_per_mm = std::min(wanted, fits);
        view_.units_per_in = mm_per_in * view_.units_per_mm;
        view_.center_in = drawing::middle(chart_.scene.bounds);
        view_.center = {0.5 * room.x, 0.5 * room.y};
    }
    if (current_ && *current_ >= chart_.spots.size()) current_.reset();
    Refresh(false);
}

wxPoint ChartPane::pixel_of(const drawing::Spot& spot) const {
    const drawing::Point at = middle_mm(spot);
    const drawing::Point place = drawing::to_surface(view_, drawing::Point{at.x / mm_per_in, at.y / mm_per_in});
    return {wxRound(place.x), wxRound(place.y)};
}

void ChartPane::paint() {
    wxAutoBufferedPaintDC dc(this);
    dc.SetBackground(wxBrush(theme_.paper));
    dc.Clear();
    if (chart_.scene.items.empty()) return;
    const std::unique_ptr<wxGraphicsContext> context(wxGraphicsContext::Create(dc));
    if (!context) return;
    drawing::paint(static_cast<cairo_t*>(context->GetNativeContext()), chart_.scene, view_, theme_.ground);
    if (stale_) {
        context->SetPen(*wxTRANSPARENT_PEN);
        context->SetBrush(wxBrush(wxColour(theme_.paper.Red(), theme_.paper.Green(), theme_.paper.Blue(), 140)));
        const wxSize all = GetClientSize();
        context->DrawRectangle(0.0, 0.0, all.x, all.y);
    }
    if (!current_) return;
    const drawing::Spot& spot = chart_.spots[*current_];
    const double half_wide = 0.5 * (spot.high_mm.x - spot.low_mm.x) * view_.units_per_mm,
                 half_high = 0.5 * (spot.high_mm.y - spot.low_mm.y) * view_.units_per_mm;
    const wxPoint at = pixel_of(spot);
    context->SetPen(wxPen(theme_.selection, HasFocus() ? 3 : 2));
    context->SetBrush(*wxTRANSPARENT_BRUSH);
    context->DrawRectangle(at.x - half_wide, at.y - half_high, 2.0 * half_wide, 2.0 * half_high);
}

void ChartPane::make_current(std::size_t spot) {
    current_ = spot;
    SetToolTip(text_of(chart_.spots[spot].words));
    Refresh(false);
}

void ChartPane::on_press(const wxMouseEvent& event) {
    SetFocus();
    const drawing::Spot* spot = drawing::spot_at(chart_, view_, pixel(event.GetPosition()));
    pressed_spot_ = spot != nullptr;
    if (spot == nullptr) return;
    make_current(static_cast<std::size_t>(spot - chart_.spots.data()));
    picked_(*spot);
}

void ChartPane::on_motion(const wxMouseEvent& event) {
    const drawing::Spot* spot = drawing::spot_at(chart_, view_, pixel(event.GetPosition()));
    SetCursor(wxCursor(spot == nullptr ? wxCURSOR_DEFAULT : wxCURSOR_HAND));
    if (spot == nullptr) return UnsetToolTip();
    const wxString words = text_of(spot->words);
    if (GetToolTipText() != words) SetToolTip(words);
}

/// To the nearest spot that way; what lies aside counts double.
void ChartPane::go(double right, double up) {
    if (chart_.spots.empty()) return;
    if (!current_) return make_current(0);
    const drawing::Point from = middle_mm(chart_.spots[*current_]);
    double best = std::numeric_limits<double>::infinity();
    std::optional<std::size_t> found;
    for (std::size_t at = 0; at < chart_.spots.size(); ++at) {
        const drawing::Point to = middle_mm(chart_.spots[at]);
        const double along = (to.x - from.x) * right + (to.y - from.y) * up;
        const double aside = std::abs((to.x - from.x) * up) + std::abs((to.y - from.y) * right);
        if (along < 0.5 || along + 2.0 * aside >= best) continue;
        best = along + 2.0 * aside;
        found = at;
    }
    if (found) make_current(*found);
}

void ChartPane::on_key(wxKeyEvent& event) {
    switch (event.GetKeyCode()) {
        case WXK_LEFT:
            return go(-1.0, 0.0);
        case WXK_RIGHT:
            return go(1.0, 0.0);
        case WXK_UP:
            return go(0.0, 1.0);
        case WXK_DOWN:
            return go(0.0, -1.0);
        case WXK_RETURN:
        case WXK_NUMPAD_ENTER:
        case WXK_SPACE:
            if (current_) picked_(chart_.spots[*current_]);
            return;
        case WXK_TAB:
            Navigate(event.ShiftDown() ? wxNavigationKeyEvent::IsBackward : wxNavigationKeyEvent::IsForward);
            return;
        default:
            event.Skip();
    }
}

}  // namespace toehold::window
