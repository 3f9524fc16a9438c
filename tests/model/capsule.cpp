// The shape of holes and slots.
#include "model/capsule.h"

#include "support/compare.h"

using namespace toehold;

TEST_CASE("A slot is a segment between the centers of its round ends, a round hole a point", "[closed-form]") {
    const model::Capsule round = model::capsule({"A", {1.0, 2.0}, model::RoundHole{0.5}});
    CHECK(round.axis.from == model::Position{1.0, 2.0});
    CHECK(round.axis.to == model::Position{1.0, 2.0});
    CHECK(round.radius_in == 0.25);
    // 1 1/2 in long and 1/2 in wide, turned 30 degrees: the ends' centers are 1/2 in from its own.
    const model::Capsule slot = model::capsule({"B", {1.0, 2.0}, model::Slot{1.5, 0.5, 30.0}});
    CHECK_CLOSE(slot.axis.to.x_in, 1.0 + 0.4330127, 0.0, 1e-7);
    CHECK_CLOSE(slot.axis.to.y_in, 2.25, 0.0, 1e-12);
    CHECK_CLOSE(slot.axis.from.x_in, 1.0 - 0.4330127, 0.0, 1e-7);
    CHECK_CLOSE(slot.axis.from.y_in, 1.75, 0.0, 1e-12);
    CHECK(slot.radius_in == 0.25);
}
