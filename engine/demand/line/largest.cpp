// The largest under a push or a line load, of what influence lines say.
//
// A line load stands on the stretches where it adds, in one direction d: the sum over stations of w max(0, v . d). For
// stretches given, the best d is along the sum of w v over them; for d given, the best stretches are those with
// v . d > 0. Taking each in turn never falls, and ends; it begins from directions all round, since it may end short of
// the largest.
#include "demand/line/influence.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>

namespace toehold::demand {
namespace {

constexpr int beginnings = 6;
constexpr int most_turns = 50;

double angle_rad(const PlanVector& v) { return std::atan2(v.y(), v.x()); }

PlanVector beginning(int index, double all_rad) {
    const double angle = all_rad * index / beginnings;
    return {std::cos(angle), std::sin(angle)};
}

LineLargest at_station(const LoadedRail& rail, std::size_t index, double value, const PlanVector& direction) {
    const Station& station = rail.stations[index];
    const RailPiece& piece = rail.layout.pieces[station.piece];
    return {value, piece.span, piece.from_in + station.at * piece.plan_in, angle_rad(direction), {}};
}

/// Of a station's place between two: a parabola through the values before, there and behind.
LineLargest between_stations(const LoadedRail& rail, LineLargest largest, std::size_t index,
                             const std::vector<double>& sizes) {
    const std::size_t in_piece = index % stations_a_piece;
    if (in_piece == 0 || in_piece + 1 == stations_a_piece) return largest;
    const ParabolaTop top = parabola_top(sizes[index - 1], sizes[index], sizes[index + 1]);
    largest.value = top.value;
    largest.along_in +=
        top.offset * rail.layout.pieces[rail.stations[index].piece].plan_in / static_cast<double>(stations_a_piece - 1);
    return largest;
}

/// `direction(index)` of the push that gives the size at a station.
template <class Direction>
LineLargest largest_size(const LoadedRail& rail, const std::vector<double>& sizes, Direction&& direction) {
    const auto most = std::max_element(sizes.begin(), sizes.end());
    const auto index = static_cast<std::size_t>(most - sizes.begin());
    return between_stations(rail, at_station(rail, index, *most, direction(index)), index, sizes);
}

/// A sum over stations, and the one that gives most of it.
struct Sum {
    double value = 0.0;
    PlanVector direction = PlanVector::Zero();
    std::size_t station = 0;
};

/// The largest over unit vectors d of the sum of w max(0, v . d).
Sum largest_sum(const LoadedRail& rail, const InfluenceLine& vectors) {
    Sum best;
    for (int start = 0; start < beginnings; ++start) {
        Sum now{-1.0, beginning(start, 2.0 * std::numbers::pi), 0};
        for (int turn = 0; turn < most_turns; ++turn) {
            PlanVector sum = PlanVector::Zero();
            double most = 0.0;
            std::size_t station = 0;
            for (std::size_t index = 0; index < vectors.size(); ++index) {
                const double part = rail.stations[index].weight_in * vectors[index].dot(now.direction);
                if (!(part > 0.0)) continue;
                sum += rail.stations[index].weight_in * vectors[index];
                if (part > most) most = part, station = index;
            }
            const double value = sum.norm();
            if (!(value > now.value * (1.0 + 1e-12)) || value == 0.0) break;
            now = {value, sum / value, station};
        }
        if (now.value > best.value) best = now;
    }
    return best;
}

/// The same with each station's force square to its piece, all on one side.
Sum largest_one_side(const LoadedRail& rail, const InfluenceLine& line) {
    std::array<Sum, 2> sides;
    std::array<double, 2> most{};
    for (std::size_t index = 0; index < line.size(); ++index) {
        const PlanVector square = across(rail.layout.pieces[rail.stations[index].piece]);
        const double part = rail.stations[index].weight_in * line[index].dot(square);
        const std::size_t side = part > 0.0 ? 0 : 1;
        sides[side].value += std::abs(part);
        if (std::abs(part) <= most[side]) continue;
        most[side] = std::abs(part);
        sides[side].station = index;
        sides[side].direction = part > 0.0 ? square : PlanVector(-square);
    }
    return sides[0].value >= sides[1].value ? sides[0] : sides[1];
}

LineLargest told(const LoadedRail& rail, const Sum& sum) {
    return at_station(rail, sum.station, sum.value, sum.direction);
}

PlanMatrix matrix_at(const InfluencePair& force, std::size_t index) {
    PlanMatrix matrix;
    matrix << force.x[index].transpose(), force.y[index].transpose();
    return matrix;
}

/// The largest over unit vectors d and e of the sum of w max(0, e . G d): d the load's direction, e the force's.
struct PairSum {
    Sum load;
    PlanVector force = PlanVector::Zero();
};
PairSum largest_pair_sum(const LoadedRail& rail, const InfluencePair& force) {
    PairSum best;
    for (int start = 0; start < beginnings; ++start) {
        PairSum now;
        now.load.value = -1.0;
        now.load.direction = now.force = beginning(start, std::numbers::pi);
        for (int turn = 0; turn < most_turns; ++turn) {
            PlanMatrix sum = PlanMatrix::Zero();
            double most = 0.0;
            std::size_t station = 0;
            for (std::size_t index = 0; index < rail.stations.size(); ++index) {
                const PlanMatrix matrix = rail.stations[index].weight_in * matrix_at(force, index);
                const double part = now.force.dot(matrix * now.load.direction);
                if (!(part > 0.0)) continue;
                sum += matrix;
                if (part > most) most = part, station = index;
            }
            const PlanVector direction = stretched_most(sum), made = sum * direction;
            const double value = made.norm();
            if (!(value > now.load.value * (1.0 + 1e-12)) || value == 0.0) break;
            now = {{value, direction, station}, made / value};
        }
        if (now.load.value > best.load.value) best = now;
    }
    return best;
}

}  // namespace

PlanVector stretched_most(const PlanMatrix& matrix) {
    const PlanMatrix square = matrix.transpose() * matrix;
    const double angle = 0.5 * std::atan2(2.0 * square(0, 1), square(0, 0) - square(1, 1));
    return {std::cos(angle), std::sin(angle)};
}

ParabolaTop parabola_top(double before, double here, double behind) {
    const double bend = before - 2.0 * here + behind;
    if (here < before || here < behind || !(bend < 0.0)) return {here, 0.0};
    const double offset = 0.5 * (before - behind) / bend;
    return {here - 0.25 * (before - behind) * offset, offset};
}

LineLargest largest_push(const LoadedRail& rail, const InfluenceLine& line) {
    const auto square = [&](std::size_t index) { return across(rail.layout.pieces[rail.stations[index].piece]); };
    std::vector<double> sizes;
    for (std::size_t index = 0; index < line.size(); ++index)
        sizes.push_back(rail.all_round ? line[index].norm() : std::abs(line[index].dot(square(index))));
    return largest_size(rail, sizes, [&](std::size_t index) -> PlanVector {
        if (rail.all_round) return line[index];
        return line[index].dot(square(index)) < 0.0 ? PlanVector(-square(index)) : square(index);
    });
}

LineLargest largest_line(const LoadedRail& rail, const InfluenceLine& line) {
    const Sum one_side = largest_one_side(rail, line);
    if (!rail.all_round) return told(rail, one_side);
    const Sum one_way = largest_sum(rail, line);
    return told(rail, one_way.value >= one_side.value ? one_way : one_side);
}

LineLargest largest_wind(const LoadedRail& rail, const InfluenceLine& line) {
    return told(rail, largest_one_side(rail, line));
}

LargestForce largest_push(const LoadedRail& rail, const InfluencePair& force) {
    const auto square = [&](std::size_t index) { return across(rail.layout.pieces[rail.stations[index].piece]); };
    const auto worst = [&](std::size_t index) -> PlanVector {
        return rail.all_round ? stretched_most(matrix_at(force, index)) : square(index);
    };
    std::vector<double> sizes;
    for (std::size_t index = 0; index < rail.stations.size(); ++index)
        sizes.push_back((matrix_at(force, index) * worst(index)).norm());
    LargestForce result;
    result.largest = largest_size(rail, sizes, [&](std::size_t index) -> PlanVector {
        PlanVector direction = worst(index);
        result.force_direction_rad = angle_rad(matrix_at(force, index) * direction);
        return direction;
    });
    return result;
}

LargestForce largest_line(const LoadedRail& rail, const InfluencePair& force) {
    InfluenceLine square_forces;
    for (std::size_t index = 0; index < rail.stations.size(); ++index)
        square_forces.emplace_back(matrix_at(force, index) * across(rail.layout.pieces[rail.stations[index].piece]));
    const Sum one_side = largest_sum(rail, square_forces);
    if (rail.all_round) {
        const PairSum one_way = largest_pair_sum(rail, force);
        if (one_way.load.value > one_side.value) return {told(rail, one_way.load), angle_rad(one_way.force)};
    }
    LineLargest largest = told(rail, one_side);
    largest.direction_rad = angle_rad(across(rail.layout.pieces[rail.stations[one_side.station].piece]));
    return {largest, angle_rad(one_side.direction)};
}

void raise(LineLargest& largest, LineLargest other, const LineCorner& corner) {
    // Equal but for rounding: the first stays, so that results do not depend on chance.
    if (!(other.value > largest.value * (1.0 + 1e-9))) return;
    other.corner = corner;
    largest = other;
}

}  // namespace toehold::demand
