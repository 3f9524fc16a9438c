#include "study/holding_map.h"

#include "search/run/parallel.h"

#include <algorithm>
#include <cmath>

namespace toehold::study {
namespace {

using format::phrase;

/// Less than a finer mesh would change a ratio by is no turn.
constexpr double steady_within = 1e-3;

class Mapping {
  public:
    Mapping(const Subject& subject, const Asked& across, const Asked& up)
        : subject_(subject), both_{across.field, up.field} {
        map_.across = across.field;
        map_.up = up.field;
        map_.across_values = across.values;
        map_.up_values = up.values;
        map_.nodes.resize(across.values.size() * up.values.size());
    }

    HoldingMap found(const Run& run) {
        map_.stopped = !find_nodes(run);
        find_turns();
        list_borders();
        if (!map_.stopped) map_.stopped = !bisect_all(run);
        return std::move(map_);
    }

  private:
    [[nodiscard]] std::size_t columns() const { return map_.across_values.size(); }
    [[nodiscard]] std::size_t rows() const { return map_.up_values.size(); }

    [[nodiscard]] Judged judged(double across, double up, demand::Kept& kept) const {
        return judge(subject_, both_, {{map_.across.id, across}, {map_.up.id, up}}, &kept);
    }

    bool find_nodes(const Run& run) {
        for (std::size_t index = 0; index < map_.nodes.size(); ++index) {
            MapNode& node = map_.nodes[index];
            node.across = map_.across_values[index % columns()];
            node.up = map_.up_values[index / columns()];
            node.judged.refusal = phrase("stopped");
        }
        return search::for_each_index(map_.nodes.size(), run, [&](std::size_t index, demand::Kept& kept) {
            MapNode& node = map_.nodes[index];
            node.judged = judged(node.across, node.up, kept);
        });
    }

    /// Along one line of the grid: where the ratio turns back.
    void find_turns(MapAxis axis, std::size_t line) {
        const bool upward = axis == MapAxis::up;
        const std::vector<double>& values = upward ? map_.up_values : map_.across_values;
        const double at_line = upward ? map_.across_values[line] : map_.up_values[line];
        const auto node = [&](std::size_t i) -> const MapNode& { return upward ? map_.at(line, i) : map_.at(i, line); };
        int way = 0;
        std::optional<std::size_t> last;
        for (std::size_t i = 0; i < values.size(); ++i) {
            const std::optional<double> ratio = node(i).judged.ratio();
            if (!ratio) continue;
            if (last) {
                const int now = way_between(*node(*last).judged.ratio(), *ratio);
                if (now != 0 && way != 0 && now != way)
                    map_.not_steady.push_back({axis, at_line, values[*last > 0 ? *last - 1 : 0], values[i]});
                if (now != 0) way = now;
            }
            last = i;
        }
    }

    static int way_between(double from, double to) {
        if (from == to || std::abs(to - from) <= steady_within * std::max(from, to)) return 0;
        return to > from ? 1 : -1;
    }

    void find_turns() {
        for (std::size_t column = 0; column < columns(); ++column) find_turns(MapAxis::up, column);
        for (std::size_t row = 0; row < rows(); ++row) find_turns(MapAxis::across, row);
    }

    void add_border(MapAxis axis, std::size_t column, std::size_t row) {
        const bool upward = axis == MapAxis::up;
        const MapNode& one = map_.at(column, row);
        const MapNode& other = upward ? map_.at(column, row + 1) : map_.at(column + 1, row);
        if (!one.judged.known() || !other.judged.known() || one.judged.holds() == other.judged.holds()) return;
        const MapNode& good = one.judged.holds() ? one : other;
        const MapNode& bad = one.judged.holds() ? other : one;
        MapBorder border;
        border.axis = axis;
        border.column = column;
        border.row = row;
        border.holds = upward ? good.up : good.across;
        border.fails = upward ? bad.up : bad.across;
        border.limit = bad.judged.limit;
        border.detail = good.judged.detail;
        map_.borders.push_back(std::move(border));
    }

    void list_borders() {
        for (std::size_t row = 0; row < rows(); ++row) {
            for (std::size_t column = 0; column < columns(); ++column) {
                if (row + 1 < rows()) add_border(MapAxis::up, column, row);
                if (column + 1 < columns()) add_border(MapAxis::across, column, row);
            }
        }
    }

    [[nodiscard]] const Field& field_of(MapAxis axis) const { return axis == MapAxis::up ? map_.up : map_.across; }

    /// Of a field that is no length a 32nd of its customary step.
    [[nodiscard]] double within(const Field& field) const {
        constexpr double part = 1.0 / 32.0;
        return field.unit == "in" ? map_.within : part * field.step;
    }

    /// Halves the gap until it is small, as long as each middle's ratio lies between those of its ends.
    void bisect(MapBorder& border, const Run& run, demand::Kept& kept) const {
        const Field& field = field_of(border.axis);
        if (!field.sizes.empty()) return;
        const bool upward = border.axis == MapAxis::up;
        const double line = upward ? map_.across_values[border.column] : map_.up_values[border.row];
        std::optional<double> holding = ratio_at(border, border.holds), failing = ratio_at(border, border.fails);
        while (std::abs(border.fails - border.holds) > within(field) * (1.0 + 1e-9)) {
            if (run.stop && run.stop()) return;
            const double middle = border.at();
            const Judged now = upward ? judged(line, middle, kept) : judged(middle, line, kept);
            const std::optional<double> ratio = now.ratio();
            if (!ratio || !holding || !failing || !lies_between(*ratio, *holding, *failing)) {
                border.steady = false;
                return;
            }
            if (now.holds()) {
                border.holds = middle;
                border.detail = now.detail;
                holding = ratio;
            } else {
                border.fails = middle;
                border.limit = now.limit;
                failing = ratio;
            }
        }
    }

    /// Of a neighbor on the grid.
    [[nodiscard]] std::optional<double> ratio_at(const MapBorder& border, double value) const {
        const MapNode& one = map_.at(border.column, border.row);
        const bool upward = border.axis == MapAxis::up;
        if ((upward ? one.up : one.across) == value) return one.judged.ratio();
        return (upward ? map_.at(border.column, border.row + 1) : map_.at(border.column + 1, border.row))
            .judged.ratio();
    }

    static bool lies_between(double ratio, double one, double other) {
        const double low = std::min(one, other), high = std::max(one, other);
        return ratio >= low * (1.0 - steady_within) && ratio <= high * (1.0 + steady_within);
    }

    bool bisect_all(const Run& run) {
        return search::for_each_index(map_.borders.size(), run, [&](std::size_t index, demand::Kept& kept) {
            bisect(map_.borders[index], run, kept);
        });
    }

    Subject subject_;
    std::vector<Field> both_;
    HoldingMap map_;
};

/// About six steps over the field's range, each a whole number of half customary ones.
std::vector<double> map_values(const Field& field) {
    if (!field.sizes.empty()) return customary_values(field);
    const double whole = field.range.most - field.range.least, half_step = 0.5 * field.step;
    int steps = 6;
    for (const int wanted : {6, 5, 7, 4}) {
        const double halves = whole / wanted / half_step;
        if (std::abs(halves - std::round(halves)) > 1e-6) continue;
        steps = wanted;
        break;
    }
    std::vector<double> values;
    values.reserve(static_cast<std::size_t>(steps) + 1);
    for (int i = 0; i <= steps; ++i) values.push_back(field.range.least + i * whole / steps);
    return values;
}

}  // namespace

const MapNode& HoldingMap::at(std::size_t column, std::size_t row) const {
    return nodes.at(row * across_values.size() + column);
}

MapAsked customary_map(const std::vector<Field>& fields) {
    const auto asked = [&fields](const char* id) {
        const Field& field = *find_field(fields, id);
        return Asked{field, map_values(field)};
    };
    return {asked("tributary"), asked("height")};
}

HoldingMap holding_map(const Subject& subject, const Asked& across, const Asked& up, const Run& run) {
    return Mapping(subject, across, up).found(run);
}

}  // namespace toehold::study
