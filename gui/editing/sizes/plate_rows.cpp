// What may vary of a plate on the deck, its holes and the blocks under it.
#include "editing/fields.h"
#include "editing/sizes/range_ticks.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <utility>

namespace toehold::editing {
namespace {

std::string size_words(const search::PlateSize& size) { return plain(size.width_in) + "x" + plain(size.depth_in); }

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
                 run_entries(spread_of(edges), units::Kind::length, system),
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

}  // namespace

std::vector<RangeRow> plate_rows(const catalog::Catalog& catalog, const Ranges& start, units::System system) {
    return {plates(catalog, start, system),
            thicknesses(start, system),
            metals(catalog, start),
            anchor_row(catalog, start),
            length_row(start, system),
            patterns(start, system),
            washers(start),
            backing_row(start, system, phrase("What a bolt's nut bears on below the framing.")),
            blocks(start),
            block_sizes(start),
            end_row(start, system)};
}

}  // namespace toehold::editing
