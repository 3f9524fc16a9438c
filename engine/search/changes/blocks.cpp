#include "search/changes/blocks.h"

#include "model/lumber_size.h"
#include "model/placement.h"
#include "search/changes/anchors.h"
#include "search/changes/ends.h"
#include "search/changes/rows.h"

#include <algorithm>
#include <cmath>

namespace toehold::search {
namespace {

using format::phrase;
using model::BaseDetail;
using model::Block;
using model::Framing;
using model::PlanAxis;
using model::Position;

bool is_named(const std::vector<std::string>& names, const std::string& id) {
    return std::find(names.begin(), names.end(), id) != names.end();
}

Block like_others(const Framing& framing, PlanAxis along) {
    Block block;
    block.along = along;
    if (const std::optional<Wood> wood = wood_of_blocks(framing)) {
        block.species = wood->species;
        block.grade = wood->grade;
    }
    return block;
}

void cut_from(Block& block, const Lumber& of, Lie lie) {
    block.width_in = lie == Lie::upright ? of.thickness_in : of.width_in;
    block.depth_in = lie == Lie::upright ? of.width_in : of.thickness_in;
    block.size = of.size;
}

/// What the ends of a new block in this bay were made for: the block there before, else the new one.
const Block& made_for(const std::vector<Block>& before, const Bay& bay, const Block& after) {
    const auto found = std::find_if(before.begin(), before.end(), [&](const Block& block) {
        const double middle_in = 0.5 * (block.from_in + block.to_in);
        return block.along == after.along && middle_in > bay.from_in && middle_in < bay.to_in;
    });
    if (found != before.end()) return *found;
    return before.empty() ? after : before.front();
}

/// Its connections, as a block of another section has them.
Applied fit_ends(Block& block, const Block& before) {
    for (model::BlockEnd* end : {&block.from_end, &block.to_end}) {
        const std::optional<model::EndConnection> there = fitted(end->connection, before, block);
        if (!there) return refused(phrase("what fastens the block ends does not fit this size"));
        end->connection = *there;
    }
    return {};
}

Applied between_joists(const Framing& framing, const Block& block) {
    constexpr double fit_in = 0.01;
    if (!framing.joists || block.depth_in * block.stack <= framing.joists->depth_in + fit_in) return {};
    return refused(phrase("the block would be deeper than the joists"));
}

/// Whether an anchor of the row stands in the bay and in no member.
bool needs_block(const BaseDetail& detail, const Bay& bay, PlanAxis along, double row_in) {
    for (const Position place : anchor_places(detail)) {
        if (std::abs(model::coordinate_in(place, model::other(along)) - row_in) >= same_row_in) continue;
        const double at_in = model::coordinate_in(place, along);
        if (at_in > bay.from_in && at_in < bay.to_in && !model::seat(detail.framing, place)) return true;
    }
    return false;
}

Applied set_block(BaseDetail& detail, Block block, const Bay& bay, const std::vector<Block>& before) {
    block.id = model::free_member_id(detail.framing, "B");
    block.from_in = bay.from_in;
    block.to_in = bay.to_in;
    block.from_end = bay.from_end;
    block.to_end = bay.to_end;
    if (Applied fits = between_joists(detail.framing, block); !fits) return fits;
    if (Applied fits = fit_ends(block, made_for(before, bay, block)); !fits) return fits;
    detail.framing.blocks.push_back(block);
    return {};
}

void take_away(Framing& framing, const std::vector<std::string>& ids) {
    framing.blocks.erase(std::remove_if(framing.blocks.begin(), framing.blocks.end(),
                                        [&](const Block& block) { return is_named(ids, block.id); }),
                         framing.blocks.end());
}

/// Mean shift of the rows of anchors that lie over the block's width; absent where none does.
std::optional<double> shift_of(const Block& block, const std::vector<double>& before,
                               const std::vector<double>& after) {
    double sum_in = 0.0;
    int count = 0;
    for (std::size_t row = 0; row < before.size(); ++row) {
        if (std::abs(before[row] - block.across_in) > 0.5 * block.width_in * block.plies) continue;
        // The first row stays the first, the last the last; those between go by their share of the way.
        const double share =
            before.size() < 2 ? 0.5 : (before[row] - before.front()) / (before.back() - before.front());
        sum_in += after.front() + share * (after.back() - after.front()) - before[row];
        ++count;
    }
    if (count == 0) return std::nullopt;
    return sum_in / count;
}

}  // namespace

std::optional<Lumber> lumber(std::string_view name) {
    const std::optional<model::DressedSize> size = model::dressed_size(name);
    if (!size) return std::nullopt;
    return Lumber{std::string(name), std::min(size->first_in, size->second_in),
                  std::max(size->first_in, size->second_in)};
}

std::optional<Lumber> lumber_of_blocks(const Framing& framing) {
    if (framing.blocks.empty()) return std::nullopt;
    const Block& block = framing.blocks.front();
    return Lumber{block.size, std::min(block.width_in, block.depth_in), std::max(block.width_in, block.depth_in)};
}

std::optional<Wood> wood_of_blocks(const Framing& framing) {
    if (!framing.blocks.empty()) return Wood{framing.blocks.front().species, framing.blocks.front().grade};
    if (framing.joists) return Wood{framing.joists->species, framing.joists->grade};
    return std::nullopt;
}

std::vector<Lumber> sizes_on_edge(const Framing& framing, const catalog::Catalog& catalog, double deepest_in,
                                  int nominal_thickness_in) {
    const std::optional<Wood> wood = wood_of_blocks(framing);
    if (!wood) return {};
    if (framing.joists) deepest_in = framing.joists->depth_in;
    std::vector<Lumber> sizes;
    for (const char* width : {"6", "8", "10", "12"}) {
        const Lumber size = *lumber(std::to_string(nominal_thickness_in) + "x" + width);
        const bool graded = wood->grade.empty() || find_grade(catalog, wood->species, wood->grade,
                                                              {size.thickness_in, size.width_in}) != nullptr;
        if (graded && size.width_in <= deepest_in) sizes.push_back(size);
    }
    return sizes;
}

Applied blocks_under_rows(BaseDetail& detail, const Lumber& of, Lie lie, int plies,
                          const std::vector<std::string>& replaced) {
    const std::vector<Block> before = detail.framing.blocks;
    const PlanAxis along = blocks_along(detail.framing);
    Block block = like_others(detail.framing, along);
    cut_from(block, of, lie);
    block.plies = plies;
    const std::vector<Bay> bays = bays_with_anchors(detail, along);
    take_away(detail.framing, replaced);
    const std::size_t kept = detail.framing.blocks.size();
    for (const Bay& bay : bays) {
        for (const double row_in : rows_of(anchor_places(detail), along)) {
            if (!needs_block(detail, bay, along, row_in)) continue;
            block.across_in = row_in;
            if (Applied set = set_block(detail, block, bay, before); !set) return set;
        }
    }
    bolts_to_suit(detail);
    if (detail.framing.blocks.size() == kept) return refused(phrase("no row of anchors needs a block"));
    return clear_of_others(detail.framing);
}

Applied one_flat_block(BaseDetail& detail, const Lumber& of, const std::vector<std::string>& replaced) {
    const std::vector<Block> before = detail.framing.blocks;
    const PlanAxis along = blocks_along(detail.framing);
    const std::vector<double> rows = rows_of(anchor_places(detail), along);
    Block block = like_others(detail.framing, along);
    cut_from(block, of, Lie::flat);
    if (rows.empty() || rows.back() - rows.front() >= block.width_in)
        return refused(phrase("the rows of anchors are too far apart for one flat block"));
    block.across_in = 0.5 * (rows.front() + rows.back());
    const std::vector<Bay> bays = bays_with_anchors(detail, along);
    take_away(detail.framing, replaced);
    for (const Bay& bay : bays) {
        if (Applied set = set_block(detail, block, bay, before); !set) return set;
    }
    bolts_to_suit(detail);
    if (bays.empty()) return refused(phrase("no anchor stands between joists"));
    return clear_of_others(detail.framing);
}

Applied block_under_free_row(BaseDetail& detail) {
    if (detail.framing.blocks.empty()) return refused(phrase("there is no block"));
    const Block like = detail.framing.blocks.front();
    const std::size_t before = detail.framing.blocks.size();
    for (const Bay& bay : bays_with_anchors(detail, like.along)) {
        for (const double row_in : rows_of(anchor_places(detail), like.along)) {
            if (!needs_block(detail, bay, like.along, row_in)) continue;
            Block block = like;
            block.across_in = row_in;
            if (Applied set = set_block(detail, block, bay, {like}); !set) return set;
        }
    }
    if (detail.framing.blocks.size() == before) return refused(phrase("no row of anchors needs a block"));
    return clear_of_others(detail.framing);
}

Applied blocks_follow(BaseDetail& detail, const BaseDetail& base) {
    const PlanAxis along = blocks_along(base.framing);
    const std::vector<double> before = rows_of(anchor_places(base), along);
    const std::vector<double> after = rows_of(anchor_places(detail), along);
    if (before.empty() || after.empty()) return {};
    for (Block& block : detail.framing.blocks) {
        if (block.along != along) continue;
        if (const std::optional<double> shift_in = shift_of(block, before, after)) block.across_in += *shift_in;
    }
    return clear_of_others(detail.framing);
}

Applied set_block_lumber(BaseDetail& detail, const Lumber& of, const std::vector<std::string>& blocks) {
    for (Block& block : detail.framing.blocks) {
        if (!is_named(blocks, block.id)) continue;
        const Block before = block;
        cut_from(block, of, block.width_in > block.depth_in ? Lie::flat : Lie::upright);
        if (Applied fits = between_joists(detail.framing, block); !fits) return fits;
        if (Applied fits = fit_ends(block, before); !fits) return fits;
    }
    bolts_to_suit(detail);
    return clear_of_others(detail.framing);
}

}  // namespace toehold::search
