#pragma once
// The sheet as it is seen: the cells, the view into each, and what was painted of them. Knows no events; the canvas
// asks it. Scenes and images are made anew only when something they show has changed, and not before they are needed.
#include "drawing/render/painter.h"
#include "editing/handles.h"
#include "session/session.h"
#include "window/sheet/cell_scene.h"
#include "window/sheet/layout.h"
#include "window/sheet/raster.h"

#include <array>
#include <optional>
#include <string>
#include <vector>

namespace toehold::window {

class SheetView {
  public:
    explicit SheetView(const session::Session& session);

    /// `scale`: pixels of the screen for one unit of the sheet.
    void resize(const drawing::Area& sheet, double units_per_mm, double scale);
    void set_ground(drawing::Ground ground);
    void show_alone(std::optional<CellKind> kind);
    [[nodiscard]] std::optional<CellKind> alone() const { return alone_; }

    // --- what has changed ---
    void note(session::Change change);
    void measure(std::vector<model::PartId> parts);  ///< to be dimensioned to the plate's edges
    void point_at(std::optional<CellKind> kind, const model::PartId& part);
    /// While a hand is on the detail no view moves under it.
    void hold(bool held);

    // --- views ---
    void fit(CellKind kind);
    void zoom(CellKind kind, double factor, drawing::Point about);
    void move(CellKind kind, double right, double down);
    [[nodiscard]] drawing::View view(CellKind kind);
    [[nodiscard]] const CellAreas& areas(CellKind kind) const { return cells_.cells[index_of(kind)]; }

    // --- what stands where ---
    [[nodiscard]] std::optional<CellKind> cell_at(drawing::Point on_sheet) const;
    [[nodiscard]] model::PartId part_at(CellKind kind, drawing::Point on_sheet);
    [[nodiscard]] drawing::Point to_drawing(CellKind kind, drawing::Point on_sheet);
    [[nodiscard]] const std::vector<editing::Handle>& handles(CellKind kind);
    [[nodiscard]] editing::SheetPlace place(editing::Sheet sheet) const;
    [[nodiscard]] const drawing::Overlay& overlay();

    // --- painting ---
    struct Live {
        std::optional<CellKind> active;  ///< has the focus ring around it
        std::optional<CellKind> cell;    ///< over which `marks` are painted
        drawing::Scene marks;
        std::optional<CellKind> region_cell;     ///< over which `region` is painted, under the marks
        const drawing::Scene* region = nullptr;  ///< outlives the painting; nullptr: none
    };
    void paint(cairo_t* cairo, const Live& live);

  private:
    struct Cell {
        drawing::Scene scene;
        drawing::View view;
        std::vector<editing::Handle> handles;
        Raster image;
        model::PartId pointed;
        bool has_view = false;
        bool fitted = true;  ///< until somebody zooms or pans
        bool scene_is_old = true, image_is_old = true, handles_are_old = true;
    };
    Cell& cell(CellKind kind) { return states_[index_of(kind)]; }
    [[nodiscard]] bool shown(CellKind kind) const { return areas(kind).frame.width > 0; }
    void lay_out();
    void scenes_are_old();
    void images_are_old();
    void prepare(CellKind kind);
    void refit(CellKind kind, Cell& cell);
    void paint_cell(cairo_t* cairo, CellKind kind);
    void paint_image(cairo_t* cairo, CellKind kind, const drawing::Emphasis& emphasis);
    void paint_title_block(cairo_t* cairo);
    void paint_over(cairo_t* cairo, const std::optional<CellKind>& kind, const drawing::Scene& scene);
    void paint_live(cairo_t* cairo, const Live& live);
    void paint_frame(cairo_t* cairo, const drawing::Area& area, drawing::Pen pen) const;

    const session::Session& session_;
    drawing::Area sheet_;
    double units_per_mm_ = 96 / 25.4, scale_ = 1.0;
    drawing::Ground ground_ = drawing::Ground::paper;
    std::optional<CellKind> alone_;
    SheetCells cells_;
    std::array<Cell, 4> states_;
    Raster title_block_;
    bool title_block_is_old_ = true, held_ = false;
    session::Display display_;  ///< what the scenes were made for
    std::optional<drawing::Overlay> overlay_;
    model::PartId section_part_;  ///< the part the section was last asked to pass through
    Wishes wishes_;
};

}  // namespace toehold::window
