#include "paper/shop/title_block.h"

#include "drawing/scene/shapes.h"

#include <algorithm>

namespace toehold::paper::shop {
namespace {

using drawing::Pen;
using drawing::TextSize;
using layout::add_frame;
using layout::add_lines;
using layout::add_rule;
using layout::add_words;
using layout::lines_height_mm;
using layout::on_paper;
using layout::Spot;
using layout::Style;

constexpr double pad_mm = 1.1, label_mm = 3.4;
constexpr Style label_style{TextSize::fine, false, drawing::Across::left, Pen::dimension};

Style words_style(const TitleBlock::Field& field) { return {TextSize::small, field.bold}; }

double row_height_mm(const std::vector<TitleBlock::Field>& row, double width_mm) {
    constexpr double sign_mm = 9.0;
    const std::vector<double> widths = layout::shared_widths_mm(row, width_mm);
    double highest = 0.0;
    for (std::size_t index = 0; index < row.size(); ++index) {
        const TitleBlock::Field& field = row[index];
        const double words = lines_height_mm(widths[index] - 2.0 * pad_mm, field.words, words_style(field));
        highest = std::max(highest, field.projection ? sign_mm - label_mm : words);
    }
    return label_mm + highest + pad_mm;
}

/// A cone seen from its small end, and beside that end its side: what is seen from the left stands to the left.
void add_third_angle_sign(drawing::Scene& scene, Spot middle) {
    constexpr double large_mm = 2.4, small_mm = 1.2, apart_mm = 3.4, length_mm = 5.0, beyond_mm = 0.8;
    const Spot face{middle.x_mm - apart_mm, middle.y_mm};
    for (const double radius : {large_mm, small_mm})
        scene.items.emplace_back(drawing::Circle{on_paper(face), 0.0, radius, Pen::holds, drawing::Fill::none, {}});
    const double left = middle.x_mm + 0.6, right = left + length_mm;
    scene.items.emplace_back(
        drawing::Path{{{on_paper({left, middle.y_mm - small_mm}), on_paper({right, middle.y_mm - large_mm}),
                        on_paper({right, middle.y_mm + large_mm}), on_paper({left, middle.y_mm + small_mm})}},
                      true,
                      Pen::holds,
                      drawing::Fill::none,
                      {}});
    add_rule(scene, {face.x_mm - large_mm - beyond_mm, middle.y_mm}, {right + beyond_mm, middle.y_mm}, Pen::thin);
    add_rule(scene, {face.x_mm, middle.y_mm - large_mm - beyond_mm}, {face.x_mm, middle.y_mm + large_mm + beyond_mm},
             Pen::thin);
}

void add_field(drawing::Scene& scene, const TitleBlock::Field& field, const drawing::Area& area) {
    constexpr double label_foot_mm = 2.9;
    add_words(scene, {area.left + pad_mm, area.top + label_foot_mm}, field.label, label_style);
    add_lines(scene, {area.left + pad_mm, area.top + label_mm}, area.width - 2.0 * pad_mm, field.words,
              words_style(field));
    if (field.projection)
        add_third_angle_sign(scene, {area.left + 0.5 * area.width, area.top + 0.5 * (area.height + label_mm)});
    add_frame(scene, area, Pen::thin);
}

}  // namespace

double height_mm(const TitleBlock& block, double width_mm) {
    double height = 0.0;
    for (const auto& row : block.rows) height += row_height_mm(row, width_mm);
    return height;
}

void add_title_block(drawing::Scene& scene, const TitleBlock& block, Spot top_left, double width_mm) {
    double top = top_left.y_mm;
    for (const auto& row : block.rows) {
        const std::vector<double> widths = layout::shared_widths_mm(row, width_mm);
        const double height = row_height_mm(row, width_mm);
        double left = top_left.x_mm;
        for (std::size_t index = 0; index < row.size(); ++index) {
            add_field(scene, row[index], {left, top, widths[index], height});
            left += widths[index];
        }
        top += height;
    }
    add_frame(scene, {top_left.x_mm, top_left.y_mm, width_mm, top - top_left.y_mm}, Pen::outline);
}

}  // namespace toehold::paper::shop
