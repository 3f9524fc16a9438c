#include "paper/project/near_post.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <map>
#include <set>
#include <string>

namespace toehold::paper {
namespace {

constexpr double as_near_in = 0.5, always_in = 12.0, seen_in = 24.0;

/// From a point to the nearest of the block's outline in plan; 0 inside.
double distance_in(const model::Block& block, model::Position from) {
    const bool along_x = block.along == model::PlanAxis::x;
    const double along = along_x ? from.x_in : from.y_in, across = along_x ? from.y_in : from.x_in;
    const double beyond = std::max({block.from_in - along, along - block.to_in, 0.0});
    const double beside = std::max(std::abs(across - block.across_in) - 0.5 * block.width_in, 0.0);
    return std::hypot(beyond, beside);
}

double nearest_in(const model::Block& block, const std::vector<model::PlacedPost>& posts) {
    double nearest = std::numeric_limits<double>::infinity();
    for (const model::PlacedPost& post : posts) nearest = std::min(nearest, distance_in(block, post.at));
    return nearest;
}

/// Ids, with those of the blocks that hold them.
std::set<std::string> own_blocks(const model::Project& project, model::Position at) {
    const std::vector<model::Block>& blocks = project.framing.blocks;
    std::set<std::string> own;
    for (const model::Block& block : blocks) {
        const double away = distance_in(block, at);
        if (away <= always_in || away <= nearest_in(block, project.posts) + as_near_in) own.insert(block.id);
    }
    for (bool grows = true; grows;) {
        grows = false;
        for (const model::Block& block : blocks) {
            if (own.count(block.id) > 0) continue;
            const bool holds = std::any_of(blocks.begin(), blocks.end(), [&](const model::Block& held) {
                return own.count(held.id) > 0 && (held.from_end.joist == block.id || held.to_end.joist == block.id);
            });
            if (holds) grows = own.insert(block.id).second;
        }
    }
    return own;
}

double rounded(double place_in) { return std::round(256.0 * place_in) / 256.0 + 0.0; }
double in_sight(double place_in) { return rounded(std::clamp(place_in, -seen_in, seen_in)); }
std::optional<double> in_sight(const std::optional<double>& place_in) {
    return place_in && std::abs(*place_in) <= seen_in ? std::optional(rounded(*place_in)) : std::nullopt;
}

/// A name by place for every id, so that ends of blocks can be compared.
using Names = std::map<std::string, std::string>;

void name_joists(model::Joists& joists, Names& names) {
    std::vector<model::Joist> near;
    for (model::Joist joist : joists.members) {
        joist.offset_in = rounded(joist.offset_in);
        const std::string name = "joist at " + std::to_string(joist.offset_in);
        names[joist.id] = name;
        joist.id = name;
        if (std::abs(joist.offset_in) <= seen_in) near.push_back(joist);
    }
    std::sort(near.begin(), near.end(),
              [](const model::Joist& one, const model::Joist& other) { return one.offset_in < other.offset_in; });
    joists.members = std::move(near);
    joists.from_in = in_sight(joists.from_in);
    joists.to_in = in_sight(joists.to_in);
}

void name_rims_and_supports(model::Framing& framing, Names& names) {
    for (model::Rim& rim : framing.rims) {
        const std::string name = "rim at " + std::to_string(rounded(rim.at_in));
        names[rim.id] = name;
        rim.id = name;
        rim.at_in = rounded(rim.at_in);
        rim.from_in = in_sight(rim.from_in);
        rim.to_in = in_sight(rim.to_in);
    }
    for (model::JoistSupport& support : framing.supports) {
        support.at_in = rounded(support.at_in);
        support.id = "support at " + std::to_string(support.at_in);
    }
}

void name_blocks(std::vector<model::Block>& blocks, Names& names) {
    for (model::Block& block : blocks) {
        block.from_in = rounded(block.from_in);
        block.to_in = rounded(block.to_in);
        block.across_in = rounded(block.across_in);
        const std::string name = "block at " + std::to_string(block.from_in) + ", " + std::to_string(block.across_in);
        names[block.id] = name;
        block.id = name;
    }
    for (model::Block& block : blocks) {
        for (model::BlockEnd* const end : {&block.from_end, &block.to_end}) {
            if (const auto known = names.find(end->joist); known != names.end()) end->joist = known->second;
        }
    }
    std::sort(blocks.begin(), blocks.end(),
              [](const model::Block& one, const model::Block& other) { return one.id < other.id; });
}

}  // namespace

model::BaseDetail detail_at_post(const model::Project& project, const model::PlacedPost& post) {
    model::BaseDetail detail = model::detail_of(project, post);
    const std::set<std::string> own = own_blocks(project, post.at);
    std::vector<model::Block>& blocks = detail.framing.blocks;
    blocks.erase(std::remove_if(blocks.begin(), blocks.end(),
                                [&own](const model::Block& block) { return own.count(block.id) == 0; }),
                 blocks.end());
    return detail;
}

model::BaseDetail as_built(const model::BaseDetail& at_post) {
    model::BaseDetail seen = at_post;
    seen.name.clear();
    seen.note.clear();
    seen.project.clear();
    seen.remarks.clear();
    seen.loads = {};
    seen.guard.tributary_length_in.reset();
    Names names;
    if (seen.framing.joists) name_joists(*seen.framing.joists, names);
    name_rims_and_supports(seen.framing, names);
    name_blocks(seen.framing.blocks, names);
    return seen;
}

}  // namespace toehold::paper
