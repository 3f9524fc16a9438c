#include "demand/line/line_movement.h"

#include <cmath>

namespace toehold::demand {
namespace {

/// A place on the rail.
struct RailPlace {
    std::size_t piece = 0;
    double at = 0.0;
};

/// Motions of all nodes' unknowns under a level unit force.
Eigen::VectorXd motions_under(const LineFrame& frame, const RailPiece& piece, double at, const PlanVector& force) {
    const Eigen::Matrix<double, 6, 1> loads = on_nodes(piece, at) * force;
    const auto from = static_cast<Eigen::Index>(plan_freedoms * piece.from);
    const auto to = static_cast<Eigen::Index>(plan_freedoms * piece.to);
    return frame.flexibility.middleCols<3>(from) * loads.head<3>() +
           frame.flexibility.middleCols<3>(to) * loads.tail<3>();
}

/// What a unit force moves its own place on a piece held at both ends.
PlanMatrix held_flexibility(const RailPiece& piece, const PieceStiffness& stiffness, double at) {
    const double length = piece.plan_in, part = at * (1.0 - at);
    const PlanVector t = along(piece), n = across(piece);
    return std::pow(part * length, 3) / (3.0 * stiffness.bending_lb_in2) * n * n.transpose() +
           part * length / stiffness.axial_lb * t * t.transpose();
}

/// Motion of a place on a piece, from those of its nodes.
PlanVector carried(const Eigen::VectorXd& motions, const RailPiece& piece, double at) {
    return on_nodes(piece, at).transpose() * at_nodes(motions, piece);
}

PlanVector motion_of(const Eigen::VectorXd& motions, std::size_t node) {
    return motions.segment<2>(static_cast<Eigen::Index>(plan_freedoms * node));
}

class Movement {
  public:
    Movement(const LineInput& input, const LineFrame& frame, const LoadedRail& rail, RailPlace place)
        : input_(input), frame_(frame), layout_(rail.layout), piece_(layout_.pieces[place.piece]) {
        const PlanMatrix held = held_flexibility(piece_, frame.pieces[place.piece], place.at);
        PlanMatrix own;
        for (const Eigen::Index axis : {0, 1}) {
            const PlanVector unit = PlanVector::Unit(axis);
            own.col(axis) = carried(motions_under(frame, piece_, place.at, unit), piece_, place.at) + held * unit;
        }
        push_ = rail.all_round && !piece_.sloping ? stretched_most(own) : across(piece_);
        motion_ = own * push_;
        if (piece_.sloping) motion_ = across(piece_).dot(motion_) * across(piece_);
        motions_ = motions_under(frame, piece_, place.at, push_);
        along_ = motion_.norm() > 0.0 ? PlanVector(motion_ / motion_.norm()) : push_;
        found_.direction_rad = std::atan2(push_.y(), push_.x());
    }

    /// `part` of what the post gives at its top, and its connection to the rail's end at that node.
    void add_post(std::size_t post, double part, std::size_t rail_node) {
        const TopFlexibility top = top_flexibility(input_, post, false);
        const PlanVector of_top = motion_of(motions_, layout_.post_nodes[post]);
        const PlanVector force = part * frame_.posts[post] * of_top;
        if (layout_.joints.empty())
            found_.connection_in += along_.dot(top.connection * force);
        else
            found_.connection_in += part * along_.dot(motion_of(motions_, rail_node) - of_top);
        found_.post_in += along_.dot(top.post * force);
        found_.base_in += along_.dot(top.base * force);
    }

    void add_wall(std::size_t node, double part) {
        found_.connection_in += part * along_.dot(motion_of(motions_, node));
    }

    /// The rail gives the rest.
    [[nodiscard]] LineMovement found() {
        found_.rail_in = motion_.norm() - found_.connection_in - found_.post_in - found_.base_in;
        return found_;
    }

  private:
    const LineInput& input_;
    const LineFrame& frame_;
    const LineLayout& layout_;
    const RailPiece& piece_;
    PlanVector push_, motion_, along_;  ///< along: of the motion, a unit vector
    Eigen::VectorXd motions_;
    LineMovement found_;
};

/// Where on the span's pieces, by its length level.
RailPlace place_on(const LineLayout& layout, const LaidSpan& span, double at_in) {
    std::size_t piece = span.first_piece;
    const auto end = [&] { return layout.pieces[piece].from_in + layout.pieces[piece].plan_in; };
    while (piece + 1 < span.first_piece + span.pieces && end() < at_in) ++piece;
    return {piece, (at_in - layout.pieces[piece].from_in) / layout.pieces[piece].plan_in};
}

std::size_t first_node(const LineLayout& layout, const LaidSpan& span) { return layout.pieces[span.first_piece].from; }
std::size_t last_node(const LineLayout& layout, const LaidSpan& span) {
    return layout.pieces[span.first_piece + span.pieces - 1].to;
}

/// The rail's at a post; the last of two ends that meet there.
std::size_t rail_node(const LineLayout& layout, std::size_t post) {
    for (auto joint = layout.joints.rbegin(); joint != layout.joints.rend(); ++joint) {
        if (joint->post == post) return joint->node;
    }
    return layout.post_nodes[post];
}

}  // namespace

LineMovement movement_at_post(const LineInput& input, const LineFrame& frame, const LoadedRail& rail,
                              std::size_t post) {
    const std::vector<RailPiece>& pieces = rail.layout.pieces;
    const std::size_t node = rail_node(rail.layout, post);
    RailPlace place;
    for (std::size_t piece = 0; piece < pieces.size(); ++piece) {
        if (pieces[piece].from == node) place = {piece, 0.0};
        if (pieces[piece].to == node) place = {piece, 1.0};
    }
    Movement movement(input, frame, rail, place);
    movement.add_post(post, 1.0, node);
    LineMovement found = movement.found();
    found.rail_in = 0.0;  // but for rounding
    return found;
}

LineMovement movement_of_span(const LineInput& input, const LineFrame& frame, const LoadedRail& rail,
                              std::size_t span) {
    const LaidSpan& of = rail.layout.spans[span];
    const double at = !of.in_the_air ? 0.5 : of.from ? 1.0 : 0.0;
    Movement movement(input, frame, rail, place_on(rail.layout, of, at * of.plan_in));
    const std::size_t first = first_node(rail.layout, of), last = last_node(rail.layout, of);
    if (of.in_the_air) {
        movement.add_post(of.from ? *of.from : *of.to, 1.0, of.from ? first : last);
        return movement.found();
    }
    if (of.from) movement.add_post(*of.from, 1.0 - at, first);
    if (of.to) movement.add_post(*of.to, at, last);
    if (!of.from || !of.to) movement.add_wall(of.from ? last : first, 0.5);
    return movement.found();
}

}  // namespace toehold::demand
