#pragma once
// What a result, a link, a finding, a remark, a mark on a drawing or a selection is about: one value, never a sentence.
// A part is of a kind; where there are several of the kind it has an id; a member's end or the place where one part is
// held by another says so too.
#include <compare>
#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace toehold::format {
struct Phrase;
}

namespace toehold::model {

struct BaseDetail;

/// In the order of the load path, from the guard down.
enum class PartKind {
    none,  ///< nothing, or nothing in particular
    base,  ///< the whole mounted base
    push,
    guard,
    rail,  ///< a span of a guard line's rail, by its ends: `P1-P2`
    post,
    shoe,
    weld,
    plate,
    corner,    ///< of the plate's outline, by its number, from 1
    hole,      ///< of the plate, or a place up a post's side, by its id; the anchor in it is a part of its own
    anchor,    ///< by its hole's id
    tie,       ///< that holds a post's side, by its id
    fastener,  ///< what a group of anchors is made of, by the name the user gave it; all anchors without an id
    decking,   ///< the layer under the plate
    packing,   ///< the spacers through the boards, together
    shim,      ///< by its number, from 1
    block,     ///< without an id: the blocks together; so for joist, rim, ledger, beam
    joist,
    rim,
    ledger,
    beam,
    lower_plate,  ///< under a group of bolts, by the ids of the holes of that group
    boards,       ///< the deck boards as what holds the joists' tops
    framing,      ///< everything below the plate and its layers
    stiffness,    ///< the basis of a stiffness
    plug_in,      ///< what a check from a shared library names, by its own words
};

/// Which piece of the part.
enum class PartPiece {
    whole,
    lower_end,      ///< of a member, along its axis
    upper_end,      ///< of a member, along its axis
    along_x,        ///< members that run along the rail
    along_y,        ///< members that run outward
    supports,       ///< what holds a member: a block's ends, a joist's supports, the joists at a rim
    at_anchors,     ///< of the plate: where anchors bend it
    at_toe,         ///< of the plate: where bearing bends it
    past_anchor,    ///< of the plate: beyond its anchors
    not_described,  ///< one of the kind that the file should name and does not; of kind none: nothing at all
};

struct PartId {
    PartKind kind = PartKind::none;
    std::string id = {};  ///< any text a file may hold; empty where the kind alone says it
    PartPiece piece = PartPiece::whole;
    /// Where the part is held by another (`joist J1 at ledger S1`): the other's kind and id.
    PartKind at_kind = PartKind::none;
    std::string at_id = {};

    friend bool operator==(const PartId&, const PartId&) = default;
    // The check takes the 0 of a three-way comparison for a pointer.
    friend std::strong_ordering operator<=>(const PartId&, const PartId&) = default;  // NOLINT(modernize-use-nullptr)
};

// The usual ones.
[[nodiscard]] PartId anchor_part(std::string id);
[[nodiscard]] PartId hole_part(std::string id);
/// By their place in the detail's list, from 0.
[[nodiscard]] PartId corner_part(std::size_t index);
[[nodiscard]] PartId shim_part(std::size_t index);
/// Between two posts of a guard line; an empty id is the wall.
[[nodiscard]] PartId rail_part(const std::string& from, const std::string& to);
/// The plate below the bolts of this group, by its number in the mount.
[[nodiscard]] PartId lower_plate_part(const BaseDetail& detail, std::size_t group);
/// The part held at another: `block B1 at joist J2`.
[[nodiscard]] PartId held_at(PartId part, const PartId& holder);
/// The part without its piece and without what holds it: what a drawing marks and a person selects.
[[nodiscard]] PartId whole(const PartId& part);

[[nodiscard]] bool contains(const std::vector<PartId>& parts, const PartId& part);

/// The word of files and JSON for a kind: `anchor`, `block`, `plug-in`; empty for none.
[[nodiscard]] std::string_view kind_word(PartKind kind);
/// A stable text for files, JSON and tests: `anchor A`, `block B1 at joist J2`, `block B1, upper end`. English, never
/// translated, never taken apart again: `find_part` looks it up.
[[nodiscard]] std::string key(const PartId& part);
/// As short as a symbol: the id, or the word of its kind where it has none.
[[nodiscard]] std::string symbol(const PartId& part);
/// Its name for people.
[[nodiscard]] format::Phrase part_name(const PartId& part);

/// Every whole part of a detail, in the order of the load path.
[[nodiscard]] std::vector<PartId> parts(const BaseDetail& detail);
/// The one of `candidates` with this key; absent where none has it.
[[nodiscard]] std::optional<PartId> find_part(const std::vector<PartId>& candidates, std::string_view key);

}  // namespace toehold::model
