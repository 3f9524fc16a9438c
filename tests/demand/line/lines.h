#pragma once
// Guard lines of round numbers for tests: posts on springs, and a rail.
#include "demand/line/line_demand.h"

#include <catch2/catch.hpp>

#include <cmath>
#include <numbers>

namespace toehold::test {

inline constexpr double half_turn = std::numbers::pi;

/// A base that gives nothing, as near as matters.
inline constexpr demand::BaseStiffness rigid_base{1e14, 1e14, 1e14, 1e14};

/// One stiffness, soft and stiff ends alike, facing +y, 42 in high, on a rigid base. `post_lb_in2`: E I of the post.
inline demand::LinePost line_post(model::Position at, double post_lb_in2) {
    demand::LinePost post;
    post.id = "P" + std::to_string(std::lround(at.x_in)) + "/" + std::to_string(std::lround(at.y_in));
    post.at = at;
    post.height_in = 42.0;
    post.outward_rad = 0.5 * half_turn;
    const double bends = std::pow(post.height_in, 3) / (3.0 * post_lb_in2);
    post.soft_post = post.stiff_post = {bends, bends};
    post.base = {rigid_base, rigid_base, rigid_base, {}};
    return post;
}

/// Posts along x, a continuous rail, loads across it. The rail does not stretch, as near as matters.
inline demand::LineInput straight_line(std::size_t posts, double span_in, double rail_lb_in2, double post_lb_in2) {
    demand::LineInput line;
    for (std::size_t index = 0; index < posts; ++index)
        line.posts.push_back(line_post({span_in * static_cast<double>(index), 0.0}, post_lb_in2));
    line.soft_rail = line.stiff_rail = {1e9, rail_lb_in2};
    line.run = model::RailRun::continuous;
    line.directions = model::Directions::across;
    return line;
}

inline demand::LineDemand line_demand_of(const demand::LineInput& line) {
    demand::LineOutcome outcome = demand::find_line_demand(line);
    INFO(format::english(outcome.failure));
    REQUIRE(outcome.demand);
    CHECK(outcome.demand->residual < 1e-8);
    return *outcome.demand;
}

}  // namespace toehold::test
