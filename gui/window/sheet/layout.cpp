#include "window/sheet/layout.h"

#include <algorithm>

namespace toehold::window {

using drawing::Area;

namespace {

constexpr double margin_mm = 2.0;
constexpr double title_mm = 7.5;
constexpr double title_block_mm = 17.0;
constexpr double title_block_widest_mm = 170.0;
constexpr double inner_mm = 2.0;
// A drawing with its dimensions around it wants about this much; where there is less its lettering shrinks, but not
// below what can be read.
constexpr double comfortable_width_mm = 115.0, comfortable_height_mm = 88.0;
constexpr double smallest_lettering = 0.78;

struct Halves {
    Area first, second;
};

Halves beside(const Area& area, double share) {
    const double width = area.width * share;
    return {{area.left, area.top, width, area.height}, {area.left + width, area.top, area.width - width, area.height}};
}

Halves above(const Area& area, double share) {
    const double height = area.height * share;
    return {{area.left, area.top, area.width, height},
            {area.left, area.top + height, area.width, area.height - height}};
}

CellAreas cell(const Area& frame, double units_per_mm) {
    const double title = std::min(title_mm * units_per_mm, frame.height / 4);
    const Area upper{frame.left, frame.top, frame.width, frame.height - title};
    return {frame, inset(upper, inner_mm * units_per_mm), {frame.left, frame.top + upper.height, frame.width, title}};
}

void place(SheetCells& sheet, CellKind kind, const Area& frame, double units_per_mm) {
    sheet.cells[index_of(kind)] = cell(frame, units_per_mm);
}

/// The title block off the bottom of a column; what is left of the column.
Area cut_title_block(SheetCells& sheet, const Area& column, double units_per_mm) {
    const double height = std::min(title_block_mm * units_per_mm, column.height / 4);
    const double widest = title_block_widest_mm * units_per_mm;
    const double width = column.width < 1.25 * widest ? column.width : widest;  // no sliver is left beside it
    sheet.title_block = {column.left + column.width - width, column.top + column.height - height, width, height};
    return {column.left, column.top, column.width, column.height - height};
}

void lay_out_wide(SheetCells& sheet, double units_per_mm) {
    const auto columns = beside(sheet.border, 0.57);
    const auto left = above(columns.first, 0.66);
    place(sheet, CellKind::plan, left.first, units_per_mm);
    place(sheet, CellKind::rose, left.second, units_per_mm);
    const auto right = above(cut_title_block(sheet, columns.second, units_per_mm), 0.54);
    place(sheet, CellKind::section, right.first, units_per_mm);
    place(sheet, CellKind::elevation, right.second, units_per_mm);
}

void lay_out_high(SheetCells& sheet, double units_per_mm) {
    const auto rows = above(cut_title_block(sheet, sheet.border, units_per_mm), 0.52);
    place(sheet, CellKind::plan, rows.first, units_per_mm);
    const auto columns = beside(rows.second, 0.54);
    place(sheet, CellKind::section, columns.first, units_per_mm);
    const auto right = above(columns.second, 0.55);
    place(sheet, CellKind::elevation, right.first, units_per_mm);
    place(sheet, CellKind::rose, right.second, units_per_mm);
}

}  // namespace

double lettering_units(const Area& area, double units_per_mm) {
    const double room = std::min(area.width / comfortable_width_mm, area.height / comfortable_height_mm) / units_per_mm;
    return units_per_mm * std::clamp(room, smallest_lettering, 1.0);
}

bool contains(const Area& area, drawing::Point point) {
    return point.x >= area.left && point.x < area.left + area.width && point.y >= area.top &&
           point.y < area.top + area.height;
}

Area inset(const Area& area, double by) {
    const double x = std::clamp(by, 0.0, std::max(0.0, area.width / 2));
    const double y = std::clamp(by, 0.0, std::max(0.0, area.height / 2));
    return {area.left + x, area.top + y, area.width - 2 * x, area.height - 2 * y};
}

SheetCells sheet_cells(const Area& sheet, double units_per_mm, std::optional<CellKind> alone) {
    SheetCells cells;
    cells.border = inset(sheet, margin_mm * units_per_mm);
    if (alone) {
        place(cells, *alone, cut_title_block(cells, cells.border, units_per_mm), units_per_mm);
    } else if (sheet.width >= sheet.height) {
        lay_out_wide(cells, units_per_mm);
    } else {
        lay_out_high(cells, units_per_mm);
    }
    return cells;
}

}  // namespace toehold::window
