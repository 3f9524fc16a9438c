// Lines that turn, rise, and the same line with its posts as members of a frame in space.
#include "demand/line/influence.h"
#include "demand/line/lines.h"
#include "demand/line/quantities.h"
#include "mechanics/space_frame/influence_lines.h"
#include "support/compare.h"

using namespace toehold;
using test::line_demand_of;
using test::line_post;
using test::straight_line;

namespace {

constexpr double stiff_lb_in2 = 9e6;

/// Legs of 60 in: along x, then along y.
demand::LineInput l_shaped(std::size_t first_leg, std::size_t second_leg) {
    demand::LineInput line = straight_line(first_leg + 1, 60.0, stiff_lb_in2, stiff_lb_in2);
    const model::Position corner = line.posts.back().at;
    for (std::size_t index = 1; index <= second_leg; ++index)
        line.posts.push_back(line_post({corner.x_in, 60.0 * static_cast<double>(index)}, stiff_lb_in2));
    line.directions = model::Directions::all_round;
    return line;
}

}  // namespace

TEST_CASE("a corner post shares with the far post of each leg", "[closed-form]") {
    demand::LineInput line = l_shaped(1, 1);
    line.run = model::RailRun::broken;
    const demand::LineDemand demand = line_demand_of(line);
    // Each leg is a strut between two equal posts. At the corner a push in x goes half to the far post of the leg along
    // x, one in y half to the other. At a far post a push across its leg stays.
    CHECK_CLOSE(demand.posts[1].share.value, 0.5, 1e-4, 0.0);
    CHECK_CLOSE(demand.posts[0].share.value, 1.0, 1e-4, 0.0);
    CHECK_CLOSE(std::abs(std::cos(demand.posts[0].share.direction_rad)), 0.0, 0.0, 1e-3);
    // One direction over both legs. Along x: the leg along x gives half of its 60 in, that along y half of its 60 in,
    // and of the 60 in that reach the corner so half goes on to the far post; and alike along y.
    CHECK_CLOSE(demand.posts[1].line_length_in.value, 45.0, 1e-4, 0.0);
    // Half of a push along a leg at the corner stays in the leg, half passes its joint; all of one across the leg does.
    CHECK_CLOSE(demand.posts[1].connection.push_along.value, 0.5, 1e-4, 0.0);
    CHECK_CLOSE(demand.posts[1].connection.push_across.value, 1.0, 1e-4, 0.0);
}

TEST_CASE("a corner that carries moment in plan shares more", "[property]") {
    demand::LineInput line = l_shaped(2, 2);
    const demand::LineDemand hinged = line_demand_of(line);
    line.corners_rigid = true;
    const demand::LineDemand rigid = line_demand_of(line);
    CHECK(rigid.posts[1].share.value < hinged.posts[1].share.value);
    CHECK(rigid.posts[2].share.value <= hinged.posts[2].share.value * (1.0 + 1e-9));
    // Both legs are alike, mirrored in the corner.
    for (const demand::LineDemand* demand : {&hinged, &rigid}) {
        CHECK_CLOSE(demand->posts[0].share.value, demand->posts[4].share.value, 1e-6, 0.0);
        CHECK_CLOSE(demand->posts[1].line_length_in.value, demand->posts[3].line_length_in.value, 1e-6, 0.0);
        CHECK_CLOSE(demand->spans[0].push.moment_lb_in.value, demand->spans[3].push.moment_lb_in.value, 1e-6, 0.0);
    }
    // Upright every corner is a hinge.
    CHECK_CLOSE(rigid.spans[1].upright_push.moment_lb_in.value, hinged.spans[1].upright_push.moment_lb_in.value, 1e-9,
                0.0);
}

TEST_CASE("from every station all posts together take the push and its moment", "[property]") {
    demand::LineInput line = l_shaped(2, 3);
    line.corners_rigid = true;
    line.splices_in = {80.0};
    line.posts[1].base.soft = line.posts[1].base.stiff = {2e5, 1e5, 9e4, 3e5};
    line.posts[3].outward_rad = 0.3;
    const demand::LineLayout layout = demand::lay_out(line, false);
    const demand::LoadedRail rail = demand::loaded_rail(layout, line.directions);
    const demand::LineFrame frame = demand::solve_frame(line, layout, {});
    REQUIRE(frame.stable);
    std::vector<demand::PlanMatrix> sums(rail.stations.size(), demand::PlanMatrix::Zero());
    std::vector<demand::PlanVector> moments(rail.stations.size(), demand::PlanVector::Zero());
    for (std::size_t post = 0; post < line.posts.size(); ++post) {
        const auto x = influence_line(frame, rail, post_force(frame, layout, post, demand::PlanVector::UnitX()));
        const auto y = influence_line(frame, rail, post_force(frame, layout, post, demand::PlanVector::UnitY()));
        const model::Position at = line.posts[post].at;
        for (std::size_t index = 0; index < rail.stations.size(); ++index) {
            sums[index].row(0) += x[index].transpose();
            sums[index].row(1) += y[index].transpose();
            moments[index] += at.x_in * y[index] - at.y_in * x[index];
        }
    }
    for (std::size_t index = 0; index < rail.stations.size(); ++index) {
        const demand::RailPiece& piece = layout.pieces[rail.stations[index].piece];
        const model::Position from = layout.nodes[piece.from];
        const double x = from.x_in + rail.stations[index].at * piece.plan_in * piece.cosine;
        const double y = from.y_in + rail.stations[index].at * piece.plan_in * piece.sine;
        CHECK((sums[index] - demand::PlanMatrix::Identity()).norm() < 1e-6);
        CHECK((moments[index] - demand::PlanVector(-y, x)).norm() < 1e-4);
    }
}

TEST_CASE("a sloping rail passes no force along itself and bends over its true length", "[closed-form]") {
    demand::LineInput line = straight_line(3, 60.0, stiff_lb_in2, stiff_lb_in2);
    for (std::size_t post = 0; post < 3; ++post) line.posts[post].rise_in = 45.0 * static_cast<double>(post);
    const demand::LineDemand demand = line_demand_of(line);
    const double l3 = 75.0 * 75.0 * 75.0, h3 = 42.0 * 42.0 * 42.0;  // 60 level and 45 up: 75 along
    CHECK_CLOSE(demand.posts[1].share.value, (l3 + h3) / (l3 + 3.0 * h3), 1e-5, 0.0);
    line.directions = model::Directions::all_round;
    CHECK_CLOSE(line_demand_of(line).posts[1].share.value, 1.0, 1e-4, 0.0);
    line.run = model::RailRun::broken;
    const demand::LineDemand broken = line_demand_of(line);
    CHECK_CLOSE(broken.spans[0].push.moment_lb_in.value, 75.0 / 4.0, 1e-6, 0.0);
    CHECK_CLOSE(broken.spans[0].line.moment_lb_in.value, 75.0 * 75.0 / 8.0, 1e-6, 0.0);
    CHECK_CLOSE(broken.spans[0].upright_push.moment_lb_in.value, 60.0 / 4.0, 1e-6, 0.0);
    CHECK_CLOSE(broken.posts[1].line_length_in.value, 75.0, 1e-4, 0.0);
}

TEST_CASE("posts as springs are what posts as cantilevers in space are", "[property]") {
    demand::LineInput line = l_shaped(2, 1);
    line.corners_rigid = true;
    constexpr double base_lb_in = 3e5;
    for (demand::LinePost& post : line.posts)
        post.base.soft = post.base.stiff = {base_lb_in, base_lb_in, base_lb_in, base_lb_in};
    // Nodes: feet, tops, then the rail over each; a joint that carries force alone between a top and the rail.
    using mechanics::SpaceVector;
    std::vector<SpaceVector> nodes;
    const int posts = static_cast<int>(line.posts.size());
    for (const double height : {0.0, 42.0, 42.0}) {
        for (const demand::LinePost& post : line.posts) nodes.push_back({post.at.x_in, post.at.y_in, height});
    }
    std::vector<mechanics::SpaceMember> members;
    std::vector<mechanics::SpaceJoint> joints;
    std::vector<mechanics::SpaceSupport> supports;
    for (int post = 0; post + 1 < posts; ++post)
        members.push_back({2 * posts + post, 2 * posts + post + 1, {0, 0, 1}, 1e9, 1e12, 1e12, stiff_lb_in2, 0, 0});
    for (int post = 0; post < posts; ++post) {
        members.push_back({post, posts + post, {0, 1, 0}, 1e9, 1e7, stiff_lb_in2, stiff_lb_in2, 0, 0});
        joints.push_back({posts + post, 2 * posts + post, {1e9, 1e9, 1e9, 0, 0, 0}, {}, std::nullopt});
        supports.push_back({post, mechanics::uncoupled({1e10, 1e10, 1e10, base_lb_in, base_lb_in, 1e10}), {}});
        supports.push_back(
            {2 * posts + post, mechanics::uncoupled({0, 0, 0, 1e4, 1e4, 0}), {}});  // keeps it from rolling
    }
    const mechanics::SpaceFrame space(nodes, members, joints, supports);
    REQUIRE(space.stable());
    const demand::LineLayout layout = demand::lay_out(line, false);
    const demand::LoadedRail rail = demand::loaded_rail(layout, line.directions);
    const demand::LineFrame frame = demand::solve_frame(line, layout, {});
    for (const std::size_t index : {0U, 5U, 21U, 34U, 40U}) {
        const demand::Station& station = rail.stations[index];
        mechanics::SpaceLoads load;
        load.points.push_back({static_cast<int>(station.piece), 60.0 * station.at, {1.0, 0.0, 0.0}, {}});
        const mechanics::SpaceSolution solution = space.solve(load);
        for (std::size_t post = 0; post < line.posts.size(); ++post) {
            const auto x = influence_line(frame, rail, post_force(frame, layout, post, demand::PlanVector::UnitX()));
            const auto y = influence_line(frame, rail, post_force(frame, layout, post, demand::PlanVector::UnitY()));
            CHECK_CLOSE(x[index].x(), -solution.joints[post].force_lb.x, 1e-4, 1e-6);
            CHECK_CLOSE(y[index].x(), -solution.joints[post].force_lb.y, 1e-4, 1e-6);
        }
    }
}
