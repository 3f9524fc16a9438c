#include "demand/line/parts_of_line.h"

#include "demand/line/quantities.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace toehold::demand {
namespace {

/// Eighths of a piece: each stands at the end of a pair of stations, so that Simpson's rule meets no kink within one.
constexpr std::size_t sections = 9;

/// An end of a piece that meets a post or a wall.
struct JoinedEnd {
    std::size_t piece = 0;
    PieceEnd end = PieceEnd::from;
};

JoinedEnd start_of(const LaidSpan& span) { return {span.first_piece, PieceEnd::from}; }
JoinedEnd finish_of(const LaidSpan& span) { return {span.first_piece + span.pieces - 1, PieceEnd::to}; }

std::vector<JoinedEnd> ends_at(const LineLayout& layout, std::size_t post) {
    std::vector<JoinedEnd> ends;
    for (const LaidSpan& span : layout.spans) {
        if (span.pieces == 0) continue;
        if (span.to == post) ends.push_back(finish_of(span));
        if (span.from == post) ends.push_back(start_of(span));
    }
    return ends;
}

/// A line load lies on many posts at once, whose bases are alike: one stiff among soft ones is no case of it.
bool counts_for_line(const LineCorner& corner) { return !corner.post; }

/// One quantity under each kind of load.
struct Loaded {
    LineLargest &push, &line, &wind;
};

void raise_each(const Loaded& loaded, const SolvedCorner& solved, const Response& quantity) {
    const InfluenceLine influence = influence_line(solved.frame, solved.rail, quantity);
    raise(loaded.push, largest_push(solved.rail, influence), solved.corner);
    if (!counts_for_line(solved.corner)) return;
    raise(loaded.line, largest_line(solved.rail, influence), solved.corner);
    raise(loaded.wind, largest_wind(solved.rail, influence), solved.corner);
}

Loaded across_of(ConnectionForces& connection) {
    return {connection.push_across, connection.line_across, connection.wind_across};
}
Loaded along_of(ConnectionForces& connection) {
    return {connection.push_along, connection.line_along, connection.wind_along};
}

/// Of the joint at a piece's end.
void raise_end(ConnectionForces& connection, const SolvedCorner& solved, const JoinedEnd& end) {
    const LineLayout& layout = solved.rail.layout;
    raise_each(across_of(connection), solved, shear_force(solved.frame, layout, end.piece, end.end));
    raise_each(along_of(connection), solved, axial_force(solved.frame, layout, end.piece, end.end));
}

void raise_connection(ConnectionForces& connection, const SolvedCorner& solved, std::size_t post) {
    const LineLayout& layout = solved.rail.layout;
    for (const JoinedEnd& end : ends_at(layout, post)) {
        if (layout.jointed) {
            raise_end(connection, solved, end);
            continue;
        }
        const RailPiece& piece = layout.pieces[end.piece];
        raise_each(across_of(connection), solved, post_force(solved.frame, layout, post, across(piece)));
        raise_each(along_of(connection), solved, post_force(solved.frame, layout, post, along(piece)));
    }
}

LineLargest times(LineLargest largest, double factor) {
    largest.value *= factor;
    return largest;
}

/// The largest of those found at equal steps along a piece, or between two.
LineLargest largest_of(const std::array<LineLargest, sections>& found) {
    std::size_t most = 0;
    for (std::size_t index = 1; index < sections; ++index) {
        if (found[index].value > found[most].value) most = index;
    }
    LineLargest largest = found[most];
    if (most == 0 || most + 1 == sections) return largest;
    const ParabolaTop top = parabola_top(found[most - 1].value, found[most].value, found[most + 1].value);
    const LineLargest& toward = found[top.offset < 0.0 ? most - 1 : most + 1];
    largest.value = top.value;
    if (toward.span == largest.span) largest.along_in += std::abs(top.offset) * (toward.along_in - largest.along_in);
    return largest;
}

/// A stretch's actions under each kind of load.
struct LoadedActions {
    RailActions &push, &line, &wind;
};

/// Line loads in every corner, those that name a post too: on the safe side.
void raise_moment(const LoadedActions& actions, const SolvedCorner& solved, std::size_t piece, double factor) {
    std::array<LineLargest, sections> pushes, lines, winds;
    for (std::size_t index = 0; index < sections; ++index) {
        const double at = static_cast<double>(index) / static_cast<double>(sections - 1);
        const InfluenceLine influence =
            influence_line(solved.frame, solved.rail, moment(solved.frame, solved.rail.layout, piece, at));
        pushes[index] = largest_push(solved.rail, influence);
        lines[index] = largest_line(solved.rail, influence);
        winds[index] = largest_wind(solved.rail, influence);
    }
    raise(actions.push.moment_lb_in, times(largest_of(pushes), factor), solved.corner);
    raise(actions.line.moment_lb_in, times(largest_of(lines), factor), solved.corner);
    raise(actions.wind.moment_lb_in, times(largest_of(winds), factor), solved.corner);
}

void raise_shear(const LoadedActions& actions, const SolvedCorner& solved, std::size_t piece) {
    for (const PieceEnd end : {PieceEnd::from, PieceEnd::to})
        raise_each({actions.push.shear_lb, actions.line.shear_lb, actions.wind.shear_lb}, solved,
                   shear_force(solved.frame, solved.rail.layout, piece, end));
}

InfluencePair force_on_post(const SolvedCorner& solved, std::size_t post) {
    const auto component = [&](const PlanVector& axis) {
        return influence_line(solved.frame, solved.rail, post_force(solved.frame, solved.rail.layout, post, axis));
    };
    return {component(PlanVector::UnitX()), component(PlanVector::UnitY())};
}

}  // namespace

void raise_post(PostShares& post, const SolvedCorner& solved, std::size_t index) {
    const InfluencePair force = force_on_post(solved, index);
    const LargestForce push = largest_push(solved.rail, force);
    const double before = post.share.value;
    raise(post.share, push.largest, solved.corner);
    if (post.share.value != before) post.force_direction_rad = push.force_direction_rad;
    if (counts_for_line(solved.corner))
        raise(post.line_length_in, largest_line(solved.rail, force).largest, solved.corner);
    raise_connection(post.connection, solved, index);
}

void raise_span(LineSpan& span, const SolvedCorner& solved, std::size_t index) {
    const LaidSpan& laid = solved.rail.layout.spans[index];
    for (std::size_t piece = laid.first_piece; piece < laid.first_piece + laid.pieces; ++piece) {
        const LoadedActions level{span.push, span.line, span.wind};
        raise_moment(level, solved, piece, solved.rail.layout.pieces[piece].true_over_plan);
        raise_shear(level, solved, piece);
        for (const PieceEnd end : {PieceEnd::from, PieceEnd::to})
            raise_each({span.push.axial_lb, span.line.axial_lb, span.wind.axial_lb}, solved,
                       axial_force(solved.frame, solved.rail.layout, piece, end));
    }
}

void raise_upright(LineSpan& span, const SolvedCorner& solved, std::size_t index) {
    const LaidSpan& laid = solved.rail.layout.spans[index];
    RailActions no_wind;  // it blows level
    const LoadedActions upright{span.upright_push, span.upright_line, no_wind};
    for (std::size_t piece = laid.first_piece; piece < laid.first_piece + laid.pieces; ++piece) {
        raise_moment(upright, solved, piece, 1.0);
        raise_shear(upright, solved, piece);
    }
}

void raise_upright_post(PostShares& post, const SolvedCorner& solved, std::size_t index) {
    const InfluencePair force = force_on_post(solved, index);
    post.upright_share = std::max(post.upright_share, largest_push(solved.rail, force).largest.value);
}

void raise_wall(ConnectionForces& wall, const SolvedCorner& solved, WallSide side) {
    const std::vector<LaidSpan>& spans = solved.rail.layout.spans;
    raise_end(wall, solved, side == WallSide::first ? start_of(spans.front()) : finish_of(spans.back()));
}

}  // namespace toehold::demand
