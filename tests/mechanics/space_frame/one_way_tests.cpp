// Springs that are stiffer one way: closed forms, properties, and the side that each load calls for.
#include "mechanics/space_frame/one_way_frame.h"

#include "mechanics/space_frame/influence_lines.h"
#include "mechanics/space_frame/posts_and_rail.h"
#include "support/compare.h"

#include <algorithm>
#include <cmath>
#include <stdexcept>

namespace {

using namespace toehold::mechanics;
using namespace toehold::test;

constexpr double outward = 5e5, inward = 2e5;  // lb in per rad about x; a push along +y turns the base by -x

/// The line of posts, each base turning about x on a spring that is stiffer against a push outward, along +y.
OneWayFrame line_on_springs(const LineOfPosts& line, double against_outward, double against_inward) {
    FrameInSpace frame = line.frame();
    std::vector<OneWaySpring> springs;
    for (SpaceSupport& support : frame.supports) {
        support.stiffness[3][3] = 0.0;
        springs.push_back({support.node, {}, {1, 0, 0}, against_inward, against_outward});
    }
    return {frame.nodes, frame.members, frame.joints, frame.supports, springs};
}

SpaceLoads push(int post, double along_y) { return {{{3 * post + 2, {0, along_y, 0}, {}}}, {}, {}}; }

}  // namespace

TEST_CASE("a lone post leans by its own bending and by the side of its base that is pushed", "[closed-form]") {
    const LineOfPosts line{1, 0.0, 42.0, 8e6, 8e6};
    const OneWayFrame frame = line_on_springs(line, outward, inward);
    const double bent = 200.0 * std::pow(42.0, 3) / (3.0 * 8e6), couple = 200.0 * 42.0;
    const OneWaySolution out = frame.solve(push(0, 200.0)), in = frame.solve(push(0, -200.0));
    REQUIRE(out.frame.stable);
    REQUIRE(in.frame.stable);
    CHECK_CLOSE(out.frame.motions[1].move_in.y, bent + couple * 42.0 / outward, 1e-8, 0.0);
    CHECK_CLOSE(in.frame.motions[1].move_in.y, -bent - couple * 42.0 / inward, 1e-8, 0.0);
    CHECK_CLOSE(out.forces[0], couple, 1e-8, 0.0);
    CHECK_CLOSE(in.forces[0], -couple, 1e-8, 0.0);
    CHECK(in.complementarity < 1e-9);
    CHECK(in.frame.residual < 1e-9);
    CHECK(out.steps == 0);
    CHECK(in.frame.supports.size() == 1);
}

// Pushed at one end, the far posts of a line lean back: each base takes the side of its own motion, and the answer is
// that of the plain frame with just those sides.
TEST_CASE("each base takes the side of its own motion, and the answer is that of a frame with those", "[property]") {
    const LineOfPosts line{6, 40.0, 42.0, 8e6, 9e7};
    const OneWayFrame frame = line_on_springs(line, 6e5, 6e4);
    for (const double sense : {1.0, -1.0}) {
        for (int post = 0; post < line.posts; ++post) {
            const SpaceLoads loads = push(post, 200.0 * sense);
            const OneWaySolution s = frame.solve(loads);
            REQUIRE(s.frame.stable);
            CHECK(s.complementarity < 1e-9);
            CHECK(s.frame.residual < 1e-9);
            FrameInSpace chosen = line.frame();
            for (std::size_t i = 0; i < chosen.supports.size(); ++i)
                chosen.supports[i].stiffness[3][3] = s.motions[i] < 0.0 ? 6e5 : 6e4;
            const SpaceSolution t = chosen.made().solve(loads);
            for (std::size_t i = 0; i < t.motions.size(); ++i)
                CHECK_CLOSE(s.frame.motions[i].move_in.y, t.motions[i].move_in.y, 1e-7, 1e-10);
            const OneWaySolution settled = frame.settle(frame.stiff().solve(loads));
            CHECK_CLOSE(settled.forces[0], s.forces[0], 1e-7, 1e-6);
            CHECK_CLOSE(settled.frame.joints[3].force_lb.y, s.frame.joints[3].force_lb.y, 1e-7, 1e-7);
        }
    }
    const OneWaySolution end = frame.solve(push(0, 200.0));
    CHECK(std::count_if(end.motions.begin(), end.motions.end(), [](double m) { return m > 0.0; }) > 0);
    CHECK(end.steps > 0);
}

TEST_CASE("a push twice as large moves twice as far; sides alike are a plain frame", "[property]") {
    const LineOfPosts line{4, 50.0, 42.0, 8e6, 3e7};
    const OneWayFrame frame = line_on_springs(line, 4e5, 5e4);
    const OneWaySolution once = frame.solve(push(3, -100.0)), twice = frame.solve(push(3, -200.0));
    for (std::size_t i = 0; i < once.motions.size(); ++i)
        CHECK_CLOSE(twice.motions[i], 2.0 * once.motions[i], 1e-8, 1e-14);
    const OneWaySolution alike = line_on_springs(line, 4e5, 4e5).solve(push(1, 100.0));
    CHECK(alike.steps == 0);
    CHECK(alike.complementarity < 1e-12);
}

TEST_CASE("a beam that lies on feet lifts off one", "[closed-form]") {
    // Feet that press at 0, L and 2 L, the middle one also pulls; a load at 0 down lifts the far end: it is a lever
    // over the middle foot only if that pulls. Here the load stands between the first two, 1/4 along.
    FrameInSpace beam;
    beam.nodes = {{0, 0, 0}, {24, 0, 0}, {48, 0, 0}};
    for (const int i : {0, 1}) beam.members.push_back({i, i + 1, {0, 0, 1}, 1e7, 1e6, 4e6, 4e6});
    beam.supports = {{1, uncoupled({1e8, 1e8, 0, 1e8, 0, 1e8}), {}}};
    std::vector<OneWaySpring> feet;
    for (const int node : {0, 1, 2}) feet.push_back({node, {0, 0, 1}, {}, 0.0, 1e6});
    const OneWayFrame frame(beam.nodes, beam.members, {}, beam.supports, feet);
    const OneWaySolution s = frame.solve({{}, {{0, 6.0, {0, 0, -100.0}, {}}}, {}});
    REQUIRE(s.frame.stable);
    CHECK(s.complementarity < 1e-7);
    CHECK_CLOSE(s.forces[0], 75.0, 1e-7, 0.0);
    CHECK_CLOSE(s.forces[1], 25.0, 1e-7, 0.0);
    CHECK(s.forces[2] == 0.0);
    CHECK(s.motions[2] > 0.0);
    // Lifted, nothing holds it; beyond a foot, it tips over.
    CHECK_FALSE(frame.solve({{{1, {0, 0, 100.0}, {}}}, {}, {}}).frame.stable);
    CHECK_FALSE(frame.solve({{{0, {0, 0, -100.0}, {}}, {2, {0, 0, 60.0}, {}}}, {}, {}}).frame.stable);
}

TEST_CASE("a spring that cannot be is refused", "[bad-input]") {
    const FrameInSpace f = LineOfPosts{1}.frame();
    const auto made = [&](const OneWaySpring& spring) {
        return OneWayFrame(f.nodes, f.members, f.joints, f.supports, {spring});
    };
    CHECK_THROWS_AS(made({9, {1, 0, 0}, {}, 1, 2}), std::invalid_argument);
    CHECK_THROWS_AS(made({0, {}, {}, 1, 2}), std::invalid_argument);
    CHECK_THROWS_AS(made({0, {1, 0, 0}, {}, -1, 2}), std::invalid_argument);
    const OneWayFrame frame = made({0, {1, 0, 0}, {}, 1, 2});
    CHECK_THROWS_AS(frame.settle(SpaceSolution{}), std::invalid_argument);
    CHECK_THROWS_AS(frame.settle(f.made().solve({})), std::invalid_argument);
}
