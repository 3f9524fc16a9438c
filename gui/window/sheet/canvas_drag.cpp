// What the hand does with the button down, and what is left when it lets go.
#include "drawing/parts.h"
#include "window/sheet/canvas.h"
#include "window/sheet/readout.h"
#include "window/sheet/tips.h"

#include <wx/intl.h>

#include <algorithm>

namespace toehold::window {

namespace {

drawing::Box box_between(drawing::Point one, drawing::Point other) {
    return {{std::min(one.x, other.x), std::min(one.y, other.y)}, {std::max(one.x, other.x), std::max(one.y, other.y)}};
}

}  // namespace

editing::SnapRules SheetCanvas::rules(CellKind kind) const {
    auto rules = snap_;
    rules.reach_in = reach_px / view_.view(kind).units_per_in;
    return rules;
}

void SheetCanvas::begin_drag(const Pointer& pointer) {
    const auto kind = press_->cell;
    marks_ = {};
    marks_cell_ = kind;
    UnsetToolTip();
    if (kind == CellKind::rose || press_->part == "push") {
        doing_ = Doing::turning;
    } else if (press_->handle) {
        if (press_->shift && !press_->was_selected) session_.toggle(press_->part);
        const auto at = drawing::to_drawing(press_->view, press_->at);
        const auto& handle = *press_->handle;
        hold_ =
            Hold{session_.detail(), view_.place(*sheet_of(kind)), handle, {handle.at.x - at.x, handle.at.y - at.y}, {}};
        if (kind == CellKind::plan && moves_whole_part(handle.kind) &&
            drawing::contains(session_.selection(), handle.part))
            hold_->together = session_.selection();
        merge_key_ = "drag " + std::to_string(++drags_);
        doing_ = Doing::moving;
    } else if (kind == CellKind::plan) {
        doing_ = Doing::banding;
    } else {
        view_.hold(false);
        doing_ = Doing::panning;
    }
    waiting_ = pointer;
}

void SheetCanvas::follow(const Pointer& pointer) {
    switch (doing_) {
        case Doing::moving:
            move_handle(pointer);
            break;
        case Doing::turning:
            turn(pointer);
            break;
        case Doing::banding:
            band(pointer);
            break;
        case Doing::panning:
            view_.move(press_->cell, pointer.at.x - press_->at.x, pointer.at.y - press_->at.y);
            press_->at = pointer.at;
            break;
        case Doing::nothing:
        case Doing::pressed:
            return;
    }
    frame_owed_ = true;
    refresh();
}

void SheetCanvas::move_handle(const Pointer& pointer) {
    const auto at = view_.to_drawing(press_->cell, pointer.at);
    auto moved = take(*hold_, at, rules(press_->cell), {!pointer.alt, pointer.shift});
    marks_.caught = moved.caught;
    marks_.handles = {hold_->handle};
    marks_.handles.front().at = moved.at;
    if (press_->cell == CellKind::plan)
        view_.measure(hold_->together.empty() ? std::vector{hold_->handle.part} : hold_->together);
    if (!moved.step.empty()) session_.change(moved.step, std::move(moved.detail), merge_key_, true);
    const auto system = session_.display().system;
    auto words =
        part_name(hold_->handle.part) + ": " + readout(moved.at.x, system) + ", " + readout(moved.at.y, system);
    for (const auto& line : moved.caught) words += "; " + wxGetTranslation(wxString::FromUTF8(line.why)).utf8_string();
    session_.say(words);
}

void SheetCanvas::turn(const Pointer& pointer) {
    session_.turn_push(turned(view_.to_drawing(press_->cell, pointer.at), press_->push_offset_rad, pointer.alt));
}

void SheetCanvas::band(const Pointer& pointer) {
    const auto from = drawing::to_drawing(press_->view, press_->at);
    marks_.band = box_between(from, view_.to_drawing(CellKind::plan, pointer.at));
}

void SheetCanvas::release(const Pointer& pointer) {
    if (doing_ == Doing::nothing) return;
    if (waiting_) {
        waiting_.reset();
        follow(pointer);
    }
    const auto done = doing_;
    if (done == Doing::pressed) click(pointer);
    if (done == Doing::banding) {
        auto parts = holes_within(on_deck(session_.detail()).plate, marks_.band->low, marks_.band->high);
        if (press_->shift)
            for (const auto& part : session_.selection())
                if (!drawing::contains(parts, part)) parts.push_back(part);
        session_.select(parts);
    }
    end_drag();
    if (done == Doing::moving) session_.rest();
}

void SheetCanvas::click(const Pointer& pointer) {
    const auto& part = press_->part;
    if (part == "push") return;
    if (pointer.shift) {
        if (!part.empty()) session_.toggle(part);
    } else if (!part.empty()) {
        session_.select({part});
    } else if (press_->cell == CellKind::rose) {
        session_.turn_push(turned(view_.to_drawing(CellKind::rose, pointer.at), 0.0, pointer.alt));
    } else {
        session_.select({});
    }
}

void SheetCanvas::end_drag() {
    doing_ = Doing::nothing;
    waiting_.reset();
    hold_.reset();
    press_.reset();
    marks_ = {};
    marks_cell_.reset();
    frame_owed_ = false;
    view_.measure({});
    view_.hold(false);
    if (HasCapture()) ReleaseMouse();
    SetCursor(wxCursor(tool_ == Tool::pan ? wxCURSOR_HAND : wxCURSOR_DEFAULT));
    refresh();
}

void SheetCanvas::take_back() {
    if (doing_ == Doing::nothing) return;
    const auto done = doing_;
    const auto before = press_->direction_rad;
    const bool moved = hold_ && !(hold_->start == session_.detail());
    end_drag();
    if (done == Doing::moving) {
        session_.rest();
        if (moved) session_.undo();
    }
    if (done == Doing::turning) session_.turn_push(before);
}

void SheetCanvas::use_tool(drawing::Point at_in, const Pointer& pointer) {
    auto snapping = rules(CellKind::plan);
    snapping.on = snapping.on && !pointer.alt;
    const auto at = editing::snap(at_in, on_deck(session_.detail()).plate, {}, snapping).at;
    const model::Position place{at.x, at.y};
    editing::Edit edit;
    switch (tool_) {
        case Tool::hole:
            edit = editing::add_hole(session_.detail(), place);
            break;
        case Tool::corner:
            edit = editing::add_corner(session_.detail(), place);
            break;
        case Tool::block:
            edit = editing::add_block(session_.detail(), place);
            break;
        case Tool::select:
        case Tool::pan:
            return;
    }
    session_.apply(edit);
}

}  // namespace toehold::window
