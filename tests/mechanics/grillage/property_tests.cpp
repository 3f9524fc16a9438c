// What must hold for every grid of beams, on random ones.
#include "mechanics/grillage/grillage.h"

#include "support/compare.h"
#include "support/random/number.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <vector>

using namespace toehold::mechanics;
using namespace toehold::test;

namespace {

struct Grid {
    std::vector<Point> nodes;
    std::vector<GridMember> members;
    std::vector<GridJoint> joints;
    std::vector<GridSupport> supports;
    std::vector<GridLoad> loads;
    std::vector<MemberLoad> member_loads;

    [[nodiscard]] Grillage made() const { return {nodes, members, joints, supports}; }
};

double length_of(const Grid& grid, int member) {
    const GridMember& m = grid.members[static_cast<std::size_t>(member)];
    const Point a = grid.nodes[static_cast<std::size_t>(m.from)], b = grid.nodes[static_cast<std::size_t>(m.to)];
    return std::hypot(b.x - a.x, b.y - a.y);
}

GridMember random_member(int from, int to) {
    return {from, to, magnitude(1e6, 1e8), magnitude(1e5, 1e7),
            *rc::gen::arbitrary<bool>() ? magnitude(1e5, 1e7) : 0.0};
}

/// At eighths of the length, ends included: closer nodes, where a test splits there, would cost digits.
MemberLoad random_load(const Grid& grid, int member) {
    return {member, *rc::gen::inRange(0, 9) / 8.0 * length_of(grid, member), number(-500.0, 500.0),
            number(-3000.0, 3000.0), number(-3000.0, 3000.0)};
}

/// Two chains of beams that joints hold to each other, and supports that leave nothing free.
Grid random_grid() {
    Grid grid;
    for (int row = 0; row < 2; ++row) {
        for (int i = 0; i < 4; ++i) {
            grid.nodes.push_back({20.0 * i + number(-6.0, 6.0), 12.0 * row + number(-4.0, 4.0)});
            const int node = 4 * row + i;
            if (i > 0) grid.members.push_back(random_member(node - 1, node));
            if (i % 3 == 0)
                grid.supports.push_back({node, magnitude(1e3, 1e6), magnitude(1e4, 1e7), magnitude(1e4, 1e7)});
        }
    }
    for (int i = 1; i < 4; ++i) {
        const Point place{20.0 * i, number(0.0, 12.0)};
        grid.joints.push_back({i, 4 + i, magnitude(1e2, 1e5), magnitude(1e3, 1e6), number(0.0, 1e5), place});
    }
    for (int i = 0; i < 5; ++i) grid.member_loads.push_back(random_load(grid, *rc::gen::inRange(0, 6)));
    grid.loads = {{2, number(-100.0, 100.0), number(-900.0, 900.0), number(-900.0, 900.0)}};
    return grid;
}

/// How far numbers of this kind may be apart: relative to the largest there is in the grid.
struct Slack {
    double w = 0.0, turn = 0.0, force = 0.0, moment = 0.0;
};

Slack slack_of(const GridSolution& s) {
    constexpr double part = 1e-8;
    Slack slack;
    for (const GridMotion& m : s.motions) {
        slack.w = std::max(slack.w, part * std::abs(m.w_in));
        slack.turn = std::max({slack.turn, part * std::abs(m.rx_rad), part * std::abs(m.ry_rad)});
    }
    slack.force = part * 3000.0;
    slack.moment = slack.force * 20.0;
    return slack;
}

void assert_same(const GridMotion& a, const GridMotion& b, const Slack& slack) {
    RC_ASSERT(close(a.w_in, b.w_in, 0.0, slack.w));
    RC_ASSERT(close(a.rx_rad, b.rx_rad, 0.0, slack.turn));
    RC_ASSERT(close(a.ry_rad, b.ry_rad, 0.0, slack.turn));
}

void assert_same(const GridSection& a, const GridSection& b, const Slack& slack) {
    RC_ASSERT(close(a.shear_lb, b.shear_lb, 0.0, slack.force));
    RC_ASSERT(close(a.moment_lb_in, b.moment_lb_in, 0.0, slack.moment));
    RC_ASSERT(close(a.torque_lb_in, b.torque_lb_in, 0.0, slack.moment));
}

void assert_same(const GridLoad& a, const GridLoad& b, const Slack& slack) {
    RC_ASSERT(close(a.up_lb, b.up_lb, 0.0, slack.force));
    RC_ASSERT(close(a.about_x_lb_in, b.about_x_lb_in, 0.0, slack.moment));
    RC_ASSERT(close(a.about_y_lb_in, b.about_y_lb_in, 0.0, slack.moment));
}

/// The same grid with a node at every load on a member, and what became of the members.
struct Split {
    Grid grid;
    std::vector<std::vector<int>> pieces;        ///< of each member, in order
    std::vector<std::map<double, int>> node_at;  ///< of each member, by station
};

Split split(const Grid& whole, const std::vector<double>& stations_of_each) {
    Split result{whole, {}, {}};
    Grid& grid = result.grid;
    grid.members.clear();
    grid.member_loads.clear();
    for (int index = 0; index < static_cast<int>(whole.members.size()); ++index) {
        const GridMember& member = whole.members[static_cast<std::size_t>(index)];
        const Point a = whole.nodes[static_cast<std::size_t>(member.from)];
        const Point b = whole.nodes[static_cast<std::size_t>(member.to)];
        const double length = length_of(whole, index);
        std::map<double, int> nodes = {{0.0, member.from}, {length, member.to}};
        const auto node_at = [&](double at) {
            const auto [found, added] = nodes.try_emplace(at, static_cast<int>(grid.nodes.size()));
            if (added) grid.nodes.push_back({a.x + (b.x - a.x) * at / length, a.y + (b.y - a.y) * at / length});
            return found->second;
        };
        for (const double part : stations_of_each) (void)node_at(part * length);
        for (const MemberLoad& load : whole.member_loads) {
            if (load.member != index) continue;
            grid.loads.push_back({node_at(load.at_in), load.up_lb, load.about_x_lb_in, load.about_y_lb_in});
        }
        std::vector<int> pieces;
        for (auto next = std::next(nodes.begin()); next != nodes.end(); ++next) {
            GridMember piece = member;
            piece.from = std::prev(next)->second;
            piece.to = next->second;
            pieces.push_back(static_cast<int>(grid.members.size()));
            grid.members.push_back(piece);
        }
        result.pieces.push_back(pieces);
        result.node_at.push_back(nodes);
    }
    return result;
}

GridSolution solved(const Grillage& made, const Grid& grid) {
    GridSolution s = made.solve(grid.loads, grid.member_loads);
    RC_ASSERT(s.stable);
    RC_ASSERT(s.residual < 1e-8);
    return s;
}

GridExtremes larger(const GridExtremes& a, const GridExtremes& b) {
    return {std::max(a.shear_lb, b.shear_lb), std::max(a.moment_lb_in, b.moment_lb_in),
            std::max(a.torque_lb_in, b.torque_lb_in)};
}

}  // namespace

TEST_CASE("a load along a member is a load on a node put there", "[property]") {
    REQUIRE(rc::check("split", [] {
        const Grid grid = random_grid();
        const Grillage made = grid.made();
        const GridSolution s = solved(made, grid);
        const Split other = split(grid, {0.1875, 0.5, 0.8125});
        const Grillage other_made = other.grid.made();
        const GridSolution t = solved(other_made, other.grid);
        const Slack slack = slack_of(t);
        for (std::size_t i = 0; i < s.motions.size(); ++i) assert_same(s.motions[i], t.motions[i], slack);
        for (std::size_t i = 0; i < s.joints.size(); ++i) assert_same(s.joints[i], t.joints[i], slack);
        for (std::size_t i = 0; i < s.supports.size(); ++i) assert_same(s.supports[i], t.supports[i], slack);
        for (std::size_t m = 0; m < grid.members.size(); ++m) {
            const int index = static_cast<int>(m);
            for (const auto& [at, node] : other.node_at[m])
                assert_same(made.motion_at(s, index, at, grid.member_loads), t.motions[static_cast<std::size_t>(node)],
                            slack);
            const GridExtremes most = made.extremes(s, index, grid.member_loads);
            // A load at a member's very end stands in the member in one grid and on its node in the other.
            const bool at_end =
                std::any_of(grid.member_loads.begin(), grid.member_loads.end(), [&](const MemberLoad& load) {
                    return load.member == index && (load.at_in == 0.0 || load.at_in == length_of(grid, index));
                });
            if (at_end) continue;
            GridExtremes of_pieces;
            for (const int piece : other.pieces[m]) of_pieces = larger(of_pieces, other_made.extremes(t, piece, {}));
            RC_ASSERT(close(most.shear_lb, of_pieces.shear_lb, 0.0, slack.force));
            RC_ASSERT(close(most.moment_lb_in, of_pieces.moment_lb_in, 0.0, slack.moment));
            RC_ASSERT(close(most.torque_lb_in, of_pieces.torque_lb_in, 0.0, slack.moment));
            const auto first = static_cast<std::size_t>(other.pieces[m].front());
            const auto last = static_cast<std::size_t>(other.pieces[m].back());
            assert_same(s.members[m].at_from, t.members[first].at_from, slack);
            assert_same(s.members[m].at_to, t.members[last].at_to, slack);
        }
    }));
}

TEST_CASE("along a member the motion ends where its node is", "[property]") {
    REQUIRE(rc::check("ends", [] {
        const Grid grid = random_grid();
        const Grillage made = grid.made();
        const GridSolution s = solved(made, grid);
        const Slack slack = slack_of(s);
        for (int m = 0; m < static_cast<int>(grid.members.size()); ++m) {
            const GridMember& member = grid.members[static_cast<std::size_t>(m)];
            assert_same(made.motion_at(s, m, 0.0, grid.member_loads), s.motions[static_cast<std::size_t>(member.from)],
                        slack);
            assert_same(made.motion_at(s, m, length_of(grid, m), grid.member_loads),
                        s.motions[static_cast<std::size_t>(member.to)], slack);
        }
    }));
}

TEST_CASE("loads add up", "[property]") {
    REQUIRE(rc::check("superposition", [] {
        const Grid grid = random_grid();
        const Grillage made = grid.made();
        const GridSolution all = solved(made, grid);
        const std::vector<MemberLoad> some(grid.member_loads.begin(), grid.member_loads.begin() + 2);
        const std::vector<MemberLoad> rest(grid.member_loads.begin() + 2, grid.member_loads.end());
        const GridSolution a = made.solve({}, some), b = made.solve(grid.loads, rest);
        const Slack slack = slack_of(all);
        const int m = *rc::gen::inRange(0, 6);
        const double at = number(0.0, 1.0) * length_of(grid, m);
        const GridMotion x = made.motion_at(a, m, at, some), y = made.motion_at(b, m, at, rest);
        assert_same(made.motion_at(all, m, at, grid.member_loads),
                    {x.w_in + y.w_in, x.rx_rad + y.rx_rad, x.ry_rad + y.ry_rad}, slack);
    }));
}

TEST_CASE("what a load does at another's place, that one does at its own (Betti)", "[property]") {
    REQUIRE(rc::check("reciprocity", [] {
        const Grid grid = random_grid();
        const Grillage made = grid.made();
        const std::vector<MemberLoad> one = {grid.member_loads[0]}, two = {grid.member_loads[1]};
        const GridSolution by_one = made.solve({}, one), by_two = made.solve({}, two);
        const auto work = [](const MemberLoad& load, const GridMotion& m) {
            return load.up_lb * m.w_in + load.about_x_lb_in * m.rx_rad + load.about_y_lb_in * m.ry_rad;
        };
        const double of_one = work(one[0], made.motion_at(by_two, one[0].member, one[0].at_in, two));
        const double of_two = work(two[0], made.motion_at(by_one, two[0].member, two[0].at_in, one));
        const double own = std::abs(work(one[0], made.motion_at(by_one, one[0].member, one[0].at_in, one))) +
                           std::abs(work(two[0], made.motion_at(by_two, two[0].member, two[0].at_in, two)));
        RC_ASSERT(close(of_one, of_two, 0.0, 1e-9 * own));
    }));
}

TEST_CASE("a grid mirrored in plan mirrors its answer", "[property]") {
    REQUIRE(rc::check("mirror", [] {
        const Grid grid = random_grid();
        Grid other = grid;
        // y to -y: rotations about x change sign.
        for (Point& node : other.nodes) node.y = -node.y;
        for (GridJoint& joint : other.joints) joint.at->y = -joint.at->y;
        for (GridLoad& load : other.loads) load.about_x_lb_in = -load.about_x_lb_in;
        for (MemberLoad& load : other.member_loads) load.about_x_lb_in = -load.about_x_lb_in;
        const Grillage made = grid.made(), other_made = other.made();
        const GridSolution s = solved(made, grid), t = solved(other_made, other);
        const Slack slack = slack_of(s);
        for (int m = 0; m < 6; ++m) {
            const double at = number(0.0, 1.0) * length_of(grid, m);
            const GridMotion moved = made.motion_at(s, m, at, grid.member_loads);
            assert_same(other_made.motion_at(t, m, at, other.member_loads), {moved.w_in, -moved.rx_rad, moved.ry_rad},
                        slack);
            const GridSection& end = s.members[static_cast<std::size_t>(m)].at_to;
            assert_same(t.members[static_cast<std::size_t>(m)].at_to,
                        {end.shear_lb, end.moment_lb_in, -end.torque_lb_in}, slack);
        }
    }));
}

TEST_CASE("a grid turned in plan turns its answer, loads along members too", "[property]") {
    REQUIRE(rc::check("turn", [] {
        Grid grid = random_grid();
        // Springs that are alike about x and y, so that turning them changes nothing.
        for (GridJoint& joint : grid.joints) joint.about_y_lb_in = joint.about_x_lb_in;
        for (GridSupport& support : grid.supports) support.about_y_lb_in = support.about_x_lb_in;
        const double c = std::cos(number(-3.0, 3.0)), s = std::sqrt(1.0 - c * c);
        const auto turn = [&](double& x, double& y) {
            const double before = x;
            x = c * x - s * y;
            y = s * before + c * y;
        };
        Grid other = grid;
        for (Point& node : other.nodes) turn(node.x, node.y);
        for (GridJoint& joint : other.joints) turn(joint.at->x, joint.at->y);
        for (GridLoad& load : other.loads) turn(load.about_x_lb_in, load.about_y_lb_in);
        for (MemberLoad& load : other.member_loads) turn(load.about_x_lb_in, load.about_y_lb_in);
        const Grillage made = grid.made(), other_made = other.made();
        const GridSolution a = solved(made, grid), b = solved(other_made, other);
        Slack slack = slack_of(a);
        slack.turn *= 2.0;
        for (int m = 0; m < 6; ++m) {
            const double at = number(0.01, 0.99) * length_of(grid, m);
            GridMotion moved = made.motion_at(a, m, at, grid.member_loads);
            turn(moved.rx_rad, moved.ry_rad);
            assert_same(other_made.motion_at(b, m, at, other.member_loads), moved, slack);
            assert_same(b.members[static_cast<std::size_t>(m)].at_from, a.members[static_cast<std::size_t>(m)].at_from,
                        slack);
        }
    }));
}
