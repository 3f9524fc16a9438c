// A piece with bending moments M at its ends carries shear (M_to - M_from)/L; M = E I v''. Held at both ends under a
// force P across it at a from the one and b from the other end, M = P a b^2/L^2 and P a^2 b/L^2 there (fixed-end
// moments, any table of beams), and along it the force P b/L before and -P a/L behind.
#include "demand/line/quantities.h"

namespace toehold::demand {
namespace {

/// The six unknowns of a piece's nodes, each with what it counts.
Response of_piece(const RailPiece& piece, const Eigen::Matrix<double, 6, 1>& counts) {
    Response quantity;
    for (std::size_t unknown = 0; unknown < plan_freedoms; ++unknown) {
        const auto row = static_cast<Eigen::Index>(unknown);
        quantity.of_motions.emplace_back(plan_freedoms * piece.from + unknown, counts(row));
        quantity.of_motions.emplace_back(plan_freedoms * piece.to + unknown, counts(row + 3));
    }
    return quantity;
}

/// E I v'' at a place, of the motions of the ends.
Eigen::Matrix<double, 6, 1> curvature(const RailPiece& piece, double bending_lb_in2, double at) {
    const double length = piece.plan_in;
    const double move = (12.0 * at - 6.0) / (length * length);
    Eigen::Matrix<double, 6, 1> counts;
    counts << move * across(piece), (6.0 * at - 4.0) / length, -move * across(piece), (6.0 * at - 2.0) / length;
    return bending_lb_in2 * counts;
}

/// Fixed-end moments over the piece's length, for a unit force across it.
double fixed_from(double at) { return at * (1.0 - at) * (1.0 - at); }
double fixed_to(double at) { return at * at * (1.0 - at); }

}  // namespace

Response post_force(const LineFrame& frame, const LineLayout& layout, std::size_t post, const PlanVector& along) {
    const PlanVector counts = frame.posts[post].transpose() * along;
    const std::size_t first = plan_freedoms * layout.post_nodes[post];
    Response force;
    force.of_motions = {{first + move_x, counts.x()}, {first + move_y, counts.y()}};
    return force;
}

Response axial_force(const LineFrame& frame, const LineLayout& layout, std::size_t piece, PieceEnd end) {
    const RailPiece& of = layout.pieces[piece];
    const double stiffness = frame.pieces[piece].axial_lb / of.plan_in;
    Eigen::Matrix<double, 6, 1> counts;
    counts << -stiffness * along(of), 0.0, stiffness * along(of), 0.0;
    Response force = of_piece(of, counts);
    force.piece = piece;
    force.held = [of, end](double at) -> PlanVector { return (end == PieceEnd::from ? 1.0 - at : -at) * along(of); };
    return force;
}

Response shear_force(const LineFrame& frame, const LineLayout& layout, std::size_t piece, PieceEnd end) {
    const RailPiece& of = layout.pieces[piece];
    const double bending = frame.pieces[piece].bending_lb_in2;
    Response force = of_piece(of, (curvature(of, bending, 1.0) - curvature(of, bending, 0.0)) / of.plan_in);
    force.piece = piece;
    force.held = [of, end](double at) -> PlanVector {
        const double simple = end == PieceEnd::from ? -(1.0 - at) : at;
        return (fixed_to(at) - fixed_from(at) + simple) * across(of);
    };
    return force;
}

Response moment(const LineFrame& frame, const LineLayout& layout, std::size_t piece, double at) {
    const RailPiece& of = layout.pieces[piece];
    Response moment = of_piece(of, curvature(of, frame.pieces[piece].bending_lb_in2, at));
    moment.piece = piece;
    moment.held = [of, at](double load) -> PlanVector {
        const double simple = at < load ? at * (1.0 - load) : load * (1.0 - at);
        return of.plan_in * (fixed_from(load) * (1.0 - at) + fixed_to(load) * at - simple) * across(of);
    };
    return moment;
}

}  // namespace toehold::demand
