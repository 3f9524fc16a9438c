#include "demand/line/influence.h"

namespace toehold::demand {

Eigen::Matrix<double, 6, 1> at_nodes(const Eigen::VectorXd& motions, const RailPiece& piece) {
    Eigen::Matrix<double, 6, 1> six;
    six.head<3>() = motions.segment<3>(static_cast<Eigen::Index>(plan_freedoms * piece.from));
    six.tail<3>() = motions.segment<3>(static_cast<Eigen::Index>(plan_freedoms * piece.to));
    return six;
}

LoadedRail loaded_rail(const LineLayout& layout, model::Directions directions) {
    LoadedRail rail{layout, {}, directions == model::Directions::all_round};
    constexpr double parts = stations_a_piece - 1;
    for (std::size_t piece = 0; piece < layout.pieces.size(); ++piece) {
        const double third_in = layout.pieces[piece].plan_in * layout.pieces[piece].true_over_plan / parts / 3.0;
        for (std::size_t index = 0; index < stations_a_piece; ++index) {
            const bool end = index == 0 || index + 1 == stations_a_piece;
            const double weight = end ? 1.0 : index % 2 == 1 ? 4.0 : 2.0;
            const double at = static_cast<double>(index) / parts;
            rail.stations.push_back({piece, at, weight * third_in, on_nodes(layout.pieces[piece], at)});
        }
    }
    return rail;
}

PlanVector along(const RailPiece& piece) { return {piece.cosine, piece.sine}; }
PlanVector across(const RailPiece& piece) { return {-piece.sine, piece.cosine}; }

Eigen::Matrix<double, 6, 2> on_nodes(const RailPiece& piece, double at) {
    const PlanVector t = along(piece), n = across(piece);
    const double far = 3.0 * at * at - 2.0 * at * at * at;
    const double turn_from = piece.plan_in * at * (1.0 - at) * (1.0 - at);
    const double turn_to = -piece.plan_in * at * at * (1.0 - at);
    Eigen::Matrix<double, 6, 2> loads;
    loads.block<2, 2>(0, 0) = (1.0 - at) * t * t.transpose() + (1.0 - far) * n * n.transpose();
    loads.row(2) = turn_from * n.transpose();
    loads.block<2, 2>(3, 0) = at * t * t.transpose() + far * n * n.transpose();
    loads.row(5) = turn_to * n.transpose();
    return loads;
}

InfluenceLine influence_line(const LineFrame& frame, const LoadedRail& rail, const Response& quantity) {
    // What a unit load on each unknown does to the quantity: by reciprocity a sum of the unit loads' own motions.
    Eigen::VectorXd by_unknown = Eigen::VectorXd::Zero(frame.flexibility.rows());
    for (const auto& [unknown, counts] : quantity.of_motions)
        by_unknown += counts * frame.flexibility.col(static_cast<Eigen::Index>(unknown));
    InfluenceLine line;
    line.reserve(rail.stations.size());
    for (const Station& station : rail.stations) {
        const RailPiece& piece = rail.layout.pieces[station.piece];
        line.emplace_back(station.on_nodes.transpose() * at_nodes(by_unknown, piece));
        if (quantity.piece == station.piece && quantity.held) line.back() += quantity.held(station.at);
    }
    return line;
}

}  // namespace toehold::demand
