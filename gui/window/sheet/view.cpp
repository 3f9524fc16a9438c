#include "window/sheet/view.h"

#include "drawing/render/tight_fit.h"
#include "window/sheet/clip.h"
#include "window/sheet/drag.h"
#include "window/sheet/lettering.h"
#include "window/sheet/title_block.h"

#include <cairo/cairo.h>

#include <algorithm>
#include <cmath>
#include <utility>

namespace toehold::window {

using drawing::Area;
using drawing::Point;

namespace {

Point center(const Area& area) { return {area.left + area.width / 2, area.top + area.height / 2}; }

/// A fit that hardly differs is not worth a jump of the drawing.
bool nearly(const drawing::View& one, const drawing::View& other) {
    const auto at = drawing::to_surface(other, one.center_in);
    return std::abs(one.units_per_in / other.units_per_in - 1) < 0.02 &&
           std::hypot(at.x - one.center.x, at.y - one.center.y) < 4.0;
}

model::PartId cut_through(const std::vector<model::PartId>& selection, const model::PartId& before) {
    const auto found = std::find_if(selection.rbegin(), selection.rend(), [](const model::PartId& part) {
        return part.kind == model::PartKind::anchor || part.kind == model::PartKind::block;
    });
    return found == selection.rend() ? before : *found;
}

Area above_title(const CellAreas& areas) {
    return {areas.frame.left, areas.frame.top, areas.frame.width, areas.frame.height - areas.title.height};
}

}  // namespace

SheetView::SheetView(const session::Session& session) : session_(session) { note(session::Change::detail); }

void SheetView::resize(const Area& sheet, double units_per_mm, double scale) {
    if (sheet == sheet_ && units_per_mm == units_per_mm_ && scale == scale_) return;
    sheet_ = sheet;
    units_per_mm_ = units_per_mm;
    scale_ = scale;
    lay_out();
}

void SheetView::set_ground(drawing::Ground ground) {
    if (ground == ground_) return;
    ground_ = ground;
    images_are_old();
}

void SheetView::show_alone(std::optional<CellKind> kind) {
    alone_ = kind;
    lay_out();
}

void SheetView::lay_out() {
    const auto before = cells_;
    cells_ = sheet_cells(sheet_, units_per_mm_, alone_);
    for (const auto kind : cell_kinds) {
        auto& state = cell(kind);
        state.view.units_per_mm = lettering_units(areas(kind).drawing, units_per_mm_);
        if (state.has_view) {
            const auto from = center(before.cells[index_of(kind)].drawing), to = center(areas(kind).drawing);
            state.view = drawing::moved(state.view, to.x - from.x, to.y - from.y);
        }
        state.has_view = state.has_view && !state.fitted;
    }
    images_are_old();
}

void SheetView::scenes_are_old() {
    for (auto& state : states_) state.scene_is_old = true;
    images_are_old();
}

void SheetView::images_are_old() {
    for (auto& state : states_) state.image_is_old = true;
    title_block_is_old_ = true;
}

void SheetView::note(session::Change change) {
    if (change == session::Change::file) return;
    if (change == session::Change::display && session_.display() == display_) return;  // words for the status line only
    display_ = session_.display();
    const auto plane_before = wishes_.plane;
    section_part_ = cut_through(session_.selection(), section_part_);
    wishes_.plane = drawing::section_plane(session_.detail(), section_part_);
    if (change == session::Change::detail)
        for (auto& state : states_) state.handles_are_old = true;
    if (change != session::Change::selection) {
        auto& rose = cell(CellKind::rose);
        const bool scene_was_old = rose.scene_is_old, image_was_old = rose.image_is_old;
        overlay_.reset();
        scenes_are_old();
        if (held_ && change == session::Change::detail) {
            // Under the hand the rose waits for its next polar: nothing else of the detail stands in it.
            rose.scene_is_old = scene_was_old;
            rose.image_is_old = image_was_old;
        }
        return;
    }
    cell(CellKind::rose).scene_is_old = true;
    if (plane_before.along != wishes_.plane.along || plane_before.at_in != wishes_.plane.at_in) {
        cell(CellKind::plan).scene_is_old = cell(CellKind::section).scene_is_old = true;
        cell(CellKind::section).handles_are_old = true;
    }
    images_are_old();
}

void SheetView::measure(std::vector<model::PartId> parts) {
    if (parts == wishes_.measured) return;
    wishes_.measured = std::move(parts);
    cell(CellKind::plan).scene_is_old = cell(CellKind::plan).image_is_old = true;
}

void SheetView::point_at(std::optional<CellKind> kind, const model::PartId& part) {
    for (const auto each : cell_kinds) {
        auto& state = cell(each);
        const auto& pointed = each == kind ? part : model::PartId{};
        state.image_is_old = state.image_is_old || state.pointed != pointed;
        state.pointed = pointed;
    }
}

void SheetView::hold(bool held) {
    if (held_ && !held) scenes_are_old();  // so that the views fit again what the hand has made
    held_ = held;
}

void SheetView::prepare(CellKind kind) {
    auto& state = cell(kind);
    if (state.scene_is_old) {
        state.scene = cell_scene(kind, session_, overlay(), wishes_);
        state.scene_is_old = false;
        state.image_is_old = true;
        refit(kind, state);
    } else if (!state.has_view) {
        refit(kind, state);
    }
}

void SheetView::refit(CellKind kind, Cell& state) {
    if (state.has_view && (held_ || !state.fitted)) return;
    const auto& area = areas(kind).drawing;
    const auto fresh = fit_tightly(state.scene, area, lettering_units(area, units_per_mm_));
    if (!state.has_view || !nearly(fresh, state.view)) state.view = fresh;
    state.has_view = true;
}

void SheetView::fit(CellKind kind) {
    auto& state = cell(kind);
    state.fitted = true;
    state.has_view = false;
    state.image_is_old = true;
}

void SheetView::zoom(CellKind kind, double factor, Point about) {
    prepare(kind);
    auto& state = cell(kind);
    state.view = drawing::zoomed(state.view, factor, about);
    state.fitted = false;
    state.image_is_old = true;
}

void SheetView::move(CellKind kind, double right, double down) {
    prepare(kind);
    auto& state = cell(kind);
    state.view = drawing::moved(state.view, right, down);
    state.fitted = false;
    state.image_is_old = true;
}

drawing::View SheetView::view(CellKind kind) {
    prepare(kind);
    return cell(kind).view;
}

std::optional<CellKind> SheetView::cell_at(Point on_sheet) const {
    for (const auto kind : cell_kinds)
        if (contains(areas(kind).frame, on_sheet)) return kind;
    return std::nullopt;
}

model::PartId SheetView::part_at(CellKind kind, Point on_sheet) {
    prepare(kind);
    return drawing::part_at(cell(kind).scene, cell(kind).view, on_sheet, reach_px * 0.7);
}

Point SheetView::to_drawing(CellKind kind, Point on_sheet) { return drawing::to_drawing(view(kind), on_sheet); }

editing::SheetPlace SheetView::place(editing::Sheet sheet) const { return {sheet, wishes_.plane}; }

const std::vector<editing::Handle>& SheetView::handles(CellKind kind) {
    auto& state = cell(kind);
    if (state.handles_are_old) {
        const auto sheet = sheet_of(kind);
        state.handles = sheet ? editing::handles(session_.detail(), place(*sheet)) : std::vector<editing::Handle>{};
        state.handles_are_old = false;
    }
    return state.handles;
}

const drawing::Overlay& SheetView::overlay() {
    if (!overlay_) overlay_ = session_.overlay();
    return *overlay_;
}

// --- painting ---

void SheetView::paint(cairo_t* cairo, const Live& live) {
    drawing::paint_ground(cairo, sheet_, ground_);
    for (const auto kind : cell_kinds)
        if (shown(kind)) paint_cell(cairo, kind);
    paint_title_block(cairo);
    paint_frame(cairo, cells_.border, drawing::Pen::cut);
    paint_live(cairo, live);
}

void SheetView::paint_cell(cairo_t* cairo, CellKind kind) {
    prepare(kind);
    auto& state = cell(kind);
    if (state.image_is_old) {
        drawing::Emphasis emphasis;
        emphasis.selected = {session_.selection().begin(), session_.selection().end()};
        emphasis.pointed = state.pointed;
        state.image.repaint(areas(kind).frame, scale_, [&](cairo_t* image) { paint_image(image, kind, emphasis); });
        state.image_is_old = false;
    }
    state.image.show(cairo);
}

void SheetView::paint_image(cairo_t* cairo, CellKind kind, const drawing::Emphasis& emphasis) {
    const auto& state = cell(kind);
    const auto& room = areas(kind);
    drawing::paint_ground(cairo, room.frame, ground_);
    {
        const Clip clip(cairo, above_title(room));
        drawing::paint(cairo, state.scene, state.view, ground_, emphasis);
    }
    const auto title = title_scene(cell_title(kind, session_, wishes_), cell_scale(kind, session_, state.view),
                                   room.title.width / units_per_mm_, room.title.height / units_per_mm_);
    drawing::paint(cairo, title, paper_view(room.title, units_per_mm_), ground_);
    paint_frame(cairo, room.frame, drawing::Pen::thin);
}

void SheetView::paint_title_block(cairo_t* cairo) {
    const auto& area = cells_.title_block;
    if (area.width <= 0 || area.height <= 0) return;
    if (title_block_is_old_) {
        const auto scene =
            title_block(title_words(session_, overlay()), area.width / units_per_mm_, area.height / units_per_mm_);
        title_block_.repaint(area, scale_, [&](cairo_t* image) {
            drawing::paint_ground(image, area, ground_);
            drawing::paint(image, scene, paper_view(area, units_per_mm_), ground_);
        });
        title_block_is_old_ = false;
    }
    title_block_.show(cairo);
}

void SheetView::paint_over(cairo_t* cairo, const std::optional<CellKind>& kind, const drawing::Scene& scene) {
    if (!kind || !shown(*kind) || scene.items.empty()) return;
    const Clip clip(cairo, above_title(areas(*kind)));
    drawing::paint(cairo, scene, view(*kind), ground_);
}

void SheetView::paint_live(cairo_t* cairo, const Live& live) {
    if (live.region != nullptr) paint_over(cairo, live.region_cell, *live.region);
    paint_over(cairo, live.cell, live.marks);
    if (live.active && shown(*live.active))
        paint_frame(cairo, inset(areas(*live.active).frame, 0.6 * units_per_mm_), drawing::Pen::handle);
}

void SheetView::paint_frame(cairo_t* cairo, const Area& area, drawing::Pen pen) const {
    drawing::Scene scene;
    scene.items.emplace_back(frame({{0, 0}, {area.width / units_per_mm_, area.height / units_per_mm_}}, pen));
    drawing::paint(cairo, scene, paper_view(area, units_per_mm_), ground_);
}

}  // namespace toehold::window
