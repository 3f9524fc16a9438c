#pragma once
// What the pointer does with a button down: picks, moves a handle, turns the push, draws a box around holes, pans.
// Motions are followed one a frame, so that a slow frame never falls behind the pointer.
#include "window/sheet/drag.h"
#include "window/sheet/state.h"

#include <optional>
#include <string>

namespace toehold::window {

class DragController {
  public:
    /// The state outlives the controller.
    explicit DragController(SheetState& sheet) : sheet_(sheet) {}

    /// A button is down.
    [[nodiscard]] bool busy() const { return doing_ != Doing::nothing; }
    /// It has moved further than a click.
    [[nodiscard]] bool dragging() const { return busy() && doing_ != Doing::pressed; }
    [[nodiscard]] bool panning() const { return doing_ == Doing::panning; }

    void press(CellKind kind, const Pointer& pointer);
    void begin_pan(CellKind kind, const Pointer& pointer);
    void move(const Pointer& pointer);
    /// Does what the last motion asks for, unless the one before has not been painted yet. False: nothing was done.
    bool follow();
    /// The sheet has been painted. True: a motion waits to be followed.
    bool painted();
    void release(const Pointer& pointer);
    /// Where the hand is, and what is known of where it holds, in the status line.
    void say();
    /// As if the button had never gone down.
    void take_back();

  private:
    enum class Doing { nothing, pressed, moving, turning, boxing, panning };
    /// Since the button went down.
    struct Press {
        CellKind cell = CellKind::plan;
        drawing::Point at;  ///< on the sheet
        Target target;
        drawing::View view;                   ///< before
        std::optional<double> direction_rad;  ///< of the push shown, before
        double push_offset_rad = 0.0;
        bool shift = false;
        bool was_selected = false;
    };

    void begin(const Pointer& pointer);
    void hold(const editing::Handle& handle);
    void follow(const Pointer& pointer);
    void move_handle(const Pointer& pointer);
    void turn(const Pointer& pointer);
    void draw_box(const Pointer& pointer);
    void select_boxed();
    void click(const Pointer& pointer);
    void end();

    SheetState& sheet_;
    Doing doing_ = Doing::nothing;
    std::optional<Press> press_;
    std::optional<Hold> hold_;
    std::string merge_key_;
    std::string words_;  ///< of where the hand is
    int drags_ = 0;
    std::optional<Pointer> waiting_;  ///< a motion not followed yet
    bool frame_owed_ = false;         ///< the last one followed has not been painted yet
};

/// Sets what the sheet's tool sets at a place of the plan.
void use_tool(SheetState& sheet, const Pointer& pointer);

}  // namespace toehold::window
