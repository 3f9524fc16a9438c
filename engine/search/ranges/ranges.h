#pragma once
// What a fabricator is willing to build, as plain values: the ranges a search goes through. `make_space` turns them
// into axes of changes of one base detail. A list left empty leaves that thing as the base detail has it.
#include "catalog/catalog.h"
#include "catalog/resolve.h"
#include "model/problem.h"
#include "search/changes/pattern.h"
#include "search/ranges/side_ranges.h"
#include "search/space/space.h"

#include <string>
#include <string_view>
#include <variant>
#include <vector>

namespace toehold::search {

/// A plate of the stock file, taken as it is: outline, holes, thickness and metal. Anchors that do not go through its
/// holes, and other thicknesses and metals, are no candidates with it.
struct StockPlate {
    std::string id;  ///< of a plate in data/plates
    friend bool operator==(const StockPlate&, const StockPlate&) = default;
};

/// A rectangle cut to size about the base plate's center. Where no pattern is asked for its holes keep the distances
/// to the edges that they had.
struct PlateSize {
    double width_in = 0.0;  ///< along x, > 0
    double depth_in = 0.0;  ///< along y, > 0
    friend bool operator==(const PlateSize&, const PlateSize&) = default;
};
using PlateChoice = std::variant<StockPlate, PlateSize>;

/// Lag screws, wood screws and bolts by catalog id; a bolt with a grade (a threaded rod is a bolt of a rod's grade).
struct AnchorChoice {
    std::string size;   ///< `lag-3/8`, `wood-screw-14`, `bolt-1/2`
    std::string grade;  ///< of a bolt: `a307`, `f1554-36`; empty of a screw
    friend bool operator==(const AnchorChoice&, const AnchorChoice&) = default;
};

/// Under the head, on the plate.
enum class WasherChoice { none, narrow, wide };

/// What a bolt's nut bears on below the framing. Screws have nothing there.
struct BackingChoice {
    enum class Kind { none, wide_washer, plate };
    Kind kind = Kind::wide_washer;
    double side_in = 0.0;       ///< of a square plate
    double thickness_in = 0.0;  ///< of a plate, > 0
    friend bool operator==(const BackingChoice&, const BackingChoice&) = default;
};

/// How the blocks stand under the anchors.
enum class BlockArrangement {
    as_is,           ///< as the base detail has them
    upright_rows,    ///< one on edge under each row of anchors
    doubled_rows,    ///< two side by side on edge under each row
    flat_under_all,  ///< one flat under all rows
    flat_rows,       ///< one flat under each row
    doubled_joists,  ///< one on edge under each row, and the joists that hold them doubled on their far sides
    into_next_bay,   ///< one on edge under each row, carried on into the next joist bays
};

/// What joins the blocks' ends to the joists.
struct EndChoice {
    enum class Kind {
        as_is,
        bolted_angles,  ///< steel angles on both sides, 3/8 in bolts through block and joist
        hardware        ///< reported hardware on both sides with the least values `force_lb` stands for
    };
    Kind kind = Kind::as_is;
    double force_lb = 0.0;  ///< of hardware: allowable up and down, each end, 100 to 100,000
    friend bool operator==(const EndChoice&, const EndChoice&) = default;
};

struct Ranges {
    std::vector<PlateChoice> plates;
    std::vector<double> thicknesses_in;
    std::vector<std::string> metals;  ///< of the plate, catalog ids
    std::vector<AnchorChoice> anchors;
    std::vector<double> lengths_in;  ///< of screws; a bolt is as long as it must be
    std::vector<Pattern> patterns;
    std::vector<WasherChoice> washers;
    std::vector<BackingChoice> backings;
    std::vector<BlockArrangement> blocks;
    std::vector<std::string> block_sizes;  ///< nominal names, `4x8`
    std::vector<EndChoice> ends;
    SideRanges side = {};  ///< of a post on a member's side alone
    friend bool operator==(const Ranges&, const Ranges&) = default;
};

/// The axes of what is asked for, in the order of `Ranges` (of a post on a member's side, of `side_axes`), which is the
/// order in which a candidate is put together. An option that cannot be built with those before it (a screw and a
/// backing plate) does not apply there. Throws std::invalid_argument for an id no catalog knows; `parse_range` and
/// `problems` find those first.
[[nodiscard]] Space make_space(const catalog::Resolved& base, const Ranges& ranges, const catalog::Catalog& catalog);

/// What keeps these ranges from being searched on this detail: an id no catalog knows, a size its lumber is not listed
/// for, screws without a length. Empty where make_space takes them.
[[nodiscard]] model::Problems problems(const catalog::Resolved& base, const Ranges& ranges,
                                       const catalog::Catalog& catalog);

/// What a shop would try for this detail, some thousand candidates.
[[nodiscard]] Ranges default_ranges(const catalog::Resolved& base, const catalog::Catalog& catalog);

/// Puts one `KEY=VALUES` of the command line into the ranges, in place of what that key had:
///
///     plate=5x5..8x8/1         every size from 5 x 5 to 8 x 8 in steps of 1 in each way; also 6x6,plate-6x8-1/2
///     thickness=3/8,1/2        or 3/8..3/4/1/8 in steps of 1/8 in
///     metal=steel-a36
///     anchor=lag-1/2,bolt-1/2,bolt-1/2 f1554-36
///     length=6..10/1
///     pattern=2x2@1 1/2,2x3@1 1/2   holes along x by rows along y, at this distance from the edges; 2x2:4x5 at 4 in
///                                   along x and 5 in along y about the plate's center
///     washer=none,narrow,wide
///     backing=none,washer,3x1/4     square plate by its thickness
///     blocks=as-is,upright,doubled,flat,flat-rows,doubled-joists,next-bay
///     block-size=4x8,2x10
///     ends=as-is,angles,hardware 1600
///
/// and of a post on a member's side, beside anchor, length, backing and ends:
///
///     plies=1,2                pieces of the rim or joist it is fastened to
///     behind=as-is,4x10        block behind it, which the fasteners go through
///     next-joist=as-is,2x10    blocks from an end joist to the next joist, to both sides of the post
///     rim-ends=as-is,hardware 1600
///     post-size=4x4,4x6,6x6
///     notch=as-is,none
///     bottom=9,9 1/4           the post's lower end below the member's top
///     bracket=3/8,1/2          thickness of the plate a metal post is welded to
///     heights=2:7,1 1/2:7 1/2  of the upper and the lower fasteners below the member's top
///     head=washer,3x1/4        square plate by its thickness
///     ties=as-is,hardware 1800
///
/// Lengths are in inches unless they say otherwise. The problem says what was found and what would be accepted.
[[nodiscard]] model::Problems parse_range(std::string_view text, const catalog::Catalog& catalog, Ranges& ranges);

}  // namespace toehold::search
