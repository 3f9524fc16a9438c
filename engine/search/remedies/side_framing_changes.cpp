// More pieces of the member, blocks behind it and to the next joist, and what joins it to what holds it.
#include "search/changes/ends.h"
#include "search/changes/side_hardware.h"
#include "search/changes/side_rows.h"
#include "search/changes/side_wood.h"
#include "search/remedies/side_changes.h"

#include "model/side_geometry.h"

#include <algorithm>

namespace toehold::search {
namespace {

using catalog::Resolved;
using format::Dimension;
using format::Phrase;
using format::phrase;
using format::Quantity;
using model::BaseDetail;

constexpr double usual_lb = 1600.0, heavy_lb = 2400.0;  // as at the ends of blocks under a plate

Phrase values_words(const LeastValues& least) {
    return phrase("at least {} up and down, {} lateral, and {} against pulling away over {} of height",
                  Quantity{least.vertical_lb, "lb"}, Quantity{least.lateral_lb, "lb"}, Quantity{least.pull_lb, "lb"},
                  Dimension{least.height_in});
}

Phrase member_name(const model::Member& member) { return model::part_name(model::part_of(member)); }

Change one_more_ply() {
    return {"one-more-ply", "plies",
            [](BaseDetail& detail) {
                const std::optional<model::Member> member = model::side_member(detail);
                return set_member_plies(detail, member ? member->plies + 1 : 0);
            },
            [](const BaseDetail& changed) {
                const model::Member member = model::side_member(changed).value();
                return phrase("Make {} of {} pieces nailed together, each {} x {}.", member_name(member), member.plies,
                              Dimension{model::ply_width_in(member)}, Dimension{member.depth_in});
            }};
}

/// The deepest 4x that the member covers; absent where the wood's grade lists none.
std::optional<Lumber> behind_lumber(const Resolved& resolved, const catalog::Catalog& catalog) {
    const std::optional<model::Member> member = model::side_member(resolved.detail);
    if (!member) return std::nullopt;
    const std::vector<Lumber> sizes = sizes_on_edge(resolved.detail.framing, catalog, member->depth_in);
    return sizes.empty() ? std::nullopt : std::optional(sizes.back());
}

Change behind(const Lumber& of) {
    return {
        "block-behind", "behind", [of](BaseDetail& detail) { return block_behind(detail, of, usual_lb); },
        [of](const BaseDetail& changed) {
            const model::Block& block = changed.framing.blocks.back();
            return phrase(
                "Set a {} block on edge behind {}, {} long between {} and {}, and take the fasteners through it; at "
                "both its ends hardware whose report gives {}.",
                of.size, member_name(model::side_member(changed).value()), Dimension{block.to_in - block.from_in},
                block.from_end.joist, block.to_end.joist, values_words(least_values(usual_lb, block.depth_in)));
        }};
}

/// Of the joists' own size.
std::optional<Lumber> joist_lumber(const BaseDetail& detail) {
    const auto& joists = detail.framing.joists;
    if (!joists || joists->width_in > joists->depth_in) return std::nullopt;
    return Lumber{joists->size, joists->width_in, joists->depth_in};
}

Change to_next_joist(const Lumber& of) {
    return {"blocks-to-next-joist", "next-joist",
            [of](BaseDetail& detail) { return blocks_to_next_joist(detail, of, usual_lb); },
            [](const BaseDetail& changed) {
                const model::Block& block = changed.framing.blocks.back();
                return phrase(
                    "Set a block {} x {} on edge to each side of the post between {} and {}, {} long; at each end "
                    "hardware whose report gives {}.",
                    Dimension{block.width_in}, Dimension{block.depth_in}, block.from_end.joist, block.to_end.joist,
                    Dimension{block.to_in - block.from_in}, values_words(least_values(usual_lb, block.depth_in)));
            }};
}

Change at_rim(std::string id, double vertical_lb) {
    return {std::move(id), "rim-ends", [vertical_lb](BaseDetail& detail) { return rim_hardware(detail, vertical_lb); },
            [vertical_lb](const BaseDetail& changed) {
                const model::Member member = model::side_member(changed).value();
                const double joist_in = changed.framing.joists ? changed.framing.joists->depth_in : member.depth_in;
                return phrase("At each joist's end, to {}: hardware on both sides whose report gives {}.",
                              member_name(member),
                              values_words(least_values(vertical_lb, std::min(member.depth_in, joist_in))));
            },
            "rim-hardware"};
}

/// At the ends of the blocks there are.
Change at_blocks(std::string id, double vertical_lb) {
    return {std::move(id), "ends", [vertical_lb](BaseDetail& detail) { return reported_hardware(detail, vertical_lb); },
            [vertical_lb](const BaseDetail& changed) {
                double depth_in = 24.0;
                for (const model::Block& block : changed.framing.blocks)
                    depth_in = std::min(depth_in, block.depth_in * block.stack);
                return phrase("At the block ends: hardware on both sides whose report gives {}.",
                              values_words(least_values(vertical_lb, depth_in)));
            },
            "hardware"};
}

}  // namespace

std::vector<Change> side_framing_changes(const Resolved& resolved, const catalog::Catalog& catalog) {
    std::vector<Change> changes{one_more_ply()};
    if (const std::optional<Lumber> of = behind_lumber(resolved, catalog)) changes.push_back(behind(*of));
    if (const std::optional<Lumber> of = joist_lumber(resolved.detail)) changes.push_back(to_next_joist(*of));
    changes.push_back(at_rim("rim-hardware", usual_lb));
    changes.push_back(at_rim("heavy-rim-hardware", heavy_lb));
    changes.push_back(at_blocks("end-hardware", usual_lb));
    changes.push_back(at_blocks("heavy-end-hardware", heavy_lb));
    return changes;
}

}  // namespace toehold::search
