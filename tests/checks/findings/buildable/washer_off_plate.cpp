// Washers and heads at the edge of plates of every outline.
#include "checks/findings/buildable/plates.h"
#include "checks/run_check.h"
#include "support/compare.h"

using namespace toehold;
using checks::Severity;
using test::one_anchor;

namespace {

std::vector<checks::Finding> with_washer(model::Position at, const model::Outline& outline, double diameter_in = 1.0,
                                         test::HoleShape shape = model::RoundHole{0.4375}) {
    catalog::Resolved resolved = one_anchor(at, shape);
    test::add_washers(resolved, diameter_in);
    on_deck(resolved.detail).plate.outline = outline;
    return test::run_finding("washer-off-plate", resolved);
}

const model::RectangleOutline square{6.0, 6.0, 0.0, {}};

}  // namespace

TEST_CASE("A washer past the plate's edge fails, one that ends with it does not", "[unit][A2]") {
    // Center 0.4 in from the edge, radius 0.5.
    const auto findings = with_washer({-2.6, 0.0}, square);
    REQUIRE(findings.size() == 1);
    CHECK(findings[0].severity == Severity::fails);
    CHECK(test::about(findings[0]) == "anchor A");
    CHECK(test::says(findings[0].message, "Washer of anchor A reaches 0.1 in past the edge"));
    CHECK(with_washer({-2.5, 0.0}, square).empty());
    CHECK(with_washer({-63.5 / 25.4, 63.5 / 25.4}, square).empty());
    CHECK(with_washer({0.0, 2.50001}, square).size() == 1);
    const model::RectangleOutline off_center{6.0, 6.0, 0.0, {0.2, -0.3}};
    CHECK(with_washer({2.7, 2.2}, off_center).empty());
    CHECK(with_washer({2.71, 2.2}, off_center).size() == 1);
    CHECK(with_washer({2.7, 2.21}, off_center).size() == 1);
}

TEST_CASE("A hexagon head counts to its corners", "[unit]") {
    // 9/16 / sqrt(3) = 0.32476 in; the example's edge is 2.75 in from the center.
    CHECK(test::run_finding("washer-off-plate", test::example_resolved()).empty());
    CHECK(test::run_finding("washer-off-plate", one_anchor({-2.75 + test::half_corners_in, 0.0})).empty());
    const auto findings = test::run_finding("washer-off-plate", one_anchor({-2.5, 0.0}));
    REQUIRE(findings.size() == 1);
    CHECK(test::says(findings[0].message, "Head of anchor A reaches 0.075 in past the edge"));
    catalog::Resolved screw = one_anchor({-2.75 + test::half_flats_in, 0.0});
    CHECK(test::run_finding("washer-off-plate", screw).size() == 1);
    screw.anchors[0].kind = catalog::FastenerKind::wood_screw;  // its head is round
    CHECK(test::run_finding("washer-off-plate", screw).empty());
}

TEST_CASE("Round plates and round corners are taken as round", "[closed-form]") {
    const model::CircleOutline circle{6.0, {0.1, 0.0}};
    CHECK(with_washer({2.6, 0.0}, circle).empty());
    CHECK(with_washer({-2.41, 0.0}, circle).size() == 1);
    // Corner radius 1 in, its center at (2, 2): a hole at (2.3, 2.3) is 1 - 0.3 sqrt(2) = 0.57574 in from the edge.
    const model::RectangleOutline rounded{6.0, 6.0, 1.0, {}};
    CHECK(with_washer({2.3, 2.3}, rounded, 1.1514).empty());
    CHECK(with_washer({2.3, 2.3}, rounded, 1.1516).size() == 1);
    CHECK(with_washer({2.3, 2.3}, square, 1.4).empty());
}

TEST_CASE("A polygon's edge is its nearest side", "[unit]") {
    const model::PolygonOutline polygon{{{-3.0, -3.0}, {-3.0, 3.0}, {3.0, 3.0}, {3.0, -3.0}}};
    CHECK(with_washer({2.5, 0.0}, polygon).empty());
    CHECK(with_washer({2.51, 0.0}, polygon).size() == 1);
}

TEST_CASE("A slot's washer may stand at its outer end", "[unit]") {
    // Half the straight part of 1 7/16 in is 0.5: the end's center is 0.5 in from the edge.
    CHECK(with_washer({2.0, 0.0}, square, 1.0, model::Slot{1.4375, 0.4375, 0.0}).empty());
    CHECK(with_washer({2.0, 0.0}, square, 1.0, model::Slot{1.6375, 0.4375, 0.0}).size() == 1);
    CHECK(with_washer({2.0, 0.0}, square, 1.0, model::Slot{1.6375, 0.4375, 90.0}).empty());
}
