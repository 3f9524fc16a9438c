// Frames of several members: a portal that sways, semi-rigid ends, corners in plan, bases whose motions couple.
#include "mechanics/space_frame/posts_and_rail.h"

#include "support/compare.h"

#include <cmath>

namespace {

using namespace toehold::mechanics;
using namespace toehold::test;

constexpr double height = 42.0, span = 60.0, post = 8e6, rail = 5e6, push_lb = 200.0;
// Stiff against stretching, so that the closed forms of bending alone hold.
constexpr double endless = 1e9;

/// In the plane of x and z; `corner` (lb in per rad) between each post's top and the rail.
FrameInSpace portal(double corner, bool clamped_feet) {
    FrameInSpace frame;
    frame.nodes = {{0, 0, 0}, {0, 0, height}, {span, 0, 0}, {span, 0, height}, {0, 0, height}, {span, 0, height}};
    frame.members = {{0, 1, {1, 0, 0}, endless, 1e6, post, post},
                     {2, 3, {1, 0, 0}, endless, 1e6, post, post},
                     {4, 5, {0, 0, 1}, endless, 1e6, rail, rail}};
    for (const int top : {1, 3})
        frame.joints.push_back({top, top == 1 ? 4 : 5, {stiff, stiff, stiff, stiff, corner, stiff}});
    frame.supports = {clamped(0), clamped(2)};
    if (!clamped_feet) {
        for (SpaceSupport& s : frame.supports) s.stiffness[4][4] = 0.0;
    }
    return frame;
}

double sway(double corner, bool clamped_feet) {
    const SpaceFrame frame = portal(corner, clamped_feet).made();
    const SpaceSolution s = frame.solve({{{1, {0.5 * push_lb, 0, 0}, {}}, {3, {0.5 * push_lb, 0, 0}, {}}}, {}, {}});
    REQUIRE(s.stable);
    CHECK(s.residual < 1e-9);
    return s.motions[1].move_in.x;
}

}  // namespace

// Each post bears H/2; half the rail, hinged at its middle, holds its top with 6 E I_b/L in series with the joint's c.
// On hinged feet the top moves by (H/2) h^3/3 E I + (H/2) h^2/(spring).
TEST_CASE("a portal on hinged feet sways by its posts, its rail and its corners", "[closed-form]") {
    for (const double corner : {2e5, stiff}) {
        const double spring = 1.0 / (span / (6.0 * rail) + 1.0 / corner);
        const double each = 0.5 * push_lb;
        CHECK_CLOSE(sway(corner, false), each * std::pow(height, 3) / (3.0 * post) + each * height * height / spring,
                    2e-4, 0.0);
    }
}

// Clamped feet, slope deflection: top moment M = s t of the rail's spring s, with the post's end moments
// M_top = 4 i t - 6 i d/h (i = E I/h) in balance with it, and M_top + M_foot = -(H/2) h.
TEST_CASE("a portal on clamped feet sways as slope deflection says", "[closed-form]") {
    const double i = post / height, s = 6.0 * rail / span, each = 0.5 * push_lb;
    // (4 i + s) t = 6 i d/h and 6 i t - 12 i d/h = -each h.
    const double turn_for_one = 6.0 * i / height / (4.0 * i + s);
    const double d = each * height / (12.0 * i / height - 6.0 * i * turn_for_one);
    CHECK_CLOSE(sway(stiff, true), d, 2e-4, 0.0);
    // Corners that do not turn the rail leave two cantilevers.
    CHECK_CLOSE(sway(0.0, true), each * std::pow(height, 3) / (3.0 * post), 2e-4, 0.0);
}

// An L in plan, clamped at its root along x, its arm of length b along y: a load P down at the arm's tip twists the
// root bar by P b. Tip: P a^3/3 E I + P b^3/3 E I + P b^2 a/G J. Along x the arm bends and turns the root bar in plan.
TEST_CASE("at a corner in plan one arm's bending is the other's twist, its push the other's bending", "[closed-form]") {
    const double a = 30.0, b = 20.0, bend = 4e6, flat = 7e6, twist = 9e5, axial = 1e6;
    FrameInSpace frame;
    frame.nodes = {{0, 0, 0}, {a, 0, 0}, {a, b, 0}};
    frame.members = {{0, 1, {0, 0, 1}, axial, twist, bend, flat}, {1, 2, {0, 0, 1}, axial, twist, bend, flat}};
    frame.supports = {clamped(0)};
    const SpaceFrame made = frame.made();
    const SpaceSolution down = made.solve({{{2, {0, 0, -push_lb}, {}}}, {}, {}});
    CHECK_CLOSE(-down.motions[2].move_in.z, push_lb * ((a * a * a + b * b * b) / (3.0 * bend) + b * b * a / twist),
                1e-8, 0.0);
    CHECK_CLOSE(down.members[0].at_to.couple_lb_in.x, -push_lb * b, 1e-8, 0.0);
    CHECK_CLOSE(down.members[1].at_from.couple_lb_in.x, 0.0, 0.0, 1e-6);
    const SpaceSolution along = made.solve({{{2, {push_lb, 0, 0}, {}}}, {}, {}});
    // The root bar is stretched by P and bent in plan by P b.
    CHECK_CLOSE(along.motions[2].move_in.x, push_lb * (a / axial + b * b * b / (3.0 * flat) + b * b * a / flat), 1e-8,
                0.0);
    CHECK_CLOSE(along.members[0].at_from.force_lb.x, push_lb, 1e-8, 0.0);
    CHECK_CLOSE(along.members[0].at_from.couple_lb_in.z, -push_lb * b, 1e-8, 0.0);
}

TEST_CASE("a base whose motions couple is a stub that it stands for", "[closed-form]") {
    // A post's lower part as a base: at its top, moved along x and turned about y, a cantilever of length c gives
    // 12 E I/c^3, 6 E I/c^2 and 4 E I/c.
    const double c = 12.0;
    FrameInSpace whole;
    whole.nodes = {{0, 0, -c}, {0, 0, 0}, {3.0, 4.0, height}};
    whole.members = {{0, 1, {1, 0, 0}, 3e6, 1e6, post, rail}, {1, 2, {1, 0, 0}, 3e6, 1e6, post, rail}};
    whole.supports = {clamped(0)};
    FrameInSpace part = whole;
    part.members.erase(part.members.begin());
    // The member's x is up, its z along x, so its y along -y: `post` is for bending about y, `rail` about x.
    BaseStiffness base = uncoupled(
        {12.0 * post / (c * c * c), 12.0 * rail / (c * c * c), 3e6 / c, 4.0 * rail / c, 4.0 * post / c, 1e6 / c});
    // Moved along +x with no turn, the stub pushes back and turns its top by -6 E I/c^2 about +y.
    base[0][4] = base[4][0] = -6.0 * post / (c * c);
    base[1][3] = base[3][1] = 6.0 * rail / (c * c);
    part.nodes = {{9, 9, 9}, {0, 0, 0}, {3.0, 4.0, height}};
    part.members[0] = whole.members[1];
    part.members.push_back({0, 2, {1, 0, 0}, 1e-6, 1e-6, 1e-6, 1e-6});
    part.supports = {{1, base, {}}, clamped(0)};
    const SpaceLoads loads = {{{2, {70, 200, -50}, {300, -90, 500}}}, {}, {}};
    const SpaceSolution s = whole.made().solve(loads), t = part.made().solve(loads);
    REQUIRE(t.stable);
    for (const std::size_t node : {std::size_t{1}, std::size_t{2}}) {
        const SpaceVector move = t.motions[node].move_in - s.motions[node].move_in;
        const SpaceVector turn = t.motions[node].turn_rad - s.motions[node].turn_rad;
        CHECK_CLOSE(std::abs(move.x) + std::abs(move.y) + std::abs(move.z), 0.0, 0.0, 1e-7);
        CHECK_CLOSE(std::abs(turn.x) + std::abs(turn.y) + std::abs(turn.z), 0.0, 0.0, 1e-8);
    }
    CHECK_CLOSE(t.supports[0].couple_lb_in.y, s.members[0].at_to.couple_lb_in.y, 1e-6, 1e-6);
}

TEST_CASE("a rail beside its post's axis loads it by its arm", "[closed-form]") {
    // A joint at (e, 0, h), the rail's node there too: 100 lb along y on the rail twists the post by 100 e.
    const double e = 2.0;
    FrameInSpace frame;
    frame.nodes = {{0, 0, 0}, {0, 0, height}, {e, 0, height}, {e + 10.0, 0, height}};
    frame.members = {{0, 1, {1, 0, 0}, 3e6, 1e6, post, post}, {2, 3, {0, 0, 1}, 3e6, 1e6, rail, rail}};
    frame.joints = {{1, 2, {1e4, 1e4, 1e4, 1e6, 1e6, 1e6}, {}, SpaceVector{e, 0, height}}};
    frame.supports = {clamped(0)};
    const SpaceSolution s = frame.made().solve({{{2, {0, 100.0, 0}, {}}}, {}, {}});
    REQUIRE(s.stable);
    CHECK(s.residual < 1e-9);
    CHECK_CLOSE(s.joints[0].force_lb.y, -100.0, 1e-8, 0.0);
    CHECK_CLOSE(s.supports[0].couple_lb_in.z, -100.0 * e, 1e-8, 0.0);
    const double top = 100.0 * std::pow(height, 3) / (3.0 * post), twist = 100.0 * e * height / 1e6;
    CHECK_CLOSE(s.motions[2].move_in.y, top + twist * e + 100.0 / 1e4, 1e-7, 0.0);
}

TEST_CASE("joints in parallel add, joints in a row give way one after the other", "[closed-form]") {
    // Between a clamped post's top and a short bar: twice half the springs, or a node between twice the springs, is the
    // same as the springs themselves. Each way leaves other joints to be known by their nodes' difference.
    const SixStiffnesses springs = {1e4, 2e4, 3e4, 4e5, 5e5, 6e5};
    const auto scaled = [&](double factor) {
        SixStiffnesses result = springs;
        for (double& k : result) k *= factor;
        return result;
    };
    FrameInSpace one;
    one.nodes = {{0, 0, 0}, {0, 0, height}, {2, 0, height}, {12, 3, height}, {1, 0, height}};
    one.members = {{0, 1, {1, 0, 0}, 3e6, 1e6, post, post}, {2, 3, {0, 0, 1}, 3e6, 1e6, rail, rail}};
    one.supports = {clamped(0)};
    FrameInSpace parallel = one, row = one;
    const SpaceVector place = {1.5, 0.5, height};
    // The spare node hangs on the post's foot, but for the row.
    one.joints = {{1, 2, springs, {}, place}, {0, 4, springs, {}, place}};
    parallel.joints = {{1, 2, scaled(0.5), {}, place}, {2, 1, scaled(0.5), {}, place}, {0, 4, springs, {}, place}};
    row.joints = {{4, 2, scaled(2.0), {}, place}, {1, 4, scaled(2.0), {}, place}};
    const SpaceLoads loads = {{{3, {30, 100, -60}, {70, 0, 200}}}, {}, {}};
    const SpaceSolution s = one.made().solve(loads);
    for (const FrameInSpace& other : {parallel, row}) {
        const SpaceSolution t = other.made().solve(loads);
        REQUIRE(t.stable);
        CHECK(t.residual < 1e-9);
        for (const std::size_t node : {std::size_t{1}, std::size_t{2}, std::size_t{3}}) {
            CHECK_CLOSE(t.motions[node].move_in.x, s.motions[node].move_in.x, 1e-8, 1e-10);
            CHECK_CLOSE(t.motions[node].move_in.y, s.motions[node].move_in.y, 1e-8, 1e-10);
            CHECK_CLOSE(t.motions[node].turn_rad.z, s.motions[node].turn_rad.z, 1e-8, 1e-12);
        }
        CHECK_CLOSE(t.joints[0].force_lb.y, s.joints[0].force_lb.y * (other.joints[1].first == 2 ? 0.5 : 1.0), 1e-8,
                    0.0);
    }
}
