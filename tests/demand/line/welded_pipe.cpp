// Why a pipe railing manual's factors are lower than ours: its rails are welded to their posts.
#include "mechanics/space_frame/space_frame.h"
#include "support/compare.h"

#include <cmath>
#include <vector>

using namespace toehold;

namespace {

constexpr double height_in = 42.0, spacing_in = 72.0;
// 1 1/2 in standard steel pipe, 1.900 x 0.145 in: A = 0.800 in2, I = 0.310 in4, J = 2 I.
constexpr double axial_lb = 29e6 * 0.800, bending_lb_in2 = 29e6 * 0.310, torsion_lb_in2 = 11.2e6 * 0.620;

/// Moment at the foot of a post under a push on it, over that of the post alone. All joints rigid.
double welded_share(int posts, int pushed) {
    std::vector<mechanics::SpaceVector> nodes;
    for (const double height : {0.0, height_in}) {
        for (int post = 0; post < posts; ++post) nodes.push_back({spacing_in * post, 0.0, height});
    }
    const auto pipe = [](int from, int to, mechanics::SpaceVector toward_z) {
        return mechanics::SpaceMember{from,           to,  toward_z, axial_lb, torsion_lb_in2, bending_lb_in2,
                                      bending_lb_in2, 0.0, 0.0};
    };
    std::vector<mechanics::SpaceMember> members;
    std::vector<mechanics::SpaceSupport> supports;
    for (int post = 0; post < posts; ++post) {
        if (post > 0) members.push_back(pipe(posts + post - 1, posts + post, {0.0, 0.0, 1.0}));
        members.push_back(pipe(post, posts + post, {0.0, 1.0, 0.0}));
        supports.push_back({post, mechanics::uncoupled({1e10, 1e10, 1e10, 1e10, 1e10, 1e10}), {}});
    }
    mechanics::SpaceLoads push;
    push.nodes.push_back({posts + pushed, {0.0, 1.0, 0.0}, {}});
    const mechanics::SpaceSolution solution = mechanics::SpaceFrame(nodes, members, {}, supports).solve(push);
    REQUIRE(solution.stable);
    return std::abs(solution.supports[static_cast<std::size_t>(pushed)].couple_lb_in.x) / height_in;
}

}  // namespace

// The factors as engineers quote them (two letters of an engineers' mailing list, 1998 and 2000; the manual's chart was
// not seen): middle and end post of two spans 0.65 and 0.85, of three or more 0.60 and 0.82. One pipe for rail and
// posts, 6 ft apart and 42 in high, rigid feet, every joint welded. With the rail pinned to its posts, as we count, the
// same posts take 0.75 and 0.94, 0.67 to 0.71 and 0.94 (post_shares.cpp).
TEST_CASE("pipe welded to its posts at 6 ft and 42 in gives a manual's load proportion factors", "[published]") {
    CHECK_CLOSE(welded_share(3, 1), 0.65, 0.04, 0.0);
    CHECK_CLOSE(welded_share(3, 0), 0.85, 0.07, 0.0);
    CHECK_CLOSE(welded_share(4, 1), 0.60, 0.03, 0.0);
    CHECK_CLOSE(welded_share(7, 3), 0.60, 0.03, 0.0);
    CHECK_CLOSE(welded_share(7, 0), 0.82, 0.04, 0.0);
}
