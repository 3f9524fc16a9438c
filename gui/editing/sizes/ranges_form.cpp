#include "editing/sizes/ranges_form.h"

#include "editing/fields.h"
#include "editing/sizes/range_rows.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace toehold::editing {
namespace {

using format::phrase;
using format::Phrase;

/// The entry's value in engine units; absent: empty, or not to be read.
std::optional<double> value_of(const RangeRow& row, const std::string& id, units::System system) {
    for (const RangeEntry& entry : row.entries) {
        if (entry.id == id) return typed(entry.text, entry.kind, system);
    }
    return std::nullopt;
}

/// The values from the first to the last by the step.
struct Run {
    std::vector<double> values;
    Phrase refusal;
};

Run run_of(const RangeRow& row, units::System system) {
    constexpr std::size_t most = 1000;
    const auto from = value_of(row, "from", system), to = value_of(row, "to", system),
               step = value_of(row, "step", system);
    if (!from || !to || !step)
        return {{}, phrase("{}: {}", row.title, std::string(units::accepted(row.entries.front().kind)))};
    if (*step <= 0.0) return {{}, phrase("{}: the step must be more than 0.", row.title)};
    if (*to < *from) return {{}, phrase("{}: the last value must not be less than the first.", row.title)};
    const double steps = std::floor((*to - *from) / *step + 1e-6);
    if (steps > static_cast<double>(most)) return {{}, phrase("{}: use a larger step.", row.title)};
    Run run;
    for (std::size_t at = 0; at <= static_cast<std::size_t>(steps); ++at)
        run.values.push_back(*from + static_cast<double>(at) * *step);
    return run;
}

/// Words of the row's values for the command line.
struct Words {
    std::vector<std::string> values;
    Phrase refusal;
};

/// `5x5..8x8/1`.
Words plate_sizes(const RangeRow& row, units::System system) {
    const auto depth_from = value_of(row, "depth-from", system), depth_to = value_of(row, "depth-to", system);
    Run run = run_of(row, system);
    if (!run.refusal.empty()) return {{}, run.refusal};
    if (!depth_from || !depth_to)
        return {{}, phrase("{}: {}", row.title, std::string(units::accepted(units::Kind::length)))};
    if (*depth_to < *depth_from) return {{}, phrase("{}: the last value must not be less than the first.", row.title)};
    const auto pair = [](double width, double depth) { return plain(width) + "x" + plain(depth); };
    const double to = *value_of(row, "to", system);
    return {{pair(run.values.front(), *depth_from) + ".." + pair(to, *depth_to) + "/" +
             plain(*value_of(row, "step", system))},
            {}};
}

/// The values that the last tick stands for.
Words last_values(const RangeRow& row, units::System system) {
    if (row.key == "plate") return plate_sizes(row, system);
    const Run run = run_of(row, system);
    Words words{{}, run.refusal};
    const std::string before = row.ticks.back().words.empty() ? "" : row.ticks.back().words + " ";
    for (const double value : run.values) words.values.push_back(before + plain(value));
    return words;
}

Words values_of(const RangeRow& row, units::System system) {
    Words words;
    Run run;
    const bool any = std::any_of(row.ticks.begin(), row.ticks.end(), [](const RangeTick& tick) { return tick.on; });
    if (row.use == EntriesUse::multiply && any) {
        run = run_of(row, system);
        if (!run.refusal.empty()) return {{}, run.refusal};
    }
    for (const RangeTick& tick : row.ticks) {
        if (!tick.on) continue;
        if (row.use == EntriesUse::last && &tick == &row.ticks.back()) {
            Words last = last_values(row, system);
            if (!last.refusal.empty()) return last;
            words.values.insert(words.values.end(), last.values.begin(), last.values.end());
        } else if (row.use == EntriesUse::multiply) {
            for (const double value : run.values) words.values.push_back(tick.words + "@" + plain(value));
        } else {
            words.values.push_back(tick.words);
        }
    }
    return words;
}

std::string joined(const std::string& key, const std::vector<std::string>& values) {
    if (values.empty()) return {};
    std::string text = key;
    for (const std::string& value : values) {
        text += text.size() == key.size() ? '=' : ',';
        text += value;
    }
    return text;
}

}  // namespace

RangesForm::RangesForm(const catalog::Catalog& catalog, const search::Ranges& start, units::System system)
    : catalog_(catalog), system_(system), rows_(range_rows(catalog, start, system)) {
    read();
}

void RangesForm::tick(std::size_t row, std::size_t tick, bool on) {
    rows_.at(row).ticks.at(tick).on = on;
    read();
}

void RangesForm::tick_all(std::size_t row, bool on) {
    for (RangeTick& tick : rows_.at(row).ticks) tick.on = on;
    read();
}

void RangesForm::type(std::size_t row, std::size_t entry, const std::string& text) {
    rows_.at(row).entries.at(entry).text = text;
    read();
}

std::string RangesForm::argument(std::size_t row) const {
    return joined(rows_[row].key, values_of(rows_[row], system_).values);
}

void RangesForm::read() {
    refusals_.assign(rows_.size(), {});
    search::Ranges ranges;
    bool sound = true;
    for (std::size_t row = 0; row < rows_.size(); ++row) {
        const Words words = values_of(rows_[row], system_);
        refusals_[row] = words.refusal;
        if (words.refusal.empty() && !words.values.empty()) {
            const model::Problems problems =
                search::parse_range(joined(rows_[row].key, words.values), catalog_, ranges);
            if (!problems.empty())
                refusals_[row] =
                    problems.front().accepted.empty() ? problems.front().message : problems.front().accepted;
        }
        sound = sound && refusals_[row].empty();
    }
    ranges_.reset();
    if (!sound) return;
    ranges_ = std::move(ranges);
}

Phrase RangesForm::summary(std::size_t number) const {
    const RangeRow& row = rows_[number];
    if (!refusals_[number].empty()) return refusals_[number];
    constexpr std::size_t told = 2;
    std::vector<Phrase> labels;
    std::size_t on = 0;
    for (const RangeTick& tick : row.ticks) {
        if (tick.on && ++on <= told) labels.push_back(tick.label);
    }
    if (on == 0) return phrase("as in the detail");
    if (on == 1) return labels.front();
    if (on == told) return phrase("{} and {}", labels[0], labels[1]);
    return phrase("{}, {} and {} more", labels[0], labels[1], on - told);
}

}  // namespace toehold::editing
