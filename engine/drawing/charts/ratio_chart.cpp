#include "drawing/charts/plot.h"
#include "drawing/charts/ratio_lines.h"
#include "drawing/scene/shapes.h"
#include "format/figures.h"
#include "study/study.h"
#include "wording/status.h"
#include "wording/studies.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace toehold::drawing {
namespace {

using format::phrase;

constexpr double strip_mm = 6.0, strip_gap_mm = 2.0, ratio_head_mm = 5.0, foot_mm = 1.0, leader_mm = 6.0;
constexpr TextSize label_size = TextSize::fine;

/// Told apart by their strokes as well as by their labels; the first governs the detail as it is.
Pen pen_of(std::size_t line) {
    constexpr std::array<Pen, 6> others = {Pen::outline, Pen::hidden, Pen::center, Pen::capacity, Pen::thin, Pen::snap};
    return line == 0 ? Pen::demand : others.at((line - 1) % others.size());
}

struct RatioDrawing {
    const study::Sweep& sweep;
    const ChartRoom& room;
    std::vector<study::Line> lines = {};
    std::vector<Label> labels = {};
    Plot plot = {};
    double top = 1.0;
    Chart chart = {};

    [[nodiscard]] std::string say(const format::Phrase& words) const { return format::text(words, room.locale); }
    [[nodiscard]] std::string value(const study::Field& field, double value) const {
        return study::value_words(field, value, room.locale.system);
    }
};

/// Half way to the neighbors.
std::pair<double, double> cell_of(const RatioDrawing& on, std::size_t point) {
    const auto& points = on.sweep.points;
    const double here = on.plot.x.mm(points[point].value);
    const double low = point == 0 ? on.plot.x.from_mm : 0.5 * (here + on.plot.x.mm(points[point - 1].value));
    const double high =
        point + 1 == points.size() ? on.plot.x.to_mm : 0.5 * (here + on.plot.x.mm(points[point + 1].value));
    return {low, high};
}

/// The ratio where the line ends; and its largest, where it leaves the plot for that.
std::string label_words(const RatioDrawing& on, const study::Line& line) {
    const auto last =
        std::find_if(line.ratios.rbegin(), line.ratios.rend(), [](const auto& one) { return one.has_value(); });
    const std::string end = format::ratio_text(**last), title = on.say(line.title);
    if (line.largest <= on.top) return title + " " + end;
    return on.say(phrase("{} {}, up to {}", title, end, format::ratio_text(line.largest)));
}

std::vector<Label> labels_of(const RatioDrawing& on, double width) {
    std::vector<Label> labels;
    for (const study::Line& line : on.lines)
        labels.push_back({broken_into_lines(label_words(on, line), width, {label_size, labels.empty()}), 0.0, 0.0});
    return labels;
}

double widest(const std::vector<Label>& labels) {
    double widest = 0.0;
    for (const Label& label : labels) {
        const bool bold = &label == &labels.front();
        for (const std::string& line : label.lines) widest = std::max(widest, width_mm(line, label_size, bold));
    }
    return widest;
}

void lay_out(RatioDrawing& on) {
    constexpr double share = 0.34;
    on.labels = labels_of(on, share * on.room.width_mm);
    const double right = on.room.width_mm - widest(on.labels) - leader_mm - pad_mm;
    const double left = y_axis_mm(even_ticks(0.0, on.top, 8)) + pad_mm;
    const double low = x_axis_mm() + strip_mm + strip_gap_mm + foot_mm;
    const auto& points = on.sweep.points;
    const double from = points.front().value;
    const double to = points.size() > 1 ? points.back().value : from * 1.01;
    const double inset = 3.0;
    const double per_mm = (to - from) / (right - left - 2.0 * inset);
    on.plot.x = {from - inset * per_mm, to + inset * per_mm, left, right};
    on.plot.y = {0.0, on.top, low, on.room.height_mm - ratio_head_mm};
}

void add_limit(RatioDrawing& on) {
    const Plot& plot = on.plot;
    const double limit = plot.y.mm(1.0);
    add_box(on.chart.scene, {plot.x.from_mm, limit}, plot.high(), Pen::none, Fill::failing);
    add_rule(on.chart.scene, {plot.x.from_mm, limit}, {plot.x.to_mm, limit}, Pen::cut);
    add_words(on.chart.scene, {plot.x.from_mm + pad_mm, limit + 1.6}, on.say(phrase("limit 1.00")),
              {TextSize::fine, Across::left, Upright::bottom, Pen::outline, true, true});
}

void add_grid(RatioDrawing& on) {
    for (const Tick& tick : even_ticks(0.0, on.top, 8)) {
        const double y = on.plot.y.mm(tick.value);
        add_rule(on.chart.scene, {on.plot.x.from_mm, y}, {on.plot.x.to_mm, y}, Pen::grid);
    }
}

/// Between two points of a line, cut off at the top of the plot.
void add_piece(Path& path, Point from, Point to, double top_mm) {
    const auto cut = [top_mm](Point inside, Point outside) {
        const double t = (top_mm - inside.y) / (outside.y - inside.y);
        return Point{inside.x + t * (outside.x - inside.x), top_mm};
    };
    if (from.y > top_mm && to.y > top_mm) return;
    if (from.y > top_mm) from = cut(to, from);
    if (to.y > top_mm) to = cut(from, to);
    const Place start = at_mm(from), end = at_mm(to);
    const bool goes_on = !path.contours.empty() && path.contours.back().back() == start;
    if (!goes_on) path.contours.push_back({start});
    path.contours.back().push_back(end);
}

void add_line(RatioDrawing& on, const study::Line& line, Pen pen) {
    Path path;
    path.pen = pen;
    const auto& points = on.sweep.points;
    const double top = on.plot.y.to_mm;
    std::vector<Circle> dots;
    for (std::size_t i = 0; i < points.size(); ++i) {
        if (!line.ratios[i]) continue;
        const Point here = on.plot.at(points[i].value, *line.ratios[i]);
        if (i > 0 && line.ratios[i - 1])
            add_piece(path, on.plot.at(points[i - 1].value, *line.ratios[i - 1]), here, top);
        if (here.y <= top)
            dots.push_back({at_mm(here), 0.0, 0.5, pen == Pen::demand ? pen : Pen::thin, Fill::paper, {}});
    }
    if (!path.contours.empty()) on.chart.scene.items.emplace_back(std::move(path));
    constexpr std::size_t most_dots = 30;
    if (dots.size() > most_dots) return;
    for (Circle& dot : dots) on.chart.scene.items.emplace_back(std::move(dot));
}

/// Where the line ends to the right; absent: it has no point.
std::optional<Point> end_of(const RatioDrawing& on, const study::Line& line) {
    for (std::size_t i = on.sweep.points.size(); i-- > 0;) {
        if (!line.ratios[i]) continue;
        const Point at = on.plot.at(on.sweep.points[i].value, *line.ratios[i]);
        return Point{at.x, std::min(at.y, on.plot.y.to_mm)};
    }
    return std::nullopt;
}

/// To the right of the plot, each on the height of its line's end as far as there is room.
void add_labels(RatioDrawing& on) {
    for (std::size_t i = 0; i < on.labels.size(); ++i)
        on.labels[i].wanted_mm = end_of(on, on.lines[i]).value_or(Point{}).y;
    spread(on.labels, on.plot.y.from_mm, on.plot.y.to_mm + 0.5 * ratio_head_mm, label_size);
    const double left = on.plot.x.to_mm + leader_mm;
    for (std::size_t i = 0; i < on.labels.size(); ++i) {
        const Label& label = on.labels[i];
        const Point end = *end_of(on, on.lines[i]);
        const double spacing = line_spacing_mm(label_size);
        double y = label.at_mm + 0.5 * spacing * static_cast<double>(label.lines.size() - 1);
        on.chart.scene.items.emplace_back(
            stroke_through({at_mm({end.x + 0.8, end.y}).at, at_mm({on.plot.x.to_mm, end.y}).at,
                            at_mm({left - 1.8, label.at_mm}).at, at_mm({left - 0.8, label.at_mm}).at},
                           Pen::thin));
        for (const std::string& words : label.lines) {
            add_words(on.chart.scene, {left, y}, words,
                      {label_size, Across::left, Upright::middle, i == 0 ? Pen::demand : Pen::outline, i == 0});
            y -= spacing;
        }
    }
}

Fill fill_of(const study::Judged& judged) {
    return judged.known() && judged.verdict == review::Verdict::inadequate ? Fill::failing : Fill::none;
}

format::Phrase strip_word(const study::Judged& judged) {
    return judged.known() ? wording::word(judged.verdict) : phrase("no number");
}

/// Below the plot: the verdict at each value, alike ones as one.
void add_strip(RatioDrawing& on) {
    const auto& points = on.sweep.points;
    const double high = on.plot.y.from_mm - strip_gap_mm, low = high - strip_mm;
    for (std::size_t from = 0; from < points.size();) {
        std::size_t to = from;
        const std::string words = on.say(strip_word(points[from].judged));
        while (to + 1 < points.size() && on.say(strip_word(points[to + 1].judged)) == words) ++to;
        const double left = cell_of(on, from).first, right = cell_of(on, to).second;
        add_box(on.chart.scene, {left, low}, {right, high}, Pen::thin, fill_of(points[from].judged));
        if (width_mm(words, TextSize::fine, true) + 2.0 * pad_mm < right - left) {
            add_words(on.chart.scene, {0.5 * (left + right), 0.5 * (low + high)}, words,
                      {TextSize::fine, Across::middle, Upright::middle, Pen::outline, true, true});
        }
        from = to + 1;
    }
}

void add_now(RatioDrawing& on) {
    const std::optional<double>& now = on.sweep.field.now;
    const auto& points = on.sweep.points;
    if (!now || *now < points.front().value || *now > points.back().value) return;
    const double x = on.plot.x.mm(*now);
    add_rule(on.chart.scene, {x, on.plot.y.from_mm}, {x, on.plot.y.to_mm + 0.8}, Pen::center);
    const std::string words = on.say(phrase("as detailed: {}", on.value(on.sweep.field, *now)));
    const double half = 0.5 * width_mm(words, TextSize::fine);
    const double middle =
        std::clamp(x, on.plot.x.from_mm + half, std::max(on.plot.x.from_mm + half, on.plot.x.to_mm - half));
    add_words(on.chart.scene, {middle, on.plot.y.to_mm + 1.4}, words,
              {TextSize::fine, Across::middle, Upright::bottom, Pen::dimension});
}

/// A column over each value, from the foot of the strip to the top.
void add_spots(RatioDrawing& on) {
    for (std::size_t i = 0; i < on.sweep.points.size(); ++i) {
        const study::SweepPoint& point = on.sweep.points[i];
        const auto [left, right] = cell_of(on, i);
        on.chart.spots.push_back(
            {{left, on.plot.y.from_mm - strip_gap_mm - strip_mm},
             {right, on.plot.y.to_mm},
             point.judged.detail,
             on.say(phrase("{0}: {1}", on.value(on.sweep.field, point.value), wording::judged(point.judged)))});
    }
}

void add_notes(RatioDrawing& on) {
    double largest = 0.0;
    std::size_t more = 0;
    for (const study::Line& line : study::lines(on.sweep)) {
        const bool shown = std::any_of(on.lines.begin(), on.lines.end(),
                                       [&line](const study::Line& one) { return one.check == line.check; });
        if (shown || line.dimension || line.largest <= 0.0) continue;
        ++more;
        largest = std::max(largest, line.largest);
    }
    for (format::Phrase& note : wording::notes(on.sweep, on.room.locale.system))
        on.chart.notes.push_back(std::move(note));
    if (more > 0) {
        on.chart.notes.push_back(
            phrase("Not drawn: {} more checks, of which none exceeds {}.", more, format::ratio_text(largest)));
    }
}

}  // namespace

Chart ratio_chart(const study::Sweep& sweep, const ChartRoom& given) {
    const ChartRoom room = enough(given);
    RatioDrawing on{sweep, room, ratio_lines(sweep)};
    on.chart.scene = empty_chart(on.say(phrase("Ratio")), room);
    if (sweep.points.empty()) return std::move(on.chart);
    on.top = top_ratio(on.lines);
    lay_out(on);
    add_grid(on);
    add_limit(on);
    add_now(on);
    for (std::size_t i = on.lines.size(); i-- > 0;) add_line(on, on.lines[i], pen_of(i));
    add_box(on.chart.scene, on.plot.low(), on.plot.high(), Pen::outline, Fill::none);
    add_labels(on);
    add_strip(on);
    std::vector<double> values;
    for (const study::SweepPoint& point : sweep.points) values.push_back(point.value);
    add_x_axis(on.chart.scene, on.plot, value_ticks(sweep.field, values, on.plot.x, room),
               axis_title(sweep.field, room), strip_mm + strip_gap_mm);
    add_y_axis(on.chart.scene, on.plot, even_ticks(0.0, on.top, 8), on.say(phrase("demand / capacity")));
    add_spots(on);
    add_notes(on);
    return std::move(on.chart);
}

}  // namespace toehold::drawing
