#include "drawing/charts/plot.h"

#include "drawing/scene/shapes.h"
#include "format/figures.h"
#include "study/field.h"

#include <algorithm>
#include <cmath>

namespace toehold::drawing {
namespace {

constexpr double mm_per_in = 25.4;
constexpr double tick_mm = 1.3, tick_words_mm = 1.0, title_gap_mm = 1.6, between_words_mm = 2.2;

}  // namespace

Place at_mm(Point mm) { return {{mm.x / mm_per_in, mm.y / mm_per_in}, {}}; }

ChartRoom enough(const ChartRoom& given) {
    return {std::max(given.width_mm, least_width_mm), std::max(given.height_mm, least_height_mm), given.locale};
}

Scene empty_chart(const std::string& name, const ChartRoom& room) {
    return {name, {}, {{0.0, 0.0}, at_mm({room.width_mm, room.height_mm}).at}, 0.0};
}

void add_words(Scene& scene, Point mm, const std::string& words, const WordStyle& style) {
    if (words.empty()) return;
    Text text;
    text.at = at_mm(mm);
    text.words = words;
    text.size = style.size;
    text.across = style.across;
    text.upright = style.upright;
    text.angle_deg = style.angle_deg;
    text.pen = style.pen;
    text.bold = style.bold;
    text.on_paper = style.on_paper;
    scene.items.emplace_back(std::move(text));
}

void add_rule(Scene& scene, Point from_mm, Point to_mm, Pen pen) {
    scene.items.emplace_back(line(at_mm(from_mm), at_mm(to_mm), pen));
}

void add_box(Scene& scene, Point low_mm, Point high_mm, Pen pen, Fill fill) {
    scene.items.emplace_back(rectangle({at_mm(low_mm).at, at_mm(high_mm).at}, pen, fill));
}

double width_mm(const std::string& words, TextSize size, bool bold) { return text_width_mm(words, {size, bold}); }

double Axis::mm(double value) const { return from_mm + (value - from) / (to - from) * (to_mm - from_mm); }

std::vector<Tick> even_ticks(double from, double to, std::size_t most) {
    const double least = (to - from) / static_cast<double>(most);
    const double power = std::pow(10.0, std::floor(std::log10(least)));
    double step = 10.0 * power;
    for (const double times : {5.0, 2.5, 2.0, 1.0}) {
        if (times * power >= least * (1.0 - 1e-9)) step = times * power;
    }
    std::vector<Tick> ticks;
    for (double i = std::ceil(from / step - 1e-9); i * step <= to + 1e-9 * step; i += 1.0)
        ticks.push_back({i * step, format::number_text(i * step)});
    return ticks;
}

std::vector<Tick> value_ticks(const study::Field& field, const std::vector<double>& values, const Axis& axis,
                              const ChartRoom& room) {
    std::vector<Tick> ticks;
    ticks.reserve(values.size());
    for (const double value : values) ticks.push_back({value, study::value_figure(field, value, room.locale.system)});
    const auto fits = [&](std::size_t every) {
        double free_from = -1e9;
        for (std::size_t i = 0; i < ticks.size(); i += every) {
            const double half = 0.5 * width_mm(ticks[i].words, TextSize::fine), middle = axis.mm(ticks[i].value);
            if (middle - half < free_from) return false;
            free_from = middle + half + between_words_mm;
        }
        return true;
    };
    std::size_t every = 1;
    while (every < ticks.size() && !fits(every)) ++every;
    for (std::size_t i = 0; i < ticks.size(); ++i) {
        if (i % every != 0) ticks[i].words.clear();
    }
    return ticks;
}

std::vector<Tick> upright_ticks(const study::Field& field, const std::vector<double>& values, const Axis& axis,
                                const ChartRoom& room) {
    std::vector<Tick> ticks;
    double free_from = -1e9;
    for (const double value : values) {
        Tick tick{value, study::value_figure(field, value, room.locale.system)};
        const double foot = axis.mm(value) - 0.5 * capitals_mm(TextSize::fine);
        if (foot < free_from) {
            tick.words.clear();
        } else {
            free_from = foot + line_spacing_mm(TextSize::fine);
        }
        ticks.push_back(std::move(tick));
    }
    return ticks;
}

std::string axis_title(const study::Field& field, const ChartRoom& room) {
    std::string name = format::text(field.name, room.locale);
    if (!field.sizes.empty()) return name;
    return name + ", " + format::in_system(1.0, field.unit, room.locale.system).unit;
}

void add_x_axis(Scene& scene, const Plot& plot, const std::vector<Tick>& ticks, const std::string& title,
                double below_mm) {
    const double top = plot.y.from_mm - below_mm, words = top - tick_mm - tick_words_mm;
    for (const Tick& tick : ticks) {
        const double x = plot.x.mm(tick.value);
        add_rule(scene, {x, top}, {x, top - tick_mm}, Pen::dimension);
        add_words(scene, {x, words}, tick.words, {TextSize::fine, Across::middle, Upright::top, Pen::dimension});
    }
    const double foot = words - capitals_mm(TextSize::fine) - title_gap_mm;
    add_words(scene, {0.5 * (plot.x.from_mm + plot.x.to_mm), foot}, title,
              {TextSize::small, Across::middle, Upright::top});
}

void add_y_axis(Scene& scene, const Plot& plot, const std::vector<Tick>& ticks, const std::string& title) {
    double widest = 0.0;
    for (const Tick& tick : ticks) {
        const Point at{plot.x.from_mm, plot.y.mm(tick.value)};
        add_rule(scene, {at.x - tick_mm, at.y}, at, Pen::dimension);
        add_words(scene, {at.x - tick_mm - tick_words_mm, at.y}, tick.words,
                  {TextSize::fine, Across::right, Upright::middle, Pen::dimension});
        widest = std::max(widest, width_mm(tick.words, TextSize::fine));
    }
    WordStyle style{TextSize::small, Across::middle, Upright::bottom};
    style.angle_deg = 90.0;
    add_words(scene,
              {plot.x.from_mm - tick_mm - tick_words_mm - widest - title_gap_mm, 0.5 * (plot.y.from_mm + plot.y.to_mm)},
              title, style);
}

double y_axis_mm(const std::vector<Tick>& ticks) {
    double widest = 0.0;
    for (const Tick& tick : ticks) widest = std::max(widest, width_mm(tick.words, TextSize::fine));
    return tick_mm + tick_words_mm + widest + title_gap_mm + line_spacing_mm(TextSize::small);
}

double x_axis_mm() {
    constexpr double descenders_mm = 1.0;
    return tick_mm + tick_words_mm + capitals_mm(TextSize::fine) + title_gap_mm + capitals_mm(TextSize::small) +
           descenders_mm;
}

double Label::height_mm(TextSize size) const { return static_cast<double>(lines.size()) * line_spacing_mm(size); }

void spread(std::vector<Label>& labels, double low_mm, double high_mm, TextSize size) {
    double needed = 0.0;
    for (const Label& label : labels) needed += label.height_mm(size);
    while (!labels.empty() && needed > high_mm - low_mm) {
        needed -= labels.back().height_mm(size);
        labels.pop_back();
    }
    std::vector<std::size_t> order(labels.size());
    for (std::size_t i = 0; i < order.size(); ++i) order[i] = i;
    std::stable_sort(order.begin(), order.end(),
                     [&labels](std::size_t a, std::size_t b) { return labels[a].wanted_mm > labels[b].wanted_mm; });
    // Down from the top, each as high as it wants to be, then up again from the foot those pushed below it.
    double ceiling = high_mm;
    for (const std::size_t i : order) {
        const double half = 0.5 * labels[i].height_mm(size);
        labels[i].at_mm = std::min(labels[i].wanted_mm, ceiling - half);
        ceiling = labels[i].at_mm - half;
    }
    double floor = low_mm;
    for (auto i = order.rbegin(); i != order.rend(); ++i) {
        const double half = 0.5 * labels[*i].height_mm(size);
        labels[*i].at_mm = std::max(labels[*i].at_mm, floor + half);
        floor = labels[*i].at_mm + half;
    }
}

}  // namespace toehold::drawing
