#include "study/tornado.h"

#include "search/run/parallel.h"

#include <algorithm>
#include <cmath>

namespace toehold::study {
namespace {

using format::phrase;

/// Down (-1) or up (+1); absent: no smaller, or no larger, size.
std::optional<double> changed(const Field& field, int way) {
    if (field.sizes.empty()) return *field.now * (1.0 + way * small_change);
    const auto at = std::find_if(field.sizes.begin(), field.sizes.end(), [&field](const Size& size) {
        return std::abs(size.value - *field.now) <= 1e-9 * size.value;
    });
    if (at == field.sizes.end()) return std::nullopt;
    if (way < 0) return at == field.sizes.begin() ? std::nullopt : std::optional(std::prev(at)->value);
    return std::next(at) == field.sizes.end() ? std::nullopt : std::optional(std::next(at)->value);
}

SwingSide side_of(const Subject& subject, const Field& field, int way, demand::Kept& kept) {
    const std::optional<double> value = changed(field, way);
    if (value) return {*value, judge(subject, {field}, {{field.id, *value}}, &kept)};
    SwingSide none{*field.now, {}};
    none.judged.refusal = way < 0 ? phrase("there is no smaller size") : phrase("there is no larger size");
    return none;
}

double change(const Judged& now, const SwingSide& side) {
    if (!now.governing || !side.judged.known() || !side.judged.governing) return 0.0;
    return std::abs(side.judged.governing->ratio - now.governing->ratio);
}

}  // namespace

Tornado tornado(const Subject& subject, const Run& run) {
    std::vector<Field> all = fields(subject);
    std::erase_if(all, [](const Field& field) { return !field.now; });
    std::vector<std::optional<SwingSide>> sides(2 * all.size());
    std::optional<Judged> now;
    Tornado result;
    result.stopped = !search::for_each_index(sides.size() + 1, run, [&](std::size_t index, demand::Kept& kept) {
        if (index == 0) {
            now = judge(subject, all, {}, &kept);
        } else {
            sides[index - 1] = side_of(subject, all[(index - 1) / 2], (index - 1) % 2 == 0 ? -1 : 1, kept);
        }
    });
    if (!now) {
        result.now.refusal = phrase("stopped");
        return result;
    }
    result.now = std::move(*now);
    for (std::size_t field = 0; field < all.size(); ++field) {
        if (!sides[2 * field] || !sides[2 * field + 1]) continue;
        Swing swing{all[field], std::move(*sides[2 * field]), std::move(*sides[2 * field + 1])};
        swing.size = std::max(change(result.now, swing.down), change(result.now, swing.up));
        result.swings.push_back(std::move(swing));
    }
    std::stable_sort(result.swings.begin(), result.swings.end(),
                     [](const Swing& one, const Swing& other) { return one.size > other.size; });
    return result;
}

}  // namespace toehold::study
