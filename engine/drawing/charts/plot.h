#pragma once
// What charts are put together from: words and lines at places of the chart in mm, an axis with its ticks, and labels
// that make room for each other.
#include "drawing/charts/chart.h"
#include "drawing/render/lettering.h"

#include <cstddef>
#include <string>
#include <vector>

namespace toehold::study {
struct Field;
}

namespace toehold::drawing {

/// Between a word and what stands beside it, and about a chart.
inline constexpr double pad_mm = 1.2;

[[nodiscard]] Place at_mm(Point mm);
/// The room given, or the least a chart takes where that is more.
[[nodiscard]] ChartRoom enough(const ChartRoom& given);
/// Of a chart of this size, with nothing in it.
[[nodiscard]] Scene empty_chart(const std::string& name, const ChartRoom& room);

struct WordStyle {
    TextSize size = TextSize::small;
    Across across = Across::left;
    Upright upright = Upright::middle;
    Pen pen = Pen::outline;
    bool bold = false;
    bool on_paper = false;
    double angle_deg = 0.0;
};
void add_words(Scene& scene, Point mm, const std::string& words, const WordStyle& style);
void add_rule(Scene& scene, Point from_mm, Point to_mm, Pen pen);
void add_box(Scene& scene, Point low_mm, Point high_mm, Pen pen, Fill fill);
[[nodiscard]] double width_mm(const std::string& words, TextSize size, bool bold = false);

/// A scale along one side of the plot.
struct Axis {
    double from = 0.0, to = 1.0;        ///< values at ...
    double from_mm = 0.0, to_mm = 1.0;  ///< ... these places
    [[nodiscard]] double mm(double value) const;
};

struct Tick {
    double value = 0.0;
    std::string words;  ///< empty: only a mark
};
/// Even figures within the ends: steps of 1, 2, 2.5 or 5 times a power of ten, no more than `most`.
[[nodiscard]] std::vector<Tick> even_ticks(double from, double to, std::size_t most);
/// One for each value; as many have words as stand beside each other with a gap, evenly chosen.
[[nodiscard]] std::vector<Tick> value_ticks(const study::Field& field, const std::vector<double>& values,
                                            const Axis& axis, const ChartRoom& room);
/// The same for an axis that runs up.
[[nodiscard]] std::vector<Tick> upright_ticks(const study::Field& field, const std::vector<double>& values,
                                              const Axis& axis, const ChartRoom& room);
/// `guard height, in`; sizes have no unit.
[[nodiscard]] std::string axis_title(const study::Field& field, const ChartRoom& room);

/// The plot's own box.
struct Plot {
    Axis x, y;
    [[nodiscard]] Point low() const { return {x.from_mm, y.from_mm}; }
    [[nodiscard]] Point high() const { return {x.to_mm, y.to_mm}; }
    [[nodiscard]] Point at(double x_value, double y_value) const { return {x.mm(x_value), y.mm(y_value)}; }
};
/// Marks below the plot, words under them, the title under those; `below_mm` further down.
void add_x_axis(Scene& scene, const Plot& plot, const std::vector<Tick>& ticks, const std::string& title,
                double below_mm = 0.0);
/// Marks to the left, words beside them, the title upright beside those.
void add_y_axis(Scene& scene, const Plot& plot, const std::vector<Tick>& ticks, const std::string& title);
/// mm that an axis with such ticks takes beside the plot.
[[nodiscard]] double y_axis_mm(const std::vector<Tick>& ticks);
[[nodiscard]] double x_axis_mm();

/// A label of one or more lines that wants to stand with its middle at a height.
struct Label {
    std::vector<std::string> lines;
    double wanted_mm = 0.0;
    double at_mm = 0.0;  ///< of its middle, once spread
    [[nodiscard]] double height_mm(TextSize size) const;
};
/// Moves them apart, each as little as may be, within the ends; those that find no room are dropped from the back.
void spread(std::vector<Label>& labels, double low_mm, double high_mm, TextSize size);

}  // namespace toehold::drawing
