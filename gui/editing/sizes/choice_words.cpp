#include "editing/sizes/choice_words.h"

#include "editing/fields.h"

#include <algorithm>
#include <array>

namespace toehold::editing {
namespace {

using format::phrase;
using format::Phrase;

const RangeRow* row_of(const std::vector<RangeRow>& rows, const std::string& key) {
    const auto found = std::find_if(rows.begin(), rows.end(), [&](const RangeRow& row) { return row.key == key; });
    return found == rows.end() ? nullptr : &*found;
}

const RangeTick* tick_of(const RangeRow& row, const std::string& words) {
    const auto found =
        std::find_if(row.ticks.begin(), row.ticks.end(), [&](const RangeTick& tick) { return tick.words == words; });
    return found == row.ticks.end() ? nullptr : &*found;
}

/// Text before and after the first of this letter; nothing after where there is none.
std::pair<std::string, std::string> parted(const std::string& text, char at) {
    const std::size_t place = text.find(at);
    if (place == std::string::npos) return {text, {}};
    return {text.substr(0, place), text.substr(place + 1)};
}

/// `2x2@1 1/8`.
Phrase pattern_words(const RangeRow& row, const std::string& label, units::System system) {
    const auto [grid, edge] = parted(label, '@');
    const RangeTick* const tick = tick_of(row, grid);
    const units::Parsed edge_in = units::parse(edge + " in", units::Kind::length);
    if (tick == nullptr || !edge_in.value) return format::verbatim(label);
    return phrase("{}, {} from the edges", tick->label, shown(*edge_in.value, units::Kind::length, system));
}

/// `upright 4x10`.
Phrase block_words(const RangeRow& row, const std::string& label) {
    const auto [arrangement, size] = parted(label, ' ');
    const RangeTick* const tick = tick_of(row, arrangement);
    if (tick == nullptr) return format::verbatim(label);
    return size.empty() ? tick->label : phrase("{}, {}", size, tick->label);
}

}  // namespace

Phrase choice_words(const std::vector<RangeRow>& rows, const std::string& axis, const std::string& label,
                    units::System system) {
    const RangeRow* const row = row_of(rows, axis);
    if (row == nullptr) return format::verbatim(label);
    Phrase words = format::verbatim(label);
    if (axis == "pattern") words = pattern_words(*row, label, system);
    if (axis == "blocks") words = block_words(*row, label);
    if (const RangeTick* const tick = tick_of(*row, label)) words = tick->label;
    constexpr std::array clear{"plate", "thickness", "metal", "anchor", "pattern"};
    if (std::find(clear.begin(), clear.end(), axis) != clear.end()) return words;
    return phrase("{}: {}", row->title, std::move(words));
}

}  // namespace toehold::editing
