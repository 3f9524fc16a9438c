// The post's faces, in plan and elevation, and the guard's top.
#include "editing/handles/sheet_handles.h"
#include "editing/parts/measures.h"

#include <algorithm>

namespace toehold::editing {
namespace {

using format::phrase;
using model::PlanAxis;

constexpr double lowest_guard_in = 1.0;
/// A tube keeps at least this much open between its walls.
constexpr double least_open_in = 0.125;

double size_in(const model::RectangularTube& tube, PlanAxis axis) {
    return axis == PlanAxis::x ? tube.width_in : tube.depth_in;
}
double size_in(const model::RoundTube& tube, PlanAxis /*round*/) { return tube.diameter_in; }
double size_in(const model::WoodPost& post, PlanAxis axis) {
    return axis == PlanAxis::x ? post.width_in : post.depth_in;
}
double size_in(const model::SolidBar& bar, PlanAxis axis) { return axis == PlanAxis::x ? bar.width_in : bar.depth_in; }
double size_in(const model::TwinBars& bars, PlanAxis axis) {
    const model::Footprint both = model::shaft(bars);
    return axis == PlanAxis::x ? both.width_in : both.depth_in;
}

/// A square tube stays square.
void resize(model::RectangularTube& tube, PlanAxis axis, double size_in) {
    const bool square = tube.width_in == tube.depth_in;
    const double size = at_least(size_in, 2.0 * tube.wall_in + least_open_in);
    if (square || axis == PlanAxis::x) tube.width_in = size;
    if (square || axis == PlanAxis::y) tube.depth_in = size;
}

void resize(model::RoundTube& tube, PlanAxis /*round*/, double size_in) {
    tube.diameter_in = at_least(size_in, 2.0 * tube.wall_in + least_open_in);
}

/// A shoe keeps its fit.
void resize(model::WoodPost& post, PlanAxis axis, double size_in) {
    double& wood_in = axis == PlanAxis::x ? post.width_in : post.depth_in;
    double& shoe_in = axis == PlanAxis::x ? post.shoe.width_in : post.shoe.depth_in;
    const double before_in = wood_in;
    wood_in = at_least(size_in, 0.5);
    if (!model::is_described(post.shoe)) return;
    shoe_in = at_least(shoe_in + wood_in - before_in, 2.0 * post.shoe.wall_in + least_open_in);
}

/// A square or round bar stays so.
void resize(model::SolidBar& bar, PlanAxis axis, double size_in) {
    const bool square = bar.width_in == bar.depth_in;
    const double size = at_least(size_in, least_open_in);
    if (square || axis == PlanAxis::x) bar.width_in = size;
    if (square || axis == PlanAxis::y) bar.depth_in = size;
}

/// Across the gap the gap changes, along it both bars.
void resize(model::TwinBars& bars, PlanAxis axis, double size_in) {
    double& bar_in = axis == PlanAxis::x ? bars.width_in : bars.depth_in;
    if (axis == bars.apart) {
        bars.gap_in = at_least(size_in - 2.0 * bar_in, least_open_in);
    } else {
        bar_in = at_least(size_in, least_open_in);
    }
}

PlanAxis axis_of(const Handle& handle) { return handle.id.number == 1 ? PlanAxis::y : PlanAxis::x; }

}  // namespace

double half_post_in(const model::Post& post, PlanAxis axis) {
    return 0.5 * std::visit([&](const auto& one) { return size_in(one, axis); }, post);
}

Handle post_face(PlanAxis across, drawing::Point at, drawing::Point along) {
    return {{HandleKind::post_width, {model::PartKind::post}, across == PlanAxis::x ? 0U : 1U}, at, along};
}

std::vector<Handle> elevation_handles(const model::BaseDetail& detail) {
    const double top_in = model::lever_height_in(detail);
    return {post_face(PlanAxis::y, {half_post_in(detail.post, PlanAxis::y), 0.5 * top_in}, {1.0, 0.0}),
            {{HandleKind::guard_height, {model::PartKind::guard}}, {0.0, top_in}, drawing::Point{0.0, 1.0}}};
}

Moved drag_post_width(const Grip& grip, Sheet sheet) {
    Moved moved = unmoved(grip);
    const PlanAxis axis = axis_of(grip.handle);
    const bool upward = sheet == Sheet::plan && axis == PlanAxis::y;
    const double size_in = to_step(2.0 * (upward ? grip.to.y : grip.to.x), grip.rules.step_in);
    std::visit([&](auto& post) { resize(post, axis, size_in); }, moved.detail.post);
    moved.step = phrase("Change post width");
    const double half_in = half_post_in(moved.detail.post, axis);
    (upward ? moved.at.y : moved.at.x) = half_in;
    return moved;
}

Moved drag_guard_height(const Grip& grip) {
    Moved moved = unmoved(grip);
    const double height_in = to_step(grip.to.y - below_surface_in(moved.detail), grip.rules.step_in);
    moved.detail.guard.height_in = at_least(height_in, lowest_guard_in);
    moved.step = phrase("Change guard height");
    moved.at = {grip.handle.at.x, model::lever_height_in(moved.detail)};
    return moved;
}

}  // namespace toehold::editing
