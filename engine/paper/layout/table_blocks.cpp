// Tables: columns by share, cells broken into lines, rows kept whole, heads repeated.
#include "drawing/annotation/symbols.h"
#include "drawing/render/lettering.h"
#include "paper/layout/blocks.h"
#include "paper/layout/on_paper.h"

#include <algorithm>

namespace toehold::paper::layout {
namespace {

using drawing::Across;
using drawing::Lettering;
using drawing::Pen;

constexpr double side_mm = 1.3;       // white at both sides of a column
constexpr double above_mm = 1.0;      // above a row's first capitals; as much below its last line
constexpr double around_frame = 1.0;  // from the words to the frame around them

struct Edge {
    double left = 0.0, width = 0.0;
};

struct SetCell {
    std::vector<std::string> lines;
    Lettering lettering;
};

/// Everything that is the same for all of a table's rows.
struct Grid {
    std::vector<Edge> edges;
    double spacing = 0.0;
    double capitals = 0.0;
};

Grid grid_of(const Pages& pages, const Table& table) {
    Grid grid{{}, drawing::line_spacing_mm(table.size), drawing::capitals_mm(table.size)};
    double left = pages.left();
    for (const double width : shared_widths_mm(table.columns, pages.width())) {
        grid.edges.push_back({left, width});
        left += width;
    }
    return grid;
}

std::vector<SetCell> broken(const Table& table, const std::vector<Cell>& row, const Grid& grid) {
    std::vector<SetCell> cells;
    for (std::size_t index = 0; index < row.size(); ++index) {
        const Lettering lettering{table.size, row[index].bold, table.columns[index].math};
        const double frame = row[index].frame ? 2.0 * around_frame : 0.0;
        cells.push_back(
            {drawing::broken_into_lines(row[index].words, grid.edges[index].width - 2.0 * side_mm - frame, lettering),
             lettering});
    }
    return cells;
}

std::size_t line_count(const std::vector<SetCell>& cells) {
    std::size_t count = 1;
    for (const SetCell& cell : cells) count = std::max(count, cell.lines.size());
    return count;
}

double height_of(const Grid& grid, std::size_t lines) {
    return above_mm + grid.capitals + static_cast<double>(lines - 1) * grid.spacing + above_mm;
}

double place_across(const Edge& edge, Across across) {
    if (across == Across::left) return edge.left + side_mm;
    if (across == Across::right) return edge.left + edge.width - side_mm;
    return edge.left + 0.5 * edge.width;
}

/// The status's frame, as wide as the longest of the lines in it.
void frame_words(Pages& pages, const SetCell& cell, double x, Across across, double top, const Grid& grid, Pen pen) {
    double width = 0.0;
    for (const std::string& line : cell.lines) width = std::max(width, drawing::text_width_mm(line, cell.lettering));
    const double left = across == Across::left ? x : across == Across::right ? x - width : x - 0.5 * width;
    const double height = grid.capitals + static_cast<double>(cell.lines.size() - 1) * grid.spacing;
    pages.slight_box({left - around_frame, top - around_frame, width + 2.0 * around_frame, height + 2.0 * around_frame},
                     pen, 0.45);
}

/// Lines from `first` on, as many as `count`, of every cell.
void write_lines(Pages& pages, const Table& table, const std::vector<Cell>& row, const std::vector<SetCell>& cells,
                 const Grid& grid, std::size_t first, std::size_t count) {
    const double top = pages.y() + above_mm;
    for (std::size_t index = 0; index < cells.size(); ++index) {
        const Across across = table.columns[index].across;
        const double step = row[index].frame ? around_frame : 0.0;
        const double x = place_across(grid.edges[index], across) + (across == Across::right ? -step : step);
        const SetCell& cell = cells[index];
        for (std::size_t line = first; line < std::min(first + count, cell.lines.size()); ++line) {
            const double foot = top + grid.capitals + static_cast<double>(line - first) * grid.spacing;
            pages.write({{x, foot}, cell.lines[line], table.size, across, cell.lettering.bold, cell.lettering.math});
        }
        if (row[index].frame && first == 0)
            frame_words(pages, cell, x, across, top, grid, drawing::frame_pen(*row[index].frame));
        pages.link({grid.edges[index].left, pages.y(), grid.edges[index].width, height_of(grid, count)},
                   row[index].link);
    }
}

void write_head(Pages& pages, const Table& table, const Grid& grid) {
    std::vector<Cell> head;
    for (const Column& column : table.columns) head.push_back({column.title, true});
    if (std::all_of(head.begin(), head.end(), [](const Cell& cell) { return cell.words.empty(); })) return;
    const auto cells = broken(table, head, grid);
    const std::size_t lines = line_count(cells);
    write_lines(pages, table, head, cells, grid, 0, lines);
    pages.advance(height_of(grid, lines));
    pages.rule({pages.left(), pages.y()}, {pages.left() + pages.width(), pages.y()}, Pen::outline);
}

void write_row(Pages& pages, const Table& table, const std::vector<Cell>& row, const Grid& grid) {
    const auto cells = broken(table, row, grid);
    const std::size_t lines = line_count(cells);
    const double framed = std::any_of(row.begin(), row.end(), [](const Cell& cell) { return cell.frame.has_value(); })
                              ? around_frame
                              : 0.0;
    std::size_t first = 0;
    while (first < lines) {
        const double height = height_of(grid, lines - first) + 2.0 * framed;
        if (height > pages.room()) {
            pages.turn_page();
            write_head(pages, table, grid);
        }
        // Only a row that no page takes is cut.
        std::size_t count = lines - first;
        while (count > 1 && height_of(grid, count) + 2.0 * framed > pages.room()) --count;
        pages.advance(framed);
        write_lines(pages, table, row, cells, grid, first, count);
        pages.advance(height_of(grid, count) + framed);
        first += count;
    }
    if (table.ruled) pages.rule({pages.left(), pages.y()}, {pages.left() + pages.width(), pages.y()}, Pen::grid);
}

}  // namespace

void set(Pages& pages, const Table& table) {
    const Grid grid = grid_of(pages, table);
    constexpr double rows_kept_with_head = 2.0;
    pages.need((1.0 + rows_kept_with_head) * height_of(grid, 1));
    write_head(pages, table, grid);
    for (const std::vector<Cell>& row : table.rows) write_row(pages, table, row, grid);
    pages.advance(2.5);
}

}  // namespace toehold::paper::layout
