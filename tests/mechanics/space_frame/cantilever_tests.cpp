// One member in space against the beam's closed forms, about both its axes, and what a frame refuses.
#include "mechanics/space_frame/posts_and_rail.h"

#include "support/compare.h"

#include <limits>
#include <stdexcept>

namespace {

using namespace toehold::mechanics;
using namespace toehold::test;

constexpr double length = 40.0, axial = 3e6, torsion = 2e5, about_y = 4e6, about_z = 9e6, shear_y = 6e5, shear_z = 8e5;
constexpr double load_lb = 200.0;

/// Along x from the origin, its z axis up.
FrameInSpace cantilever(bool shears) {
    FrameInSpace frame;
    frame.nodes = {{0, 0, 0}, {length, 0, 0}};
    frame.members = {{0, 1, {0, 0, 2}, axial, torsion, about_y, about_z, shears ? shear_y : 0, shears ? shear_z : 0}};
    frame.supports = {clamped(0)};
    return frame;
}

SpaceLoads at_tip(const SpaceVector& force, const SpaceVector& couple) { return {{{1, force, couple}}, {}, {}}; }

}  // namespace

TEST_CASE("a cantilever bends about its y axis under a load along z, and about z under one along y", "[closed-form]") {
    for (const bool shears : {false, true}) {
        const SpaceFrame frame = cantilever(shears).made();
        const SpaceSolution up = frame.solve(at_tip({0, 0, load_lb}, {}));
        REQUIRE(up.stable);
        CHECK(up.residual < 1e-9);
        const double cube = load_lb * length * length * length / 3.0, square = load_lb * length * length / 2.0;
        CHECK_CLOSE(up.motions[1].move_in.z, cube / about_y + (shears ? load_lb * length / shear_z : 0), 1e-9, 0.0);
        CHECK_CLOSE(up.motions[1].turn_rad.y, -square / about_y, 1e-9, 0.0);
        CHECK_CLOSE(up.supports[0].force_lb.z, -load_lb, 1e-9, 0.0);
        CHECK_CLOSE(up.supports[0].couple_lb_in.y, load_lb * length, 1e-9, 0.0);

        const SpaceSolution left = frame.solve(at_tip({0, load_lb, 0}, {}));
        CHECK_CLOSE(left.motions[1].move_in.y, cube / about_z + (shears ? load_lb * length / shear_y : 0), 1e-9, 0.0);
        CHECK_CLOSE(left.motions[1].turn_rad.z, square / about_z, 1e-9, 0.0);
        CHECK_CLOSE(left.members[0].at_from.couple_lb_in.z, load_lb * length, 1e-9, 0.0);
        CHECK_CLOSE(left.members[0].at_to.force_lb.y, load_lb, 1e-9, 0.0);
    }
}

TEST_CASE("a bar stretches by P L/E A and twists by T L/G J; tension and torque are positive", "[closed-form]") {
    const SpaceFrame frame = cantilever(false).made();
    const SpaceSolution s = frame.solve(at_tip({load_lb, 0, 0}, {500.0, 0, 0}));
    CHECK_CLOSE(s.motions[1].move_in.x, load_lb * length / axial, 1e-9, 0.0);
    CHECK_CLOSE(s.motions[1].turn_rad.x, 500.0 * length / torsion, 1e-9, 0.0);
    CHECK_CLOSE(s.members[0].at_from.force_lb.x, load_lb, 1e-9, 0.0);
    CHECK_CLOSE(s.members[0].at_from.couple_lb_in.x, 500.0, 1e-9, 0.0);
}

TEST_CASE("a couple at a cantilever's tip bends it into a circle", "[closed-form]") {
    const SpaceFrame frame = cantilever(true).made();
    const SpaceSolution s = frame.solve(at_tip({}, {0, 300.0, 700.0}));
    CHECK_CLOSE(s.motions[1].move_in.y, 700.0 * length * length / (2.0 * about_z), 1e-9, 0.0);
    CHECK_CLOSE(s.motions[1].move_in.z, -300.0 * length * length / (2.0 * about_y), 1e-9, 0.0);
}

TEST_CASE("a clamped beam under an even load: w L^2/12, w L^2/24 and w L^4/384 E I", "[closed-form]") {
    FrameInSpace beam = cantilever(false);
    beam.supports.push_back(clamped(1));
    const SpaceFrame frame = beam.made();
    const double w = 7.0, square = w * length * length;
    const SpaceLoads loads = {{}, {}, {{0, 0.0, length, {0, w, -2.0 * w}}}};
    const SpaceSolution s = frame.solve(loads);
    REQUIRE(s.stable);
    CHECK(s.residual < 1e-9);
    const SpaceExtremes most = frame.extremes(s, 0, loads);
    // M_z = E I v'': hogging at the ends under a load along +y is positive.
    CHECK_CLOSE(most.most.couple_lb_in.z, square / 12.0, 1e-8, 0.0);
    CHECK_CLOSE(most.least.couple_lb_in.z, -square / 24.0, 1e-8, 0.0);
    // M_y = -E I w''.
    CHECK_CLOSE(most.most.couple_lb_in.y, 2.0 * square / 12.0, 1e-8, 0.0);
    CHECK_CLOSE(most.least.couple_lb_in.y, -2.0 * square / 24.0, 1e-8, 0.0);
    CHECK_CLOSE(most.most.force_lb.y, 0.5 * w * length, 1e-8, 0.0);
    const SpaceMotion middle = frame.motion_at(s, 0, 0.5 * length, loads);
    CHECK_CLOSE(middle.move_in.y, square * length * length / (384.0 * about_z), 1e-7, 0.0);
    CHECK_CLOSE(middle.move_in.z, -2.0 * square * length * length / (384.0 * about_y), 1e-7, 0.0);
}

TEST_CASE("an even load over the first part of a cantilever", "[closed-form]") {
    // Over a: the end of the stretch sinks by w a^4/8 E I and turns by w a^3/6 E I, the rest stays straight.
    const SpaceFrame frame = cantilever(false).made();
    const double w = 7.0, a = 15.0;
    const SpaceLoads loads = {{}, {}, {{0, 0.0, a, {0, 0, w}}}};
    const SpaceSolution s = frame.solve(loads);
    const double turned = w * a * a * a / (6.0 * about_y);
    CHECK_CLOSE(s.motions[1].move_in.z, w * a * a * a * a / (8.0 * about_y) + turned * (length - a), 1e-8, 0.0);
    CHECK_CLOSE(frame.section_at(s, 0, a, loads, BesideLoad::after).force_lb.z, 0.0, 0.0, 1e-9);
    CHECK_CLOSE(frame.section_at(s, 0, 5.0, loads, BesideLoad::after).force_lb.z, w * (a - 5.0), 1e-8, 0.0);
}

TEST_CASE("beside a point load stand two shears and two torques", "[closed-form]") {
    const SpaceFrame frame = cantilever(true).made();
    const SpaceLoads loads = {{}, {{0, 12.0, {0, load_lb, 0}, {90.0, 0, 0}}}, {}};
    const SpaceSolution s = frame.solve(loads);
    CHECK_CLOSE(frame.section_at(s, 0, 12.0, loads, BesideLoad::before).force_lb.y, load_lb, 1e-9, 0.0);
    CHECK_CLOSE(frame.section_at(s, 0, 12.0, loads, BesideLoad::after).force_lb.y, 0.0, 0.0, 1e-9);
    CHECK_CLOSE(frame.section_at(s, 0, 12.0, loads, BesideLoad::before).couple_lb_in.x, 90.0, 1e-9, 0.0);
    CHECK_CLOSE(frame.extremes(s, 0, loads).most.couple_lb_in.z, 12.0 * load_lb, 1e-9, 0.0);
}

TEST_CASE("a frame with a free part says so and gives nothing", "[bad-input]") {
    FrameInSpace loose = cantilever(false);
    // Everything held but the spin about the bar's own axis.
    loose.supports = {{0, uncoupled({1e6, 1e6, 1e6, 0, 1e8, 1e8}), {}}};
    const SpaceFrame frame = loose.made();
    CHECK_FALSE(frame.stable());
    const SpaceSolution s = frame.solve(at_tip({0, 0, load_lb}, {}));
    CHECK_FALSE(s.stable);
    CHECK(s.motions.empty());
    CHECK_FALSE(SpaceFrame({}, {}, {}, {}).stable());
    // A bar on a ball joint hangs on nothing that keeps it from turning.
    FrameInSpace hung = cantilever(false);
    hung.nodes.push_back({length, 0, 0});
    hung.nodes.push_back({2 * length, 0, 0});
    hung.members.push_back({2, 3, {0, 0, 1}, axial, torsion, about_y, about_z});
    hung.joints = {{1, 2, {stiff, stiff, stiff, stiff, 0, stiff}}};
    CHECK_FALSE(hung.made().stable());
}

TEST_CASE("a space frame that cannot be is refused when it is made", "[bad-input]") {
    const auto refuses = [](auto change) {
        FrameInSpace frame = cantilever(true);
        frame.joints = {{0, 1, {1, 1, 1, 1, 1, 1}, {}, SpaceVector{1, 1, 1}}};
        change(frame);
        CHECK_THROWS_AS(frame.made(), std::invalid_argument);
    };
    refuses([](FrameInSpace& f) { f.members[0].to = 2; });
    refuses([](FrameInSpace& f) { f.nodes[1] = f.nodes[0]; });
    refuses([](FrameInSpace& f) { f.nodes[1].z = std::numeric_limits<double>::quiet_NaN(); });
    refuses([](FrameInSpace& f) { f.members[0].toward_z = {-3, 0, 0}; });
    refuses([](FrameInSpace& f) { f.members[0].torsion_lb_in2 = 0.0; });
    refuses([](FrameInSpace& f) { f.members[0].shear_z_lb = -1.0; });
    refuses([](FrameInSpace& f) { f.joints[0].stiffness[4] = -1.0; });
    refuses([](FrameInSpace& f) { f.joints[0].second = 0; });
    refuses([](FrameInSpace& f) { f.joints[0].at.reset(); });
    refuses([](FrameInSpace& f) { f.supports[0].axes.y = {0.1, 1, 0}; });
    refuses([](FrameInSpace& f) { f.supports[0].stiffness[0][4] = 1e15; });
    refuses([](FrameInSpace& f) { f.supports[0].stiffness[0][4] = f.supports[0].stiffness[4][0] = 2e16; });
    refuses([](FrameInSpace& f) { f.supports[0].node = -1; });
}

TEST_CASE("a load that is nowhere on the frame is refused", "[bad-input]") {
    const SpaceFrame frame = cantilever(true).made();
    const auto refuses = [&](const SpaceLoads& loads) { CHECK_THROWS_AS(frame.solve(loads), std::invalid_argument); };
    refuses({{{2, {1, 0, 0}, {}}}, {}, {}});
    refuses({{}, {{1, 1.0, {1, 0, 0}, {}}}, {}});
    refuses({{}, {{0, 40.1, {1, 0, 0}, {}}}, {}});
    refuses({{}, {{0, 1.0, {std::numeric_limits<double>::infinity(), 0, 0}, {}}}, {}});
    refuses({{}, {}, {{0, 8.0, 4.0, {1, 0, 0}}}});
    CHECK_THROWS_AS(frame.extremes(SpaceSolution{}, 0, {}), std::invalid_argument);
    CHECK_THROWS_AS(frame.motion_at(frame.solve({}), 1, 0.0, {}), std::invalid_argument);
}
