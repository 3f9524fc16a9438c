// Changes that reach beyond the joists that hold the blocks.
#include "model/placement.h"
#include "search/changes/blocks.h"
#include "search/changes/rows.h"

#include <algorithm>
#include <cmath>
#include <map>

namespace toehold::search {
namespace {

using format::phrase;
using model::BaseDetail;
using model::Block;
using model::Joist;
using model::Joists;

/// The nearest joist beyond this one.
const Joist* next_joist(const Joists& joists, const Joist& from, bool upward) {
    const Joist* nearest = nullptr;
    for (const Joist& joist : joists.members) {
        const double apart = upward ? joist.offset_in - from.offset_in : from.offset_in - joist.offset_in;
        if (apart <= 0.0) continue;
        if (nearest == nullptr || apart < std::abs(nearest->offset_in - from.offset_in)) nearest = &joist;
    }
    return nearest;
}

/// The block's continuation beyond the joist at its upper or lower end, fastened as that end is.
std::optional<Block> carried_on(const model::Framing& framing, const Block& block, bool upward) {
    const Joists& joists = *framing.joists;
    const model::BlockEnd& end = upward ? block.to_end : block.from_end;
    const Joist* const held = model::find_joist(framing, end.joist);
    const Joist* const far = held == nullptr ? nullptr : next_joist(joists, *held, upward);
    if (far == nullptr) return std::nullopt;
    const Joist& lower = upward ? *held : *far;
    const Joist& upper = upward ? *far : *held;
    const double half_in = 0.5 * joists.width_in;
    Block more = block;
    more.id = model::free_member_id(framing, "B");
    more.from_in = lower.offset_in + half_in * lower.plies;
    more.to_in = upper.offset_in - half_in * upper.plies;
    more.from_end = {lower.id, end.connection};
    more.to_end = {upper.id, end.connection};
    return more;
}

/// On which sides blocks meet a joist.
struct Met {
    bool from_above = false;  ///< by blocks on the side of greater coordinates
    bool from_below = false;
    bool under_anchor = false;
};

std::map<std::string, Met> joists_met(const BaseDetail& detail) {
    const std::vector<std::string> loaded = blocks_with_anchors(detail);
    std::map<std::string, Met> met;
    for (const Block& block : detail.framing.blocks) {
        const bool under_anchor = std::find(loaded.begin(), loaded.end(), block.id) != loaded.end();
        for (const bool upper_end : {false, true}) {
            const std::string& holder = upper_end ? block.to_end.joist : block.from_end.joist;
            if (holder.empty()) continue;
            Met& sides = met[holder];
            (upper_end ? sides.from_below : sides.from_above) = true;
            sides.under_anchor = sides.under_anchor || under_anchor;
        }
    }
    return met;
}

/// Block ends at the joist's faces, where those are now.
void meet_faces(model::Framing& framing) {
    const double half_in = 0.5 * framing.joists->width_in;
    for (Block& block : framing.blocks) {
        if (const Joist* const low = model::find_joist(framing, block.from_end.joist))
            block.from_in = low->offset_in + half_in * low->plies;
        if (const Joist* const high = model::find_joist(framing, block.to_end.joist))
            block.to_in = high->offset_in - half_in * high->plies;
    }
}

/// How far an anchor in the rim is from standing clear of it with `beside_in` to spare, along the joists; 0: it does.
double within_rim_in(const BaseDetail& detail, const model::Rim& rim, double beside_in) {
    const double half_in = 0.5 * rim.width_in * rim.plies;
    double most_in = 0.0;
    for (const model::Position place : anchor_places(detail)) {
        const double at_in = model::coordinate_in(place, detail.framing.joists->along);
        if (std::abs(at_in - rim.at_in) > half_in) continue;
        const double outward = rim.at_in > 0.0 ? 1.0 : -1.0;
        most_in = std::max(most_in, outward * (at_in - rim.at_in) + half_in + beside_in);
    }
    return most_in;
}

Applied no_joists() { return refused(phrase("the detail describes no joists")); }

void move_framing(model::Framing& framing, double by_in) {
    Joists& joists = *framing.joists;
    if (joists.from_in) *joists.from_in += by_in;
    if (joists.to_in) *joists.to_in += by_in;
    for (model::Rim& rim : framing.rims) rim.at_in += by_in;
    for (model::JoistSupport& support : framing.supports) support.at_in += by_in;
}

}  // namespace

Applied blocks_into_next_bay(BaseDetail& detail) {
    if (!detail.framing.joists) return no_joists();
    const std::vector<Block> before = detail.framing.blocks;
    for (const Block& block : before) {
        for (const bool upward : {false, true}) {
            const std::optional<Block> more = carried_on(detail.framing, block, upward);
            if (!more) continue;
            detail.framing.blocks.push_back(*more);
            if (!blocks_fit(detail.framing)) detail.framing.blocks.pop_back();
        }
    }
    if (detail.framing.blocks.size() == before.size())
        return refused(phrase("no block can go on into a next joist bay"));
    return {};
}

Applied double_joists(BaseDetail& detail) {
    constexpr int most_plies = 4;
    if (!detail.framing.joists) return no_joists();
    bool any = false;
    const std::map<std::string, Met> met = joists_met(detail);
    for (Joist& joist : detail.framing.joists->members) {
        const auto sides = met.find(joist.id);
        if (sides == met.end() || !sides->second.under_anchor) continue;
        if (++joist.plies > most_plies) return refused(phrase("a joist would have more than {} pieces", most_plies));
        const double half_in = 0.5 * detail.framing.joists->width_in;
        if (!sides->second.from_below) joist.offset_in -= half_in;
        if (!sides->second.from_above) joist.offset_in += half_in;
        any = true;
    }
    if (!any) return refused(phrase("no joist holds a block with an anchor in it"));
    meet_faces(detail.framing);
    return clear_of_others(detail.framing);
}

Applied set_back_from_rim(BaseDetail& detail, const Lumber& of, double& moved_in) {
    if (!detail.framing.joists) return no_joists();
    moved_in = 0.0;
    for (const model::Rim& rim : detail.framing.rims) {
        constexpr double tape_in = 0.5;
        const double within_in = within_rim_in(detail, rim, 0.5 * of.thickness_in);
        const double whole_in = std::ceil(within_in / tape_in) * tape_in;
        if (whole_in > std::abs(moved_in)) moved_in = std::copysign(whole_in, rim.at_in);
    }
    if (moved_in == 0.0) return refused(phrase("no anchor stands in a rim"));
    move_framing(detail.framing, moved_in);
    return blocks_under_rows(detail, of, Lie::upright, 1, blocks_with_anchors(detail));
}

}  // namespace toehold::search
