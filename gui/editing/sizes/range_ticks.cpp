#include "editing/sizes/range_ticks.h"

#include "editing/fields.h"

#include <fmt/format.h>

#include <algorithm>

namespace toehold::editing {

void Ticks::add(const std::string& words, Phrase label) {
    if (!there_.insert(words).second) return;
    const bool on = std::find(wanted_.begin(), wanted_.end(), words) != wanted_.end();
    ticks_.push_back({words, std::move(label), on});
}

std::vector<RangeTick> Ticks::taken() {
    for (const std::string& words : std::vector(wanted_)) add(words, format::verbatim(words));
    return std::move(ticks_);
}

std::optional<Spread> spread_of(std::vector<double> values) {
    if (values.empty()) return std::nullopt;
    std::sort(values.begin(), values.end());
    Spread spread{values.front(), values.back(), values.back() - values.front()};
    for (std::size_t at = 1; at < values.size(); ++at) {
        const double step = values[at] - values[at - 1];
        if (step > 1e-9) spread.step = std::min(spread.step, step);
    }
    if (spread.step <= 0.0) spread.step = 1.0;
    return spread;
}

std::vector<RangeEntry> run_entries(const std::optional<Spread>& spread, units::Kind kind, units::System system) {
    const auto text = [&](double value) { return spread ? shown(value, kind, system) : std::string(); };
    const Spread run = spread.value_or(Spread{});
    return {{"from", phrase("from"), text(run.from), kind},
            {"to", phrase("to"), text(run.to), kind},
            {"step", phrase("step"), text(run.step), kind}};
}

void add_run(RangeRow& row, const char* words, Phrase label, std::vector<RangeEntry> entries) {
    row.ticks.push_back({words, std::move(label), false});
    row.entries = std::move(entries);
    row.use = EntriesUse::last;
}

std::string plain(double value) { return fmt::format("{:.9g}", value); }

std::vector<RangeRow> range_rows(const catalog::Catalog& catalog, const Ranges& start, units::System system) {
    return start.side.empty() ? plate_rows(catalog, start, system) : side_rows(catalog, start, system);
}

}  // namespace toehold::editing
