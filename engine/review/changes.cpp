#include "review/changes.h"

#include "model/placement.h"

#include <algorithm>
#include <cmath>
#include <set>
#include <string>

namespace toehold::review {
namespace {

using model::BaseDetail;
using model::Block;
using model::PlanAxis;

constexpr double same_row_in = 0.25;

/// Blocks that run across the joists.
PlanAxis block_axis(const model::Framing& framing) {
    if (!framing.blocks.empty()) return framing.blocks.front().along;
    return framing.joists ? model::other(framing.joists->along) : PlanAxis::x;
}

/// Places across the blocks of the rows the anchors stand in.
std::vector<double> rows_in(const catalog::Resolved& resolved, PlanAxis along) {
    std::vector<double> rows;
    for (const catalog::Anchor& anchor : resolved.anchors) {
        const double place = model::coordinate_in(in_plan(anchor.at), model::other(along));
        const bool known =
            std::any_of(rows.begin(), rows.end(), [&](double row) { return std::abs(row - place) < same_row_in; });
        if (!known) rows.push_back(place);
    }
    std::sort(rows.begin(), rows.end());
    return rows;
}

bool fits(const model::Framing& framing) {
    const std::vector<model::Member> members = model::members(framing);
    for (std::size_t a = 0; a < framing.blocks.size(); ++a) {
        for (std::size_t b = a + 1; b < members.size(); ++b) {
            if (model::overlap(members[a], members[b])) return false;
        }
    }
    return true;
}

std::string new_id(const model::Framing& framing) {
    for (int number = 1;; ++number) {
        std::string id = "N" + std::to_string(number);
        if (!model::find_member(framing, id)) return id;
    }
}

std::optional<BaseDetail> if_it_fits(BaseDetail detail) {
    if (!fits(detail.framing)) return std::nullopt;
    return detail;
}

const model::Joist* joist_named(const model::Joists& joists, const std::string& id) {
    const auto found = std::find_if(joists.members.begin(), joists.members.end(),
                                    [&](const model::Joist& joist) { return joist.id == id; });
    return found == joists.members.end() ? nullptr : &*found;
}

/// The nearest joist beyond this one.
const model::Joist* next_joist(const model::Joists& joists, const model::Joist& from, bool upward) {
    const model::Joist* nearest = nullptr;
    for (const model::Joist& joist : joists.members) {
        const double apart = upward ? joist.offset_in - from.offset_in : from.offset_in - joist.offset_in;
        if (apart <= 0.0) continue;
        if (nearest == nullptr || apart < std::abs(nearest->offset_in - from.offset_in)) nearest = &joist;
    }
    return nearest;
}

/// The block's continuation beyond the joist at its upper or lower end, fastened as that end is.
std::optional<Block> carried_on(const model::Framing& framing, const Block& block, bool upward) {
    const model::Joists& joists = *framing.joists;
    const model::BlockEnd& end = upward ? block.to_end : block.from_end;
    const model::Joist* const held = joist_named(joists, end.joist);
    const model::Joist* const far = held == nullptr ? nullptr : next_joist(joists, *held, upward);
    if (far == nullptr) return std::nullopt;
    const model::Joist& lower = upward ? *held : *far;
    const model::Joist& upper = upward ? *far : *held;
    const double half_in = 0.5 * joists.width_in;
    Block more = block;
    more.id = new_id(framing);
    more.from_in = lower.offset_in + half_in * lower.plies;
    more.to_in = upper.offset_in - half_in * upper.plies;
    more.from_end = {lower.id, end.connection};
    more.to_end = {upper.id, end.connection};
    return more;
}

/// Whether an anchor's place lies over the length of the block.
bool beside(const Block& block, const catalog::Resolved& resolved, double row_in) {
    return std::any_of(resolved.anchors.begin(), resolved.anchors.end(), [&](const catalog::Anchor& anchor) {
        const double place = model::coordinate_in(in_plan(anchor.at), block.along);
        return std::abs(model::coordinate_in(in_plan(anchor.at), model::other(block.along)) - row_in) < same_row_in &&
               place > block.from_in && place < block.to_in;
    });
}

}  // namespace

std::optional<BaseDetail> upright_blocks(const catalog::Resolved& resolved) {
    constexpr double width_in = 3.5, depth_in = 7.25;
    const std::vector<Block>& blocks = resolved.detail.framing.blocks;
    if (blocks.empty()) return std::nullopt;
    const PlanAxis along = block_axis(resolved.detail.framing);
    BaseDetail detail = resolved.detail;
    detail.framing.blocks.clear();
    std::set<std::pair<double, double>> bays;
    for (const Block& block : blocks) {
        if (block.along != along || !bays.insert({block.from_in, block.to_in}).second) continue;
        for (const double row : rows_in(resolved, along)) {
            Block upright = block;
            upright.id = new_id(detail.framing);
            upright.across_in = row;
            upright.width_in = width_in;
            upright.depth_in = depth_in;
            upright.plies = 1;
            upright.stack = 1;
            upright.stack_fastened = false;
            upright.size = "4x8";
            if (!beside(upright, resolved, row)) continue;
            detail.framing.blocks.push_back(upright);
        }
    }
    bool changes = detail.framing.blocks.size() != blocks.size();
    for (const Block& block : blocks) changes = changes || block.width_in != width_in || block.depth_in < depth_in;
    if (!changes) return std::nullopt;
    return if_it_fits(std::move(detail));
}

std::optional<BaseDetail> second_block(const catalog::Resolved& resolved) {
    if (resolved.detail.framing.blocks.empty()) return std::nullopt;
    const Block& like = resolved.detail.framing.blocks.front();
    BaseDetail detail = resolved.detail;
    for (const double row : rows_in(resolved, like.along)) {
        const bool held = std::any_of(resolved.anchors.begin(), resolved.anchors.end(), [&](const auto& anchor) {
            return std::abs(model::coordinate_in(in_plan(anchor.at), model::other(like.along)) - row) < same_row_in &&
                   anchor.seat;
        });
        if (held) continue;
        Block block = like;
        block.id = new_id(detail.framing);
        block.across_in = row;
        detail.framing.blocks.push_back(block);
    }
    if (detail.framing.blocks.size() == resolved.detail.framing.blocks.size()) return std::nullopt;
    return if_it_fits(std::move(detail));
}

std::optional<BaseDetail> through_bolts(const catalog::Resolved& resolved) {
    BaseDetail detail = resolved.detail;
    bool changes = false;
    for (std::size_t group = 0; group < anchor_groups(detail).size(); ++group) {
        if (std::holds_alternative<model::ThroughBolt>(anchor_groups(detail)[group].fastener)) continue;
        double hole_in = 1.0;
        for (const catalog::Anchor& anchor : resolved.anchors) {
            if (anchor.group == group) hole_in = std::min(hole_in, anchor.hole_diameter_in);
        }
        const char* size = hole_in >= 0.5625 ? "bolt-1/2" : hole_in >= 0.5 ? "bolt-7/16" : "bolt-3/8";
        anchor_groups(detail)[group].fastener =
            model::ThroughBolt{size, "a307", model::BackingPlate{3.0, 3.0, 0.25, "steel-a36"}};
        anchor_groups(detail)[group].washer.reset();
        changes = true;
    }
    if (!changes) return std::nullopt;
    return detail;
}

std::optional<BaseDetail> end_angles(const catalog::Resolved& resolved) {
    BaseDetail detail = resolved.detail;
    bool changes = false;
    for (Block& block : detail.framing.blocks) {
        for (model::BlockEnd* end : {&block.from_end, &block.to_end}) {
            if (end->joist.empty()) continue;
            constexpr double diameter_in = 0.375, spacing_in = 1.75, loaded_edge_in = 4.0 * diameter_in;
            if (block.depth_in < 2.0 * loaded_edge_in) continue;
            const int per_leg = std::min(3, 1 + static_cast<int>((block.depth_in - 2.0 * loaded_edge_in) / spacing_in));
            model::SideAngles angles;
            angles.thickness_in = 0.25;
            angles.metal = "steel-a36";
            angles.kind = model::SideAngles::Kind::bolt;
            angles.diameter_in = diameter_in;
            angles.per_leg = per_leg;
            angles.spacing_in = per_leg > 1 ? spacing_in : 0.0;
            angles.gauge_in = 1.5;
            end->connection = angles;
            changes = true;
        }
    }
    if (!changes) return std::nullopt;
    return detail;
}

std::optional<BaseDetail> end_hardware(const catalog::Resolved& resolved) {
    BaseDetail detail = resolved.detail;
    bool changes = false;
    for (Block& block : detail.framing.blocks) {
        constexpr double height_in = 6.0;
        if (block.depth_in <= height_in) continue;
        model::ReportedConnector hardware{
            "hardware on both sides of the block", "least values a report must give", 1600.0, 1600.0, 700.0,
            block.width_in * block.plies};
        hardware.pull_lb = 1200.0;
        hardware.height_in = height_in;
        for (model::BlockEnd* end : {&block.from_end, &block.to_end}) {
            if (end->joist.empty()) continue;
            changes = changes || end->connection != model::EndConnection{hardware};
            end->connection = hardware;
        }
    }
    if (!changes) return std::nullopt;
    return detail;
}

std::optional<BaseDetail> next_bay(const catalog::Resolved& resolved) {
    const model::Framing& framing = resolved.detail.framing;
    if (!framing.joists) return std::nullopt;
    BaseDetail detail = resolved.detail;
    for (const Block& block : framing.blocks) {
        for (const bool upward : {false, true}) {
            const std::optional<Block> more = carried_on(detail.framing, block, upward);
            if (!more) continue;
            BaseDetail trial = detail;
            trial.framing.blocks.push_back(*more);
            if (fits(trial.framing)) detail = std::move(trial);
        }
    }
    if (detail.framing.blocks.size() == framing.blocks.size()) return std::nullopt;
    return detail;
}

}  // namespace toehold::review
