#include "oracle/line/line_projects.h"

#include <cmath>
#include <numbers>
#include <utility>

namespace toehold::test {
namespace {

constexpr double quarter_turn = 0.5 * std::numbers::pi;

/// 42 in high; soft and stiff ends, one way unlike the other, and every post unlike its neighbor.
demand::LinePost guard_post(model::Position at, double rise_in, double outward_rad) {
    const double k = 1e5 * (2.0 + 0.01 * std::abs(at.x_in - 40.0) + 0.004 * at.y_in);
    demand::LinePost post;
    post.id = "P";
    post.at = at;
    post.rise_in = rise_in;
    post.outward_rad = outward_rad;
    post.height_in = 42.0;
    post.soft_post = {0.0041, 0.0055};
    post.stiff_post = {0.0036, 0.0047};
    post.base.soft = {1.2 * k, k, 0.7 * k, 0.75 * k};
    post.base.central = post.base.stiff = {1.9 * k, 1.6 * k, 1.1 * k, 1.3 * k};
    return post;
}

demand::LineInput line_of(std::vector<demand::LinePost> posts) {
    demand::LineInput line;
    line.posts = std::move(posts);
    line.soft_rail = {4e6, 2.4e6};
    line.stiff_rail = {6e6, 3.6e6};
    line.run = model::RailRun::continuous;
    line.connection_lb_per_in = 4000.0;
    return line;
}

/// Along x, round a corner, and back again to a wall. The second corner's post faces askew and bends alike both ways.
demand::LineInput corner_and_return() {
    demand::LineInput line = line_of({guard_post({0, 0}, 0, -quarter_turn), guard_post({60, 0}, 0, -quarter_turn),
                                      guard_post({126, 0}, 0, 0), guard_post({126, 58}, 0, 0),
                                      guard_post({126, 104}, 0, 0.3), guard_post({96, 104}, 0, quarter_turn)});
    line.posts[4].soft_post = {0.0048, 0.0048};
    line.posts[4].stiff_post = {0.0041, 0.0041};
    line.corners_rigid = true;
    line.last_wall = demand::LineWall{14.0, true, 3000.0};
    return line;
}

}  // namespace

LineProject spliced() {
    LineProject project{corner_and_return(), {84.0, 184.0}, false};
    project.line.splices_in = project.joints_in;
    return project;
}

LineProject let_in() {
    LineProject project{corner_and_return(), {60.0, 126.0, 184.0, 230.0, 260.0}, true};
    project.line.run = model::RailRun::between;
    project.line.corners_rigid = false;
    return project;
}

LineProject stair() {
    LineProject project{line_of({guard_post({0, 0}, 0, -quarter_turn), guard_post({60, 0}, 0, -quarter_turn),
                                 guard_post({108, 0}, -32, -quarter_turn), guard_post({156, 0}, -64, -quarter_turn),
                                 guard_post({156, 66}, -64, 0)}),
                        {60.0, 156.0},
                        false};
    project.line.directions = model::Directions::across;
    project.line.last_wall = demand::LineWall{17.0, false, std::nullopt};
    return project;
}

}  // namespace toehold::test
