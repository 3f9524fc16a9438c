// A guard line with a corner, a return, an overhang and a broken rail against Z88 (see z88/beams.h). There, what gives
// at bases and breaks is short beams; here it is those beams first, and then the supports and joints they stand for.
#include "mechanics/space_frame/space_frame.h"
#include "oracle/z88/beams.h"
#include "support/compare.h"

#include <algorithm>
#include <cmath>

namespace {

using namespace toehold;
using namespace toehold::mechanics;
using test::BeamsInSpace;

constexpr double height = 42.0, rigid = 1e16;
// A rail that is broken at a post hangs on it by a short beam that passes forces and torque, but hardly bends.
constexpr double pin_in = 1e-3, pin_lb_in2 = 1e-3, pin_torsion_lb_in2 = 1e4;
constexpr double stub_in = 3.0;

SpaceMember post(int from, int to) { return {from, to, {1, 0, 0}, 2e7, 6e6, 9e6, 8e6}; }
SpaceMember rail(int from, int to) { return {from, to, {0, 0, 1}, 1.2e7, 2.5e6, 4e6, 7e6}; }
/// Each base gives differently; about y it is stiffer than about x.
SpaceMember stub(int post, int from, int to) {
    return {from, to, {1, 0, 0}, 3e6, 4e5, 2.4e6 + 2e5 * post, 1.1e6 + 3e5 * post};
}

/// Three posts along x, a corner, a return along -y and the rail hanging over behind it. Nodes: 3 i under the stub of
/// post i, 3 i + 1 its foot, 3 i + 2 its top. Members: stubs, then posts, then the rail; of which the first, from post
/// 0 to post 1, ends in a pin at post 1.
BeamsInSpace corner_line() {
    BeamsInSpace line;
    const std::vector<SpaceVector> plan = {{0, 0, 0}, {60, 0, 0}, {118, 0, 0}, {170, 0, 0}, {170, -54, 0}};
    for (const SpaceVector& at : plan) {
        line.clamped.push_back(static_cast<int>(line.nodes.size()));
        line.nodes.push_back(at - SpaceVector{0, 0, stub_in});
        line.nodes.push_back(at);
        line.nodes.push_back(at + SpaceVector{0, 0, height});
    }
    line.nodes.push_back({60 - pin_in, 0, height});
    line.nodes.push_back({170, -68, height});
    for (int i = 0; i < 5; ++i) line.members.push_back(stub(i, 3 * i, 3 * i + 1));
    for (int i = 0; i < 5; ++i) line.members.push_back(post(3 * i + 1, 3 * i + 2));
    line.members.push_back(rail(2, 15));
    for (int i = 1; i < 4; ++i) line.members.push_back(rail(3 * i + 2, 3 * i + 5));
    line.members.push_back(rail(14, 16));
    line.members.push_back({15, 5, {0, 0, 1}, 1.2e7, pin_torsion_lb_in2, pin_lb_in2, pin_lb_in2});
    return line;
}

std::vector<SpaceLoads> pushes() {
    return {
        {{}, {{11, 21.0, {0, 200, 0}, {}}}, {}},
        {{}, {{13, 20.0, {130, 20, -150}, {}}}, {}},
        {{{16, {60, 60, -180}, {300, -200, 100}}}, {{10, 58.0, {0, -200, 0}, {}}}, {{12, 5.0, 47.0, {0, 4.2, -3.0}}}},
        {{}, {}, {{10, 0.0, 30.0, {0, 50.0 / 12.0, 0}}, {14, 0.0, 14.0, {50.0 / 12.0, 0, 0}}}},
    };
}

std::vector<SpaceSupport> held(const std::vector<int>& nodes) {
    std::vector<SpaceSupport> supports;
    supports.reserve(nodes.size());
    for (const int node : nodes) supports.push_back({node, uncoupled({rigid, rigid, rigid, rigid, rigid, rigid}), {}});
    return supports;
}

/// The stub's stiffness at its upper end, in the frame's axes: an upright beam held at its lower end.
BaseStiffness base_of(const SpaceMember& stub) {
    const double l = stub_in, about_y = stub.bending_y_lb_in2, about_x = stub.bending_z_lb_in2;
    BaseStiffness base = uncoupled({12.0 * about_y / (l * l * l), 12.0 * about_x / (l * l * l), stub.axial_lb / l,
                                    4.0 * about_x / l, 4.0 * about_y / l, stub.torsion_lb_in2 / l});
    base[0][4] = base[4][0] = -6.0 * about_y / (l * l);
    base[1][3] = base[3][1] = 6.0 * about_x / (l * l);
    return base;
}

/// Stubs as bases, the pin as a joint: the frame that the program would make.
SpaceFrame as_bases_and_joint(const BeamsInSpace& line) {
    std::vector<SpaceMember> members = line.members;
    std::vector<SpaceSupport> supports;
    for (std::size_t i = 0; i < 5; ++i) {
        const auto foot = static_cast<int>(3 * i + 1);
        supports.push_back({foot, base_of(members[i]), {}});
        supports.push_back(held({static_cast<int>(3 * i)}).front());
    }
    members.pop_back();
    // The stubs stay as members to keep their numbers, but hold nothing.
    for (std::size_t i = 0; i < 5; ++i)
        members[i] = {members[i].from, members[i].to, {1, 0, 0}, 1e-6, 1e-6, 1e-6, 1e-6};
    const double across = 12.0 * pin_lb_in2 / (pin_in * pin_in * pin_in);
    const SpaceJoint pin = {5, 15, {1e10, across, across, pin_torsion_lb_in2 / pin_in, 0, 0}, {}, line.nodes[5]};
    return {line.nodes, members, {pin}, supports};
}

double size(const SpaceVector& v) { return std::hypot(v.x, v.y, v.z); }

void check_motions(const std::vector<SpaceMotion>& ours, const std::vector<SpaceMotion>& theirs, double tolerance) {
    double move = 0.0, turn = 0.0;
    for (const SpaceMotion& m : theirs) {
        move = std::max(move, size(m.move_in));
        turn = std::max(turn, size(m.turn_rad));
    }
    for (std::size_t i = 0; i < theirs.size(); ++i) {
        INFO("node " << i);
        CHECK_CLOSE(size(ours[i].move_in - theirs[i].move_in), 0.0, 0.0, tolerance * move);
        CHECK_CLOSE(size(ours[i].turn_rad - theirs[i].turn_rad), 0.0, 0.0, tolerance * turn);
    }
}

/// What each base bears, against what Z88's motion of its stub's upper end calls for.
void check_bases(const BeamsInSpace& line, const SpaceSolution& ours, const std::vector<SpaceMotion>& theirs) {
    std::vector<SpaceForce> bear;
    double force = 0.0, couple = 0.0;
    for (std::size_t i = 0; i < 5; ++i) {
        const BaseStiffness k = base_of(line.members[i]);
        const SpaceMotion& m = theirs[3 * i + 1];
        const SixStiffnesses u = {m.move_in.x, m.move_in.y, m.move_in.z, m.turn_rad.x, m.turn_rad.y, m.turn_rad.z};
        SixStiffnesses f = {};
        for (std::size_t row = 0; row < 6; ++row) {
            for (std::size_t column = 0; column < 6; ++column) f[row] -= k[row][column] * u[column];
        }
        bear.push_back({{f[0], f[1], f[2]}, {f[3], f[4], f[5]}});
        force = std::max(force, size(bear.back().force_lb));
        couple = std::max(couple, size(bear.back().couple_lb_in));
    }
    for (std::size_t i = 0; i < 5; ++i) {
        INFO("base " << i);
        CHECK_CLOSE(size(ours.supports[2 * i].force_lb - bear[i].force_lb), 0.0, 0.0, 1e-3 * force);
        CHECK_CLOSE(size(ours.supports[2 * i].couple_lb_in - bear[i].couple_lb_in), 0.0, 0.0, 1e-3 * couple);
    }
}

}  // namespace

TEST_CASE("the beam of Z88 bends both ways by P L^3/3 E I and twists by T L/G J", "[oracle][closed-form]") {
    BeamsInSpace level{{{0, 0, 0}, {18, 24, 0}}, {rail(0, 1)}, {0}, {{{1, {80, -60, -70}, {60, 80, 0}}}, {}, {}}};
    const SpaceMotion tip = test::solve_beams_with_z88(level)[1];
    CHECK_CLOSE(tip.move_in.z, -70.0 * 27000.0 / (3.0 * 4e6), 1e-6, 0.0);
    CHECK_CLOSE(tip.move_in.x, 0.8 * 100.0 * 27000.0 / (3.0 * 7e6), 1e-6, 0.0);
    CHECK_CLOSE(0.6 * tip.turn_rad.x + 0.8 * tip.turn_rad.y, 100.0 * 30.0 / 2.5e6, 1e-5, 0.0);
    BeamsInSpace upright{{{0, 0, 0}, {0, 0, 30}}, {post(0, 1)}, {0}, {{{1, {100, 200, 0}, {0, 0, 50}}}, {}, {}}};
    const SpaceMotion top = test::solve_beams_with_z88(upright)[1];
    CHECK_CLOSE(top.move_in.x, 100.0 * 27000.0 / (3.0 * 9e6), 1e-6, 0.0);
    CHECK_CLOSE(top.move_in.y, 200.0 * 27000.0 / (3.0 * 8e6), 1e-6, 0.0);
    CHECK_CLOSE(top.turn_rad.z, 50.0 * 30.0 / 6e6, 1e-6, 0.0);
}

TEST_CASE("a guard line with a corner, a return and a broken rail agrees with Z88", "[oracle]") {
    BeamsInSpace line = corner_line();
    const SpaceFrame as_beams(line.nodes, line.members, {}, held(line.clamped));
    const SpaceFrame as_bases = as_bases_and_joint(line);
    for (const SpaceLoads& loads : pushes()) {
        line.loads = loads;
        const std::vector<SpaceMotion> theirs = test::solve_beams_with_z88(line);
        const SpaceSolution beams = as_beams.solve(loads), bases = as_bases.solve(loads);
        REQUIRE(beams.stable);
        REQUIRE(bases.stable);
        CHECK(bases.residual < 1e-9);
        check_motions(beams.motions, theirs, 1e-4);
        check_motions(bases.motions, theirs, 1e-3);
        check_bases(line, bases, theirs);
    }
}
