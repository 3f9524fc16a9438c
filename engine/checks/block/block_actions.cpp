#include "checks/block/block_actions.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace toehold::checks {
namespace {

struct BeamLoad {
    double at_in = 0.0;
    double force_lb = 0.0;
    double couple_lb_in = 0.0;
};

/// A simple beam's ends and extremes. Torque in a uniform bar held at both ends shares and runs as shear does.
struct Beam {
    double at_lower_end = 0.0, at_upper_end = 0.0;
    double largest_shear = 0.0, largest_moment = 0.0;
};

/// Loads in order along the beam.
Beam simple_beam(const std::vector<BeamLoad>& loads, double span_in) {
    Beam beam;
    for (const BeamLoad& load : loads) {
        beam.at_lower_end += (load.force_lb * (span_in - load.at_in) + load.couple_lb_in) / span_in;
        beam.at_upper_end += (load.force_lb * load.at_in - load.couple_lb_in) / span_in;
    }
    double shear = -beam.at_lower_end;
    double moment = 0.0;
    double reached_in = 0.0;
    for (const BeamLoad& load : loads) {
        moment += shear * (load.at_in - reached_in);
        beam.largest_moment = std::max({beam.largest_moment, std::abs(moment), std::abs(moment + load.couple_lb_in)});
        beam.largest_shear = std::max(beam.largest_shear, std::abs(shear));
        moment += load.couple_lb_in;
        shear += load.force_lb;
        reached_in = load.at_in;
    }
    beam.largest_shear = std::max(beam.largest_shear, std::abs(shear));
    return beam;
}

template <class Pick>
Beam beam_of(const std::vector<BlockLoad>& loads, double span_in, Pick pick) {
    std::vector<BeamLoad> picked;
    picked.reserve(loads.size());
    for (const BlockLoad& load : loads) picked.push_back(pick(load));
    return simple_beam(picked, span_in);
}

/// A plan vector or position in the block's own axes: along it, across it.
std::pair<double, double> along_and_across(const model::Block& block, double x, double y) {
    return block.along == model::PlanAxis::x ? std::pair{x, y} : std::pair{y, x};
}

BlockLoad anchor_load(const model::Block& block, const catalog::Anchor& anchor, const demand::AnchorForce& force) {
    const auto [along_in, across_in] = along_and_across(block, anchor.at.x_in, anchor.at.y_in);
    const auto [along_lb, across_lb] = along_and_across(block, force.shear_x_lb, force.shear_y_lb);
    const double top_in = 0.5 * block.depth_in;
    const double torque = force.tension_lb * (across_in - block.across_in) - across_lb * top_in;
    return {along_in - block.from_in, force.tension_lb, across_lb, along_lb, torque, along_lb * top_in};
}

BlockLoad bearing_load(const model::Block& block, const demand::SupportForce& force) {
    const auto [along_in, across_in] = along_and_across(block, force.at.x_in, force.at.y_in);
    return {along_in - block.from_in, -force.force_lb, 0.0, 0.0, -force.force_lb * (across_in - block.across_in), 0.0};
}

bool stands_on(const demand::Support& support, std::size_t block) {
    return support.kind == demand::SupportKind::member && support.member == block;
}

}  // namespace

double length_in(const model::Block& block) { return block.to_in - block.from_in; }

std::vector<BlockLoad> block_loads(const CheckInput& input, const demand::State& state, std::size_t block) {
    const model::Block& shape = input.resolved.detail.framing.blocks.at(block);
    std::vector<BlockLoad> loads;
    for (std::size_t index = 0; index < input.resolved.anchors.size(); ++index) {
        const catalog::Anchor& anchor = input.resolved.anchors[index];
        if (anchor.seat && anchor.seat->member == block) {
            loads.push_back(anchor_load(shape, anchor, state.anchors.at(index)));
        }
    }
    for (std::size_t index = 0; index < input.demand.supports.size(); ++index) {
        const demand::SupportForce& force = state.supports.at(index);
        if (stands_on(input.demand.supports[index], block) && force.force_lb > 0.0) {
            loads.push_back(bearing_load(shape, force));
        }
    }
    return loads;
}

BlockActions block_actions(std::vector<BlockLoad> loads, double span_in) {
    std::stable_sort(loads.begin(), loads.end(),
                     [](const BlockLoad& a, const BlockLoad& b) { return a.at_in < b.at_in; });
    const Beam vertical = beam_of(loads, span_in, [](const BlockLoad& load) {
        return BeamLoad{load.at_in, load.up_lb, load.couple_lb_in};
    });
    const Beam horizontal = beam_of(loads, span_in, [](const BlockLoad& load) {
        return BeamLoad{load.at_in, load.across_lb, 0.0};
    });
    const Beam torsion = beam_of(loads, span_in, [](const BlockLoad& load) {
        return BeamLoad{load.at_in, load.torque_lb_in, 0.0};
    });
    BlockActions actions;
    actions.from = {vertical.at_lower_end, horizontal.at_lower_end, torsion.at_lower_end};
    actions.to = {vertical.at_upper_end, horizontal.at_upper_end, torsion.at_upper_end};
    for (const BlockLoad& load : loads) actions.along_lb += load.along_lb;
    actions.vertical_moment_lb_in = vertical.largest_moment;
    actions.horizontal_moment_lb_in = horizontal.largest_moment;
    actions.vertical_shear_lb = vertical.largest_shear;
    actions.horizontal_shear_lb = horizontal.largest_shear;
    actions.torque_lb_in = torsion.largest_shear;
    return actions;
}

BlockActions block_actions(const CheckInput& input, const demand::State& state, std::size_t block) {
    return block_actions(block_loads(input, state, block), length_in(input.resolved.detail.framing.blocks.at(block)));
}

bool carries_load(const CheckInput& input, std::size_t block) {
    const auto& anchors = input.resolved.anchors;
    const auto& supports = input.demand.supports;
    return std::any_of(anchors.begin(), anchors.end(),
                       [&](const auto& anchor) { return anchor.seat && anchor.seat->member == block; }) ||
           std::any_of(supports.begin(), supports.end(),
                       [&](const auto& support) { return stands_on(support, block); });
}

std::vector<std::size_t> loaded_blocks(const CheckInput& input) {
    std::vector<std::size_t> blocks;
    if (input.demand.states.empty()) return blocks;
    for (std::size_t block = 0; block < input.resolved.detail.framing.blocks.size(); ++block) {
        if (carries_load(input, block)) blocks.push_back(block);
    }
    return blocks;
}

}  // namespace toehold::checks
