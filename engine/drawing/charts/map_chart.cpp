#include "drawing/charts/plot.h"
#include "format/figures.h"
#include "study/study.h"
#include "wording/studies.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace toehold::drawing {
namespace {

using format::phrase;

constexpr double map_head_mm = 6.0, key_radius_mm = 2.1, key_gap_mm = 5.0;
constexpr TextSize node_size = TextSize::fine;

struct MapDrawing {
    const study::HoldingMap& map;
    const ChartRoom& room;
    Plot plot = {};
    std::vector<study::Limit> limits = {};  ///< those of the border, in the order met
    Chart chart = {};

    [[nodiscard]] std::string say(const format::Phrase& words) const { return format::text(words, room.locale); }
    [[nodiscard]] std::string value(const study::Field& field, double value) const {
        return study::value_words(field, value, room.locale.system);
    }
    [[nodiscard]] std::size_t columns() const { return map.across_values.size(); }
    [[nodiscard]] std::size_t rows() const { return map.up_values.size(); }
    [[nodiscard]] Point mm(std::size_t column, std::size_t row) const {
        return plot.at(map.across_values[column], map.up_values[row]);
    }
    [[nodiscard]] bool holds(std::size_t column, std::size_t row) const { return map.at(column, row).judged.holds(); }
};

std::string letter_of(std::size_t limit) { return std::string(1, static_cast<char>('a' + limit % 26)); }

bool alike(const study::Limit& one, const study::Limit& other) { return one.id == other.id; }

std::size_t number_of(const MapDrawing& on, const study::Limit& limit) {
    const auto at =
        std::find_if(on.limits.begin(), on.limits.end(), [&](const auto& one) { return alike(one, limit); });
    return static_cast<std::size_t>(at - on.limits.begin());
}

void find_limits(MapDrawing& on) {
    for (const study::MapBorder& border : on.map.borders) {
        if (number_of(on, border.limit) == on.limits.size()) on.limits.push_back(border.limit);
    }
}

std::vector<std::string> key_lines(const MapDrawing& on, const study::Limit& limit, double width) {
    return broken_into_lines(on.say(wording::limit(limit)), width, {TextSize::small});
}

/// What the marks at the points mean.
struct MarkWords {
    std::string holds, fails;
};

MarkWords mark_words(const MapDrawing& on) { return {on.say(phrase("ADEQUATE")), on.say(phrase("not ADEQUATE"))}; }

double key_width_mm(const MapDrawing& on) {
    constexpr double share = 0.26, marks_mm = 4.0;
    const MarkWords marks = mark_words(on);
    double widest = width_mm(on.say(phrase("border, by what makes it:")), TextSize::fine);
    for (const std::string& words : {marks.holds, marks.fails})
        widest = std::max(widest, marks_mm + width_mm(words, TextSize::small));
    for (const study::Limit& limit : on.limits) {
        for (const std::string& line : key_lines(on, limit, share * on.room.width_mm))
            widest = std::max(widest, width_mm(line, TextSize::small) + 2.0 * key_radius_mm + pad_mm);
    }
    return widest;
}

Axis axis_of(const std::vector<double>& values, double from_mm, double to_mm) {
    return {values.front(), values.back(), from_mm, to_mm};
}

void lay_out(MapDrawing& on) {
    const double low = x_axis_mm() + 1.0, high = on.room.height_mm - map_head_mm;
    on.plot.y = axis_of(on.map.up_values, low, high);
    const double left = y_axis_mm(upright_ticks(on.map.up, on.map.up_values, on.plot.y, on.room)) + pad_mm;
    const double right = on.room.width_mm - pad_mm - key_width_mm(on) - key_gap_mm;
    on.plot.x = axis_of(on.map.across_values, left, right);
}

const study::MapBorder* border_between(const MapDrawing& on, study::MapAxis axis, std::size_t column, std::size_t row) {
    const auto found = std::find_if(on.map.borders.begin(), on.map.borders.end(), [&](const study::MapBorder& border) {
        return border.axis == axis && border.column == column && border.row == row;
    });
    return found == on.map.borders.end() ? nullptr : &*found;
}

/// Where a side of a cell is crossed.
struct Crossing {
    Point at;
    const study::MapBorder* border = nullptr;
};

/// Of sizes, half way to the next; of a border that is not bisected half way too; else the last place that holds.
Crossing crossing(const MapDrawing& on, const study::MapBorder& border) {
    const bool upward = border.axis == study::MapAxis::up;
    const bool sizes = !(upward ? on.map.up : on.map.across).sizes.empty();
    const double value = sizes || !border.steady ? border.at() : border.holds;
    const Point at = upward ? on.plot.at(on.map.across_values[border.column], value)
                            : on.plot.at(value, on.map.up_values[border.row]);
    return {at, &border};
}

struct Piece {
    Crossing from, to;
};

struct Traced {
    Path region;
    std::vector<Piece> border;
};

/// The part of one cell that holds: its corners that do, and where its sides are crossed.
void trace_cell(const MapDrawing& on, Traced& traced, std::size_t column, std::size_t row) {
    const std::array<Point, 4> corners = {on.mm(column, row), on.mm(column + 1, row), on.mm(column + 1, row + 1),
                                          on.mm(column, row + 1)};
    const std::array<bool, 4> holds = {on.holds(column, row), on.holds(column + 1, row), on.holds(column + 1, row + 1),
                                       on.holds(column, row + 1)};
    const std::array<const study::MapBorder*, 4> sides = {border_between(on, study::MapAxis::across, column, row),
                                                          border_between(on, study::MapAxis::up, column + 1, row),
                                                          border_between(on, study::MapAxis::across, column, row + 1),
                                                          border_between(on, study::MapAxis::up, column, row)};
    if (std::all_of(holds.begin(), holds.end(), [](bool one) { return one; })) {
        std::vector<Place>& all = traced.region.contours.emplace_back();
        for (const Point corner : corners) all.push_back(at_mm(corner));
        return;
    }
    for (std::size_t start = 0; start < 4; ++start) {
        const std::size_t before = (start + 3) % 4;
        if (!holds.at(start) || holds.at(before)) continue;
        std::size_t last = start;
        while (holds.at((last + 1) % 4)) last = (last + 1) % 4;
        // A point not reached has no border with its neighbors.
        if (sides.at(before) == nullptr || sides.at(last) == nullptr) continue;
        const Crossing in = crossing(on, *sides.at(before)), out = crossing(on, *sides.at(last));
        std::vector<Place>& piece = traced.region.contours.emplace_back();
        piece.push_back(at_mm(in.at));
        for (std::size_t k = start;; k = (k + 1) % 4) {
            piece.push_back(at_mm(corners.at(k)));
            if (k == last) break;
        }
        piece.push_back(at_mm(out.at));
        traced.border.push_back({out, in});
    }
}

Traced traced_region(const MapDrawing& on) {
    Traced traced;
    traced.region.closed = true;
    traced.region.pen = Pen::none;
    traced.region.fill = Fill::paper;
    for (std::size_t row = 0; row + 1 < on.rows(); ++row) {
        for (std::size_t column = 0; column + 1 < on.columns(); ++column) trace_cell(on, traced, column, row);
    }
    return traced;
}

/// All is hatched but what holds.
void add_ground(MapDrawing& on, const Traced& traced) {
    add_box(on.chart.scene, on.mm(0, 0), on.mm(on.columns() - 1, on.rows() - 1), Pen::none, Fill::failing);
    if (!traced.region.contours.empty()) on.chart.scene.items.emplace_back(traced.region);
    for (const Piece& piece : traced.border) {
        const bool steady = piece.from.border->steady && piece.to.border->steady;
        add_rule(on.chart.scene, piece.from.at, piece.to.at, steady ? Pen::cut : Pen::no_path);
    }
}

bool clear_of(const std::vector<Box>& taken, const Box& box) {
    return std::none_of(taken.begin(), taken.end(), [&box](const Box& other) {
        return box.low.x < other.high.x && box.high.x > other.low.x && box.low.y < other.high.y &&
               box.high.y > other.low.y;
    });
}

std::string node_words(const study::Judged& judged) {
    if (!judged.known()) return "?";
    const std::optional<double> ratio = judged.ratio();
    return ratio && std::isfinite(*ratio) ? format::ratio_text(*ratio) : "-";
}

/// A dot for what holds, a ring for what does not, the ratio above it; returns what they take.
std::vector<Box> add_nodes(MapDrawing& on) {
    constexpr double dot_mm = 0.8, up_mm = 1.5, side_mm = 0.9;
    std::vector<Box> taken;
    for (std::size_t row = 0; row < on.rows(); ++row) {
        for (std::size_t column = 0; column < on.columns(); ++column) {
            const study::MapNode& node = on.map.at(column, row);
            const Point at = on.mm(column, row);
            on.chart.scene.items.emplace_back(
                Circle{at_mm(at), 0.0, dot_mm, Pen::outline, node.judged.holds() ? Fill::capacity : Fill::paper, {}});
            const std::string words = node_words(node.judged);
            const double wide = width_mm(words, node_size), high = capitals_mm(node_size);
            // Those at the sides stand within the plot.
            const Across across = column == 0                  ? Across::left
                                  : column + 1 == on.columns() ? Across::right
                                                               : Across::middle;
            const double left = across == Across::left     ? at.x + side_mm
                                : across == Across::middle ? at.x - 0.5 * wide
                                                           : at.x - side_mm - wide;
            add_words(on.chart.scene, {left, at.y + up_mm}, words,
                      {node_size, Across::left, Upright::bottom, Pen::outline, false, true});
            taken.push_back({{std::min(left, at.x - dot_mm), at.y - dot_mm},
                             {std::max(left + wide, at.x + dot_mm), at.y + up_mm + high}});
            on.chart.spots.push_back({{at.x - 3.0, at.y - 3.0},
                                      {at.x + 3.0, at.y + 3.0 + up_mm},
                                      node.judged.detail,
                                      on.say(phrase("{0}, {1}: {2}", on.value(on.map.across, node.across),
                                                    on.value(on.map.up, node.up), wording::judged(node.judged)))});
        }
    }
    return taken;
}

void add_letter(MapDrawing& on, Point at, std::size_t limit) {
    on.chart.scene.items.emplace_back(Circle{at_mm(at), 0.0, key_radius_mm, Pen::holds, Fill::paper, {}});
    add_words(on.chart.scene, at, letter_of(limit),
              {TextSize::small, Across::middle, Upright::middle, Pen::outline, true});
}

/// On the border, one for each stretch with the same limit, in a place that is free.
void add_letters(MapDrawing& on, const Traced& traced, std::vector<Box> taken) {
    constexpr std::array<double, 5> along = {0.5, 0.35, 0.65, 0.2, 0.8};
    std::vector<std::size_t> given(on.limits.size(), 0);
    for (const Piece& piece : traced.border) {
        const std::size_t limit = number_of(on, piece.from.border->limit);
        // Every third piece is enough to read a border by.
        constexpr std::size_t every = 3;
        if (given.at(limit)++ % every != 0) continue;
        for (const double t : along) {
            const Point at{piece.from.at.x + t * (piece.to.at.x - piece.from.at.x),
                           piece.from.at.y + t * (piece.to.at.y - piece.from.at.y)};
            const Box box{{at.x - key_radius_mm, at.y - key_radius_mm}, {at.x + key_radius_mm, at.y + key_radius_mm}};
            if (!clear_of(taken, box)) continue;
            add_letter(on, at, limit);
            taken.push_back(box);
            break;
        }
    }
}

/// To the right of the plot.
void add_key(MapDrawing& on) {
    const double left = on.plot.x.to_mm + key_gap_mm, words = left + 2.0 * key_radius_mm + pad_mm;
    const double spacing = line_spacing_mm(TextSize::small);
    double y = on.plot.y.to_mm - 1.0;
    const MarkWords marks = mark_words(on);
    for (const bool holds : {true, false}) {
        on.chart.scene.items.emplace_back(
            Circle{at_mm({left + 1.0, y}), 0.0, 0.8, Pen::outline, holds ? Fill::capacity : Fill::paper, {}});
        add_words(on.chart.scene, {left + 4.0, y}, holds ? marks.holds : marks.fails, {TextSize::small});
        y -= spacing;
    }
    if (on.limits.empty()) return;
    y -= 0.8 * spacing;
    add_words(on.chart.scene, {left, y}, on.say(phrase("border, by what makes it:")),
              {TextSize::fine, Across::left, Upright::middle, Pen::dimension});
    y -= 1.6 * spacing;
    for (std::size_t limit = 0; limit < on.limits.size(); ++limit) {
        add_letter(on, {left + key_radius_mm, y}, limit);
        for (const std::string& line : key_lines(on, on.limits[limit], on.room.width_mm - pad_mm - words)) {
            add_words(on.chart.scene, {words, y}, line, {TextSize::small});
            y -= spacing;
        }
        y -= 0.6 * spacing;
    }
}

}  // namespace

Chart map_chart(const study::HoldingMap& map, const ChartRoom& given) {
    const ChartRoom room = enough(given);
    MapDrawing on{map, room};
    on.chart.scene = empty_chart(on.say(phrase("What holds")), room);
    find_limits(on);
    lay_out(on);
    const Traced traced = traced_region(on);
    add_ground(on, traced);
    add_box(on.chart.scene, on.plot.low(), on.plot.high(), Pen::outline, Fill::none);
    const std::vector<Box> taken = add_nodes(on);
    add_letters(on, traced, taken);
    add_key(on);
    add_x_axis(on.chart.scene, on.plot, value_ticks(map.across, map.across_values, on.plot.x, room),
               axis_title(map.across, room));
    add_y_axis(on.chart.scene, on.plot, upright_ticks(map.up, map.up_values, on.plot.y, room),
               axis_title(map.up, room));
    on.chart.notes = wording::notes(map, room.locale.system);
    return std::move(on.chart);
}

}  // namespace toehold::drawing
