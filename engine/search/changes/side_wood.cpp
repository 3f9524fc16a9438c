#include "search/changes/side_wood.h"

#include "model/follow_joint.h"
#include "search/changes/anchors.h"
#include "search/changes/ends.h"
#include "search/changes/rows.h"
#include "search/changes/side_rows.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace toehold::search {
namespace {

using format::phrase;
using model::BaseDetail;
using model::Block;
using model::Framing;
using model::Member;
using model::PlanAxis;

/// Sizes people order guard posts in (common practice).
constexpr std::array post_names{"4x4", "4x6", "6x6"};

/// Hardware to be chosen, of the least values for a block this deep and wide.
model::ReportedConnector to_be_chosen(const Block& block, double vertical_lb) {
    const LeastValues least = least_values(vertical_lb, block.depth_in * block.stack);
    model::ReportedConnector hardware;
    hardware.name = "hardware on both sides of the block";
    hardware.chosen = false;
    hardware.uplift_lb = hardware.down_lb = least.vertical_lb;
    hardware.lateral_lb = least.lateral_lb;
    hardware.couple_arm_in = block.width_in * block.plies;
    hardware.pull_lb = least.pull_lb;
    hardware.height_in = least.height_in;
    hardware.from_top_in = hardware.from_bottom_in = least.to_edges_in;
    return hardware;
}

/// On edge, of the framing's own wood.
std::optional<Block> block_of(const Framing& framing, const Lumber& of, PlanAxis along) {
    const std::optional<Wood> wood = wood_of_blocks(framing);
    if (!wood) return std::nullopt;
    Block block;
    block.id = model::free_member_id(framing, "B");
    block.along = along;
    block.width_in = of.thickness_in;
    block.depth_in = of.width_in;
    block.species = wood->species;
    block.grade = wood->grade;
    block.size = of.size;
    return block;
}

struct BothSides {
    std::optional<Member> lower, upper;
};

/// The nearest members of these on both sides of a coordinate, their near faces beyond it.
BothSides nearest_to(const std::vector<Member>& all, double at_in) {
    BothSides sides;
    for (const Member& one : all) {
        if (one.across_in + 0.5 * one.width_in <= at_in && (!sides.lower || one.across_in > sides.lower->across_in))
            sides.lower = one;
        if (one.across_in - 0.5 * one.width_in >= at_in && (!sides.upper || one.across_in < sides.upper->across_in))
            sides.upper = one;
    }
    return sides;
}

std::vector<Member> joists_along(const Framing& framing, PlanAxis along) {
    std::vector<Member> all = model::members(framing);
    std::erase_if(all,
                  [along](const Member& one) { return one.kind != model::MemberKind::joist || one.along != along; });
    return all;
}

Applied deeper_than(const Member& member, const Block& block) {
    constexpr double fit_in = 0.01;
    if (block.depth_in <= member.depth_in + fit_in) return {};
    return refused(phrase("the block would be deeper than the member it stands against"));
}

/// The joists behind the post leave it a bay.
Applied into_bay(const std::vector<Member>& joists, Block& block, double vertical_lb) {
    for (const Member& one : joists)
        if (std::abs(one.across_in) < 0.5 * one.width_in) return refused(phrase("a joist stands behind the post"));
    const BothSides sides = nearest_to(joists, 0.0);
    if (!sides.lower || !sides.upper)
        return refused(phrase("no joist runs up to the member on both sides of the post"));
    block.from_in = sides.lower->across_in + 0.5 * sides.lower->width_in;
    block.to_in = sides.upper->across_in - 0.5 * sides.upper->width_in;
    block.from_end = {sides.lower->id, to_be_chosen(block, vertical_lb)};
    block.to_end = {sides.upper->id, to_be_chosen(block, vertical_lb)};
    return {};
}

}  // namespace

std::vector<std::string> post_sizes(const BaseDetail& detail, const catalog::Catalog& catalog) {
    const auto* const post = std::get_if<model::WoodPost>(&detail.post);
    std::vector<std::string> all;
    if (post == nullptr || post->grade.empty()) return all;
    for (const char* const name : post_names) {
        const Lumber size = lumber(name).value();
        if (find_grade(catalog, post->species, post->grade, {size.thickness_in, size.width_in}) != nullptr)
            all.emplace_back(name);
    }
    return all;
}

Applied set_post_size(BaseDetail& detail, const std::string& size) {
    if (!is_on_side(detail)) return not_on_side();
    auto* const post = std::get_if<model::WoodPost>(&detail.post);
    const std::optional<Lumber> section = lumber(size);
    if (post == nullptr || !section) return meaningless(phrase("only a wood post has a size of lumber"));
    const model::SideJoint before = model::side_joint(detail);
    post->width_in = section->thickness_in;
    post->depth_in = section->width_in;
    post->size = size;
    model::framing_follows(detail, before);
    bolts_to_suit(detail);
    return {};
}

Applied without_notch(BaseDetail& detail) {
    if (!is_on_side(detail)) return not_on_side();
    auto* const post = std::get_if<model::WoodPost>(&detail.post);
    if (post == nullptr || !on_side(detail).notch) return refused(phrase("the post is not notched"));
    const model::SideJoint before = model::side_joint(detail);
    on_side(detail).notch.reset();
    post->notched = false;
    model::framing_follows(detail, before);
    bolts_to_suit(detail);
    return {};
}

Applied set_member_plies(BaseDetail& detail, int plies) {
    if (!is_on_side(detail)) return not_on_side();
    if (!model::set_plies(detail, plies))
        return refused(phrase("only a rim or joist of at most {} pieces is made of several", model::most_plies));
    bolts_to_suit(detail);
    return clear_of_others(detail.framing);
}

Applied block_behind(BaseDetail& detail, const Lumber& of, double vertical_lb) {
    if (!is_on_side(detail)) return not_on_side();
    const std::optional<Member> member = model::side_member(detail);
    if (!member) return refused(phrase("the member is not described"));
    for (const model::AnchorGroup& group : anchor_groups(detail))
        if (!group.into.empty()) return refused(phrase("the anchors go into a member behind already"));
    std::optional<Block> block = block_of(detail.framing, of, PlanAxis::x);
    if (!block) return refused(phrase("no wood is known for a new block"));
    if (Applied fits = deeper_than(*member, *block); !fits) return fits;
    const model::SideJoint joint = model::side_joint(detail);
    block->across_in = joint.towards_y * (model::to_far_face_in(joint, *member) + 0.5 * block->width_in);
    std::vector<Member> joists = joists_along(detail.framing, PlanAxis::y);
    std::erase_if(joists,
                  [&](const Member& one) { return one.from_in > block->across_in || one.to_in < block->across_in; });
    if (Applied set = into_bay(joists, *block, vertical_lb); !set) return set;
    detail.framing.blocks.push_back(*block);
    for (model::AnchorGroup& group : anchor_groups(detail)) group.into = block->id;
    bolts_to_suit(detail);
    return clear_of_others(detail.framing);
}

Applied blocks_to_next_joist(BaseDetail& detail, const Lumber& of, double vertical_lb) {
    if (!is_on_side(detail)) return not_on_side();
    const std::optional<Member> member = model::side_member(detail);
    if (!member || member->kind != model::MemberKind::joist)
        return refused(phrase("the post is not fastened to an end joist"));
    std::vector<Member> others = joists_along(detail.framing, PlanAxis::x);
    std::erase_if(others, [&](const Member& one) { return one.id == member->id; });
    const BothSides sides = nearest_to(others, member->across_in);
    const double away = model::side_joint(detail).towards_y;
    const std::optional<Member>& next = away < 0.0 ? sides.lower : sides.upper;
    if (!next) return refused(phrase("there is no next joist to block to"));
    std::optional<Block> block = block_of(detail.framing, of, PlanAxis::y);
    if (!block) return refused(phrase("no wood is known for a new block"));
    if (Applied fits = deeper_than(*member, *block); !fits) return fits;
    const Member &low = away < 0.0 ? *next : *member, &high = away < 0.0 ? *member : *next;
    block->from_in = low.across_in + 0.5 * low.width_in;
    block->to_in = high.across_in - 0.5 * high.width_in;
    block->from_end = {low.id, to_be_chosen(*block, vertical_lb)};
    block->to_end = {high.id, to_be_chosen(*block, vertical_lb)};
    // Clear of the nuts behind the post.
    const double off_in = model::half_width_in(detail) + 0.5 * block->width_in;
    for (const double side : {-1.0, 1.0}) {
        block->id = model::free_member_id(detail.framing, "B");
        block->across_in = side * off_in;
        detail.framing.blocks.push_back(*block);
    }
    return clear_of_others(detail.framing);
}

}  // namespace toehold::search
