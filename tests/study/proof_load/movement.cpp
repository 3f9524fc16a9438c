// Computed movement by part, and readings beside it.
#include "study/proof_load/movement.h"
#include "study/proof_load/readings.h"
#include "study/proof_load/two_screws.h"
#include "support/compare.h"
#include "support/contains.h"

using namespace toehold;
using study::Agreement;

namespace {

/// A guard 40 in high: post 0.0005 in/lb, base 0.001 to 0.003, framing up to 0.0005.
study::ComputedMovement invented() {
    study::ComputedMovement computed;
    computed.height_in = 40.0;
    computed.soft = {0.0005, 0.0030, 0.0005};
    computed.central = {0.0005, 0.0020, 0.0005};
    computed.stiff = {0.0005, 0.0010, 0.0};
    return computed;
}

study::Compared compared(const std::string& readings) {
    return study::compare(invented(), study::fit(study::read_readings(readings).readings.value()).measured.value());
}

std::string refusal(const std::string& readings) {
    const study::ReadingsRead read = study::read_readings(readings);
    CHECK_FALSE(read.readings);
    return format::english(read.refusal);
}

}  // namespace

TEST_CASE("Two springs and a cantilever: the parts of the movement by hand", "[closed-form]") {
    const study::ComputedMovement computed =
        study::computed_movement(test::resolved_by_shipped(test::two_screws())).movement.value();
    // Each screw gives 1/1000 in/lb under h/(2 d); the plate turns by that over d, the top moves h times that.
    const double h = test::lever_in(), d = test::screw_arm_in;
    CHECK(computed.stiff.base == Approx(h * h / (2.0 * d * d) / 1000.0).epsilon(0.02));
    // h^3/(3 E I), 3 x 3 x 1/4 tube: I 3.02 in4 by the AISC manual
    CHECK(computed.stiff.post == Approx(h * h * h / (3.0 * 29e6 * 3.02)).epsilon(0.02));
    CHECK(computed.stiff.framing == 0.0);
    CHECK(computed.soft.framing > 0.0);
    CHECK(computed.rotational_stiffness(computed.stiff) == Approx(2.0 * d * d * 1000.0).epsilon(0.02));
}

TEST_CASE("Readings agree, or are softer or stiffer than computed, by so much", "[closed-form]") {
    // Computed 0.15 to 0.4 in for 100 lb.
    CHECK(compared("100 lb=0.3 in").agreement == Agreement::agrees);
    CHECK(compared("100 lb=0.3 in").times == 1.0);
    const study::Compared softer = compared("50 lb=0.4 in, 100 lb=0.8 in");
    CHECK(softer.agreement == Agreement::softer);
    CHECK(softer.times == Approx(2.0));
    // 0.8 in less 0.05 of the post: 100 lb x 40 in over 0.75/40
    CHECK(softer.rotational_stiffness.value() == Approx(4000.0 / (0.75 / 40.0)));
    const study::Compared stiffer = compared("100 lb=0.075 in");
    CHECK(stiffer.agreement == Agreement::stiffer);
    CHECK(stiffer.times == Approx(0.5));
    CHECK_FALSE(compared("100 lb=0.05 in").rotational_stiffness);
}

TEST_CASE("Three readings tell the play before the guard resists", "[closed-form]") {
    const study::Compared loose = compared("50 lb=0.25 in, 100 lb=0.4 in, 200 lb=0.7 in");
    CHECK(loose.measured.with_play);
    CHECK(loose.measured.line.play == Approx(0.1));
    CHECK(loose.measured.line.stiffness == Approx(1000.0 / 3.0));
    CHECK(loose.agreement == Agreement::agrees);
}

TEST_CASE("Readings may come in any unit", "[unit]") {
    const auto readings = study::read_readings("222.411 N = 5.334 mm").readings.value();
    CHECK(readings.front().push == Approx(50.0).epsilon(1e-5));
    CHECK(readings.front().movement == Approx(0.21));
}

TEST_CASE("What is no reading is refused in a sentence", "[bad-input]") {
    for (const char* const text : {"", "50 lb", "50=0.21", "50 lb=0.21", "-50 lb=0.2 in", "50 lb=0.2 in,", "lb=in"})
        CHECK(test::contains(refusal(text), "accepted: PUSH=MOVEMENT"));
    using study::fit;
    CHECK_FALSE(fit({{0.0, 50.0}}).measured);
    CHECK_FALSE(fit({{0.2, 0.0}}).measured);
    CHECK_FALSE(fit({{0.1, 50.0}, {0.2, 40.0}, {0.3, 30.0}}).measured);
}

TEST_CASE("Tightened anchors have no movement in proportion to the push", "[bad-input]") {
    model::BaseDetail tight = test::two_screws();
    on_deck(tight).anchors.front().preload_lb = 500.0;
    CHECK_FALSE(study::computed_movement(test::resolved_by_shipped(tight)).movement);
}
