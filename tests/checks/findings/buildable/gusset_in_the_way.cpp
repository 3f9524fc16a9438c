// Gussets of 1/4 in with 1/8 in fillets on the faces of the example's 2 x 2 in post, beside a 3/8 in lag screw.
#include "checks/findings/buildable/plates.h"
#include "checks/run_check.h"
#include "support/compare.h"

using namespace toehold;
using checks::Severity;

namespace {

std::vector<checks::Finding> findings_of(model::Position anchor, double length_in,
                                         model::FootSides sides = {true, false, true, false}) {
    catalog::Resolved resolved = test::one_anchor(anchor);
    on_deck(resolved.detail).weld->gussets = model::Gussets{sides, 2.0, length_in, 0.25, 0.125};
    return test::run_finding("gusset-in-the-way", resolved);
}

}  // namespace

TEST_CASE("A head that stands where a gusset does fails", "[unit]") {
    // Half the head's flats, half the gusset and its fillet: 0.28125 + 0.125 + 0.125 = 0.53125 in from x = 0.
    const auto findings = findings_of({0.5, 2.0}, 1.5);
    REQUIRE(findings.size() == 1);
    CHECK(findings[0].severity == Severity::fails);
    CHECK(test::about(findings[0]) == "anchor A");
    CHECK(test::says(findings[0].message, "1/2 in from the middle of a gusset"));
    CHECK(findings_of({0.53125, 2.0}, 1.5).empty());
    // Past its tip at y = 2.
    CHECK(findings_of({0.0, 2.54}, 1.0).empty());
    // Beside the right one, which stands square to the face.
    CHECK(findings_of({2.0, 0.53125}, 1.5).empty());
    CHECK(findings_of({2.0, 0.53}, 1.5).size() == 1);
    // No gusset on the inward side.
    CHECK(findings_of({0.0, -2.0}, 1.5).empty());
}

TEST_CASE("A gusset past the plate's edge fails", "[unit]") {
    // 5.5 in wide: 2.75 - 1 = 1.75 in to the right edge.
    CHECK(findings_of({-2.0, -2.5}, 1.75).empty());
    const auto findings = findings_of({-2.0, -2.5}, 2.0);
    REQUIRE(findings.size() == 1);
    CHECK(test::about(findings[0]) == "weld");
    CHECK(findings[0].severity == Severity::fails);
    CHECK(test::says(findings[0].message, "1/4 in past the plate's edge"));
}

TEST_CASE("A gusset to the left or inward reaches as far as one to the right or outward", "[property]") {
    // 2.75 - 1 = 1.75 in to the left edge, 3.5 - 1 = 2.5 in to the inward one; the anchor stands off the other way.
    CHECK(findings_of({2.0, 2.5}, 1.75, {false, false, false, true}).empty());
    CHECK(findings_of({2.0, 2.5}, 1.76, {false, false, false, true}).size() == 1);
    CHECK(findings_of({2.0, 2.5}, 2.5, {false, true, false, false}).empty());
    CHECK(findings_of({2.0, 2.5}, 2.51, {false, true, false, false}).size() == 1);
}
