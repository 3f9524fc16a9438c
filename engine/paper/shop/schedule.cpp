#include "paper/shop/schedule.h"

#include "drawing/render/lettering.h"

#include <algorithm>

namespace toehold::paper::shop {
namespace {

using drawing::Pen;
using drawing::TextSize;
using layout::add_lines;
using layout::add_rule;
using layout::add_words;
using layout::lines_height_mm;
using layout::Spot;
using layout::Style;

constexpr double cell_pad_mm = 1.0, row_pad_mm = 0.55, title_mm = 6.0, above_notes_mm = 0.8;
constexpr Style cell_style{TextSize::small};
constexpr Style head_style{TextSize::fine, true};
constexpr Style note_style{TextSize::fine};
constexpr Style title_style{TextSize::normal, true};

double row_height_mm(const std::vector<std::string>& cells, const std::vector<double>& widths, const Style& style) {
    double highest = 0.0;
    for (std::size_t index = 0; index < cells.size(); ++index)
        highest = std::max(highest, lines_height_mm(widths[index] - 2.0 * cell_pad_mm, cells[index], style));
    return highest + 2.0 * row_pad_mm;
}

double add_row(drawing::Scene& scene, const Schedule& schedule, const std::vector<std::string>& cells, Spot top_left,
               const std::vector<double>& widths, Style style) {
    double left = top_left.x_mm + cell_pad_mm;
    for (std::size_t index = 0; index < cells.size(); ++index) {
        style.across = schedule.columns[index].across;
        add_lines(scene, {left, top_left.y_mm + row_pad_mm}, widths[index] - 2.0 * cell_pad_mm, cells[index], style);
        left += widths[index];
    }
    return row_height_mm(cells, widths, style);
}

std::vector<std::string> heads(const Schedule& schedule) {
    std::vector<std::string> titles;
    for (const auto& column : schedule.columns) titles.push_back(column.title);
    return titles;
}

}  // namespace

double height_mm(const Schedule& schedule, double width_mm) {
    const std::vector<double> widths = layout::shared_widths_mm(schedule.columns, width_mm);
    double height = title_mm + row_height_mm(heads(schedule), widths, head_style);
    for (const auto& row : schedule.rows) height += row_height_mm(row, widths, cell_style);
    if (!schedule.notes.empty()) height += above_notes_mm;
    for (const std::string& note : schedule.notes) height += lines_height_mm(width_mm, note, note_style);
    return height;
}

void add_schedule(drawing::Scene& scene, const Schedule& schedule, Spot top_left, double width_mm) {
    const std::vector<double> widths = layout::shared_widths_mm(schedule.columns, width_mm);
    const double left = top_left.x_mm, right = left + width_mm;
    constexpr double title_foot_mm = 4.3;
    add_words(scene, {left, top_left.y_mm + title_foot_mm}, schedule.title, title_style);
    double y = top_left.y_mm + title_mm;
    const double table_top = y;
    add_rule(scene, {left, y}, {right, y}, Pen::outline);
    y += add_row(scene, schedule, heads(schedule), {left, y}, widths, head_style);
    add_rule(scene, {left, y}, {right, y}, Pen::outline);
    for (const auto& row : schedule.rows) {
        y += add_row(scene, schedule, row, {left, y}, widths, cell_style);
        add_rule(scene, {left, y}, {right, y}, Pen::thin);
    }
    double x = left;
    for (const double width : widths) {
        add_rule(scene, {x, table_top}, {x, y}, Pen::thin);
        x += width;
    }
    add_rule(scene, {right, table_top}, {right, y}, Pen::thin);
    y += above_notes_mm;
    for (const std::string& note : schedule.notes) y += add_lines(scene, {left, y}, width_mm, note, note_style);
}

}  // namespace toehold::paper::shop
