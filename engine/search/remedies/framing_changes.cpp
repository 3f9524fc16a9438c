// Other blocks, what holds their ends, and help from the framing beyond.
#include "model/placement.h"
#include "search/changes/blocks.h"
#include "search/changes/ends.h"
#include "search/changes/rows.h"
#include "search/remedies/menu.h"

#include <algorithm>
#include <cmath>
#include <functional>
#include <set>
#include <utility>

namespace toehold::search {
namespace {

using catalog::Resolved;
using format::Dimension;
using format::Listed;
using format::Phrase;
using format::phrase;
using format::Quantity;
using model::BaseDetail;
using model::Block;

/// `between J2 and J3`, once for each pair.
Listed bays_of(const std::vector<const Block*>& blocks) {
    std::set<std::pair<std::string, std::string>> pairs;
    Listed bays;
    for (const Block* block : blocks) {
        const auto pair = std::pair(block->from_end.joist, block->to_end.joist);
        if (!pair.first.empty() && !pair.second.empty() && pairs.insert(pair).second)
            bays.items.push_back(phrase("between {} and {}", pair.first, pair.second));
    }
    return bays;
}

double longest_in(const std::vector<const Block*>& blocks) {
    double longest = 0.0;
    for (const Block* block : blocks) longest = std::max(longest, block->to_in - block->from_in);
    return longest;
}

std::vector<const Block*> loaded_blocks(const BaseDetail& detail) {
    const std::vector<std::string> ids = blocks_with_anchors(detail);
    std::vector<const Block*> blocks;
    for (const Block& block : detail.framing.blocks) {
        if (std::find(ids.begin(), ids.end(), block.id) != ids.end()) blocks.push_back(&block);
    }
    return blocks;
}

/// From the post's center to the inner face of the nearest rim.
double rim_face_in(const model::Framing& framing) {
    double nearest_in = 1e6;
    for (const model::Rim& rim : framing.rims)
        nearest_in = std::min(nearest_in, std::abs(rim.at_in) - 0.5 * rim.width_in * rim.plies);
    return nearest_in;
}

/// The change, refused also where it leaves every block as it was.
std::function<Applied(BaseDetail&)> if_blocks_differ(std::function<Applied(BaseDetail&)> change) {
    return [change = std::move(change)](BaseDetail& detail) {
        const std::vector<Block> before = detail.framing.blocks;
        Applied made = change(detail);
        if (made && detail.framing.blocks == before) return refused(phrase("every block stays as it is"));
        return made;
    };
}

Phrase upright_words(const BaseDetail& changed) {
    const std::vector<const Block*> blocks = loaded_blocks(changed);
    if (blocks.empty()) return phrase("Set a block on edge under each row of anchors.");
    return phrase("Blocks under the anchors: {} pieces of {} on edge, {} long, {}, one under each row of anchors.",
                  blocks.size(), blocks.front()->size, Dimension{longest_in(blocks)}, bays_of(blocks));
}

Change upright(std::string id, const Lumber& of, const std::vector<std::string>& replaced) {
    return {std::move(id), "blocks", if_blocks_differ([of, replaced](BaseDetail& detail) {
                return blocks_under_rows(detail, of, Lie::upright, 1, replaced);
            }),
            upright_words};
}

/// Where the rows stand too close for a block under each.
Change flat(const Lumber& of, const std::vector<std::string>& replaced) {
    return {"flat-block", "blocks",
            if_blocks_differ([of, replaced](BaseDetail& detail) { return one_flat_block(detail, of, replaced); }),
            [](const BaseDetail& changed) {
                const std::vector<const Block*> blocks = loaded_blocks(changed);
                if (blocks.empty()) return phrase("Lay one flat block under all anchors.");
                return phrase(
                    "Blocks under the anchors: {} pieces of {} laid flat, {} long, {}, under all rows of "
                    "anchors together.",
                    blocks.size(), blocks.front()->size, Dimension{longest_in(blocks)}, bays_of(blocks));
            }};
}

/// Where an anchor stands in the rim, whose piece is too narrow beside it.
Change back_from_rim(const Lumber& of) {
    return {"set-back", "blocks",
            [of](BaseDetail& detail) {
                double moved_in = 0.0;
                return set_back_from_rim(detail, of, moved_in);
            },
            [of](const BaseDetail& changed) {
                const std::vector<const Block*> blocks = loaded_blocks(changed);
                return phrase(
                    "Set the post back from the rim so that no anchor stands in it, and block under every row "
                    "of anchors: {} pieces of {} on edge, {} long, {}; the rim's inner face is then {} from "
                    "the post's center.",
                    blocks.size(), of.size, Dimension{longest_in(blocks)}, bays_of(blocks),
                    Dimension{rim_face_in(changed.framing)});
            }};
}

/// This size where it goes in, else the deepest that does.
Lumber size_or_deepest(const std::vector<Lumber>& sizes, const std::string& name) {
    const auto found = std::find_if(sizes.begin(), sizes.end(), [&](const Lumber& one) { return one.size == name; });
    return found == sizes.end() ? sizes.back() : *found;
}

/// A 4x8 where it goes in, else the deepest that does; then as deep as the joists; then wider; then clear of the rim.
std::vector<Change> upright_blocks(const Resolved& resolved, const catalog::Catalog& catalog) {
    constexpr double deepest_in = 7.25;
    const std::vector<Lumber> sizes = sizes_on_edge(resolved.detail.framing, catalog, deepest_in);
    if (sizes.empty()) return {};
    const std::vector<std::string> replaced = blocks_with_anchors(resolved.detail);
    const Lumber common = size_or_deepest(sizes, "4x8");
    std::vector<Change> changes{upright("upright-blocks", common, replaced)};
    if (sizes.back().size != common.size) changes.push_back(upright("full-depth-blocks", sizes.back(), replaced));
    constexpr int wide_in = 6;  // for an anchor that stands too near a 4x block's faces
    const std::vector<Lumber> wide = sizes_on_edge(resolved.detail.framing, catalog, deepest_in, wide_in);
    if (!wide.empty()) changes.push_back(upright("wider-blocks", size_or_deepest(wide, "6x8"), replaced));
    changes.push_back(back_from_rim(common));
    changes.push_back(flat(common, replaced));
    return changes;
}

Change second_block() {
    return {"second-block", "blocks", block_under_free_row, [](const BaseDetail& changed) {
                const std::vector<const Block*> blocks = loaded_blocks(changed);
                const Block& added = changed.framing.blocks.back();
                return phrase("Add a block like the first, {} long, {}, under the row of anchors that has none.",
                              Dimension{added.to_in - added.from_in}, bays_of({&added}));
            }};
}

Change next_bay() {
    return {"next-bay", "next-bay", blocks_into_next_bay, [](const BaseDetail& changed) {
                return phrase(
                    "Extend the blocks into the next joist bay, each piece fastened as the first: {} pieces "
                    "in all.",
                    changed.framing.blocks.size());
            }};
}

Change doubled_joists() {
    return {"doubled-joists", "joists", double_joists, [](const BaseDetail& changed) {
                Listed names;
                for (const model::Joist& joist : changed.framing.joists->members) {
                    if (joist.plies > 1) names.items.push_back(format::verbatim(joist.id));
                }
                return phrase(
                    "Nail a second joist, full length, to the side away from the blocks of these joists: {}. "
                    "Support and fasten both pieces as one joist is now.",
                    names);
            }};
}

/// How many ends of blocks a member holds.
std::size_t held_ends(const BaseDetail& detail) {
    std::size_t ends = 0;
    for (const Block& block : detail.framing.blocks)
        ends += std::size_t{!block.from_end.joist.empty()} + std::size_t{!block.to_end.joist.empty()};
    return ends;
}

Phrase angles_words(const BaseDetail& changed) {
    for (const Block& block : changed.framing.blocks) {
        const auto* const at = std::get_if<model::SideAngles>(&block.from_end.connection);
        const auto* const angle = at != nullptr ? at : std::get_if<model::SideAngles>(&block.to_end.connection);
        if (angle == nullptr) continue;
        return phrase(
            "At the block ends: {} steel angles, upright on both sides of each of the {} ends, with {} bolts "
            "of {} in each leg, {} apart, through block and joist.",
            Dimension{angle->thickness_in}, held_ends(changed), angle->per_leg, Dimension{angle->diameter_in},
            Dimension{angle->spacing_in});
    }
    return phrase("At the block ends: steel angles on both sides, bolted through block and joist.");
}

Phrase hardware_words(const BaseDetail& changed, double vertical_lb) {
    double depth_in = 24.0;
    for (const Block& block : changed.framing.blocks) depth_in = std::min(depth_in, block.depth_in * block.stack);
    const LeastValues least = least_values(vertical_lb, depth_in);
    return phrase(
        "At the block ends: hardware on both sides of each of the {} ends whose report gives an end at least "
        "{} up and down, {} lateral, and {} against pulling away over {} of height, fastened to within {} of "
        "the block's top and bottom.",
        held_ends(changed), Quantity{least.vertical_lb, "lb"}, Quantity{least.lateral_lb, "lb"},
        Quantity{least.pull_lb, "lb"}, Dimension{least.height_in}, Dimension{least.to_edges_in});
}

Change with_hardware(std::string id, double vertical_lb) {
    return {std::move(id), "ends",
            if_blocks_differ([vertical_lb](BaseDetail& detail) { return reported_hardware(detail, vertical_lb); }),
            [vertical_lb](const BaseDetail& changed) { return hardware_words(changed, vertical_lb); }, "hardware"};
}

}  // namespace

std::vector<Change> framing_changes(const Resolved& resolved, const catalog::Catalog& catalog) {
    std::vector<Change> changes{second_block()};
    for (Change& change : upright_blocks(resolved, catalog)) changes.push_back(std::move(change));
    constexpr double usual_lb = 1600.0, heavy_lb = 2400.0;
    changes.push_back(doubled_joists());
    changes.push_back({"end-angles", "ends", if_blocks_differ(bolted_angles), angles_words});
    changes.push_back(with_hardware("end-hardware", usual_lb));
    changes.push_back(with_hardware("heavy-end-hardware", heavy_lb));
    changes.push_back(next_bay());
    return changes;
}

}  // namespace toehold::search
