// A post that does not bend, against statics and the triangle of pressure written out; limits of stiff beds; the hand's
// couple; the elastic group of the fasteners in the plane of the face.
#include "mechanics/side_post/hand_values.h"
#include "mechanics/side_post/posts.h"
#include "support/compare.h"

#include <algorithm>
#include <cmath>

using namespace toehold::mechanics;
using toehold::test::four_by_four;
using toehold::test::push;
using toehold::test::rigid;
using toehold::test::top_in;

namespace {

struct Row {
    double z_in, lb_per_in;
};

/// Turning by r about a line c above the bottom of a bed of width b: rows pull K r max(0, z - c), the bed presses a
/// triangle k b r c^2/2 at c/3. Forces: sum T - C = H; moments about the bottom: sum T z - C c/3 = H h. The two give
/// h as a function of c, which falls as c grows; halving finds c.
struct Triangle {
    double neutral_in = 0.0;
    std::vector<double> tension_lb;
    double bearing_lb = 0.0, peak_psi = 0.0;
};

Triangle triangle(const std::vector<Row>& rows, double bed_psi_per_in, double width_in, double depth_in, double push_lb,
                  double height_in) {
    const auto sums = [&](double c) {
        const double bed = 0.5 * bed_psi_per_in * width_in * c * c;
        std::pair<double, double> of{-bed, -bed * c / 3.0};
        for (const Row& row : rows) {
            const double pull = row.lb_per_in * std::max(0.0, row.z_in - c);
            of.first += pull;
            of.second += pull * row.z_in;
        }
        return of;
    };
    // Between c = 0 and where nothing is left of the net force, the lever h = moment / force grows from the rows' own
    // height to infinity.
    double low = 0.0, high = depth_in;
    for (int i = 0; i < 200; ++i) {
        const double c = 0.5 * (low + high);
        const auto [force, moment] = sums(c);
        (force > 0.0 && moment < height_in * force ? low : high) = c;
    }
    Triangle found;
    found.neutral_in = 0.5 * (low + high);
    const double turn = push_lb * height_in / sums(found.neutral_in).second;
    for (const Row& row : rows)
        found.tension_lb.push_back(turn * row.lb_per_in * std::max(0.0, row.z_in - found.neutral_in));
    found.peak_psi = turn * bed_psi_per_in * found.neutral_in;
    found.bearing_lb = 0.5 * found.peak_psi * width_in * found.neutral_in;
    return found;
}

SidePostSolution solved(const SidePost& post, const std::vector<PostLoad>& loads) {
    SidePostSolution solution = solve_side_post(post, loads);
    REQUIRE(solution.status == SolveStatus::solved);
    return solution;
}

}  // namespace

TEST_CASE("A rigid post on a bed and two rows of bolts presses a triangle", "[closed-form]") {
    for (const double stiffness : {2e3, 2e4, 4e5}) {
        SidePost post = rigid(four_by_four());
        post.bearings[0].stiffness_psi_per_in = stiffness;
        const Triangle by_hand = triangle({{2.0, 3e4}, {7.25, 3e4}}, stiffness, 3.5, 9.25, 200.0, top_in);
        const SidePostSolution found = solved(post, push(post, 0.0, 200.0));
        CAPTURE(stiffness, by_hand.neutral_in);
        CHECK_CLOSE(found.fasteners[0].tension_lb, by_hand.tension_lb[0], 1e-6, 1e-3);
        CHECK_CLOSE(found.fasteners[1].tension_lb, by_hand.tension_lb[1], 1e-6, 0.0);
        CHECK_CLOSE(found.bearings[0].force_lb, by_hand.bearing_lb, 1e-6, 0.0);
        CHECK_CLOSE(found.bearings[0].at_z_in, by_hand.neutral_in / 3.0, 1e-6, 0.0);
        CHECK_CLOSE(found.bearings[0].to_z_in, by_hand.neutral_in, 1e-6, 0.0);
        CHECK_CLOSE(found.bearings[0].from_z_in, 0.0, 0.0, 1e-12);
        CHECK_CLOSE(found.bearings[0].peak_psi, by_hand.peak_psi, 1e-6, 0.0);
        CHECK_CLOSE(found.bearings[0].peak_z_in, 0.0, 0.0, 1e-12);
        CHECK_CLOSE(found.bearings[0].area_in2, 3.5 * by_hand.neutral_in, 1e-6, 0.0);
    }
}

// Inward, the same post seen upside down: it presses the top of the rim and the lower bolt pulls. The push then stands
// above the top edge: 46.25 - 9.25 = 37 in beyond the edge that presses.
TEST_CASE("An inward push on a rigid post presses the rim's top and pulls the lower bolt", "[closed-form]") {
    const SidePost post = rigid(four_by_four());
    const SidePostSolution found = solved(post, push(post, 0.0, -200.0));
    // Down from the top edge: bolts at 2 and 7.25, the push at -37 and pressing. Forces: C - sum T = H.
    const auto unbalanced = [](double c) {
        const double bed = 0.5 * 2e4 * 3.5 * c * c;
        const double upper = 3e4 * std::max(0.0, 2.0 - c), lower = 3e4 * (7.25 - c);
        return (upper * 2.0 + lower * 7.25 - bed * c / 3.0) - 37.0 * (bed - upper - lower);
    };
    double low = 0.0, high = 7.25;
    for (int i = 0; i < 200; ++i) (unbalanced(0.5 * (low + high)) > 0.0 ? low : high) = 0.5 * (low + high);
    const double turn = 200.0 / (0.5 * 2e4 * 3.5 * low * low - 3e4 * std::max(0.0, 2.0 - low) - 3e4 * (7.25 - low));
    CHECK_CLOSE(found.bearings[0].from_z_in, 9.25 - low, 1e-6, 0.0);
    CHECK_CLOSE(found.fasteners[0].tension_lb, turn * 3e4 * (7.25 - low), 1e-6, 0.0);
    CHECK_CLOSE(found.fasteners[1].tension_lb, turn * 3e4 * std::max(0.0, 2.0 - low), 1e-6, 1e-3);
}

TEST_CASE("Without a lower bolt and on a very stiff bed the tension is the hand's couple about the rim's bottom",
          "[closed-form]") {
    SidePost post = rigid(four_by_four());
    post.fasteners = {{-1.0, 7.25, 1.5e4, 0.0, 3e4, 2e4}, {1.0, 7.25, 1.5e4, 0.0, 3e4, 2e4}};
    const HandCouple hand = hand_couple(200.0, top_in - 9.25, 9.25, 2.0);
    double before = 1.0;
    for (const double stiffness : {1e5, 1e7, 1e9}) {
        post.bearings[0].stiffness_psi_per_in = stiffness;
        const SidePostSolution found = solved(post, push(post, 0.0, 200.0));
        const double tension = found.fasteners[0].tension_lb + found.fasteners[1].tension_lb;
        CHECK(tension > hand.tension_lb);
        const double off = tension / hand.tension_lb - 1.0;
        CHECK(off < 0.2 * before);
        before = off;
    }
    CHECK(before < 2e-3);
}

// 200 lb at 36 in above decking 1 in thick. Turning about the rim's bottom, upper bolts 2 in below the rim's top:
//   2x8:  200 (37 + 7.25)/5.25 = 1,685.7 lb      2x10: 200 (37 + 9.25)/7.25 = 1,275.9 lb
// at 42 in: 2x8 200 (43 + 7.25)/5.25 = 1,914.3 lb, 2x10 200 (43 + 9.25)/7.25 = 1,441.4 lb. Bolt to bolt, 2 in from both
// edges: 2x8 200 (37 + 5.25)/3.25 = 2,600 lb. The rounded figure of about 2,000 lb for a hold-down lies among these, so
// it goes with a push of 200 lb: 500 lb, the usual proof push, asks for 2.5 times as much.
TEST_CASE("The hand's couple of usual rims", "[closed-form]") {
    CHECK_CLOSE(hand_couple(200.0, 37.0, 7.25, 2.0).tension_lb, 1685.714, 1e-6, 0.0);
    CHECK_CLOSE(hand_couple(200.0, 37.0, 9.25, 2.0).tension_lb, 1275.862, 1e-6, 0.0);
    CHECK_CLOSE(hand_couple(200.0, 43.0, 7.25, 2.0).tension_lb, 1914.286, 1e-6, 0.0);
    CHECK_CLOSE(hand_couple(200.0, 43.0, 9.25, 2.0).tension_lb, 1441.379, 1e-6, 0.0);
    CHECK_CLOSE(hand_couple(200.0, 37.0, 5.25, 2.0).tension_lb, 2600.0, 1e-9, 0.0);
    CHECK_CLOSE(hand_couple(200.0, 37.0, 5.25, 2.0).bearing_lb, 2400.0, 1e-9, 0.0);
    CHECK_CLOSE(hand_couple(500.0, 37.0, 7.25, 2.0).tension_lb, 4214.286, 1e-6, 0.0);
    CHECK_THROWS_AS(hand_couple(200.0, 37.0, 2.0, 2.0), std::invalid_argument);
}

// Two bolts 5.25 in apart: H = 200 lb at 46.25 in; the center at 4.625; moment 200 x 41.625 = 8,325 lb in; couple
// 8,325/5.25 = 1,585.714; upper 100 + 1,585.714, lower 100 - 1,585.714.
TEST_CASE("Along the rail a rigid post's bolts are an elastic group", "[closed-form]") {
    const SidePost post = rigid(four_by_four());
    const SidePostSolution found = solved(post, push(post, 200.0, 0.0));
    CHECK_CLOSE(found.fasteners[0].slip_x_lb, -1485.714, 1e-6, 0.0);
    CHECK_CLOSE(found.fasteners[1].slip_x_lb, 1685.714, 1e-6, 0.0);
    // The push stands off the face by half the post: 200 x 1.75 = 350 lb in of twist, held by bolts at x = 0 and the
    // bed's edge.
    const PostBearingForce& bed = found.bearings[0];
    CHECK_CLOSE(bed.force_lb * bed.at_x_in, 350.0, 1e-6, 0.0);
    CHECK_CLOSE(found.fasteners[0].tension_lb + found.fasteners[1].tension_lb, bed.force_lb, 1e-9, 0.0);
}

TEST_CASE("Four uneven bolts share a push along the rail as the slip group by hand", "[closed-form]") {
    SidePost post = rigid(four_by_four());
    post.fasteners = {{-1.2, 1.5, 3e4, 0.0, 1e4, 1e4},
                      {1.0, 2.0, 3e4, 0.0, 2e4, 2e4},
                      {-1.0, 7.0, 3e4, 0.0, 3e4, 3e4},
                      {0.8, 7.5, 3e4, 0.0, 1.5e4, 1.5e4}};
    std::vector<SlipFastener> group;
    group.reserve(post.fasteners.size());
    for (const PostFastener& one : post.fasteners) group.push_back({{one.x_in, one.z_in}, one.slip_x_lb_per_in});
    const SidePostSolution found = solved(post, push(post, 150.0, 60.0, -80.0));
    const SlipGroup by_hand = slip_group(group, {0.0, top_in}, {150.0, -80.0});
    REQUIRE(by_hand.balanced);
    for (std::size_t i = 0; i < group.size(); ++i) {
        CHECK_CLOSE(found.fasteners[i].slip_x_lb, by_hand.force_lb[i].x, 1e-6, 1e-3);
        CHECK_CLOSE(found.fasteners[i].slip_z_lb, by_hand.force_lb[i].y, 1e-6, 1e-3);
    }
}

// Bolts at (0, 0) and (4, 0), the second three times stiffer: center at 3; 100 lb up at 7: moment 400, polar 1 x 9 + 3
// x 1 = 12; forces 25 - 400 x 3/12 = -75 and 75 + 3 x 400/12 = 175.
TEST_CASE("A slip group by hand, and one bolt that cannot hold a moment", "[closed-form]") {
    const std::vector<SlipFastener> two{{{0.0, 0.0}, 1.0}, {{4.0, 0.0}, 3.0}};
    const SlipGroup group = slip_group(two, {7.0, 0.0}, {0.0, 100.0});
    REQUIRE(group.balanced);
    CHECK_CLOSE(group.force_lb[0].y, -75.0, 1e-12, 0.0);
    CHECK_CLOSE(group.force_lb[1].y, 175.0, 1e-12, 0.0);
    CHECK_CLOSE(group.moment_lb_in, 400.0, 1e-12, 0.0);
    const std::vector<SlipFastener> one{{{1.0, 2.0}, 5.0}};
    CHECK(slip_group(one, {1.0, 9.0}, {0.0, 10.0}).balanced);
    CHECK_FALSE(slip_group(one, {3.0, 2.0}, {0.0, 10.0}).balanced);
    CHECK_THROWS_AS(slip_group({}, {0.0, 0.0}, {1.0, 0.0}), std::invalid_argument);
}

// A bolt 1 in to each side of the axis and a push outward 0.5 in off the axis: the couple of 200 x 0.5 lb in divides
// unevenly over both bolts; the bed's triangle cannot help, being as wide as the post but pressed evenly only where
// both bolts stretch alike. Statics: (T2 - T1) x 1 + C x_C = -200 x 0.5 about z.
TEST_CASE("A push off the post's axis pulls one column of bolts more, by statics", "[closed-form]") {
    const SidePost post = rigid(toehold::test::two_columns());
    const SidePostSolution found = solved(post, {{{0.5, 1.75, top_in}, {0.0, 200.0, 0.0}, {}}});
    double moment = -200.0 * 0.5;
    for (std::size_t i = 0; i < 4; ++i) moment += found.fasteners[i].tension_lb * post.fasteners[i].x_in;
    moment -= found.bearings[0].force_lb * found.bearings[0].at_x_in;
    CHECK_CLOSE(moment, 0.0, 0.0, 1e-6);
    CHECK(found.fasteners[3].tension_lb > found.fasteners[2].tension_lb + 10.0);
}
