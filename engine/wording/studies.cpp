#include "wording/studies.h"

#include "format/figures.h"
#include "study/study.h"
#include "wording/status.h"

#include <algorithm>
#include <map>

namespace toehold::wording {
namespace {

using format::Phrase;
using format::phrase;

Phrase stopped() { return phrase("Stopped before all of it was computed."); }

/// From the first to the last of a row of values of which the same is true.
struct Stretch {
    const study::SweepPoint* from = nullptr;
    const study::SweepPoint* to = nullptr;
};

/// Of one verdict, and where that is not ADEQUATE for the same reason.
bool same_verdict(const study::Judged& one, const study::Judged& other) {
    if (!one.known() || !other.known() || one.verdict != other.verdict) return false;
    return one.holds() || one.limit == other.limit;
}

std::vector<Stretch> stretches(const study::Sweep& sweep) {
    std::vector<Stretch> all;
    for (const study::SweepPoint& point : sweep.points) {
        const bool goes_on =
            !all.empty() && all.back().to == &point - 1 && same_verdict(all.back().to->judged, point.judged);
        if (goes_on) all.back().to = &point;
        if (!goes_on && point.judged.known()) all.push_back({&point, &point});
    }
    return all;
}

using Stretches = std::vector<Stretch>;

/// `36 in to 42 in`, `48 in`.
Phrase values_of(const study::Sweep& sweep, const Stretches& all, units::System system) {
    std::vector<Phrase> items;
    for (const Stretch& one : all) {
        const std::string from = study::value_words(sweep.field, one.from->value, system);
        const std::string to = study::value_words(sweep.field, one.to->value, system);
        items.push_back(one.from == one.to ? format::verbatim(from) : phrase("{} to {}", from, to));
    }
    if (items.size() == 1) return items.front();
    return phrase("{}", format::Listed{std::move(items)});
}

/// Of the points that this is true of.
template <class Belongs>
Stretches stretches_of(const study::Sweep& sweep, const Belongs& belongs) {
    Stretches all;
    for (const study::SweepPoint& point : sweep.points) {
        if (!belongs(point)) continue;
        const bool goes_on = !all.empty() && all.back().to == &point - 1;
        if (goes_on) all.back().to = &point;
        if (!goes_on) all.push_back({&point, &point});
    }
    return all;
}

/// What holds, then what does not and why.
void add_verdicts(std::vector<Phrase>& notes, const study::Sweep& sweep, units::System system) {
    constexpr std::size_t most = 6;
    Stretches holding;
    std::vector<Phrase> failing;
    for (const Stretch& one : stretches(sweep)) {
        const study::Judged& judged = one.from->judged;
        if (judged.holds()) {
            holding.push_back(one);
        } else if (failing.size() < most) {
            failing.push_back(
                phrase("{}: {}, {}.", values_of(sweep, {one}, system), word(judged.verdict), limit(judged.limit)));
        }
    }
    notes.push_back(holding.empty()
                        ? phrase("None of the values computed is ADEQUATE.")
                        : phrase("ADEQUATE at the values computed: {}.", values_of(sweep, holding, system)));
    notes.insert(notes.end(), failing.begin(), failing.end());
}

/// Each reason once, with the values it is for.
void add_refusals(std::vector<Phrase>& notes, const study::Sweep& sweep, units::System system) {
    std::vector<Phrase> told;
    for (const study::SweepPoint& point : sweep.points) {
        const Phrase& reason = point.judged.refusal;
        if (point.judged.known() || std::find(told.begin(), told.end(), reason) != told.end()) continue;
        told.push_back(reason);
        const Stretches where = stretches_of(sweep, [&reason](const study::SweepPoint& one) {
            return !one.judged.known() && one.judged.refusal == reason;
        });
        notes.push_back(phrase("No number at {}: {}.", values_of(sweep, where, system), reason));
    }
}

bool lacks_path(const study::SweepPoint& point, const std::string& check) {
    const std::vector<study::CheckRatio>& all = point.judged.no_path;
    return std::any_of(all.begin(), all.end(), [&check](const study::CheckRatio& one) { return one.check == check; });
}

/// Checks that have no load path at the same values are told together.
void add_no_path(std::vector<Phrase>& notes, const study::Sweep& sweep, units::System system) {
    std::map<std::string, Phrase> titles;
    for (const study::SweepPoint& point : sweep.points) {
        for (const study::CheckRatio& one : point.judged.no_path) titles[one.check] = one.title;
    }
    std::map<std::vector<const study::SweepPoint*>, std::vector<Phrase>> together;
    for (const auto& [check, title] : titles) {
        std::vector<const study::SweepPoint*> where;
        for (const study::SweepPoint& point : sweep.points) {
            if (lacks_path(point, check)) where.push_back(&point);
        }
        together[where].push_back(title);
    }
    for (auto& [where, names] : together) {
        const Stretches all = stretches_of(sweep, [&where = where](const study::SweepPoint& point) {
            return std::find(where.begin(), where.end(), &point) != where.end();
        });
        notes.push_back(phrase("No load path, and so no ratio to draw, at {}: {}.", values_of(sweep, all, system),
                               format::Listed{std::move(names)}));
    }
}

void add_unmoved(std::vector<Phrase>& notes, const study::Tornado& tornado) {
    constexpr double shown = 0.005;
    std::vector<Phrase> names;
    for (const study::Swing& swing : tornado.swings) {
        const bool known = swing.down.judged.known() || swing.up.judged.known();
        if (known && swing.size < shown) names.push_back(swing.field.name);
    }
    if (names.empty()) return;
    notes.push_back(phrase("Inputs that move it by less than 0.01: {}.", format::Listed{std::move(names)}));
}

void add_sides_without_number(std::vector<Phrase>& notes, const study::Tornado& tornado, units::System system) {
    for (const study::Swing& swing : tornado.swings) {
        for (const study::SwingSide* const side : {&swing.down, &swing.up}) {
            if (side->judged.known() || side->value == swing.field.now) continue;
            notes.push_back(phrase("No number for {} {}: {}.", swing.field.name,
                                   study::value_words(swing.field, side->value, system), side->judged.refusal));
        }
    }
}

Phrase not_steady(const study::HoldingMap& map, const study::NotSteady& turn, units::System system) {
    const bool upward = turn.axis == study::MapAxis::up;
    const study::Field& along = upward ? map.up : map.across;
    const study::Field& line = upward ? map.across : map.up;
    return phrase("at {} {} between {} and {}", line.name, study::value_words(line, turn.line, system),
                  study::value_words(along, turn.from, system), study::value_words(along, turn.to, system));
}

/// How many points each limit stops, the most first.
void add_stopped_by(std::vector<Phrase>& notes, const study::HoldingMap& map) {
    std::vector<std::pair<std::size_t, Phrase>> counts;
    for (const study::MapNode& node : map.nodes) {
        if (!node.judged.known() || node.judged.holds()) continue;
        const Phrase& title = node.judged.limit.title;
        const auto same =
            std::find_if(counts.begin(), counts.end(), [&title](const auto& one) { return one.second == title; });
        if (same != counts.end()) ++same->first;
        if (same == counts.end()) counts.emplace_back(1, title);
    }
    std::stable_sort(counts.begin(), counts.end(),
                     [](const auto& one, const auto& other) { return one.first > other.first; });
    std::vector<Phrase> items;
    items.reserve(counts.size());
    for (const auto& [count, title] : counts) items.push_back(phrase("{} ({})", title, count));
    if (!items.empty()) notes.push_back(phrase("The others are stopped by: {}.", format::Listed{std::move(items)}));
}

}  // namespace

Phrase limit(const study::Limit& limit) {
    const model::PartKind kind = limit.part.kind;
    const bool says_nothing =
        kind == model::PartKind::none || kind == model::PartKind::base || kind == model::PartKind::guard;
    if (says_nothing) return limit.title;
    return result(limit.title, limit.part);
}

Phrase judged(const study::Judged& judged) {
    if (!judged.known()) return judged.refusal;
    if (!judged.no_path.empty()) return phrase("no load path, {}: {}", word(judged.verdict), limit(judged.limit));
    if (!judged.governing) return phrase("{}: {}", word(judged.verdict), limit(judged.limit));
    return phrase("demand/capacity {}, {}: {}", format::ratio_text(judged.governing->ratio), word(judged.verdict),
                  limit(judged.limit));
}

std::vector<Phrase> notes(const study::Sweep& sweep, units::System system) {
    std::vector<Phrase> all;
    add_verdicts(all, sweep, system);
    add_refusals(all, sweep, system);
    add_no_path(all, sweep, system);
    if (sweep.stopped) all.push_back(stopped());
    return all;
}

std::vector<Phrase> notes(const study::Tornado& tornado, units::System system) {
    std::vector<Phrase> all;
    if (!tornado.now.known()) {
        all.push_back(phrase("{}.", tornado.now.refusal));
        return all;
    }
    if (tornado.now.governing) {
        const study::CheckRatio& now = *tornado.now.governing;
        all.push_back(
            phrase("Governing ratio now: {}, {} ({}). Each input 10% less and 10% more, or one size down and "
                   "up; all others as they are.",
                   format::ratio_text(now.ratio), result(now.title, now.part), word(tornado.now.verdict)));
    } else {
        all.push_back(phrase("No strength has a ratio now."));
    }
    std::vector<Phrase> no_path;
    for (const study::CheckRatio& one : tornado.now.no_path) no_path.push_back(result(one.title, one.part));
    if (!no_path.empty())
        all.push_back(phrase("No load path, and so no ratio to move: {}.", format::Listed{std::move(no_path)}));
    add_unmoved(all, tornado);
    add_sides_without_number(all, tornado, system);
    if (tornado.stopped) all.push_back(stopped());
    return all;
}

std::vector<Phrase> notes(const study::HoldingMap& map, units::System system) {
    std::vector<Phrase> all;
    const auto holds = std::count_if(map.nodes.begin(), map.nodes.end(),
                                     [](const study::MapNode& node) { return node.judged.holds(); });
    all.push_back(phrase("ADEQUATE at {} of the {} points computed.", holds, map.nodes.size()));
    add_stopped_by(all, map);
    std::vector<Phrase> turns;
    for (const study::NotSteady& turn : map.not_steady) turns.push_back(not_steady(map, turn, system));
    constexpr std::size_t most = 4;
    const std::size_t more = turns.size() > most ? turns.size() - most : 0;
    turns.resize(turns.size() - more);
    if (!turns.empty()) {
        all.push_back(
            phrase("The ratio does not rise or fall steadily {}: between those points other borders are "
                   "possible.",
                   format::Listed{std::move(turns)}));
    }
    if (more > 0) all.push_back(phrase("The same in {} more places.", more));
    if (!map.borders.empty())
        all.push_back(
            phrase("The border is drawn where the last point computed holds, within {} of where the next "
                   "does not.",
                   format::Dimension{map.within}));
    const bool coarse = std::any_of(map.borders.begin(), map.borders.end(),
                                    [](const study::MapBorder& border) { return !border.steady; });
    if (coarse) all.push_back(phrase("A broken line: the border lies somewhere between two points computed."));
    if (map.stopped) all.push_back(stopped());
    return all;
}

}  // namespace toehold::wording
