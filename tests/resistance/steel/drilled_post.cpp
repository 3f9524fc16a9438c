// A drilled tube and a drilled bar by hand.
#include "resistance/steel/drilled_post.h"

#include "support/compare.h"

#include <vector>

using namespace toehold::resistance::steel;

namespace {

constexpr double yield_psi = 46000.0, ultimate_psi = 58000.0;
constexpr TubeShape tube{false, 4.0, 4.0, 0.25};

}  // namespace

TEST_CASE("without holes all of the moment is left", "[unit]") {
    const LeftAtHoles left = left_at_holes(tube, false, 0.25, section_as_drawn(tube), yield_psi, ultimate_psi, {});
    CHECK(left.about_x == 1.0);
    CHECK(left.about_y == 1.0);
}

TEST_CASE("a tube's hole takes its part of both walls' plastic modulus", "[closed-form]") {
    // Z = (64 - 3.5^3)/4 = 5.28125 in3 (b d^2/4 of the outer less the inner). Hole 9/16 in both walls: 0.5625 x 0.25 x
    // 3.75 = 0.527344 about x; about y 2 x 0.25 x 0.5625^2/4 = 0.039551.
    const std::vector<PostHole> hole{{0.0, 0.5625}};
    const TubeSection section = section_as_drawn(tube);
    CHECK_CLOSE(section.plastic_x_in3, 5.28125, 1e-9, 0.0);
    const LeftAtHoles left = left_at_holes(tube, false, 0.25, section, yield_psi, ultimate_psi, hole);
    CHECK_CLOSE(left.about_y, 1.0 - 0.039551 / 5.28125, 1e-6, 0.0);
    // F13.1: 58 (1 - 0.5625/4) = 49.8 ksi is over 46 and F_y/F_u under 0.8: the net section yields first.
    CHECK_CLOSE(left.about_x, 1.0 - 0.527344 / 5.28125, 1e-6, 0.0);
}

TEST_CASE("a wide hole leaves the tension wall to break before the tube yields", "[closed-form]") {
    // 1.5 in of 4 in: 58 x 0.625 = 36.25 ksi is under 46; S = (256 - 3.5^4)/12/2 = 4.41406 in3: 36.25 x 4.41406/(46 x
    // 5.28125) = 0.65865, below 1 - 1.5 x 0.25 x 3.75/5.28125 = 0.73373.
    const std::vector<PostHole> hole{{0.0, 1.5}};
    const LeftAtHoles left = left_at_holes(tube, false, 0.25, section_as_drawn(tube), yield_psi, ultimate_psi, hole);
    CHECK_CLOSE(left.about_x, 36.25 * 4.4140625 / (46.0 * 5.28125), 1e-6, 0.0);
}

TEST_CASE("a solid bar is what is left beside its hole", "[closed-form]") {
    // 2 x 1 bar, hole 0.5 in the middle of its width: 1.5/2 about x; about y 1 - (2 x 0.25^2/2)/(2^2/4) = 0.9375.
    const TubeShape bar{false, 2.0, 1.0, 0.5};
    const std::vector<PostHole> hole{{0.0, 0.5}};
    const LeftAtHoles left = left_at_holes(bar, true, 0.5, section_as_drawn(bar), yield_psi, ultimate_psi, hole);
    CHECK_CLOSE(left.about_x, 0.75, 1e-9, 0.0);
    CHECK_CLOSE(left.about_y, 0.9375, 1e-9, 0.0);
}
