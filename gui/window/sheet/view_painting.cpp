#include "window/sheet/lettering.h"
#include "window/sheet/title_block.h"
#include "window/sheet/view.h"

#include <cairo/cairo.h>

namespace toehold::window {

using drawing::Area;

namespace {

/// Nothing is painted outside the area while this lives.
class Clip {
  public:
    Clip(cairo_t* cairo, const Area& area) : cairo_(cairo) {
        cairo_save(cairo_);
        cairo_rectangle(cairo_, area.left, area.top, area.width, area.height);
        cairo_clip(cairo_);
    }
    ~Clip() { cairo_restore(cairo_); }
    Clip(const Clip&) = delete;
    Clip& operator=(const Clip&) = delete;

  private:
    cairo_t* cairo_;
};

Area above_title(const CellAreas& areas) {
    return {areas.frame.left, areas.frame.top, areas.frame.width, areas.frame.height - areas.title.height};
}

}  // namespace

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

void SheetView::paint_live(cairo_t* cairo, const Live& live) {
    if (live.cell && shown(*live.cell) && !live.marks.items.empty()) {
        const Clip clip(cairo, above_title(areas(*live.cell)));
        drawing::paint(cairo, live.marks, view(*live.cell), ground_);
    }
    if (live.active && shown(*live.active))
        paint_frame(cairo, inset(areas(*live.active).frame, 0.6 * units_per_mm_), drawing::Pen::handle);
}

void SheetView::paint_frame(cairo_t* cairo, const Area& area, drawing::Pen pen) const {
    drawing::Scene scene;
    scene.items.emplace_back(frame({{0, 0}, {area.width / units_per_mm_, area.height / units_per_mm_}}, pen));
    drawing::paint(cairo, scene, paper_view(area, units_per_mm_), ground_);
}

}  // namespace toehold::window
