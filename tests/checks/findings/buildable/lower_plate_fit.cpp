// A plate, an angle or a channel below 1/2 in bolts A and B, at x = -2 and 2, y = -2.5, in block B1: 3 1/2 x 5 1/2 in.
// Nuts are 3/4 in across their flats, half across their corners 3/4 / sqrt(3) = 0.433 in.
#include "checks/anchor/bolt_example.h"
#include "checks/run_check.h"
#include "support/compare.h"

using namespace toehold;
using checks::Severity;

namespace {

model::LowerPlate face(double width_in, double depth_in) {
    return {model::LowerShape::plate, {0.0, -2.5}, width_in, depth_in, 0.125, 0.0, "steel-a36"};
}

catalog::Resolved below(const model::LowerPlate& plate) {
    catalog::Resolved resolved = test::bolted_example();
    on_deck(resolved.detail).anchors = {{{"A", "B"}, model::ThroughBolt{"bolt-1/2", "a307", plate}, {}, ""}};
    for (catalog::Anchor& anchor : resolved.anchors) {
        if (anchor.id < "C") anchor.lower = plate;
    }
    return resolved;
}

std::vector<checks::Finding> found(const catalog::Resolved& resolved) {
    return test::run_finding("lower-plate-fit", resolved);
}

/// Findings on an angle 2 in deep over its 1/8 in leg whose face is `depth_in` wide and `off_in` off the bolts' line.
std::size_t found_on_angle(double depth_in, double off_in) {
    model::LowerPlate angle = face(8.0, depth_in);
    angle.shape = model::LowerShape::angle;
    angle.leg_in = 2.0;
    angle.center.y_in += off_in;
    return found(below(angle)).size();
}

}  // namespace

TEST_CASE("A nut lies on an angle's face beside its leg", "[closed-form]") {
    // In the middle of a face 1.12 in wide it has 0.56 - 0.125 = 0.435 in to the leg, of one 1.11 in wide 0.430.
    CHECK(found_on_angle(1.12, 0.0) == 0);
    CHECK(found_on_angle(1.11, 0.0) == 2);
    // Off the middle and turned so that the leg stands on the far side it has 0.6 - 0.16 = 0.44 in to the free edge, or
    // 0.6 - 0.18 = 0.42.
    CHECK(found_on_angle(1.2, 0.16) == 0);
    CHECK(found_on_angle(1.2, 0.18) == 2);
}

TEST_CASE("A nut in a channel has a leg on either side", "[closed-form]") {
    model::LowerPlate channel = face(8.0, 1.2);
    channel.shape = model::LowerShape::channel;
    channel.leg_in = 2.0;
    CHECK(found(below(channel)).empty());  // 0.6 - 0.125 = 0.475
    channel.center.y_in += 0.05;           // 0.425
    CHECK(found(below(channel)).size() == 2);
}

TEST_CASE("A lower plate may reach up to a deeper member and not into it", "[closed-form]") {
    // J1 and J2 stand from 7.25 to 8.75 in beside the post, 9.25 in deep; B2 begins 3.25 in beyond the bolts.
    CHECK(found(below(face(14.4, 3.0))).empty());
    CHECK(found(below(face(14.6, 3.0))).size() == 2);
    catalog::Resolved deeper = below(face(8.0, 6.4));
    deeper.detail.framing.blocks[1].depth_in = 7.25;
    CHECK(found(deeper).empty());
    deeper = below(face(8.0, 6.6));
    deeper.detail.framing.blocks[1].depth_in = 7.25;
    REQUIRE(found(deeper).size() == 1);
    CHECK(test::says(found(deeper)[0].message, "runs into block B2"));
    CHECK(found(deeper)[0].severity == Severity::fails);
}

TEST_CASE("A step of 1/32 in is drawn up, a larger one is not", "[closed-form]") {
    catalog::Resolved joists = below(face(16.0, 3.0));
    joists.detail.framing.joists->depth_in = 5.5 + 0.03125;
    CHECK(found(joists).empty());
    joists.anchors[1].seat->member = 2;
    CHECK(found(joists).empty());
    joists.detail.framing.joists->depth_in = 5.5 + 0.0325;
    const auto uneven = found(joists);
    REQUIRE(uneven.size() == 3);  // into J1, into J2, and B in J1 deeper than A in B1
    CHECK(test::says(uneven[2].message, "cannot lie flat"));
    CHECK(uneven[2].severity == Severity::fails);
}
