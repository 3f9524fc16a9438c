// A flat bar of aluminum as a post, by hand.
#include "checks/run_check.h"
#include "checks/steel_examples.h"
#include "support/compare.h"

using namespace toehold;

// 1/4 x 3 in, 42 in free: pi/42 E sqrt(I_y J/2.66), I_y 0.003906, J = 3 x 0.25^3/3 (1 - 0.63/12) = 0.014805 in4 (the
// elastic lateral buckling of a rectangle; F.4 from memory): 3522.6 lb in over 1.65. Its welded plastic moment: 8438.
TEST_CASE("A flat bar of aluminum buckles sideways its strong way", "[memory][closed-form]") {
    auto resolved = test::example_resolved();
    test::make_aluminum(resolved);
    resolved.detail.post = model::SolidBar{0.25, 3.0, false, "aluminum"};
    CHECK_CLOSE(test::run_check("post-bending", resolved, test::pushes(resolved, {90.0})).at(0).capacity, 3522.6 / 1.65,
                1e-3, 0.0);
}
