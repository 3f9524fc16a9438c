#include "search/changes/rows.h"

#include "model/placement.h"

#include <algorithm>
#include <tuple>
#include <utility>

namespace toehold::search {
namespace {

using model::BaseDetail;
using model::Block;
using model::Framing;
using model::PlanAxis;
using model::Position;

const Block* block_in(const Framing& framing, PlanAxis along, double from_in, double to_in) {
    const auto found = std::find_if(framing.blocks.begin(), framing.blocks.end(), [&](const Block& block) {
        const double middle_in = 0.5 * (block.from_in + block.to_in);
        return block.along == along && middle_in > from_in && middle_in < to_in;
    });
    return found == framing.blocks.end() ? nullptr : &*found;
}

/// How the ends of a new block there are fastened: as those of one that is there, else as any other is.
std::pair<model::EndConnection, model::EndConnection> ends_there(const Framing& framing, PlanAxis along, double from_in,
                                                                 double to_in) {
    if (const Block* const there = block_in(framing, along, from_in, to_in))
        return {there->from_end.connection, there->to_end.connection};
    for (const Block& block : framing.blocks) {
        for (const model::BlockEnd* end : {&block.from_end, &block.to_end}) {
            if (!end->joist.empty()) return {end->connection, end->connection};
        }
    }
    return {};
}

std::vector<Bay> bays_between_joists(const BaseDetail& detail, PlanAxis along) {
    std::vector<model::Member> joists;
    for (const model::Member& member : model::members(detail.framing)) {
        if (member.kind == model::MemberKind::joist) joists.push_back(member);
    }
    std::sort(joists.begin(), joists.end(), [](const auto& a, const auto& b) { return a.across_in < b.across_in; });
    std::vector<Bay> bays;
    for (std::size_t upper = 1; upper < joists.size(); ++upper) {
        const model::Member &low = joists[upper - 1], &high = joists[upper];
        Bay bay{low.across_in + 0.5 * low.width_in, high.across_in - 0.5 * high.width_in, {low.id, {}}, {high.id, {}}};
        const std::vector<Position> places = anchor_places(detail);
        const bool holds_anchor = std::any_of(places.begin(), places.end(), [&](Position place) {
            const double at_in = model::coordinate_in(place, along);
            return at_in > bay.from_in && at_in < bay.to_in;
        });
        if (!holds_anchor) continue;
        std::tie(bay.from_end.connection, bay.to_end.connection) =
            ends_there(detail.framing, along, bay.from_in, bay.to_in);
        bays.push_back(bay);
    }
    return bays;
}

std::vector<Bay> bays_of_blocks(const BaseDetail& detail, PlanAxis along) {
    std::vector<Bay> bays;
    for (const Block& block : detail.framing.blocks) {
        const bool known = std::any_of(bays.begin(), bays.end(), [&](const Bay& bay) {
            return bay.from_in == block.from_in && bay.to_in == block.to_in;
        });
        if (block.along == along && !known) bays.push_back({block.from_in, block.to_in, block.from_end, block.to_end});
    }
    return bays;
}

}  // namespace

std::vector<Position> anchor_places(const BaseDetail& detail) {
    std::vector<Position> places;
    const auto* const mount = std::get_if<model::PlateOnDeck>(&detail.mount);
    if (mount == nullptr) return places;
    for (const model::Hole& hole : mount->plate.holes) {
        if (model::anchor_group(detail, hole.id) != nullptr) places.push_back(hole.center);
    }
    return places;
}

PlanAxis blocks_along(const Framing& framing) {
    if (!framing.blocks.empty()) return framing.blocks.front().along;
    return framing.joists ? model::other(framing.joists->along) : PlanAxis::x;
}

std::vector<double> rows_of(const std::vector<Position>& places, PlanAxis along) {
    std::vector<double> all;
    all.reserve(places.size());
    for (const Position place : places) all.push_back(model::coordinate_in(place, model::other(along)));
    std::sort(all.begin(), all.end());
    std::vector<double> rows;
    for (const double place : all) {
        if (rows.empty() || place - rows.back() >= same_row_in) rows.push_back(place);
    }
    return rows;
}

std::vector<Bay> bays_with_anchors(const BaseDetail& detail, PlanAxis along) {
    const auto& joists = detail.framing.joists;
    const bool between_joists = joists && !joists->members.empty() && joists->along != along;
    return between_joists ? bays_between_joists(detail, along) : bays_of_blocks(detail, along);
}

std::vector<std::string> blocks_with_anchors(const BaseDetail& detail) {
    std::vector<std::string> ids;
    for (const Position place : anchor_places(detail)) {
        const std::optional<model::Seat> seat = model::seat(detail.framing, place);
        if (!seat || seat->member >= detail.framing.blocks.size()) continue;
        const std::string& id = detail.framing.blocks[seat->member].id;
        if (std::find(ids.begin(), ids.end(), id) == ids.end()) ids.push_back(id);
    }
    return ids;
}

bool blocks_fit(const Framing& framing) {
    const std::vector<model::Member> all = model::members(framing);
    for (std::size_t a = 0; a < framing.blocks.size(); ++a) {
        for (std::size_t b = a + 1; b < all.size(); ++b) {
            if (model::overlap(all[a], all[b])) return false;
        }
    }
    return true;
}

Applied clear_of_others(const Framing& framing) {
    return blocks_fit(framing) ? Applied{} : refused(format::phrase("a block would lie in another member"));
}

}  // namespace toehold::search
