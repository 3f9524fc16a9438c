#pragma once
// A scene of the drawings in a window of its own, as large as the window allows.
#include "drawing/render/painter.h"
#include "drawing/scene/view.h"

#include <wx/window.h>

#include <functional>
#include <optional>

namespace toehold::window {

class ScenePane : public wxWindow {
  public:
    ScenePane(wxWindow* parent, const wxString& name);

    void show(drawing::Scene scene);
    void set_ground(drawing::Ground ground);

    /// Told of a press and of the pointer's way, in the scene's own inches; `reach_in` is what a hand means as near.
    std::function<void(drawing::Point at, double reach_in)> pressed, moved;
    /// Painted over the scene, for what follows the pointer.
    void mark(drawing::Scene marks);
    [[nodiscard]] wxPoint pixel_of(drawing::Point at) const;  ///< of the window, for tests

  protected:
    [[nodiscard]] wxSize DoGetBestClientSize() const override;

  private:
    [[nodiscard]] drawing::View view() const;
    void paint();
    void tell(const std::function<void(drawing::Point, double)>& told, const wxPoint& at) const;

    drawing::Scene scene_, marks_;
    drawing::Ground ground_ = drawing::Ground::paper;
    mutable std::optional<drawing::View> view_;  ///< of the scene in the window as large as it is
};

/// Paints a scene into a part of a window that is being painted.
void paint_scene(wxDC& dc, const drawing::Scene& scene, const wxRect& area, drawing::Ground ground);

}  // namespace toehold::window
