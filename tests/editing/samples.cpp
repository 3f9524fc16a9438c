#include "editing/samples.h"

#include "model/member.h"
#include "model/placement.h"

#include <algorithm>
#include <cmath>
#include <filesystem>
#include <map>
#include <set>
#include <stdexcept>

namespace toehold::test {
namespace {

namespace fs = std::filesystem;

model::Block block(const std::string& id, double across_in) {
    model::Block block;
    block.id = id;
    block.from_in = -7.25;
    block.to_in = 7.25;
    block.across_in = across_in;
    block.width_in = 3.5;
    block.depth_in = 7.25;
    block.species = "southern-pine";
    block.grade = "no-2";
    block.from_end.joist = "J1";
    block.to_end.joist = "J2";
    return block;
}

bool is_finite(model::Position at) { return std::isfinite(at.x_in) && std::isfinite(at.y_in); }
bool is_length(double value) { return std::isfinite(value) && value > 0.0; }

bool sound(const model::Hole& hole) {
    if (!is_finite(hole.center)) return false;
    if (const auto* slot = std::get_if<model::Slot>(&hole.shape))
        return slot->length_in > slot->width_in && is_length(slot->width_in) && is_length(slot->length_in) &&
               std::abs(slot->angle_deg) <= 360.0;
    return is_length(std::get<model::RoundHole>(hole.shape).diameter_in);
}

std::string broken_plate(const model::Plate& plate) {
    std::set<std::string> ids;
    for (const model::Hole& hole : plate.holes) {
        if (!ids.insert(hole.id).second) return "two holes " + hole.id;
        if (!sound(hole)) return "hole " + hole.id;
    }
    for (const model::Position corner : model::polygon(plate.outline)) {
        if (!is_finite(corner)) return "outline";
    }
    if (const auto* rectangle = std::get_if<model::RectangleOutline>(&plate.outline)) {
        if (!is_length(rectangle->width_in) || !is_length(rectangle->depth_in)) return "rectangle";
        if (rectangle->corner_radius_in > 0.5 * std::min(rectangle->width_in, rectangle->depth_in)) return "radius";
    }
    return is_length(plate.thickness_in) ? "" : "plate thickness";
}

}  // namespace

const std::vector<model::BaseDetail>& demo_details() {
    static const std::vector<model::BaseDetail> all = [] {
        std::vector<model::BaseDetail> details;
        for (const std::string& name : demo_names()) details.push_back(demo_detail(name));
        return details;
    }();
    return all;
}

model::BaseDetail square_base() {
    model::BaseDetail detail;
    detail.name = "square";
    detail.guard.height_in = 42.0;
    detail.post = model::RectangularTube{2.0, 2.0, 0.1875, "steel-a500-b"};
    on_deck(detail).plate.id = "square";
    on_deck(detail).plate.metal = "steel-a36";
    on_deck(detail).plate.thickness_in = 0.5;
    on_deck(detail).plate.outline = model::RectangleOutline{10.0, 10.0, 0.0, {}};
    on_deck(detail).plate.holes = {{"A", {-4.0, -4.0}, model::RoundHole{0.5}},
                                   {"B", {4.0, -4.0}, model::RoundHole{0.5}},
                                   {"C", {4.0, 4.0}, model::RoundHole{0.5}},
                                   {"D", {-4.0, 4.0}, model::RoundHole{0.5}}};
    model::AnchorGroup group;
    group.fastener = model::LagScrew{"lag-7/16", 8.0, std::nullopt};
    on_deck(detail).anchors = {group};
    on_deck(detail).layers.decking = model::Decking{"wood-southern-pine", 1.0, {}};
    model::Joists joists;
    joists.width_in = 1.5;
    joists.depth_in = 9.25;
    joists.species = "southern-pine";
    joists.grade = "no-2";
    joists.members = {{"J1", -8.0}, {"J2", 8.0}};
    detail.framing.joists = joists;
    detail.framing.blocks = {block("B1", -4.0), block("B2", 4.0)};
    return detail;
}

std::string whats_broken(const model::BaseDetail& detail) {
    if (const std::string plate = broken_plate(on_deck(detail).plate); !plate.empty()) return plate;
    std::set<std::string> ids;
    for (const model::Member& member : model::members(detail.framing)) {
        if (!ids.insert(member.id).second) return "two members " + member.id;
        if (!std::isfinite(member.across_in) || !is_length(member.width_in) || !is_length(member.depth_in) ||
            !is_length(model::length_in(member)))
            return member.id;
    }
    for (const model::AnchorGroup& group : on_deck(detail).anchors) {
        for (const std::string& hole : group.holes) {
            const auto has = [&](const model::Hole& one) { return one.id == hole; };
            if (std::none_of(on_deck(detail).plate.holes.begin(), on_deck(detail).plate.holes.end(), has))
                return "anchor in no " + hole;
        }
        if (const auto* lag = std::get_if<model::LagScrew>(&group.fastener); lag && !is_length(lag->length_in))
            return "length of anchor";
    }
    if (!is_length(detail.guard.height_in)) return "guard";
    if (on_deck(detail).layers.decking && !is_length(on_deck(detail).layers.decking->thickness_in)) return "decking";
    return {};
}

}  // namespace toehold::test
