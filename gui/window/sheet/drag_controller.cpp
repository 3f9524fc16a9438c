#include "window/sheet/drag_controller.h"

#include "editing/edits.h"
#include "editing/picked.h"
#include "model/placement.h"
#include "window/sheet/readout.h"
#include "window/sheet/tips.h"
#include "window/text.h"

#include <algorithm>
#include <cmath>

namespace toehold::window {

namespace {

constexpr double click_px = 3.0;  ///< how far the pointer may slip in a click

drawing::Box box_between(drawing::Point one, drawing::Point other) {
    return {{std::min(one.x, other.x), std::min(one.y, other.y)}, {std::max(one.x, other.x), std::max(one.y, other.y)}};
}

}  // namespace

void DragController::press(CellKind kind, const Pointer& pointer) {
    auto& view = sheet_.view;
    auto& session = sheet_.session;
    Press pressed;
    pressed.cell = kind;
    pressed.at = pointer.at;
    pressed.shift = pointer.shift;
    pressed.view = view.view(kind);
    pressed.direction_rad = session.display().direction_rad;
    pressed.target = target_at(sheet_, kind, pointer.at);
    auto& target = pressed.target;
    if (!target.handle) target.handle = body_handle(view.handles(kind), target.part);
    if (const auto& push = view.overlay().push; push && target.part.kind == model::PartKind::push)
        pressed.push_offset_rad = push->direction_rad - angle_rad(view.to_drawing(kind, pointer.at));
    pressed.was_selected = model::contains(session.selection(), target.part);
    if (!pointer.shift && !pressed.was_selected && target.part.kind != model::PartKind::none &&
        target.part.kind != model::PartKind::push)
        session.select({target.part});
    press_ = pressed;
    doing_ = Doing::pressed;
    view.hold(true);  // results that come in now must not move the drawing under the pointer
}

void DragController::begin_pan(CellKind kind, const Pointer& pointer) {
    press_ = Press{};
    press_->cell = kind;
    press_->at = pointer.at;
    doing_ = Doing::panning;
}

void DragController::move(const Pointer& pointer) {
    if (doing_ == Doing::pressed && std::hypot(pointer.at.x - press_->at.x, pointer.at.y - press_->at.y) > click_px)
        begin(pointer);
    if (dragging()) waiting_ = pointer;
}

void DragController::begin(const Pointer& pointer) {
    const auto kind = press_->cell;
    sheet_.marks = {};
    sheet_.marks_cell = kind;
    if (kind == CellKind::rose || press_->target.part.kind == model::PartKind::push) {
        doing_ = Doing::turning;
    } else if (press_->target.handle) {
        hold(*press_->target.handle);
    } else if (kind == CellKind::plan) {
        doing_ = Doing::boxing;
    } else {
        sheet_.view.hold(false);
        doing_ = Doing::panning;
    }
    waiting_ = pointer;
}

void DragController::hold(const editing::Handle& handle) {
    auto& session = sheet_.session;
    const auto kind = press_->cell;
    if (press_->shift && !press_->was_selected) session.toggle(press_->target.part);
    const auto at = drawing::to_drawing(press_->view, press_->at);
    hold_ = Hold{
        session.detail(), sheet_.view.place(*sheet_of(kind)), handle, {handle.at.x - at.x, handle.at.y - at.y}, {}};
    if (kind == CellKind::plan && moves_whole_part(handle.id.kind) &&
        model::contains(session.selection(), handle.id.part))
        hold_->together = session.selection();
    sheet_.tip = handle.at;
    if (hold_->together.size() < 2) sheet_.holds.take(handle);
    merge_key_ = "drag " + std::to_string(++drags_);
    doing_ = Doing::moving;
}

bool DragController::follow() {
    if (!waiting_ || frame_owed_) return false;
    const auto pointer = *waiting_;
    waiting_.reset();
    follow(pointer);
    return true;
}

void DragController::follow(const Pointer& pointer) {
    switch (doing_) {
        case Doing::moving:
            move_handle(pointer);
            break;
        case Doing::turning:
            turn(pointer);
            break;
        case Doing::boxing:
            draw_box(pointer);
            break;
        case Doing::panning:
            sheet_.view.move(press_->cell, pointer.at.x - press_->at.x, pointer.at.y - press_->at.y);
            press_->at = pointer.at;
            break;
        case Doing::nothing:
        case Doing::pressed:
            return;
    }
    frame_owed_ = true;
}

bool DragController::painted() {
    frame_owed_ = false;
    return waiting_.has_value();
}

void DragController::move_handle(const Pointer& pointer) {
    auto& session = sheet_.session;
    const auto kind = press_->cell;
    const auto at = sheet_.view.to_drawing(kind, pointer.at);
    auto moved = take(*hold_, at, snap_rules(sheet_, kind), {!pointer.alt, pointer.shift});
    sheet_.marks.caught = moved.caught;
    sheet_.marks.handles = {hold_->handle};
    sheet_.marks.handles.front().at = moved.at;
    if (kind == CellKind::plan)
        sheet_.view.measure(hold_->together.empty() ? std::vector{hold_->handle.id.part} : hold_->together);
    if (!moved.step.empty()) session.change(moved.step, std::move(moved.detail), merge_key_, true);
    const auto system = session.display().system;
    auto words = part_name(hold_->handle.id.part, session.locale()) + ": " + readout(moved.at.x, system) + ", " +
                 readout(moved.at.y, system);
    for (const auto& line : moved.caught) words += "; " + format::text(line.why, session.locale());
    words_ = std::move(words);
    say();
}

void DragController::say() {
    const format::Phrase holds = sheet_.holds.words();
    if (doing_ != Doing::moving) {
        if (doing_ == Doing::nothing && !holds.empty()) sheet_.session.say(holds);
        return;
    }
    wxString words = text_of(words_);
    if (!holds.empty()) words += ". " + text_of(holds, sheet_.session.locale());
    sheet_.session.say(said(words));
}

void DragController::turn(const Pointer& pointer) {
    sheet_.session.turn_push(
        turned(sheet_.view.to_drawing(press_->cell, pointer.at), press_->push_offset_rad, pointer.alt));
}

void DragController::draw_box(const Pointer& pointer) {
    const auto from = drawing::to_drawing(press_->view, press_->at);
    sheet_.marks.band = box_between(from, sheet_.view.to_drawing(CellKind::plan, pointer.at));
}

void DragController::select_boxed() {
    auto& session = sheet_.session;
    auto parts = editing::anchors_within(session.detail(), sheet_.marks.band->low, sheet_.marks.band->high);
    if (press_->shift)
        for (const auto& part : session.selection())
            if (!model::contains(parts, part)) parts.push_back(part);
    session.select(parts);
}

void DragController::release(const Pointer& pointer) {
    if (!busy()) return;
    if (waiting_) {
        waiting_.reset();
        follow(pointer);
    }
    const auto done = doing_;
    if (done == Doing::pressed) click(pointer);
    if (done == Doing::boxing) select_boxed();
    end();
    if (done != Doing::moving) return;
    sheet_.session.rest();
    sheet_.session.say(said(text_of(words_)));  // of where it stands now; what was shaded is gone
}

void DragController::click(const Pointer& pointer) {
    auto& session = sheet_.session;
    const auto& part = press_->target.part;
    if (part.kind == model::PartKind::push) return;
    if (pointer.shift) {
        if (part.kind != model::PartKind::none) session.toggle(part);
    } else if (part.kind != model::PartKind::none) {
        session.select({part});
    } else if (press_->cell == CellKind::rose) {
        session.turn_push(turned(sheet_.view.to_drawing(CellKind::rose, pointer.at), 0.0, pointer.alt));
    } else {
        session.select({});
    }
}

void DragController::end() {
    doing_ = Doing::nothing;
    waiting_.reset();
    hold_.reset();
    press_.reset();
    sheet_.marks = {};
    sheet_.marks_cell.reset();
    frame_owed_ = false;
    sheet_.holds.let_go();
    sheet_.tip.reset();
    sheet_.view.measure({});
    sheet_.view.hold(false);
}

void DragController::take_back() {
    if (!busy()) return;
    auto& session = sheet_.session;
    const auto done = doing_;
    const auto before = press_->direction_rad;
    const bool moved = hold_ && !(hold_->start == session.detail());
    end();
    if (done == Doing::moving) {
        session.rest();
        if (moved) session.undo();
        session.say({});
    }
    if (done == Doing::turning) session.turn_push(before);
}

void use_tool(SheetState& sheet, const Pointer& pointer) {
    auto& session = sheet.session;
    const auto at = editing::snap(sheet.view.to_drawing(CellKind::plan, pointer.at), session.detail(),
                                  snap_rules(sheet, CellKind::plan, pointer.alt))
                        .at;
    const model::Position place{at.x, at.y};
    switch (sheet.tool) {
        case Tool::hole:
            session.apply(editing::add_hole(session.detail(), place));
            return;
        case Tool::corner:
            session.apply(editing::add_corner(session.detail(), place));
            return;
        case Tool::block:
            session.apply(editing::add_block(session.detail(), place));
            return;
        case Tool::select:
        case Tool::pan:
            return;
    }
}

}  // namespace toehold::window
