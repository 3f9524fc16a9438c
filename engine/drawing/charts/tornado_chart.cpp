#include "drawing/charts/plot.h"
#include "format/figures.h"
#include "study/study.h"
#include "wording/studies.h"

#include <algorithm>
#include <cmath>

namespace toehold::drawing {
namespace {

using format::phrase;

constexpr double tornado_head_mm = 11.0, bar_mm = 2.6, least_row_mm = 7.4, most_row_mm = 13.0;
constexpr double shown_swing = 0.005;
constexpr TextSize figure_size = TextSize::fine;

struct TornadoDrawing {
    const study::Tornado& tornado;
    const ChartRoom& room;
    std::vector<const study::Swing*> rows = {};  ///< the largest first
    double now = 0.0;                            ///< governing ratio
    std::vector<study::CheckRatio> others = {};  ///< checks that govern where an input is changed, but not now
    Plot plot = {};                              ///< y: rows from the top, as 0, 1, 2 ...
    double row_mm = 0.0;
    Chart chart = {};

    [[nodiscard]] std::string say(const format::Phrase& words) const { return format::text(words, room.locale); }
    [[nodiscard]] std::string value(const study::Field& field, double value) const {
        return study::value_words(field, value, room.locale.system);
    }
    [[nodiscard]] double middle_mm(std::size_t row) const {
        return plot.y.to_mm - (static_cast<double>(row) + 0.5) * row_mm;
    }
};

/// Finite and known.
std::optional<double> ratio_of(const study::SwingSide& side) {
    if (!side.judged.known() || !side.judged.governing) return std::nullopt;
    return side.judged.governing->ratio;
}

/// `a`, `b` ... for a check that governs there and not now; empty for the same.
std::string letter_of(const TornadoDrawing& on, const study::Judged& judged) {
    for (std::size_t i = 0; i < on.others.size(); ++i) {
        if (on.others[i].check == judged.governing->check) return std::string(1, static_cast<char>('a' + i % 26));
    }
    return {};
}

std::string side_words(const TornadoDrawing& on, const study::Swing& swing, const study::SwingSide& side) {
    std::string words = on.value(swing.field, side.value);
    if (const auto ratio = ratio_of(side)) {
        const std::string letter = letter_of(on, side.judged);
        words += ": " + format::ratio_text(*ratio) + (letter.empty() ? "" : " " + letter);
    }
    // Only where it differs from now.
    const bool lacks = side.judged.known() && !side.judged.no_path.empty();
    if (lacks && on.tornado.now.no_path.empty()) words += ", " + on.say(phrase("no load path"));
    return words;
}

std::string row_words(const TornadoDrawing& on, const study::Swing& swing) {
    return on.say(phrase("{0}: {1}", swing.field.name, on.value(swing.field, *swing.field.now)));
}

struct RatioRange {
    double low = 0.0, high = 0.0;
};

RatioRange reach_of(const TornadoDrawing& on) {
    RatioRange reach{on.now, on.now};
    for (const study::Swing* const swing : on.rows) {
        for (const study::SwingSide* const side : {&swing->down, &swing->up}) {
            const double ratio = ratio_of(*side).value_or(on.now);
            reach.low = std::min(reach.low, ratio);
            reach.high = std::max(reach.high, ratio);
        }
    }
    return reach;
}

/// Words beside the bars' ends need room within the plot.
void lay_out(TornadoDrawing& on) {
    double names = 0.0, figures = 0.0;
    for (const study::Swing* const swing : on.rows) {
        for (const std::string& line :
             broken_into_lines(row_words(on, *swing), 0.3 * on.room.width_mm, {TextSize::small}))
            names = std::max(names, width_mm(line, TextSize::small));
        for (const study::SwingSide* const side : {&swing->down, &swing->up})
            figures = std::max(figures, width_mm(side_words(on, *swing, *side), figure_size));
    }
    const double left = pad_mm + names + 2.5, right = on.room.width_mm - 3.0 * pad_mm;
    const double low = x_axis_mm() + 1.0, high = on.room.height_mm - tornado_head_mm;
    on.row_mm = std::clamp((high - low) / static_cast<double>(on.rows.size()), least_row_mm, most_row_mm);
    const double foot = high - on.row_mm * static_cast<double>(on.rows.size());
    const double side_mm = figures + 3.0;
    RatioRange reach = reach_of(on);
    const double least_span = 0.04;
    if (reach.high - reach.low < least_span) reach = {on.now - 0.5 * least_span, on.now + 0.5 * least_span};
    // A limit just outside is worth seeing.
    const double span = reach.high - reach.low;
    if (reach.high < 1.0 && 1.0 - reach.high < 0.5 * span) reach.high = 1.0;
    if (reach.low > 1.0 && reach.low - 1.0 < 0.5 * span) reach.low = 1.0;
    const double per_mm = (reach.high - reach.low) / (right - left - 2.0 * side_mm);
    on.plot.x = {reach.low - side_mm * per_mm, reach.high + side_mm * per_mm, left, right};
    on.plot.y = {static_cast<double>(on.rows.size()), 0.0, foot, high};
}

void add_ground(TornadoDrawing& on) {
    const Plot& plot = on.plot;
    for (const Tick& tick : even_ticks(plot.x.from, plot.x.to, 8)) {
        const double x = plot.x.mm(tick.value);
        add_rule(on.chart.scene, {x, plot.y.from_mm}, {x, plot.y.to_mm}, Pen::grid);
    }
    if (1.0 > plot.x.from && 1.0 < plot.x.to) {
        const double limit = plot.x.mm(1.0);
        add_box(on.chart.scene, {limit, plot.y.from_mm}, plot.high(), Pen::none, Fill::failing);
        add_rule(on.chart.scene, {limit, plot.y.from_mm}, {limit, plot.y.to_mm}, Pen::cut);
    } else if (plot.x.from >= 1.0) {
        add_box(on.chart.scene, plot.low(), plot.high(), Pen::none, Fill::failing);
    }
}

void add_bar(TornadoDrawing& on, const study::Swing& swing, const study::SwingSide& side, double low_mm, bool larger) {
    const std::optional<double> ratio = ratio_of(side);
    const double start = on.plot.x.mm(on.now), end = ratio ? on.plot.x.mm(*ratio) : start;
    const double low = std::min(start, end), high = std::max(start, end);
    if (ratio) {
        add_box(on.chart.scene, {low, low_mm}, {high, low_mm + bar_mm}, Pen::holds,
                larger ? Fill::demand : Fill::paper);
    }
    const bool right = end > start || (end == start && larger);
    if (side.value != swing.field.now) {
        add_words(on.chart.scene, {right ? high + pad_mm : low - pad_mm, low_mm + 0.5 * bar_mm},
                  side_words(on, swing, side),
                  {figure_size, right ? Across::left : Across::right, Upright::middle, Pen::outline, false, true});
    }
    if (!side.judged.known()) return;
    on.chart.spots.push_back({{low - 1.0, low_mm},
                              {high + 1.0, low_mm + bar_mm},
                              side.judged.detail,
                              on.say(phrase("{0} {1}: {2}", swing.field.name, on.value(swing.field, side.value),
                                            wording::judged(side.judged)))});
}

/// The larger input's bar stands above the smaller's, so that neither hides the other where both go one way.
void add_rows(TornadoDrawing& on) {
    constexpr double between_mm = 0.4;
    for (std::size_t row = 0; row < on.rows.size(); ++row) {
        const study::Swing& swing = *on.rows[row];
        const double middle = on.middle_mm(row);
        const auto lines = broken_into_lines(row_words(on, swing), 0.3 * on.room.width_mm, {TextSize::small});
        const double spacing = line_spacing_mm(TextSize::small);
        double y = middle + 0.5 * spacing * static_cast<double>(lines.size() - 1);
        for (const std::string& words : lines) {
            add_words(on.chart.scene, {on.plot.x.from_mm - 2.5, y}, words, {TextSize::small, Across::right});
            y -= spacing;
        }
        add_bar(on, swing, swing.up, middle + 0.5 * between_mm, true);
        add_bar(on, swing, swing.down, middle - 0.5 * between_mm - bar_mm, false);
    }
}

void add_now(TornadoDrawing& on) {
    const double x = on.plot.x.mm(on.now);
    add_rule(on.chart.scene, {x, on.plot.y.from_mm}, {x, on.plot.y.to_mm + 1.0}, Pen::outline);
    const std::string words = on.say(phrase("now {}", format::ratio_text(on.now)));
    const double now_half = 0.5 * width_mm(words, TextSize::fine, true);
    add_words(on.chart.scene, {x, on.plot.y.to_mm + 1.6}, words,
              {TextSize::fine, Across::middle, Upright::bottom, Pen::outline, true});
    if (!(1.0 > on.plot.x.from && 1.0 < on.plot.x.to)) return;
    const std::string limit = on.say(phrase("limit 1.00"));
    const double half = 0.5 * width_mm(limit, TextSize::fine, true);
    const double wanted = on.plot.x.mm(1.0);
    // Beside the other word where both would stand in one place.
    const double least_apart = half + now_half + pad_mm;
    const double middle = std::abs(wanted - x) >= least_apart ? wanted
                          : wanted >= x                       ? x + least_apart
                                                              : x - least_apart;
    add_words(on.chart.scene, {middle, on.plot.y.to_mm + 1.6}, limit,
              {TextSize::fine, Across::middle, Upright::bottom, Pen::outline, true});
}

/// At the top: which bar is which; in fewer words where there is no room.
void add_key(TornadoDrawing& on) {
    constexpr double box_mm = 7.0, words_mm = 8.2, apart_mm = 6.0;
    std::string more = on.say(phrase("10% more, or the next size")),
                less = on.say(phrase("10% less, or one size down"));
    const double wide = width_mm(more, TextSize::fine) + width_mm(less, TextSize::fine) + 2.0 * words_mm + apart_mm;
    if (wide + 2.0 * pad_mm > on.room.width_mm) {
        more = on.say(phrase("more"));
        less = on.say(phrase("less"));
    }
    const double y = on.room.height_mm - 4.0;
    double x = pad_mm;
    for (const bool larger : {true, false}) {
        const std::string& words = larger ? more : less;
        add_box(on.chart.scene, {x, y}, {x + box_mm, y + bar_mm}, Pen::holds, larger ? Fill::demand : Fill::paper);
        add_words(on.chart.scene, {x + words_mm, y + 0.5 * bar_mm}, words, {TextSize::fine});
        x += words_mm + width_mm(words, TextSize::fine) + apart_mm;
    }
}

/// As many rows as stand in the room.
void choose_rows(TornadoDrawing& on) {
    const double room_mm = on.room.height_mm - tornado_head_mm - x_axis_mm() - 1.0;
    const auto most = static_cast<std::size_t>(std::max(1.0, std::floor(room_mm / least_row_mm)));
    for (const study::Swing& swing : on.tornado.swings) {
        if (swing.size >= shown_swing && on.rows.size() < most) on.rows.push_back(&swing);
    }
}

void find_others(TornadoDrawing& on) {
    for (const study::Swing* const swing : on.rows) {
        for (const study::SwingSide* const side : {&swing->down, &swing->up}) {
            if (!ratio_of(*side)) continue;
            const study::CheckRatio& governing = *side->judged.governing;
            const bool known =
                governing.check == on.tornado.now.governing->check || !letter_of(on, side->judged).empty();
            if (!known) on.others.push_back(governing);
        }
    }
}

void add_notes(TornadoDrawing& on) {
    on.chart.notes = wording::notes(on.tornado, on.room.locale.system);
    std::vector<format::Phrase> others;
    for (const study::CheckRatio& one : on.others)
        others.push_back(phrase("{} {}", std::string(1, static_cast<char>('a' + others.size() % 26)), one.title));
    if (!others.empty())
        on.chart.notes.push_back(
            phrase("Letters mark where another check governs than now: {}.", format::Listed{std::move(others)}));
    std::vector<format::Phrase> left_out;
    for (const study::Swing& swing : on.tornado.swings) {
        if (swing.size >= shown_swing && std::find(on.rows.begin(), on.rows.end(), &swing) == on.rows.end())
            left_out.push_back(swing.field.name);
    }
    if (!left_out.empty())
        on.chart.notes.push_back(phrase("Not drawn for want of room: {}.", format::Listed{std::move(left_out)}));
}

}  // namespace

Chart tornado_chart(const study::Tornado& tornado, const ChartRoom& given) {
    const ChartRoom room = enough(given);
    TornadoDrawing on{tornado, room};
    on.chart.scene = empty_chart(on.say(phrase("Inputs")), room);
    if (tornado.now.known() && tornado.now.governing) {
        on.now = tornado.now.governing->ratio;
        choose_rows(on);
        find_others(on);
    }
    add_notes(on);
    if (on.rows.empty()) return std::move(on.chart);
    lay_out(on);
    add_ground(on);
    add_rows(on);
    add_now(on);
    add_key(on);
    add_box(on.chart.scene, on.plot.low(), on.plot.high(), Pen::outline, Fill::none);
    add_x_axis(on.chart.scene, on.plot, even_ticks(on.plot.x.from, on.plot.x.to, 8),
               on.say(phrase("governing demand / capacity")));
    return std::move(on.chart);
}

}  // namespace toehold::drawing
