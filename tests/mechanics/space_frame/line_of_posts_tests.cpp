// How a rail shares a push among posts, by closed forms and the published pipe-railing manual.
#include "mechanics/space_frame/posts_and_rail.h"

#include "support/compare.h"

#include <cmath>
#include <numeric>

namespace {

using namespace toehold::mechanics;
using namespace toehold::test;

/// What each post's foot bears, as couple over height, of a push of 1 lb square to the rail at the top of one post.
std::vector<double> feet(const FrameInSpace& line, double height_in, int pushed) {
    const SpaceSolution s = line.made().solve({{{3 * pushed + 2, {0, 1.0, 0}, {}}}, {}, {}});
    REQUIRE(s.stable);
    CHECK(s.residual < 1e-9);
    std::vector<double> result;
    double force = 0.0;
    for (const SpaceForce& support : s.supports) {
        result.push_back(support.couple_lb_in.x / height_in);
        force += support.force_lb.y;
    }
    CHECK_CLOSE(force, -1.0, 1e-9, 0.0);
    // Every foot lies on the x axis, so that the push turns all of them together by its height.
    CHECK_CLOSE(std::accumulate(result.begin(), result.end(), 0.0), 1.0, 1e-9, 0.0);
    return result;
}

std::vector<double> shares(const LineOfPosts& line, int pushed) { return feet(line.frame(), line.height_in, pushed); }

}  // namespace

// Posts are cantilevers on rigid bases, each a spring of k = 3 E I/h^3 to the rail. The rail is one beam in plan over
// three springs, which the posts neither twist nor hold against turning about the vertical. If the posts at the ends
// take F/2 each, the rail is a beam of span 2 L under F at its middle, lower there by F L^3/6 E I than at its ends:
//   d_end = F/2k, d_middle = F/2k + F L^3/6 E I, R = k d_middle = F (1 + L^3/h^3)/2, P = R + F
//   R/P = (L^3 + h^3)/(L^3 + 3 h^3)
TEST_CASE("of three posts alike with the rail the middle one bears (L^3 + h^3)/(L^3 + 3 h^3)", "[closed-form]") {
    for (const double spacing : {24.0, 42.0, 60.0, 96.0}) {
        for (const double height : {36.0, 42.0}) {
            const std::vector<double> share = shares({3, spacing, height, 8e6, 8e6}, 1);
            const double span = std::pow(spacing, 3), post = std::pow(height, 3);
            CHECK_CLOSE(share[1], (span + post) / (span + 3.0 * post), 1e-6, 0.0);
            CHECK_CLOSE(share[0], share[2], 1e-7, 0.0);
        }
    }
}

// The same rail pushed over its end: springs 1/k at the ends and middle, statics gives R_1 + R_2 + R_3 = P and
// R_2 = -2 R_3, so R_1 = P + R_3; the rail bent by R_2 at its middle: d_1 + d_3 - 2 d_2 = R_2 L^3/3 E I of the
// supports. With q = L^3/h^3: (P + R_3) + R_3 + 4 R_3 = -q 2 R_3, so R_3 = -P/(6 + 2 q) and R_1/P = (5 + 2 q)/(6 + 2
// q).
TEST_CASE("of three posts alike with the rail the end one bears (5 + 2 q)/(6 + 2 q), q = L^3/h^3", "[closed-form]") {
    for (const double spacing : {24.0, 60.0}) {
        const std::vector<double> share = shares({3, spacing, 42.0, 8e6, 8e6}, 0);
        const double q = std::pow(spacing / 42.0, 3);
        CHECK_CLOSE(share[0], (5.0 + 2.0 * q) / (6.0 + 2.0 * q), 1e-6, 0.0);
        CHECK_CLOSE(share[2], -1.0 / (6.0 + 2.0 * q), 1e-6, 0.0);
    }
}

TEST_CASE("a rail that does not bend shares a push over the middle evenly, a limp one not at all", "[closed-form]") {
    for (const double share : shares({3, 60.0, 42.0, 8e6, 8e11}, 1)) CHECK_CLOSE(share, 1.0 / 3.0, 1e-4, 0.0);
    CHECK_CLOSE(shares({3, 60.0, 42.0, 8e6, 8.0}, 1)[1], 1.0, 1e-4, 0.0);
}

// A rail on closely set posts is a beam on an elastic foundation of k/L an inch: under P it bears P beta/2 an inch
// there, beta^4 = k/(4 E I L) (M. Hetenyi, Beams on Elastic Foundation, 1946, the infinite beam; from memory).
TEST_CASE("a long rail on many posts is Hetenyi's beam", "[closed-form]") {
    const LineOfPosts line{61, 10.0, 42.0, 8e6, 8e6};
    const double k = 3.0 * line.post_lb_in2 / std::pow(line.height_in, 3);
    const double beta = std::pow(k / (4.0 * line.rail_lb_in2 * line.spacing_in), 0.25);
    CHECK_CLOSE(shares(line, 30)[30], 0.5 * beta * line.spacing_in, 2e-3, 0.0);
}

// The load proportion factors of the published pipe-railing manual (AMP 521): about 0.65 for the middle and 0.85 for
// the end post of two spans, 0.60 and 0.82 of three or more. The manual itself was not seen: all four were read in a
// letter of 2000 to an engineers' mailing list (SEAINT archive, "RE: Handrail"), which quotes a trade catalog, and 65 %
// and 85 % for two spans in a filed calculation that names AMP 521-01. Which ends and spans they rest on neither says.
// Rail and posts of one pipe (G J = E I/1.3), 42 in high, spans of 5 ft: a rail that turns freely on its posts shares
// less, a rail welded to them, which twists them and is twisted by their leaning, shares more. All four lie between.
TEST_CASE("the pipe-railing manual's shares lie between a rail on pins and one welded to its posts", "[memory]") {
    const auto between = [](int posts, int pushed, double factor) {
        LineOfPosts line{posts, 60.0, 42.0, 8e6, 8e6};
        line.torsion_lb_in2 = 8e6 / 1.3;
        const auto at = static_cast<std::size_t>(pushed);
        const double on_pins = feet(line.frame(), line.height_in, pushed)[at];
        FrameInSpace welded = line.frame();
        for (SpaceJoint& joint : welded.joints) joint.stiffness = {stiff, stiff, stiff, stiff, stiff, stiff};
        const double when_welded = feet(welded, line.height_in, pushed)[at];
        INFO(posts << " posts, post " << pushed << ": " << when_welded << " to " << on_pins);
        CHECK(when_welded < factor);
        CHECK(factor < on_pins);
        return on_pins;
    };
    CHECK_CLOSE(between(3, 1, 0.65), 0.65, 0.0, 0.02);
    CHECK_CLOSE(between(4, 1, 0.60), 0.60, 0.0, 0.04);
    between(3, 0, 0.85);
    between(4, 0, 0.82);
}
