#include "search/changes/blocks.h"
#include "search/changes/ends.h"
#include "search/changes/rows.h"
#include "search/ranges/axes.h"

#include <memory>
#include <stdexcept>

namespace toehold::search {
namespace {

using format::phrase;
using model::BaseDetail;

/// The base's framing as every option of blocks reads it.
struct Before {
    BaseDetail base;
    std::vector<std::string> loaded;  ///< ids of the blocks its anchors stand in
};

Applied arrange(BaseDetail& detail, BlockArrangement arrangement, const std::optional<Lumber>& of,
                const Before& before) {
    if (arrangement == BlockArrangement::as_is) {
        Applied follow = blocks_follow(detail, before.base);
        return follow && of ? set_block_lumber(detail, *of, before.loaded) : follow;
    }
    if (!of) return refused(phrase("no size is known for a new block"));
    constexpr int doubled = 2;
    switch (arrangement) {
        case BlockArrangement::as_is:
            break;
        case BlockArrangement::upright_rows:
            return blocks_under_rows(detail, *of, Lie::upright, 1, before.loaded);
        case BlockArrangement::doubled_rows:
            return blocks_under_rows(detail, *of, Lie::upright, doubled, before.loaded);
        case BlockArrangement::flat_under_all:
            return one_flat_block(detail, *of, before.loaded);
        case BlockArrangement::flat_rows:
            return blocks_under_rows(detail, *of, Lie::flat, 1, before.loaded);
        case BlockArrangement::doubled_joists:
            if (Applied set = blocks_under_rows(detail, *of, Lie::upright, 1, before.loaded); !set) return set;
            return double_joists(detail);
        case BlockArrangement::into_next_bay:
            if (Applied set = blocks_under_rows(detail, *of, Lie::upright, 1, before.loaded); !set) return set;
            return blocks_into_next_bay(detail);
    }
    throw std::logic_error("an arrangement of blocks of no kind");
}

/// The sizes asked for; without any the base's own, which an arrangement as it is keeps.
std::vector<std::optional<Lumber>> lumber_asked(const Asked& asked, BlockArrangement arrangement) {
    std::vector<std::optional<Lumber>> all;
    for (const std::string& name : asked.ranges.block_sizes) {
        const std::optional<Lumber> size = lumber(name);
        if (!size) throw std::invalid_argument("no size of lumber is " + name);
        all.emplace_back(size);
    }
    if (!all.empty()) return all;
    if (arrangement == BlockArrangement::as_is) return {std::nullopt};
    return {lumber_of_blocks(asked.base.detail.framing)};
}

Axis blocks(const Asked& asked, const std::vector<BlockArrangement>& arrangements) {
    Axis axis{"blocks", phrase("Blocks"), {}};
    const auto before =
        std::make_shared<const Before>(Before{asked.base.detail, blocks_with_anchors(asked.base.detail)});
    for (const BlockArrangement arrangement : arrangements) {
        for (const std::optional<Lumber>& of : lumber_asked(asked, arrangement)) {
            std::string text(word(arrangement));
            if (of && !of->size.empty()) text += " " + of->size;
            axis.options.push_back({std::move(text), [arrangement, of, before](BaseDetail& detail) {
                                        return arrange(detail, arrangement, of, *before);
                                    }});
        }
    }
    return axis;
}

Axis ends(const Asked& asked) {
    Axis axis{"ends", phrase("Block ends"), {}};
    for (const EndChoice& choice : asked.ranges.ends) {
        axis.options.push_back({label(choice), [choice](BaseDetail& detail) {
                                    switch (choice.kind) {
                                        case EndChoice::Kind::as_is:
                                            return Applied{};
                                        case EndChoice::Kind::bolted_angles:
                                            return bolted_angles(detail);
                                        case EndChoice::Kind::hardware:
                                            break;
                                    }
                                    return reported_hardware(detail, choice.force_lb);
                                }});
    }
    return axis;
}

}  // namespace

std::vector<Axis> framing_axes(const Asked& asked) {
    const Ranges& ranges = asked.ranges;
    std::vector<BlockArrangement> arrangements = ranges.blocks;
    // Anchors that move take their blocks along, whether or not anything else is asked of those.
    if (arrangements.empty() && (!ranges.plates.empty() || !ranges.patterns.empty() || !ranges.block_sizes.empty()))
        arrangements = {BlockArrangement::as_is};
    std::vector<Axis> axes;
    if (!arrangements.empty()) axes.push_back(blocks(asked, arrangements));
    if (!ranges.ends.empty()) axes.push_back(ends(asked));
    return axes;
}

}  // namespace toehold::search
