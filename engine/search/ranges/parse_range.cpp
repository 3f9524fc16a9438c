#include "catalog/closest_ids.h"
#include "search/ranges/axes.h"
#include "search/ranges/range_reader.h"
#include "search/ranges/read_choices.h"
#include "units/scan.h"

#include <algorithm>
#include <array>

namespace toehold::search {
namespace {

using catalog::Catalog;
using format::Phrase;
using format::phrase;
using model::Problems;

/// One of these words.
template <class Value, std::size_t count>
std::optional<Value> by_word(const std::array<Value, count>& choices, std::string_view text) {
    for (const Value choice : choices) {
        if (word(choice) == text) return choice;
    }
    return std::nullopt;
}

void read_plates(Reader& reader, std::string_view values, Ranges& ranges) {
    const Phrase accepted = phrase("sizes as 6x6, steps as 5x5..8x8/1, or ids of stock plates (toehold list plates)");
    read_each(reader, values, ranges.plates, accepted,
              [&](const std::string& text) { return plates_of(text, reader.catalog); });
}

void read_metals(Reader& reader, std::string_view values, Ranges& ranges) {
    const std::vector<std::string> metals = between_commas(values);
    for (const std::string& metal : metals) {
        if (find(reader.catalog.metals, metal) == nullptr)
            reader.problems.push_back(
                catalog::unknown_id(metal, catalog::ids_of(reader.catalog.metals), "metal", reader.key));
    }
    if (reader.problems.empty()) keep(reader, metals, ranges.metals);
}

/// Every id an anchor can have.
std::vector<std::string> anchor_ids(const Catalog& catalog) {
    std::vector<std::string> ids = catalog::ids_of(catalog.lag_screws);
    for (const auto& more : {catalog::ids_of(catalog.bolts), catalog::ids_of(catalog.wood_screws)})
        ids.insert(ids.end(), more.begin(), more.end());
    return ids;
}

void read_anchors(Reader& reader, std::string_view values, Ranges& ranges) {
    const std::vector<std::string> known = anchor_ids(reader.catalog);
    std::vector<AnchorChoice> anchors;
    for (const std::string& text : between_commas(values)) {
        const AnchorChoice choice = anchor_of(text, reader.catalog);
        const bool bolt = find(reader.catalog.bolts, choice.size) != nullptr;
        if (std::find(known.begin(), known.end(), choice.size) == known.end()) {
            reader.problems.push_back(catalog::unknown_id(choice.size, known, "fastener", reader.key));
        } else if (!bolt && !choice.grade.empty()) {
            reader.refuse(text, format::verbatim(choice.size), phrase("a screw has no grade"));
        } else if (bolt && find(reader.catalog.bolt_grades, choice.grade) == nullptr) {
            reader.problems.push_back(catalog::unknown_id(choice.grade, catalog::ids_of(reader.catalog.bolt_grades),
                                                          "bolt grade", reader.key));
        }
        anchors.push_back(choice);
    }
    if (reader.problems.empty()) keep(reader, anchors, ranges.anchors);
}

void read_patterns(Reader& reader, std::string_view values, Ranges& ranges) {
    read_each(
        reader, values, ranges.patterns,
        phrase("holes along x by rows along y, up to 12 each and 2 together, at their distance from the edges, as "
               "2x2@1 1/2, or at their spacing, as 2x2:4x5"),
        [](const std::string& text) { return one_or_none(pattern_of(text)); });
}

void read_washers(Reader& reader, std::string_view values, Ranges& ranges) {
    constexpr std::array choices{WasherChoice::none, WasherChoice::narrow, WasherChoice::wide};
    read_each(reader, values, ranges.washers, phrase("none, narrow or wide"),
              [&](const std::string& text) { return one_or_none(by_word(choices, text)); });
}

void read_backings(Reader& reader, std::string_view values, Ranges& ranges) {
    read_each(reader, values, ranges.backings,
              phrase("none, washer, or a square plate's side by its thickness, as 3x1/4"),
              [](const std::string& text) { return one_or_none(backing_of(text)); });
}

void read_blocks(Reader& reader, std::string_view values, Ranges& ranges) {
    constexpr std::array choices{BlockArrangement::as_is,        BlockArrangement::upright_rows,
                                 BlockArrangement::doubled_rows, BlockArrangement::flat_under_all,
                                 BlockArrangement::flat_rows,    BlockArrangement::doubled_joists,
                                 BlockArrangement::into_next_bay};
    read_each(reader, values, ranges.blocks,
              phrase("as-is, upright, doubled, flat, flat-rows, doubled-joists or next-bay"),
              [&](const std::string& text) { return one_or_none(by_word(choices, text)); });
}

void read_ends(Reader& reader, std::string_view values, Ranges& ranges) {
    read_each(
        reader, values, ranges.ends,
        phrase("as-is, angles, or hardware with the least force its report must give, 100 to 100,000 lb, as hardware "
               "1600"),
        [](const std::string& text) { return one_or_none(end_of(text)); });
}

struct Key {
    std::string_view name;
    void (*read)(Reader&, std::string_view, Ranges&);
};

constexpr std::array<Key, 22> keys{{
    {"plate", read_plates},
    {"thickness", [](Reader& r, std::string_view v, Ranges& all) { read_lengths(r, v, all.thicknesses_in); }},
    {"metal", read_metals},
    {"anchor", read_anchors},
    {"length", [](Reader& r, std::string_view v, Ranges& all) { read_lengths(r, v, all.lengths_in); }},
    {"pattern", read_patterns},
    {"washer", read_washers},
    {"backing", read_backings},
    {"blocks", read_blocks},
    {"block-size", [](Reader& r, std::string_view v, Ranges& all) { read_lumber_sizes(r, v, all.block_sizes); }},
    {"ends", read_ends},
    {"plies", read_plies},
    {"behind", [](Reader& r, std::string_view v, Ranges& all) { read_optional_blocks(r, v, all.side.behind); }},
    {"next-joist", [](Reader& r, std::string_view v, Ranges& all) { read_optional_blocks(r, v, all.side.next_joist); }},
    {"rim-ends", [](Reader& r, std::string_view v, Ranges& all) { read_hardware(r, v, all.side.rim_ends_lb); }},
    {"notch", read_notches},
    {"post-size", [](Reader& r, std::string_view v, Ranges& all) { read_lumber_sizes(r, v, all.side.post_sizes); }},
    {"bottom", [](Reader& r, std::string_view v, Ranges& all) { read_lengths(r, v, all.side.post_bottoms_in); }},
    {"bracket", [](Reader& r, std::string_view v, Ranges& all) { read_lengths(r, v, all.side.brackets_in); }},
    {"heights", read_heights},
    {"head", read_heads},
    {"ties", [](Reader& r, std::string_view v, Ranges& all) { read_hardware(r, v, all.side.ties_lb); }},
}};

Phrase key_list() {
    std::string list;
    for (const Key& key : keys) list += (list.empty() ? "" : ", ") + std::string(key.name);
    return phrase("KEY=VALUES with one of these keys: {}", list);
}

}  // namespace

Problems parse_range(std::string_view text, const Catalog& catalog, Ranges& ranges) {
    const std::size_t sign = text.find('=');
    const std::string_view name = units::trimmed(text.substr(0, sign));
    const auto* const key = std::find_if(keys.begin(), keys.end(), [&](const Key& one) { return one.name == name; });
    if (key == keys.end() || sign == std::string_view::npos)
        return {{{}, 0, {}, format::verbatim(std::string(text)), key_list(), phrase("not a range")}};
    Reader reader{key->name, catalog};
    key->read(reader, text.substr(sign + 1), ranges);
    return reader.problems;
}

}  // namespace toehold::search
