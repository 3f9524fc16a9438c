#pragma once
// The drafting sheet: plan, section, elevation and rose of one detail on one canvas, all of them live. The canvas is
// their window: it paints, and hands the pointer, the keys and the menu to those who answer them. Units of the canvas
// are the window's (pixels before the content scale).
#include "solving/regions.h"
#include "window/sheet/drag_controller.h"
#include "window/sheet/hover.h"
#include "window/sheet/keyboard.h"
#include "window/sheet/state.h"

#include <wx/window.h>

#include <functional>
#include <memory>
#include <optional>

namespace toehold::window {

inline constexpr double push_step_deg = 5.0;  ///< by which a key turns the push

class SheetCanvas : public wxWindow {
  public:
    /// The session outlives the canvas.
    SheetCanvas(wxWindow* parent, session::Session& session);
    ~SheetCanvas() override;
    SheetCanvas(const SheetCanvas&) = delete;
    SheetCanvas& operator=(const SheetCanvas&) = delete;

    void set_ground(drawing::Ground ground);
    void set_nudge(std::optional<NudgeSteps> steps);  ///< absent: those customary in the units shown
    void set_tool(Tool tool);
    [[nodiscard]] Tool tool() const { return sheet_.tool; }
    void when_tool_changes(std::function<void(Tool)> told) { tool_told_ = std::move(told); }

    void fit_all();
    void fit_active();
    void zoom_in();  ///< the active cell, about its middle
    void zoom_out();
    void activate(CellKind kind);
    /// One cell with the room of all; absent: all of them.
    void show_alone(std::optional<CellKind> kind);
    void toggle_alone(CellKind kind);
    /// The push turned to the next whole step of so many degrees.
    void turn_push_by(double degrees);

    [[nodiscard]] bool is_dragging() const { return drag_.busy(); }
    void take_back_drag();
    void receive(std::shared_ptr<const solving::RegionNews> news) { sheet_.holds.receive(std::move(news)); }

    // --- for tests, so that they can aim and wait ---
    [[nodiscard]] const session::WhereItHolds& where_it_holds() const { return sheet_.holds; }
    [[nodiscard]] wxPoint pixel_of(editing::Sheet sheet, drawing::Point at_in) const;
    [[nodiscard]] wxPoint pixel_in_rose(drawing::Point at) const;  ///< of its scene, whose outer circle is 1
    [[nodiscard]] wxRect cell_rectangle(CellKind kind) const;
    [[nodiscard]] wxRect title_rectangle(CellKind kind) const;

  protected:
    wxSize DoGetBestClientSize() const override;

  private:
    void bind_window_events();
    void bind_pointer_events();
    void on_session(session::Change change);
    void on_paint(wxPaintEvent& event);
    void lay_out();
    void refresh();
    [[nodiscard]] SheetView::Live live();
    void zoom_active(double factor);

    void on_left_down(wxMouseEvent& event);
    void on_middle_down(wxMouseEvent& event);
    void on_motion(wxMouseEvent& event);
    void on_double(wxMouseEvent& event);
    void on_wheel(wxMouseEvent& event);
    void begin_drag();
    void release(const wxMouseEvent& event);
    void drag_has_ended();
    void show_tip();
    void on_context_menu(wxContextMenuEvent& event);

    [[nodiscard]] const drawing::Scene* region();  ///< nullptr: none is known

    std::shared_ptr<SheetCanvas*> alive_;  ///< news that come after the canvas has gone find nobody
    solving::Regions regions_;
    mutable SheetState sheet_;  ///< makes scenes when they are first asked for
    DragController drag_;
    Hover hover_;
    SheetKeyboard keyboard_;
    int listening_ = 0;
    std::optional<drawing::Scene> region_;  ///< of what is known; absent: to be made
    std::function<void(Tool)> tool_told_;
};

}  // namespace toehold::window
