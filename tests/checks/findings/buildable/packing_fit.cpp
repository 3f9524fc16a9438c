// Packing through 1 in boards, 1 1/2 in square about every anchor of the example: blocks lie under y = -4.25 to -0.75
// and 0.75 to 4.25, the plate ends at x = 2.75 and y = 3.5.
#include "checks/run_check.h"
#include "support/compare.h"
#include "support/example.h"

using namespace toehold;
using checks::Severity;

namespace {

catalog::Resolved packed(double width_in = 1.5, double depth_in = 1.5,
                         const std::vector<model::Position>& places = {}) {
    catalog::Resolved resolved = test::example_resolved();
    on_deck(resolved.detail).layers.packing =
        model::Packing{model::PackingShape::rectangle, width_in, depth_in, "packing", 0.0, places};
    on_deck(resolved).packing =
        catalog::DeckingMaterial{"packing", "packing", catalog::DeckingKind::metal, 29e6, true, 32400.0, "", {}};
    return resolved;
}

std::vector<checks::Finding> found(const catalog::Resolved& resolved) {
    return test::run_finding("packing-fit", resolved);
}

/// The only finding, which there must be.
checks::Finding only(const catalog::Resolved& resolved) {
    const auto findings = found(resolved);
    REQUIRE(findings.size() == 1);
    return findings[0];
}

}  // namespace

TEST_CASE("Packing under the plate on the blocks fits", "[unit]") { CHECK(found(packed()).empty()); }

TEST_CASE("Packing is at most half again as high as its lesser width", "[unit]") {
    catalog::Resolved tall = packed();
    on_deck(tall.detail).layers.decking->thickness_in = 2.25;
    CHECK(found(tall).empty());
    on_deck(tall.detail).layers.decking->thickness_in = 2.26;
    CHECK(only(tall).severity == Severity::fails);
    catalog::Resolved narrow = packed(1.0, 2.0);
    on_deck(narrow.detail).layers.decking->thickness_in = 1.6;
    CHECK(test::says(only(narrow).message, "1 in wide: it can tip over"));
}

TEST_CASE("Packing beside the framing fails, and says how much of it has wood below", "[closed-form]") {
    // From y = 0.25 to 1.75: 1 of 1 1/2 in lies on block B2; between the blocks nothing does.
    const checks::Finding beside = only(packed(1.5, 1.5, {{0.0, 1.0}}));
    CHECK(beside.severity == Severity::fails);
    CHECK(test::says(beside.message, "not wholly on the framing: 67 % of it"));
    CHECK(test::says(only(packed(1.5, 1.5, {{0.0, 0.0}})).message, ": 0 % of it"));
}

TEST_CASE("Packing past the plate's edge is a caution: only what lies under the plate counts", "[unit]") {
    CHECK(found(packed(1.5, 1.5, {{2.0, 2.5}})).empty());  // flush
    const checks::Finding past = only(packed(1.5, 1.5, {{2.1, 2.5}}));
    CHECK(past.severity == Severity::caution);
    CHECK(test::says(past.message, "past the plate's edge"));
}

TEST_CASE("Pieces that overlap fail, and pieces that touch do not", "[unit]") {
    CHECK(found(packed(1.5, 1.5, {{-1.0, 2.5}, {0.5, 2.5}})).empty());
    const checks::Finding twice = only(packed(1.5, 1.5, {{-1.0, 2.5}, {0.49, 2.5}}));
    CHECK(twice.severity == Severity::fails);
    CHECK(test::says(twice.message, "overlap"));
}

TEST_CASE("The anchor's hole leaves at least half of its packing", "[closed-form]") {
    // 7/16 in takes 0.15033 in2: of 0.56 in square 0.479, of 0.54 in square 0.516.
    const auto around_anchors = [](double size_in) {
        catalog::Resolved resolved = packed(size_in, size_in);
        on_deck(resolved.detail).layers.decking->thickness_in = 0.75;
        return resolved;
    };
    CHECK(found(around_anchors(0.56)).empty());
    const auto thin = found(around_anchors(0.54));
    REQUIRE(thin.size() == 4);
    CHECK(thin[0].severity == Severity::fails);
    CHECK(test::says(thin[0].message, "more than half"));
}
