#include "editing/sizes/range_rows.h"

#include "editing/fields.h"
#include "units/quantity.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <set>
#include <utility>

namespace toehold::editing {
namespace {

using format::phrase;
using format::Phrase;
using search::Ranges;

/// Adds what is not there yet, and ticks what the ranges have.
class Ticks {
  public:
    explicit Ticks(std::vector<std::string> wanted) : wanted_(std::move(wanted)) {}
    void add(const std::string& words, Phrase label) {
        if (!there_.insert(words).second) return;
        const bool on = std::find(wanted_.begin(), wanted_.end(), words) != wanted_.end();
        ticks_.push_back({words, std::move(label), on});
    }
    /// What the ranges have beside that.
    [[nodiscard]] std::vector<RangeTick> taken() {
        for (const std::string& words : std::vector(wanted_)) add(words, format::verbatim(words));
        return std::move(ticks_);
    }

  private:
    std::vector<std::string> wanted_;
    std::set<std::string> there_;
    std::vector<RangeTick> ticks_;
};

/// First, last and least step of some values.
struct Spread {
    double from = 0.0, to = 0.0, step = 0.0;
};
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

std::vector<RangeEntry> run_of(const std::optional<Spread>& spread, units::Kind kind, units::System system) {
    const auto text = [&](double value) { return spread ? shown(value, kind, system) : std::string(); };
    const Spread run = spread.value_or(Spread{});
    return {{"from", phrase("from"), text(run.from), kind},
            {"to", phrase("to"), text(run.to), kind},
            {"step", phrase("step"), text(run.step), kind}};
}

std::string size_words(const search::PlateSize& size) { return plain(size.width_in) + "x" + plain(size.depth_in); }

/// Behind what is there already, off: the run that the entries make.
void add_run(RangeRow& row, const char* words, Phrase label, std::vector<RangeEntry> entries) {
    row.ticks.push_back({words, std::move(label), false});
    row.entries = std::move(entries);
    row.use = EntriesUse::last;
}

RangeRow plates(const catalog::Catalog& catalog, const Ranges& start, units::System system) {
    const auto text = [system](double value) { return shown(value, units::Kind::length, system); };
    std::vector<std::string> wanted;
    std::vector<search::PlateSize> sizes;
    for (const search::PlateChoice& choice : start.plates) {
        if (const auto* stock = std::get_if<search::StockPlate>(&choice)) {
            wanted.push_back(stock->id);
        } else {
            sizes.push_back(std::get<search::PlateSize>(choice));
            wanted.push_back(size_words(sizes.back()));
        }
    }
    Ticks ticks(wanted);
    for (const search::PlateSize& size : sizes)
        ticks.add(size_words(size), phrase("{} by {}", text(size.width_in), text(size.depth_in)));
    for (const model::Plate& plate : catalog.stock_plates) ticks.add(plate.id, phrase("stock: {}", plate.name));
    RangeRow row{
        "plate", phrase("Plate"), phrase("Rectangles cut to size, or stock plates as they are."), ticks.taken(),
        {},      EntriesUse::last};
    add_run(row, "sizes", phrase("every size, as typed below"),
            {{"from", phrase("width from"), text(6.0)},
             {"to", phrase("to"), text(10.0)},
             {"depth-from", phrase("depth from"), text(6.0)},
             {"depth-to", phrase("to"), text(10.0)},
             {"step", phrase("step"), text(1.0)}});
    return row;
}

RangeRow thicknesses(const Ranges& start, units::System system) {
    std::vector<std::string> wanted;
    for (const double one : start.thicknesses_in) wanted.push_back(plain(one));
    Ticks ticks(wanted);
    for (const double one : {0.25, 0.375, 0.5, 0.625, 0.75, 1.0}) {
        ticks.add(plain(one), format::verbatim(shown(one, units::Kind::length, system)));
    }
    for (const double one : start.thicknesses_in) {
        ticks.add(plain(one), format::verbatim(shown(one, units::Kind::length, system)));
    }
    return {"thickness", phrase("Plate thickness"), phrase("Of plates cut to size."), ticks.taken(),
            {},          EntriesUse::none};
}

RangeRow metals(const catalog::Catalog& catalog, const Ranges& start) {
    Ticks ticks(start.metals);
    for (const catalog::Metal& metal : catalog.metals) ticks.add(metal.id, format::verbatim(metal.name));
    return {"metal", phrase("Plate material"), phrase("Of plates cut to size."), ticks.taken(), {}, EntriesUse::none};
}

RangeRow anchors(const catalog::Catalog& catalog, const Ranges& start) {
    std::vector<std::string> wanted;
    for (const search::AnchorChoice& choice : start.anchors)
        wanted.push_back(choice.grade.empty() ? choice.size : choice.size + " " + choice.grade);
    Ticks ticks(wanted);
    for (const auto& size : catalog.lag_screws) ticks.add(size.id, format::verbatim(size.name));
    for (const auto& size : catalog.bolts) {
        for (const auto& grade : catalog.bolt_grades)
            ticks.add(size.id + " " + grade.id, phrase("{}, {}", size.name, grade.name));
    }
    for (const auto& size : catalog.wood_screws) ticks.add(size.id, format::verbatim(size.name));
    return {"anchor", phrase("Anchors"), phrase("Lag screws, bolts and threaded rods, wood screws."), ticks.taken(),
            {},       EntriesUse::none};
}

RangeRow lengths(const Ranges& start, units::System system) {
    std::vector<std::string> wanted;
    for (const double one : start.lengths_in) wanted.push_back(plain(one));
    Ticks ticks(wanted);
    for (const double one : start.lengths_in)
        ticks.add(plain(one), format::verbatim(shown(one, units::Kind::length, system)));
    RangeRow row{"length",
                 phrase("Screw length"),
                 phrase("Of lag and wood screws; a bolt is as long as it must be."),
                 ticks.taken(),
                 {},
                 EntriesUse::last};
    add_run(row, "", phrase("every length, as typed below"),
            run_of(Spread{4.0, 10.0, 1.0}, units::Kind::length, system));
    return row;
}

RangeRow patterns(const Ranges& start, units::System system) {
    const auto words = [](int across, int deep) { return fmt::format("{}x{}", across, deep); };
    std::vector<std::string> wanted;
    std::vector<double> edges;
    for (const search::Pattern& pattern : start.patterns) {
        wanted.push_back(words(pattern.across, pattern.deep));
        edges.push_back(pattern.edge_in);
    }
    Ticks ticks(wanted);
    constexpr std::array<std::pair<int, int>, 8> grids{
        {{2, 2}, {3, 2}, {2, 3}, {3, 3}, {4, 2}, {2, 4}, {1, 2}, {2, 1}}};
    const auto add = [&](int across, int deep) {
        ticks.add(words(across, deep), phrase("{} along the rail by {} outward", across, deep));
    };
    for (const auto& [across, deep] : grids) add(across, deep);
    for (const search::Pattern& pattern : start.patterns) add(pattern.across, pattern.deep);
    RangeRow row{"pattern",
                 phrase("Hole pattern"),
                 phrase("Rows and columns of holes, and their edge distance."),
                 ticks.taken(),
                 run_of(spread_of(edges), units::Kind::length, system),
                 EntriesUse::multiply};
    row.entries.front().label = phrase("edge distance from");
    return row;
}

RangeRow washers(const Ranges& start) {
    using search::WasherChoice;
    const std::array<std::pair<WasherChoice, const char*>, 3> all{
        {{WasherChoice::none, "none"}, {WasherChoice::narrow, "narrow"}, {WasherChoice::wide, "wide"}}};
    std::vector<std::string> wanted;
    for (const auto& [choice, words] : all) {
        if (std::find(start.washers.begin(), start.washers.end(), choice) != start.washers.end())
            wanted.emplace_back(words);
    }
    Ticks ticks(wanted);
    ticks.add("none", phrase("none"));
    ticks.add("narrow", phrase("narrow washer"));
    ticks.add("wide", phrase("wide washer"));
    return {"washer", phrase("Washer under the head"), phrase("On the plate."), ticks.taken(), {}, EntriesUse::none};
}

RangeRow backings(const Ranges& start, units::System system) {
    using Kind = search::BackingChoice::Kind;
    const auto words = [](const search::BackingChoice& choice) -> std::string {
        if (choice.kind == Kind::none) return "none";
        if (choice.kind == Kind::wide_washer) return "washer";
        return plain(choice.side_in) + "x" + plain(choice.thickness_in);
    };
    std::vector<std::string> wanted;
    for (const search::BackingChoice& choice : start.backings) wanted.push_back(words(choice));
    Ticks ticks(wanted);
    ticks.add("none", phrase("none"));
    ticks.add("washer", phrase("wide washer"));
    const auto add = [&](const search::BackingChoice& choice) {
        if (choice.kind != Kind::plate) return;
        const auto text = [system](double value) { return shown(value, units::Kind::length, system); };
        ticks.add(words(choice), phrase("square plate {} by {}", text(choice.side_in), text(choice.thickness_in)));
    };
    for (const auto& [side, thick] : {std::pair{2.0, 0.25}, {3.0, 0.25}, {3.0, 0.375}, {4.0, 0.375}})
        add({Kind::plate, side, thick});
    for (const search::BackingChoice& choice : start.backings) add(choice);
    return {"backing", phrase("Under the nut"), phrase("What a bolt's nut bears on below the framing."), ticks.taken(),
            {},        EntriesUse::none};
}

RangeRow blocks(const Ranges& start) {
    using search::BlockArrangement;
    struct Named {
        BlockArrangement value;
        const char* words;
        Phrase label;
    };
    const std::vector<Named> all{
        {BlockArrangement::as_is, "as-is", phrase("as in the detail")},
        {BlockArrangement::upright_rows, "upright", phrase("one on edge under each row of anchors")},
        {BlockArrangement::doubled_rows, "doubled", phrase("two side by side on edge under each row")},
        {BlockArrangement::flat_under_all, "flat", phrase("one flat under all rows")},
        {BlockArrangement::flat_rows, "flat-rows", phrase("one flat under each row")},
        {BlockArrangement::doubled_joists, "doubled-joists", phrase("one on edge under each row, joists doubled")},
        {BlockArrangement::into_next_bay, "next-bay", phrase("one on edge under each row, into the next bays")}};
    std::vector<std::string> wanted;
    for (const Named& one : all) {
        if (std::find(start.blocks.begin(), start.blocks.end(), one.value) != start.blocks.end())
            wanted.emplace_back(one.words);
    }
    Ticks ticks(wanted);
    for (const Named& one : all) ticks.add(one.words, one.label);
    return {"blocks", phrase("Blocks"), phrase("How they stand under the anchors."), ticks.taken(),
            {},       EntriesUse::none};
}

RangeRow block_sizes(const Ranges& start) {
    Ticks ticks(start.block_sizes);
    for (const char* size : {"2x6", "2x8", "2x10", "4x4", "4x6", "4x8", "4x10", "4x12", "6x6", "6x8", "6x10"})
        ticks.add(size, format::verbatim(size));
    return {"block-size", phrase("Block size"), phrase("By the name it is ordered by."), ticks.taken(),
            {},           EntriesUse::none};
}

RangeRow ends(const Ranges& start, units::System system) {
    using Kind = search::EndChoice::Kind;
    const auto hardware = [](double force_lb) { return "hardware " + plain(force_lb); };
    const auto force = [system](double value) { return shown(value, units::Kind::force, system); };
    std::vector<std::string> wanted;
    for (const search::EndChoice& choice : start.ends) {
        if (choice.kind == Kind::as_is) wanted.emplace_back("as-is");
        if (choice.kind == Kind::bolted_angles) wanted.emplace_back("angles");
        if (choice.kind == Kind::hardware) wanted.push_back(hardware(choice.force_lb));
    }
    Ticks ticks(wanted);
    ticks.add("as-is", phrase("as in the detail"));
    ticks.add("angles", phrase("bolted angles"));
    for (const search::EndChoice& choice : start.ends) {
        if (choice.kind == Kind::hardware)
            ticks.add(hardware(choice.force_lb), phrase("hardware, {} up and down", force(choice.force_lb)));
    }
    RangeRow row{"ends", phrase("Block ends"), phrase("What joins the blocks to the joists."), ticks.taken(),
                 {},     EntriesUse::last};
    add_run(row, "hardware", phrase("hardware of every force, as typed below"),
            run_of(Spread{1000.0, 2000.0, 500.0}, units::Kind::force, system));
    return row;
}

}  // namespace

std::string plain(double value) { return fmt::format("{:.9g}", value); }

std::vector<RangeRow> range_rows(const catalog::Catalog& catalog, const Ranges& start, units::System system) {
    return {plates(catalog, start, system),
            thicknesses(start, system),
            metals(catalog, start),
            anchors(catalog, start),
            lengths(start, system),
            patterns(start, system),
            washers(start),
            backings(start, system),
            blocks(start),
            block_sizes(start),
            ends(start, system)};
}

}  // namespace toehold::editing
