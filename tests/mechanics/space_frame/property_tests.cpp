// What must hold for every frame in space, on random ones.
#include "mechanics/space_frame/influence_lines.h"
#include "mechanics/space_frame/posts_and_rail.h"
#include "support/compare.h"
#include "support/random/number.h"

#include <Eigen/Geometry>

#include <algorithm>
#include <cmath>

using namespace toehold::mechanics;
using namespace toehold::test;

namespace {

double dot(const SpaceVector& a, const SpaceVector& b) { return a.x * b.x + a.y * b.y + a.z * b.z; }
double size(const SpaceVector& a) { return std::sqrt(dot(a, a)); }
SpaceVector random_vector(double most) { return {number(-most, most), number(-most, most), number(-most, most)}; }

Eigen::Matrix3d random_turn() {
    return Eigen::AngleAxisd(number(-3.0, 3.0),
                             Eigen::Vector3d(number(0.1, 1.0), number(-1.0, 1.0), number(-1.0, 1.0)).normalized())
        .toRotationMatrix();
}
SpaceVector turned(const Eigen::Matrix3d& turn, const SpaceVector& v) {
    const Eigen::Vector3d r = turn * Eigen::Vector3d(v.x, v.y, v.z);
    return {r.x(), r.y(), r.z()};
}

SpaceMember random_member(int from, int to) {
    const bool shears = *rc::gen::arbitrary<bool>();
    return {from,
            to,
            {0.3, 0.2, 1.0},
            magnitude(1e5, 1e7),
            magnitude(1e5, 1e7),
            magnitude(1e6, 1e8),
            magnitude(1e6, 1e8),
            shears ? magnitude(1e5, 1e7) : 0.0,
            shears ? magnitude(1e5, 1e7) : 0.0};
}

SixStiffnesses random_springs() {
    return {magnitude(1e3, 1e6), magnitude(1e3, 1e6), magnitude(1e3, 1e6),
            magnitude(1e4, 1e7), magnitude(1e4, 1e7), magnitude(1e4, 1e7)};
}

struct LoadedFrame {
    FrameInSpace frame;
    SpaceLoads loads;
};

/// Two chains askew in space, joined by springs at places of their own, on springs of turned axes.
LoadedFrame random_frame() {
    LoadedFrame result;
    FrameInSpace& frame = result.frame;
    for (int row = 0; row < 2; ++row) {
        for (int i = 0; i < 3; ++i) {
            const int node = frame.node({20.0 * i + number(-4.0, 4.0), 14.0 * row + number(-4.0, 4.0), number(-5, 5)});
            if (i > 0) frame.members.push_back(random_member(node - 1, node));
            if (i != 1) {
                const Eigen::Matrix3d turn = random_turn();
                frame.supports.push_back(
                    {node, uncoupled(random_springs()), {turned(turn, {1, 0, 0}), turned(turn, {0, 1, 0})}});
            }
        }
    }
    for (const int i : {1, 2}) {
        const Eigen::Matrix3d turn = random_turn();
        frame.joints.push_back({i,
                                3 + i,
                                random_springs(),
                                {turned(turn, {1, 0, 0}), turned(turn, {0, 1, 0})},
                                SpaceVector{20.0 * i, number(0.0, 14.0), number(-3, 3)}});
    }
    const SpaceFrame made = frame.made();
    for (int m = 0; m < 4; ++m) {
        const double length = made.length_of(m);
        result.loads.points.push_back(
            {m, *rc::gen::inRange(0, 9) / 8.0 * length, random_vector(200.0), random_vector(900.0)});
        result.loads.lines.push_back({m, number(0.0, 0.4) * length, number(0.5, 1.0) * length, random_vector(9.0)});
    }
    result.loads.nodes.push_back({4, random_vector(200.0), random_vector(900.0)});
    return result;
}

SpaceSolution solved(const SpaceFrame& frame, const SpaceLoads& loads) {
    SpaceSolution s = frame.solve(loads);
    RC_ASSERT(s.stable);
    RC_ASSERT(s.residual < 1e-9);
    return s;
}

double largest_move(const SpaceSolution& s) {
    double largest = 0.0;
    for (const SpaceMotion& m : s.motions) largest = std::max({largest, size(m.move_in), 10.0 * size(m.turn_rad)});
    return largest;
}

void assert_same(const SpaceMotion& a, const SpaceMotion& b, double largest) {
    RC_ASSERT(close(size(a.move_in - b.move_in), 0.0, 0.0, 1e-8 * largest));
    RC_ASSERT(close(size(a.turn_rad - b.turn_rad), 0.0, 0.0, 1e-8 * largest));
}

void assert_same(const SpaceForce& a, const SpaceForce& b) {
    RC_ASSERT(close(size(a.force_lb - b.force_lb), 0.0, 0.0, 1e-5));
    RC_ASSERT(close(size(a.couple_lb_in - b.couple_lb_in), 0.0, 0.0, 2e-4));
}

}  // namespace

TEST_CASE("a member's far end is where its node is, and passes what its node is given", "[property]") {
    REQUIRE(rc::check("far end", [] {
        const LoadedFrame f = random_frame();
        const SpaceFrame frame = f.frame.made();
        const SpaceSolution s = solved(frame, f.loads);
        for (int m = 0; m < 4; ++m) {
            const double length = frame.length_of(m);
            const auto to = static_cast<std::size_t>(f.frame.members[static_cast<std::size_t>(m)].to);
            assert_same(frame.motion_at(s, m, length, f.loads), s.motions[to], largest_move(s));
            assert_same(frame.section_at(s, m, length, f.loads, BesideLoad::after),
                        s.members[static_cast<std::size_t>(m)].at_to);
            const SpaceExtremes most = frame.extremes(s, m, f.loads);
            const SpaceSection cut = frame.section_at(s, m, number(0.0, 1.0) * length, f.loads, BesideLoad::before);
            RC_ASSERT(cut.couple_lb_in.y <= most.most.couple_lb_in.y + 1e-6);
            RC_ASSERT(cut.couple_lb_in.z >= most.least.couple_lb_in.z - 1e-6);
            RC_ASSERT(cut.force_lb.y <= most.most.force_lb.y + 1e-6);
            RC_ASSERT(cut.force_lb.x >= most.least.force_lb.x - 1e-6);
        }
    }));
}

TEST_CASE("all supports together bear all loads, forces and moments", "[property]") {
    REQUIRE(rc::check("balance of the whole", [] {
        const LoadedFrame f = random_frame();
        const SpaceFrame frame = f.frame.made();
        const SpaceSolution s = solved(frame, f.loads);
        Eigen::Vector3d force = Eigen::Vector3d::Zero(), moment = force;
        const auto vector = [](const SpaceVector& v) { return Eigen::Vector3d(v.x, v.y, v.z); };
        const auto add = [&](const Eigen::Vector3d& at, const Eigen::Vector3d& f1, const Eigen::Vector3d& couple) {
            force += f1;
            moment += at.cross(f1) + couple;
        };
        const auto on_member = [&](int member, double at_in) -> Eigen::Vector3d {
            const SpaceMember& of = f.frame.members[static_cast<std::size_t>(member)];
            const Eigen::Vector3d a = vector(f.frame.nodes[static_cast<std::size_t>(of.from)]);
            const Eigen::Vector3d b = vector(f.frame.nodes[static_cast<std::size_t>(of.to)]);
            return a + (b - a) * at_in / (b - a).norm();
        };
        for (std::size_t i = 0; i < s.supports.size(); ++i) {
            const SpaceSupport& support = f.frame.supports[i];
            const Eigen::Vector3d x = vector(support.axes.x), y = vector(support.axes.y);
            Eigen::Matrix3d axes;
            axes << x, y, x.cross(y);
            add(vector(f.frame.nodes[static_cast<std::size_t>(support.node)]), axes * vector(s.supports[i].force_lb),
                axes * vector(s.supports[i].couple_lb_in));
        }
        for (const SpaceNodeLoad& l : f.loads.nodes)
            add(vector(f.frame.nodes[static_cast<std::size_t>(l.node)]), vector(l.force_lb), vector(l.couple_lb_in));
        for (const SpacePointLoad& l : f.loads.points)
            add(on_member(l.member, l.at_in), vector(l.force_lb), vector(l.couple_lb_in));
        for (const SpaceLineLoad& l : f.loads.lines)
            add(on_member(l.member, 0.5 * (l.from_in + l.to_in)), (l.to_in - l.from_in) * vector(l.force_lb_per_in),
                Eigen::Vector3d::Zero());
        RC_ASSERT(force.norm() < 1e-6);
        RC_ASSERT(moment.norm() < 1e-4);
    }));
}

TEST_CASE("a frame turned in space turns its answer", "[property]") {
    REQUIRE(rc::check("turn", [] {
        const LoadedFrame f = random_frame();
        const Eigen::Matrix3d turn = random_turn();
        LoadedFrame g = f;
        const auto all = [&](SpaceVector& v) { v = turned(turn, v); };
        for (SpaceVector& node : g.frame.nodes) all(node);
        for (SpaceMember& member : g.frame.members) all(member.toward_z);
        for (SpaceJoint& joint : g.frame.joints) all(*joint.at), all(joint.axes.x), all(joint.axes.y);
        for (SpaceSupport& support : g.frame.supports) all(support.axes.x), all(support.axes.y);
        for (SpaceNodeLoad& l : g.loads.nodes) all(l.force_lb), all(l.couple_lb_in);
        for (SpacePointLoad& l : g.loads.points) all(l.force_lb), all(l.couple_lb_in);
        for (SpaceLineLoad& l : g.loads.lines) all(l.force_lb_per_in);
        const SpaceSolution s = solved(f.frame.made(), f.loads), t = solved(g.frame.made(), g.loads);
        for (std::size_t i = 0; i < s.motions.size(); ++i) {
            const SpaceMotion moved = {turned(turn, s.motions[i].move_in), turned(turn, s.motions[i].turn_rad)};
            assert_same(moved, t.motions[i], largest_move(s));
        }
        for (std::size_t i = 0; i < s.members.size(); ++i) assert_same(s.members[i].at_from, t.members[i].at_from);
        for (std::size_t i = 0; i < s.joints.size(); ++i) assert_same(s.joints[i], t.joints[i]);
        for (std::size_t i = 0; i < s.supports.size(); ++i) assert_same(s.supports[i], t.supports[i]);
    }));
}

TEST_CASE("what a load does in space at another's place, that one does at its own (Betti)", "[property]") {
    REQUIRE(rc::check("reciprocity", [] {
        const LoadedFrame f = random_frame();
        const SpaceFrame frame = f.frame.made();
        const SpacePointLoad one = f.loads.points[0], two = f.loads.points[3];
        const SpaceLoads by_one = {{}, {one}, {}}, by_two = {{}, {two}, {}};
        const SpaceSolution s = solved(frame, by_one), t = solved(frame, by_two);
        const auto work = [&](const SpacePointLoad& load, const SpaceSolution& under, const SpaceLoads& loads) {
            const SpaceMotion m = frame.motion_at(under, load.member, load.at_in, loads);
            return dot(load.force_lb, m.move_in) + dot(load.couple_lb_in, m.turn_rad);
        };
        const double own = work(one, s, by_one) + work(two, t, by_two);
        RC_ASSERT(close(work(one, t, by_two), work(two, s, by_one), 0.0, 1e-9 * own));
    }));
}

TEST_CASE("influence lines add up to what a solve says", "[property]") {
    REQUIRE(rc::check("influence", [] {
        const LoadedFrame f = random_frame();
        const SpaceFrame frame = f.frame.made();
        std::vector<FrameStation> stations;
        for (int m = 0; m < 4; ++m) {
            for (int i = 0; i < 5; ++i) stations.push_back({m, frame.length_of(m) * i / 4.0});
        }
        const InfluenceLines lines(frame, stations);
        const auto at = static_cast<std::size_t>(*rc::gen::inRange(0, 20));
        const SpaceVector force = random_vector(200.0);
        const SpaceSolution s = solved(frame, lines.load(at, force)), t = lines.under(at, force);
        RC_ASSERT(t.residual < 1e-9);
        for (std::size_t i = 0; i < s.motions.size(); ++i) assert_same(s.motions[i], t.motions[i], largest_move(s));
        for (std::size_t i = 0; i < s.members.size(); ++i) assert_same(s.members[i].at_to, t.members[i].at_to);
        for (std::size_t i = 0; i < s.supports.size(); ++i) {
            assert_same(s.supports[i], t.supports[i]);
            assert_same(s.supports[i], lines.support(at, force, i));
        }
    }));
}
