#include "window/controls/scene_pane.h"

#include "drawing/render/tight_fit.h"
#include "window/sheet/layout.h"
#include "window/theme/status_marks.h"

#include <wx/dcbuffer.h>
#include <wx/graphics.h>

#include <memory>
#include <utility>

namespace toehold::window {
namespace {

constexpr double reach_px = 8.0;

drawing::Area area_of(const wxRect& rect) {
    return {static_cast<double>(rect.x), static_cast<double>(rect.y), static_cast<double>(rect.width),
            static_cast<double>(rect.height)};
}

drawing::View fitted_view(const drawing::Scene& scene, const wxRect& rect) {
    const drawing::Area area = inset(area_of(rect), 2.0);
    return drawing::fit_tightly(scene, area, lettering_units(area, pixels_per_mm));
}

}  // namespace

ScenePane::ScenePane(wxWindow* parent, const wxString& name) {
    SetBackgroundStyle(wxBG_STYLE_PAINT);
    Create(parent, wxID_ANY, wxDefaultPosition, wxDefaultSize, wxBORDER_NONE | wxFULL_REPAINT_ON_RESIZE, name);
    SetMinSize(FromDIP(wxSize(160, 120)));
    Bind(wxEVT_PAINT, [this](wxPaintEvent&) { paint(); });
    Bind(wxEVT_SIZE, [this](wxSizeEvent& event) {
        view_.reset();
        event.Skip();
    });
    Bind(wxEVT_LEFT_DOWN, [this](wxMouseEvent& event) {
        tell(pressed, event.GetPosition());
        event.Skip();
    });
    Bind(wxEVT_MOTION, [this](wxMouseEvent& event) { tell(moved, event.GetPosition()); });
}

wxSize ScenePane::DoGetBestClientSize() const { return FromDIP(wxSize(360, 260)); }

void ScenePane::show(drawing::Scene scene) {
    scene_ = std::move(scene);
    marks_ = {};
    view_.reset();
    Refresh(false);
}

void ScenePane::set_ground(drawing::Ground ground) {
    ground_ = ground;
    Refresh(false);
}

void ScenePane::mark(drawing::Scene marks) {
    if (marks.items.empty() && marks_.items.empty()) return;
    marks_ = std::move(marks);
    Refresh(false);
}

drawing::View ScenePane::view() const {
    if (!view_) view_ = fitted_view(scene_, GetClientRect());
    return *view_;
}

void ScenePane::tell(const std::function<void(drawing::Point, double)>& told, const wxPoint& at) const {
    if (!told || scene_.items.empty()) return;
    const drawing::View now = view();
    told(drawing::to_drawing(now, {static_cast<double>(at.x), static_cast<double>(at.y)}), reach_px / now.units_per_in);
}

wxPoint ScenePane::pixel_of(drawing::Point at) const {
    const drawing::Point pixel = drawing::to_surface(view(), at);
    return {wxRound(pixel.x), wxRound(pixel.y)};
}

void ScenePane::paint() {
    wxAutoBufferedPaintDC dc(this);
    const std::unique_ptr<wxGraphicsContext> context(wxGraphicsContext::Create(dc));
    if (!context) return;
    auto* cairo = static_cast<cairo_t*>(context->GetNativeContext());
    drawing::paint_ground(cairo, area_of(GetClientRect()), ground_);
    if (scene_.items.empty()) return;
    drawing::paint(cairo, scene_, view(), ground_);
    drawing::paint(cairo, marks_, view(), ground_);
}

void paint_scene(wxDC& dc, const drawing::Scene& scene, const wxRect& area, drawing::Ground ground) {
    const std::unique_ptr<wxGraphicsContext> context(wxGraphicsContext::CreateFromUnknownDC(dc));
    if (!context || scene.items.empty()) return;
    context->Clip(area.x, area.y, area.width, area.height);
    drawing::paint(static_cast<cairo_t*>(context->GetNativeContext()), scene, fitted_view(scene, area), ground);
}

}  // namespace toehold::window
