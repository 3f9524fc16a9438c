#include "drawing/annotation/dimension.h"

#include "drawing/scene/shapes.h"

#include <algorithm>
#include <cmath>

namespace toehold::drawing {
namespace {

constexpr double extension_gap_mm = 1.0;
constexpr double extension_beyond_mm = 1.3;
constexpr double tick_mm = 1.0;
constexpr double words_off_mm = 0.7;
constexpr double storey_mm = 2.9;

/// From along and across the measured direction to x and y.
Place turned(Measure measure, double along_in, double across_in, double along_mm, double across_mm) {
    if (measure == Measure::across) return {{along_in, across_in}, {along_mm, across_mm}};
    return {{across_in, along_in}, {across_mm, along_mm}};
}

void add_extension(Scene& scene, const DimensionRow& row, const DimensionEnd& end) {
    const double sign = row.offset_mm < 0.0 ? -1.0 : 1.0;
    scene.items.emplace_back(
        line(turned(row.measure, end.at_in, end.feature_in, 0.0, sign * extension_gap_mm),
             turned(row.measure, end.at_in, row.beside_in, 0.0, row.offset_mm + sign * extension_beyond_mm), row.pen));
}

void add_tick(Scene& scene, const DimensionRow& row, double at_in) {
    const Place place = turned(row.measure, at_in, row.beside_in, 0.0, row.offset_mm);
    scene.items.emplace_back(
        line(moved_mm(place, -tick_mm, -tick_mm), moved_mm(place, tick_mm, tick_mm), Pen::outline));
}

/// Upright words read from the right, above their line to the left of it.
Text words_text(const DimensionRow& row, const DimensionEnd& from, const DimensionEnd& to, const std::string& words,
                WordsAt words_at) {
    const bool upright = row.measure == Measure::upright;
    const double side = upright ? -1.0 : 1.0;
    double off_mm = row.offset_mm + side * words_off_mm;
    if (words_at == WordsAt::raised) off_mm += side * storey_mm;
    if (words_at == WordsAt::below_line) off_mm = row.offset_mm - side * words_off_mm;
    Text text;
    text.words = words;
    text.size = TextSize::small;
    text.across = Across::middle;
    text.upright = words_at == WordsAt::below_line ? Upright::top : Upright::bottom;
    text.angle_deg = upright ? 90.0 : 0.0;
    text.pen = Pen::outline;
    text.part = row.part;
    text.on_paper = row.words_on_paper;
    double along_in = 0.5 * (from.at_in + to.at_in), along_mm = 0.0;
    if (words_at == WordsAt::before || words_at == WordsAt::after) {
        const bool before = words_at == WordsAt::before;
        along_in = before ? from.at_in : to.at_in;
        along_mm = before ? -1.6 : 1.6;
        text.across = before ? Across::right : Across::left;
    }
    text.at = turned(row.measure, along_in, row.beside_in, along_mm, off_mm);
    return text;
}

void add_line(Scene& scene, const DimensionRow& row, double from_in, double to_in, double before_mm, double after_mm) {
    scene.items.emplace_back(line(turned(row.measure, from_in, row.beside_in, -before_mm, row.offset_mm),
                                  turned(row.measure, to_in, row.beside_in, after_mm, row.offset_mm), row.pen,
                                  row.part));
}

/// Of a chain, where words too long for their part go: of its ends outward, else a storey up and down by turns.
WordsAt aside_of_chain(std::size_t index, std::size_t parts) {
    if (parts == 1) return WordsAt::line;
    if (index == 0) return WordsAt::before;
    if (index + 1 == parts) return WordsAt::after;
    return index % 2 == 1 ? WordsAt::raised : WordsAt::below_line;
}

}  // namespace

void add_dimension(Scene& scene, const DimensionRow& row, const DimensionEnd& from, const DimensionEnd& to,
                   const std::string& words, WordsAt words_at) {
    add_extension(scene, row, from);
    add_extension(scene, row, to);
    add_line(scene, row, from.at_in, to.at_in, words_at == WordsAt::before ? 1.6 : 0.0,
             words_at == WordsAt::after ? 1.6 : 0.0);
    add_tick(scene, row, from.at_in);
    add_tick(scene, row, to.at_in);
    scene.items.emplace_back(words_text(row, from, to, words, words_at));
}

void add_chain(Scene& scene, const DimensionRow& row, const std::vector<DimensionEnd>& ends,
               const std::vector<std::string>& words) {
    if (ends.size() < 2 || words.size() + 1 != ends.size()) return;
    for (const DimensionEnd& end : ends) {
        add_extension(scene, row, end);
        add_tick(scene, row, end.at_in);
    }
    add_line(scene, row, ends.front().at_in, ends.back().at_in, 0.0, 0.0);
    for (std::size_t index = 0; index < words.size(); ++index) {
        const DimensionEnd &from = ends[index], &to = ends[index + 1];
        Text text = words_text(row, from, to, words[index], WordsAt::line);
        const Text aside = words_text(row, from, to, words[index], aside_of_chain(index, words.size()));
        text.aside = Aside{to.at_in - from.at_in, aside.at, aside.across, aside.upright};
        scene.items.emplace_back(std::move(text));
    }
}

std::vector<double> distinct(std::vector<double> values) {
    constexpr double same_in = 1e-4;
    std::sort(values.begin(), values.end());
    values.erase(
        std::unique(values.begin(), values.end(), [](double one, double other) { return other - one < same_in; }),
        values.end());
    return values;
}

}  // namespace toehold::drawing
