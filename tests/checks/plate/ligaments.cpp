// What slots leave between the post and the rest of the plate, by hand.
#include "checks/run_check.h"
#include "checks/steel_examples.h"
#include "support/compare.h"

#include <algorithm>
#include <cmath>
#include <numbers>
using namespace toehold;
using checks::Status;
using test::run_check;
using test::step_value;

namespace {

/// The example's 2 x 2 in tube on a plate of 10 x 10 x 3/8 with a slot off each face.
catalog::Resolved slotted(double length_in) {
    auto resolved = test::example_resolved();
    model::Plate& plate = on_deck(resolved.detail).plate;
    plate.outline = model::RectangleOutline{10.0, 10.0, 0.0, {}};
    plate.holes.push_back({"S1", {0.0, 1.5}, model::Slot{length_in, 0.3, 0.0}});
    plate.holes.push_back({"S2", {0.0, -1.5}, model::Slot{length_in, 0.3, 0.0}});
    plate.holes.push_back({"S3", {1.5, 0.0}, model::Slot{length_in, 0.3, 90.0}});
    plate.holes.push_back({"S4", {-1.5, 0.0}, model::Slot{length_in, 0.3, 90.0}});
    return resolved;
}

}  // namespace

TEST_CASE("Four slots that leave the post on four narrow strips fail", "[closed-form][A18]") {
    // 0.5.0 passed this: no section ran around the post. The four strips stand near (1.35, 1.35); of all of the push, M
    // = 8400 lb in, about x they carry 8400/(4 x 1.35) = 1556 lb each, on some 0.25 in of metal: over 4,000 lb/in,
    // against 0.60 x 36,000 x 0.375/1.50 = 5,400 in shear; bent across a slot of 0.3 in: over 600 lb of the 757.86
    // available (36,000 x 0.375^2/4 / 1.67).
    const auto resolved = slotted(2.6);
    const auto results = run_check("plate-ligaments", resolved, test::pushes(resolved, {90.0}));
    REQUIRE(results.size() == 1);
    const auto& result = results[0];
    CHECK_CLOSE(step_value(result, "c"), 0.5, 1e-9, 0.0);
    const double metal = step_value(result, "L");
    CHECK(metal > 0.6);
    CHECK(metal < 1.4);
    CHECK(result.demand > 0.8 * 8400.0 / 1.45 / metal);
    CHECK(result.demand < 1.4 * 8400.0 / 1.25 / metal);
    CHECK_CLOSE(step_value(result, "m"), 0.5 * result.demand * step_value(result, "g"), 1e-12, 0.0);
    CHECK_CLOSE(step_value(result, "m_c"), 757.86, 0.0, 0.005);
    CHECK(result.ratio > 0.6);
    CHECK_CLOSE(result.ratio, std::max(result.demand / 5400.0, step_value(result, "m") / step_value(result, "m_c")),
                1e-9, 0.0);
    // Thinner by half, a quarter of the bending strength.
    auto thin = resolved;
    on_deck(thin.detail).plate.thickness_in = 0.1875;
    CHECK(run_check("plate-ligaments", thin, test::pushes(thin, {90.0})).at(0).status == Status::fails);
}

TEST_CASE("Slots that meet leave the post without a path", "[unit]") {
    const auto resolved = slotted(3.3);
    const auto results = run_check("plate-ligaments", resolved, test::pushes(resolved, {90.0}));
    REQUIRE(results.size() == 1);
    CHECK(results[0].status == Status::no_path);
}

TEST_CASE("Holes that a washer or a head covers are no openings", "[unit]") {
    const auto resolved = test::example_resolved();
    CHECK(run_check("plate-ligaments", resolved, test::pushes(resolved, {90.0})).empty());
}

namespace {

/// Three long slots and a short one off the four faces, all turned by so many quarters.
catalog::Resolved slotted_unevenly(int quarters) {
    auto resolved = test::example_resolved();
    model::Plate& plate = on_deck(resolved.detail).plate;
    plate.outline = model::RectangleOutline{10.0, 10.0, 0.0, {}};
    for (int side = 0; side < 4; ++side) {
        const double turned_rad = 0.5 * std::numbers::pi * (side + quarters);
        plate.holes.push_back({"S" + std::to_string(side),
                               {1.5 * std::cos(turned_rad), 1.5 * std::sin(turned_rad)},
                               model::Slot{side == 0 ? 1.2 : 2.6, 0.3, 90.0 * (side + quarters + 1)}});
    }
    return resolved;
}

}  // namespace

TEST_CASE("Slots turned with the push leave as much metal", "[property]") {
    for (const double push_deg : {0.0, 90.0, 180.0, 270.0}) {
        const auto straight = slotted_unevenly(0);
        const double ratio = run_check("plate-ligaments", straight, test::pushes(straight, {push_deg})).at(0).ratio;
        for (const int quarters : {1, 2, 3}) {
            const auto turned = slotted_unevenly(quarters);
            const auto demand = test::pushes(turned, {push_deg + 90.0 * quarters});
            INFO(push_deg << " " << quarters);
            CHECK_CLOSE(run_check("plate-ligaments", turned, demand).at(0).ratio, ratio, 1e-6, 0.0);
        }
    }
}

TEST_CASE("Metal between openings is a strip up to twice as long as they are wide", "[unit]") {
    const auto of_slots = [](double length_in) {
        const auto resolved = slotted(length_in);
        return run_check("plate-ligaments", resolved, test::pushes(resolved, {90.0})).at(0);
    };
    const auto strip = of_slots(2.4);
    CHECK(step_value(strip, "b") > 0.3);
    CHECK(step_value(strip, "b") < 0.6);
    CHECK(step_value(strip, "g") > 0.0);
    const auto longer = of_slots(2.0);
    CHECK(step_value(longer, "b") > 0.6);
    CHECK_THROWS(step_value(longer, "g"));
}
