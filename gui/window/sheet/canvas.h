#pragma once
// The drafting sheet: plan, section, elevation and rose of one detail on one canvas, all of them live and to be worked
// on by hand. Units of the canvas are the window's (pixels before the content scale).
#include "editing/handles.h"
#include "session/session.h"
#include "window/sheet/drag.h"
#include "window/sheet/live_marks.h"
#include "window/sheet/nudging.h"
#include "window/sheet/tool.h"
#include "window/sheet/view.h"

#include <wx/timer.h>
#include <wx/window.h>

#include <functional>
#include <optional>
#include <string>
#include <vector>

namespace toehold::window {

class SheetCanvas : public wxWindow {
  public:
    /// The session outlives the canvas.
    SheetCanvas(wxWindow* parent, session::Session& session);
    ~SheetCanvas() override;
    SheetCanvas(const SheetCanvas&) = delete;
    SheetCanvas& operator=(const SheetCanvas&) = delete;

    void set_ground(drawing::Ground ground);
    void fit_all();
    void zoom_in();  ///< the active cell, about its middle
    void zoom_out();
    /// One cell with the room of all; absent: all of them.
    void show_alone(std::optional<CellKind> kind);

    /// `reach_in` is not kept: it follows the zoom.
    void set_snap(editing::SnapRules rules);
    [[nodiscard]] editing::SnapRules snap() const { return snap_; }
    void set_nudge(std::optional<NudgeSteps> steps);  ///< absent: those customary in the units shown
    void set_tool(Tool tool);
    [[nodiscard]] Tool tool() const { return tool_; }
    void when_tool_changes(std::function<void(Tool)> told) { tool_told_ = std::move(told); }
    /// The push turned to the next whole step of so many degrees.
    void turn_push_by(double degrees);

    // --- for tests, so that they can aim ---
    [[nodiscard]] wxPoint pixel_of(editing::Sheet sheet, drawing::Point at_in) const;
    [[nodiscard]] wxPoint pixel_in_rose(drawing::Point at) const;  ///< of its scene, whose outer circle is 1
    [[nodiscard]] wxRect cell_rectangle(CellKind kind) const;
    [[nodiscard]] wxRect title_rectangle(CellKind kind) const;

  protected:
    wxSize DoGetBestClientSize() const override;

  private:
    enum class Doing { nothing, pressed, moving, turning, banding, panning };
    struct Pointer {
        drawing::Point at;  ///< on the sheet
        bool shift = false, alt = false;
    };
    /// Since a button went down.
    struct Press {
        CellKind cell = CellKind::plan;
        drawing::Point at;  ///< on the sheet
        std::string part;
        std::optional<editing::Handle> handle;
        drawing::View view;                   ///< before
        std::optional<double> direction_rad;  ///< of the push shown, before
        double push_offset_rad = 0.0;
        bool shift = false;
        bool was_selected = false;
    };

    // sheet_canvas.cpp
    void bind_events();
    void on_session(session::Change change);
    void on_paint(wxPaintEvent& event);
    void lay_out();
    void refresh();
    [[nodiscard]] SheetView::Live live();
    [[nodiscard]] std::vector<editing::Handle> visible_handles(CellKind kind);
    void fit_active();
    void zoom_active(double factor);

    // sheet_canvas_pointer.cpp
    void on_left_down(wxMouseEvent& event);
    void on_left_up(wxMouseEvent& event);
    void on_double(wxMouseEvent& event);
    void on_middle_down(wxMouseEvent& event);
    void on_middle_up(wxMouseEvent& event);
    void on_motion(wxMouseEvent& event);
    void on_wheel(wxMouseEvent& event);
    void on_leave(wxMouseEvent& event);
    void on_capture_lost(wxMouseCaptureLostEvent& event);
    void on_idle(wxIdleEvent& event);
    void press(CellKind kind, const Pointer& pointer);
    void begin_pan(CellKind kind, const Pointer& pointer);
    void hover(const Pointer& pointer);
    void show_cursor(CellKind kind, const std::string& part, const std::optional<editing::Handle>& handle);
    void show_tip();

    // sheet_canvas_drag.cpp
    void begin_drag(const Pointer& pointer);
    void follow(const Pointer& pointer);
    void move_handle(const Pointer& pointer);
    void turn(const Pointer& pointer);
    void band(const Pointer& pointer);
    void release(const Pointer& pointer);
    void click(const Pointer& pointer);
    void take_back();
    void end_drag();
    void use_tool(drawing::Point at_in, const Pointer& pointer);
    [[nodiscard]] editing::SnapRules rules(CellKind kind) const;

    // sheet_canvas_keys.cpp
    void on_key(wxKeyEvent& event);
    void on_character(wxKeyEvent& event);
    bool nudge(const wxKeyEvent& event);
    bool cycle(bool backward);
    void erase();
    void escape();
    void activate(CellKind kind);

    // sheet_canvas_menu.cpp
    void on_context_menu(wxContextMenuEvent& event);

    session::Session& session_;
    mutable SheetView view_;  ///< makes scenes when they are first asked for
    int listening_ = 0;
    Tool tool_ = Tool::select;
    std::function<void(Tool)> tool_told_;
    editing::SnapRules snap_;
    std::optional<NudgeSteps> nudge_;
    CellKind active_ = CellKind::plan;

    Doing doing_ = Doing::nothing;
    std::optional<Press> press_;
    std::optional<Hold> hold_;
    std::string merge_key_;
    int drags_ = 0;
    std::optional<Pointer> waiting_;  ///< a motion not followed yet
    bool frame_owed_ = false;         ///< the last one followed has not been painted yet
    std::optional<CellKind> hovered_;
    std::string hovered_part_, hot_;
    LiveMarks marks_;
    std::optional<CellKind> marks_cell_;
    wxTimer nudge_rest_;  ///< ends a row of nudges
};

}  // namespace toehold::window
