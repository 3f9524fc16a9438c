#include "demand/line/check_line_input.h"
#include "demand/line/line_movement.h"
#include "demand/line/parts_of_line.h"

#include <algorithm>
#include <optional>
#include <string>
#include <utility>

namespace toehold::demand {
namespace {

bool post_varies(const LineInput& input, std::size_t post) {
    return top_flexibility(input, post, false).total() != top_flexibility(input, post, true).total();
}

bool posts_vary(const LineInput& input) {
    for (std::size_t post = 0; post < input.posts.size(); ++post) {
        if (post_varies(input, post)) return true;
    }
    return false;
}

bool wall_varies(const std::optional<LineWall>& wall) { return wall && wall->stiffness_lb_per_in.has_value(); }

std::vector<LineCorner> corners_of(const LineInput& input) {
    const bool rail_varies = input.soft_rail != input.stiff_rail;
    const bool vary = posts_vary(input) || wall_varies(input.first_wall) || wall_varies(input.last_wall);
    std::vector<LineCorner> corners;
    for (const bool rail_stiff : {false, true}) {
        if (rail_stiff && !rail_varies) break;
        corners.push_back({std::nullopt, false, false, rail_stiff});
        if (!vary) continue;
        corners.push_back({std::nullopt, false, true, rail_stiff});
        for (std::size_t post = 0; post < input.posts.size(); ++post) {
            corners.push_back({post, true, false, rail_stiff});
            corners.push_back({post, false, true, rail_stiff});
        }
    }
    return corners;
}

LineDemand nothing_found(const LineInput& input, const LineLayout& layout) {
    LineDemand demand;
    demand.posts.resize(input.posts.size());
    for (const LaidSpan& span : layout.spans) {
        demand.spans.emplace_back();
        demand.spans.back().held = span.pieces > 0;
    }
    if (layout.first_wall) demand.first_wall.emplace();
    if (layout.last_wall) demand.last_wall.emplace();
    return demand;
}

/// A corner that names a post is for that post and the rail beside it; others say the rest as well or better.
bool concerns(const LineCorner& corner, std::size_t post) { return !corner.post || *corner.post == post; }
bool concerns(const LineCorner& corner, const LaidSpan& span) {
    return !corner.post || span.from == corner.post || span.to == corner.post;
}

void raise_all(LineDemand& demand, const SolvedCorner& solved) {
    ++demand.frames;
    demand.residual = std::max(demand.residual, solved.frame.residual);
    for (std::size_t post = 0; post < demand.posts.size(); ++post) {
        if (concerns(solved.corner, post)) raise_post(demand.posts[post], solved, post);
    }
    for (std::size_t span = 0; span < demand.spans.size(); ++span) {
        if (concerns(solved.corner, solved.rail.layout.spans[span])) raise_span(demand.spans[span], solved, span);
    }
    if (demand.first_wall) raise_wall(*demand.first_wall, solved, WallSide::first);
    if (demand.last_wall) raise_wall(*demand.last_wall, solved, WallSide::last);
}

void add_movement(LineDemand& demand, const LineInput& input, const LineFrame& frame, const LoadedRail& rail) {
    for (std::size_t post = 0; post < demand.posts.size(); ++post)
        demand.posts[post].movement = movement_at_post(input, frame, rail, post);
    for (std::size_t span = 0; span < demand.spans.size(); ++span) {
        if (demand.spans[span].held) demand.spans[span].movement = movement_of_span(input, frame, rail, span);
    }
}

std::string first_id(const LineInput& input) { return input.posts.front().id; }
std::string last_id(const LineInput& input) { return input.posts.back().id; }

/// Why no number of the frame may be taken; empty where all may.
std::optional<format::Phrase> refusal(const LineInput& input, const LineFrame& frame) {
    if (!frame.stable)
        return format::phrase(
            "A part of the rail between posts {} and {} can move freely: too many joints "
            "without moment in one span, or one in an end span.",
            first_id(input), last_id(input));
    if (frame.residual > largest_line_residual)
        return format::phrase(
            "The forces along the rail between posts {} and {} do not balance to the digits asked "
            "for, since rail and posts differ too much in stiffness; no number is given.",
            first_id(input), last_id(input));
    return std::nullopt;
}

/// The pieces are those of level loads: corners that carry moment in plan are hinges here.
std::optional<format::Phrase> add_upright(LineDemand& demand, const LineInput& input) {
    const LineLayout layout = lay_out(input, true);
    const LineFrame frame = solve_on_rigid_posts(layout);
    if (std::optional<format::Phrase> refused = refusal(input, frame)) return refused;
    ++demand.frames;
    demand.residual = std::max(demand.residual, frame.residual);
    const LoadedRail rail = loaded_rail(layout, model::Directions::across);
    for (std::size_t span = 0; span < demand.spans.size(); ++span)
        raise_upright(demand.spans[span], {frame, rail, {}}, span);
    for (std::size_t post = 0; post < demand.posts.size(); ++post)
        raise_upright_post(demand.posts[post], {frame, rail, {}}, post);
    return std::nullopt;
}

/// A post that has play helps its neighbors only after it has moved: until then the whole push passes the others' tops
/// and connections.
void keep_where_others_have_play(LineDemand& demand, const LineInput& input) {
    for (std::size_t post = 0; post < demand.posts.size(); ++post) {
        PostShares& shares = demand.posts[post];
        for (std::size_t other = 0; other < input.posts.size(); ++other) {
            if (other == post || !(input.posts[other].play_rad > 0.0)) continue;
            shares.share.value = std::max(shares.share.value, 1.0);
            LineLargest& across = shares.connection.push_across;
            across.value = std::max(across.value, 1.0);
            if (input.directions != model::Directions::all_round) continue;
            LineLargest& along = shares.connection.push_along;
            along.value = std::max(along.value, 1.0);
        }
    }
}

}  // namespace

LineOutcome find_line_demand(const LineInput& input) {
    check_line_input(input);
    const LineLayout layout = lay_out(input, false);
    const LoadedRail rail = loaded_rail(layout, input.directions);
    LineDemand demand = nothing_found(input, layout);
    for (const LineCorner& corner : corners_of(input)) {
        const LineFrame frame = solve_frame(input, layout, corner);
        if (std::optional<format::Phrase> refused = refusal(input, frame)) return {std::nullopt, *refused};
        if (corner == LineCorner{}) add_movement(demand, input, frame, rail);
        raise_all(demand, {frame, rail, corner});
    }
    if (std::optional<format::Phrase> refused = add_upright(demand, input)) return {std::nullopt, *refused};
    keep_where_others_have_play(demand, input);
    return {std::move(demand), {}};
}

}  // namespace toehold::demand
