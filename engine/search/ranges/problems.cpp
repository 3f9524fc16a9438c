// What keeps ranges from becoming a space of this detail, said before a search finds nothing.
#include "catalog/closest_ids.h"
#include "search/changes/anchors.h"
#include "search/changes/blocks.h"
#include "search/ranges/axes.h"

#include <algorithm>
#include <array>
#include <string_view>
#include <utility>

namespace toehold::search {
namespace {

using format::phrase;
using model::Problem;
using model::Problems;

Problem at(std::string_view key, const std::string& found, format::Phrase accepted, format::Phrase message) {
    return {{}, 0, std::string(key), format::verbatim(found), std::move(accepted), std::move(message)};
}

bool is_screw(const AnchorChoice& anchor) { return anchor.grade.empty(); }

/// A screw in place of a bolt or of a fastener from a report has no length yet.
void check_lengths(const catalog::Resolved& base, const Ranges& ranges, Problems& problems) {
    if (!ranges.lengths_in.empty()) return;
    const bool has_length = std::all_of(base.anchors.begin(), base.anchors.end(), [](const catalog::Anchor& anchor) {
        return anchor.kind == catalog::FastenerKind::lag_screw || anchor.kind == catalog::FastenerKind::wood_screw;
    });
    const auto screw = std::find_if(ranges.anchors.begin(), ranges.anchors.end(), is_screw);
    if (!has_length && screw != ranges.anchors.end())
        problems.push_back(at("length", label(*screw), phrase("the lengths to try, for instance length=6..10/1"),
                              phrase("the detail's anchors are no screws, so these have no length")));
}

/// Sections the catalogs have no design values for in the blocks' grade.
void check_sizes(const catalog::Resolved& base, const Ranges& ranges, const catalog::Catalog& catalog,
                 Problems& problems) {
    const std::optional<Wood> wood = wood_of_blocks(base.detail.framing);
    if (!wood || wood->grade.empty()) return;  // none, or a material of the file's own
    for (const std::string& name : ranges.block_sizes) {
        const std::optional<Lumber> size = lumber(name);
        if (!size) {
            problems.push_back(at("block-size", name, phrase("2x4 to 12x12"), phrase("no size of lumber")));
        } else if (find_grade(catalog, wood->species, wood->grade, {size->thickness_in, size->width_in}) == nullptr) {
            problems.push_back(at("block-size", name, phrase("sizes the grade is listed for"),
                                  phrase("{} {} is not listed for this size", wood->species, wood->grade)));
        }
    }
}

void check_arrangements(const catalog::Resolved& base, const Ranges& ranges, Problems& problems) {
    const bool all_as_is = std::all_of(ranges.blocks.begin(), ranges.blocks.end(),
                                       [](BlockArrangement one) { return one == BlockArrangement::as_is; });
    if (base.detail.framing.blocks.empty() && !all_as_is && ranges.block_sizes.empty())
        problems.push_back(at("block-size", {}, phrase("the sizes to try, for instance block-size=4x8,2x10"),
                              phrase("the detail has no block whose size a new one could have")));
}

void check_ids(const Ranges& ranges, const catalog::Catalog& catalog, Problems& problems) {
    for (const std::string& id : asked_stock(ranges)) {
        if (catalog::find(catalog.stock_plates, id) == nullptr)
            problems.push_back(catalog::unknown_id(id, catalog::ids_of(catalog.stock_plates), "plate", "plate"));
    }
    for (const std::string& id : ranges.metals) {
        if (find(catalog.metals, id) == nullptr)
            problems.push_back(catalog::unknown_id(id, catalog::ids_of(catalog.metals), "metal", "metal"));
    }
    for (const AnchorChoice& anchor : ranges.anchors) {
        if (!fastener_size(catalog, anchor.size, anchor.grade))
            problems.push_back(at("anchor", label(anchor), phrase("a screw, or a bolt with its grade"),
                                  phrase("no fastener in the catalogs is this")));
    }
}

/// Keys of the one kind of mount asked of the other.
void check_mount(const catalog::Resolved& base, const Ranges& ranges, Problems& problems) {
    const bool side = kind(base.detail.mount) == model::MountKind::side_fastened;
    const auto refuse = [&](std::string_view key) {
        problems.push_back(at(key, {},
                              side ? phrase("plies, behind, next-joist, rim-ends, post-size, notch, bottom, bracket, "
                                            "anchor, length, heights, head, backing, ties, ends")
                                   : phrase("plate, thickness, metal, anchor, length, pattern, washer, backing, "
                                            "blocks, block-size, ends"),
                              side ? phrase("a post on a member's side has no such range")
                                   : phrase("only a post on a member's side has such a range")));
    };
    const std::array<std::pair<std::string_view, bool>, 7> of_plates{{{"plate", !ranges.plates.empty()},
                                                                      {"thickness", !ranges.thicknesses_in.empty()},
                                                                      {"metal", !ranges.metals.empty()},
                                                                      {"pattern", !ranges.patterns.empty()},
                                                                      {"washer", !ranges.washers.empty()},
                                                                      {"blocks", !ranges.blocks.empty()},
                                                                      {"block-size", !ranges.block_sizes.empty()}}};
    const SideRanges& sides = ranges.side;
    const std::array<std::pair<std::string_view, bool>, 11> of_sides{{{"plies", !sides.plies.empty()},
                                                                      {"behind", !sides.behind.empty()},
                                                                      {"next-joist", !sides.next_joist.empty()},
                                                                      {"rim-ends", !sides.rim_ends_lb.empty()},
                                                                      {"post-size", !sides.post_sizes.empty()},
                                                                      {"bottom", !sides.post_bottoms_in.empty()},
                                                                      {"notch", !sides.unnotched.empty()},
                                                                      {"bracket", !sides.brackets_in.empty()},
                                                                      {"heights", !sides.heights.empty()},
                                                                      {"head", !sides.heads.empty()},
                                                                      {"ties", !sides.ties_lb.empty()}}};
    if (side) {
        for (const auto& [key, asked] : of_plates)
            if (asked) refuse(key);
    } else {
        for (const auto& [key, asked] : of_sides)
            if (asked) refuse(key);
    }
}

/// Posts its wood's grade is not listed for.
void check_posts(const catalog::Resolved& base, const Ranges& ranges, const catalog::Catalog& catalog,
                 Problems& problems) {
    const auto* const post = std::get_if<model::WoodPost>(&base.detail.post);
    for (const std::string& name : ranges.side.post_sizes) {
        const std::optional<Lumber> size = lumber(name);
        if (post == nullptr) {
            problems.push_back(
                at("post-size", name, phrase("a detail with a wood post"), phrase("the post is of metal")));
        } else if (!post->grade.empty() && size &&
                   find_grade(catalog, post->species, post->grade, {size->thickness_in, size->width_in}) == nullptr) {
            problems.push_back(at("post-size", name, phrase("sizes the grade is listed for"),
                                  phrase("{} {} is not listed for this size", post->species, post->grade)));
        }
    }
}

}  // namespace

Problems problems(const catalog::Resolved& base, const Ranges& ranges, const catalog::Catalog& catalog) {
    Problems found;
    check_ids(ranges, catalog, found);
    check_lengths(base, ranges, found);
    check_sizes(base, ranges, catalog, found);
    check_arrangements(base, ranges, found);
    check_mount(base, ranges, found);
    check_posts(base, ranges, catalog, found);
    return found;
}

}  // namespace toehold::search
