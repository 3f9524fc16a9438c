#include "model/part.h"

#include "format/phrase.h"
#include "model/base_detail.h"
#include "model/member.h"

#include <algorithm>
#include <array>
#include <utility>

namespace toehold::model {
namespace {

struct KindWords {
    PartKind kind;
    std::string_view one, several;
};

constexpr std::array<KindWords, 26> kind_words = {{
    {PartKind::base, "base", "base"},
    {PartKind::push, "push", "push"},
    {PartKind::guard, "guard", "guard"},
    {PartKind::rail, "rail", "rail"},
    {PartKind::post, "post", "post"},
    {PartKind::shoe, "shoe", "shoe"},
    {PartKind::weld, "weld", "weld"},
    {PartKind::plate, "plate", "plate"},
    {PartKind::corner, "corner", "corners"},
    {PartKind::hole, "hole", "holes"},
    {PartKind::anchor, "anchor", "anchors"},
    {PartKind::tie, "tie", "ties"},
    {PartKind::fastener, "fastener", "fasteners"},
    {PartKind::decking, "decking", "decking"},
    {PartKind::packing, "packing", "packing"},
    {PartKind::shim, "shim", "shims"},
    {PartKind::block, "block", "blocks"},
    {PartKind::joist, "joist", "joists"},
    {PartKind::rim, "rim", "rims"},
    {PartKind::ledger, "ledger", "ledgers"},
    {PartKind::beam, "beam", "beams"},
    {PartKind::lower_plate, "lower plate", "lower plates"},
    {PartKind::boards, "boards", "boards"},
    {PartKind::framing, "framing", "framing"},
    {PartKind::stiffness, "stiffness", "stiffness"},
    {PartKind::plug_in, "plug-in", "plug-in"},
}};

const KindWords* words_of(PartKind kind) {
    const auto* const found = std::find_if(kind_words.begin(), kind_words.end(),
                                           [kind](const KindWords& words) { return words.kind == kind; });
    return found == kind_words.end() ? nullptr : found;
}

std::string plain_key(PartKind kind, const std::string& id) {
    const KindWords* const words = words_of(kind);
    if (words == nullptr || (kind == PartKind::plug_in && !id.empty())) return id;  // its own words
    return id.empty() ? std::string(words->several) : std::string(words->one) + " " + id;
}

std::string piece_key(PartKind kind, PartPiece piece, const std::string& name) {
    switch (piece) {
        case PartPiece::whole:
            return name;
        case PartPiece::lower_end:
            return name + ", lower end";
        case PartPiece::upper_end:
            return name + ", upper end";
        case PartPiece::along_x:
            return name + " along the rail";
        case PartPiece::along_y:
            return name + " outward and inward";
        case PartPiece::at_anchors:
            return name + " at its anchors";
        case PartPiece::at_toe:
            return name + " at its toe";
        case PartPiece::past_anchor:
            return name + " beyond its anchors";
        case PartPiece::not_described:
            return kind == PartKind::none ? "nothing described" : std::string(kind_word(kind)) + " not described";
        case PartPiece::supports:
            break;
    }
    return (kind == PartKind::block ? "ends of " : kind == PartKind::rim ? "joists at " : "supports of ") + name;
}

format::Phrase name_of(PartKind kind, const std::string& id) {
    using format::phrase;
    const bool one = !id.empty();
    switch (kind) {
        case PartKind::none:
            return {};
        case PartKind::plug_in:
            return one ? format::verbatim(id) : phrase("plug-in");
        case PartKind::base:
            return phrase("base");
        case PartKind::push:
            return phrase("push");
        case PartKind::guard:
            return phrase("guard");
        case PartKind::rail:
            return one ? phrase("rail {}", id) : phrase("rail");
        case PartKind::post:
            return one ? phrase("post {}", id) : phrase("post");
        case PartKind::shoe:
            return phrase("shoe");
        case PartKind::weld:
            return phrase("weld");
        case PartKind::plate:
            return phrase("plate");
        case PartKind::corner:
            return one ? phrase("corner {}", id) : phrase("corners");
        case PartKind::hole:
            return one ? phrase("hole {}", id) : phrase("holes");
        case PartKind::anchor:
            return one ? phrase("anchor {}", id) : phrase("anchors");
        case PartKind::tie:
            return one ? phrase("tie {}", id) : phrase("ties");
        case PartKind::fastener:
            return one ? phrase("fastener {}", id) : phrase("fasteners");
        case PartKind::decking:
            return phrase("decking");
        case PartKind::packing:
            return phrase("packing");
        case PartKind::shim:
            return one ? phrase("shim {}", id) : phrase("shims");
        case PartKind::block:
            return one ? phrase("block {}", id) : phrase("blocks");
        case PartKind::joist:
            return one ? phrase("joist {}", id) : phrase("joists");
        case PartKind::rim:
            return one ? phrase("rim {}", id) : phrase("rims");
        case PartKind::ledger:
            return one ? phrase("ledger {}", id) : phrase("ledgers");
        case PartKind::beam:
            return one ? phrase("beam {}", id) : phrase("beams");
        case PartKind::lower_plate:
            return one ? phrase("lower plate at {}", id) : phrase("lower plates");
        case PartKind::boards:
            return phrase("deck boards");
        case PartKind::framing:
            return phrase("framing");
        case PartKind::stiffness:
            return phrase("stiffness");
    }
    return {};
}

format::Phrase piece_name(const PartId& part) {
    using format::phrase;
    format::Phrase name = name_of(part.kind, part.id);
    switch (part.piece) {
        case PartPiece::whole:
            return name;
        case PartPiece::lower_end:
            return phrase("{}, lower end", std::move(name));
        case PartPiece::upper_end:
            return phrase("{}, upper end", std::move(name));
        case PartPiece::along_x:
            return phrase("{} along the rail", std::move(name));
        case PartPiece::along_y:
            return phrase("{} running outward", std::move(name));
        case PartPiece::at_anchors:
            return phrase("{} at its anchors", std::move(name));
        case PartPiece::at_toe:
            return phrase("{} at its toe", std::move(name));
        case PartPiece::past_anchor:
            return phrase("{} beyond its anchors", std::move(name));
        case PartPiece::not_described:
            return part.kind == PartKind::none ? phrase("nothing specified")
                                               : phrase("{}, not specified", std::move(name));
        case PartPiece::supports:
            break;
    }
    if (part.kind == PartKind::block) return phrase("ends of {}", std::move(name));
    return part.kind == PartKind::rim ? phrase("joists at {}", std::move(name))
                                      : phrase("supports of {}", std::move(name));
}

template <class Range>
void append(std::vector<PartId>& all, PartKind kind, const Range& range) {
    for (const auto& one : range) all.push_back({kind, one.id});
}

void append_parts(std::vector<PartId>& all, const PlateOnDeck& mount) {
    if (mount.weld) all.push_back({PartKind::weld});
    all.push_back({PartKind::plate});
    append(all, PartKind::anchor, mount.plate.holes);
    if (mount.layers.decking) all.push_back({PartKind::decking});
    if (mount.layers.packing) all.push_back({PartKind::packing});
    for (std::size_t i = 0; i < mount.layers.shims.size(); ++i) all.push_back(shim_part(i));
}

void append_parts(std::vector<PartId>& all, const SideFastened& mount) {
    if (mount.bracket) {
        all.push_back({PartKind::weld});
        all.push_back({PartKind::plate});
    }
    append(all, PartKind::anchor, mount.places);
    append(all, PartKind::tie, mount.ties);
    for (std::size_t i = 0; i < mount.layers.size(); ++i) all.push_back(shim_part(i));
    if (mount.decking) all.push_back({PartKind::decking});
}

}  // namespace

PartId anchor_part(std::string id) { return {PartKind::anchor, std::move(id)}; }
PartId hole_part(std::string id) { return {PartKind::hole, std::move(id)}; }
PartId corner_part(std::size_t index) { return {PartKind::corner, std::to_string(index + 1)}; }
PartId shim_part(std::size_t index) { return {PartKind::shim, std::to_string(index + 1)}; }

PartId rail_part(const std::string& from, const std::string& to) {
    constexpr const char* wall = "wall";
    return {PartKind::rail, (from.empty() ? wall : from) + "-" + (to.empty() ? wall : to)};
}

PartId lower_plate_part(const BaseDetail& detail, std::size_t group) {
    PartId part{PartKind::lower_plate};
    for (const std::string& place : anchor_place_ids(detail)) {
        if (anchor_group(detail, place) != &anchor_groups(detail).at(group)) continue;
        part.id += (part.id.empty() ? "" : " ") + place;
    }
    return part;
}

PartId held_at(PartId part, const PartId& holder) {
    part.at_kind = holder.kind;
    part.at_id = holder.id;
    return part;
}

PartId whole(const PartId& part) { return {part.kind, part.id}; }

bool contains(const std::vector<PartId>& parts, const PartId& part) {
    return std::find(parts.begin(), parts.end(), part) != parts.end();
}

std::string_view kind_word(PartKind kind) {
    const KindWords* const words = words_of(kind);
    return words == nullptr ? std::string_view() : words->one;
}

std::string key(const PartId& part) {
    std::string text = piece_key(part.kind, part.piece, plain_key(part.kind, part.id));
    if (part.at_kind != PartKind::none) text += " at " + plain_key(part.at_kind, part.at_id);
    return text;
}

std::string symbol(const PartId& part) { return part.id.empty() ? std::string(kind_word(part.kind)) : part.id; }

format::Phrase part_name(const PartId& part) {
    format::Phrase name = piece_name(part);
    if (part.at_kind == PartKind::none) return name;
    return format::phrase("{} at {}", std::move(name), name_of(part.at_kind, part.at_id));
}

std::vector<PartId> parts(const BaseDetail& detail) {
    std::vector<PartId> all = {{PartKind::push}, {PartKind::guard}, {PartKind::post}};
    std::visit([&all](const auto& mount) { append_parts(all, mount); }, detail.mount);
    append(all, PartKind::block, detail.framing.blocks);
    if (detail.framing.joists) append(all, PartKind::joist, detail.framing.joists->members);
    append(all, PartKind::rim, detail.framing.rims);
    for (const JoistSupport& support : detail.framing.supports) all.push_back(part_of(support));
    const std::vector<AnchorGroup>& groups = anchor_groups(detail);
    for (std::size_t i = 0; i < groups.size(); ++i) {
        if (lower_plate(groups[i]) != nullptr) all.push_back(lower_plate_part(detail, i));
    }
    return all;
}

std::optional<PartId> find_part(const std::vector<PartId>& candidates, std::string_view wanted) {
    const auto found = std::find_if(candidates.begin(), candidates.end(),
                                    [wanted](const PartId& part) { return key(part) == wanted; });
    if (found == candidates.end()) return std::nullopt;
    return *found;
}

}  // namespace toehold::model
