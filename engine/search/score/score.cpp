#include "search/score/score.h"

#include "search/score/metal_pieces.h"
#include "search/score/side_pieces.h"
#include "units/length.h"

namespace toehold::search {
namespace {

using catalog::Anchor;
using catalog::PricedConnector;
using catalog::PricedFastener;
using catalog::Prices;
using catalog::Resolved;

/// Adds what has a price, and counts what has none.
struct Till {
    double cost = 0.0;
    int unpriced = 0;

    void add(const std::optional<double>& price, double times = 1.0) {
        if (price) {
            cost += *price * times;
        } else {
            ++unpriced;
        }
    }
};

void add_plates(const Resolved& resolved, const Prices& prices, Score& score, Till& till) {
    for (const CutPiece& piece : cut_pieces(resolved)) {
        score.weight_lb += piece.weight_lb;
        ++score.pieces;
        till.add(metal_price_per_lb(prices, piece.metal), piece.weight_lb);
        till.cost += piece.holes * prices.per_hole + piece.cut_in * prices.per_cut_in;
    }
}

std::optional<double> price_of(const Resolved& resolved, const Anchor& anchor, const Prices& prices) {
    const model::Fastener& fastener = anchor_groups(resolved.detail)[anchor.group].fastener;
    const double length_in = anchor_length_in(resolved, anchor);
    if (const auto* const lag = std::get_if<model::LagScrew>(&fastener))
        return fastener_price(prices, PricedFastener::lag_screw, lag->size, {}, length_in);
    if (const auto* const screw = std::get_if<model::WoodScrew>(&fastener))
        return fastener_price(prices, PricedFastener::wood_screw, screw->size, {}, length_in);
    if (const auto* const bolt = std::get_if<model::ThroughBolt>(&fastener))
        return fastener_price(prices, PricedFastener::bolt, bolt->size, bolt->grade, length_in);
    return prices.reported_fastener;
}

void add_anchors(const Resolved& resolved, const Prices& prices, Score& score, Till& till) {
    for (const Anchor& anchor : resolved.anchors) {
        ++score.anchors;
        ++score.pieces;
        score.weight_lb += shank_weight_lb(resolved, anchor);
        till.add(price_of(resolved, anchor, prices));
        for (const catalog::WasherSize& washer : washers_of(anchor)) {
            ++score.pieces;
            score.weight_lb += washer_weight_lb(washer, anchor);
            till.add(fastener_price(prices, PricedFastener::washer, washer.id, {}, 0.0));
        }
    }
}

std::optional<PricedConnector> priced_as(const model::EndConnection& connection) {
    if (const auto* const grain = std::get_if<model::EndGrainFasteners>(&connection))
        return grain->kind == model::EndGrainFasteners::Kind::nail ? PricedConnector::nails : PricedConnector::screws;
    if (std::holds_alternative<model::ToeNails>(connection)) return PricedConnector::toe_nails;
    if (std::holds_alternative<model::SideAngles>(connection)) return PricedConnector::angles;
    if (std::holds_alternative<model::ReportedConnector>(connection)) return PricedConnector::hardware;
    return std::nullopt;
}

int hardware_pieces(const model::EndConnection& connection) {
    if (const auto* const angles = std::get_if<model::SideAngles>(&connection)) return angles->sides;
    return std::holds_alternative<model::ReportedConnector>(connection) ? 1 : 0;
}

void add_blocks(const Resolved& resolved, const Prices& prices, Score& score, Till& till) {
    for (const model::Block& block : resolved.detail.framing.blocks) {
        const int pieces = block.plies * block.stack;
        score.pieces += pieces;
        const double feet = pieces * (block.to_in - block.from_in) / units::inches_per_foot;
        till.add(lumber_price_per_foot(prices, block.width_in, block.depth_in), feet);
        for (const model::BlockEnd* end : {&block.from_end, &block.to_end}) {
            score.pieces += hardware_pieces(end->connection);
            if (const auto kind = priced_as(end->connection)) till.add(connector_price(prices, *kind));
        }
    }
}

/// Pieces beside the first of each joist; those of a joist whose ends no file gives have no length, hence no price.
void add_joist_pieces(const Resolved& resolved, const Prices& prices, Score& score, Till& till) {
    const auto& joists = resolved.detail.framing.joists;
    if (!joists) return;
    for (const model::Joist& joist : joists->members) {
        for (int ply = 1; ply < joist.plies; ++ply) {
            ++score.pieces;
            if (joists->from_in && joists->to_in) {
                const double feet = (*joists->to_in - *joists->from_in) / units::inches_per_foot;
                till.add(lumber_price_per_foot(prices, joists->width_in, joists->depth_in), feet);
            } else {
                ++till.unpriced;
            }
        }
    }
}

/// The wood and the hardware that a post on a member's side brings.
void add_side(const Resolved& resolved, const Prices& prices, Score& score, Till& till) {
    for (const WoodPiece& piece : side_wood(resolved)) {
        ++score.pieces;
        till.add(lumber_price_per_foot(prices, piece.width_in, piece.depth_in),
                 piece.length_in / units::inches_per_foot);
    }
    const int connectors = side_connectors(resolved);
    score.pieces += connectors;
    if (connectors > 0) till.add(connector_price(prices, PricedConnector::hardware), connectors);
}

}  // namespace

Score score(const Resolved& resolved, const Prices& prices, double governing_ratio) {
    Score score;
    Till till;
    add_plates(resolved, prices, score, till);
    add_anchors(resolved, prices, score, till);
    add_blocks(resolved, prices, score, till);
    add_joist_pieces(resolved, prices, score, till);
    add_side(resolved, prices, score, till);
    score.steel_cost = till.cost;
    score.unpriced = till.unpriced;
    score.governing_ratio = governing_ratio;
    return score;
}

}  // namespace toehold::search
