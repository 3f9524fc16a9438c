#include "editing/samples.h"

#include "editing/edits.h"
#include "model/follow_joint.h"
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

std::string broken_mount(const model::PlateOnDeck& mount) { return broken_plate(mount.plate); }

std::string broken_mount(const model::SideFastened& mount) {
    std::set<std::string> ids;
    for (const model::SidePlace& place : mount.places) {
        if (!ids.insert(place.id).second) return "two places " + place.id;
        if (!std::isfinite(place.x_in) || !is_length(place.below_top_in)) return "place " + place.id;
    }
    for (const model::TensionTie& tie : mount.ties) {
        if (!ids.insert(tie.id).second) return "two of " + tie.id;
    }
    return is_length(mount.post_bottom_below_top_in) ? "" : "post bottom";
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

model::BaseDetail post_on_side() { return editing::starting_side_detail(shipped_catalog()); }

model::TensionTie tie_into(const std::string& member) {
    model::TensionTie tie;
    tie.id = "T1";
    tie.name = "tie";
    tie.report = "invented for tests";
    tie.below_top_in = 2.0;
    tie.tension_lb = 1800.0;
    tie.deflection_in = 0.125;
    tie.into = member;
    tie.eccentricity_in = 1.0;
    return tie;
}

model::BaseDetail tube_on_side() {
    model::BaseDetail detail = post_on_side();
    const model::SideJoint before = model::side_joint(detail);
    detail.post = model::RectangularTube{2.0, 2.0, 0.1875, "steel-a500-b"};
    model::SideFastened& mount = on_side(detail);
    mount.bracket = model::BracketPlate{6.0, 8.0, 0.5, 0.375, "steel-a36", 0.1875, "e70"};
    mount.places = {{"A", -2.0, 2.0}, {"B", 2.0, 2.0}, {"C", -2.0, 7.0}, {"D", 2.0, 7.0}};
    for (const double below_top_in : {2.0, 7.0}) {
        model::TensionTie tie = tie_into("J3");
        tie.id = "T" + std::to_string(mount.ties.size() + 1);
        tie.below_top_in = below_top_in;
        mount.ties.push_back(tie);
    }
    model::framing_follows(detail, before);
    return detail;
}

std::string whats_broken(const model::BaseDetail& detail) {
    if (const std::string mount = std::visit([](const auto& one) { return broken_mount(one); }, detail.mount);
        !mount.empty())
        return mount;
    std::set<std::string> ids;
    for (const model::Member& member : model::members(detail.framing)) {
        if (!ids.insert(member.id).second) return "two members " + member.id;
        if (!std::isfinite(member.across_in) || !is_length(member.width_in) || !is_length(member.depth_in) ||
            !is_length(model::length_in(member)))
            return member.id;
    }
    const std::vector<std::string> places = model::anchor_place_ids(detail);
    for (const model::AnchorGroup& group : model::anchor_groups(detail)) {
        for (const std::string& hole : group.holes) {
            if (std::find(places.begin(), places.end(), hole) == places.end()) return "anchor in no " + hole;
        }
        if (const auto* lag = std::get_if<model::LagScrew>(&group.fastener); lag && !is_length(lag->length_in))
            return "length of anchor";
    }
    if (!is_length(detail.guard.height_in)) return "guard";
    if (const model::Decking* boards = model::deck_boards(detail);
        boards != nullptr && !is_length(boards->thickness_in))
        return "decking";
    return {};
}

}  // namespace toehold::test
