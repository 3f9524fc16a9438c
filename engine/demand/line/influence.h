#pragma once
// Influence lines of a guard line: what a unit force anywhere on the rail does to one quantity, and the largest of it
// under a push or under a line load on the worst stretches.
//
// A quantity is a sum of motions of nodes plus, for one inside a piece, what the load does there on the piece held at
// both ends. Motions of nodes come by a beam's own shape functions from the frame's unit loads, so that each line is
// exact at every station.
#include "demand/line/line_frame.h"

#include <functional>
#include <utility>
#include <vector>

namespace toehold::demand {

/// Stations on each piece: ends included, an odd number, as Simpson's rule wants it.
inline constexpr std::size_t stations_a_piece = 17;

struct Station {
    std::size_t piece = 0;
    double at = 0.0;                       ///< over the piece's length, 0 to 1
    double weight_in = 0.0;                ///< length along the rail it stands for: Simpson's rule, exact for cubics
    Eigen::Matrix<double, 6, 2> on_nodes;  ///< see the function of that name
};

/// The unknowns of a piece's nodes among all of them, `from` first.
[[nodiscard]] Eigen::Matrix<double, 6, 1> at_nodes(const Eigen::VectorXd& motions, const RailPiece& piece);

/// The stations of every piece in order, `stations_a_piece` each, and where the loads come from.
struct LoadedRail {
    const LineLayout& layout;
    std::vector<Station> stations;
    bool all_round = false;  ///< else square to each piece
};
[[nodiscard]] LoadedRail loaded_rail(const LineLayout& layout, model::Directions directions);

[[nodiscard]] PlanVector along(const RailPiece& piece);
/// To the left of the line's course.
[[nodiscard]] PlanVector across(const RailPiece& piece);

/// What a force along x and one along y at a place on a piece put on its two nodes: six unknowns, `from` first.
[[nodiscard]] Eigen::Matrix<double, 6, 2> on_nodes(const RailPiece& piece, double at);

struct Response {
    /// Unknowns of the frame and what each counts.
    std::vector<std::pair<std::size_t, double>> of_motions;
    /// The piece it lies in, and what a force along x and one along y at a place (0 to 1) there adds.
    std::optional<std::size_t> piece = std::nullopt;
    std::function<PlanVector(double)> held = nullptr;
};

/// One value a station: the quantity for a force along x and for one along y.
using InfluenceLine = std::vector<PlanVector>;
[[nodiscard]] InfluenceLine influence_line(const LineFrame& frame, const LoadedRail& rail, const Response& quantity);

/// Largest size under a push of 1 lb. Between stations a parabola through the largest and its neighbors.
[[nodiscard]] LineLargest largest_push(const LoadedRail& rail, const InfluenceLine& line);
/// Largest size under a line load of 1 lb/in, wherever it adds.
[[nodiscard]] LineLargest largest_line(const LoadedRail& rail, const InfluenceLine& line);

/// The same square to each stretch, all on one side of the rail, whatever directions the loads have: wind.
[[nodiscard]] LineLargest largest_wind(const LoadedRail& rail, const InfluenceLine& line);

/// Both components of a force: largest of its size.
struct InfluencePair {
    InfluenceLine x, y;
};
/// With the direction of the force itself, rad.
struct LargestForce {
    LineLargest largest;
    double force_direction_rad = 0.0;
};
[[nodiscard]] LargestForce largest_push(const LoadedRail& rail, const InfluencePair& force);
/// One direction for the whole load, or square to each stretch all on one side, the worse.
[[nodiscard]] LargestForce largest_line(const LoadedRail& rail, const InfluencePair& force);

/// The unit vector that the matrix makes longest.
[[nodiscard]] PlanVector stretched_most(const PlanMatrix& matrix);

/// The top of the parabola through three values an equal step apart, and its place in steps from the middle one; the
/// middle value itself where it is not the largest.
struct ParabolaTop {
    double value = 0.0, offset = 0.0;
};
[[nodiscard]] ParabolaTop parabola_top(double before, double here, double behind);

/// Takes the other where it is larger, as found at that corner.
void raise(LineLargest& largest, LineLargest other, const LineCorner& corner);

}  // namespace toehold::demand
