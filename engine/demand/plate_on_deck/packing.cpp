#include "demand/plate_on_deck/packing.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace toehold::demand {
namespace {

constexpr double clearance_in = 1.0 / 16.0;

double circle_in2(double diameter_in) { return 0.25 * std::numbers::pi * diameter_in * diameter_in; }

/// All that anchors take out of a piece.
double holes_in2(const catalog::Resolved& resolved, const model::Packing& packing, const model::PlanRectangle& covers) {
    double sum = 0.0;
    for (const catalog::Anchor& anchor : resolved.anchors) {
        if (!model::contains(covers, model::in_plan(anchor.at))) continue;
        sum += circle_in2(packing.hole_in > 0.0 ? packing.hole_in : anchor.diameter_in + clearance_in);
    }
    return sum;
}

}  // namespace

std::vector<PackingPiece> packing_pieces(const catalog::Resolved& resolved) {
    std::vector<PackingPiece> pieces;
    const auto& packing = on_deck(resolved.detail).layers.packing;
    if (!packing) return pieces;
    const bool round = packing->shape == model::PackingShape::round;
    const double width_in = round ? std::sqrt(circle_in2(packing->width_in)) : packing->width_in;
    const double depth_in = round ? width_in : packing->depth_in;
    for (const model::Position center : model::packing_places(resolved.detail)) {
        PackingPiece piece;
        piece.center = center;
        piece.covers = {{},
                        center.x_in - 0.5 * width_in,
                        center.x_in + 0.5 * width_in,
                        center.y_in - 0.5 * depth_in,
                        center.y_in + 0.5 * depth_in};
        piece.solid = std::max(1.0 - holes_in2(resolved, *packing, piece.covers) / (width_in * depth_in), 0.0);
        pieces.push_back(piece);
    }
    return pieces;
}

}  // namespace toehold::demand
