#include "window/sheet/drag.h"

#include "editing/edits.h"
#include "editing/hand_tools.h"
#include "model/placement.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace toehold::window {

using editing::Handle;
using editing::HandleKind;

namespace {

constexpr double turn_step_deg = 5.0;
constexpr double radians_per_degree = std::numbers::pi / 180;

/// Along the axis in which the pointer has gone farther.
drawing::Point on_one_axis(drawing::Point from, drawing::Point to) {
    return std::abs(to.x - from.x) >= std::abs(to.y - from.y) ? drawing::Point{to.x, from.y}
                                                              : drawing::Point{from.x, to.y};
}

/// A snap may not leave the axis that the hand keeps to.
void keep_to_axis(editing::Moved& moved, const Handle& handle, drawing::Point to) {
    const bool along_x = to.y == handle.at.y;
    std::erase_if(moved.caught, [along_x](const editing::SnapLine& line) {
        const bool runs_along_x = std::abs(line.to.x - line.from.x) > std::abs(line.to.y - line.from.y);
        return runs_along_x == along_x;
    });
}

}  // namespace

bool moves_whole_part(HandleKind kind) {
    return kind == HandleKind::hole || kind == HandleKind::block || kind == HandleKind::joist;
}

std::optional<Handle> handle_at(const std::vector<Handle>& handles, const drawing::View& view,
                                drawing::Point on_surface, const std::vector<model::PartId>& selection) {
    std::optional<Handle> best;
    double best_rank = 0.0;
    for (const auto& handle : handles) {
        const auto at = drawing::to_surface(view, handle.at);
        const double away = std::hypot(at.x - on_surface.x, at.y - on_surface.y);
        if (away > reach_px) continue;
        const double rank = model::contains(selection, handle.id.part) ? away : away + 2 * reach_px;
        if (!best || rank < best_rank) {
            best = handle;
            best_rank = rank;
        }
    }
    return best;
}

std::optional<Handle> body_handle(const std::vector<Handle>& handles, const model::PartId& part) {
    const auto found = std::find_if(handles.begin(), handles.end(), [&part](const Handle& handle) {
        return handle.id.part == part && moves_whole_part(handle.id.kind);
    });
    return found == handles.end() ? std::nullopt : std::optional(*found);
}

editing::Moved take(const Hold& hold, drawing::Point pointer, editing::SnapRules rules, Habits habits) {
    rules.on = rules.on && habits.snap;
    if (!habits.snap) rules.step_in = 0.0;
    drawing::Point to{pointer.x + hold.grip.x, pointer.y + hold.grip.y};
    if (habits.one_axis) to = on_one_axis(hold.handle.at, to);
    auto moved = editing::drag(hold.start, hold.place, hold.handle, to, rules);
    if (habits.one_axis) {
        const auto kept = on_one_axis(hold.handle.at, to);
        const drawing::Point wanted{kept.y == hold.handle.at.y ? moved.at.x : kept.x,
                                    kept.y == hold.handle.at.y ? kept.y : moved.at.y};
        if (!(wanted == moved.at)) {
            const auto lines = moved.caught;
            rules.on = false;
            rules.step_in = 0.0;
            moved = editing::drag(hold.start, hold.place, hold.handle, wanted, rules);
            moved.caught = lines;
        }
        keep_to_axis(moved, hold.handle, to);
    }
    if (hold.together.size() > 1) {
        const drawing::Point step{moved.at.x - hold.handle.at.x, moved.at.y - hold.handle.at.y};
        auto edit = editing::nudge(hold.start, hold.together, editing::step_in(hold.start, hold.place, step));
        if (edit.refusal.empty() && !edit.step.empty()) {
            moved.detail = std::move(edit.detail);
            moved.step = edit.step;
        }
    }
    return moved;
}

double angle_rad(drawing::Point from_origin) { return std::atan2(from_origin.y, from_origin.x); }

double whole_turn(double angle) {
    constexpr double turn = 2 * std::numbers::pi;
    const double within = angle - turn * std::floor(angle / turn);
    return within >= turn ? 0.0 : within;
}

double by_degrees(double direction_rad, double degrees) {
    constexpr double on_a_step = 1e-6;  // of a step
    const double steps = direction_rad / radians_per_degree / degrees;
    return whole_turn((std::floor(steps + on_a_step) + 1.0) * degrees * radians_per_degree);
}

double turned(drawing::Point pointer, double offset_rad, bool free) {
    const double direction = angle_rad(pointer) + offset_rad;
    if (free) return whole_turn(direction);
    return whole_turn(std::round(direction / radians_per_degree / turn_step_deg) * turn_step_deg * radians_per_degree);
}

}  // namespace toehold::window
